// What looks teach: draws that fit them weigh more. When few draws are left to speak, new ones are drawn near those
// that fit, and the whole is weighed against both sources (importance sampling in stages). Seeded: the same looks
// give the same answer on every device, in whatever order they came.

import { inOrder, type Look } from '../look.ts';
import { course } from './course.ts';
import { drawOf, type Known, normals, UNKNOWNS, uniforms } from './draws.ts';
import { type Ensemble, effectiveCount, type Member } from './ensemble.ts';
import { fitLn } from './evidence.ts';

/** Where the unknowns lie, in standard deviations of the usual spread: a middle and a width for each. */
export interface Belief {
  readonly middle: Float64Array;
  readonly width: Float64Array;
}

/** Nothing learned yet. @arithmetic */
export const UNTAUGHT: Belief = {
  middle: new Float64Array(UNKNOWNS.length),
  width: new Float64Array(UNKNOWNS.length).fill(1),
};

/** A batch of draws and the belief they were drawn from. */
export interface Stage {
  readonly members: readonly Member[];
  readonly from: Belief;
}

/** Draws this many speak for themselves; fewer, and a new stage is drawn. */
const ENOUGH = 120;
/** New stages at most, draws in each, and how much wider than what fits they are drawn. */
const STAGES = 3;
const DRAWS_A_STAGE = 300;
const WIDER = 1.4;
/** No new stage is drawn narrower than this share of the usual spread. */
const LEAST_WIDTH = 0.25;
/** Nor does it leave the region that the usual spread holds possible. */
const FARTHEST = 4;

function densityLn(z: Float64Array, { middle, width }: Belief): number {
  let sum = 0;
  for (let i = 0; i < z.length; i++) {
    const w = width[i] as number;
    const off = ((z[i] as number) - (middle[i] as number)) / w;
    sum -= 0.5 * off * off + Math.log(w);
  }
  return sum;
}

/** Weights of all draws: prior times fit, over the blend of beliefs they came from. */
function weigh(stages: readonly Stage[], prior: Belief, looks: readonly Look[]): Ensemble {
  const members = stages.flatMap((stage) => stage.members);
  const total = members.length;
  const logs = members.map(({ unknowns, run }) => {
    let blend = 0;
    for (const stage of stages) blend += (stage.members.length / total) * Math.exp(densityLn(unknowns, stage.from));
    const fit = looks.reduce((sum, look) => sum + fitLn(run, look), 0);
    return densityLn(unknowns, prior) + fit - Math.log(blend);
  });
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const weights = Float64Array.from(logs, (log) => Math.exp(log - most));
  const sum = weights.reduce((a, b) => a + b, 0);
  for (let i = 0; i < weights.length; i++) weights[i] = (weights[i] as number) / sum;
  return { members, weights };
}

/** Middle and width of what the weighted draws hold. @arithmetic weighted mean and standard deviation */
export function beliefOf({ members, weights }: Ensemble): Belief {
  const middle = new Float64Array(UNKNOWNS.length);
  const width = new Float64Array(UNKNOWNS.length);
  members.forEach(({ unknowns }, m) => {
    for (let i = 0; i < middle.length; i++)
      middle[i] = (middle[i] as number) + (weights[m] as number) * (unknowns[i] as number);
  });
  members.forEach(({ unknowns }, m) => {
    for (let i = 0; i < middle.length; i++)
      width[i] = (width[i] as number) + (weights[m] as number) * ((unknowns[i] as number) - (middle[i] as number)) ** 2;
  });
  return { middle, width: width.map(Math.sqrt) };
}

