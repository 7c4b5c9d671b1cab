// The past stays as it was shown: what a straining, a bottling and a pour showed is kept beside them; when a table moves
// a figure, one sentence says so, both figures are readable, and no entry has changed.

import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { PEG, type Program, program, season } from './past-as-it-was-shown.ts';

type Flat = readonly number[];
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const LATER = { number: 2, on: '2026-12-03', digest: '0badcafe' };
/** By how much the later tables let less nitrogen out of the plants. */
const LESS = 0.96;

let first: Program;
let told: ReturnType<typeof season>;

beforeAll(async () => {
  first = await program();
  told = season(first);
});
afterAll(() => {
  vi.doUnmock('#engine/tables/generated.ts');
  vi.doUnmock('#engine/tables/made-version.ts');
  vi.resetModules();
});

/** The program with nitrogen's release changed by a factor, and with another version of tables or formulas. */
async function programWith(factor: number, made: { tables?: typeof LATER; model?: number }): Promise<Program> {
  vi.resetModules();
  const was = await vi.importActual<typeof import('#engine/tables/generated.ts')>('#engine/tables/generated.ts');
  const version = await vi.importActual<typeof import('#engine/tables/made-version.ts')>(
    '#engine/tables/made-version.ts',
  );
  const finf = was.quantities.indexOf('finf');
  const changed = (flat: Flat): Flat =>
    flat.map((figure, i) => (flat[i - (i % 5)] === finf && i % 5 >= 1 && i % 5 <= 3 ? figure * factor : figure));
  const extraction = (was.others.extraction ?? []).map(
    ([id, flat]) => [id, id === 'n' ? changed(flat) : flat] as const,
  );
  vi.doMock('#engine/tables/generated.ts', () => ({ ...was, others: { ...was.others, extraction } }));
  vi.doMock('#engine/tables/made-version.ts', () => ({ ...version, ...made }));
  return program();
}

const figuresShown = ({ body }: Entry) =>
  (body as { figuresShown?: { figures: readonly { what: string }[] } }).figuresShown;

describe('what was shown', () => {
  it('is kept with all three acts: the figures of the sheet, with range, tables and formulas', () => {
    const { nGPerL } = told.answer.strain.liquid;
    expect(figuresShown(told.strained)).toMatchObject({ tables: { digest: expect.stringMatching(/^[0-9a-f]{8}$/) } });
    expect(figuresShown(told.strained)?.figures).toContainEqual({ what: 'nGPerL', ...nGPerL });
    expect(figuresShown(told.bottled)?.figures.map(({ what }) => what)).toEqual([
      'nGPerL',
      'pGPerL',
      'kGPerL',
      'useFirstDays',
    ]);
    expect(figuresShown(told.pours[0] as Entry)?.figures.map(({ what }) => what)).toEqual(['nG', 'pG', 'kG']);
  });

  it('is what the same functions give once the acts are written, from the same that was entered', () => {
    const plot = first.fold(told.entries);
    for (const entry of [told.strained, told.bottled, ...told.pours]) {
      const kept = first.shownWith(plot, { id: entry.id, shown: entry, first: entry });
      if (kept === undefined || typeof kept === 'string') throw new Error(String(kept));
      expect([kept.isOlder, kept.enteredAnew]).toEqual([false, false]);
      for (const { before, now } of kept.figures) {
        for (const end of ['low', 'likely', 'high'] as const) expect(now?.[end]).toBeCloseTo(before[end], 9);
      }
    }
  });

  it('is not said to have moved by the same tables, whatever was corrected', () => {
    const { me, filled, entries } = told;
    const anew = me.corrected(filled, '2026-06-10T09:30', {
      ...(filled.body as object),
      peg: PEG,
      water: [{ volume: { typed: '12 L', volumeL: 12 } }],
    });
    expect(first.movedBy(first.fold([...entries, anew]))).toEqual([]);
  });
});

