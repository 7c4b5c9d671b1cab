// The shelf in plain English: litres left and wanted, dates to finish a bottle, the vent diary. Figures come in; nothing
// is computed here.

import type { Range } from '#engine/quantity/range.ts';
import { band, counted, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate, sayMoment } from './app.ts';

export const shelfSheet = {
  empty:
    'Your bottles will stand here, drawn to one scale, each with the litres left in it and the date to use it first by.',
  emptyAct: 'Strain a batch to fill the first',
  unknown: 'A jar without a peg?',
  drawn: 'Drawn as a plain bottle of that size; yours may be wider.',
  ventHeading: 'Vented just now. What was found?',
  found: { nothing: 'nothing', hiss: 'hiss', froth: 'froth', bulged: 'bulged' } as const,
  notSaid: 'not said',
  ventedWord: 'vented',
  ventDiary: 'Vent diary',
  noVents: 'Not vented yet since it was filled.',
  emptiedHeading: 'Tipped out',
  amount: 'How much, if not all',
  amountHint: 'empty for all of it',
  tips: { heap: 'on the heap', soil: 'on soil, no bed', out: 'off the plot' } as const,
  toHeap: 'Tip it on the heap',
  notSaved: 'Not written down: the browser refused to keep it. Try again.',
  stoodEmpty: 'Emptied',
  ventDue: 'Vent it: a week since it was last touched.',
  bulged: 'Bulged at the last vent: open it outdoors, away from your face, and keep the cap loose.',
  cardHeading: (peg: PegName) => `Peg ${peg}`,
  caps: { vent: 'cap lets gas out', loose: 'cap laid on loose', screw: 'cap screwed down' } as const,
  materials: { plastic: 'plastic', glass: 'glass', 'drink-bottle': 'a drink bottle' } as const,
  how: [
    'Stand the bottle upright, outdoors, away from your face.',
    'Turn the cap a quarter, wait till it is quiet.',
    'Say what was found.',
    'Leave the cap so that gas can get out.',
  ] as const,
} as const;

/** The largest figure of the sheet, and the words after it. */
export function leftWords(leftL: Range): { readonly figure: string; readonly rest: string } {
  return {
    figure: withUnit(leftL.likely, 'L', 1),
    rest: leftL.low === leftL.high ? 'on the shelf' : 'or so on the shelf',
  };
}

/** Litres left, and by how much two phones disagree. */
export function leftDoubt(leftL: Range): string | undefined {
  return leftL.low === leftL.high
    ? undefined
    : `Between ${figure(leftL.low, 1)} and ${withUnit(leftL.high, 'L', 1)}: a pour may be in the record twice.`;
}

interface Round {
  readonly dilutedL: number;
  readonly concentrateL: number | undefined;
  readonly ratio: { readonly n: number; readonly reading: 'in' | 'to' } | undefined;
  readonly aimGPerL: number;
  readonly rounds: number | undefined;
  readonly everyDays: number;
  readonly source: string;
}

/** What a round wants against what is there. */
export function roundLine(round: Round, inDateL: number): string {
  const litres = withUnit(round.dilutedL, 'L', 0);
  if (round.concentrateL === undefined)
    return `The next round takes ${litres} of diluted feed. How much concentrate that is depends on the batch.`;
  const wants = `The next round takes ${litres} of diluted feed, of it ${withUnit(round.concentrateL, 'L', 2)} from these bottles`;
  const many = round.rounds ?? 0;
  const covers =
    many >= 1
      ? `${withUnit(inDateL, 'L', 1)} in date covers ${counted(many, 'such round')}, one every ${withUnit(round.everyDays, 'days', 0)}`
      : inDateL < round.concentrateL
        ? `${withUnit(inDateL, 'L', 1)} in date is not enough for that`
        : `${withUnit(inDateL, 'L', 1)} in date will be past its date by the next round`;
  return `${wants}; ${covers}.`;
}

/** Where the strength of that round comes from. */
export function strengthLine(round: Round): string {
  return round.ratio === undefined
    ? `Diluted to ${withUnit(round.aimGPerL, 'g')} of plant a litre: ${round.source}.`
    : `Diluted 1 ${round.ratio.reading} ${figure(round.ratio.n)}, to about ${withUnit(round.aimGPerL, 'g')} of plant a litre: ${round.source}.`;
}

