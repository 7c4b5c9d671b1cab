// What could still help a batch that is slow, doubtful or lost, least effort first, and what the model expects of each
// against leaving it as it is. Tipping it is always among them, and for a lost batch alone. The sentences stand in
// words/en/rescue.ts, the cautions in rules/rescue.ts.

import type { Origin, Values } from '../rules/rule.ts';
import { lidMeaning } from './gas/lid.ts';
import type { Judgement } from './judge.ts';
import { isFoul, type Look } from './look.ts';
import type { Known } from './model/draws.ts';
import type { Ensemble } from './model/ensemble.ts';
import type { ReasonCode } from './reason.ts';
import { starterGPerL, starterL, sugarMissingShare, sugarRoomGPerL, sugarSteps, whiteSugarG } from './rescue/dose.ts';
import { lastDayC, pick, type Reach, reachFrom, runOn, type Step, type Trial } from './rescue/expect.ts';

/** What can be done, in the order of the effort it takes. */
export const RESCUES = ['wait', 'warmth', 'skim', 'close', 'sugar', 'starter', 'tip'] as const;
export type RescueKind = (typeof RESCUES)[number];

/** What the model expects, beside what it expects if nothing is done. */
export interface Expectation {
  readonly reach: Reach;
  readonly asItIs: Reach;
  readonly untilDay: number;
}

/** One thing that can be done. */
export interface Rescue {
  readonly kind: RescueKind;
  readonly values: Values;
  readonly source: Origin;
  /** Absent for tipping, and where the temperature is not known. */
  readonly expects?: Expectation;
  /** Whether the model expects more of it than of waiting; absent where it expects nothing, and for waiting itself. */
  readonly helps?: boolean;
}

export interface RescueAsk {
  readonly judgement: Judgement;
  readonly looks: readonly Look[];
  readonly known: Known;
  /** What is believed after the looks. */
  readonly ensemble: Ensemble;
  readonly today: number;
  /** Draws run again for each option. */
  readonly drawsCount?: number | undefined;
}

const USUAL_DRAWS = 80;
/** How far ahead the options are compared. */
const AHEAD_DAYS = 21;
/** A place worth moving to, and below which temperature the move is worth it. @practice our caution, no source */
const WARM_PLACE_C = 20;
const COLD_BELOW_C = 18;
/** What counts as more: a twentieth more of the draws, or a day sooner. @practice our caution, no source */
const MORE_SHARE = 0.05;
const SOONER_DAYS = 1;
/** Sugar is what is missing when most draws say so; an amount does when four draws in five get there. @practice our caution, no source */
const MISSING_SHARE = 0.5;
const DOES_IT_SHARE = 0.8;

const FOUL_CODES: readonly ReasonCode[] = ['foul-once', 'noses-differ', 'climbed-a-little', 'buffer-rises'];
const FILM_CODES: readonly ReasonCode[] = ['flat-white', 'white-fuzz-once'];

/** A foul word by anybody, a climb, or acid that goes missing: no sugar and no starter is put into such a batch. @practice our caution, no source */
export function mayBeFoul(judgement: Judgement, looks: readonly Look[]): boolean {
  return looks.some(isFoul) || judgement.state === 'lost' || has(judgement, FOUL_CODES);
}

/**
 * Ranked options for a slow, doubtful or lost batch; none for any other word.
 *
 * A lost batch is tipped, and nothing else is offered. Sugar only where it is what is missing, never past the most,
 * never to a batch that may be foul; the smallest amount tried that brings four draws in five to pH 4.0.
 * @range `today` within the looks; the last day's temperatures are taken to go on
 * @returns least effort first, tipping last
 * @memory the model of rates.ts; its errors against published series stand in docs/validation.md
 * @checked test/property/rescue.test.ts
 */
