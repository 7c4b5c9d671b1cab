// From which day a bed is counted: the clearing before its crop, else midwinter on its side of the equator.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { growingYearsApart, seasonOf } from './season.ts';

type Act = readonly [on: string, act: 'sown' | 'planted' | 'cleared' | 'picked', crop?: string];
const dayOf = (on: string) => momentOf(on).dateDay;

/** First day and start of the season of a bed. */
function season(today: string, hemisphere: 'north' | 'south' | undefined, ...acts: readonly Act[]) {
  const me = recorder({ seed: 9 });
  const bed = me.did('bed.described', '2024-01-01', { name: 'A' });
  const told = acts.map(([on, act, crop]) =>
    act === 'picked'
      ? me.did('bed.picked', on, { bed: bed.id, crop: crop ?? 'kale' })
      : me.did('bed.planted', on, { bed: bed.id, act, ...(crop && { crop }) }),
  );
  const found = fold([bed, ...told]).beds.get(bed.id);
  if (found === undefined) throw new Error('no bed');
  const { fromDay, start, planted } = seasonOf({ bed: found, hemisphere, todayDay: dayOf(today) });
  return { fromDay, start, planted: planted?.body.crop };
}
const from = (on: string, start: string, planted?: string) => ({ fromDay: dayOf(on), start, planted });

describe('the season of a bed', () => {
  it('turns in midwinter where nothing was told of its crop', () => {
    expect(season('2026-12-20', 'north')).toEqual(from('2025-12-21', 'midwinter'));
    expect(season('2026-12-21', 'north')).toEqual(from('2026-12-21', 'midwinter'));
    expect(season('2027-01-02', 'south')).toEqual(from('2026-06-21', 'midwinter'));
    expect(season('2027-06-20', 'south')).toEqual(from('2026-06-21', 'midwinter'));
    expect(season('2027-06-21', 'south')).toEqual(from('2027-06-21', 'midwinter'));
  });
  it('is the last twelve months where nobody told the side of the equator', () => {
    expect(season('2027-01-02', undefined)).toEqual(from('2026-01-03', 'twelve-months'));
    expect(season('2027-01-02', undefined, ['2026-10-10', 'planted', 'tomatoes'])).toEqual(
      from('2026-01-03', 'twelve-months', 'tomatoes'),
    );
  });
  it('starts with the clearing before the crop that stands, and with a clearing itself', () => {
    const cleared: readonly Act[] = [
      ['2026-05-01', 'planted', 'tomatoes'],
      ['2026-10-10', 'cleared'],
    ];
    expect(season('2027-02-01', 'north', ...cleared)).toEqual(from('2026-10-10', 'cleared'));
    expect(season('2027-06-01', 'north', ...cleared, ['2027-05-01', 'planted', 'kale'])).toEqual(
      from('2026-10-10', 'cleared', 'kale'),
    );
    expect(season('2027-11-01', 'north', ...cleared)).toEqual(from('2026-12-21', 'midwinter'));
  });
  it('goes on over midwinter with a crop that stands, and turns once its stages are over', () => {
    const garlic: Act = ['2026-10-15', 'planted', 'garlic'];
    expect(season('2027-02-01', 'north', garlic)).toEqual(from('2025-12-21', 'midwinter', 'garlic'));
    // fao-56 table 11: tomatoes stand 145 days
    const tomatoes: Act = ['2026-05-01', 'planted', 'tomatoes'];
    expect(season('2027-02-01', 'north', tomatoes)).toEqual(from('2026-12-21', 'midwinter'));
    expect(season('2027-02-01', 'north', tomatoes, ['2027-01-05', 'picked', 'tomatoes'])).toEqual(
      from('2025-12-21', 'midwinter', 'tomatoes'),
    );
    // No table tells how long it grows: it stands until it is cleared, a year at most.
    const oca: Act = ['2026-05-01', 'planted', 'oca'];
    expect(season('2027-02-01', 'north', oca).planted).toBe('oca');
    expect(season('2027-05-02', 'north', oca)).toEqual(from('2026-12-21', 'midwinter'));
  });
  it('starts with the planting after another crop whose end nobody told, not after the same one', () => {
    const lettuce: Act = ['2026-04-01', 'sown', 'lettuce'];
    const kale: Act = ['2026-07-20', 'planted', 'kale'];
    expect(season('2026-08-01', 'north', lettuce, kale)).toEqual(from('2026-07-20', 'planted', 'kale'));
    expect(season('2026-08-01', 'north', lettuce, ['2026-05-01', 'sown', '2 lettuce']).start).toBe('midwinter');
  });
});

describe('growing years', () => {
  it('are counted from midwinter to midwinter', () => {
    expect(growingYearsApart(dayOf('2026-11-20'), dayOf('2027-01-15'), 'south')).toBe(0);
    expect(growingYearsApart(dayOf('2026-11-20'), dayOf('2027-01-15'), 'north')).toBe(1);
    expect(growingYearsApart(dayOf('2025-08-01'), dayOf('2027-01-15'), 'south')).toBe(1);
    expect(growingYearsApart(dayOf('2026-11-20'), dayOf('2027-01-15'), undefined)).toBe(0);
  });
});
