import { describe, expect, it } from 'vitest';
import { kg, litres, recorder } from '../../test/scenarios/recorder.ts';
import type { Entry, Kept } from './entry.ts';
import { fold } from './fold.ts';
import { recordOf } from './record.ts';

const rake = recorder();
const fork = recorder({ by: 'Fork', device: 'phone-2', seed: 2 });
const lot = rake.did('scraps.weighed', '2026-06-01', { name: 'leaves', mass: kg(2) });
const weighedKg = (entries: readonly Kept[]) => fold(entries).lots.get(lot.id)?.weighedKg;
const told = (who: typeof rake, of: typeof lot, massKg: number) =>
  who.corrected(of, '2026-06-01', { name: 'leaves', mass: kg(massKg) });

describe('a correction', () => {
  const right = told(rake, lot, 2.4);
  it('counts in place of the original, which stays readable', () => {
    expect(weighedKg([lot, right])).toBe(2.4);
    expect(recordOf([right, lot], lot.plot).lines).toEqual([
      { id: lot.id, state: 'corrected', shown: right, versions: [lot, right] },
    ]);
  });
  it('of a correction counts in place of both', () => {
    const again = told(fork, right, 2.5);
    expect(weighedKg([again, right, lot])).toBe(2.5);
  });
  it('waits for its original and says so', () => {
    const plot = fold([right]);
    expect([plot.lots.size, plot.waiting]).toEqual([0, [{ id: right.id, why: 'original-not-here', of: lot.id }]]);
  });
  it('may move an act to another date', () => {
    const moved = rake.corrected(lot, '2026-05-20', { name: 'leaves', mass: kg(2) });
    expect(fold([lot, moved]).lots.get(lot.id)?.act.when.on).toBe('2026-05-20');
  });
  it('of another kind has no effect and is told', () => {
    const other = { ...rake.did('heap.looked', '2026-06-01', { heap: 'h', turned: true }), replaces: lot.id };
    expect(weighedKg([lot, other])).toBe(2);
    expect(fold([lot, other]).waiting).toEqual([{ id: other.id, why: 'other-kind', of: lot.id }]);
  });
  it('by a newer program is not guessed at: the original is shown and a question raised', () => {
    const line = JSON.stringify({ ...right, v: 9 });
    const { body: _, ...around } = right;
    const sealed: Kept = { ...around, v: 9, sealed: true, line };
    const plot = fold([lot, sealed]);
    expect(plot.lots.get(lot.id)?.weighedKg).toBe(2);
    expect(plot.questions).toMatchObject([{ kind: 'correction-not-readable', about: [lot.id, right.id].sort() }]);
    expect(plot.sealed).toEqual([sealed]);
  });
});

describe('a withdrawal', () => {
  const gone = rake.withdrew(lot);
  it('takes the act out of the plot and leaves it in the record', () => {
    expect(fold([lot, gone]).lots.size).toBe(0);
    expect(recordOf([lot, gone], lot.plot).lines).toEqual([
      { id: lot.id, state: 'withdrawn', shown: undefined, versions: [lot, gone] },
    ]);
  });
  it('can be withdrawn in turn by telling the act again', () => {
    expect(weighedKg([lot, gone, told(rake, gone as typeof lot, 3)])).toBe(3);
  });
  it('of a filling leaves the looks on it waiting', () => {
    const filled = rake.did('peg.filled', '2026-06-01', { peg: 1, water: [{ volume: litres(5) }] });
    const look = rake.did('peg.looked', '2026-06-02', { batch: filled.id, smell: 'sour' });
    const plot = fold([filled, look, rake.withdrew(filled)]);
    expect([plot.batches.size, plot.waiting]).toEqual([0, [{ id: look.id, why: 'batch-not-here', of: filled.id }]]);
  });
});

describe('two corrections of one entry', () => {
  const a = told(rake, lot, 2.4);
  const b = told(fork, lot, 2.6);
  const open = fold([lot, a, b]);
  const answer = (stands: readonly Entry[]): Entry =>
    fork.did('question.answered', '2026-06-02', {
      question: open.questions[0]?.key ?? '',
      stands: stands.map(({ id }) => id),
    });

  it('are both kept: the original is shown and a question raised', () => {
    expect(open.lots.get(lot.id)?.weighedKg).toBe(2);
    expect(open.questions).toMatchObject([{ kind: 'two-corrections', about: [lot.id, a.id, b.id].sort() }]);
    expect(recordOf([b, a, lot], lot.plot).lines[0]).toMatchObject({ state: 'in-question', versions: [lot, b, a] });
  });
  it('are settled by an answer, for either or for the original', () => {
    for (const [stands, massKg] of [
      [a, 2.4],
      [b, 2.6],
      [lot, 2],
    ] as const) {
      const plot = fold([answer([stands]), b, a, lot]);
      expect([plot.lots.get(lot.id)?.weighedKg, plot.questions]).toEqual([massKg, []]);
    }
  });
  it('become a new question when a third arrives: the old answer does not settle it', () => {
    const plot = fold([lot, a, b, answer([a]), told(rake, lot, 2.8)]);
    expect([plot.lots.get(lot.id)?.weighedKg, plot.questions.length]).toEqual([2, 1]);
  });
  it('that say the same are no question', () => {
    const same = told(fork, lot, 2.4);
    const plot = fold([lot, a, same]);
    expect([plot.lots.get(lot.id)?.weighedKg, plot.questions]).toEqual([2.4, []]);
  });
  it('of a correction show that correction', () => {
    const plot = fold([lot, a, told(rake, a, 3), told(fork, a, 4)]);
    expect([plot.lots.get(lot.id)?.weighedKg, plot.questions.length]).toEqual([2.4, 1]);
  });
});