/** Draws near what fits: the same draws' other parameters, other unknowns. */
function drawNear(known: Known, near: Belief, stage: number, days: number): Stage {
  const next = normals(uniforms(known.seed + 104729 * stage, 0));
  const from: Belief = {
    middle: near.middle.map((value) => Math.max(-FARTHEST, Math.min(FARTHEST, value))),
    width: near.width.map((value) => Math.max(LEAST_WIDTH, Math.min(1, value * WIDER))),
  };
  const members: Member[] = [];
  for (let i = 0; i < DRAWS_A_STAGE; i++) {
    const unknowns = Float64Array.from(
      UNKNOWNS,
      (_, u) => (from.middle[u] as number) + (from.width[u] as number) * next(),
    );
    const index = 100000 * stage + i;
    const draw = drawOf(known, index, unknowns);
    members.push({ index, unknowns, run: course(draw.batch, draw.parameters, days) });
  }
  return { members, from };
}

/** What is believed of a batch after its looks, and how many draws still speak. */
export interface Learned {
  readonly ensemble: Ensemble;
  readonly belief: Belief;
  /** Evenly weighted draws that would say as much. */
  readonly effectiveDrawsCount: number;
  /** All draws by where they came from, and what was believed before any look: what asOf weighs anew. */
  readonly stages: readonly Stage[];
  readonly prior: Belief;
}

/** What the same draws would have said with these looks alone, such as those up to a day. @arithmetic weights anew, no new draws */
export function asOf({ stages, prior }: Learned, looks: readonly Look[]): Ensemble {
  return weigh(stages, prior, inOrder(looks));
}

/**
 * What the looks teach about a batch.
 *
 *   weight ∝ prior(z) · Π fit(look | run) / Σ_k share_k · q_k(z)
 *
 * Up to three stages of 300 new draws near what fits, while fewer than 120 draws speak. Looks without acidity, nose
 * or top teach nothing. Widths of new stages never fall below a quarter of the usual spread.
 * @range looks within the days that were run; later ones are read at the last day
 * @memory spreads and errors; the method is importance sampling with deterministic mixture weights
 * @checked test/property/forecast.test.ts: coverage, order, a reading on the median
 */
export function learn(of: {
  readonly known: Known;
  /** Draws already run from the usual spread. */
  readonly first: readonly Member[];
  readonly looks: readonly Look[];
  readonly days: number;
  /** What finished batches of the like have taught; nothing if absent. */
  readonly prior?: Belief | undefined;
  /** New stages at most; 0 only weighs the draws that are there, which is quick and coarser. */
  readonly mostStagesCount?: number | undefined;
}): Learned {
  const { known, days, prior = UNTAUGHT, mostStagesCount = STAGES } = of;
  const looks = inOrder(of.looks);
  const stages: Stage[] = [{ members: of.first, from: UNTAUGHT }];
  let ensemble = weigh(stages, prior, looks);
  for (let stage = 1; stage <= mostStagesCount && effectiveCount(ensemble.weights) < ENOUGH; stage++) {
    stages.push(drawNear(known, beliefOf(ensemble), stage, days));
    ensemble = weigh(stages, prior, looks);
  }
  return { ensemble, belief: beliefOf(ensemble), effectiveDrawsCount: effectiveCount(ensemble.weights), stages, prior };
}

/** Widening of what one finished batch taught before the next of the like starts from it. @practice our caution, no source */
const FORGETTING = 0.5;

/**
 * What the next batch of the like starts from: half way back from what was learned to knowing nothing.
 *
 *   middle = 0.5 · learned;   width² = 0.5 · learned² + 0.5
 *
 * Start pH and warmth belong to the one batch and are forgotten whole.
 * @practice our caution, no source
 */
export function carriedOver(learned: Belief): Belief {
  const middle = new Float64Array(UNKNOWNS.length);
  const width = new Float64Array(UNKNOWNS.length).fill(1);
  UNKNOWNS.forEach((unknown, i) => {
    if (unknown === 'startPh' || unknown === 'warmth') return;
    middle[i] = (1 - FORGETTING) * (learned.middle[i] as number);
    width[i] = Math.sqrt((1 - FORGETTING) * (learned.width[i] as number) ** 2 + FORGETTING);
  });
  return { middle, width };
}
