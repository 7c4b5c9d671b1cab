// The demo garden's pegs 14 and 15, foretold look by look: each later reading against the band that the looks before it
// made, four times in five, as the keyholder would have seen it at that look. peg 16 shows its sign before it stinks.
import { describe, expect, it } from 'vitest';
import { modelEvidence } from '#engine/souring/expected.ts';
import { reasonsBeside } from '#engine/souring/expected-reasons.ts';
import type { Look } from '#engine/souring/look.ts';
import { readingBand } from '#engine/souring/model/forecast.ts';
import { learn } from '#engine/souring/model/learn.ts';
import { fold } from '#journal/fold.ts';
import { DEMO_PLOT, gardenEntries } from '#tasks/demo/garden.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { pegSour } from '#tasks/plot/peg-sour.ts';
import { DRAWS, openSour, runSour } from '#tasks/sour.ts';

const DAY_MS = 86_400_000;

/** What `sour` is asked about a peg on a day of its own, from the entries that were there by then. */
function opened(peg: number, day: number) {
  const filledOn = [...fold(gardenEntries(), DEMO_PLOT).batches.values()].find((one) => one.peg === peg)?.filled.on;
  if (filledOn === undefined) throw new Error(`no peg ${peg} in the demo garden`);
  const on = new Date(Date.parse(`${filledOn.slice(0, 10)}T00:00:00Z`) + day * DAY_MS).toISOString().slice(0, 10);
  const plot = fold(gardenEntries(on), DEMO_PLOT);
  const batch = [...plot.batches.values()].find((one) => one.peg === peg);
  if (batch === undefined) throw new Error(`no peg ${peg} on ${on}`);
  const view = pegView({ plot, batch, now: `${on}T12:00` });
  const asked = pegSour({ plot, batch, view });
  if (!asked.ok) throw new Error(`peg ${peg}: ${asked.why}`);
  const answer = openSour(asked.ask);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.opened;
}

interface Foretold {
  readonly day: number;
  readonly ph: number;
  readonly low: number;
  readonly high: number;
}

/** The readings of some days, each with the band that was made on the day of the look before it. */
function foretold(peg: number, days: readonly number[]): readonly Foretold[] {
  return days.slice(1).map((day, i) => {
    const before = opened(peg, days[i] as number);
    const reading = opened(peg, day).looks.findLast((look: Look) => look.ph !== undefined);
    if (reading?.ph === undefined) throw new Error(`peg ${peg}: no reading on day ${day}`);
    const first = runSour(before, 0, DRAWS);
    const { ensemble } = learn({ known: before.known, first, looks: before.looks, days: before.runDays });
    const { low, high } = readingBand(ensemble, reading.day, 'meter');
    return { day, ph: reading.ph, low, high };
  });
}

describe('the demo pegs, foretold at each look', () => {
  it('has at least 8 of the 12 later readings of pegs 14 and 15 in the band made at the look before', () => {
    const readings = [...foretold(14, [0, 1, 2, 4, 7, 9]), ...foretold(15, [0, 3, 6, 9, 12, 16, 20, 22])];
    expect(readings.map(({ ph }) => ph)).toEqual([5.2, 4.5, 4.1, 3.8, 3.7, 6.4, 5.7, 5.1, 4.7, 4.4, 4.1, 4.1]);
    const within = readings.filter(({ ph, low, high }) => ph >= low && ph <= high);
    const told = readings.map((one) => `${one.day}: ${one.ph} in ${one.low.toFixed(2)} to ${one.high.toFixed(2)}`);
    expect(within.length, told.join('; ')).toBeGreaterThanOrEqual(8);
    // A band that takes in everything foretells nothing: once it sours, it is narrower than a pH.
    const late = readings.slice(2, 5);
    for (const { low, high } of late) expect(high - low).toBeLessThan(1);
  }, 900_000);

  it('finds peg 16 odd on day 3, before the nose finds egg, and acid missing on day 6', () => {
    const beside = (day: number) => {
      const batch = opened(16, day);
      const { known, looks, runDays } = batch;
      const learned = learn({ known, first: runSour(batch, 0, 400), looks, days: runDays });
      return reasonsBeside(modelEvidence({ known, learned, looks }), day + 1).map(({ code }) => code);
    };
    expect(beside(3).length).toBeGreaterThan(0);
    expect(beside(6)).toContain('buffer-rises');
  });
});
