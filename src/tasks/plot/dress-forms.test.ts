// Dressings and purchases as typed: barrows by the litres told, labels as oxides, what is offered and what is not; and how
// the label's word on release changes what a bed is counted to have got.

import { describe, expect, it } from 'vitest';
import { FIRST_READER } from '#engine/quantity/read-with.ts';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import { dressingSources, readDressing, readLabel, readProduct } from './dress-forms.ts';
import { plotLedger } from './ledger.ts';

const me = recorder();
const bed = me.did('bed.described', '2026-04-01', {
  name: 'Long',
  area: { typed: '10 m²', areaM2: 10 },
  crop: 'kale',
  eaten: 'cooked',
});
const lot = me.did('scraps.weighed', '2026-04-02', {
  material: 'grass-clippings-fresh',
  mass: kg(5),
  slip: { whose: 'own', from: 'lawn', treated: 'no' },
});
const doubtful = me.did('scraps.weighed', '2026-04-02', {
  name: 'hay of the lane',
  material: 'hay',
  mass: kg(5),
  slip: { whose: 'neighbour', treated: 'unknown' },
});
const meal = me.did('product.bought', '2026-04-03', {
  name: 'hoof meal',
  what: 'feed',
  nPercent: 12,
  p2o5Percent: 0,
  k2oPercent: 0,
});
const around = { bed: bed.id, litresOf: { barrow: 80 } };

describe('a dressing', () => {
  it('is read by barrows of the litres told: 2 × 80 L', () => {
    const read = readDressing(
      { what: 'compost', of: 'material:finished-compost', texts: { amount: '2 barrows' } },
      around,
    );
    expect(read.ok && read.body).toEqual({
      bed: bed.id,
      what: 'compost',
      material: 'finished-compost',
      amount: { typed: '2 barrows', volumeL: 160 },
    });
  });
  it('keeps the own analysis, dry matter as a share', () => {
    const texts = { amount: '4 kg', dryMatter: '45 %', nPercentDm: '1.8' };
    const read = readDressing({ what: 'compost', of: 'heap:the heap', texts }, around);
    expect(read.ok && read.body).toMatchObject({ heap: 'the heap', analysis: { dryMatter: 0.45, nPercentDm: 1.8 } });
  });
  it('needs no amount where it is a cover crop, which is seldom weighed', () => {
    const read = readDressing({ what: 'cover-crop', of: 'material:legume-tops', texts: {} }, around);
    expect(read.ok && read.body).toEqual({ bed: bed.id, what: 'cover-crop', material: 'legume-tops' });
  });
  it.each([
    [{ what: 'compost', of: '', texts: {} }, ['amount']],
    [{ what: 'compost', of: '', texts: { amount: '3 buckets' } }, ['amount']],
    [{ what: 'product', of: '', texts: { amount: '1 kg' } }, ['of']],
    [{ what: 'product', of: `product:${meal.id}`, texts: { amount: '1 L' } }, ['amount']],
    [
      { what: 'mulch', of: '', texts: { amount: '1 kg', dryMatter: '130', nPercentDm: '16' } },
      ['nPercentDm', 'dryMatter'],
    ],
  ] as const)('is refused at its fields: %j', (told, fields) => {
    const read = readDressing(told, around);
    expect(!read.ok && [...read.troubles.keys()]).toEqual(fields);
  });
  it('is offered of what the stock has; a lot that waits for its slip is named and not offered', () => {
    const plot = fold([bed, lot, doubtful]);
    const { groups, heldBack } = dressingSources(plot, 'mulch');
    const ids = groups.flatMap(({ rows }) => rows.map(({ id }) => id));
    expect(ids).toContain(`lot:${lot.id}`);
    expect(ids).not.toContain(`lot:${doubtful.id}`);
    expect(heldBack).toEqual(['hay of the lane']);
  });
});

describe('a label', () => {
  it.each(['5-3-8', 'NPK 5-3-8', '5 + 3 + 8', '5 3 8', '5/3/8', 'N-P-K: 5–3–8'])('is read from "%s"', (typed) => {
    const label = readLabel(typed);
    expect(label).toMatchObject({ n: 5, p2o5: 3, k2o: 8 });
    // P = 0.4364 P2O5, K = 0.8301 K2O
    expect(label?.p).toBeCloseTo(3 * 0.4364, 3);
    expect(label?.k).toBeCloseTo(8 * 0.8301, 3);
  });
  it.each(['', '5-3', '5-3-8-1', '5-x-8', '5-3-108'])('is none in "%s"', (typed) => {
    expect(readLabel(typed)).toBeUndefined();
  });
  it('of a purchase stands with its price and its word on release', () => {
    const read = readProduct({ name: 'salt', npk: '20-5-5', release: 'soluble', mass: '2 kg', price: '€ 7,50' }, {});
    expect(read.ok && read.value).toEqual({
      bought: {
        name: 'salt',
        what: 'feed',
        nPercent: 20,
        p2o5Percent: 5,
        k2oPercent: 5,
        mass: { ...kg(2), readWith: { reader: FIRST_READER } },
        cost: { typed: '€ 7,50', amount: 7.5 },
      },
      release: 'soluble',
    });
  });
  it('with troubles tells all of them at once', () => {
    const read = readProduct({ name: '', npk: '60-30-30', mass: '2', price: 'dear' }, {});
    expect(!read.ok && [...read.troubles.keys()].sort()).toEqual(['mass', 'name', 'npk', 'price']);
  });
});

describe('a bought product on a bed', () => {
  const put = me.did('bed.dressed', '2026-05-01', { bed: bed.id, what: 'product', product: meal.id, amount: kg(1) });
  const given = (release: Body<'product.labelled'>['release'] | undefined) => {
    const label = release && me.did('product.labelled', '2026-04-04', { product: meal.id, release });
    const plot = fold([bed, meal, put, ...(label ? [label] : [])]);
    const { value } = plotLedger({ plot, from: '2026-01-01', to: '2026-05-15' });
    return { n: value.beds[0]?.givenG.n, rules: value.cautions.map(({ rule }) => rule) };
  };
  it('counts at once where it dissolves: 1 kg of 12 % are 120 g', () => {
    expect(given('soluble').n).toEqual({ low: 120, likely: 120, high: 120 });
  });
  it('that rots has let go of less than all in two weeks', () => {
    const { n } = given('slow');
    expect(n?.likely).toBeGreaterThan(0);
    expect(n?.high).toBeLessThan(120);
  });
  it('of an untold label counts as what rots, at most as all at once, and this is said', () => {
    const [slow, untold] = [given('slow'), given(undefined)];
    expect(untold.n).toEqual({ ...slow.n, high: 120 });
    expect(untold.rules).toContain('ground-release-untold');
    expect(slow.rules).not.toContain('ground-release-untold');
  });
});
