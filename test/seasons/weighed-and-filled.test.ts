// From the weigh-in over the filling sheet to the peg: weights, layers and assumptions are the same on each.

import { describe, expect, it } from 'vitest';
import { fit } from '#tasks/fit.ts';
import { fillAnswer } from '#tasks/plot/fill.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { straining } from '#tasks/plot/straining.ts';
import { asPlanned, filled, PLANTS_KG, pail, WATER_L, weighIn } from './pail.ts';

const field = (text: string) => ({ text, settled: text });

describe('a weight nobody weighed', () => {
  const made = pail();
  const draft = weighIn(made);
  const inBowl = draft.lots.map((lot) => ({ ...lot, bowl: field('0.5 kg'), weight: field('2.6 kg') }));
  const withBowl = asPlanned(made, { ...draft, lots: inBowl });
  const emptyRows = draft.lots.map((lot) => ({ ...lot, key: 9, weight: field('') }));
  const underEmpty = asPlanned(made, { ...draft, lots: [...emptyRows, ...draft.lots] });

  const gallons = { ...draft.water, volume: field('1 gal') };
  const imperial = asPlanned(made, { ...draft, gallon: 'imperial', water: gallons }, { gallon: 'us' });

  it('is not met without a bowl and without an empty row', () => {
    expect(asPlanned(made, draft).ask?.parts[0]?.actual?.massKg).toBe(PLANTS_KG);
  });
  it('plans what is in the bowl, and the gallon that was meant', () => {
    expect(withBowl.ask?.parts[0]?.plannedKg).toBeCloseTo(PLANTS_KG, 9);
    expect(imperial.ask?.water.plannedL).toBeCloseTo(4.546_09, 9);
  });
  it('with a bowl on the scale, "All went in as planned" puts in what is in the bowl', () => {
    expect(withBowl.ask?.parts[0]?.actual?.massKg).toBeCloseTo(PLANTS_KG, 9);
  });
  it('under an empty row of the same kind a lot keeps its own weight', () => {
    expect(underEmpty.ask?.parts[0]?.actual?.massKg).toBe(PLANTS_KG);
  });
  it('a gallon answered at the weigh-in is the gallon that goes in as planned', () => {
    expect(imperial.ask?.water.actual?.volumeL).toBeCloseTo(4.546_09, 9);
  });
});

describe('one pail on two sheets', () => {
  const made = pail();
  const { ask } = asPlanned(made, weighIn(made));
  const answer = ask && fillAnswer(made.grower.plot, ask);
  if (!answer?.ok) throw new Error('the pail was not answered');
  const { grower, batch } = filled();
  const onPeg = pegView({ plot: grower.plot, batch, now: grower.now }).layers.map(({ kind }) => kind);
  const onFilling = answer.value.fit.layers.map(({ kind }) => kind);

  it('has the same three things in it', () => {
    expect(onPeg.toSorted()).toEqual(onFilling.toSorted());
    expect(onPeg).toHaveLength(3);
  });
  it('is drawn by the filling sheet and the peg in one order from the floor up', () => {
    expect(onPeg).toEqual(onFilling);
  });
});

describe('what nobody told', () => {
  const made = pail();
  const { ask } = asPlanned(made, weighIn(made));
  const filling = ask && fillAnswer(made.grower.plot, ask);
  const weighed = fit({
    vessel: { volumeL: 12, gasRoom: 0.25, lid: 'loose' },
    plants: [{ material: 'grass-clippings-fresh', massKg: PLANTS_KG, treated: 'no' }],
    water: { volumeL: WATER_L },
    sugar: { product: 'white-sugar', massKg: 0.15 },
  });
  if (!filling?.ok || !weighed.ok) throw new Error('the pail was not answered');
  const fields = (assumed: readonly { readonly field: string }[]) => assumed.map((one) => one.field);

  it('are listed at the weigh-in', () => {
    expect(fields(weighed.value.assumed)).toContain('alkalinityMeqPerL');
  });
  it('is listed on the filling sheet as at the weigh-in', () => {
    expect(fields(filling.value.fit.assumed)).toEqual(fields(weighed.value.assumed));
  });
  it('is listed of a vessel too, on both sheets', () => {
    const bare = ask && fillAnswer(made.grower.plot, { ...ask, vessel: { ...ask.vessel, gasRoomFraction: undefined } });
    if (!bare?.ok) throw new Error('the pail was not answered');
    expect(fields(bare.value.fit.assumed)).toContain('gasRoom');
    expect(bare.value.fit.fill.usableL).toBe(filling.value.fit.fill.usableL);
  });
  it('is listed of a batch at its straining', () => {
    const { grower, batch } = filled();
    const answer = straining({
      plot: grower.plot,
      batch,
      now: grower.now,
      drainedL: 5,
      acidity: { ph: 3.8, by: 'meter' },
    });
    if (!answer.ok) throw new Error('no straining');
    expect(fields(answer.value.assumed)).toEqual(['alkalinityMeqPerL', 'ph']);
  });
});
