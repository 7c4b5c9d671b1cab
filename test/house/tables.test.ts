// The tables of data/ as a whole: every row reads, every source resolves and is used, and no figure moves
// unseen. scripts/tables.mjs makes most of these checks when the program is built; here they are shown to
// bite, and the pins make a changed figure show in the same commit.

import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, describe, expect, it } from 'vitest';
import { citation, materials, sources, sugars } from '#engine/tables/index.ts';
import { makeTables } from '../../scripts/tables.mjs';

const ROOT = join(import.meta.dirname, '../..');
const DATA = join(ROOT, 'data');
const NO_SOURCE = ['memory', 'practice', 'our-caution'];

type Row = Readonly<Record<string, string>>;
const read = (name: string): readonly Row[] => parse(readFileSync(join(DATA, name), 'utf8'), { columns: true });
const tables = readdirSync(DATA).filter((name) => name.endsWith('.csv'));

/** Every ids-of-sources place in a source file: `source: 'id'`, `@source id`, and ids in plain quotes. */
function textOf(folder: string): string {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|csv)$/.test(name) && !name.endsWith('generated.ts'))
    .map((name) => `${name}\n${readFileSync(join(ROOT, folder, name), 'utf8')}`)
    .join('\n');
}

describe('the tables of data/', () => {
  it('read without a fault, and the module made from them is the one that is used', () => {
    const { faults, text } = makeTables(DATA);
    expect(faults).toEqual([]);
    expect(text).toBe(readFileSync(join(ROOT, 'src/engine/tables/generated.ts'), 'utf8'));
  });

  it('hold at least 45 materials and every sugar source', () => {
    expect(materials.length).toBeGreaterThanOrEqual(45);
    expect(sugars.map((row) => row.id)).toEqual(read('sugars.csv').map((row) => row.id));
  });

  it('give a material its own figure first, and that of its group where it has none', () => {
    const [own] = read('material-figures.csv').filter((r) => r.id === 'citrus-peel' && r.quantity === 'spoilDays');
    const [shared] = read('group-figures.csv').filter((r) => r.id === 'fruit' && r.quantity === 'spoilDays');
    const days = (id: string) => materials.find((row) => row.id === id)?.figures.spoilDays?.likely;
    expect([days('citrus-peel'), days('grape')]).toEqual([Number(own?.likely), Number(shared?.likely)]);
    expect(days('citrus-peel')).not.toBe(days('grape'));
  });

  it('give every material a dry matter, so that none falls out of a sum', () => {
    expect(materials.filter((row) => row.figures.dryMatter === undefined).map((row) => row.id)).toEqual([]);
  });

  it('give nitrogen and carbon to nitrogen of one material as bands that meet at a carbon plants can hold', () => {
    // Dry plant matter holds 20 % carbon (beach-dried seaweed, full of ash) to 58 % (lignin).
    const odd = materials.filter(({ figures }) => {
      const { nPercentDm: n, cn } = figures;
      return n !== undefined && cn !== undefined && !(n.low * cn.low <= 58 && n.high * cn.high >= 20);
    });
    expect(odd.map((row) => row.id)).toEqual([]);
  });

  it('say why and by which source for every material that may not go into the liquid', () => {
    for (const row of materials.filter((r) => r.into !== 'liquid')) {
      expect(row.why, row.id).toMatch(/\.$/);
      expect(citation(row.whySource)).not.toBe('');
    }
  });
});

