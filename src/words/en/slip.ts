// The source slip in plain English: what each answer means for its lot, where the lot goes instead, and the
// questions with their answers. Nothing is decided here; the rules stand in engine/rules/slip.ts.

import type { Values } from '#engine/rules/rule.ts';
import type { SlipJudgement } from '#engine/rules/slip.ts';
import { excludedRuleId, type SlipGoes, type SlipOutcome } from '#engine/scraps/slip.ts';
import { type ExcludedRow, excluded } from '#engine/tables/index.ts';
import { counted } from '../figures.ts';

const upperFirst = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const lot = (values: Values) => upperFirst(String(values.lot));

/** What becomes of a lot, as a heading. */
export const slipOutcomes: Readonly<Record<SlipOutcome, string>> = {
  in: 'May go in a pail',
  'compost-only': 'Heap only',
  'set-aside': 'Set aside',
  out: 'Out: neither pail nor heap',
};

/** Where a lot goes instead of the pail, as a thing to do. */
export const slipGoes: Readonly<Record<SlipGoes, string>> = {
  'bean-test': 'Keep it apart, out of pail and shared heap, and do the bean test.',
  heap: 'Put it in the heap, under dry leaves.',
  'hot-heap': 'Put it in the middle of a heap that gets hot and is turned, or in the garden-waste collection.',
  'where-it-grew': 'Leave it on the ground it grew on, as the label of the product says.',
  'garden-waste-collection':
    'Bag it for the garden-waste collection if yours takes it, or do as your local rules for such weeds say.',
  'food-waste-collection': 'Use the food-waste collection, or what your site and local rules allow.',
  'household-bin': 'With gloves on, bag it for the household bin, or do as your local rules say. Never burn it.',
  'plant-health-rules':
    'Bag it where it grew, for the bin or the collection your local plant-health rules name; wash hands and tools.',
  'pile-apart':
    'Leave it where it grew, or keep it in a pile of its own away from beds; ask your waste authority before it goes into a collection that makes compost.',
  'back-home': 'Take it back to where it came from, and use a heap or collection there.',
  'ask-the-site': 'Ask the site committee; until then it stays outside the gate.',
};

/** The questions of the slip, in the order asked. */
export const slipQuestions = {
  whose: 'Whose is it?',
  from: 'Where does it come from?',
  treated: 'Was weedkiller used there, or on what the animals ate?',
  weedkiller: 'Which kind, by its label?',
  labelAllows: 'Does the label let clippings leave the lawn?',
  treatedOn: 'When?',
  condition: 'How does it look and feel?',
  kitchen: 'Raw, cooked, or off the plate?',
  species: 'What is it?',
} as const;

const excludedTexts = Object.fromEntries(
  excluded.map((row) => [
    excludedRuleId(row),
    () =>
      `${upperFirst(row.names[0] ?? '')} (${row.part}): never in a pail. ${row.why}${
        row.into === 'out' ? ' Keep it out of the heap too.' : ''
      }`,
  ]),
);

