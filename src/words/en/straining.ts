// Straining and bottling in plain English: the sum in one line, what the liquid may be used for, the solids, the
// bottles. What the figures mean nutrient by nutrient is strain.ts; cautions stand there and in vessel.ts.

import type { Range } from '#engine/quantity/range.ts';
import { band, counted, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';

/** Headings, labels and blocks of the sheet. */
export const strainSheet = {
  empty: 'No batch with this peg is in the record. What comes off a batch is written down here once one was filled.',
  toLine: 'To the line',
  ended: 'Nothing of this batch is left in its vessel, and all that was drained is in bottles or poured.',
  waiting: (litres: number) =>
    `Strained before: ${withUnit(litres, 'L', 1)} of it is in no bottle yet. Only the bottles are left to tell.`,
  cameOut: 'What came out?',
  drained: 'Drained liquid',
  solids: 'Wet solids',
  volumeHint: 'such as 6.3 L',
  massHint: 'such as 2.1 kg',
  restQuestion: 'Is the vessel empty now?',
  rest: { nothing: 'yes, empty', stays: 'no, some stays' } as const,
  readings: 'What was read?',
  ph: 'pH of the liquid',
  phHint: 'such as 3.7',
  byQuestion: 'Read with',
  by: { meter: 'meter', strip: 'strip' } as const,
  phBefore: (ph: number) => `Not read now: the last reading, pH\u00a0${figure(ph, 1)}, counts.`,
  conductivity: 'Conductivity, if you have a pen',
  conductivityHint: 'in mS/cm, the same as dS/m',
  mesh: 'Width of the mesh',
  meshHint: 'in mm, such as 1',
  more: 'Mesh and conductivity',
  sumHeading: 'In = out',
  nutrientsHeading: 'What the liquid holds',
  nutrientsNote: 'Estimates with their range; the firm stroke is the most there can be. A laboratory knows better.',
  useHeading: 'What it may be used for',
  solidsHeading: 'Where do the solids go?',
  solidsTo: {
    heap: 'heap, with dry leaves',
    'pile-apart': 'a pile apart',
    bed: 'dug into a bed',
    trench: 'a trench',
    out: 'off the plot',
  } as const,
  bottlesHeading: 'Into which bottles?',
  bottlesNone: 'No bottles now: it stays in the pail under a loose lid.',
  bottleQuestion: 'Kind of bottle',
  kinds: { plastic: 'plastic, not made for drink', other: 'another: say which' } as const,
  kindTyped: 'What is it called?',
  kindHint: 'such as garden canister',
  kindUnclear: 'Say whether it is plastic or glass, and what it was made for. A drink bottle is never used.',
  size: 'One holds',
  sizeHint: 'to the brim, such as 1 L',
  filled: 'Filled with',
  filledHint: 'in each, such as 0.9 L',
  count: 'How many',
  countHint: 'such as 7',
  capQuestion: 'Its cap',
  caps: { vent: 'lets gas out', loose: 'laid on loose', screw: 'screwed down' } as const,
  place: 'Where they stand',
  placeHint: 'such as shed shelf',
  warmth: 'Warmth there',
  warmthHint: 'such as 18 °C',
  act: 'Write it down',
  actStrained: 'Strained: write it down',
  actBoth: 'Strained and bottled: write both down',
  actBottled: 'Bottled: write it down',
  stillNeeded: (what: readonly string[]) => `Still to tell: ${what.join(', ')}.`,
  needs: {
    drained: 'how much was drained',
    rest: 'whether the vessel is empty',
    ph: 'the pH, for nothing can be said of its use without one',
    by: 'what the pH was read with',
    kind: 'the kind of bottle',
    size: 'what one bottle holds',
    filled: 'how much is in each',
    count: 'how many bottles',
    cap: 'the cap',
  } as const,
  noBottlesYet: 'Bottles can be told once the litres drained are.',
  noBottlesWithoutPh: 'Bottles can be told once a pH stands: without one nothing can be said of pressure and dates.',
  done: (peg: PegName) => `Peg ${peg} is strained, and that is written down.`,
  doneBottled: 'The bottles stand on the shelf.',
  toShelf: 'To the shelf',
  toPeg: 'To the peg',
  stopped: 'A stop above keeps this from being written down. Change what it names.',
  unread: (field: string) => `${field}: cannot be read yet.`,
  how: [
    'Write the tag first: peg, date, who, and "not a drink".',
    'Lift out the mat over a sieve and let it drip.',
    'Pour the liquid through the mesh into a jug; read the litres.',
    'Weigh the wet solids; read the pH in the jug.',
    'Fill the bottles to nine tenths, cap that vents, upright.',
  ] as const,
} as const;

/** Words by which a container tells what it is. */
export const containerWords = {
  drink: [
    ...['drink', 'water bottle', 'juice', 'lemonade', 'cola', 'soda', 'beer', 'wine', 'cider', 'milk', 'squash bottle'],
    ...['smoothie', 'squash', 'pop bottle', 'mineral water', 'spirit', 'whisky', 'sports bottle', 'thermos', 'flask'],
    ...['coffee', 'tea bottle', 'ketchup', 'sauce', 'oil bottle', 'vinegar', 'food', 'jam', 'honey', 'baby'],
  ],
  glass: ['glass', 'demijohn', 'carboy', 'mason', 'preserving', 'kilner'],
  plastic: ['plastic', 'canister', 'jerrycan', 'jerry can', 'hdpe', 'polythene'],
} as const;

/** "In 8.75 kg = out 8.46 kg + 0.29 kg not accounted for (3 %)." */
export function sumLine(balance: {
  readonly inKg: number;
  readonly outKg: number;
  readonly unexplainedPercent: number;
}): string {
  const missing = balance.inKg - balance.outKg;
  const share = `${figure(Math.abs(balance.unexplainedPercent), 0)}\u00a0%`;
  const rest =
    missing >= 0
      ? `out ${withUnit(balance.outKg, 'kg', 2)} + ${withUnit(missing, 'kg', 2)} not accounted for (${share})`
      : `out ${withUnit(balance.outKg, 'kg', 2)}, ${withUnit(-missing, 'kg', 2)} more than went in (${share})`;
  return `In ${withUnit(balance.inKg, 'kg', 2)} = ${rest}.`;
}

const SUM_NAMES: Readonly<Record<string, string>> = {
  plants: 'plants',
  water: 'water',
  sugar: 'sugar',
  starter: 'starter',
  liquid: 'liquid',
  solids: 'wet solids',
  missing: 'not accounted for',
  'too-much': 'too much',
};

/** One thing of the sum, as it stands beside the drawing. */
export function sumName(part: { readonly kind: string; readonly massKg: number }): string {
  return `${SUM_NAMES[part.kind] ?? part.kind} ${withUnit(part.massKg, 'kg', part.massKg < 1 ? 2 : 1)}`;
}

/** The drawn sum in words. */
export function sumAlternative(
  inParts: readonly { readonly kind: string; readonly massKg: number }[],
  outParts: readonly { readonly kind: string; readonly massKg: number }[],
): string {
  return `Two bars to one scale. In: ${inParts.map(sumName).join(', ')}. Out: ${outParts.map(sumName).join(', ')}.`;
}

const ELEMENTS = { n: 'Nitrogen', p: 'Phosphorus', k: 'Potassium' } as const;

/** One element of the liquid: name, band, ceiling. */
export function elementLine(element: 'n' | 'p' | 'k', gPerL: Range | null, ceilingGPerL: number | null): string {
  const name = ELEMENTS[element];
  if (gPerL === null || ceilingGPerL === null) return `${name}: not known for any lot, so no figure.`;
  return `${name} ${band(gPerL, 'g')} in a litre; no more than ${withUnit(ceilingGPerL, 'g')} went in for each litre.`;
}

/** A bar of one element in words. */
export function elementName(element: 'n' | 'p' | 'k'): string {
  return ELEMENTS[element];
}

export function ceilingText(ceilingGPerL: number): string {
  return `most ${withUnit(ceilingGPerL, 'g/L')}`;
}

export function conductivityLine(ecDsPerM: Range | null, readDsPerM: number | undefined): string {
  if (readDsPerM !== undefined) return `Conductivity as read: ${withUnit(readDsPerM, 'dS/m', 1)}.`;
  return ecDsPerM === null
    ? 'Conductivity cannot be estimated: measure it with a pen.'
    : `Conductivity, roughly ${band(ecDsPerM, 'dS/m', 1)}. A pen in the bottle knows better.`;
}

/** What the liquid may be used for: the word first, then what it means. */
export function useWords(
  use: {
    readonly kind: string;
    readonly heldOn: string | undefined;
    readonly notHeldDays: number;
    readonly rawDays: number;
  },
  today: string,
): { readonly head: string; readonly body: string } {
  const off = withUnit(use.notHeldDays, 'days', 0);
  const held =
    use.heldOn === undefined ? '' : ` It counts as held on ${sayDate(use.heldOn, today)} if nothing turns till then.`;
  switch (use.kind) {
    case 'held':
      return {
        head: 'Ready and held',
        body: `Any bed that is fed, on the soil. What is eaten raw waits ${withUnit(use.rawDays, 'days', 0)} after a pour (our caution, no source); local rules may ask for more.`,
      };
    case 'cooked-only':
      return {
        head: 'Ready, not held',
        body: `Only beds whose next harvest is cooked or more than ${off} off.${held}`,
      };
    case 'not-ready':
      return {
        head: 'Not ready',
        body: 'No bed yet. Keep it under a loose lid and read it again: two readings of 4.2 or below, 48 hours apart, make it ready.',
      };
    case 'not-sour':
      return {
        head: 'Not sour',
        body: 'No bed. Look again in a day or two; if the acid does not come, it goes on the heap.',
      };
    case 'doubtful':
      return { head: 'In doubt', body: 'No bed till a second nose and a second reading, within 24 hours, settle it.' };
    case 'lost':
      return { head: 'Lost', body: 'No bed. Layer it into the heap with dry leaves, away from ditches and wells.' };
    case 'lot-not-for-liquid':
      return {
        head: 'No bed',
        body: 'Something in it should not be in a liquid feed; the reason stands with the cautions. Do not pour it where food grows.',
      };
    default:
      return { head: 'Not known', body: 'Not known never counts as good. Look, and read the pH, before any use.' };
  }
}

/** Sugar left and what it could do in a closed bottle. */
export function sugarLeftLine(sugarLeftGPerL: number | undefined): string {
  return sugarLeftGPerL === undefined
    ? 'How much sugar is left is not known, so it counts as too much.'
    : `Up to ${withUnit(sugarLeftGPerL, 'g/L', 0)} of sugar may be left: all that went in, less the least that the acid took (our caution, no source).`;
}

/** "7 bottles hold 6.3 L; nothing over." */
export function bottlesSum(count: number, filledL: number, toBottleL: number): string {
  const inAll = count * filledL;
  const rest = toBottleL - inAll;
  const said = `${counted(count, 'bottle')} with ${withUnit(filledL, 'L')} hold ${withUnit(inAll, 'L', 1)} of ${withUnit(toBottleL, 'L', 1)}`;
  if (rest > 0.05) return `${said}; ${withUnit(rest, 'L', 1)} is left over.`;
  return rest < -0.05 ? `${said}: ${withUnit(-rest, 'L', 1)} more than was drained.` : `${said}.`;
}

/** The date to finish a bottle, honest about its range. */
export function useFirstLine(
  dates: { readonly low: string; readonly likely: string; readonly high: string },
  keeping: 'keeps' | 'short' | 'none',
  today: string,
): string {
  if (keeping === 'none') return 'Not a feed to keep: it gets no use-first date.';
  const range = `between ${sayDate(dates.low, today)} and ${sayDate(dates.high, today)}`;
  return keeping === 'keeps'
    ? `Use first by ${sayDate(dates.likely, today)}; the sources put it anywhere ${range}. A rising pH or a film ends it at once.`
    : `Not sour enough to keep: use by ${sayDate(dates.likely, today)}, once it is ready (${range}; our caution, no source).`;
}

/** What was taken as something because nobody told it. */
export function warmthTaken(temperatureC: number): string {
  return `No warmth was told for this batch: ${withUnit(temperatureC, '°C', 0)} was taken, on the warm side, so that the dates are rather too early.`;
}

export function partsTaken(names: readonly string[]): string {
  return `Not in the list of materials, so its dry matter was taken between 5 and 35\u00a0%: ${names.join(', ')}.`;
}

/** A line of the sheet's head: peg, day. */
export function pegDay(peg: PegName, day: number): string {
  return `peg ${peg}, day ${figure(Math.floor(day), 0)}`;
}
