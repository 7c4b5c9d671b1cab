// The part of docs/rules.md on safety values: each as it is stated, whose word it is, where it stands and what holds it.
// Text only; nothing is tried here.

import { citation, type Figure, figures, sources } from '#engine/tables/index.ts';
import type { Value } from './value.ts';
import { valueFiles, values } from './values.ts';

/** Whose word a value is. */
export type Ground = 'seen' | 'from memory' | 'none';

/** A publication that was seen, one that is cited from memory, or none; of a row of a table, by its own mark. */
export function groundOf({ source, at }: Value): Ground {
  const publication = sources.find(({ id }) => id === source);
  if (publication === undefined) return 'none';
  return (figureOf(at)?.mark ?? publication.mark) === 'memory' ? 'from memory' : 'seen';
}

/** The figure of a value that stands in a table. */
export function figureOf(at: string): Figure | undefined {
  const [, table, id = '', quantity = ''] = /^data\/([\w-]+)\.csv (\S+?)\.(\w+)/.exec(at) ?? [];
  return table === undefined ? undefined : figures(table).get(id)?.[quantity];
}

const PUBLICATION: Readonly<Record<Ground, string>> = {
  seen: 'seen',
  'from memory': 'cited from memory',
  none: 'none known to us',
};

function row(value: Value, file: string): string {
  const { name, stated, source, locator, at } = value;
  const cells = [
    name,
    stated,
    `${citation(source)}${locator === undefined ? '' : ` (${locator})`}`,
    PUBLICATION[groundOf(value)],
    `${at.startsWith('data/') || at.startsWith('src/') ? at : `src/engine/${at}`}`,
    `${file}: ${name}`,
  ];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

/** The lines of the page on safety values. */
export function valuesPart(): readonly string[] {
  const count = (ground: Ground) => values.filter((value) => groundOf(value) === ground).length;
  return [
    '## Safety values',
    '',
    'Each limit, wait, hold, line and threshold of the rules above, once. The test of its name in `test/values` asks the engine',
    'at the value, just under and just over it, with figures typed from the publication or the stated caution, and',
    '`test/values/moved.test.ts` moves each value by itself and wants that test to fail.',
    '',
    `Of ${values.length} values ${count('seen')} rest on a publication that was seen and ${count('from memory')} on one that is cited from memory. For`,
    `${count('none')} we know of no publication: they are our caution, common practice, or from memory, as the row says, and a test of`,
    'them shows only that the program does what is stated here.',
    '',
    '| value | stated | source | publication | stands in | test |',
    '|---|---|---|---|---|---|',
    ...valueFiles.flatMap(({ file, values: held }) => held.map((value) => row(value, file))),
    '',
  ];
}
