// Names of the engine carry units; its functions name their sources.

import { describe, expect, it } from 'vitest';
import { codeUnder } from './code.ts';
import { docFaults } from './docstrings.ts';
import { type Allowed, carriesUnit, nameFaults, numberNames } from './units-in-names.ts';

/** Pure numbers, and numbers of whatever unit they are handed. A new line needs its reason. */
const ALLOWED: Allowed = {
  low: 'an end of a band, in the unit of the band',
  likely: 'the middle of a band, in the unit of the band',
  high: 'an end of a band, in the unit of the band',
  reader: 'the edition of the reader of amounts',
  value: 'a number of the unit that stands beside it',
  least: 'the lower limit of such a number',
  most: 'the upper limit of such a number',
  band: 'the band of such a number',
  step: 'what such a number is rounded to',
  lastDigit: 'the worth of the last digit shown, in the unit shown',
  places: 'how many digits',
  rounds: 'how many rounds of feeding',
  timesTooMuch: 'how many times more than can be used',
  dryMatter: 'a fraction of wet mass, under its name in the contract',
  gasRoom: 'a fraction of the vessel, under its name in the contract',
  seed: 'starts a row of random numbers',
  stream: 'which row of random numbers of a seed',
  index: 'which draw',
  stage: 'which stage of drawing',
  point: 'which point of a grid',
  points: 'how many points of a grid',
  from: 'where a count starts',
  z: 'standard deviations from the middle',
  x: 'a pure number',
  chance: 'a probability',
  weight: 'what a draw is worth among all draws',
  lactic: 'grams per gram turned',
  acetic: 'grams per gram turned',
  butyric: 'grams per gram turned',
  ethanol: 'grams per gram turned',
  mannitol: 'grams per gram turned',
  co2: 'grams per gram turned',
  other: 'grams per gram turned',
  cost: 'money, in the coin of whoever tells the prices',
  money: 'the same, as a limit',
  savedCost: 'the same, as a difference',
  minutes: 'minutes of work',
  savedMinutes: 'the same, as a difference',
  more: 'what a limit is raised by, in the unit of the limit',
  today: 'a day of the batch, as the looks count them',
  number: 'which version of the tables',
  model: 'which version of the formulas',
};

/** Files that work on any unit alike. */
const ANY_UNIT = ['src/engine/quantity/range.ts'];

describe('the engine', () => {
  const files = codeUnder('src/engine');

  it('is found', () => {
    expect(files.length).toBeGreaterThan(5);
  });

  it('gives every number and band a name that tells its unit', () => {
    const named = files.filter(({ file }) => !ANY_UNIT.includes(file));
    expect(named.flatMap((one) => nameFaults(one, ALLOWED))).toEqual([]);
  });

  it('keeps no allowance that nothing uses', () => {
    const used = new Set(files.flatMap((one) => numberNames(one).map(({ name }) => name)));
    expect(Object.keys(ALLOWED).filter((name) => !used.has(name) || carriesUnit(name))).toEqual([]);
  });

  it('says of every exported function where it comes from', () => {
    expect(files.flatMap(docFaults)).toEqual([]);
  });
});

describe('a unit in a name', () => {
  it.each([
    'massKg',
    'volumeL',
    'nGPerL',
    'ecDsPerM',
    'bufferEqPerKgDmPerPh',
    'nPercentDm',
    'days',
    'ph',
    'targetPh',
    'kgPerM3',
  ])('is seen in %s', (name) => {
    expect(carriesUnit(name)).toBe(true);
  });
  it.each(['mass', 'weight', 'amount', 'level', 'massPer', 'sugars', 'x', 'likely'])('is missed in %s', (name) => {
    expect(carriesUnit(name)).toBe(false);
  });
});

describe('the rule on names', () => {
  const planted = `
    export function pour({ volume, canL }: { readonly volume: number; readonly canL: number }, mass: Range): void {}
    interface Bed { readonly area?: number; readonly depthMm: Range; readonly name: string; grow(rate: number): void }
    const fill = (level: number | undefined) => level;
  `;
  it('finds every planted name without a unit, and no other', () => {
    const faults = nameFaults({ file: 'planted.ts', text: planted }, {});
    expect(faults.map((one) => one.split(' ')[1]).sort()).toEqual(['area', 'level', 'mass', 'rate', 'volume']);
  });
  it('leaves out what is allowed', () => {
    expect(nameFaults({ file: 'planted.ts', text: 'function f(n: number) {}' }, { n: 'a count' })).toEqual([]);
  });
});

describe('the rule on docstrings', () => {
  it.each([
    ['no docstring', 'export function f() {}'],
    ['a docstring without a tag', '/** Pours. */\nexport function f() {}'],
    ['a tag in a plain comment', '// @arithmetic\nexport function f() {}'],
    ['a docstring of something else', '/** A limit. @memory */\nconst a = 1;\nexport function f() {}'],
    ['an arrow without a docstring', 'export const f = (a) => a;'],
  ])('finds %s', (_, text) => {
    expect(docFaults({ file: 'planted.ts', text })).toHaveLength(1);
  });
  it.each([
    ['a source', '/** Pours. @source cwmi-right-mix eq. 1 */\nexport function f() {}'],
    ['plain arithmetic', '/**\n * Pours.\n * @arithmetic\n */\nexport const f = (a) => a;'],
    ['what is not offered', 'function f() {}'],
    ['what is no function', 'export const limit = 3;'],
  ])('is content with %s', (_, text) => {
    expect(docFaults({ file: 'planted.ts', text })).toEqual([]);
  });
});
