import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { type PegView, pegView, standingPegs } from './peg.ts';
import { meanTemperatureC } from './peg-temperature.ts';
import { explainPeg } from './peg-working.ts';

const FILLED_ON = '2026-06-01T10:30';

/** A pail filled on 1 June at half past ten, and what was done with it afterwards. */
function pail(after: (rake: ReturnType<typeof recorder>, batch: string) => readonly unknown[]) {
  const rake = recorder();
  const vessel = rake.did('vessel.described', '2026-05-01', { name: 'pail', volume: litres(12) });
  const filled = rake.did('peg.filled', FILLED_ON, {
    peg: 14,
    vessel: vessel.id,
    lid: 'loose',
    temperatureC: 20,
    parts: [{ material: 'grass-clippings-fresh', mass: kg(3) }],
    water: [{ volume: litres(5) }],
  });
  const more = after(rake, filled.id) as readonly (typeof filled)[];
  return fold([vessel, filled, ...more]);
}

function view(plot: ReturnType<typeof pail>, now: string): PegView {
  const [batch] = plot.batches.values();
  if (batch === undefined) throw new Error('no batch');
  return pegView({ plot, batch, now });
}

describe('a peg at a moment', () => {
  it('has no word but unknown before anybody read its acidity, and wants a look today', () => {
    expect(
      view(
        pail(() => []),
        '2026-06-01T11:00',
      ),
    ).toMatchObject({ state: 'unknown', day: 0, hand: 'look-due' });
  });
  it('counts a look of today at any hour, and none of tomorrow', () => {
    const plot = pail((rake, batch) => [
      rake.did('peg.looked', '2026-06-01T19:00', { batch, acidity: meter(6.3) }),
      rake.did('peg.looked', '2026-06-03T08:00', { batch, acidity: meter(4.5) }),
    ]);
    expect(view(plot, '2026-06-01T12:00').readings.map(({ ph }) => ph)).toEqual([6.3]);
    expect(view(plot, '2026-06-01T12:00').state).toBe('souring');
    expect(view(plot, '2026-06-03T07:00').readings.map(({ ph }) => ph)).toEqual([6.3, 4.5]);
  });
  it('asks for the next look two days on, and says when that day is there', () => {
    const plot = pail((rake, batch) => [rake.did('peg.looked', FILLED_ON, { batch, acidity: meter(6.3) })]);
    expect(view(plot, '2026-06-02T12:00')).toMatchObject({ nextLookOn: '2026-06-03', lookDue: false, hand: undefined });
    expect(view(plot, '2026-06-03T06:00')).toMatchObject({ nextLookOn: '2026-06-03', lookDue: true, hand: 'look-due' });
    expect(view(plot, '2026-06-05T06:00')).toMatchObject({ nextLookOn: '2026-06-05', lookDue: true });
  });
  it('trusts a meter to 0.1 and a strip to 0.3, and names whoever read it', () => {
    const plot = pail((rake, batch) => [
      rake.did('peg.looked', '2026-06-01', { batch, acidity: meter(6.3) }),
      rake.did('peg.looked', '2026-06-02', { batch, acidity: { typed: '5.0', ph: 5, by: 'strip' }, readBy: 'Fork' }),
    ]);
    expect(view(plot, '2026-06-02T20:00').readings).toMatchObject([
      { errorPh: 0.1, by: 'meter', who: 'Rake' },
      { errorPh: 0.3, by: 'strip', who: 'Fork' },
    ]);
  });
  it('takes a strip read by somebody else as that person, the nose as the signer', () => {
    // One visit, two readers three pads apart: the reading of Fork stands against that of Rake.
    const plot = pail((rake, batch) => [
      rake.did('peg.looked', '2026-06-02T10:00', { batch, acidity: meter(4.0) }),
      rake.did('peg.looked', '2026-06-02T10:10', {
        batch,
        acidity: { typed: '5.5', ph: 5.5, by: 'strip' },
        readBy: 'Fork',
      }),
    ]);
    expect(view(plot, '2026-06-02T12:00').reasons.map(({ code }) => code)).toContain('readers-differ');
  });
  it('wants a hand when it stands at 35 °C or more, not at 34', () => {
    const at = (temperatureC: number) =>
      view(
        pail((rake, batch) => [rake.did('peg.looked', '2026-06-02T10:00', { batch, acidity: meter(5), temperatureC })]),
        '2026-06-02T12:00',
      ).hand;
    expect(at(35)).toBe('too-warm');
    expect(at(34)).toBe(undefined);
  });
  it('says nothing late where nobody measured how warm it is: there is no line to draw', () => {
    const rake = recorder();
    const filled = rake.did('peg.filled', FILLED_ON, { peg: 3, water: [{ volume: litres(5) }] });
    const plot = fold([filled]);
    expect(view(plot, FILLED_ON)).toMatchObject({ temperature: undefined, alarm: [] });
    expect(explainPeg(view(plot, FILLED_ON))).toEqual([]);
  });
  it('draws as many litres as stand in it', () => {
    // 3 kg of clippings at 1.0 L/kg and 5 L of water
    const layers = view(
      pail(() => []),
      FILLED_ON,
    ).layers;
    expect(layers.map(({ kind }) => kind)).toEqual(['water', 'plant']);
    expect(layers.reduce((sum, { litres }) => sum + litres, 0)).toBeCloseTo(8, 9);
  });
  it('is gone from the standing pegs once it was tipped, with nothing open any more', () => {
    const plot = pail((rake, batch) => [rake.did('peg.tipped', '2026-06-04T10:00', { batch, to: 'heap' })]);
    expect(standingPegs(plot, '2026-06-03T10:00')).toHaveLength(1);
    expect(standingPegs(plot, '2026-06-04T12:00')).toHaveLength(0);
    expect(view(plot, '2026-06-04T12:00')).toMatchObject({ acts: [], hand: undefined, nextLookOn: undefined });
  });
});

describe('the mean temperature', () => {
  it('weighs each telling by the days it stood for, the first from the start', () => {
    // 10 °C for 4 days, then 20 °C for 6: (40 + 120) / 10
    const told = [
      { day: 1, temperatureC: 10 },
      { day: 4, temperatureC: 20 },
    ];
    expect(meanTemperatureC(told, 10)).toBeCloseTo(16, 9);
  });
  it('is the last telling on the first day, and no number where nothing was told', () => {
    expect(meanTemperatureC([{ day: 0, temperatureC: 12 }], 0)).toBe(12);
    expect(meanTemperatureC([], 3)).toBeNaN();
  });
});

describe('the workings of a sour line', () => {
  it('give the days of the alarm and the hold at its temperature', () => {
    const plot = pail((rake, batch) => [rake.did('peg.looked', '2026-06-03T10:30', { batch, acidity: meter(3.9) })]);
    const workings = explainPeg(view(plot, '2026-06-03T12:00'));
    const value = (figure: string) => workings.find((one) => one.figure === figure)?.value;
    // At 20 °C: pH 5.0 by day 3, 4.6 by day 5, held after 15 days.
    expect([value('alarm.5.0'), value('alarm.4.6'), value('hold.days')]).toEqual([3, 5, 15]);
    expect(value('temperature.meanC')).toBe(20);
  });
});
