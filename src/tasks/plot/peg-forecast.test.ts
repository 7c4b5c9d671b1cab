import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { DEMO_PLOT, gardenEntries } from '../demo/garden.ts';
import { answerSour, openSour, runSour } from '../sour.ts';
import { pegView } from './peg.ts';
import { pegForecast } from './peg-forecast.ts';
import { pegSour } from './peg-sour.ts';

/** Few draws: what is checked here is the calendar, not the model. */
const DRAWS = 40;

function forecast(peg: number, on: string) {
  const plot = fold(gardenEntries(on), DEMO_PLOT);
  const batch = [...plot.batches.values()].find((one) => one.peg === peg);
  if (batch === undefined) throw new Error(`no peg ${peg}`);
  const view = pegView({ plot, batch, now: `${on}T11:00` });
  const asked = pegSour({ plot, batch, view });
  const opened = asked.ok ? openSour(asked.ask) : undefined;
  if (!opened?.ok) throw new Error('no answer');
  const members = runSour(opened.opened, 0, DRAWS);
  const result = answerSour(opened.opened, members, opened.opened.looks, undefined, { quick: true });
  return { view, result, said: pegForecast(view, result) };
}

describe('the forecast of a peg on the calendar', () => {
  it('counts its days from the filling on 10 June at half past nine, and never promises a day that is over', () => {
    const { view, said } = forecast(14, '2026-06-13');
    for (const coming of [said.ready, said.held]) {
      const span = coming?.span;
      if (span === undefined) continue;
      expect(span.fromDay).toBeGreaterThanOrEqual(view.judgedDay);
      const hours = (day: number) => Date.parse('2026-06-10T09:30Z') + day * 86_400_000;
      expect(span.fromOn).toBe(new Date(hours(span.fromDay)).toISOString().slice(0, 10));
      expect(span.toOn).toBe(new Date(hours(span.toDay)).toISOString().slice(0, 10));
    }
    expect(said.ready?.span).toBeDefined();
    expect(said.gasTodayL).toBeDefined();
  });
  it('says nothing of ready or held once the word says so, nor of gas once it is emptied', () => {
    const { said } = forecast(14, '2026-07-05');
    expect(said).toMatchObject({
      ready: undefined,
      held: undefined,
      gasTodayL: undefined,
      gasMost: undefined,
      rescues: [],
    });
  });
  it('foretells nothing of a lost batch', () => {
    const { said } = forecast(16, '2026-05-29');
    expect(said).toMatchObject({ ready: undefined, held: undefined, plateauPh: undefined, brake: undefined });
  });
  it('asks for a room that keeps a day of its gas below the limit of a working day', () => {
    const { result, said } = forecast(15, '2026-06-20');
    const mostL = Math.max(...result.days.map(({ gasRangeLPerDay }) => gasRangeLPerDay.high));
    // Settled rise = gas of a day / room, with the air renewed once a day: 5,000 ppm less some 400 outside.
    expect((said.roomM3 ?? 0) * 0.0046).toBeLessThanOrEqual((mostL / 1000) * 1.05);
    expect(said.limitPpm).toBe(5000);
  });
});
