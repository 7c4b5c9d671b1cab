// Reads data/*.csv, checks every row and writes src/engine/tables/generated.ts and, beside it, made-version.ts. The CSV
// files are the only truth; the modules are made, never edited, and hold only what a screen needs: no locator or note.
// Plain Node with csv-parse, so that it runs before anything is built and from any folder.
// Next: src/engine/tables/index.ts decodes what this writes; scripts/foods.mjs makes food-figures.csv.

import './node-version.mjs';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { tablesDigest, versionModule } from './versions.mjs';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..');
const OUT = join(ROOT, 'src/engine/tables');

const LONG = ['id', 'quantity', 'low', 'likely', 'high', 'basis', 'source', 'locator', 'mark', 'note'];
const HEADERS = {
  'sources.csv': ['id', 'author', 'year', 'title', 'publisher', 'locator', 'address', 'seen_on', 'licence', 'mark'],
  'materials.csv': ['id', 'name', 'group', 'into', 'why', 'why_source'],
  'sugars.csv': ['id', 'name'],
  'excluded.csv': ['id', 'name', 'latin', 'part', 'group', 'into', 'why', 'source', 'mark'],
};
/** An extract of another table, held true by test/published/foods.test.ts; it holds no figures of its own. */
const EXTRACTS = ['foods.csv'];
const MARKS = ['seen', 'memory', 'practice', 'derived'];
const NO_SOURCE = ['memory', 'practice', 'our-caution'];
const INTO = ['liquid', 'compost-only', 'set-aside', 'out'];
/** Plants that stay out of the pail: why they do, and the softest place that is left to them. */
const EXCLUDED_GROUPS = ['toxic', 'irritant', 'diseased', 'spreading', 'slow'];
const EXCLUDED_INTO = ['out', 'compost-only', 'hot-heap-only'];
/** Figures of whole groups of materials, data/group-figures.csv. */
const GROUPS = 'groups';
const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/**
 * Quantities of materials and sugars, with the limits that catch a slipped decimal or a wrong unit.
 * Tables that stand alone name their own quantities; where one is listed here, its limits hold there too.
 */
const QUANTITIES = {
  dryMatter: [0.01, 1],
  nPercentDm: [0, 15],
  cn: [1, 1000],
  pPercentDm: [0, 5],
  kPercentDm: [0, 15],
  caPercentDm: [0, 45],
  mgPercentDm: [0, 5],
  sugarsGPerKgDm: [0, 1000],
  bufferEqPerKgDmPerPh: [0, 2],
  ph: [2, 12],
  displacementLPerKg: [0.1, 2],
  bulkKgPerM3: [5, 2000],
  spoilDays: [0, 3650],
  hexoseGPerKg: [0, 1060],
  sugarsGPerKg: [0, 1000],
  bulkKgPerL: [0.3, 2],
  bufferEqPerKgPerPh: [0, 2],
  kGPerKg: [0, 200],
  thresholdEcDsPerM: [0, 20],
  slopePercentPerDsPerM: [0, 100],
};

/**
 * Reads and checks the tables of one folder, some of them as another text where one is given by name; answers the text of
 * both modules, the digest and every fault found.
 */
