// A batch opened for the word `sour`: the input checked, the mixture made, the days to run counted. It is plain data,
// so that it can be handed to a worker; runs of it are the same wherever they are made.

import type { Fit } from '#engine/pail/fit.ts';
import { fit as fitRecipe } from '#engine/pail/fit.ts';
import type { Recipe } from '#engine/pail/recipe.ts';
import { type LidKind, lidMeaning } from '#engine/souring/gas/lid.ts';
import { holdDays } from '#engine/souring/lines.ts';
import { inOrder, type Look } from '#engine/souring/look.ts';
import { chopFactors } from '#engine/souring/model/chop.ts';
import { type Known, USUAL_SPREAD } from '#engine/souring/model/draws.ts';
import { type Member, runDraws } from '#engine/souring/model/ensemble.ts';
import { mixtureOf } from '#engine/souring/model/mixture.ts';
import { hourlyC } from '#engine/souring/model/temperature.ts';
import { reckoned } from '#engine/souring/odd.ts';
import { meanBetweenC } from '#engine/souring/warmth-by-day.ts';
import { recipeOf } from './fit.ts';
import { type Problem, read } from './problem.ts';
import { type SourInput, sourSchema } from './sour-input.ts';

/** Draws where nothing else is asked. */
export const DRAWS = 1000;
/** One seed for all: the same input and looks give the same answer on every device. */
const SEED = 20_417;
/** Longest run, days. */
const LONGEST_DAYS = 120;

/** An input that can be run. */
export interface OpenedSour {
  readonly input: SourInput;
  readonly unread: readonly string[];
  readonly recipe: Recipe;
  readonly filled: Fit;
  readonly known: Known;
  readonly lid: LidKind;
  /** Where nobody told the lid, and it is counted as laid on. */
  readonly lidAssumed: boolean;
  /** Days each run covers: as asked, to today, and long enough to see a hold out where it is cold. */
  readonly runDays: number;
  /** The looks in order of their days. */
  readonly looks: readonly Look[];
  readonly draws: number;
  /** The same key, the same runs: everything but the looks and what does not touch the runs. */
  readonly key: string;
}

export type Opened =
  | { readonly ok: true; readonly opened: OpenedSour }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Days that show when it is held: ten to turn sour, and half as many again as the hold asks at that warmth. */
function daysToHold(meanC: number): number {
  const days = holdDays(meanC);
  return Number.isFinite(days) ? Math.ceil(10 + 1.5 * days) : 0;
}

/** The day a judgement is for: as told, else that of the last look, else the filling. */
export function todayOf(input: SourInput, looks: readonly Look[]): number {
  return input.today ?? Math.max(0, ...looks.map(({ day }) => day));
}

/** Checks an input and makes its mixture; all problems at once where there are any. */
export function openSour(input: unknown): Opened {
  const checked = read(sourSchema, input);
  if (!checked.ok) return checked;
  const told = checked.value;
  const recipe = recipeOf(told);
  const lid = told.lid ?? told.vessel.lid ?? 'loose';
  const warmth = reckoned(told.temperatureC);
  const asked = Math.max(told.days, todayOf(told, told.looks));
  const vesselL = told.vessel.volumeL;
  const meanC = meanBetweenC(hourlyC({ warmth, days: asked, vesselL }), 0, asked);
  const runDays = Math.min(LONGEST_DAYS, Math.max(Math.ceil(asked) + 1, daysToHold(meanC)));
  const known: Known = {
    batch: {
      mixture: mixtureOf({
        ...recipe,
        starterL: told.starterL,
        saltKg: told.saltKg,
        // Absent where it is what the model's figures stand for, so that the runs stay the same to the last digit.
        ...(told.chop !== 'chopped' && { chop: chopFactors(told.chop) }),
      }),
      hourlyC: hourlyC({ warmth, days: runDays, vesselL }),
      opennessFraction: lidMeaning(lid).opennessFraction.likely,
    },
    spread: USUAL_SPREAD,
    seed: SEED,
  };
  return {
    ok: true,
    opened: {
      input: told,
      unread: checked.unread,
      recipe,
      filled: fitRecipe(recipe, told.beds),
      known,
      lid,
      lidAssumed: told.lid === undefined && told.vessel.lid === undefined,
      runDays,
      looks: inOrder(told.looks),
      draws: Math.round(told.draws ?? DRAWS),
      key: JSON.stringify([known.batch.mixture, warmth, vesselL, known.batch.opennessFraction, runDays]),
    },
  };
}

/** Runs draws `from` to `from + count`, in slices as workers like them. */
export function runSour(opened: OpenedSour, from: number, count: number): readonly Member[] {
  return runDraws(opened.known, { from, count, days: opened.runDays });
}
