// The bed: where each line lies, and that what cannot be read as a number speaks as if it were past it.
import { describe, expect, it } from 'vitest';
import { type BedSituation, bedRules } from './bed.ts';
import { judge } from './rule.ts';

const bed: BedSituation = { feed: 'soil', eaten: 'raw', grows: true, sized: true };
const ofBed = (change: Partial<BedSituation>) =>
  judge(bedRules, { ...bed, ...change }).map(({ rule, level }) => `${level} ${rule}`);

describe('a bed', () => {
  it.each<[string, Partial<BedSituation>, readonly string[]]>([
    ['that was never fed is fed', {}, []],
    ['that the plot gives no feed gets none', { feed: 'none' }, ['stop bed-gets-none']],
    ['where nothing grows waits', { grows: false }, ['hold bed-nothing-grows']],
    ['without a size waits', { sized: false }, ['hold bed-size-not-told']],
    ['whose crop nobody described waits', { eaten: undefined }, ['hold bed-eaten-not-told']],
    ['that is empty is not asked how it is eaten', { eaten: undefined, grows: false }, ['hold bed-nothing-grows']],
    ['fed yesterday waits', { fedDays: 1 }, ['hold bed-fed-just-now']],
    ['fed two days ago is fed', { fedDays: 2 }, []],
    ['fed nobody knows when waits', { fedDays: Number.NaN }, ['hold bed-fed-just-now']],
  ])('%s', (_, change, expected) => {
    expect(ofBed(change)).toEqual(expected);
  });
});
