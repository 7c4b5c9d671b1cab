// No screen, label or answer holds a word that promises, comforts falsely or talks like a product.

import { parse as parseCsv } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { codeUnder, filesUnder } from './code.ts';
import { type Exception, keptOffIn, shownIn, wordFaults } from './prose.ts';

/** Each line needs its reason; a line that nothing needs any more is a fault. */
const EXCEPTIONS: readonly Exception[] = [
  {
    file: 'src/words/en/weigh-in-labels.ts',
    text: 'cures',
    reason: 'names a place on the sheet to the code; nobody reads it',
  },
];

const sources = [
  ...codeUnder('src/words'),
  ...codeUnder('src/web'),
  ...codeUnder('src/tasks'),
  ...codeUnder('src/cli'),
];

describe('what the faces say', () => {
  it('holds no kept-off word', () => {
    expect(sources.length).toBeGreaterThan(5);
    expect(sources.flatMap((one) => wordFaults(one, EXCEPTIONS))).toEqual([]);
  });

  it('has no exception that nothing needs', () => {
    const idle = EXCEPTIONS.filter(
      ({ file, text }) =>
        !sources.some((one) => one.file === file && shownIn(one).some((shown) => shown.text === text)),
    );
    expect(idle).toEqual([]);
  });

  it('holds no kept-off word in the page around the script', () => {
    const pages = filesUnder(['src/web'], /\.html$/);
    const said = pages.flatMap(({ file, text }) =>
      keptOffIn(text.replace(/<[^>]*>/g, ' ')).map(({ word }) => `${file}: ${word}`),
    );
    expect(said).toEqual([]);
  });

  it.each(['materials.csv', 'sugars.csv', 'excluded.csv'])(
    'holds no kept-off word in the names and reasons of %s',
    (table) => {
      const [source] = filesUnder(['data'], new RegExp(`^${table.replace('.', '\\.')}$`));
      const rows = parseCsv(source?.text ?? '', { columns: true }) as readonly Record<string, string>[];
      expect(rows.length).toBeGreaterThan(3);
      const said = rows.flatMap(({ id, name, why }) =>
        keptOffIn(`${name} ${why ?? ''}`).map(({ word }) => `${id}: ${word}`),
      );
      expect(said).toEqual([]);
    },
  );
});

describe('the rule on words', () => {
  it.each([
    ['a text', "export const a = 'This is perfect for beds.';"],
    ['a template', ['const a = `It is $', '{b} and Safe`;'].join('')],
    ['words between tags', 'const a = <p>A miracle.</p>;'],
    ['a spoken attribute', "const a = <p aria-label='health  score' />;"],
    ['a value beside a field', "const a = { word: 'guaranteed' };"],
    ['a phrase with a no-break space', "const a = '100\\u00a0% sour';"],
    ['a hyphenated prefix', "const a = 'a super-feed';"],
  ])('finds %s', (_, text) => {
    expect(wordFaults({ file: 'planted.tsx', text })).not.toEqual([]);
  });

  it.each([
    ['a longer word', "const a = 'safety, imperfect, powerless, unsafe';"],
    ['a module name', "import { a } from './stream.ts'; export { b } from './parts/b.ts'; import('./parts/c.ts');"],
    ['a field', "const a = { level: 1, 'score': 2 }; a['level'];"],
    ['a comparison', "if (a === 'level') b();"],
    ['a machine attribute', "const a = <p class='stream' id='level' />;"],
    ['a type', "type A = 'level' | 'score';"],
    ['a comment', '// a safe bet'],
  ])('is content with %s', (_, text) => {
    expect(wordFaults({ file: 'planted.tsx', text })).toEqual([]);
  });

  it('leaves out an exception in its own file alone', () => {
    const exception = { file: 'a.ts', text: 'a level spoon', reason: 'a spoon struck off flat' };
    const text = "const a = 'a level spoon';";
    expect(wordFaults({ file: 'a.ts', text }, [exception])).toEqual([]);
    expect(wordFaults({ file: 'b.ts', text }, [exception])).toHaveLength(1);
    expect(wordFaults({ file: 'a.ts', text: "const a = 'a level field';" }, [exception])).toHaveLength(1);
  });
});
