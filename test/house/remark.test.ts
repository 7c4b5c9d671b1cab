// The figures shown with an act are a remark: the module that makes it and the one that compares it know it, and nothing
// else of the program reads it.

import { expect, it } from 'vitest';
import { codeUnder } from './code.ts';

const REMARK = /\bfiguresShown\b/;
const KNOW_IT: Readonly<Record<string, string>> = {
  'src/journal/bounds.ts': 'its fields',
  'src/journal/kinds/pegs.ts': 'kept with a straining',
  'src/journal/kinds/bottles.ts': 'kept with a bottling',
  'src/journal/kinds/beds.ts': 'kept with a pour',
  'src/tasks/plot/figures-shown.ts': 'made here',
  'src/tasks/plot/moved-figures.ts': 'held against today here, and nowhere else',
  'src/tasks/plot/moved-hold.ts': 'its formulas alone, to say by which rule a pour was made; no figure of it',
  'src/tasks/plot/record-names.ts': 'named, to be left out of the forms',
};
it('nothing computes from the figures shown with an act', () => {
  const found = ['src/engine', 'src/journal', 'src/store', 'src/plot', 'src/tasks', 'src/words', 'src/web', 'src/cli']
    .flatMap(codeUnder)
    .filter(({ text }) => REMARK.test(text));
  const strangers = found.filter(({ file }) => !(file in KNOW_IT));
  expect(strangers.map(({ file }) => file)).toEqual([]);
  expect(Object.keys(KNOW_IT).filter((file) => !found.some((one) => one.file === file))).toEqual([]);
});
