// What a run says where a paper gives a number: each published quantity as it is read off a course, in the paper's
// unit. A day that does not come within the run is absent.

import { at, type Course, dayBelow, KEPT_EVERY_H } from '#engine/souring/model/course.ts';
import type { Parameters } from '#engine/souring/model/parameters.ts';
import { CELL_G } from '#engine/souring/model/state.ts';
import type { Filled } from './batch.ts';

const LACTIC_G = 90.08;
const ACETIC_G = 60.05;
const BUTYRIC_G = 88.11;
const ETHANOL_G_PER_ML = 0.7893;
/** Titration ends at 8.2; the plants' buffer between 6.2 and there counts to two fifths, as it was not all soured. */
const TITRATION = { fromPh: 6.2, toPh: 8.2, bufferShare: 0.4 } as const;
/** A pH counts as settled within this of the last one. */
const SETTLED_PH = 0.2;

/** One run beside the batch it came from. */
export interface Ran {
  readonly run: Course;
  readonly filled: Filled;
  readonly parameters: Parameters;
}

/** Titratable acid, mol per litre: lactic, acetic and butyric acid and two fifths of the buffer from 6.2 to 8.2. */
function titratableMolPerL({ run, filled }: Ran, day: number): number {
  const buffer = filled.batch.mixture.bufferEqPerLPerPh;
  return (
    at(run, day, 'lacticGPerL') / LACTIC_G +
    at(run, day, 'aceticGPerL') / ACETIC_G +
    at(run, day, 'butyricGPerL') / BUTYRIC_G +
    TITRATION.bufferShare * buffer * (TITRATION.toPh - TITRATION.fromPh)
  );
}

/** Sugar that chopped tissue never lets out; an analysis of the whole crop still finds it. */
function lockedSugarGPerL({ filled, parameters }: Ran): number {
  return (1 - parameters.plant.accessFraction) * filled.batch.mixture.boundSugarGPerL;
}

function log10PerG(cellsGPerL: number, filled: Filled): number {
  return Math.log10(Math.max(1, cellsGPerL / CELL_G / 1000 / filled.allKgPerL));
}

type Reading = (ran: Ran, day: number) => number;

const READINGS: Readonly<Record<string, Reading>> = {
  ph: ({ run }, day) => at(run, day, 'ph'),
  lacticGPerL: ({ run }, day) => at(run, day, 'lacticGPerL'),
  aceticGPerL: ({ run }, day) => at(run, day, 'aceticGPerL'),
  lacticGPerKgDm: ({ run, filled }, day) => at(run, day, 'lacticGPerL') / filled.dryKgPerL,
  aceticGPerKgDm: ({ run, filled }, day) => at(run, day, 'aceticGPerL') / filled.dryKgPerL,
  butyricGPerKgDm: ({ run, filled }, day) => at(run, day, 'butyricGPerL') / filled.dryKgPerL,
  aceticToLactic: ({ run }, day) => at(run, day, 'aceticGPerL') / at(run, day, 'lacticGPerL'),
  ammoniaNGPerKgN: ({ run, filled }, day) =>
    (1000 * at(run, day, 'ammoniaMolPerL')) / filled.batch.mixture.nitrogenMolPerL,
  sugarGPerKgDm: (ran, day) =>
    (at(ran.run, day, 'boundGPerL') + at(ran.run, day, 'sugarGPerL') + lockedSugarGPerL(ran)) / ran.filled.dryKgPerL,
  sugarUsedGPerL: ({ run }, day) =>
    at(run, 0, 'boundGPerL') + at(run, 0, 'sugarGPerL') - at(run, day, 'boundGPerL') - at(run, day, 'sugarGPerL'),
  ethanolPercent: ({ run }, day) => at(run, day, 'ethanolGPerL') / ETHANOL_G_PER_ML / 10,
  titratableAcidPercent: (ran, day) => (titratableMolPerL(ran, day) * LACTIC_G) / 10,
  titratableAceticPercent: (ran, day) => (titratableMolPerL(ran, day) * ACETIC_G) / 10,
  log10CfuPerG: ({ run, filled }, day) => log10PerG(at(run, day, 'lacticCellsGPerL'), filled),
  log10EnteroPerG: ({ run, filled }, day) => log10PerG(at(run, day, 'enteroCellsGPerL'), filled),
};

const dayOf = (point: number) => (point * KEPT_EVERY_H) / 24;

/** First day on which something is so, between the points by straight line of `value` against `level`. */
function dayReaching(ran: Ran, level: number, value: (ran: Ran, day: number) => number): number | undefined {
  let before = value(ran, 0);
  if (before >= level) return 0;
  for (let point = 1; point < ran.run.points; point++) {
    const here = value(ran, dayOf(point));
    if (here >= level) return dayOf(point - 1 + (level - before) / (here - before));
    before = here;
  }
  return undefined;
}

function dayOfPeak({ run }: Ran): number {
  const cells = run.lacticCellsGPerL;
  return dayOf(cells.indexOf(cells.reduce((most, one) => Math.max(most, one), 0)));
}

function daySettled({ run }: Ran): number {
  const last = run.ph[run.points - 1] as number;
  let point = run.points - 1;
  while (point > 0 && Math.abs((run.ph[point - 1] as number) - last) <= SETTLED_PH) point--;
  return dayOf(point);
}

/** Whether a quantity is a day on which something comes, not a value on a day. */
export function isTime(quantity: string): boolean {
  return quantity.startsWith('daysTo');
}

/** What a run says of a published quantity; undefined when a day does not come within the run. */
export function readOff(ran: Ran, quantity: string, day: number | undefined): number | undefined {
  const [, what, level] = /^daysTo(Acid|Ph|PeakCount|SettledPh)([\d.]*)$/.exec(quantity) ?? [];
  if (what === 'Acid')
    return dayReaching(ran, Number(level), (one, on) => READINGS.titratableAcidPercent?.(one, on) ?? 0);
  if (what === 'Ph') return dayBelow(ran.run, Number(level));
  if (what === 'PeakCount') return dayOfPeak(ran);
  if (what === 'SettledPh') return daySettled(ran);
  const reading = READINGS[quantity];
  if (reading === undefined) throw new Error(`no reading for ${quantity}`);
  if (day === undefined) throw new Error(`${quantity} needs a day`);
  return reading(ran, day);
}
