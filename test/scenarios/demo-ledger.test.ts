// The demo garden's season: what share of each bed's own nitrogen need the liquid really poured on it brought. Worked out
// here a second time by hand from the recorded pours and the masses in the pail, with the figures read out of the tables
// as text: dry mass · nitrogen, given up F = Finf (1 − e^(−k t)), over all the liquid, times litres poured, over the need.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { DEMO_FIRST_DAY, DEMO_LAST_DAY, gardenEntries } from '#tasks/demo/garden.ts';
import { explainPlotLedger, plotLedger } from '#tasks/plot/ledger.ts';
import { sayLedger } from '#words/en/ledger.ts';

interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}
const DATA = join(import.meta.dirname, '../../data');
const table = (name: string) =>
  parse(readFileSync(join(DATA, name), 'utf8'), { columns: true }) as Readonly<Record<string, string>>[];
const materials = [...table('material-figures.csv'), ...table('food-figures.csv')];
const figure = (rows: readonly Readonly<Record<string, string>>[], id: string, quantity: string): Band => {
  const row = rows.find((one) => one.id === id && one.quantity === quantity);
  const likely = Number(row?.likely ?? 'x');
  return { low: Number(row?.low || likely), likely, high: Number(row?.high || likely) };
};

// Ranges by the guide to uncertainty: sums and products in quadrature, products on the logarithm.
const times = (...bands: readonly Band[]): Band => {
  const likely = bands.reduce((p, b) => p * b.likely, 1);
  const down = Math.hypot(...bands.map((b) => Math.log(b.likely / b.low)));
  const up = Math.hypot(...bands.map((b) => Math.log(b.high / b.likely)));
  return { low: likely * Math.exp(-down), likely, high: likely * Math.exp(up) };
};
const plus = (...bands: readonly Band[]): Band => {
  const likely = bands.reduce((s, b) => s + b.likely, 0);
  const down = Math.hypot(...bands.map((b) => b.likely - b.low));
  const up = Math.hypot(...bands.map((b) => b.high - b.likely));
  return { low: likely - down, likely, high: likely + up };
};
const by = (b: Band, factor: number): Band => ({
  low: b.low * factor,
  likely: b.likely * factor,
  high: b.high * factor,
});

// Peg 14: 2.1 kg clippings, 0.7 cabbage outers, 0.4 kitchen trimmings; 5.2 L water, 0.2 L starter;
// filled 10 June 09:30, strained 20 June 10:00.
const LOTS = [
  ['grass-clippings-fresh', 2.1],
  ['cabbage-leaves', 0.7],
  ['kitchen-trimmings', 0.4],
] as const;
const liquidL =
  5.2 + 0.2 + LOTS.reduce((sum, [id, kg]) => sum + kg * (1 - figure(materials, id, 'dryMatter').likely), 0);
const putInG = plus(
  ...LOTS.map(([id, kg]) =>
    by(times(figure(materials, id, 'dryMatter'), figure(materials, id, 'nPercentDm')), 10 * kg),
  ),
);
const extraction = table('extraction.csv');
const days = 10 + 0.5 / 24;
const finf = figure(extraction, 'n', 'finf');
const k = figure(extraction, 'n', 'kPerDay');
const givenUp = (kPerDay: number) => 1 - Math.exp(-kPerDay * days);
const gPerL = by(
  times(putInG, finf, { low: givenUp(k.low), likely: givenUp(k.likely), high: givenUp(k.high) }),
  1 / liquidL,
);
const ceilingGPerL = putInG.high / liquidL;

const entries = gardenEntries();
const plot = fold(entries);
const answer = plotLedger({ plot, from: DEMO_FIRST_DAY, to: DEMO_LAST_DAY });

/** Litres of concentrate on a bed as recorded; the tunnel's two tellings of 14 July make a band: one of them or both. */
const concentrateOf = (bed: string): Band => {
  const id = [...plot.beds.values()].find(({ facts }) => facts.name === bed)?.id;
  const pours = entries.filter((one) => one.kind === 'bed.fed' && (one.body as { bed: string }).bed === id);
  const litres = (one: (typeof pours)[number]) =>
    (one.body as { from: { volume: { volumeL: number } }[] }).from.reduce((sum, f) => sum + f.volume.volumeL, 0);
  const twins = bed === 'Tunnel' ? pours.filter(({ on }) => on.startsWith('2026-07-14')) : [];
  const sure = pours.filter((one) => !twins.includes(one)).reduce((sum, one) => sum + litres(one), 0);
  const [smaller = 0, larger = 0] = twins.map(litres).sort((a, b) => a - b);
  return { low: sure + larger, likely: sure + larger + smaller / 2, high: sure + larger + smaller };
};

