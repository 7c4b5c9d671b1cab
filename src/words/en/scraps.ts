// What may go in, in plain English: one sentence or two for each rule about a lot of scraps. Every stop
// says where the lot goes instead. The rules stand in engine/rules/scraps.ts; nothing is decided here.

import type { Values } from '#engine/rules/rule.ts';

const lot = (values: Values) => upperFirst(String(values.material));
const upperFirst = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** One text for each rule about scraps. */
export const scrapsCautions: Readonly<Record<string, (values: Values) => string>> = {
  'weedkiller-treated': (v) =>
    `${lot(v)}: neither pail nor heap. Some lawn and field weedkillers outlast both and cripple beans, peas and tomatoes. Leave clippings on the lawn they came from, and the rest where it grew; follow the product's label.`,
  'weedkiller-unknown': (v) =>
    `${lot(v)}: set aside, out of pail and shared heap, until a bean test clears it. Mix it half and half with clean potting mix; sow beans in at least ${v.pots} pots of it and ${v.pots} of clean mix alone; watch ${v.weeksLeast} to ${v.weeksMost} weeks, to ${v.trueLeaves} true leaves. Cupped or fern-like leaves only in the test pots: keep it off every bed. A clear test is a good sign and no proof.`,
  'weedkiller-not-answered': (v) =>
    `${lot(v)}: was weedkiller used where it grew, or on what the animals ate? Ask before it goes in. "Not known" is an answer: it is then set aside for a bean test.`,
  'pet-waste': (v) =>
    `${lot(v)}: neither pail nor heap. It carries parasites that can outlast both. Bag it for the household bin, or do as your local rules say.`,
  'meat-fish-dairy': (v) =>
    `${lot(v)}: keep out of the pail. It can carry germs that make people ill, and it draws rats. Use the food-waste collection; local rules say whether a closed heap that no animal can reach is allowed.`,
  'cooked-food': (v) =>
    `${lot(v)}: keep out of the pail. Food from the plate counts as of animal origin and draws rats. Use the food-waste collection, or what your site and local rules allow.`,
  'diseased-haulm': (v) =>
    `${lot(v)}: neither pail nor heap, for the disease can live on in both. Use the garden-waste collection, or do as your local plant-health rules say.`,
  'raw-manure': (v) =>
    `${lot(v)}: never in a feed. Raw manure belongs in the heap or is dug in, and then ${v.daysOnSoil} days pass before harvest where the part eaten touches the soil, ${v.daysOffSoil} where it does not. Defer to your local codes.`,
  'seeds-in-the-liquid': (v) =>
    `${lot(v)}: not into the liquid, for seeds can pass the strainer and be watered onto the beds. Put it in a heap that gets hot, or in the garden-waste collection.`,
  'rhubarb-leaves': (v) => `${lot(v)}: not into the liquid, for they are poisonous to eat. They may go in the heap.`,
  'compost-in-the-liquid': (v) =>
    `${lot(v)}: not into the liquid. Where sugar is added, germs that compost may still hold can multiply. Spread it on the bed as it is.`,
  'lime-in-the-liquid': (v) =>
    `${lot(v)}: not into the liquid. It is lime, and takes up the acid the batch needs. It may go in the heap.`,
  'dry-and-woody': (v) =>
    `${lot(v)}: not into the liquid. It brings little and soaks up what you want to pour. Keep it for the heap, where wet scraps need it.`,
  'not-in-the-liquid': (v) =>
    `${lot(v)}: not into the liquid.${v.why ? ` ${v.why}` : ''}${v.compost ? ' It may go in the heap.' : ' Keep it out of the heap too.'}`,
  'lot-not-in-the-list': (v) =>
    `${lot(v)}: not in the list of materials, so nothing here has checked what it is. Keep out meat, fish, dairy, cooked food, manure, diseased plants and anything that weedkiller may have touched.`,
  'salt-of-the-sea': (v) =>
    `${lot(v)}: rinse it well in fresh water first; salt adds to what a bed has to bear. Check that your shore allows taking it.`,
  'citrus-oil': (v) => `${lot(v)}: its oil can slow souring. Chop it fine and mix it with other scraps.`,
};
