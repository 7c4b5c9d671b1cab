// docs/rules.md from the rules: each with what it looks at, what it says in its example, what may be done in its
// place, its source and the tests that name it; then the safety values (values/report.ts). Text only; nothing is judged here.

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { allRules, ruleGroups } from '#engine/rules/index.ts';
import type { Level, Place, Rule, Values } from '#engine/rules/rule.ts';
import { citation } from '#engine/tables/index.ts';
import { codeUnder, filesUnder, root, type SourceFile } from '../house/code.ts';
import { valuesPart } from '../values/report.ts';
import { exampleFiles, examples } from './examples.ts';

const LEVELS: readonly Level[] = ['stop', 'hold', 'caution', 'note'];
const PLACES: Readonly<Record<Place, string>> = { us: 'United States', gb: 'Great Britain', eu: 'European Union' };

type Say = (values: Values) => string;

const wordFiles = codeUnder('src/words/en').map(({ file }) => pathToFileURL(join(root, file)).href);
const words: readonly Readonly<Record<string, unknown>>[] = await Promise.all(wordFiles.map((file) => import(file)));

/** The records of words whose name ends so, as one: each place of the rules has its own, and no two hold one id. */
function recordsCalled(ends: RegExp): Readonly<Record<string, unknown>> {
  const all: Record<string, unknown> = {};
  for (const [name, record] of words.flatMap((one) => Object.entries(one))) {
    if (!ends.test(name) || typeof record !== 'object' || record === null) continue;
    for (const [id, value] of Object.entries(record)) {
      if (id in all && all[id] !== value) throw new Error(`two texts for ${id}, one of them in ${name}`);
      all[id] = value;
    }
  }
  return all;
}

const sentences = recordsCalled(/cautions$/i) as Readonly<Record<string, Say>>;
/** What may be done in place of what each stop stops. */
export const instead = recordsCalled(/instead$/i) as Readonly<Record<string, string>>;

/** Every test file that may name a rule: those of the house, which read all rules alike, apart. */
export function testFiles(): readonly SourceFile[] {
  return filesUnder(['src', 'test'], /\.ts$/).filter(
    ({ file }) => /\.test\.ts$/.test(file) || (file.startsWith('test/') && !file.startsWith('test/house/')),
  );
}

/** The files that try a rule: where its example stands, and wherever its id is spelled out, alone or after its level. */
export function naming(id: string, files: readonly SourceFile[]): readonly string[] {
  const spelled = new RegExp(`['"\`](?:(?:stop|hold|caution|note) )?${id}['"\`]`);
  const examplesIn = exampleFiles.filter((one) => one.examples.some((example) => example.id === id));
  const named = files.filter(({ text }) => spelled.test(text));
  return [...new Set([...examplesIn, ...named].map(({ file }) => file))].toSorted();
}

/** What a rule says in its example. */
function said(id: string): string {
  const example = examples.find((one) => one.id === id);
  const say = sentences[id];
  if (!example?.speaks) throw new Error(`rule ${id} has no example in test/rules that makes it speak`);
  if (say === undefined) throw new Error(`rule ${id} has no sentence`);
  return say(example.speaks);
}

function speaksFor({ speaksFor: places }: Rule<never>): string {
  if (places === 'general') return 'general';
  return `${places.map((place) => PLACES[place]).join(', ')}; a yardstick elsewhere, local codes first`;
}

function overriding(rule: Rule<never>): string | undefined {
  if (rule.level !== 'stop') return undefined;
  return rule.override === 'none' ? 'none' : 'only with a recorded reason';
}

function entry(rule: Rule<never>, files: readonly SourceFile[]): string {
  const alternative = instead[rule.id];
  const override = overriding(rule);
  return [
    `### ${rule.id}`,
    '',
    `- Level: ${rule.level}`,
    `- Looks at: ${rule.looksAt}`,
    `- Says, for example: ${said(rule.id)}`,
    ...(alternative === undefined ? [] : [`- Instead: ${alternative}`]),
    ...(override === undefined ? [] : [`- Override: ${override}`]),
    `- Source: ${citation(rule.source)}${rule.locator === undefined ? '' : ` (${rule.locator})`}`,
    `- Speaks for: ${speaksFor(rule)}`,
    `- Named by: ${naming(rule.id, files).join(', ')}`,
    '',
  ].join('\n');
}

/** One arm of each rule. */
function oneOfEach(rules: readonly Rule<never>[]): readonly Rule<never>[] {
  return rules.filter(({ id }, at) => rules.findIndex((other) => other.id === id) === at);
}

/** The whole page. */
export function rulesPage(files: readonly SourceFile[] = testFiles()): string {
  const each = oneOfEach(allRules);
  const counts = LEVELS.map((level) => `| ${level} | ${each.filter((rule) => rule.level === level).length} |`);
  const none = each.filter(({ override }) => override === 'none').length;
  return [
    '# Rules',
    '',
    'Written by `node --import tsx scripts/rules.ts` from the rules of `src/engine/rules`, their sentences in `src/words/en`',
    'and their examples in `test/rules`. Do not edit it by hand.',
    '',
    'A **stop** is not to be done, a **hold** not yet, a **caution** is done with care, a **note** is worth knowing. What is',
    'not known makes a rule speak. The figures in the sentences are those of the example.',
    '',
    '| level | rules |',
    '|---|---|',
    ...counts,
    '',
    `Of the stops, ${none} give way to nothing; the others are matters of judgement, and give way to a recorded reason alone.`,
    '',
    ...ruleGroups.flatMap(({ place, rules }) => [
      `## ${place}`,
      '',
      ...oneOfEach(rules).map((rule) => entry(rule, files)),
    ]),
    ...valuesPart(),
  ]
    .join('\n')
    .replace(/\n+$/, '\n');
}
