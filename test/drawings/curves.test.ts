// Curves read back by the ticks of their own axes: pH and days of the sour lines, grams of a season, degrees of a heap.

import { describe, expect, it } from 'vitest';
import { casePaper, linePath as casePath } from '#web/drawings/case-lines-geometry.ts';
import { heatScale } from '#web/drawings/heap-side-geometry.ts';
import { seasonBand, seasonScale } from '#web/drawings/release-geometry.ts';
import { alarmPath, bandPaths, linePath, sourScale, spanOn, warmthStrip } from '#web/drawings/sour-line-geometry.ts';
import { cornersOf, readBy } from './read-back.ts';

/** A path is written to a tenth of a pixel: so much pH, or so many days, lie in half of that. */
const blur = (read: (at: number) => number) => Math.abs(read(0.06) - read(0));

describe('the sour line', () => {
  const readings = [
    [0, 6.9],
    [3, 6.4],
    [9, 5.1],
    [20, 4.1],
  ].map(([day = 0, ph = 0]) => ({ day, ph, errorPh: 0.1, text: '' }));
  for (const room of [
    { width: 350, height: 380, lastDay: 22 },
    { width: 900, height: 380, lastDay: 200 },
  ]) {
    const scale = sourScale(readings, room);
    const day = readBy(scale.dayTicks.map((figure) => ({ figure, at: scale.x(figure) })));
    const ph = readBy(scale.phTicks.map((figure) => ({ figure, at: scale.y(figure) })));

    it(`has each reading at its day and pH by the ticks, ${room.width} px wide`, () => {
      for (const one of readings) {
        expect(day(scale.x(one.day))).toBeCloseTo(one.day, 9);
        expect(ph(scale.y(one.ph))).toBeCloseTo(one.ph, 9);
        expect(ph(scale.y(one.ph - one.errorPh))).toBeCloseTo(one.ph - one.errorPh, 9);
      }
      for (const limit of [4.6, 4.2, 4]) expect(ph(scale.y(limit))).toBeCloseTo(limit, 9);
      expect(day(scale.left)).toBeCloseTo(0, 9);
    });
    it(`has its expected line, band and alarm at their figures to a tenth of a pixel, ${room.width} px wide`, () => {
      cornersOf(linePath(readings, scale)).forEach(({ x, y }, i) => {
        expect(Math.abs(day(x) - (readings[i]?.day ?? 0))).toBeLessThan(blur(day));
        expect(Math.abs(ph(y) - (readings[i]?.ph ?? 0))).toBeLessThan(blur(ph));
      });
      const band = readings.map((one) => ({ day: one.day, low: one.ph - 0.3, high: one.ph + 0.2 }));
      const paths = bandPaths(band, scale);
      for (const [path, off] of [
        [paths.low, -0.3],
        [paths.high, 0.2],
      ] as const) {
        cornersOf(path).forEach(({ y }, i) => {
          const asked = Math.min(scale.topPh, (readings[i]?.ph ?? 0) + off);
          expect(Math.abs(ph(y) - asked)).toBeLessThan(blur(ph));
        });
      }
      const alarm = cornersOf(
        alarmPath(
          [
            { day: 3, ph: 5 },
            { day: 5, ph: 4.6 },
          ],
          scale,
        ),
      );
      const steps = alarm.slice(2).map(({ x, y }) => [Math.round(day(x)), Number(ph(y).toFixed(1))]);
      expect(steps.slice(0, 3)).toEqual([
        [3, 5],
        [5, 5],
        [5, 4.6],
      ]);
    });
    it(`has a span between its days and temperatures between their lines, ${room.width} px wide`, () => {
      const span = spanOn({ from: 4, to: 18, openEnded: false }, scale);
      expect([day(span?.from ?? 0), day(span?.to ?? 0)]).toEqual([expect.closeTo(4, 9), expect.closeTo(18, 9)]);
      const days = [0, 1].map((one) => ({ day: one, lowC: 9 + one, highC: 16 - one }));
      const strip = warmthStrip(days, { scale, top: 400, toldUntil: 9 });
      const degrees = readBy(strip.ticks.map(({ c, y }) => ({ figure: c, at: y })));
      const drawn = cornersOf(strip.told).map(({ y }) => degrees(y));
      [16, 16, 15, 15, 10, 10, 9, 9].forEach((c, i) => {
        expect(Math.abs((drawn[i] ?? 0) - c)).toBeLessThan(blur(degrees));
      });
    });
  }
  it('has a lower pH lower and a later day farther right, all readings on the paper', () => {
    const scale = sourScale(readings, { width: 350, height: 380, lastDay: 22 });
    readings.forEach((one, i) => {
      const before = readings[i - 1];
      if (before) expect(scale.y(one.ph)).toBeGreaterThan(scale.y(before.ph));
      if (before) expect(scale.x(one.day)).toBeGreaterThan(scale.x(before.day));
      expect(scale.y(one.ph)).toBeGreaterThanOrEqual(scale.top);
      expect(scale.y(one.ph)).toBeLessThanOrEqual(scale.bottom);
    });
  });
});

