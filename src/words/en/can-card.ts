// The can card in plain English: choosing what to pour, one can at a time, the band of holds, and what stands when all
// is poured. Sentences of the batch and can rules are those of can.ts. de/can-card.ts says the same in German.

import type { Measure } from '#engine/can/measures.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { SpoonCountry } from '#engine/quantity/units.ts';
import type { Level, Values } from '#engine/rules/rule.ts';
import type { State } from '#engine/souring/reason.ts';
import { band, counted, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';
import { canCautions, sayMeasure } from './can.ts';
import { careCautions } from './care.ts';
import { eatingCautions, eatingInstead } from './eating.ts';
import { fillSheet } from './fill.ts';
import { instead } from './instead.ts';
import { pickHowIn } from './pick.ts';
import { passableNames, passWords } from './profile.ts';
import { pourHourCautions, sprayCautions } from './spray.ts';
import { hoursWords } from './weather.ts';

const n = (values: Values, key: string) => Number(values[key]);

const ago = (days: number) => (days === 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`);

/** One sentence or two for each rule about a bed. */
export const bedCautions: Readonly<Record<string, (values: Values) => string>> = {
  'bed-gets-none': (v) =>
    v.leaf
      ? 'No feed on this bed while its leaf is eaten raw: so the plot says.'
      : 'No feed on this bed: so the plot says.',
  'bed-nothing-grows': () => 'Nothing grows here now. Feed it once it is planted.',
  'bed-size-not-told': () => 'How large is it? Tell its area or its pots on the sheet of the plot.',
  'bed-eaten-not-told': () =>
    'Is it eaten raw or cooked? Tell it on the sheet of the plot. Until then it counts as eaten raw.',
  'bed-fed-just-now': (v) =>
    n(v, 'fedDays') < 1
      ? 'Fed today already. Ask the other keyholders before it is fed twice.'
      : 'Fed yesterday. Ask the other keyholders before it is fed twice.',
  'bed-fed-lately': (v) =>
    `Wait for the next round, ${sayDate(String(v.on), String(v.today))}. A whole feed was poured here ${ago(n(v, 'fedDays'))}.`,
};

const states: Readonly<Record<State, string>> = {
  souring: 'souring',
  slow: 'slow',
  ready: 'ready',
  doubtful: 'doubtful',
  lost: 'lost',
  unknown: 'unknown',
};
const levels: Readonly<Record<Level, string>> = {
  stop: 'Stop',
  hold: 'Hold',
  caution: 'With care',
  note: 'Worth knowing',
};
const ml = (volumeMl: number) => withUnit(volumeMl, 'mL', volumeMl >= 20 ? 0 : volumeMl >= 2 ? 1 : 2);
const ratio = ({ n: parts, reading }: RatioSaid) => `1 ${reading} ${figure(parts)}`;

/** A ratio as the sentences take it. */
export interface RatioSaid {
  readonly n: number;
  readonly reading: 'in' | 'to';
}

/** Grams of one nutrient that a pour gave. */
export interface GivenFigure extends Range {
  readonly what: string;
}
const NUTRIENTS: Readonly<Record<string, string>> = { nG: 'nitrogen', pG: 'phosphorus', kG: 'potassium' };

/** What the card says; another language has the same keys. */
export const canCard = {
  language: 'en-GB',
  cautions: {
    ...canCautions,
    ...bedCautions,
    ...pourHourCautions,
    ...sprayCautions,
    ...eatingCautions,
    ...careCautions,
  },
  instead: { ...instead, ...eatingInstead } as Readonly<Record<string, string>>,
  insteadLead: 'Instead:',
  moreCautions: (count: number) => `${count} more worth knowing`,
  /** What a stop that a reason may pass is about, to be named in a mark. */
  passable: passableNames,
  ...passWords,
  states,
  held: 'held',
  notHeld: 'not held',
  levels,
  litres: (volumeL: number) => withUnit(volumeL, 'L', volumeL >= 10 || Number.isInteger(volumeL) ? undefined : 1),
  ml,
  /** To half a millilitre, as a syringe is read. */
  mlFine: (volumeMl: number) => withUnit(Math.round(volumeMl * 2) / 2, 'mL', 1),
  ratio,
  date: (on: string, today: string) => sayDate(on, today),

  choose: 'What is poured, and where?',
  noBeds: 'The beds will stand here in walking order, each with yes, hold or never.',
  startBeds: 'Tell the beds of the plot',
  noLiquid: 'The can card stands here once a batch was strained: it names the feed, the bed and the dose of every can.',
  startLiquid: 'To the line',
  jar: 'A jar without a peg',
  showMore: (count: number) => `Show ${count} more`,
  fromWhich: 'From which batch?',
  bottles: 'bottles',
  drained: 'drained, not bottled',
  left: (low: string, high: string) => (low === high ? `${low} left` : `${low} to ${high} left`),
  pegWord: (peg: PegName) => `peg ${peg}`,
  heldFrom: (date: string) => `held from ${date}`,
  whichCan: 'Which can?',
  otherCan: 'Another can',
  canSize: 'What it holds to its mark',
  canSizeHint: 'such as 10 L or 2 gal',
  canKeep: 'Keep this can',
  canNoSize: 'size not told',
  canName: (typed: string) => `${typed} can`,
  gallon: { us: 'US gallon', imperial: 'imperial gallon' },
  gallonAsk: 'Whose gallon? Asked once for this can.',
  howStrong: 'How strong?',
  matched: (r: RatioSaid, leafGPerL: number) =>
    `${ratio(r)}: ${withUnit(leafGPerL, 'g', 1)} of plant in a litre poured`,
  matchedNote: (wantedGPerL: number) =>
    `Matched to a published nettle feed of ${withUnit(wantedGPerL, 'g', 1)} in a litre. That ratios feed well rests on no trial.`,
  noMatch: 'The plants in this batch were not told, so no strength can be matched. Type a ratio.',
  typedStrength: 'A ratio of your own',
  typedHint: 'such as 1 in 100 or 1 to 40',
  twoReadings: 'That can be read in two ways. Which is meant?',
  reading: (r: RatioSaid, concentrateMl: number, canL: number) =>
    `${ratio(r)}: ${ml(concentrateMl)} in ${withUnit(canL, 'L')}`,
  whichBed: 'Which bed?',
  roundSum: (volumeL: number, concentrateMl: number) =>
    `All that say yes: ${withUnit(volumeL, 'L', 1)}, with ${ml(concentrateMl)} of concentrate.`,
  verdicts: { yes: 'Yes', hold: 'Hold', never: 'Never' },
  reasonsOf: (name: string) => `Why: ${name}`,
  noneSaid: 'Nothing speaks against it.',
  fedDays: (days: number) => (days === 0 ? 'fed today' : days === 1 ? 'fed yesterday' : `fed ${days} days ago`),

  bedLine: (name: string, size: string) => `${name}, ${size}`,
  area: (areaM2: number) => withUnit(areaM2, 'm²'),
  pots: (count: number) => counted(count, 'pot'),
  onSoil: (crop: string) => `${crop}: on the soil, not on leaves`,
  onSoilNoCrop: 'On the soil, not on leaves',
  per: { m2: 'Litres on a square metre', pot: 'Litres in a pot' },
  less: 'less',
  more: 'more',
  into: 'into the can',
  of: (peg: PegName) => `of peg ${peg}`,
  fullJugs: (count: number, jugMl: number) => `${counted(count, 'full jug')} of ${ml(jugMl)}, then to`,
  fillTo: 'then fill to',
  fillToPart: 'then fill only to',
  canOf: (i: number, count: number) => `can ${i} of ${count}`,
  canPoured: 'poured',
  canHalf: 'half poured',
  jug: (jugMl: number) => `your ${jugMl >= 1000 ? withUnit(jugMl / 1000, 'L') : ml(jugMl)} jug`,
  syringe: '20 mL syringe',
  fullSyringes: (count: number) => `${counted(count, 'full syringe')}, then to`,
  fullSize: 'full size',
  fullSizeAt: (height: string) => `full size, ${height} from the floor of the jug`,
  notFullSize: 'not full size: go by the marks',
  mm: (heightMm: number) => withUnit(heightMm, 'mm', 0),
  fromFloor: 'from the floor',
  drawn: 'Drawing of the dose',
  measure: (measure: Measure) => sayMeasure(measure),
  orWith: 'or with',
  spoonAsk: 'Spoons are shown once the plot says whose they are.',
  spoonCountries: { us: 'US', metric: 'metric', uk: 'older British', au: 'Australian' } satisfies Record<
    SpoonCountry,
    string
  >,
  twoStep: (first: number, water: number, then: number) =>
    `In two steps: stir ${ml(first)} of concentrate into ${ml(water)} of water; put ${ml(then)} of that into the can.`,
  poured: (i: number) => `Can ${i} is poured`,
  half: 'Only half of it',
  stopHere: 'Stop here, write down what was poured',
  undoCan: (i: number) => `Can ${i} was not poured`,
  useToday: 'Use today; tip the rest on soil.',
  notEnough: (leftL: number, wantedMl: number) =>
    `Only ${withUnit(leftL, 'L', 2)} is left, and this bed wants ${ml(wantedMl)}. Pour fewer litres, or take another batch.`,
  soilAsk: 'The soil under the mulch',
  soils: { moist: 'moist', dry: 'dry', cracked: 'dry and cracked', soaked: 'soaked' },
  airAsk: 'The air now',
  airs: {
    still: 'still, leaves hang',
    'leaves-rustle': 'leaves rustle',
    'twigs-move': 'twigs move',
    'branches-move': 'branches move',
  },
  wayAsk: 'How is it given?',
  ways: { soil: 'on the soil', leaf: 'on the leaves' },
  onLeaf: (crop: string) => `${crop}: on the leaves, nothing of it eaten raw`,
  leafSteps:
    'Wet the leaves until they just drip; cover eyes and mouth. Not by anyone pregnant or who falls ill easily.',
  hours: hoursWords,
  pickAsk: 'When is it picked next?',
  picks: {
    soon: 'within 14 days',
    later: 'in 14 days or more',
    'after-21': 'in 21 days or more',
    'after-90': 'in 90 days or more',
    far: 'in more than 120 days',
  },
  animalAsk: (peg: PegName) => `Why animals may have reached peg ${peg}:`,
  animalWhys: pickHowIn,
  waterAsk: (peg: PegName) => `Where did the water in peg ${peg} come from?`,
  waterFrom: fillSheet.sources as Readonly<Record<keyof typeof fillSheet.sources, string>>,
  waterSaved: 'Thank you. The record now says where the water came from.',
  noDose: 'No dose',
  goWhere: {
    bed: 'That bed is not here. Choose one.',
    liquid: 'Say first from which batch it comes.',
    strength: 'Say first how strong.',
    size: 'Tell the size of the bed.',
    can: 'Say first which can.',
    sprayer: 'Tell the sprayer and what it holds on the sheet of the plot.',
    reasons: 'Why, and what to do:',
  },
  toChoose: 'Choose batch, can and strength',
  toPlot: 'To the plot',
  toShelf: 'To the shelf',
  toPeg: (peg: PegName) => `To peg ${peg}`,
  otherBed: 'Another bed',
  toLine: 'To the line',
  saving: 'Writing it down',
  notSaved: 'Not written down yet: the browser refused to keep it. The cans stay here; try again.',
  tryAgain: 'Try again',
  done: (volumeL: string, concentrateMl: string) => `${volumeL} poured, with ${concentrateMl} of concentrate`,
  /** What the pour gave the bed, as far as it is known. */
  brought: (figures: readonly GivenFigure[]) => {
    const given = figures.filter(({ likely }) => figure(likely) !== '0');
    const said = given.map((one) => `${band(one, 'g')} of ${NUTRIENTS[one.what] ?? one.what}`);
    return said.length === 0 ? '' : `The bed got about ${said.join('; ')}.`;
  },
  cansHere: 'The cans of this plot',
  why: 'why?',
  whyOf: (what: string) => `why? ${what}`,
  dose: 'the dose',
  howOpen: 'how?',
  close: 'Close',
  workingHeading: 'The working',
  how: 'How a can is mixed and poured',
  howSteps: [
    'Shake the bottle gently and let the gas out, away from your face.',
    'Fill the jug to the mark, eyes at its height.',
    'Tip it into the can, then fill the can with water to its mark.',
    'Pour low on moist soil at the foot of the plants, not on leaves.',
    'Use it today. Rinse jug and can, and wash your hands.',
  ],
  holds: 'Holds',
  noHolds: 'No hold on this bed.',
  set: 'Show the jug at full size',
  setHow: 'Lay a bank card on the outline and step it until both are one size. This stays on this device.',
  setBore: 'Inside width of your jug',
  setWider: 'wider',
  setNarrower: 'narrower',
  setDone: 'It fits',
  setForget: 'No longer full size',
  card: 'bank card',
};

/** The words of the card in any language. */
export type CanCardWords = typeof canCard;
