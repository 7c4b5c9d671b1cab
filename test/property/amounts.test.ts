// An amount keeps what it was typed with, and is read again with that and nothing else: whatever a grower types, in any unit,
// style or country, raises no question on any device, and a figure or text that was tampered with always does.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptArea, keptMass, keptVolume } from '#engine/quantity/kept.ts';
import { NUMBER_STYLES } from '#engine/quantity/number.ts';
import { BELIEVED, parseAmount, type Wanted } from '#engine/quantity/parse.ts';
import { range } from '#engine/quantity/range.ts';
import { GALLON_COUNTRIES, SPOON_COUNTRIES, UNITS, type UnitId } from '#engine/quantity/units.ts';
import type { Entry } from '#journal/entry.ts';
import { importLines } from '#journal/file-reader.ts';
import { fold } from '#journal/fold.ts';
import { exportLines } from '#journal/lines.ts';
import { recorder } from '../scenarios/recorder.ts';

const run = { seed: 20261130, numRuns: 1500 };
console.info(`property/amounts: fast-check seed ${run.seed}`);

/** Units as they are written: with a country, or without one where the country is a setting. */
const BARE_NAMES = ['gal', 'qt', 'pt', 'fl oz', 'cups', 'tbsp', 'tsp'];
const unit = fc.oneof(
  fc.constantFrom(
    ...(Object.keys(UNITS) as UnitId[]).map((id) => ({ name: UNITS[id].symbol, what: UNITS[id].dimension })),
  ),
  fc.constantFrom(...BARE_NAMES.map((name) => ({ name, what: 'volume' as const }))),
);
/** Figures in every writing: grouped or not, with either mark, so many decimals, or a fraction. */
const figure = fc.oneof(
  fc
    .tuple(fc.integer({ min: 0, max: 1999 }), fc.constantFrom('.', ','), fc.integer({ min: 0, max: 9999 }))
    .map((p) => p.join('')),
  fc.integer({ min: 1, max: 1999 }).map(String),
  fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 100, max: 999 }), fc.constantFrom(' ', ',', '.', '\u202f'))
    .map(([a, b, mark]) => `${a}${mark}${b}`),
  fc.constantFrom('½', '1½', '1 1/2', '3/4'),
);
const settled = fc.record({
  style: fc.option(fc.constantFrom(...NUMBER_STYLES), { nil: undefined }),
  gallon: fc.option(fc.constantFrom(...GALLON_COUNTRIES), { nil: undefined }),
  spoon: fc.option(fc.constantFrom(...SPOON_COUNTRIES), { nil: undefined }),
});
const shown = fc.option(fc.constant('L' as const), { nil: undefined });
const bulk = fc.option(fc.constantFrom(range(0.7, 0.85, 0.95), range(1, 1.4, 1.5)), { nil: undefined });

type Draw = readonly [
  string,
  { name: string; what: 'mass' | 'volume' | 'area' },
  object,
  'L' | undefined,
  ReturnType<typeof range> | undefined,
];
const typed = fc.tuple(figure, unit, settled, shown, bulk);

/** The entry that a form makes of it; undefined where the reader refuses the text or asks about it. */
function entryOf([text, { name, what }, countries, unitShown, bulkKgPerL]: Draw): Entry | undefined {
  const { did } = recorder();
  const bare = unitShown !== undefined && what === 'volume';
  const wanted: Wanted = {
    dimension: what === 'volume' && bulkKgPerL !== undefined ? 'mass' : what,
    bareUnit: bare ? unitShown : undefined,
    bulkKgPerL,
    ...countries,
  };
  const read = parseAmount(bare && wanted.dimension === 'volume' ? text : `${text} ${name}`, wanted);
  if (!read.ok || read.value > BELIEVED[wanted.dimension].most) return undefined;
  if (wanted.dimension === 'area') return did('bed.described', '2026-05-01', { name: 'Long', area: keptArea(read) });
  if (wanted.dimension === 'volume')
    return did('can.described', '2026-05-01', { name: 'can', volume: keptVolume(read) });
  return did('scraps.weighed', '2026-05-01', { name: 'leaves', mass: keptMass(read) });
}

/** What another device asks about it once it has come over in a file. */
function asked(entry: Entry): readonly string[] {
  const read = importLines(exportLines([entry]), () => undefined);
  if (!read.ok) throw new Error(JSON.stringify(read.refused));
  return fold(read.fresh).questions.map(({ kind }) => kind);
}

/** The entry with another figure or another text in its amount. */
function tampered(entry: Entry, key: string, change: (before: unknown) => unknown): Entry {
  const text = JSON.stringify(entry.body, (name, value) => (name === key ? change(value) : value));
  return { ...entry, body: JSON.parse(text) };
}

describe('an amount that was typed', () => {
  it('raises no question on another device, whatever was typed, shown and settled', () => {
    let count = 0;
    fc.assert(
      fc.property(typed, (draw) => {
        const entry = entryOf(draw as Draw);
        if (entry === undefined) return;
        count++;
        expect(asked(entry)).toEqual([]);
      }),
      run,
    );
    expect(count).toBeGreaterThan(400);
  });

  it('raises one where its figure or its text was changed', () => {
    let count = 0;
    fc.assert(
      fc.property(typed, fc.double({ min: 0.5, max: 0.999, noNaN: true }), (draw, factor) => {
        const entry = entryOf(draw as Draw);
        if (entry === undefined) return;
        count++;
        for (const key of ['massKg', 'volumeL', 'areaM2']) {
          if (!JSON.stringify(entry.body).includes(`"${key}"`)) continue;
          expect(asked(tampered(entry, key, (value) => Number(value) * factor))).toEqual(['amount-differs']);
        }
        expect(asked(tampered(entry, 'typed', () => '7.77 furlongs'))).toEqual(['amount-differs']);
      }),
      { ...run, numRuns: 500 },
    );
    expect(count).toBeGreaterThan(100);
  });
});
