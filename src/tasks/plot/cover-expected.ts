// What is still to come this season: clippings of mowings ahead, a green manure to be cut, compost that is not ripe yet.
// As typed on the sheet of the cover, and as sources of it beside what lies there already.

import type { CoverSource } from '#engine/ground/cover/input.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import { material } from '#engine/tables/index.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { dressingSupply } from '../ledger-supply.ts';
import { readBulk } from './bulk-amount.ts';
import { bulkOf, COFFEE, layerOf, MULCHES, perKgOf, unitOf } from './cover-sources.ts';
import type { FieldTrouble, Troubles } from './form.ts';

/** Crops grown to be cut and laid or dug in where they stand: their nitrogen comes out of the air. */
const LEGUMES: readonly string[] = ['legume-tops'];
const COMPOST = 'finished-compost';

/** What may be told as still to come. */
export const EXPECTED: readonly string[] = [...MULCHES, ...LEGUMES, COFFEE, COMPOST];

/** One line as typed; '' where nothing was chosen. */
export interface ExpectedTyped {
  readonly material: string;
  readonly amount: string;
}

export interface ExpectedStuff {
  readonly id: string;
  readonly material: string;
  readonly massKg: number;
}

export const EMPTY_EXPECTED: ExpectedTyped = { material: '', amount: '' };

/** Reads every line; one left wholly empty is no line, one with a trouble is told and not counted. */
export function readExpected(
  rows: readonly ExpectedTyped[],
  countries: Countries = {},
): { readonly stuff: readonly ExpectedStuff[]; readonly troubles: Troubles } {
  const troubles = new Map<string, FieldTrouble>();
  const stuff = rows.flatMap(({ material: id, amount }, i): readonly ExpectedStuff[] => {
    const text = amount.trim();
    if (id === '' && text === '') return [];
    if (!EXPECTED.includes(id)) {
      troubles.set(`${i}.material`, { sentence: words.noMaterial });
      return [];
    }
    const read = readBulk(text, { countries });
    if ('trouble' in read) {
      troubles.set(`${i}.amount`, read.trouble);
      return [];
    }
    const massKg = 'massKg' in read.value ? read.value.massKg : (read.value.volumeL * bulkOf(id)) / 1000;
    return [{ id: `expected-${i}`, material: id, massKg }];
  });
  return { stuff, troubles };
}

/**
 * Expected stuff as a source; compost nobody can answer for keeps off what is eaten raw.
 * @param rawBeds ids of the beds whose crop is eaten raw
 */
export function expectedSource({ id, material: of, massKg }: ExpectedStuff, rawBeds: readonly string[]): CoverSource {
  const name = words.expectedName(material(of)?.name ?? of);
  const base = { id, name, haveKg: massKg, ...unitOf(of) };
  if (of === COMPOST) {
    const perKg = perKgOf(dressingSupply({ kind: 'compost', massKg: 1 }, 0, undefined));
    return { ...base, kind: 'compost', perKg, offBeds: rawBeds };
  }
  const legume = LEGUMES.includes(of);
  const perKg = perKgOf(
    dressingSupply({ kind: legume ? 'cover-crop' : 'mulch', material: of, massKg: 1 }, 0, undefined),
  );
  return {
    ...base,
    kind: legume ? 'legume' : of === COFFEE ? 'other' : 'clippings-mulch',
    perKg,
    mostKgPerM2: layerOf(of),
    ...(of === COFFEE ? { coffee: true } : { fresh: true }),
  };
}
