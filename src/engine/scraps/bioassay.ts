// The bean test of a lot that was set aside: beans in the lot against beans in clean mix, read at three true
// leaves. Leaves cupped or fern-like in the test pots alone are the main sign. The sentences stand in
// words/en/bioassay.ts; a clear test is a good sign and no proof.

import { chanceOfSoMany } from '../quantity/fisher.ts';

/**
 * How the test is laid out; times are the longer of those published, so that slow damage still shows.
 * Seeds a pot: the published bean or pea test sows three.
 * @source wsu-bioassay general procedures
 * @source npic-herbicides-in-compost bioassay, 3-4 weeks
 */
export const BIOASSAY = {
  leastPotCount: 3,
  seedsPerPotCount: 3,
  leastDays: 21,
  mostDays: 28,
  leavesCount: 3,
} as const;

/** Fewer of the control come up than this: the beans or the place were at fault, and nothing is shown. @practice our caution, no source */
export const CONTROL_GERMINATED_FRACTION = 0.8;
/** More of the control are deformed than this: something other than the lot harms them. @practice our caution, no source */
export const CONTROL_DEFORMED_FRACTION = 0.1;
/** Of what the control brought up, the test pots bring up at least this; a seed that stays away shows no leaf. @practice our caution, no source */
const TEST_AGAINST_CONTROL_FRACTION = 0.8;
/** A difference that chance alone would bring less often than this counts as one. @practice the usual one in twenty */
export const CHANCE_LIMIT_FRACTION = 0.05;

/** One kind of pot as counted on the reading day. */
export interface PotsRead {
  readonly potCount: number;
  readonly sownCount: number;
  readonly germinatedCount: number;
  /** Of those that came up: leaves cupped, fern-like or twisted. */
  readonly deformedCount: number;
}

export interface BioassayReading {
  readonly test: PotsRead;
  readonly control: PotsRead;
  readonly sinceSownDays: number;
  /** True leaves of the control. */
  readonly leavesCount: number;
}

export type BioassayReason =
  | 'deformed'
  | 'not-come-up'
  | 'counts-do-not-fit'
  | 'too-few-pots'
  | 'control-did-not-come-up'
  | 'control-deformed'
  | 'read-too-early'
  | 'some-deformed'
  | 'fewer-came-up';

/** One sign, test against control, with the chance of such a difference. */
export interface Sign {
  readonly testFraction: number;
  readonly controlFraction: number;
  readonly chance: number;
}

export interface BioassayVerdict {
  /** repeat: not shown either way; the lot stays set aside. */
  readonly verdict: 'clear' | 'affected' | 'repeat';
  readonly reasons: readonly BioassayReason[];
  readonly deformed: Sign;
  readonly missing: Sign;
  /** The least number of deformed test plants that would have counted as more than chance; NaN where none could. */
  readonly leastToShowCount: number;
}

/** The days to read on, counted from the sowing day of any calendar of days. @source wsu-bioassay general procedures */
export function bioassayDays(sownDay: number): { readonly readFromDay: number; readonly readByDay: number } {
  return { readFromDay: sownDay + BIOASSAY.leastDays, readByDay: sownDay + BIOASSAY.mostDays };
}

/**
 * What the pots show. Affected: more deformed, or more seeds that stayed away, in the test pots than chance would
 * bring (`chance <= 0.05`, one-sided exact test) against a sound control, even when read early. Clear: a sound control,
 * read in time, no larger share deformed in the test pots, and at least 0.8 of the control's share come up.
 * Everything else is to be repeated. Limits: small pots see only large harm; numbers that are missing never clear a lot.
 * @source wsu-bioassay general procedures
 */
export function bioassayVerdict(reading: BioassayReading): BioassayVerdict {
  const { test, control } = reading;
  const deformed = sign(
    { markedCount: test.deformedCount, allCount: test.germinatedCount },
    { markedCount: control.deformedCount, allCount: control.germinatedCount },
  );
  const missing = sign(
    { markedCount: test.sownCount - test.germinatedCount, allCount: test.sownCount },
    { markedCount: control.sownCount - control.germinatedCount, allCount: control.sownCount },
  );
  const shown = { deformed, missing, leastToShowCount: leastToShow(reading) };
  if (!(fits(test) && fits(control))) return { verdict: 'repeat', reasons: ['counts-do-not-fit'], ...shown };

  const layout = layoutFaults(reading);
  if (layout.length === 0) {
    const harm: BioassayReason[] = [];
    if (deformed.chance <= CHANCE_LIMIT_FRACTION) harm.push('deformed');
    if (missing.chance <= CHANCE_LIMIT_FRACTION) harm.push('not-come-up');
    if (harm.length > 0) return { verdict: 'affected', reasons: harm, ...shown };
  }

  const doubts = [...layout, ...doubtsAbout(reading, deformed)];
  return { verdict: doubts.length === 0 ? 'clear' : 'repeat', reasons: doubts, ...shown };
}

/** Faults of the pots themselves: with any of them a difference says nothing about the lot. */
function layoutFaults({ test, control }: BioassayReading): readonly BioassayReason[] {
  const found: BioassayReason[] = [];
  const enough = ({ potCount, sownCount }: PotsRead) =>
    potCount >= BIOASSAY.leastPotCount && sownCount >= BIOASSAY.leastPotCount * BIOASSAY.seedsPerPotCount;
  if (!(enough(test) && enough(control))) found.push('too-few-pots');
  if (!(control.germinatedCount >= CONTROL_GERMINATED_FRACTION * control.sownCount)) {
    found.push('control-did-not-come-up');
  }
  if (!(control.deformedCount <= CONTROL_DEFORMED_FRACTION * control.germinatedCount)) found.push('control-deformed');
  return found;
}

/** What keeps a test without harm shown from clearing the lot. */
function doubtsAbout(reading: BioassayReading, deformed: Sign): readonly BioassayReason[] {
  const { test, control } = reading;
  const found: BioassayReason[] = [];
  if (!(reading.sinceSownDays >= BIOASSAY.leastDays && reading.leavesCount >= BIOASSAY.leavesCount)) {
    found.push('read-too-early');
  }
  if (!(deformed.testFraction <= deformed.controlFraction)) found.push('some-deformed');
  const cameUp = test.germinatedCount / test.sownCount;
  if (!(cameUp >= (TEST_AGAINST_CONTROL_FRACTION * control.germinatedCount) / control.sownCount)) {
    found.push('fewer-came-up');
  }
  return found;
}

function fits({ potCount, sownCount, germinatedCount, deformedCount }: PotsRead): boolean {
  return (
    [potCount, sownCount, germinatedCount, deformedCount].every((count) => Number.isInteger(count) && count >= 0) &&
    deformedCount <= germinatedCount &&
    germinatedCount <= sownCount
  );
}

function sign(test: Parameters<typeof chanceOfSoMany>[0], control: Parameters<typeof chanceOfSoMany>[1]): Sign {
  return {
    testFraction: test.markedCount / test.allCount,
    controlFraction: control.markedCount / control.allCount,
    chance: chanceOfSoMany(test, control),
  };
}

/** How many deformed test plants it would have taken, beside the control as it was. */
function leastToShow({ test, control }: BioassayReading): number {
  const beside = { markedCount: control.deformedCount, allCount: control.germinatedCount };
  for (let count = 1; count <= test.germinatedCount; count += 1) {
    const chance = chanceOfSoMany({ markedCount: count, allCount: test.germinatedCount }, beside);
    if (chance <= CHANCE_LIMIT_FRACTION) return count;
  }
  return Number.NaN;
}
