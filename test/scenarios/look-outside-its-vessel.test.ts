// Another phone tells of a check dated before the filling or after the emptying of its vessel. Nothing is refused: it is
// written down, counts against the batch alone, and is asked about.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { openQuestions } from '#tasks/plot/questions.ts';
import { orders } from './held-bottle.ts';
import { litres, meter, recorder } from './recorder.ts';

const can = recorder({ by: 'Can', device: 'phone-can', seed: 3 });
const rake = recorder({ by: 'Rake', device: 'phone-rake', seed: 5 });
const filled = can.did('peg.filled', '2026-06-10T18:00', {
  peg: 14,
  water: [{ volume: litres(6), source: 'tap' }],
  temperatureC: 20,
});
const own = can.did('peg.looked', '2026-06-14T18:00', { batch: filled.id, acidity: meter(3.9), smell: 'sour' });
const strained = can.did('peg.strained', '2026-06-15T18:00', { batch: filled.id, drained: litres(5), rest: 'nothing' });
const ground = [filled, own, strained];
const look = (on: string, ph: number, more: object = {}) =>
  rake.did('peg.looked', on, { batch: filled.id, acidity: meter(ph), smell: 'sour', temperatureC: 35, ...more });

function seen(entries: readonly Entry[], now = '2026-07-20T09:00') {
  const plot = fold(entries);
  const batch = plot.batches.get(filled.id);
  if (batch === undefined) throw new Error('no batch');
  const view = pegView({ plot, batch, now });
  return { plot, view, word: { state: view.state, held: view.held } };
}

describe.each([
  ['after-it-was-emptied', look('2026-06-18T18:00', 3.8), 'after-emptying'],
  ['before-it-was-made', look('2026-06-08T18:00', 3.8), 'before-filling'],
  ['before-it-was-made', look('2026-06-10T17:00', 3.8), 'before-filling'],
] as const)('%s', (kind, good, why) => {
  it('makes no batch ready or sour long enough by a good reading', () => {
    expect(seen(ground).word).toEqual({ state: 'souring', held: false });
    for (const order of orders([...ground, good])) {
      const { view, word } = seen(order);
      expect(word).toEqual({ state: 'souring', held: false });
      expect(view.temperature?.meanC).toBe(20);
    }
  });
  it('counts a bad one at once', () => {
    const bad = look(good.on, 3.8, { surface: 'coloured-fuzz' });
    for (const order of orders([...ground, bad])) expect(seen(order).word.state).toBe('lost');
  });
  it('stays to be seen, and is asked about until a person says that it stands', () => {
    const { plot, view } = seen([...ground, good]);
    expect(view.looks.find(({ id }) => id === good.id)?.against).toMatchObject({ why });
    expect(plot.questions).toMatchObject([{ kind, about: [filled.id, good.id].sort() }]);
    const [question] = openQuestions(plot, [...ground, good], { now: '2026-07-20T09:00', device: 'phone-can' });
    const stands = question?.offers[0]?.stands ?? [];
    const answer = can.did('question.answered', '2026-07-20', { question: question?.key ?? '', stands: [...stands] });
    const after = seen([...ground, good, answer]);
    expect(after.plot.questions).toEqual([]);
    expect(after.word).toEqual({ state: 'souring', held: false });
  });
});

describe('bottles, pours and vents after the emptying', () => {
  it('are asked about by nobody', () => {
    const bed = can.did('bed.described', '2026-05-01', { name: 'Gate' });
    const bottle = rake.did('bottle.filled', '2026-06-18', {
      batch: filled.id,
      filled: litres(1),
      cap: 'vent',
      material: 'plastic',
    });
    const vented = rake.did('bottle.vented', '2026-06-20', { bottle: bottle.id });
    const fed = rake.did('bed.fed', '2026-06-21', {
      bed: bed.id,
      from: [{ bottle: bottle.id, volume: litres(0.2) }],
      poured: litres(8),
      way: 'soil',
    });
    expect(fold([bed, ...ground, bottle, vented, fed]).questions).toEqual([]);
  });
});