describe('with one figure of the tables moved', () => {
  let later: Program;
  beforeAll(async () => {
    later = await programWith(LESS, { tables: LATER });
  });

  it('the record says so in one sentence for the liquid and one for the beds, and the dates to keep are as before', () => {
    const said = later.movedBy(later.fold(told.entries)).map(({ sentence }) => plain(sentence));
    expect(said).toEqual([
      'With the tables of 3 Dec 2026 the liquid of peg 14 holds 4 % less nitrogen than was shown before.',
      'With the tables of 3 Dec 2026 the pours on Gate gave 4 % less nitrogen than was shown before.',
    ]);
  });

  it('both figures are readable, at the act, the batch and the bed', () => {
    const plot = later.fold(told.entries);
    const { nGPerL } = told.answer.strain.liquid;
    const [ofBatch] = later.movedBy(plot, { batch: told.filled.id });
    expect(ofBatch?.figures.map(({ what }) => what)).toEqual(['nGPerL']);
    expect(ofBatch?.figures[0]?.before).toEqual(nGPerL);
    expect((ofBatch?.figures[0]?.now?.likely ?? 0) / (nGPerL?.likely ?? 1)).toBeCloseTo(LESS, 9);
    const ofBed = later.movedBy(plot, { bed: told.bed.id });
    expect(ofBed).toHaveLength(1);
    const kept = later.shownWith(plot, { id: told.strained.id, shown: told.strained, first: told.strained });
    expect(kept).toMatchObject({ isOlder: true, enteredAnew: false });
  });

  it('no entry has changed, and the remark is no part of any sum', () => {
    const found = later
      .recordIndex({ plot: later.fold(told.entries), entries: told.entries, plotId: 'sedge-corner' })
      .search({}, 100);
    expect(found.acts.map(({ shown }) => shown?.id).sort()).toEqual(told.entries.map(({ id }) => id).sort());
    const bare = told.entries.map((entry) => {
      const { figuresShown: _, ...body } = entry.body as Readonly<Record<string, unknown>>;
      return { ...entry, body };
    });
    const sums = (entries: readonly Entry[]) => {
      const plot = later.fold(entries);
      return told.pours.map(({ body }) => later.pourNow(plot, (body as { from: [] }).from));
    };
    expect(sums(told.entries)).toEqual(sums(bare));
    expect(later.movedBy(later.fold(bare))).toEqual([]);
  });

  it('a correction since then is named as part of the reason, never hidden behind the tables', () => {
    const { me, filled, entries } = told;
    const anew = me.corrected(filled, '2026-06-10T09:30', {
      ...(filled.body as object),
      peg: PEG,
      parts: [{ material: 'nettle', mass: { typed: '1 kg', massKg: 1 } }],
    });
    const said = later.movedBy(later.fold([...entries, anew]));
    expect(said.length).toBeGreaterThan(1);
    for (const { sentence } of said)
      expect(sentence).toContain('What you entered since then can be part of the reason.');
  });

  it('an entry of before says that the figure was not kept, and a pour of plain water that none was shown', () => {
    const { figuresShown: _, ...body } = told.strained.body as Readonly<Record<string, unknown>>;
    const old: Entry = { ...told.strained, v: 1, body };
    const plot = later.fold([...told.entries.filter(({ id }) => id !== old.id), old]);
    expect(later.shownWith(plot, { id: old.id, shown: old, first: old })).toBe('not-kept');
    const water = told.me.did('bed.fed', '2026-07-06', {
      bed: told.bed.id,
      from: [],
      poured: { typed: '5 L', volumeL: 5 },
      way: 'soil',
    });
    expect(later.shownWith(plot, { id: water.id, shown: water, first: water })).toBe('none');
    expect(later.shownWith(plot, { id: told.filled.id, shown: told.filled, first: told.filled })).toBeUndefined();
  });
});

it('a changed formula counts like a changed table', async () => {
  const later = await programWith(1.1, { model: 7 });
  const [moved] = later.movedBy(later.fold(told.entries));
  expect(plain(moved?.sentence ?? '')).toBe(
    'With the formulas of model 7 the liquid of peg 14 holds 10 % more nitrogen than was shown before.',
  );
});

it('a new version that moves nothing says nothing', async () => {
  const later = await programWith(1, { tables: LATER });
  expect(later.movedBy(later.fold(told.entries))).toEqual([]);
});