export function makeTables(folder, instead = new Map()) {
  const faults = [];
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.csv') && !EXTRACTS.includes(name))
    .sort();
  const textOf = (name) => instead.get(name) ?? readFileSync(join(folder, name), 'utf8');
  const files = new Map(names.map((name) => [name, readTable(name, textOf(name), faults)]));
  const rows = (name) => files.get(name) ?? [];
  for (const name of Object.keys(HEADERS)) if (!files.has(name)) faults.push(`data/${name}:1: the table is missing.`);

  const sources = new Set(rows('sources.csv').map((r) => r.id));
  const known = (origin) => sources.has(origin) || NO_SOURCE.includes(origin);
  for (const name of Object.keys(HEADERS)) unique(name, rows(name), (r) => r.id, faults);
  for (const r of rows('sources.csv')) {
    if (!r.title) faults.push(`${r.at}: source ${r.id} has no title.`);
    if (!r.author) faults.push(`${r.at}: source ${r.id} has no author or body.`);
    if (r.mark !== 'seen' && r.mark !== 'memory') faults.push(`${r.at}: mark is ${r.mark}; allowed: seen, memory.`);
  }
  for (const r of rows('materials.csv')) {
    if (!INTO.includes(r.into)) faults.push(`${r.at}: into is "${r.into}"; allowed: ${INTO.join(', ')}.`);
    if (r.into !== 'liquid' && !r.why) faults.push(`${r.at}: ${r.id} may not go everywhere, but why is empty.`);
    if (Boolean(r.why) !== Boolean(r.why_source))
      faults.push(`${r.at}: why and why_source stand together or not at all.`);
    if (r.why_source && !known(r.why_source))
      faults.push(`${r.at}: source "${r.why_source}" is not in data/sources.csv.`);
  }
  for (const r of rows('excluded.csv')) checkExcluded(r, known, faults);

  const code = { quantities: [], origins: [] };
  const column = (name, key) => new Set(rows(name).map((row) => row[key]));
  const idsOf = {
    materials: column('materials.csv', 'id'),
    sugars: column('sugars.csv', 'id'),
    [GROUPS]: column('materials.csv', 'group'),
  };
  const tables = new Map();
  for (const [name, list] of files) {
    if (name in HEADERS) continue;
    for (const r of list) {
      const table = tableOf(name);
      const ids = idsOf[table];
      checkFigure(r, known, faults, ids !== undefined);
      if (ids && !ids.has(r.id)) {
        const place = table === GROUPS ? 'a group of data/materials.csv' : `in data/${table}.csv`;
        faults.push(`${r.at}: "${r.id}" is not ${place}.`);
      }
      if (!tables.has(table)) tables.set(table, new Map());
      const byId = tables.get(table);
      if (!byId.has(r.id)) byId.set(r.id, []);
      if (byId.get(r.id).some((x) => x.quantity === r.quantity)) {
        faults.push(`${r.at}: ${r.id} has ${r.quantity} twice; one row holds one figure.`);
      }
      byId.get(r.id).push(r);
    }
  }
  if (faults.length > 0) return { faults, text: '', versionText: '', digest: '' };

  const flat = (table, id) => encode(tables.get(table)?.get(id) ?? [], code);
  const materials = rows('materials.csv').map((r) => [
    ...[r.id, r.name, r.group, r.into, r.why, r.why_source],
    encode(figuresOf(r, tables), code),
  ]);
  const sugars = rows('sugars.csv').map((r) => [r.id, r.name, flat('sugars', r.id)]);
  const excluded = rows('excluded.csv').map((r) => HEADERS['excluded.csv'].map((column) => r[column]));
  const others = {};
  for (const table of [...tables.keys()].sort()) {
    if (table in idsOf) continue;
    others[table] = [...tables.get(table).keys()].map((id) => [id, flat(table, id)]);
  }
  const cited = rows('sources.csv').map((r) => [r.id, cite(r), r.mark]);
  const figures = [...tables].flatMap(([table, byId]) =>
    [...byId].flatMap(([id, list]) => list.map(({ quantity, numbers }) => ({ table, id, quantity, numbers }))),
  );
  const digest = tablesDigest({
    figures,
    materials: rows('materials.csv'),
    sugars: rows('sugars.csv'),
    excluded: rows('excluded.csv'),
  });
  const text = moduleText({ ...code, sources: cited, materials, sugars, excluded, others });
  return { faults, text, versionText: versionModule(folder, digest), digest };
}

function readTable(name, text, faults) {
  const expected = HEADERS[name] ?? LONG;
  let records;
  try {
    records = parse(text, { bom: true, info: true, skip_empty_lines: true });
  } catch (error) {
    faults.push(`data/${name}:${error.lines ?? 1}: the line does not read as CSV: ${error.message}.`);
    return [];
  }
  const header = records[0]?.record ?? [];
  if (header.join() !== expected.join()) {
    faults.push(`data/${name}:1: the header is ${header.join()}; allowed: ${expected.join()}.`);
    return [];
  }
  return records.slice(1).map(({ record, info }) => {
    const row = Object.fromEntries(expected.map((column, i) => [column, record[i].trim()]));
    row.at = `data/${name}:${info.lines}`;
    if (!ID.test(row.id)) faults.push(`${row.at}: id "${row.id}" is not lower-case words joined by hyphens.`);
    return row;
  });
}

function unique(name, list, key, faults) {
  const seen = new Set();
  for (const r of list) {
    if (seen.has(key(r))) faults.push(`${r.at}: ${key(r)} stands twice in data/${name}.`);
    seen.add(key(r));
  }
}

/** `material-figures.csv` and `food-figures.csv` fill materials, `group-figures.csv` their groups, `sugar-figures.csv` sugars; others stand alone. */
function tableOf(name) {
  if (name === 'material-figures.csv' || name === 'food-figures.csv') return 'materials';
  if (name === 'group-figures.csv') return GROUPS;
  if (name === 'sugar-figures.csv') return 'sugars';
  return name.replace(/\.csv$/, '');
}

/** A material's own figures, then those of its group that it lacks: what holds for a whole group stands once. */
function figuresOf({ id, group }, tables) {
  const own = tables.get('materials')?.get(id) ?? [];
  const shared = tables.get(GROUPS)?.get(group) ?? [];
  return [...own, ...shared.filter((one) => !own.some(({ quantity }) => quantity === one.quantity))];
}

