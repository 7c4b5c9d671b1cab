// The figures shown with a straining, a bottling and a pour: kept as told, an older entry reads as before, and an older
// program keeps the newer entry to the letter and refuses no file because of it.

import { describe, expect, it } from 'vitest';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { isSealed } from '../entry.ts';
import { importLines } from '../file-reader.ts';
import { fold } from '../fold.ts';
import { exportLines } from '../lines.ts';
import { readEntry, readLine } from '../read.ts';
import { newestBody } from '../upgrade.ts';
import { bedFedV1 } from './beds.ts';
import { bottleFilledV1 } from './bottles.ts';
import { type Body, type KindTable, kinds } from './index.ts';
import { pegStrainedV1 } from './pegs.ts';

const me = recorder();
const litres = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });
const bed = me.did('bed.described', '2026-06-01', { name: 'Long', eaten: 'cooked' });
const filled = me.did('peg.filled', '2026-06-01', {
  peg: 14,
  parts: [{ material: 'nettle-tops', mass: { typed: '2 kg', massKg: 2 } }],
  water: [{ volume: litres(8) }],
});
const figuresShown: NonNullable<Body<'peg.strained'>['figuresShown']> = {
  tables: { number: 3, on: '2026-11-30', digest: '1a2b3c4d' },
  model: 2,
  entered: '0011223344556677',
  figures: [{ what: 'nGPerL', low: 0.8, likely: 1, high: 1.2 }],
};
const strained = me.did('peg.strained', '2026-06-11', {
  batch: filled.id,
  drained: litres(6),
  rest: 'nothing',
  figuresShown,
});
const bottle = me.did('bottle.filled', '2026-06-11', {
  batch: filled.id,
  filled: litres(6),
  cap: 'vent',
  material: 'plastic',
  figuresShown,
});
const pour = me.did('bed.fed', '2026-06-12', {
  bed: bed.id,
  from: [{ bottle: bottle.id, volume: litres(0.25) }],
  poured: litres(10),
  way: 'soil',
  figuresShown: { ...figuresShown, figures: [{ what: 'nG', low: 0.2, likely: 0.25, high: 0.3 }] },
});
const acts = [strained, bottle, pour];

/** The kinds as the program had them before figures were kept. */
const before: KindTable = {
  ...kinds,
  'peg.strained': { newest: pegStrainedV1, v: 1 },
  'bottle.filled': { newest: bottleFilledV1, v: 1 },
  'bed.fed': { newest: bedFedV1, v: 1 },
};

describe('figures shown with an act', () => {
  it.each(acts)('come back from a file as they were written: $kind', (entry) => {
    const read = importLines(exportLines([entry]), () => undefined);
    expect(read.ok && read.fresh).toEqual([entry]);
  });

  it.each(acts)('are kept to the letter by a program that does not know them, and refuse nothing: $kind', (entry) => {
    const read = readLine(JSON.stringify(entry), before);
    if (read.state !== 'sealed') throw new Error(read.state);
    expect(read.entry.line).toBe(JSON.stringify(entry));
  });

  it.each(acts)('are not in an entry of version 1, which says the same as before: $kind', (entry) => {
    const { figuresShown: _, ...body } = entry.body as Readonly<Record<string, unknown>>;
    const read = readEntry({ ...entry, v: 1, body });
    if (read.state !== 'known' || isSealed(read.entry)) throw new Error(read.state);
    expect(newestBody(read.entry)).toEqual(body);
    expect(readEntry({ ...entry, v: 1 }).state).toBe('damaged');
  });

  it('change nothing that is computed: the plot is the same without them', () => {
    const plain = acts.map((entry) => {
      const { figuresShown: _, ...body } = entry.body as Readonly<Record<string, unknown>>;
      return { ...entry, body };
    });
    const sums = (entries: typeof acts) => {
      const plot = fold([bed, filled, ...entries]);
      const batch = plot.batches.get(filled.id);
      return [batch?.liquid, batch?.mass, plot.bottles.get(bottle.id)?.leftL, plot.questions];
    };
    expect(sums(acts)).toEqual(sums(plain));
  });

  it.each([
    { ...figuresShown, figures: [] },
    { ...figuresShown, model: 0 },
    { ...figuresShown, figures: [{ what: 'joy', low: 0, likely: 1, high: 2 }] },
    { ...figuresShown, figures: [{ what: 'nGPerL', low: 0, likely: Number.NaN, high: 2 }] },
    { ...figuresShown, tables: { ...figuresShown.tables, on: '30 November' } },
  ])('are refused out of their bounds: %j', (odd) => {
    const body = { ...(strained.body as object), figuresShown: odd };
    expect(readEntry({ ...strained, body }).state).toBe('damaged');
  });
});
