// The limits of salt and acidity, on either side of each: 1.0 and 2.0 dS/m added, never beyond 3; pH 4.5 on dry soil.
import { describe, expect, it } from 'vitest';
import { type PourOrder, pour } from '../can/pour.ts';
import { canRules } from './can.ts';
import { judge } from './rule.ts';

/** A concentrate of 10 dS/m in water without salt: 1 in n adds 10/n dS/m. */
function order(n: number, more: Partial<PourOrder> = {}): PourOrder {
  return {
    strength: { kind: 'ratio', ratio: { n, reading: 'in' } },
    canL: 10,
    spoon: null,
    way: 'soil',
    eaten: 'cooked',
    batch: { peg: 14, state: 'ready', held: true, ph: 3.7, ecDsPerM: 10 },
    water: { alkalinityMeqPerL: 5, ph: 7.6, ecDsPerM: 0 },
    ...more,
  };
}
const said = (asked: PourOrder) =>
  judge(canRules, { order: asked, pour: pour(asked) }).map(({ rule, level }) => `${level} ${rule}`);
const salt = (asked: PourOrder) => said(asked).filter((one) => one.includes('salt'));

describe('salt', () => {
  it('added beyond 1.0 dS/m is a hold for seedlings, and for plants of unknown age', () => {
    expect(salt(order(9, { growth: 'seedling' }))).toEqual(['hold salt-over']); // 1.11
    expect(salt(order(9))).toEqual(['hold salt-over']);
    expect(salt(order(9, { growth: 'established' }))).toEqual([]);
  });
  it('just under the limit is a caution, because pen and thinning may hide the rest', () => {
    expect(salt(order(10.5, { growth: 'seedling' }))).toEqual(['caution salt-near']); // 0.95
    expect(salt(order(20, { growth: 'seedling' }))).toEqual([]); // 0.5
  });
  it('added beyond 2.0 dS/m is a hold for established plants, beyond 3 a stop', () => {
    expect(salt(order(4, { growth: 'established' }))).toEqual(['hold salt-over']); // 2.5
    expect(salt(order(3, { growth: 'established' }))).toEqual(['stop salt-never', 'hold salt-over']); // 3.3
  });
  it('beyond what the crop bears is a hold of its own: bean 1.0, tomato 2.5 dS/m', () => {
    expect(salt(order(8, { growth: 'established', crop: 'beans' }))).toEqual(['hold crop-salt-over']); // 1.25
    expect(salt(order(8, { growth: 'established', crop: 'tomatoes' }))).toEqual([]);
  });
  it('counts the salt of the water against the crop', () => {
    const water = { alkalinityMeqPerL: 5, ph: 7.6, ecDsPerM: 1.1 };
    expect(salt(order(1000, { crop: 'bean', water }))).toContain('hold crop-salt-over');
  });
  it('says when a crop’s limit is not known', () => {
    expect(salt(order(1000, { crop: 'chard' }))).toEqual(['note crop-salt-not-known']);
  });
  it('that was not measured is reckoned at 33 dS/m: a hold at 1 in 32 for plants of unknown age, a note at 1 in 33', () => {
    const batch = { peg: 14, state: 'ready', held: true } as const;
    expect(salt(order(32, { batch }))).toEqual(['hold salt-not-measured-strong']);
    expect(salt(order(33, { batch }))).toEqual(['note salt-not-measured']);
  });
});

describe('acidity', () => {
  const rain = { alkalinityMeqPerL: 0.05, ph: 6, ecDsPerM: 0.02 };
  it('below 4.5 waits for moist soil, and is a caution there', () => {
    expect(said(order(100, { water: rain }))).toContain('hold too-sour-for-dry-soil');
    expect(said(order(100, { water: rain, soil: 'moist' }))).not.toContain('hold too-sour-for-dry-soil');
    expect(said(order(100, { water: rain, soil: 'moist' }))).toContain('caution outside-pour-ph');
  });
  it('of a can thinned with hard tap water is no matter', () => {
    expect(said(order(100)).filter((one) => /ph|sour/.test(one))).toEqual([]);
  });
  it('is said not to be worked out when the water is not told', () => {
    expect(said({ ...order(100), water: undefined })).toContain('note can-water-not-told');
  });
});

describe('leaves', () => {
  it('of a cooked crop may be sprayed, up to 1.5 dS/m', () => {
    expect(said(order(100, { way: 'leaf' })).filter((one) => /stop|hold/.test(one))).toEqual([]);
    expect(salt(order(6, { way: 'leaf' }))).toEqual(['hold salt-over']); // 1.67
  });
  it('of anything not said to be cooked are never sprayed', () => {
    for (const eaten of ['raw', undefined] as const)
      expect(said(order(100, { way: 'leaf', eaten }))[0]).toBe('stop leaf-eaten-raw');
  });
});
