// The bean test of a lot that may hold weedkiller.

import { scrapsRules } from '#engine/rules/scraps.ts';
import { type BioassayReading, bioassayDays, bioassayVerdict, type PotsRead } from '#engine/scraps/bioassay.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { all, answers, type Value, valuesOf } from './value.ts';

const WSU = { source: 'wsu-bioassay', locator: 'general procedures' } as const;
const caution = { source: 'our-caution' } as const;

const sound: PotsRead = { potCount: 3, sownCount: 9, germinatedCount: 9, deformedCount: 0 };
const of = (count: number, change: Partial<PotsRead> = {}): PotsRead => ({
  ...sound,
  sownCount: count,
  germinatedCount: count,
  ...change,
});
const verdict = (change: Partial<BioassayReading>) => {
  const { verdict: found, reasons } = bioassayVerdict({
    test: sound,
    control: sound,
    sinceSownDays: 25,
    leavesCount: 3,
    ...change,
  });
  return [found, ...reasons].join(' ');
};
/** What the sentence on a lot nobody knows of says of the test. */
const told = (key: string) => {
  const part = resolvePart({ material: 'grass-clippings-fresh', massKg: 1 });
  return valuesOf(scrapsRules, 'weedkiller-unknown')({ part, treated: 'unknown' })?.[key];
};

export const beanValues: readonly Value[] = [
  {
    name: 'pots of a bean test',
    at: 'scraps/bioassay.ts BIOASSAY.leastPotCount',
    stated: '3 of each kind',
    ...WSU,
    holds: all(
      answers(
        (potCount: number) => verdict({ test: { ...sound, potCount } }),
        [2, 'repeat too-few-pots'],
        [3, 'clear'],
        [4, 'clear'],
      ),
      answers(told, ['pots', 3]),
    ),
  },
  {
    name: 'seeds of a pot in a bean test',
    at: 'scraps/bioassay.ts BIOASSAY.seedsPerPotCount',
    stated: '3',
    ...WSU,
    holds: answers(
      (count: number) => verdict({ test: of(count), control: of(count) }),
      [8, 'repeat too-few-pots'],
      [9, 'clear'],
      [10, 'clear'],
    ),
  },
  {
    name: 'days before a bean test is read',
    at: 'scraps/bioassay.ts BIOASSAY.leastDays',
    stated: '21 days',
    source: 'npic-herbicides-in-compost',
    locator: 'bioassay, 3 to 4 weeks',
    holds: all(
      answers(
        (sinceSownDays: number) => verdict({ sinceSownDays }),
        [20, 'repeat read-too-early'],
        [21, 'clear'],
        [22, 'clear'],
      ),
      answers(told, ['weeksLeast', 3]),
    ),
  },
  {
    name: 'days by which a bean test is read',
    at: 'scraps/bioassay.ts BIOASSAY.mostDays',
    stated: '28 days',
    source: 'npic-herbicides-in-compost',
    locator: 'bioassay, 3 to 4 weeks',
    holds: all(
      answers((sownDay: number) => bioassayDays(sownDay), [100, { readFromDay: 121, readByDay: 128 }]),
      answers(told, ['weeksMost', 4]),
    ),
  },
  {
    name: 'true leaves of a bean test',
    at: 'scraps/bioassay.ts BIOASSAY.leavesCount',
    stated: '3',
    ...WSU,
    holds: all(
      answers(
        (leavesCount: number) => verdict({ leavesCount }),
        [2, 'repeat read-too-early'],
        [3, 'clear'],
        [4, 'clear'],
      ),
      answers(told, ['trueLeaves', 3]),
    ),
  },
  {
    name: 'share of the control that comes up in a bean test',
    at: 'scraps/bioassay.ts CONTROL_GERMINATED_FRACTION',
    stated: '0.8',
    ...caution,
    holds: answers(
      (germinatedCount: number) => verdict({ test: of(30), control: of(30, { germinatedCount }) }),
      [23, 'repeat control-did-not-come-up'],
      [24, 'clear'],
      [25, 'clear'],
    ),
  },
  {
    name: 'share of the control that may be deformed in a bean test',
    at: 'scraps/bioassay.ts CONTROL_DEFORMED_FRACTION',
    stated: '0.1',
    ...caution,
    holds: answers(
      (deformedCount: number) => verdict({ test: of(200), control: of(200, { deformedCount }) }),
      [19, 'clear'],
      [20, 'clear'],
      [21, 'repeat control-deformed'],
    ),
  },
  {
    name: 'share of the control that the test pots bring up in a bean test',
    at: 'scraps/bioassay.ts TEST_AGAINST_CONTROL_FRACTION',
    stated: '0.8',
    ...caution,
    // 7 of 9 are 0.78
    holds: answers(
      ([sown, up]: readonly [number, number]) =>
        verdict({ test: of(sown, { germinatedCount: up }), control: of(sown) }),
      [[9, 7], 'repeat fewer-came-up'],
      [[10, 8], 'clear'],
      [[10, 9], 'clear'],
    ),
  },
  {
    name: 'chance under which a difference counts in a bean test',
    at: 'scraps/bioassay.ts CHANCE_LIMIT_FRACTION',
    stated: '0.05',
    source: 'practice',
    step: 0.005,
    // 3 of 9 deformed beside none of 13: 84/1540 = 0.0545; beside none of 14: 84/1771 = 0.0474
    holds: answers(
      (beside: number) => verdict({ test: of(9, { deformedCount: 3 }), control: of(beside) }),
      [13, 'repeat some-deformed'],
      [14, 'affected deformed'],
    ),
  },
];
