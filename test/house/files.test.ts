// Every file of ours is short, says what it is, exports by name, and leaves nothing switched off.

import { describe, expect, it } from 'vitest';
import { codeUnder, filesUnder } from './code.ts';
import { exportFaults, headFaults, lengthFaults, MOST_LINES, switchFaults } from './files.ts';

const GENERATED = 'src/engine/tables/generated.ts';
const written = filesUnder(['src', 'test', 'bench', 'scripts'], /\.(ts|tsx|mjs|css)$/).filter(
  ({ file }) => file !== GENERATED,
);
const TEST = /\.(test|spec)\.tsx?$/;
const scripts = written.filter(({ file }) => !file.endsWith('.css'));

describe('the files', () => {
  it('are found', () => {
    expect(written.length).toBeGreaterThan(30);
  });

  it(`have at most ${MOST_LINES} lines`, () => {
    expect(written.flatMap(lengthFaults)).toEqual([]);
  });

  it('open by saying what they are, tests apart: theirs is the name of what they test', () => {
    expect(scripts.filter(({ file }) => !TEST.test(file)).flatMap(headFaults)).toEqual([]);
  });

  it('export nothing by default', () => {
    expect(codeUnder('src').flatMap(exportFaults)).toEqual([]);
  });

  it('hold no test that is switched off or alone', () => {
    const tests = scripts.filter(({ file }) => TEST.test(file));
    expect(tests.length).toBeGreaterThan(5);
    expect(tests.flatMap(switchFaults)).toEqual([]);
  });
});

describe('the rules on files', () => {
  const planted = (text: string) => ({ file: 'planted.ts', text });

  it('find a file of one line too many', () => {
    expect(lengthFaults(planted('a\n'.repeat(MOST_LINES)))).toEqual([]);
    expect(lengthFaults(planted('a\n'.repeat(MOST_LINES + 1)))).toHaveLength(1);
  });

  it.each(['export default 1;', 'const a = 1;\nexport { a as default };', 'export default function f() {}'])(
    'find a default export in %j',
    (text) => {
      expect(exportFaults(planted(text))).toHaveLength(1);
    },
  );

  it('are content with an export by name', () => {
    expect(exportFaults(planted('export const a = 1; export { b } from "./b.ts";'))).toEqual([]);
  });

  it.each([
    'it.skip("a", f)',
    'describe.only("a", f)',
    'test.fixme("a", f)',
    'it.skip.each([])("a", f)',
    'it.todo("a")',
  ])('find the switch in %s', (text) => {
    expect(switchFaults(planted(text))).toHaveLength(1);
  });

  it('let a case be meant to fail only among the known faults, and under its number', () => {
    const known = (text: string) => switchFaults({ file: 'test/seasons/faults/planted.test.ts', text });
    expect(known('it.fails("F3: one pail", f);')).toEqual([]);
    expect(known('it.fails("one pail", f);')).toHaveLength(1);
    expect(known('it.skip("F3: one pail", f);')).toHaveLength(1);
    expect(switchFaults(planted('it.fails("F3: one pail", f);'))).toHaveLength(1);
  });

  it('are content with tests that run', () => {
    expect(switchFaults(planted('it.each([1])("a", f); test("b", f); list.skip(3);'))).toEqual([]);
  });

  it('find a file that does not say what it is', () => {
    expect(headFaults(planted('import a from "a";\n// late\n'))).toHaveLength(1);
    expect(headFaults(planted('// @ts-check\n// What it is.\n'))).toEqual([]);
  });
});
