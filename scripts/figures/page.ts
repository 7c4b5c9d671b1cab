// What the moved figures came to, as lines for a person and as a section of docs/tests.md.

import type { Figure } from './draw.ts';
import type { Noticed } from './trial.ts';

export interface Tried {
  readonly figure: Figure;
  readonly to: string;
  readonly noticed: Noticed;
}

export const HEADING = '## Figures of the tables';
const INTRO = `Written by \`npm run figures\`. Figures of \`data/\` are moved by a tenth, up or down, one at a time, in a copy of the project,
spread over the tables by how many figures each holds. Only tests count whose expected values come from outside the
tables: rows of publications (\`test/published\`), worked examples and recalled values (\`test/worked\`) and stated safety
values (\`test/values\`); published batches (\`test/validation\`) are asked only with \`--batches\`. Sums of columns, digests
of versions and answers, and examples made by the program are left out; so is \`data/eating.csv\`, which holds yes and
no. A test that cannot run notices nothing.`;

const isNoticed = ({ noticed }: Tried) => noticed.by.length > 0;
const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;

/** How many of each table were moved and noticed, then the whole. */
export function linesOf(tried: readonly Tried[], figures: readonly Figure[]): readonly string[] {
  return [...countsOf(tried, figures).map((row) => row.join(', ')), scoreOf(tried)];
}

function countsOf(tried: readonly Tried[], figures: readonly Figure[]): readonly (readonly string[])[] {
  return [...new Set(figures.map(({ table }) => table))].map((table) => {
    const here = tried.filter(({ figure }) => figure.table === table);
    const held = figures.filter((figure) => figure.table === table).length;
    return [`data/${table}`, String(held), String(here.length), String(here.filter(isNoticed).length)];
  });
}

function scoreOf(tried: readonly Tried[]): string {
  const noticed = tried.filter(isNoticed).length;
  return `Noticed: ${noticed} of ${tried.length}, ${percent(noticed, tried.length)}.`;
}

/** The section: the score, by table, and what was not noticed. */
export function sectionOf(
  tried: readonly Tried[],
  { figures, seed, date }: { readonly figures: readonly Figure[]; readonly seed: number; readonly date: string },
): string {
  const missed = tried.filter((one) => !isNoticed(one));
  const files = new Map<string, number>();
  for (const { noticed } of tried) for (const file of noticed.by) files.set(file, (files.get(file) ?? 0) + 1);
  const counts = [...files].toSorted(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
  return [
    HEADING,
    '',
    INTRO,
    '',
    `Seed ${seed}, ${date}. **${scoreOf(tried)}**`,
    '',
    '| table | figures | moved | noticed |',
    '| --- | ---: | ---: | ---: |',
    ...countsOf(tried, figures).map((row) => `| ${row.join(' | ')} |`),
    '',
    `Noticed first by: ${counts.map(([file, n]) => `\`${file}\` ${n}`).join(', ')}.`,
    '',
    'Not noticed:',
    '',
    ...missed.map(({ figure, to, noticed }) => {
      const { table, id, quantity, end, stands, source, mark } = figure;
      const unread = noticed.unread.length > 0 ? `; could not run: ${noticed.unread.join(', ')}` : '';
      return `- ${table}: ${id} ${quantity}, ${end} ${stands} moved to ${to} (${source}, ${mark})${unread}`;
    }),
    '',
  ].join('\n');
}