export function rescues(ask: RescueAsk): readonly Rescue[] {
  const { judgement, looks, known, today } = ask;
  const { state } = judgement;
  if (state === 'lost') return [TIP];
  if (state !== 'slow' && state !== 'doubtful') return [];

  const untilDay = today + AHEAD_DAYS;
  const trial: Trial = { known, members: pick(ask.ensemble, ask.drawsCount ?? USUAL_DRAWS), today, untilDay };
  const lastC = lastDayC(known.batch.hourlyC, today);
  if (!Number.isFinite(lastC)) return [waitFor(judgement, today), warmer(lastC), ...films(judgement), TIP];

  const asRuns = runOn(trial, {});
  const asItIs = reachFrom(asRuns, today);
  const tried = (rescue: Rescue, step: Step): Rescue => {
    const reach = reachFrom(runOn(trial, step), today);
    return { ...rescue, expects: { reach, asItIs, untilDay }, helps: isMore(reach, asItIs) };
  };

  const found: Rescue[] = [{ ...waitFor(judgement, today), expects: { reach: asItIs, asItIs, untilDay } }];
  if (lastC < COLD_BELOW_C) found.push(tried(warmer(lastC), { placeC: WARM_PLACE_C }));
  for (const skim of films(judgement)) found.push(tried(skim, { skim: true }));
  const shutTo = lidMeaning('vent').opennessFraction.likely;
  const opennessFraction =
    known.batch.changes?.findLast((one) => one.opennessFraction !== undefined)?.opennessFraction ??
    known.batch.opennessFraction;
  if (!(opennessFraction <= shutTo)) found.push(tried(option('close', {}), { opennessFraction: shutTo }));
  const feedable = !mayBeFoul(judgement, looks) && (state === 'slow' || has(judgement, ['stuck']));
  if (feedable) {
    if (sugarMissingShare(asRuns) >= MISSING_SHARE) found.push(...sugared(trial, tried));
    const cells = { addStarterGPerL: starterGPerL() };
    found.push(tried(option('starter', { volumeL: starterL(known.batch.mixture) }), cells));
  }
  return [...found, TIP];
}

const TIP: Rescue = { kind: 'tip', values: {}, source: 'our-caution' };

function option(kind: RescueKind, values: Values): Rescue {
  return { kind, values, source: 'our-caution' };
}

function waitFor({ nextLookDay }: Judgement, today: number): Rescue {
  return option('wait', { nextLookDay: nextLookDay ?? today });
}

function warmer(fromC: number): Rescue {
  return option('warmth', { fromC, toC: WARM_PLACE_C });
}

function films(judgement: Judgement): readonly Rescue[] {
  return has(judgement, FILM_CODES) ? [option('skim', {})] : [];
}

function has({ reasons }: Judgement, codes: readonly ReasonCode[]): boolean {
  return reasons.some(({ code }) => codes.includes(code));
}

/** The smallest amount tried that does it, or else all there is room for; none without room, or where it helps nothing. */
function sugared(trial: Trial, tried: (rescue: Rescue, step: Step) => Rescue): readonly Rescue[] {
  const { batch } = trial.known;
  const roomGPerL = sugarRoomGPerL(batch);
  let best: Rescue | undefined;
  for (const hexoseGPerL of sugarSteps(roomGPerL)) {
    const sugarG = whiteSugarG(batch.mixture, hexoseGPerL);
    const values = { hexoseGPerL, sugarG, mostG: whiteSugarG(batch.mixture, roomGPerL) };
    best = tried({ ...option('sugar', values), source: 'utar-fermentation-2025' }, { addHexoseGPerL: hexoseGPerL });
    if ((best.expects?.reach['4.0'].reachedFraction ?? 0) >= DOES_IT_SHARE) break;
  }
  return best?.helps === true ? [best] : [];
}

/** Whether a step gets more of the draws there, or the likely day is sooner. */
function isMore(reach: Reach, asItIs: Reach): boolean {
  return (['4.2', '4.0'] as const).some((line) => {
    const [step, plain] = [reach[line], asItIs[line]];
    if (step.reachedFraction >= plain.reachedFraction + MORE_SHARE) return true;
    return step.likely !== undefined && plain.likely !== undefined && step.likely <= plain.likely - SOONER_DAYS;
  });
}