/** One text for each rule about a source slip, and for each plant that stays out. */
export const slipCautions: Readonly<Record<string, (values: Values) => string>> = {
  ...excludedTexts,
  'slip-weedkiller': (v) =>
    `${lot(v)}: neither pail nor heap. ${since(v)}Some lawn and field weedkillers outlast both and cripple beans, peas and tomatoes; souring does not take them away, and waiting does not clear the clippings. Leave them on the lawn they came from.`,
  'slip-label-allows': (v) =>
    `${lot(v)}: set aside. ${since(v)}The label lets it leave the lawn; a bean test still comes before pail and shared heap.`,
  'slip-beans-harmed': (v) =>
    `${lot(v)}: neither pail nor heap, and off every bed. Its bean test showed harm, and no later test undoes that.`,
  'slip-treatment-unknown': (v) =>
    `${lot(v)}: nobody can say what it was treated with, so it is set aside, out of pail and shared heap, until a bean test clears it. "Not known" is a good answer: it is better than a guess.`,
  'slip-site-forbids': (v) =>
    `${lot(v)}: this site does not let it in. ${v.siteRule === undefined ? '' : `Its rule${v.siteRuleOn ? ` of ${v.siteRuleOn}` : ''}: "${v.siteRule}" `}Scraps grown on the site may be used.`,
  'slip-site-not-known': (v) =>
    `${lot(v)}: it comes from outside, and what the site says of that is not known. Ask before it comes through the gate.`,
  'slip-source-unknown': (v) =>
    `${lot(v)}: nobody can say whose it was or where it grew. It is set aside until somebody can, or a bean test clears it.`,
  'slip-from-the-street': (v) =>
    `${lot(v)}: not in a pail. Dogs, litter and road dirt have been there before you. A heap that gets hot is the place for it, away from beds eaten raw.`,
  'slip-off-the-plate': (v) =>
    `${lot(v)}: keep out of the pail and the open heap. What was on a plate counts as touched by food of animal origin, and draws rats.`,
  'slip-cooked': (v) =>
    `${lot(v)}: keep out of the pail and the open heap. Cooked food goes foul, draws rats, and may hold fat, salt or meat.`,
  'slip-kitchen-not-told': (v) =>
    `${lot(v)}: nobody can say whether it is raw, cooked or off the plate, so it is treated as off the plate.`,
  'slip-slimy': (v) =>
    `${lot(v)}: it is slimy, so rot has begun before the souring could. It would foul a pail that might have come right.`,
  'slip-condition-not-told': (v) =>
    `${lot(v)}: look at it and smell it before it goes in. Fresh or wilted may go in; slimy goes to the heap.`,
  'slip-plant-not-named': (v) =>
    `${lot(v)}: nobody has named the plants in it, and a poisonous or spreading one is not seen in a pail. Name them first, or put the lot in a heap that gets hot.`,
};

function since({ sinceTreatedDays }: Values): string {
  return typeof sinceTreatedDays === 'number' && Number.isFinite(sinceTreatedDays)
    ? `Treated ${counted(sinceTreatedDays, 'day')} ago. `
    : '';
}

/** What may be done in place of what a rule about slips stops. */
export const slipInstead: Readonly<Record<string, string>> = {
  ...Object.fromEntries(excluded.map((row) => [excludedRuleId(row), insteadOf(row)])),
  'slip-beans-harmed': slipGoes['pile-apart'],
  'slip-weedkiller': `${slipGoes['where-it-grew']} Feed from other scraps.`,
  'slip-site-forbids': `${slipGoes['back-home']} Weigh in what grew on the site.`,
  'slip-from-the-street': slipGoes['hot-heap'],
  'slip-off-the-plate': slipGoes['food-waste-collection'],
  'slip-cooked': slipGoes['food-waste-collection'],
  'slip-kitchen-not-told': `${slipGoes['food-waste-collection']} Next time keep raw peelings in a bucket of their own.`,
  'slip-slimy': slipGoes.heap,
};

function insteadOf(row: ExcludedRow): string {
  if (row.into === 'compost-only') return row.group === 'irritant' ? `Gloves on. ${slipGoes.heap}` : slipGoes.heap;
  if (row.into === 'hot-heap-only') return slipGoes['hot-heap'];
  if (row.group === 'diseased') return slipGoes['plant-health-rules'];
  return row.group === 'spreading' ? slipGoes['garden-waste-collection'] : slipGoes['household-bin'];
}

/** The judgement of a slip in plain sentences: what becomes of the lot, and where it goes. */
export function slipSays(judgement: Pick<SlipJudgement, 'outcome' | 'goes'>): readonly string[] {
  const { outcome, goes } = judgement;
  return [`${slipOutcomes[outcome]}.`, ...(goes === undefined ? [] : [slipGoes[goes]])];
}
