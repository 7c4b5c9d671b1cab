// The line as it stands on days of the demo garden, and what wants a hand. Litres are worked out beside the checks.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { unsavedElsewhere } from '#journal/unsaved.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { onDay } from './dates.ts';
import { lineView, mannerOf } from './line.ts';

const on = (day: string) => lineView({ plot: fold(gardenEntries(day)), now: `${day}T11:00` });

describe('the line of the demo garden', () => {
  const view = on('2026-06-15');

  it('shows the clippings that are left, and the neighbour’s apart', () => {
    // own 6.4 − 2.1 − 4.6, cabbage 1.8 − 0.7, trimmings 2.1 − 0.4, grounds 0.9, skins 0.7, as far as they went into pegs
    expect(view.scraps.asideKg).toBeCloseTo(9, 9);
    expect(view.scraps.asideDays).toBe(6);
    expect(view.scraps.material).toBe('grass-clippings-fresh');
    // 9 kg loose at 250 kg/m³
    expect(view.scraps.asideL).toBeCloseTo(36, 9);
  });
  it('shows both standing pegs with their words, by number', () => {
    expect(view.pegs.map(({ peg, state }) => [peg, state])).toEqual([
      [14, 'souring'],
      [15, 'souring'],
    ]);
    expect(view.pegs[0]).toMatchObject({ day: 5, vesselName: '12 L pail', usableL: 9 });
    expect(view.pegs[0]?.presentL).toBeCloseTo(8.693, 3);
  });
  it('wants 57 L for a first round, 2 L on 28.52 m²; the pots wait, since nobody said when they are picked next', () => {
    expect(view.round.dueL).toBeCloseTo(2 * (5.76 + 5.76 + 3.4 + 10) + 2 * 3.6, 9);
    expect(view.round).toMatchObject({ on: undefined, due: false, held: 1 });
    expect(view.round.wantedL).toBe(view.round.dueL);
  });
  it('lists beds in walking order, the pots as pots and the squash half alone as fed', () => {
    expect(view.beds.strips.map(({ tag }) => tag).join('')).toBe('GMSFTRPX');
    expect(view.beds.strips.find(({ tag }) => tag === 'F')?.fedFraction).toBeCloseTo(3.4 / 6.75, 9);
    expect(view.beds.strips.find(({ tag }) => tag === 'S')?.fedFraction).toBe(0);
    expect(view.beds.pots).toBe(12);
  });
  it('counts 24.9 m² as fed once the trial is laid, of 44.8 m²', () => {
    const later = on('2026-07-07');
    expect(later.beds.fedM2).toBeCloseTo(24.92, 9);
    expect(later.beds.allM2).toBeCloseTo(44.83, 9);
  });
});

describe('the round', () => {
  it('is over on the day four beds were fed; tunnel and pots are picked too soon for any, and wait', () => {
    const { round, hands } = on('2026-07-07');
    expect(round).toMatchObject({ dueBeds: ['G', 'M', 'F', 'X'], due: false, on: '2026-07-21', wantedL: 0, held: 2 });
    // 2 L on 5.76, 5.76, 3.4 and 3.6 m², a 41st of it concentrate
    expect(round.dueL).toBeCloseTo(37.04, 9);
    expect(round.dueConcentrateL).toBeCloseTo(37.04 / 41, 9);
    expect(hands.map(({ kind }) => kind)).not.toContain('round');
  });
  it('waits a fortnight after that, the four beds together', () => {
    expect(on('2026-07-15').round).toMatchObject({ dueBeds: ['G', 'M', 'F', 'X'], due: false, on: '2026-07-21' });
  });
  it('does not take a patch test of 1.85 L on 5.76 m² for a round', () => {
    expect(on('2026-07-04').round.on).toBeUndefined();
  });
});