describe('data/excluded.csv', () => {
  const rows = read('excluded.csv');

  it('names each plant once, so that a typed name is not two plants', () => {
    const names = rows.flatMap(({ name = '' }) => name.toLowerCase().split(' / '));
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  it('says why in a whole sentence', () => {
    expect(rows.filter(({ why = '' }) => !/^[A-Z].*\.$/.test(why)).map(({ id }) => id)).toEqual([]);
  });

  it('lets nothing diseased into a heap that stays cold', () => {
    const cold = rows.filter(({ group, into }) => group === 'diseased' && into === 'compost-only');
    expect(cold.map(({ id }) => id)).toEqual([]);
  });
});

describe('data/sources.csv', () => {
  const code = textOf('src');
  const checks = textOf('test');
  const figures = tables.filter((name) => name !== 'sources.csv').flatMap(read);
  // A figure drawn from several publications names the main one as its source and the others in its note.
  const cited = new Set(
    figures.flatMap((row) => [row.source, row.why_source, ...(row.note?.match(/[a-z0-9-]+/g) ?? [])]),
  );

  it('holds no source that nothing rests on', () => {
    const used = (id: string) =>
      cited.has(id) || [code, checks].some((text) => new RegExp(`(^|[^a-z0-9-])${id}([^a-z0-9-]|$)`, 'm').test(text));
    expect(sources.map((row) => row.id).filter((id) => !used(id))).toEqual([]);
  });

  it('holds every source that the code names', () => {
    // `source: 'tap'` is a water's; only rules, workings and docstrings name where a thing comes from.
    const places = [
      [...code.matchAll(/@source ([a-z0-9-]+)/g)],
      [...(textOf('src/engine/rules') + textOf('src/engine/working')).matchAll(/\bsource: '([^']*)'/g)],
    ];
    const named = places
      .flat()
      .map((match) => match[1] ?? '')
      .filter((id) => !NO_SOURCE.includes(id));
    const known = new Set(sources.map((row) => row.id));
    expect([...new Set(named)].filter((id) => !known.has(id))).toEqual([]);
  });

  it('stands in the order of its ids', () => {
    const ids = sources.map((row) => row.id);
    expect(ids).toEqual([...ids].sort());
  });

  it('names no host as a source: author and title stand first, an address only beside them', () => {
    for (const row of read('sources.csv')) {
      expect(row.author, row.id).not.toMatch(/\.(com|org|net|edu|gov)\b/);
      expect(row.title, row.id).not.toMatch(/https?:|\.(com|org|net)\b/);
    }
  });
});

describe('scripts/tables.mjs', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tables-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  /** The faults found when one text of one table is changed for another. */
  function faultsAfter(name: string, from: string | RegExp, to: string): readonly string[] {
    cpSync(DATA, folder, { recursive: true });
    const before = readFileSync(join(folder, name), 'utf8');
    const after = before.replace(from, to);
    expect(after, `${name} holds what the test changes`).not.toBe(before);
    writeFileSync(join(folder, name), after);
    return makeTables(folder).faults;
  }
  const row = 'carrot,ph,5.88,6.14,6.4';

  it('finds a band out of order and names file, line and numbers', () => {
    const [fault = ''] = faultsAfter('material-figures.csv', row, 'carrot,ph,6.5,6.15,6.3');
    expect(fault).toMatch(/^data\/material-figures\.csv:\d+: 6\.5, 6\.15, 6\.3 are not in order\.$/);
  });

  it('finds a slipped decimal, a missing number and a figure given twice', () => {
    expect(faultsAfter('material-figures.csv', row, 'carrot,ph,6.0,61.5,63')[0]).toContain('allowed: 2 to 12');
    expect(faultsAfter('material-figures.csv', row, 'carrot,ph,,,')[0]).toContain('are not all numbers');
    expect(faultsAfter('material-figures.csv', row, 'carrot,dryMatter,0.1,0.12,0.13')[0]).toContain('twice');
  });

  it('finds an unknown source, mark, quantity, material and destination', () => {
    expect(faultsAfter('material-figures.csv', /rynk-1992/, 'somebody-2020')[0]).toContain('not in data/sources.csv');
    expect(faultsAfter('material-figures.csv', /,memory,,memory,/, ',memory,,likely,')[0]).toContain('allowed: seen');
    expect(faultsAfter('material-figures.csv', 'carrot,ph', 'carrot,sweetness')[0]).toContain('is not known; allowed');
    expect(faultsAfter('material-figures.csv', 'carrot,ph', 'carrott,ph')[0]).toContain('not in data/materials.csv');
    expect(faultsAfter('materials.csv', ',fruit,liquid,', ',fruit,bucket,')[0]).toContain('allowed: liquid');
  });

  it('finds a figure of a group that is none', () => {
    expect(faultsAfter('group-figures.csv', /^fruit,/m, 'fruits,')[0]).toContain('not a group of data/materials.csv');
  });

  it('finds a plant to be kept out with a wrong group, place, mark or source, or without a part or a reason', () => {
    const yew = /^yew,.*$/m;
    const row = (part: string, rest: string) => `yew,yew,Taxus baccata,${part},${rest}`;
    const good = 'toxic,out,Poisonous.,naples-botanical-garden,seen';
    expect(faultsAfter('excluded.csv', yew, row('leaf', good))).toEqual([]);
    expect(faultsAfter('excluded.csv', yew, row('', good))[0]).toContain('does not say which part');
    for (const [from, to, fault] of [
      ['toxic', 'nasty', 'allowed: toxic'],
      ['out', 'liquid', 'allowed: out'],
      ['Poisonous.', '', 'why is empty'],
      ['naples-botanical-garden', 'somebody-2020', 'not in data/sources.csv'],
      [',seen', ',likely', 'allowed: seen'],
      ['naples-botanical-garden', 'memory', 'marked seen needs a source'],
    ] as const) {
      expect(faultsAfter('excluded.csv', yew, row('leaf', good.replace(from, to)))[0]).toContain(fault);
    }
    expect(faultsAfter('excluded.csv', /^oleander,/m, 'yew,')[0]).toContain('stands twice');
  });

  it('finds a cut line and a changed header', () => {
    expect(faultsAfter('material-figures.csv', row, 'carrot,ph,6.0\nx')[0]).toMatch(
      /^data\/material-figures\.csv:\d+: /,
    );
    expect(faultsAfter('sugars.csv', 'id,name', 'id,names')[0]).toContain('data/sugars.csv:1: the header is');
  });
});

/** Sum of the absolute numbers of a column, to six digits; text and empty cells count nothing. */
function columnSum(rows: readonly Row[], column: string): number {
  const sum = rows.reduce((total, row) => total + Math.abs(Number(row[column] || 0) || 0), 0);
  return Number(sum.toPrecision(6));
}

// Pins: rows, then the absolute sum of each column of numbers. They do not say that a figure is right; they
// guard against one that moves without anybody looking. Who changes a figure changes its pin in the same
// commit and says why.
const PINS: Readonly<Record<string, { readonly rows: number; readonly sums: Readonly<Record<string, number>> }>> = {
  'chop.csv': { rows: 6, sums: { low: 5.25, likely: 6.34, high: 7.77 } },
  'eating.csv': { rows: 336, sums: { likely: 246.5 } },
  'excluded.csv': { rows: 53, sums: {} },
  'extraction.csv': { rows: 18, sums: { low: 10.19, likely: 12.115, high: 15 } },
  'ferment.csv': { rows: 84, sums: { low: 524.934, likely: 547.363, high: 581.06 } },
  'food-figures.csv': { rows: 312, sums: { low: 8233, likely: 11250.9, high: 15428.9 } },
  'foods.csv': {
    rows: 39,
    sums: {
      regions: 194,
      waterGPer100G: 3393.91,
      waterSdGPer100G: 23.43,
      proteinGPer100G: 70.37,
      proteinSdGPer100G: 6.8,
      ashGPer100G: 35.86,
      ashSdGPer100G: 3.21,
      freeSugarsGPer100G: 124.26,
      freeSugarsSdGPer100G: 3.72,
      pGPer100G: 1.36864,
      pSdGPer100G: 0.21018,
      kGPer100G: 10.586,
      kSdGPer100G: 1.0298,
      caGPer100G: 1.78474,
      caSdGPer100G: 0.27407,
      mgGPer100G: 1.07313,
      mgSdGPer100G: 0.17426,
    },
  },
  'crops.csv': { rows: 621, sums: { low: 2254.21, likely: 7440.75, high: 3225.46 } },
  'gas.csv': { rows: 27, sums: { low: 81201.9, likely: 81527.4, high: 82016.1 } },
  'heap.csv': { rows: 49, sums: { low: 239.35, likely: 1434.75, high: 292.2 } },
  'group-figures.csv': { rows: 10, sums: { low: 374.5, likely: 758, high: 1508.5 } },
  'material-figures.csv': { rows: 430, sums: { low: 29707.8, likely: 39605.5, high: 51308.7 } },
  'materials.csv': { rows: 84, sums: {} },
  'pail.csv': { rows: 14, sums: { low: 81.25, likely: 162.1, high: 278.8 } },
  'release.csv': { rows: 50, sums: { low: 389.255, likely: 5027.63, high: 599.525 } },
  'salt-tolerance.csv': { rows: 20, sums: { likely: 167.7 } },
  'soil-tests.csv': { rows: 47, sums: { low: 35, likely: 5804.81, high: 40 } },
  'sources.csv': { rows: 181, sums: { year: 248584 } },
  'spray.csv': { rows: 30, sums: { low: 38, likely: 535.5, high: 63 } },
  'sugar-figures.csv': { rows: 42, sums: { low: 9956.4, likely: 10326.5, high: 10642.5 } },
  'sugars.csv': { rows: 6, sums: {} },
  'usual.csv': { rows: 13, sums: { low: 11.15, likely: 593.02, high: 27.75 } },
  'ways.csv': { rows: 10, sums: { low: 124.75, likely: 125.05, high: 125.4 } },
};

describe('pins of data/', () => {
  it('exist for every table', () => {
    expect(Object.keys(PINS).sort()).toEqual([...tables].sort());
  });

  it.each(Object.keys(PINS))('%s has the rows and the sums it had when last looked at', (name) => {
    const rows = read(name);
    const pin = PINS[name];
    const sums = Object.keys(pin?.sums ?? {}).map((column) => [column, columnSum(rows, column)]);
    expect({ rows: rows.length, sums: Object.fromEntries(sums) }).toEqual(pin);
  });
});
