// From the can to the plate: whether a bed that is eaten from may be fed, how, and how many days lie between pour and
// picking. Every reason that holds is weighed and the longest stands, so that one more answer never shortens a wait.
// What is not told counts against it. Days are limits.ts, crops crop-names.ts; which rule speaks is rules/eating.ts.

import type { Profile } from '../scraps/profile.ts';
import { type Habit, habitOf } from './crop-names.ts';
import { NOT_HELD_DAYS, RAW_MANURE_DAYS, RAW_SOIL_DAYS, SCHOOL_RAW_DAYS, type Way } from './limits.ts';

/** How a grower says a bed is eaten; 'raw' where the part was not told. */
export type Eaten = 'raw' | 'raw-leaf' | 'raw-fruit' | 'raw-root' | 'cooked' | 'not-eaten';

/**
 * What animals may have left in a batch. no: plants alone, in drinking water · possible: roof, ditch or pond water, or
 * something nobody named · yes: manure, meat, what was on a plate, droppings.
 */
export type AnimalOrigin = 'no' | 'possible' | 'yes';

/** Ways that are open: both, the soil alone, none. */
export type How = 'leaf' | 'soil' | 'never';

/** Why a bed waits. */
export type EatingReason =
  | 'animal-origin'
  | 'sprayed-raw'
  | 'source-not-known'
  | 'not-held-raw'
  | 'animal-origin-possible'
  | 'sold-untreated'
  | 'immune-weak'
  | 'overridden'
  | 'school'
  | 'held-raw'
  | 'cooked'
  | 'not-eaten';

/** One pour, told or thought of, and the bed under it. */
export interface EatingAsk {
  /** Everything that grows on the bed, as told. */
  readonly crop?: string | undefined;
  readonly eaten?: Eaten | undefined;
  /** Undefined where it is not known what was poured. */
  readonly animalOrigin?: AnimalOrigin | undefined;
  readonly held?: boolean | undefined;
  readonly way: Way;
  readonly profile: Profile;
  /** Whether a rule that guards those who eat was overridden for this pour. */
  readonly overridden?: boolean | undefined;
}

/** One reason with its days. `source` is where the reason stands, `daysSource` where the days do. */
export interface Waited {
  readonly reason: EatingReason;
  readonly days: number;
  readonly source: string;
  readonly daysSource: string;
}

export interface EatingWait extends Waited {
  readonly how: How;
  readonly habit: Habit;
  /** What the bed counts as, after all answers. */
  readonly countsAs: 'raw' | 'cooked' | 'not-eaten';
  readonly touchesSoil: boolean;
}

/**
 * What a bed counts as. What nobody told is eaten raw; what is sold counts as cooked only where the code's own list
 * has it as rarely eaten raw, since the buyer decides.
 * @source cfr-21-112 112.2(a)(1)
 */
export function countsAs({
  eaten,
  crop,
  profile,
}: Pick<EatingAsk, 'eaten' | 'crop' | 'profile'>): EatingWait['countsAs'] {
  if (eaten === 'not-eaten') return 'not-eaten';
  if (eaten !== 'cooked') return 'raw';
  return profile.sells && habitOf(crop).raw !== 'rarely' ? 'raw' : 'cooked';
}

/** Whether the part that is eaten touches the soil: by the crop, or by a leaf or root that was told. */
function touches(ask: EatingAsk, habit: Habit): boolean {
  return habit.touchesSoil || ask.eaten === 'raw-leaf' || ask.eaten === 'raw-root';
}

/**
 * Every reason to wait between this pour and picking, with its days.
 * @source cfr-7-205-203 (c)(1): 120 days where the edible part touches soil or its particles, 90 otherwise
 * @source nosb-2004 the same days for teas that were not tested
 */
export function eatingReasons(ask: EatingAsk): readonly Waited[] {
  const counts = countsAs(ask);
  if (counts === 'not-eaten') return [];
  const { profile, animalOrigin } = ask;
  const { touchesSoil, otherwise } = RAW_MANURE_DAYS;
  const byTouch = touches(ask, habitOf(ask.crop)) ? touchesSoil : otherwise;
  const reasons: Waited[] = [];
  const add = (reason: EatingReason, days: number, source: string, daysSource = source) =>
    reasons.push({ reason, days, source, daysSource });
  if (animalOrigin === 'yes') add('animal-origin', ask.way === 'leaf' ? touchesSoil : byTouch, 'cfr-7-205-203');
  if (ask.overridden === true) add('overridden', NOT_HELD_DAYS, 'our-caution', 'nosb-2004');
  if (counts === 'cooked') return reasons;
  if (ask.way === 'leaf') add('sprayed-raw', NOT_HELD_DAYS, 'nosb-2004');
  if (animalOrigin === undefined) add('source-not-known', NOT_HELD_DAYS, 'nosb-2004');
  if (ask.held !== true) add('not-held-raw', NOT_HELD_DAYS, 'nosb-2004');
  if (animalOrigin === 'possible') add('animal-origin-possible', byTouch, 'our-caution', 'cfr-7-205-203');
  if (profile.sells) add('sold-untreated', byTouch, 'cfr-21-112', 'nosb-2004');
  if (profile.immuneWeak) add('immune-weak', NOT_HELD_DAYS, 'our-caution', 'nosb-2004');
  if (profile.school) add('school', SCHOOL_RAW_DAYS, 'our-caution');
  add('held-raw', RAW_SOIL_DAYS, 'our-caution');
  return reasons;
}

/**
 * May this bed be fed, how, and how long till it is picked: the longest of all reasons.
 * @source cfr-7-205-203 (c)(1)
 */
export function eatingWait(ask: EatingAsk): EatingWait {
  const habit = habitOf(ask.crop);
  const counts = countsAs(ask);
  const none: Waited = {
    reason: counts === 'not-eaten' ? 'not-eaten' : 'cooked',
    days: 0,
    source: 'our-caution',
    daysSource: 'our-caution',
  };
  const longest = eatingReasons(ask).reduce((most, one) => (one.days > most.days ? one : most), none);
  return { ...longest, how: howOf(ask, counts), habit, countsAs: counts, touchesSoil: touches(ask, habit) };
}

/** Which ways are open: never on leaves eaten raw or from what animals may have left; none for those of weak immunity. */
function howOf({ animalOrigin, profile }: EatingAsk, counts: EatingWait['countsAs']): How {
  if (counts === 'raw') return profile.immuneWeak ? 'never' : 'soil';
  return animalOrigin === 'no' ? 'leaf' : 'soil';
}
