// Offers of a shop as typed: what is right becomes a feed with a price of the kilogram, what is wrong is told at its field.

import { describe, expect, it } from 'vitest';
import { EMPTY_OFFER, readLimits, readOffers } from './cover-offers.ts';
import { shopSource } from './cover-sources.ts';

const meal = { name: 'horn meal', n: '12', p2o5: '1', k2o: '0', release: 'slow', pack: '5 kg', price: '17.5' } as const;

describe('an offer', () => {
  it('of a pack becomes a source by the kilogram, its label read as oxides', () => {
    const { feeds, troubles } = readOffers([meal, EMPTY_OFFER]);
    expect(troubles.size).toBe(0);
    const [source] = feeds.map(shopSource);
    expect(source?.costPerKg).toBe(3.5);
    expect(source?.packKg).toBe(5);
    // P2O5 holds 61.948 / 141.945 of its mass as phosphorus (atomic masses 30.974 and 15.999): 10 g · 0.43642.
    expect(source?.perKg.pG?.likely).toBeCloseTo(4.3642, 2);
    expect(source?.perKg.nTotalG).toBeCloseTo(120, 6);
    expect(source?.kind).toBe('bought-organic');
  });
  it.each([
    ['name', { ...meal, name: ' ' }, 'no name'],
    ['n', { ...meal, n: '101' }, '“101” is no share of the label; allowed: 0 to 100.'],
    ['k2o', { ...meal, k2o: 'much' }, '“much”'],
    ['n', { ...meal, n: '60', p2o5: '30', k2o: '20' }, '110'],
    ['pack', { ...meal, pack: '5 L' }, '“5 L”'],
    ['pack', { ...meal, pack: '0 kg' }, 'more than 0'],
    ['price', { ...meal, price: '-1' }, '“-1”'],
  ] as const)('with a wrong %s is told there and not offered', (field, row, text) => {
    const { feeds, troubles } = readOffers([row]);
    expect(feeds).toEqual([]);
    expect(troubles.get(`0.${field}`)?.sentence).toContain(text);
  });
});

describe('what may be spent', () => {
  const none = { money: '', minutes: '', bucketMinutes: '' };

  it('is a sum and a time with minutes for a bucket, or nothing', () => {
    expect(readLimits(none)).toMatchObject({ limits: {}, bucketMinutes: undefined });
    expect(readLimits({ money: '12,50', minutes: '90', bucketMinutes: '6' })).toMatchObject({
      limits: { money: 12.5, minutes: 90 },
      bucketMinutes: 6,
    });
  });

  it('does not count a time where nobody told how long a bucket takes, and asks', () => {
    const { limits, troubles } = readLimits({ ...none, minutes: '90' });
    expect(limits).toEqual({});
    expect(troubles.get('bucketMinutes')?.sentence).toContain('how long one bucket takes');
  });

  it.each([
    ['money', '-1'],
    ['money', 'lots'],
    ['minutes', 'all day'],
    ['bucketMinutes', '0'],
  ] as const)('tells a wrong %s at its field: %s', (field, text) => {
    const { limits, troubles } = readLimits({ ...none, [field]: text });
    expect(limits).toEqual({});
    expect(troubles.get(field)?.sentence).toContain(`“${text}”`);
    expect([...troubles.keys()]).toEqual([field]);
  });
});
