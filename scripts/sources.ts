// npm run docs: writes docs/sources.md, the tables of data/ with how many of their figures were seen published, derived
// from what was, taken from memory or from common practice; then every source with where it stands. Only counts; the
// figures themselves stay in the tables. Next: test/house/sources.test.ts holds the page to the tables.

import './node-version.mjs';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';

const root = path.join(path.dirname(fileURLToPath(import.meta.url)), '..');
const DATA = path.join(root, 'data');
const PAGE = path.join(root, 'docs/sources.md');
const NO_SOURCE = ['memory', 'practice', 'our-caution'];

type Row = Readonly<Record<string, string>>;

/** How the figures of one table came about. */
export interface TableCount {
  readonly table: string;
  readonly figures: number;
  readonly seen: number;
  readonly derived: number;
  readonly memory: number;
  readonly practice: number;
  /** Figures whose source was seen published: read off it, or derived from it. */
  readonly onSeenSource: number;
}

const read = (name: string): readonly Row[] => parse(readFileSync(path.join(DATA, name), 'utf8'), { columns: true });

/** The counts of every table of figures, in the order of their names. */
export function tableCounts(): readonly TableCount[] {
  const seenSources = new Set(read('sources.csv').flatMap((row) => (row.mark === 'seen' ? [row.id] : [])));
  return readdirSync(DATA)
    .filter((name) => name.endsWith('.csv'))
    .sort()
    .flatMap((name) => {
      const rows = read(name);
      if (rows[0] === undefined || !('quantity' in rows[0])) return [];
      const marked = (mark: string) => rows.filter((row) => row.mark === mark).length;
      return {
        table: name,
        figures: rows.length,
        seen: marked('seen'),
        derived: marked('derived'),
        memory: marked('memory'),
        practice: marked('practice'),
        onSeenSource: rows.filter(
          ({ source = '', mark = '' }) => ['seen', 'derived'].includes(mark) && seenSources.has(source),
        ).length,
      };
    });
}

/** The page. */
export function sourcesPage(): string {
  const counts = tableCounts();
  const percent = ({ onSeenSource, figures }: TableCount) => `${Math.round((100 * onSeenSource) / figures)} %`;
  const used = new Map<string, Set<string>>();
  for (const { table } of counts) {
    for (const { source = '' } of read(table)) used.set(source, (used.get(source) ?? new Set()).add(table));
  }
  return [
    '# Sources',
    '',
    'Made by `npm run docs` from `data/*.csv`; not edited by hand. **Seen**: read off the publication. **Derived**: worked out from figures named in the note.',
    '**Memory**: from memory, unverified. **Practice**: common practice or a caution of ours, no source.',
    '**On a source seen** counts the figures read off, or derived from, a publication that was itself seen.',
    '',
    '| table | figures | seen | derived | memory | practice | on a source seen |',
    '|---|---:|---:|---:|---:|---:|---:|',
    ...counts.map(
      (one) =>
        `| ${one.table} | ${one.figures} | ${one.seen} | ${one.derived} | ${one.memory} | ${one.practice} | ${one.onSeenSource} (${percent(one)}) |`,
    ),
    '',
    '## Publications',
    '',
    '| publication | seen | tables of figures |',
    '|---|---|---|',
    ...read('sources.csv').map((row) => {
      const cite = `${[row.author, row.year].filter(Boolean).join(' ')}, ${row.title}`;
      const tables = [...(used.get(row.id ?? '') ?? [])].join(', ') || 'rules and sums';
      return `| ${cite.replaceAll('|', '/')} | ${row.mark === 'seen' ? row.seen_on || 'yes' : 'from memory'} | ${tables} |`;
    }),
    '',
    `Without a publication: ${NO_SOURCE.join(', ')}.`,
    '',
  ].join('\n');
}

if (process.argv[1] && path.resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  mkdirSync(path.dirname(PAGE), { recursive: true });
  writeFileSync(PAGE, sourcesPage());
}
