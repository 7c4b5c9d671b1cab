import { describe, expect, it } from 'vitest';
import { fold, type Plot } from '#journal/fold.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { DEMO_PLOT, gardenEntries } from '../demo/garden.ts';
import { lessonsFor, readTaught, taughtBy } from './lessons.ts';

function lessons(plot: Plot, peg: number, now: string) {
  const batch = [...plot.batches.values()].find((one) => one.peg === peg);
  if (batch === undefined) throw new Error(`no peg ${peg}`);
  return lessonsFor({ plot, batch, now });
}

const pegs = (plot: Plot, peg: number, now: string) => lessons(plot, peg, now).from.map((one) => one.peg);

/** Pails of clippings one after the other, each soured in the days told and strained; the last one stands. */
function season(extra: (rake: ReturnType<typeof recorder>) => readonly unknown[] = () => []) {
  const rake = recorder();
  const entries = [1, 2, 3].flatMap((peg) => {
    const day = (n: number) => `2026-0${4 + peg}-${String(n).padStart(2, '0')}T10:00`;
    const filled = rake.did('peg.filled', day(1), {
      peg,
      parts: [{ material: peg === 2 ? 'kale-leaves' : 'grass-clippings-fresh', mass: kg(2) }],
      water: [{ volume: litres(5) }],
      temperatureC: 18,
    });
    const batch = filled.id;
    if (peg === 3) return [filled];
    return [
      filled,
      rake.did('peg.looked', day(3), { batch, acidity: meter(5.6) }),
      rake.did('peg.looked', day(9), { batch, acidity: meter(4.4) }),
      rake.did('peg.looked', day(14), { batch, acidity: meter(4.0) }),
      rake.did('peg.strained', day(20), { batch, drained: litres(4), rest: 'nothing' }),
    ];
  });
  return fold([...entries, ...(extra(rake) as typeof entries)]);
}

describe('the batches a peg learns from', () => {
  it('are those strained before it was filled and led by the like; a tipped one teaches nothing', () => {
    const garden = fold(gardenEntries('2026-06-26'), DEMO_PLOT);
    // Peg 13 was strained on 31 May; peg 16 was tipped; peg 14 was strained after peg 15 was filled.
    expect(pegs(garden, 14, '2026-06-26')).toEqual([13]);
    expect(pegs(garden, 15, '2026-06-26')).toEqual([13]);
    expect(pegs(garden, 13, '2026-06-26')).toEqual([]);
  });
  it('are not those of another kind of material', () => {
    const plot = season();
    expect(pegs(plot, 3, '2026-07-05')).not.toContain(2);
    expect(pegs(plot, 3, '2026-07-05')).toContain(1);
  });
  it('count no more once they were set back, for their group or for all, and not those of another group', () => {
    const group = lessons(season(), 3, '2026-07-05').group;
    const reset = (of: string) => season((rake) => [rake.did('lessons.reset', '2026-07-02T10:00', { group: of })]);
    expect(pegs(reset(group ?? ''), 3, '2026-07-05')).toEqual([]);
    expect(pegs(reset('all'), 3, '2026-07-05')).toEqual([]);
    expect(pegs(reset('another'), 3, '2026-07-05')).toEqual([1]);
    // It holds from its own day on.
    expect(pegs(reset('all'), 3, '2026-07-01')).toEqual([1]);
  });
});

describe('what finished batches taught', () => {
  it('is nothing where there are none', () => {
    expect(taughtBy([])).toBeUndefined();
  });
  it('reads a batch that soured slowly as slower, as more buffer or as fewer bacteria, and never narrower than half', () => {
    // pH 6 after ten days at 20 °C lies far above what the table of such clippings expects.
    const slow = season().batches.size > 0 ? lessons(season(), 3, '2026-07-05').from[0]?.ask : undefined;
    if (slow === undefined) throw new Error('no lesson');
    const ask = { ...slow, looks: [{ day: 10, ph: 6, by: 'meter' as const }], today: 10 };
    const belief = taughtBy([ask], 100);
    if (belief === undefined) throw new Error('no belief');
    const factor = new Map(readTaught(belief).map(({ unknown, timesFactor }) => [unknown, timesFactor]));
    const signs = [
      factor.get('rate')?.likely ?? 1,
      1 / (factor.get('buffer')?.likely ?? 1),
      factor.get('count')?.likely ?? 1,
    ];
    expect(Math.min(...signs)).toBeLessThan(0.95);
    // width² = 0.5 · learned² + 0.5
    for (const width of belief.width) expect(width).toBeGreaterThanOrEqual(Math.SQRT1_2);
  });
});