/** Dimension under the bottles. */
export function roundDimension(concentrateL: number): string {
  return `${withUnit(concentrateL, 'L', 1)} a round`;
}

interface Dates {
  readonly keeping: 'keeps' | 'short' | 'none';
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly daysLeft: number;
  readonly age: 'in-date' | 'soon' | 'past' | 'no-date';
  readonly ph: number | undefined;
  readonly temperatureC: number;
  readonly temperatureTold: boolean;
  readonly state: string;
}

/** The date of a bottle in a few words, to stand under its drawing. */
export function dateWords(dates: Dates, today: string): { readonly head: string; readonly heap: boolean } {
  switch (dates.age) {
    case 'no-date':
      return { head: dates.state === 'lost' ? 'heap: lost' : 'no date: heap', heap: true };
    case 'past':
      return { head: `past ${sayDate(dates.likely, today)}: heap`, heap: true };
    default:
      return { head: `use first by ${sayDate(dates.likely, today)}`, heap: false };
  }
}

/** The same in full. */
export function dateLine(dates: Dates, today: string): string {
  const basis = `${dates.ph === undefined ? 'no pH read' : `pH\u00a0${figure(dates.ph, 1)}`}, ${withUnit(dates.temperatureC, '°C', 0)}${dates.temperatureTold ? '' : ' taken, none was told'}`;
  const range = `between ${sayDate(dates.low, today)} and ${sayDate(dates.high, today)}`;
  switch (dates.age) {
    case 'no-date':
      return dates.state === 'lost'
        ? 'Of a batch that is lost: on no bed. Open it outdoors and layer it into the heap with dry leaves.'
        : `Not a feed to keep (${basis}). Read its pH and smell it before any use; else it goes on the heap.`;
    case 'past':
      return `Past its date by ${withUnit(-dates.daysLeft, 'days', 0)}: tip it on the heap. The sources put the date anywhere ${range} (${basis}).`;
    default:
      return `${withUnit(dates.daysLeft, 'days', 0)} left. The sources put the date anywhere ${range} (${basis}); a rising pH or a film ends it at once.`;
  }
}

/** What stands in one group of bottles. */
export function groupLine(
  group: {
    readonly count: number;
    readonly sizeL: number;
    readonly filledL: number;
    readonly leftL: Range;
    readonly filledOn: string;
    readonly place: string | undefined;
  },
  today: string,
): string {
  const where = group.place === undefined ? '' : `, ${group.place}`;
  return `${counted(group.count, 'bottle')} of ${withUnit(group.sizeL, 'L')}, filled ${sayDate(group.filledOn, today)}${where}: ${band(group.leftL, 'L', 1)} left of ${withUnit(group.filledL, 'L', 1)}.`;
}

/** A group of bottles in words, for who cannot see the drawing. */
export function bottleAlternative(peg: PegName, eachL: readonly number[], sizeL: number): string {
  const full = eachL.filter((litres) => litres > 0);
  const empty = eachL.length - full.length;
  const list = full.map((litres) => withUnit(litres, 'L', 2)).join(', ');
  const rest = empty > 0 ? `, ${counted(empty, 'bottle')} empty` : '';
  return `Peg ${peg}, bottles of ${withUnit(sizeL, 'L')}, to scale: ${list || 'none with anything in it'}${rest}.`;
}

/** One line of the vent diary. */
export function ventLine(
  vent: { readonly on: string; readonly by: string; readonly found: keyof typeof shelfSheet.found | undefined },
  today: string,
): string {
  const found = vent.found === undefined ? shelfSheet.notSaid : shelfSheet.found[vent.found];
  return `${sayMoment(vent.on, today)}: ${found} (${vent.by})`;
}

/** What the vent blocks are about, for a screen reader. */
export function ventLabel(peg: PegName, found: string): string {
  return `Peg ${peg} vented just now, found: ${found}`;
}

export function tipLabel(peg: PegName, to: string): string {
  return `Peg ${peg} tipped ${to}`;
}

export function emptiedLine(
  one: { readonly peg: PegName; readonly on: string; readonly filledL: number },
  today: string,
): string {
  return `Peg ${one.peg}, ${withUnit(one.filledL, 'L', 1)}: empty since ${sayDate(one.on, today)}.`;
}
