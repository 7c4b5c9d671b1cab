// What the crop before leaves, from the record: by the table, only in the same year and only where a clearing was told.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { recorder } from '../../test/scenarios/recorder.ts';
import { plotLedger } from './plot/ledger.ts';
import { residuesOf } from './residues.ts';

type Told = readonly [on: string, act: 'sown' | 'planted' | 'cleared', crop?: string];

/** Kale on 10 m² after what was told. */
function kaleAfter(...told: readonly Told[]) {
  const me = recorder();
  const bed = me.did('bed.described', '2026-01-02', { name: 'M', area: { typed: '10 m²', areaM2: 10 } });
  const acts = [...told, ['2026-07-20', 'planted', 'kale'] as const].map(([on, act, crop]) =>
    me.did('bed.planted', on, { bed: bed.id, act, ...(crop && { crop }) }),
  );
  const { value } = plotLedger({ plot: fold([bed, ...acts]), from: '2026-01-01', to: '2026-12-31' });
  return value.beds[0];
}

describe('what the crop before leaves', () => {
  it('is that of the table: pea 6.5 g/m², broccoli 10 g/m² (Düngeverordnung 2017, appendix 4 table 4)', () => {
    expect(residuesOf('peas')?.likely).toBe(6.5);
    expect(residuesOf('broccoli')?.likely).toBe(10);
    expect(residuesOf('peas, broccoli')?.likely).toBe(8.25);
    expect(residuesOf('oca')).toBeUndefined();
    expect(residuesOf(undefined)).toBeUndefined();
  });

  it('comes off the need of the crop planted behind it: 65 g on 10 m² after peas', () => {
    const alone = kaleAfter();
    const after = kaleAfter(['2026-03-10', 'sown', 'peas'], ['2026-07-10', 'cleared']);
    expect(after?.credits).toEqual([{ kind: 'residues', nG: { low: 65, likely: 65, high: 65 } }]);
    expect((alone?.needG.n?.likely ?? 0) - (after?.needG.n?.likely ?? 0)).toBeCloseTo(65, 9);
  });

  it('is known too where only the clearing names the crop', () => {
    expect(kaleAfter(['2026-07-10', 'cleared', 'broccoli'])?.credits[0]?.nG.likely).toBe(100);
  });

  it('comes off in full neither from the year before, nor where nothing was cleared, nor of a crop no table knows', () => {
    expect(kaleAfter(['2025-03-10', 'sown', 'carrots'], ['2025-11-10', 'cleared'])?.credits).toEqual([]);
    expect(kaleAfter(['2026-03-10', 'sown', 'peas'])?.credits).toEqual([]);
    expect(kaleAfter(['2026-03-10', 'sown', 'oca'], ['2026-07-10', 'cleared'])?.credits).toEqual([]);
  });

  it('is in the ground still where kinds of cabbage or legumes stood the year before: 10 g on 10 m², or more', () => {
    const after = kaleAfter(['2025-03-10', 'sown', 'peas'], ['2025-11-10', 'cleared']);
    expect(after?.credits).toEqual([{ kind: 'year-before', nG: { low: 10, likely: 10, high: 20 } }]);
    expect(kaleAfter(['2024-03-10', 'sown', 'peas'])?.credits).toEqual([]);
  });

  it('counts a green manure that nobody weighed by the area of the bed', () => {
    const me = recorder();
    const bed = me.did('bed.described', '2026-01-02', {
      name: 'M',
      area: { typed: '10 m²', areaM2: 10 },
      crop: 'kale',
    });
    const dug = me.did('bed.dressed', '2026-04-02', { bed: bed.id, what: 'cover-crop', material: 'legume-tops' });
    const ask = { plot: fold([bed, dug]), from: '2026-01-01', to: '2028-12-31' };
    const given = plotLedger(ask).value.beds[0]?.givenG;
    expect(given?.n?.likely).toBeCloseTo(40, 0);
    expect(given?.k).toEqual({ low: 0, likely: 0, high: 0 });
  });
});
