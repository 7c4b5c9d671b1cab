// Every rule there is, in the order of the work: water and scraps, the pail, the days of souring, the bottle, the
// can and the bed. For whoever audits them; a task takes the lists of its own place, not this one.

import { batchRules } from './batch.ts';
import { bedRules, spacingRules } from './bed.ts';
import { bioassayRules } from './bioassay.ts';
import { strainRules } from './bottle.ts';
import { canRules } from './can.ts';
import { careRules, fillAirRules } from './care.ts';
import { eatingRules } from './eating.ts';
import { fitRules } from './fit.ts';
import { foulGasRules, lidGasRules, roomGasRules } from './gas.ts';
import { groundAnswerRules, groundRules, soilTestRules } from './ground.ts';
import { heapLookRules, heapMixRules } from './heap.ts';
import { bottleProfileRules, fillProfileRules, handsRules } from './profile.ts';
import { rescueRules, tipRules } from './rescue.ts';
import type { Rule } from './rule.ts';
import { scrapsRules } from './scraps.ts';
import { excludedRules, slipRules } from './slip.ts';
import { germinationRules, pourHourRules, sprayRules } from './spray.ts';
import { bottleUseRules, insectRules, lidRules, liftRules } from './vessel.ts';
import { warmthRules } from './warmth.ts';
import { waterRules } from './water.ts';

/** Rules that are asked at one place of decision. */
export interface RuleGroup {
  /** The place, in a few words. */
  readonly place: string;
  readonly rules: readonly Rule<never>[];
}

/** The places of decision in the order of the work, each with all its rules. */
export const ruleGroups: readonly RuleGroup[] = [
  { place: 'Water', rules: waterRules },
  { place: 'Source slip', rules: slipRules },
  { place: 'Plants that stay out', rules: excludedRules },
  { place: 'Bean test', rules: bioassayRules },
  { place: 'Scraps', rules: scrapsRules },
  { place: 'Weighing in', rules: fitRules },
  { place: 'Lid at filling', rules: lidRules },
  { place: 'Open vessel', rules: insectRules },
  { place: 'Air of the room at filling', rules: fillAirRules },
  { place: 'Who is about at filling', rules: fillProfileRules },
  { place: 'Lid while it gasses', rules: lidGasRules },
  { place: 'Room where it stands', rules: roomGasRules },
  { place: 'Warmth', rules: warmthRules },
  { place: 'Rescue', rules: rescueRules },
  { place: 'Opening a foul batch', rules: foulGasRules },
  { place: 'Tipping', rules: tipRules },
  { place: 'Straining', rules: strainRules },
  { place: 'Lifting', rules: liftRules },
  { place: 'Bottles', rules: bottleUseRules },
  { place: 'Who is about where bottles stand', rules: bottleProfileRules },
  { place: 'Whose hands', rules: handsRules },
  { place: 'Care of those at a batch', rules: careRules },
  { place: 'Batch to be poured', rules: batchRules },
  { place: 'Those who eat', rules: eatingRules },
  { place: 'Can', rules: canRules },
  { place: 'Bed', rules: [...bedRules, ...spacingRules] },
  { place: 'Hour to spray', rules: sprayRules },
  { place: 'Hour to pour', rules: pourHourRules },
  { place: 'Cress test', rules: germinationRules },
  { place: 'Heap as it is built', rules: heapMixRules },
  { place: 'Heap as it works', rules: heapLookRules },
  { place: 'Soil test', rules: soilTestRules },
  { place: 'Bed over a season', rules: groundRules },
  { place: 'Plot over a season', rules: groundAnswerRules },
];

/** Every rule of every place, each arm of a rule by itself. */
export const allRules: readonly Rule<never>[] = ruleGroups.flatMap(({ rules }) => rules);
