// Filling from the demo garden's stock: what may be chosen, plan against scale, what stops it, the act.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { kinds } from '#journal/kinds/index.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { DEMO_PLOT, gardenEntries } from '../demo/garden.ts';
import { type FillAsk, fillAnswer, fillBody, fillOffers, firstLooks } from './fill.ts';

const WEIGHED = '2026-06-09T20:00';
const plot = fold(gardenEntries('2026-06-09'));
const offers = fillOffers({ plot, now: WEIGHED });
const pail = offers.vessels.find(({ volumeL }) => volumeL === 12);
const lotOf = (id: string) => offers.lots.find((lot) => lot.material === id)?.id;
const kg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });
const litres = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });

const peg14: FillAsk = {
  vessel: { id: pail?.id, volumeL: 12, gasRoomFraction: 0.25 },
  lid: 'loose',
  parts: [
    { lot: lotOf('grass-clippings-fresh'), actual: kg(2.1), plannedKg: 2 },
    { lot: lotOf('cabbage-leaves'), actual: kg(0.7) },
    { lot: lotOf('kitchen-trimmings'), actual: kg(0.4) },
  ],
  water: { actual: litres(5.2), alkalinityMeqPerL: 4.24 },
  sugar: { product: 'white-sugar', actual: kg(0.15) },
  starter: { from: offers.starters[0]?.id, volume: litres(0.2) },
};

function answered(ask: FillAsk) {
  const answer = fillAnswer(plot, ask);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
}

describe('what there is to fill with', () => {
  it('offers the own clippings and never the lots set aside, compost-only or out', () => {
    expect(offers.lots.map(({ material }) => material)).toEqual([
      'grass-clippings-fresh',
      'cabbage-leaves',
      'kitchen-trimmings',
      'coffee-grounds',
      'banana-skin',
    ]);
    const why = Object.fromEntries(offers.keptOut.map((lot) => [lot.leftKg, lot.why]));
    // neighbour's 9.0 kg, rhubarb leaf 1.2, blighted haulm 3.5, cooked rice 0.6
    expect(why).toEqual({ 9: 'set-aside', 1.2: 'compost-only', 3.5: 'out', 0.6: 'out' });
  });
  it('leaves 4.3 kg of the 6.4 kg of own clippings once peg 14 is filled', () => {
    const after = fillOffers({ plot: fold(gardenEntries('2026-06-10')), now: '2026-06-10T20:00' });
    expect(after.lots.find(({ material }) => material === 'grass-clippings-fresh')?.leftKg).toBeCloseTo(6.4 - 2.1, 9);
  });
  it('proposes the next free peg and says which vessel is taken', () => {
    const after = fillOffers({ plot: fold(gardenEntries('2026-06-12')), now: '2026-06-12T20:00' });
    // pegs 13 to 16 were given out
    expect(after.nextPeg).toBe(17);
    expect(after.pegsInUse).toEqual([14, 15]);
    expect(after.vessels.find(({ volumeL }) => volumeL === 12)?.peg).toBe(14);
    expect(fillOffers({ plot: fold([], 'new'), now: WEIGHED }).nextPeg).toBe(1);
  });
  it('offers starter from peg 13, which was ready, and none from peg 16, which was lost', () => {
    expect(offers.starters).toEqual([expect.objectContaining({ peg: 13, leftL: 0.3, in: 'bottle' })]);
  });
});

describe('peg 14 as it went in', () => {
  const { fit, stops, asPlanned } = answered(peg14);

  it('stands at 8.7 L, 73 % of the pail', () => {
    // 3.2 kg at 1.0 L/kg + 5.2 + 0.2 + 0.15 kg at 0.62 L/kg = 8.693 L; 8.693 / 12 = 72.4 %, demo page: 73 % full
    expect(fit.fill.volumeL.likely).toBeCloseTo(8.693, 3);
    expect(Math.abs((100 * fit.fill.volumeL.likely) / 12 - 73)).toBeLessThan(1);
    expect(fit.fill.usableL).toBeCloseTo(9, 9);
    expect(fit.fill.fits).toBe(true);
  });
  it('is drawn with its starter as a layer of its own', () => {
    const [water, starter] = fit.layers;
    expect([water?.litres, starter?.name, starter?.litres]).toEqual([expect.closeTo(5.2, 9), 'starter', 0.2]);
  });
  it('meets no stop, and nothing counts as planned', () => {
    expect([stops, asPlanned]).toEqual([[], 0]);
  });
  it('is kept as weighed with the plan beside it', () => {
    const body = fillBody(peg14, { peg: 14, place: 'shed window', temperatureC: 20 });
    expect(kinds['peg.filled'].newest.safeParse(body).success).toBe(true);
    expect(body.parts?.[0]).toMatchObject({ lot: lotOf('grass-clippings-fresh'), mass: kg(2.1) });
    const named = { ...peg14, parts: peg14.parts.map((part) => ({ ...part, name: 'own clippings' })) };
    expect(fillBody(named, { peg: 14 }).plan?.parts).toEqual([{ name: 'own clippings', massKg: 2 }]);
  });
});