function checkFigure(r, known, faults, listed) {
  const limits = QUANTITIES[r.quantity] ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (!/^[a-z][A-Za-z0-9]*$/.test(r.quantity)) {
    faults.push(`${r.at}: quantity "${r.quantity}" is not a name with its unit, such as nPercentDm.`);
    return;
  }
  if (listed && !(r.quantity in QUANTITIES)) {
    faults.push(`${r.at}: quantity "${r.quantity}" is not known; allowed: ${Object.keys(QUANTITIES).join(', ')}.`);
    return;
  }
  if ((r.low === '') !== (r.high === '')) faults.push(`${r.at}: low and high are given together or not at all.`);
  const ends = [r.low === '' ? r.likely : r.low, r.likely, r.high === '' ? r.likely : r.high];
  r.numbers = ends.map((text) => (text === '' ? Number.NaN : Number(text)));
  const [low, likely, high] = r.numbers;
  if (!r.numbers.every(Number.isFinite)) {
    faults.push(
      `${r.at}: ${ends.join(', ')} are not all numbers; leave the whole row out where a figure is not known.`,
    );
    return;
  }
  if (!(low <= likely && likely <= high)) faults.push(`${r.at}: ${low}, ${likely}, ${high} are not in order.`);
  if (!(low >= limits[0] && high <= limits[1])) {
    faults.push(`${r.at}: ${r.quantity} ${low} to ${high} is out of reach; allowed: ${limits[0]} to ${limits[1]}.`);
  }
  if (!MARKS.includes(r.mark)) faults.push(`${r.at}: mark is "${r.mark}"; allowed: ${MARKS.join(', ')}.`);
  if (!known(r.source)) faults.push(`${r.at}: source "${r.source}" is not in data/sources.csv.`);
  if (r.mark === 'seen' && NO_SOURCE.includes(r.source)) faults.push(`${r.at}: a figure marked seen needs a source.`);
  if (r.mark === 'derived' && !r.note) faults.push(`${r.at}: a derived figure names its inputs in note.`);
}

function checkExcluded(r, known, faults) {
  if (!r.name) faults.push(`${r.at}: ${r.id} has no common name.`);
  if (!r.part) faults.push(`${r.at}: ${r.id} does not say which part.`);
  if (!EXCLUDED_GROUPS.includes(r.group)) {
    faults.push(`${r.at}: group is "${r.group}"; allowed: ${EXCLUDED_GROUPS.join(', ')}.`);
  }
  if (!EXCLUDED_INTO.includes(r.into)) {
    faults.push(`${r.at}: into is "${r.into}"; allowed: ${EXCLUDED_INTO.join(', ')}.`);
  }
  if (!r.why) faults.push(`${r.at}: ${r.id} stays out, but why is empty.`);
  if (!MARKS.includes(r.mark)) faults.push(`${r.at}: mark is "${r.mark}"; allowed: ${MARKS.join(', ')}.`);
  if (!known(r.source)) faults.push(`${r.at}: source "${r.source}" is not in data/sources.csv.`);
  if (r.mark === 'seen' && NO_SOURCE.includes(r.source)) faults.push(`${r.at}: a row marked seen needs a source.`);
}

/** One flat list per row: quantity, low, likely, high, origin, again and again. */
function encode(list, code) {
  return list.flatMap((r) => {
    return [place(code.quantities, r.quantity), ...r.numbers, place(code.origins, `${r.source} ${r.mark}`)];
  });
}

/** Where a word stands in a list, adding it at the end when it is new. */
function place(list, word) {
  if (!list.includes(word)) list.push(word);
  return list.indexOf(word);
}

function cite(r) {
  return `${[r.author, r.year].filter(Boolean).join(' ')}, ${r.title}`;
}

function moduleText(t) {
  const data = (value) => JSON.stringify(value);
  return `// Made by scripts/tables.mjs from data/*.csv. Not edited by hand, not kept in git.
type Flat = readonly number[];
export const quantities: readonly string[] = ${data(t.quantities)};
export const origins: readonly string[] = ${data(t.origins)};
export const sources: readonly (readonly [string, string, string])[] = ${data(t.sources)};
export const materials: readonly (readonly [string, string, string, string, string, string, Flat])[] = ${data(t.materials)};
export const sugars: readonly (readonly [string, string, Flat])[] = ${data(t.sugars)};
export const excluded: readonly (readonly string[])[] = ${data(t.excluded)};
export const others: Readonly<Record<string, readonly (readonly [string, Flat])[]>> = ${data(t.others)};
`;
}

function main() {
  const { faults, text, versionText } = makeTables(join(ROOT, 'data'));
  if (faults.length > 0) {
    for (const fault of faults) console.error(fault);
    process.exitCode = 1;
    return;
  }
  writeAnew('generated.ts', text);
  writeAnew('made-version.ts', versionText);
}

/** A file that is as it should be keeps its time, so that nothing is built again because of it. */
function writeAnew(name, text) {
  const file = join(OUT, name);
  if (existsSync(file) && readFileSync(file, 'utf8') === text) return;
  mkdirSync(OUT, { recursive: true });
  writeFileSync(file, text);
}

if (process.argv[1] && fileURLToPath(import.meta.url) === process.argv[1]) main();