const crops = table('crops.csv');
const BEDS = [
  ['Gate', 5.76, ['tomato']],
  ['Middle', 5.76, ['kale', 'chard']],
  ['Fence', 6.75, ['pumpkin', 'snap-bean']],
  ['Tunnel', 10, ['cucumber', 'pepper']],
  ['Trial', 7.2, ['chard']],
] as const;

describe('the season of the demo garden', () => {
  it.each(BEDS)('gives the liquid the share of the need of %s that a hand calculation gives', (name, areaM2, grown) => {
    const need = plus(...grown.map((crop) => by(figure(crops, crop, 'nNeedGPerM2'), areaM2 / grown.length)));
    const litres = concentrateOf(name);
    const poured = times(litres, gPerL);
    const ceilingG = ceilingGPerL * litres.high;
    const held = { ...poured, high: Math.min(poured.high, ceilingG) };
    const inverse = { low: 1 / need.high, likely: 1 / need.likely, high: 1 / need.low };
    const byHand = by(times(held, inverse), 100);
    const bed = answer.value.beds.find((one) => one.name === name);
    const share = bed?.liquidSharePercent.n;
    expect(litres.likely).toBeGreaterThan(0.4);
    expect(Math.abs((share?.low ?? Number.NaN) - byHand.low)).toBeLessThan(0.1);
    expect(Math.abs((share?.likely ?? Number.NaN) - byHand.likely)).toBeLessThan(0.1);
    expect(Math.abs((share?.high ?? Number.NaN) - byHand.high)).toBeLessThan(0.1);
    // closer than asked: the same sum to a thousandth of itself
    expect(share?.likely).toBeCloseTo(byHand.likely, 3);
    // and never past the ceiling: all that went into the pail, dissolved
    const ceiling = (100 * ceilingG) / need.low;
    expect(bed?.liquidCeilingPercent.n).toBeCloseTo(ceiling, 6);
    expect(share?.high ?? Number.NaN).toBeLessThanOrEqual(ceiling);
    expect(share?.likely).toBeLessThan(1);
  });

  it('counts the pots by the ground inside their rims, so that no bed is left out', () => {
    expect(answer.unsized).toEqual([]);
    // 12 pots of 15 L, each as tall as wide: d³ = 4 · 0.015 m³ / π
    const diameterM = ((4 * 0.015) / Math.PI) ** (1 / 3);
    const pots = answer.value.beds.find(({ name }) => name === 'Pots');
    expect(pots?.areaM2).toBeCloseTo((12 * Math.PI * diameterM ** 2) / 4, 9);
    expect(answer.ids.map((id) => plot.beds.get(id)?.facts.name)).toEqual(answer.value.beds.map(({ name }) => name));
    expect(answer.value.beds.map(({ name }) => name)).toEqual([
      'Gate',
      'Middle',
      'Shed',
      'Fence',
      'Tunnel',
      'Roots',
      'Pots',
      'Trial',
    ]);
  });

  it('brings nothing by the liquid to the beds that got none', () => {
    for (const name of ['Shed', 'Roots']) {
      const bed = answer.value.beds.find((one) => one.name === name);
      expect(bed?.liquidSharePercent.n).toEqual({ low: 0, likely: 0, high: 0 });
      expect(bed?.missingG.n?.likely).toBeCloseTo(bed?.needG.n?.likely ?? Number.NaN, 9);
    }
  });

  it('tells the share with its range, and neither "feeds" nor "replaces"', () => {
    const lines = [...sayLedger(answer.value), ...answer.value.cautions.map(({ text }) => text)];
    expect(lines.join('\n')).toMatch(/Gate: the liquid brought 0\.\d+\u00a0% \(0\.\d+ to \d\.?\d*\) of the nitrogen/);
    expect(lines.join('\n')).not.toMatch(/\bfeeds\b|\breplaces\b|undefined|NaN/);
  });

  it('shows how each share came about', () => {
    const figures = explainPlotLedger({ plot, from: DEMO_FIRST_DAY, to: DEMO_LAST_DAY }).map((one) => one.figure);
    expect(figures).toContain('beds[0].liquidSharePercent.n');
    expect(figures).toContain('beds[0].needG.n');
  });
});