describe('more in than planned', () => {
  it('is computed anew and told to be past the fill line, with the plan kept', () => {
    const more = { ...peg14, parts: peg14.parts.map((part) => ({ ...part, actual: kg(1.5) })) };
    const { fit } = answered(more);
    // 4.5 + 5.2 + 0.2 + 0.093 = 9.993 L against 9.0
    expect(fit.fill.overL).toBeCloseTo(0.993, 3);
    expect(fit.cautions.map(({ rule }) => rule)).toContain('past-the-fill-line');
  });
  it('counts what is not weighed yet as planned, and says how much that is', () => {
    const half = { ...peg14, parts: [{ material: 'cabbage-leaves', plannedKg: 2 }], water: { plannedL: 5 } };
    const { asPlanned, fit } = answered(half);
    expect(asPlanned).toBe(2);
    // 2 × 1.0 + 5 + 0.2 + 0.093
    expect(fit.fill.volumeL.likely).toBeCloseTo(7.293, 3);
    expect(fillBody(half, { peg: 17 }).parts).toBeUndefined();
  });
});

describe('what stops a filling', () => {
  it('a tight lid, with the push on it', () => {
    const { stops } = answered({ ...peg14, lid: 'tight' });
    expect(stops.map(({ rule }) => rule)).toEqual(['lid-tight-no-vent']);
    expect(stops[0]?.text).toMatch(/cannot be finished/);
    expect(stops[0]?.text).toMatch(/atm/);
  });
  it('clippings that were treated, whatever the list says', () => {
    const treated = { material: 'grass-clippings-fresh', treated: 'yes', actual: kg(2) } as const;
    const { stops } = answered({ ...peg14, parts: [treated] });
    expect(stops.map(({ rule }) => rule)).toContain('weedkiller-treated');
  });
});

describe('the first looks', () => {
  it('at 20 °C fall on the day of filling and on the days of the two lines, 3 and 5', () => {
    const looks = firstLooks('2026-06-10T09:30', 20);
    expect(looks.map(({ day }) => day)).toEqual([0, 2, 3, 5]);
    expect(looks.map(({ on }) => on)).toEqual(['2026-06-10', '2026-06-12', '2026-06-13', '2026-06-15']);
    expect(looks.map(({ belowPh }) => belowPh)).toEqual([undefined, undefined, 5, 4.6]);
  });
  it('where no warmth is known are daily, as for a warm one', () => {
    expect(firstLooks('2026-06-10', undefined).map(({ day }) => day)).toEqual([0, 1]);
  });
});

describe('a stop at filling', () => {
  const seeded: FillAsk = { ...peg14, parts: [...peg14.parts, { material: 'seeded-weeds', actual: kg(0.3) }] };
  const passed = { 'seeds-in-the-liquid': 'The bed it goes on is hoed anyway.' };
  it('keeps it from being pegged, unless a reason in words passes it and it is a matter of judgement', () => {
    expect(answered(seeded).stops.map(({ rule, override }) => [rule, override])).toEqual([
      ['seeds-in-the-liquid', 'reason'],
    ]);
    expect(answered({ ...seeded, passed: { 'seeds-in-the-liquid': 'yes' } }).stops).toHaveLength(1);
    const over = answered({ ...seeded, passed });
    expect(over.stops).toEqual([]);
    expect(over.overrode).toEqual([{ rule: 'seeds-in-the-liquid', reason: passed['seeds-in-the-liquid'] }]);
    const body = fillBody(seeded, { peg: 17, overrode: over.overrode });
    expect(kinds['peg.filled'].newest.safeParse(body).success).toBe(true);
    expect(body.overrode).toEqual(over.overrode);
  });
  it('stands whatever is said against it where people would be harmed', () => {
    const tight = answered({ ...peg14, lid: 'tight', passed: { 'lid-tight-no-vent': 'It held well the last time.' } });
    expect(tight.stops.map(({ rule }) => rule)).toEqual(['lid-tight-no-vent']);
    expect(tight.overrode).toEqual([]);
  });
});

describe('what stands around a filling', () => {
  const rules = (ask: FillAsk, on = plot) => {
    const answer = fillAnswer(on, ask);
    return answer.ok ? answer.value.cautions.map(({ rule }) => rule) : [];
  };
  it('asks for a cloth over an open pail, and not over one with a lid', () => {
    expect(rules({ ...peg14, lid: 'none' })).toContain('vessel-open-to-insects');
    expect(rules(peg14)).not.toContain('vessel-open-to-insects');
  });
  it('keeps hens off where kitchen scraps go in', () => {
    const hens = fold([
      ...gardenEntries('2026-06-09'),
      recorder({ by: 'Rake', plot: DEMO_PLOT, seed: 77 }).did('plot.described', '2026-06-09', { present: ['hens'] }),
    ]);
    expect(rules(peg14, hens)).toContain('fill-hens-about');
    const garden = { ...peg14, parts: peg14.parts.slice(0, 1) };
    expect(rules(garden, hens)).not.toContain('fill-hens-about');
  });
});
