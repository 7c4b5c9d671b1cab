// What must hold of gas in any vessel and any room.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foulGasPpm } from '#engine/souring/gas/hydrogen-sulphide.ts';
import { gasByDay } from '#engine/souring/gas/output.ts';
import { mostPpm, risePpm } from '#engine/souring/gas/room.ts';
import { dayPast, pressureByDay, sealedAtm } from '#engine/souring/gas/sealed.ts';
import { gasVolumeL } from '#engine/souring/gas/solubility.ts';

const SEED = 20261125;
const RUNS = { seed: SEED, numRuns: 500 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const vessel = fc.record({
  gasRoomL: between(0.01, 20),
  liquidL: between(0.1, 100),
  closedAtC: between(0, 30),
  dissolvedCo2GPerL: between(0, 3),
});
const curve = fc.array(between(0, 3), { minLength: 2, maxLength: 30 }).map((steps) => ({
  days: steps.map((_, i) => i),
  co2GPerL: steps.map((_, i) => steps.slice(1, i + 1).reduce((sum, step) => sum + step, 0)),
}));

describe(`a closed vessel (seed ${SEED})`, () => {
  it('presses more when warmer, with more gas and with less gas room', () => {
    fc.assert(
      fc.property(vessel, between(0.1, 20), between(0, 34), between(0.5, 5), (v, madeCo2GPerL, temperatureC, more) => {
        const now = sealedAtm(v, { madeCo2GPerL, temperatureC });
        expect(sealedAtm(v, { madeCo2GPerL, temperatureC: temperatureC + more })).toBeGreaterThan(now);
        expect(sealedAtm(v, { madeCo2GPerL: madeCo2GPerL + more, temperatureC })).toBeGreaterThan(now);
        const even = { ...v, closedAtC: temperatureC };
        const less = sealedAtm({ ...even, gasRoomL: v.gasRoomL / 2 }, { madeCo2GPerL, temperatureC });
        expect(less).toBeGreaterThan(sealedAtm(even, { madeCo2GPerL, temperatureC }));
      }),
      RUNS,
    );
  });

  it('never loses pressure at an even warmth, and passes a higher line no sooner', () => {
    fc.assert(
      fc.property(curve, between(0, 35), between(0, 2), between(0, 2), (c, temperatureC, line, higher) => {
        const byDay = pressureByDay({ curve: c, gasRoomL: 1, liquidL: 4, closedOnDay: 0, temperatureC });
        for (const [i, one] of byDay.entries()) {
          expect(one.pressureAtm).toBeGreaterThanOrEqual((byDay[i - 1]?.pressureAtm ?? 0) - 1e-12);
        }
        const soon = dayPast(byDay, line) ?? Number.POSITIVE_INFINITY;
        expect(dayPast(byDay, line + higher) ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(soon);
      }),
      RUNS,
    );
  });
});

describe(`gas by the day (seed ${SEED})`, () => {
  it('adds up to all that was made', () => {
    fc.assert(
      fc.property(curve, between(0.1, 200), between(0, 40), (c, liquidL, temperatureC) => {
        const sum = gasByDay({ curve: c, liquidL, temperatureC }).reduce((total, { gasL }) => total + gasL, 0);
        const amountMol = ((c.co2GPerL.at(-1) ?? 0) * liquidL) / 44.009;
        expect(sum).toBeCloseTo(gasVolumeL({ amountMol, temperatureC }), 6);
      }),
      RUNS,
    );
  });
});

describe(`a room (seed ${SEED})`, () => {
  const room = fc.record({ gasLPerDay: between(0, 500), roomM3: between(0.2, 200), airChangesPerH: between(0, 10) });

  it('gets no better with more gas, less room, less air or more time', () => {
    fc.assert(
      fc.property(room, between(1, 3), between(0, 2000), (r, times, totalGasL) => {
        const now = mostPpm({ ...r, totalGasL }) * (1 - 1e-12);
        expect(mostPpm({ ...r, gasLPerDay: r.gasLPerDay * times, totalGasL })).toBeGreaterThanOrEqual(now);
        expect(mostPpm({ ...r, roomM3: r.roomM3 / times, totalGasL })).toBeGreaterThanOrEqual(now);
        expect(mostPpm({ ...r, airChangesPerH: r.airChangesPerH / times, totalGasL })).toBeGreaterThanOrEqual(now);
        expect(risePpm(r, 5 * times)).toBeGreaterThanOrEqual(risePpm(r, 5) * (1 - 1e-12));
      }),
      RUNS,
    );
  });
});

describe(`a foul closed vessel (seed ${SEED})`, () => {
  it('holds more hydrogen sulphide the more sour it is and the more plants it holds, in bands that are in order', () => {
    const foul = fc.record({
      gasRoomL: between(0.5, 20),
      liquidL: between(1, 100),
      temperatureC: between(0, 40),
      dryMatterKg: between(0.01, 1),
      ph: between(3, 8),
    });
    fc.assert(
      fc.property(foul, between(0.1, 2), (f, more) => {
        const now = foulGasPpm(f);
        expect(now.low).toBeLessThanOrEqual(now.likely);
        expect(now.likely).toBeLessThanOrEqual(now.high);
        expect(foulGasPpm({ ...f, ph: f.ph + more }).likely).toBeLessThanOrEqual(now.likely);
        expect(foulGasPpm({ ...f, dryMatterKg: f.dryMatterKg + more }).likely).toBeGreaterThanOrEqual(now.likely);
      }),
      RUNS,
    );
  });
});
