// The shape of files: not too long, one way of exporting, nothing left unfinished or switched off.

import { lineOf, parse, type SourceFile, walk } from './code.ts';

export const MOST_LINES = 400;

/** A file longer than a reader keeps in mind. */
export function lengthFaults({ file, text }: SourceFile): readonly string[] {
  const lines = text.replace(/\n$/, '').split('\n').length;
  return lines > MOST_LINES ? [`${file} has ${lines} lines; at most ${MOST_LINES}`] : [];
}

/** A default export: it has no name of its own to search for. */
export function exportFaults(source: SourceFile): readonly string[] {
  const { module } = parse(source);
  const defaults = module.staticExports
    .flatMap(({ entries }) => entries)
    .filter(({ exportName }) => exportName.kind === 'Default' || exportName.name === 'default');
  return defaults.map(({ start }) => `${source.file}:${lineOf(source.text, start)} exports a default`);
}

const SWITCHES = ['skip', 'only', 'todo', 'skipIf', 'runIf', 'fixme', 'fails'];
const TESTS = ['it', 'test', 'describe'];

/** Here known faults stand as cases that are meant to fail, each under its number. */
const KNOWN_FAULTS = 'test/seasons/faults/';

/**
 * A test that is switched off, alone, or meant to fail outside of the known faults. This stands in for the linter's own rule on focused tests,
 * which takes our word `fit` for one.
 */
export function switchFaults(source: SourceFile): readonly string[] {
  const faults: string[] = [];
  walk(parse(source).program, (node) => {
    if (node.type !== 'MemberExpression') return;
    const { object, property } = node as unknown as { object: { name?: string }; property: { name?: string } };
    const isNumbered = /^\(\s*['"`]F\d: /.test(source.text.slice(node.end));
    if (property.name === 'fails' && source.file.startsWith(KNOWN_FAULTS) && isNumbered) return;
    if (TESTS.includes(object.name ?? '') && SWITCHES.includes(property.name ?? '')) {
      faults.push(`${source.file}:${lineOf(source.text, node.start)} has ${object.name}.${property.name}`);
    }
  });
  return faults;
}

/** A file without a comment at its head that says what it is. */
export function headFaults({ file, text }: SourceFile): readonly string[] {
  const head = text.replace(/^#!.*\n/, '').replace(/^\/\/ @ts-check\n/, '');
  return /^(\/\/|\/\*)/.test(head) ? [] : [`${file} does not open by saying what it is`];
}