describe('two sour lines on one paper', () => {
  const paper = casePaper({ width: 350, height: 214, days: 14 });
  const ph = readBy(paper.phTicks.map((figure) => ({ figure, at: paper.y(figure) })));
  const day = readBy(paper.dayTicks.map((figure) => ({ figure, at: paper.x(figure) })));
  it('read back day and pH by their ticks, what leaves the paper at its edge', () => {
    const points = [
      { day: 0, ph: 6.4 },
      { day: 2, ph: 5.3 },
      { day: 9, ph: 4.2 },
      { day: 14, ph: 3.6 },
    ];
    cornersOf(casePath(points, paper)).forEach(({ x, y }, i) => {
      expect(Math.abs(day(x) - (points[i]?.day ?? 0))).toBeLessThan(blur(day));
      expect(Math.abs(ph(y) - (points[i]?.ph ?? 0))).toBeLessThan(blur(ph));
    });
    expect(paper.y(9)).toBe(paper.top);
    expect(paper.y(1)).toBe(paper.bottom);
  });
  it('has room for a filling in hard water that begins above 6.6, and for one that ends below 3.3', () => {
    const drawnPh = [7.2, 6.1, 4.2, 3.1];
    const wide = casePaper({ width: 350, height: 214, days: 14, drawnPh });
    const read = readBy(wide.phTicks.map((figure) => ({ figure, at: wide.y(figure) })));
    for (const asked of drawnPh) expect(read(wide.y(asked))).toBeCloseTo(asked, 9);
    expect(casePaper({ width: 350, height: 214, days: 14, drawnPh: [6.3, 3.6] }).y(6)).toBe(paper.y(6));
  });
});

describe('the season of a bed', () => {
  const ends = (low: number, likely: number, high: number) => ({ low, likely, high });
  const points = [
    { day: 142, takenUpG: ends(0, 0, 0), freeG: ends(0, 0, 0) },
    { day: 200, takenUpG: ends(20, 31, 44), freeG: ends(-2, 12, 30) },
    { day: 260, takenUpG: ends(80, 107, 129), freeG: ends(5, 22, 51) },
  ];
  const scale = seasonScale(points, { width: 350, height: 270 });
  const grams = readBy(scale.gramTicks.map((figure) => ({ figure, at: scale.y(figure) })));
  it('reads back its grams by the ticks, nothing at nothing, all of it on the paper', () => {
    for (const { takenUpG, freeG } of points)
      for (const one of [...Object.values(takenUpG), ...Object.values(freeG)]) {
        expect(grams(scale.y(one))).toBeCloseTo(one, 9);
        expect(scale.y(one)).toBeGreaterThanOrEqual(scale.top);
        expect(scale.y(one)).toBeLessThanOrEqual(scale.bottom);
      }
    expect(grams(scale.y(0))).toBeCloseTo(0, 9);
  });
  it('has the band of what came free out along its high end and back along its low end', () => {
    const drawn = cornersOf(seasonBand(points, scale)).map(({ y }) => grams(y));
    [0, 30, 51, 5, -2, 0].forEach((one, i) => {
      expect(Math.abs((drawn[i] ?? 0) - one)).toBeLessThan(blur(grams));
    });
  });
});

describe('the heat of a heap', () => {
  it('reads back degrees and days, never off the paper', () => {
    const scale = heatScale(20, { left: 44, right: 350, top: 16, bottom: 196 });
    const degrees = readBy([0, 20, 40, 60, 80].map((figure) => ({ figure, at: scale.y(figure) })));
    for (const c of [0, 12.5, 55, 71, 80]) expect(degrees(scale.y(c))).toBeCloseTo(c, 9);
    expect([scale.y(-5), scale.y(95)]).toEqual([196, 16]);
    expect([scale.x(0), scale.x(10), scale.x(20)]).toEqual([44, 197, 350]);
  });
});
