import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import { beanTestCard, readBeanTest, slipView } from './slips.ts';

const rake = recorder();
const bare = fold([]);
const strict = fold([
  rake.did('plot.described', '2026-03-01', {
    outsideScraps: false,
    siteRule: { text: 'Nothing from outside the fence.', on: '2026-01-10' },
  }),
]);
const lot = (body: Partial<Body<'scraps.weighed'>>): Body<'scraps.weighed'> => ({
  material: 'grass-clippings-fresh',
  mass: kg(2),
  slip: { whose: 'own', treated: 'no' },
  condition: 'fresh',
  ...body,
});
const seen = (body: Partial<Body<'scraps.weighed'>>, plot = bare) =>
  slipView({ plot, lot: lot(body), on: '2026-06-20' });
const rules = (body: Partial<Body<'scraps.weighed'>>, plot = bare) => seen(body, plot).cautions.map(({ rule }) => rule);

describe('a lot weighed in with its slip', () => {
  it('goes in when it is fresh, own, untreated and known', () => {
    expect(seen({})).toEqual({ outcome: 'in', says: ['May go in a pail.'], cautions: [], bean: false });
    expect(rules({ material: 'kitchen-trimmings', slip: { whose: 'household', treated: 'no' } })).toEqual([]);
  });

  it('is judged by what the record holds of it', () => {
    expect(rules({ slip: { whose: 'neighbour', treated: 'unknown' } })).toEqual(['slip-treatment-unknown']);
    expect(rules({ condition: 'slimy' })).toEqual(['slip-slimy']);
    expect(rules({ origin: 'plate' })).toEqual(['slip-off-the-plate']);
    expect(rules({ material: undefined, name: 'foxgloves' })).toEqual(['excluded-foxglove']);
    expect(rules({ slip: undefined })).toEqual(['slip-treatment-unknown', 'slip-source-unknown']);
  });

  it('asks for a bean test of bales that were bought, by their kind or by a name of the own', () => {
    const slip = { whose: 'bought', cameFrom: 'shop' } as const;
    for (const what of [{ material: 'hay-grass' }, { material: undefined, name: 'barley straw', kitchen: 'raw' }]) {
      const body = lot({ ...what, slip, condition: 'dry' } as Partial<Body<'scraps.weighed'>>);
      const weighed = rake.did('scraps.weighed', '2026-05-30', body);
      expect([...fold([weighed]).lots.values()].map(({ goes }) => goes)).toEqual(['set-aside']);
      expect(seen(body).bean).toBe(true);
      expect(seen(body).cautions.map(({ rule }) => rule)).toEqual(['slip-treatment-unknown']);
    }
  });

  it('says how long ago it was treated: 30 May to 20 June is 21 days', () => {
    const [caution] = seen({ slip: { whose: 'own', treated: 'yes', treatedOn: '2026-05-30' } }).cautions;
    expect(caution?.text).toContain('21\u00a0days ago');
  });

  it('meets the rule of its site in the words of that rule', () => {
    const [caution] = seen({ slip: { whose: 'neighbour', treated: 'no' } }, strict).cautions;
    expect(caution?.text).toContain('"Nothing from outside the fence."');
    expect(caution?.text).toContain('10\u00a0Jan 2026');
    expect(rules({}, strict)).toEqual([]);
    expect(rules({ material: 'kitchen-trimmings', origin: 'kitchen' }, strict)).toEqual(['slip-site-forbids']);
  });
});

describe('the bean test of a lot set aside', () => {
  it('sown on 20 February is read from 13 to 20 March: 21 and 28 days on', () => {
    const { readFrom, readBy, lines } = beanTestCard('2026-02-20');
    expect([readFrom, readBy]).toEqual(['2026-03-13', '2026-03-20']);
    expect(lines.join(' ')).toContain('Read between Fri 13\u00a0Mar and Fri 20\u00a0Mar');
  });

  const pots = (deformedCount: number) => ({ potCount: 3, sownCount: 9, germinatedCount: 9, deformedCount });
  const read = (deformedCount: number, readOn = '2026-06-25') =>
    readBeanTest({
      lot: 'a-lot',
      sownOn: '2026-06-01',
      readOn,
      leavesCount: 3,
      test: pots(deformedCount),
      control: pots(0),
    });

  it('is written down as clear, harmed or unclear, with the counts in the note', () => {
    expect([0, 2, 6].map((count) => read(count).act.outcome)).toEqual(['clear', 'unclear', 'harmed']);
    expect(read(6).act.note).toContain('Deformed: 6 of 9 in the test pots, 0 of 9 in the control.');
    expect(read(0, '2026-06-10')).toMatchObject({ verdict: 'repeat', act: { outcome: 'unclear' } });
  });

  it('is an act that the record takes', () => {
    const weighed = rake.did('scraps.weighed', '2026-05-30', lot({ slip: { whose: 'neighbour', treated: 'unknown' } }));
    const tested = rake.did('lot.tested', '2026-06-25', { ...read(0).act, lot: weighed.id });
    expect([...fold([weighed, tested]).lots.values()].map(({ goes }) => goes)).toEqual(['liquid']);
  });

  it('shows its working: both signs, with the chance of each', () => {
    const { workings } = read(6);
    expect(workings.map(({ figure }) => figure)).toEqual(['deformed.chance', 'missing.chance']);
    // C(6,6)·C(12,3)/C(18,9) = 220/48620.
    expect(workings[0]?.value).toBeCloseTo(220 / 48620, 12);
    expect(workings[1]?.value).toBeCloseTo(1, 12);
  });
});
