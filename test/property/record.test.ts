// The record: the plot is the same however its entries arrive, mass balances whatever is done to a batch, a file comes
// back whole, and text stays text.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, isSealed } from '#journal/entry.ts';
import { importLines } from '#journal/file-reader.ts';
import { fold, folding, foldingInSteps, foldWhole, type Plot } from '#journal/fold.ts';
import { exportLines } from '#journal/lines.ts';
import { readLine } from '#journal/read.ts';
import { kg, litres, meter, recorder } from '../scenarios/recorder.ts';
import { histories } from './histories.ts';

const SEED = 20260603;

/** The order of everything that has one. */
function orders(plot: Plot): readonly (readonly string[])[] {
  return [plot.beds, plot.vessels, plot.lots, plot.batches, plot.bottles].map((things) => [...things.keys()]);
}

describe('the plot that a record folds to', () => {
  it('is the same in any order, with any entry twice, and in any splitting', () => {
    fc.assert(
      fc.property(histories, fc.infiniteStream(fc.nat()), (entries, chance) => {
        const once = fold(entries);
        const shuffled = entries
          .map((entry) => ({ entry, key: chance.next().value }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        expect(fold(shuffled)).toEqual(once);
        expect(fold([...shuffled, ...structuredClone(entries)])).toEqual(once);
        const cut = chance.next().value % (entries.length + 1);
        const twoFiles = [exportLines(shuffled.slice(cut)), exportLines(shuffled.slice(0, cut))].flatMap((file) => {
          const read = importLines(file, () => undefined);
          return read.ok ? read.fresh : [];
        });
        expect(fold(twoFiles, 'sedge-corner')).toEqual(once);
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
  });

  it('is the same when entries come in one by one or a few at a time, and what it was before stays as it was', () => {
    fc.assert(
      fc.property(histories, fc.infiniteStream(fc.nat()), (entries, chance) => {
        const take = () => chance.next().value;
        const order = entries
          .map((entry) => ({ entry, key: take() % 3 === 0 ? take() : 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        const further = folding();
        let before: { readonly plot: Plot; readonly as: Plot } | undefined;
        for (let count = 1; count <= order.length; count += 1 + (take() % 3)) {
          const sofar = order.slice(0, count);
          const plot = further(sofar, 'sedge-corner');
          const whole = fold(sofar, 'sedge-corner');
          expect(plot).toEqual(whole);
          expect(orders(plot)).toEqual(orders(whole));
          if (before !== undefined) expect(before.plot).toEqual(before.as);
          before = { plot, as: structuredClone(plot) };
        }
      }),
      { seed: SEED, numRuns: 100, endOnFailure: true },
    );
  });

  it('folds step by step to the same plot, also where it was left in the middle and begun anew', () => {
    fc.assert(
      fc.property(histories, fc.nat(30), fc.nat(30), (entries, left, few) => {
        const steps = foldingInSteps();
        const begun = steps(entries, 'sedge-corner');
        for (let step = 0; step < left; step++) begun.next();
        const sofar = steps(entries.slice(0, -few - 1), 'sedge-corner');
        for (let step = 0; step < left; step++) sofar.next();
        const plot = foldWhole(steps(entries, 'sedge-corner'));
        expect(plot).toEqual(fold(entries, 'sedge-corner'));
        expect(orders(plot)).toEqual(orders(fold(entries, 'sedge-corner')));
      }),
      { seed: SEED, numRuns: 100, endOnFailure: true },
    );
  });

  it('makes again only what an entry touches: a pour leaves the stock and the things as they were', () => {
    const me = recorder();
    const lot = me.did('scraps.weighed', '2026-06-01', { name: 'leaves', mass: kg(2) });
    const bed = me.did('bed.described', '2026-06-01', { name: 'Gate' });
    const entries = [lot, bed];
    const further = folding();
    const before = further(entries);
    const fed = me.did('bed.fed', '2026-06-02', { bed: bed.id, from: [], poured: litres(5), way: 'soil' });
    const after = further([...entries, fed]);
    expect(after.beds.get(bed.id)?.feeds).toHaveLength(1);
    expect(before.beds.get(bed.id)?.feeds).toHaveLength(0);
    expect([after.lots === before.lots, after.vessels === before.vessels]).toEqual([true, true]);
  });

  it('makes again only the batches that an entry touches: those it meets by a split or a joining, and no other', () => {
    const me = recorder();
    const fill = (peg: number) => me.did('peg.filled', '2026-06-01', { peg, parts: [{ name: 'leaves', mass: kg(2) }] });
    const [one, two, three] = [fill(1), fill(2), fill(3)];
    const split = me.did('peg.split', '2026-06-02', { batch: two.id, peg: 4, taken: kg(1) });
    const entries = [one, two, three, split];
    const further = folding();
    const before = further(entries);
    const look = me.did('peg.looked', '2026-06-03', { batch: split.id, acidity: meter(4.5) });
    const after = further([...entries, look]);
    const isKept = ({ id }: Entry) => before.batches.get(id) === after.batches.get(id);
    expect([one, two, three, split].map(isKept)).toEqual([true, true, true, false]);
    expect(after.batches.get(split.id)?.looks).toHaveLength(1);
    expect(before.batches.get(split.id)?.looks).toHaveLength(0);
  });

  it('draws histories that split, join, strain, dispute and wait', () => {
    const plots = fc
      .sample(histories, { seed: SEED, numRuns: 200, endOnFailure: true })
      .map((entries) => fold(entries));
    const some = (test: (plot: Plot) => boolean) => plots.filter(test).length;
    const batches = (plot: Plot) => [...plot.batches.values()];
    expect(some((plot) => batches(plot).some(({ splitFrom }) => splitFrom !== undefined))).toBeGreaterThan(10);
    expect(some((plot) => batches(plot).some(({ joinedFrom }) => joinedFrom.length > 0))).toBeGreaterThan(10);
    expect(some((plot) => batches(plot).some(({ strainings }) => strainings.length > 0))).toBeGreaterThan(10);
    expect(some((plot) => plot.waiting.length > 0)).toBeGreaterThan(10);
    for (const kind of ['twin-feeds', 'same-peg', 'two-corrections', 'more-out-than-in'])
      expect([kind, some((plot) => plot.questions.some((q) => q.kind === kind)) > 0]).toEqual([kind, true]);
  });

  it('keeps every batch in balance, and what one batch gives another receives', () => {
    fc.assert(
      fc.property(histories, (entries) => {
        // Answers set aside: one may have closed the question that tells of more out than in.
        const plot = fold(entries.filter(({ kind }) => kind !== 'question.answered'));
        const over = new Set(plot.questions.filter((q) => q.kind === 'more-out-than-in').flatMap((q) => q.about));
        let given = 0;
        let received = 0;
        for (const batch of plot.batches.values()) {
          const { mass } = batch;
          const into = mass.filledKg + mass.toppedUpKg + mass.joinedInKg;
          const out = mass.splitOffKg + mass.joinedAwayKg + mass.spilledKg + mass.strainedKg + mass.tippedKg;
          expect(into - out).toBeCloseTo(mass.leftKg, 9);
          given += mass.splitOffKg + mass.joinedAwayKg;
          received += mass.joinedInKg + (batch.splitFrom === undefined ? 0 : mass.filledKg);
          for (const { drainedL, solidsKg, unexplainedKg } of batch.strainings)
            expect(drainedL > 0 && solidsKg >= 0 && !Number.isNaN(unexplainedKg ?? 0)).toBe(true);
          if (!over.has(batch.id)) expect(mass.leftKg).toBeGreaterThan(-0.0011);
        }
        if (over.size === 0) expect(received).toBeCloseTo(given, 6);
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
  });
});

describe('a file of the record', () => {
  it('comes back whole and says nothing new the second time', () => {
    fc.assert(
      fc.property(histories, (entries) => {
        const file = exportLines(entries);
        const read = importLines(file, () => undefined);
        if (!read.ok) throw new Error(JSON.stringify(read.refused));
        expect(exportLines(read.fresh)).toBe(file);
        const here = new Map(read.fresh.map((kept) => [kept.id, kept]));
        const again = importLines(file, (id) => here.get(id));
        expect(again).toMatchObject({ ok: true, fresh: [], alreadyCount: here.size });
      }),
      { seed: SEED, numRuns: 60, endOnFailure: true },
    );
  });

  it('is refused whole for one bad line, and names that line', () => {
    fc.assert(
      fc.property(histories, fc.nat(), fc.constantFrom('{', 'null', '[]', '{"id":1}', '"text"'), (entries, at, bad) => {
        const lines = exportLines(entries).trimEnd().split('\n');
        const place = 1 + (at % lines.length);
        const read = importLines([...lines.slice(0, place), bad, ...lines.slice(place)].join('\n'), () => undefined);
        expect(read.ok ? [] : read.refused.map(({ line }) => line)).toEqual([place + 1]);
      }),
      { seed: SEED, numRuns: 100, endOnFailure: true },
    );
  });

  it('keeps hostile text as text, and sealed lines to the letter', () => {
    const text = fc.string({ unit: 'binary', minLength: 1, maxLength: 40 });
    const tags = fc.constantFrom(
      '<script>alert(1)</script>',
      '=1+1',
      '\u202e',
      '\u0000',
      '\n{"id":1}\n',
      '__proto__',
      "'--",
    );
    fc.assert(
      fc.property(fc.oneof(text, tags), fc.json(), (hostile, body) => {
        const lot = recorder({ by: hostile.slice(0, 40) }).did('scraps.weighed', '2026-06-01', {
          name: hostile,
          note: hostile,
          mass: { typed: hostile, massKg: 1 },
        });
        const line = JSON.stringify({ ...lot, id: `${lot.id.slice(0, -1)}f`, kind: 'moon.watched' }).replace(
          JSON.stringify(lot.body),
          () => body,
        );
        const sealed = readLine(line);
        if (sealed.state !== 'sealed') throw new Error(sealed.state);
        const read = importLines(exportLines([lot, sealed.entry]), () => undefined);
        if (!read.ok) throw new Error(JSON.stringify(read.refused));
        expect(read.fresh.find((kept) => !isSealed(kept))).toEqual(lot);
        expect(read.fresh.find(isSealed)?.line).toBe(line);
      }),
      { seed: SEED, numRuns: 150, endOnFailure: true },
    );
  });
});