describe('one peg number on two phones', () => {
  const fill = (who: typeof rake, on: string) =>
    who.did('peg.filled', on, { peg: 21, water: [{ volume: litres(5) }], parts: [{ name: 'leaves', mass: kg(1) }] });
  const a = fill(rake, '2026-06-01');
  const b = fill(fork, '2026-06-02');

  it('keeps both batches and raises a question', () => {
    const plot = fold([a, b]);
    expect([...plot.batches.values()].map(({ peg }) => peg)).toEqual([21, 21]);
    expect(plot.questions).toMatchObject([{ kind: 'same-peg', about: [a.id, b.id].sort(), values: { peg: 21 } }]);
  });
  it('is settled by correcting one number', () => {
    const renumbered = fork.corrected(b, '2026-06-02', { ...(b.body as object), peg: 22 } as never);
    const plot = fold([a, b, renumbered]);
    expect([plot.questions, plot.batches.get(b.id)?.peg]).toEqual([[], 22]);
  });
  it('is no question once the first batch was emptied before the second was filled', () => {
    const emptied = rake.did('peg.strained', '2026-06-02', { batch: a.id, drained: litres(5), rest: 'nothing' });
    const later = fill(fork, '2026-06-09');
    expect(fold([a, emptied, later]).questions).toEqual([]);
  });
});

describe('more out than in', () => {
  it('is kept as typed and told', () => {
    const filled = rake.did('peg.filled', '2026-06-01', { peg: 30, water: [{ volume: litres(5) }] });
    const spilled = rake.did('peg.spilled', '2026-06-02', { batch: filled.id, lost: kg(7) });
    const plot = fold([filled, spilled]);
    expect(plot.batches.get(filled.id)?.mass.leftKg).toBe(-2);
    expect(plot.batches.get(filled.id)?.presentL).toBe(0);
    expect(plot.questions).toMatchObject([{ kind: 'more-out-than-in', values: { peg: 30, overKg: 2 } }]);
  });
  it('of a lot of the stock is told', () => {
    const filled = rake.did('peg.filled', '2026-06-01', { peg: 31, parts: [{ lot: lot.id, mass: kg(2.5) }] });
    const plot = fold([lot, filled]);
    expect(plot.lots.get(lot.id)?.leftKg).toBe(-0.5);
    expect(plot.questions).toMatchObject([{ kind: 'more-out-than-in', about: [lot.id], values: { overKg: 0.5 } }]);
  });
});

describe('where a lot may go', () => {
  const clippings = (treated: 'no' | 'unknown' | 'yes', goes?: 'in' | 'set-aside' | 'out') =>
    rake.did('scraps.weighed', '2026-06-01', {
      material: 'grass-clippings-fresh',
      mass: kg(9),
      slip: { whose: 'neighbour', treated },
      ...(goes && { goes }),
    });
  const tested = (of: Entry, outcome: 'clear' | 'harmed' | 'unclear') =>
    rake.did('lot.tested', '2026-06-29', { lot: of.id, test: 'bean', outcome });
  const place = (one: Entry, ...more: Entry[]) => fold([one, ...more]).lots.get(one.id)?.goes;

  it('is set aside while nobody knows what it was treated with, until a test comes out clear', () => {
    const one = clippings('unknown', 'set-aside');
    expect(place(one)).toBe('set-aside');
    expect(place(one, tested(one, 'unclear'))).toBe('set-aside');
    expect(place(one, tested(one, 'clear'))).toBe('liquid');
  });
  it('is out once a test harmed the beans, whatever another test said, and after a treatment for good', () => {
    const one = clippings('unknown');
    expect(place(one, tested(one, 'clear'), tested(one, 'harmed'))).toBe('out');
    const treated = clippings('yes');
    expect(place(treated, tested(treated, 'clear'))).toBe('out');
  });
  it('is never softer than what was decided at the scale', () => {
    expect(place(clippings('no', 'out'))).toBe('out');
  });
  it('is set aside where the table does not know the material', () => {
    expect(
      place(
        rake.did('scraps.weighed', '2026-06-01', {
          material: 'moon-moss',
          mass: kg(1),
          slip: { whose: 'own', treated: 'no' },
          origin: 'garden',
          condition: 'fresh',
        }),
      ),
    ).toBe('set-aside');
  });
});
