// The sheet of one bed says the same as the sheet of all beds, and lists what went on and what was told of it.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import { gardenEntries } from '../demo/garden.ts';
import { gotSums, gotView } from './got.ts';
import { gotBed } from './got-bed.ts';

const today = '2026-08-20';
const plot = fold(gardenEntries(today));

describe('the sheet of one bed', () => {
  it.each(gotView(gotSums({ plot, today }), 'n').beds.map((bed) => [bed.name, bed] as const))(
    'says of %s what the sheet of all beds says',
    (name, bed) => {
      const view = gotBed({ plot, bed: bed.id, today });
      const row = view?.rows.find(({ nutrient }) => nutrient === 'n');
      expect(view?.name).toBe(plot.beds.get(bed.id)?.facts.name ?? name);
      expect(row).toMatchObject({ needG: bed.needG, givenG: bed.givenG, missingG: bed.missingG });
    },
  );
  it('adds the pours of a liquid up to what the bed got of it', () => {
    for (const bed of plot.beds.values()) {
      const poured = gotBed({ plot, bed: bed.id, today })?.poured ?? [];
      const litres = poured.reduce((sum, { dilutedL }) => sum + dilutedL.likely, 0);
      expect(litres).toBeCloseTo(bed.pouredL.likely, 9);
    }
  });
  it('is none for a bed that is not in the record', () => {
    expect(gotBed({ plot, bed: 'nowhere', today })).toBeUndefined();
  });
  it('of a bed without a size lists all the same what went on, of twelve months alone, the newest first', () => {
    const me = recorder();
    const bed = me.did('bed.described', '2025-04-01', { name: 'Long', crop: 'oca' });
    const old = me.did('bed.dressed', '2025-04-02', { bed: bed.id, what: 'mulch', amount: kg(3) });
    const first = me.did('bed.dressed', '2026-04-02', { bed: bed.id, what: 'compost', amount: kg(4) });
    const next = me.did('bed.dressed', '2026-05-02', { bed: bed.id, what: 'mulch', amount: kg(5) });
    const report = me.did('soil.tested', '2025-03-02', {
      figures: [{ what: 'p', typed: '20', value: 20, unit: 'ppm', method: 'Bray-1' }],
    });
    const view = gotBed({ plot: fold([bed, old, first, next, report]), bed: bed.id, today });
    expect(view?.sized).toBe(false);
    expect(view?.dressed.map(({ sentence }) => sentence)).toEqual([
      'Long dressed: 5 kg, mulch.',
      'Long dressed: 4 kg, compost.',
    ]);
    expect(view?.told.map(({ sentence }) => sentence)).toEqual([
      'Soil report of the plot: phosphorus 20\u00a0ppm by Bray-1.',
    ]);
    expect(view?.crops).toMatchObject([{ name: 'oca', listed: false, ownSource: undefined }]);
  });
});