describe('what wants a hand', () => {
  const rake = recorder();
  const filled = rake.did('peg.filled', '2026-06-01', {
    peg: 16,
    vesselName: 'barrel',
    temperatureC: 29,
    parts: [{ name: 'grass', mass: kg(22) }],
  });
  const other = rake.did('peg.filled', '2026-06-01', {
    peg: 17,
    vesselName: 'pail',
    temperatureC: 20,
    parts: [{ name: 'grass', mass: kg(2) }],
  });
  const looked = (n: number, ph: number, smell?: 'egg' | 'sewage') =>
    rake.did('peg.looked', `2026-06-0${1 + n}`, { batch: filled.id, acidity: meter(ph), ...(smell && { smell }) });
  const entries = [filled, other, looked(0, 6.4), looked(3, 6.1), looked(6, 6.3, 'egg')];
  entries.push(rake.did('peg.looked', '2026-06-01', { batch: other.id, acidity: meter(6.2) }));

  it('names the lost batch first, then the look that is due', () => {
    const { hands } = lineView({ plot: fold(entries), now: '2026-06-07T11:00' });
    expect(hands.map(({ kind, peg }) => [kind, peg])).toEqual([
      ['lost', 16],
      ['look', 17],
    ]);
    expect(hands[1]?.to).toBe(`/peg/${other.id}/look`);
  });
  it('says nothing about a batch that was tipped', () => {
    const tipped = rake.did('peg.tipped', '2026-06-07', { batch: filled.id, to: 'heap' });
    const { hands, pegs } = lineView({ plot: fold([...entries, tipped]), now: '2026-06-07T11:00' });
    expect(hands.map(({ kind }) => kind)).toEqual(['look']);
    expect(pegs.map(({ peg }) => peg)).toEqual([17]);
  });
  it('asks to bottle what was drained and stands about', () => {
    const strained = rake.did('peg.strained', '2026-06-07', { batch: other.id, drained: litres(1.5), rest: 'nothing' });
    const { hands } = lineView({ plot: fold([...entries, strained]), now: '2026-06-07T11:00' });
    expect(hands.find(({ kind }) => kind === 'bottle')).toMatchObject({ peg: 17, litres: 1.5 });
  });
  it('asks for a file as the sheet of the record does, and not in the demo', () => {
    const plot = fold(entries);
    const asks = (kept: Parameters<typeof lineView>[0]['kept']) =>
      lineView({ plot, now: '2026-06-07T11:00', kept }).hands.some(({ kind }) => kind === 'file');
    const held = entries.map(({ id }) => id).join('\n');
    const nowMs = Date.UTC(2026, 5, 7, 9);
    expect(asks({ entries, lastFile: undefined, nowMs, places: 2 })).toBe(true);
    expect(
      asks({ entries, lastFile: { on: '2026-06-06', at: '2026-06-06T09:00:00.000Z', held }, nowMs, places: 2 }),
    ).toBe(false);
    expect(
      asks({ entries, lastFile: { on: '2027-07-06', at: '2027-07-06T09:00:00.000Z', held: '' }, nowMs, places: 2 }),
    ).toBe(true);
    expect(asks(undefined)).toBe(false);
    const third = { entries, lastFile: undefined, nowMs: Date.UTC(2026, 4, 4, 9) };
    expect([asks({ ...third, places: 1 }), asks({ ...third, places: 2 })]).toEqual([true, false]);
    for (const day of [7, 8, 9]) {
      const kept = { entries, lastFile: undefined, nowMs: Date.UTC(2026, 4, day, 9), places: 2 as const };
      const { isDue } = unsavedElsewhere(entries, { file: undefined, nowMs: kept.nowMs });
      expect(asks(kept)).toBe(isDue);
    }
  });
});

describe('an empty plot', () => {
  const view = lineView({ plot: fold([]), now: '2026-06-07T11:00' });
  it('is empty and wants nothing', () => {
    expect(view.empty).toBe(true);
    expect(view.hands).toEqual([]);
    expect(mannerOf(fold([]), 'me')).toBe('metric');
  });
});

describe('a date from its day number', () => {
  it.each([
    [0, '1970-01-01'],
    [11_016, '2000-02-29'],
    [20_631, '2026-06-27'],
  ])('%i is %s', (day, date) => {
    expect(onDay(day)).toBe(date);
    expect(Date.parse(`${date}T00:00:00Z`) / 86_400_000).toBe(day);
  });
});
