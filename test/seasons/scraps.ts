// Scraps on the scale: each lot weighed in the form of the stock, with the answers its slip asks for.

import { keptMass } from '#engine/quantity/kept.ts';
import { type SlipTold, slipAsks, weighedBody } from '#tasks/plot/slip-questions.ts';
import { NO_TEXT, readTyped, typedInto } from '#web/parts/typed.ts';
import type { Field } from '#web/weigh-in/draft.ts';
import { type Amount, between, type Draw, mass, pick } from './amounts.ts';
import type { Book, BookLot } from './book.ts';
import type { Grower } from './grower.ts';

const GARDEN = ['grass-clippings-fresh', 'comfrey', 'nettle', 'cabbage-leaves', 'lettuce', 'legume-tops'];
const KITCHEN = ['kitchen-trimmings', 'coffee-grounds', 'banana-skin', 'vegetable-scraps-mixed'];

/** A field typed key by key until it is left, as the screens read it. */
export function typedKeys(
  text: string,
  dimension: Parameters<typeof typedInto>[2],
  countries: Parameters<typeof typedInto>[3],
): Field {
  let field = NO_TEXT;
  for (let end = 1; end <= text.length; end++) field = typedInto(field, text.slice(0, end), dimension, countries);
  return { text, settled: text === field.settled ? field.settled : text };
}

/** The mass of a field, as the form of the stock reads it. */
function weighed(grower: Grower, amount: Amount) {
  const { read, trouble } = readTyped(typedKeys(amount.text, 'mass', grower.countries), 'mass', grower.countries);
  if (read === undefined) throw new Error(`weighing "${amount.text}": ${trouble?.sentence}`);
  return keptMass(read);
}

/** One lot of a kind, with every question of its slip answered so that it may go in. */
export function weigh(draw: Draw, grower: Grower, book: Book): BookLot {
  const isKitchen = between(draw, 1, 3) === 1;
  const material = isKitchen ? pick(draw, ...KITCHEN) : pick(draw, ...GARDEN);
  const amount = mass(draw, grower.hand, 0.4, 6);
  const { plot } = grower;
  const place = isKitchen ? 'own-kitchen' : 'this-plot';
  let told: SlipTold = { material, name: '', place };
  const answers = { kitchen: 'raw', treated: 'no', condition: 'fresh' } as const;
  for (const [question, answer] of Object.entries(answers))
    if (slipAsks({ told, plot }).open.some((one) => one === question)) told = { ...told, [question]: answer };
  const { open } = slipAsks({ told, plot });
  if (open.length > 0) throw new Error(`${material}: still asked ${open.join(', ')}`);
  const entry = grower.did('scraps.weighed', weighedBody({ told, plot, mass: weighed(grower, amount) }));
  grower.meant('mass of a lot', grower.plot.lots.get(entry.id)?.weighedKg, amount);
  const lot: BookLot = { id: entry.id, material, weighedKg: amount.si, usedKg: 0 };
  book.lots.push(lot);
  return lot;
}

/** What is left of a lot by the grower's own book. */
export const leftKg = ({ weighedKg, usedKg }: BookLot): number => weighedKg - usedKg;
