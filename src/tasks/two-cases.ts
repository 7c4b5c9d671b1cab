// Two cases of one filling before it is filled: what fits, and what to expect by one run of likely values, at once.
// The bands come from more runs of the same opened batch; what differs between two cases is case-difference.ts.

import type { Fill, Layer, Lift } from '#engine/pail/volume.ts';
import { roomGasRules } from '#engine/rules/gas.ts';
import { judge } from '#engine/rules/rule.ts';
import type { Treated } from '#engine/scraps/part.ts';
import { type Airing, airChangesPerH } from '#engine/souring/gas/airing.ts';
import { CO2_LIMITS_PPM, leastAirChangesPerH, mostPpm } from '#engine/souring/gas/room.ts';
import type { Chop } from '#engine/souring/model/chop.ts';
import { course } from '#engine/souring/model/course.ts';
import { UNKNOWNS } from '#engine/souring/model/draws.ts';
import { likelyParameters } from '#engine/souring/model/parameters.ts';
import { gasCautions } from '#words/en/gas.ts';
import { type Caution, spoken } from './caution.ts';
import type { Problem } from './problem.ts';
import { answerSour } from './sour-answer.ts';
import { type OpenedSour, openSour } from './sour-open.ts';
import type { SourResult } from './sour-result.ts';

/** How far both cases are foretold. */
export const CASE_DAYS = 60;
/** The day on which the sugar left is read off: that of a usual straining. */
export const SUGAR_DAY = 21;

/** Room the vessel will stand in, its air guessed from a word. */
export interface CaseRoom {
  readonly roomM3: number;
  readonly airing: Airing;
}

/** One case in the contract's names, as `sour` takes it. */
export interface CaseInput {
  readonly vessel: { readonly volumeL: number; readonly gasRoom: number; readonly lid?: 'loose' | 'vent' | 'tight' };
  readonly plants: readonly { readonly material: string; readonly massKg: number; readonly treated?: Treated }[];
  readonly water: { readonly volumeL: number; readonly alkalinityMeqPerL?: number };
  readonly sugar?: { readonly product: string; readonly massKg: number };
  readonly temperatureC: number;
  readonly chop: Chop;
}

/** The figures of a case that two are compared by; null where it does not come to it within the days foretold. */
export interface CaseFigures {
  readonly sourDay: number | null;
  readonly heldDay: number | null;
  readonly plateauPh: number;
  readonly sugarLeftGPerL: number;
  readonly mostGas: { readonly day: number; readonly gasL: number };
}

export interface CaseAnswer {
  readonly opened: OpenedSour;
  readonly filled: { readonly fill: Fill; readonly lift: Lift; readonly layers: readonly Layer[] };
  readonly line: readonly { readonly day: number; readonly ph: number }[];
  readonly figures: CaseFigures;
  readonly cautions: readonly Caution[];
  /** The likely run as the whole answer of `sour`, its bands without width. */
  readonly likely: SourResult;
}

type Answer =
  | { readonly ok: true; readonly value: CaseAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What a case comes to, from one run: quick enough to follow every touch. */
export function answerCase(input: CaseInput): Answer {
  const asked = openSour(sourInput(input));
  if (!asked.ok) return asked;
  const { opened } = asked;
  const run = course(opened.known.batch, likelyParameters, opened.runDays);
  const likely = answerSour(opened, [{ index: 0, unknowns: new Float64Array(UNKNOWNS.length), run }]);
  return {
    ok: true,
    value: {
      opened,
      filled: opened.filled,
      line: likely.band.map(({ day, ph }) => ({ day, ph: ph.likely })),
      figures: figuresOf(likely),
      cautions: likely.cautions,
      likely,
    },
  };
}

/** The input of `sour` for a case. */
export function sourInput({ plants, ...input }: CaseInput) {
  return {
    ...input,
    plants: [...plants],
    days: CASE_DAYS,
  };
}

function figuresOf(answer: SourResult): CaseFigures {
  const most = answer.days.reduce((a, b) => (b.gasLPerDay > a.gasLPerDay ? b : a));
  return {
    sourDay: answer.reach['4.2']?.likely ?? null,
    heldDay: answer.heldDay?.likely ?? null,
    plateauPh: answer.plateauPh.likely,
    sugarLeftGPerL: answer.days[SUGAR_DAY]?.sugarGPerL ?? Number.NaN,
    mostGas: { day: most.day, gasL: most.gasLPerDay },
  };
}

/** Low and high end of each figure over many runs. */
export interface CaseBands {
  /** Days; `high` is null where more than one run in ten is later than the days foretold. Null where most runs are. */
  readonly sourDay: { readonly low: number; readonly high: number | null } | null;
  readonly heldDay: { readonly low: number; readonly high: number | null } | null;
  readonly plateauPh: { readonly low: number; readonly high: number };
  readonly sugarLeftGPerL: { readonly low: number; readonly high: number };
  readonly mostGasL: { readonly low: number; readonly high: number };
}

/** The spans that stand beside the likely figures, once the runs of a case are in. */
export function caseBands(answer: SourResult): CaseBands {
  const days = (range: SourResult['heldDay']) => range && { low: range.low, high: range.openEnded ? null : range.high };
  // The most may fall on another day in each run: the most of each end over all days.
  const mostGas = (end: 'low' | 'high') => Math.max(...answer.days.map(({ gasRangeLPerDay }) => gasRangeLPerDay[end]));
  return {
    sourDay: days(answer.reach['4.2']),
    heldDay: days(answer.heldDay),
    plateauPh: answer.plateauPh,
    sugarLeftGPerL: answer.days[SUGAR_DAY]?.sugarRangeGPerL ?? { low: Number.NaN, high: Number.NaN },
    mostGasL: { low: mostGas('low'), high: mostGas('high') },
  };
}

/** The air of a room on the day of the most gas, by the high end of what is foretold, and what to mind of it. */
export interface RoomAir {
  readonly mostPpm: number;
  readonly dayLimitPpm: number;
  readonly leastAirChangesPerH: number;
  readonly cautions: readonly Caution[];
}

/** Changes of air an hour that a word is counted as. */
export const roomAirChanges = (airing: Airing): number => airChangesPerH(airing);

/** CO2 where a case will stand, against the limits for workplaces. */
export function roomAir(answer: SourResult, { roomM3, airing }: CaseRoom): RoomAir {
  const room = {
    roomM3,
    airChangesPerH: airChangesPerH(airing),
    gasLPerDay: Math.max(...answer.days.map(({ gasRangeLPerDay }) => gasRangeLPerDay.high)),
    totalGasL: answer.days.reduce((sum, { gasRangeLPerDay }) => sum + gasRangeLPerDay.high, 0),
  };
  return {
    mostPpm: mostPpm(room),
    dayLimitPpm: CO2_LIMITS_PPM.day,
    leastAirChangesPerH: leastAirChangesPerH(room, CO2_LIMITS_PPM.day),
    cautions: spoken(judge(roomGasRules, room), gasCautions),
  };
}
