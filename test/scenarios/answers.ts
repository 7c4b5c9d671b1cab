// A digest of what the program computes from fixed questions: the contract's examples and the season of the demo garden.
// It moves when a formula or a table moves, and with nothing else: sentences, cautions and sources are no part of it.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fold } from '#journal/fold.ts';
import { strainedFrom } from '#plot/batch/strained.ts';
import { DEMO_FIRST_DAY, DEMO_LAST_DAY, gardenEntries } from '#tasks/demo/garden.ts';
import { task, type Word } from '#tasks/index.ts';
import { liquidOf } from '#tasks/ledger-supply.ts';
import { plotLedger } from '#tasks/plot/ledger.ts';
import { useFirstDates } from '#tasks/plot/shelf.ts';
import { digestOfLines } from '../../scripts/versions.mjs';
import { root } from '../house/code.ts';

/** Figures count to so many digits: what the last bits of a processor do is no change of a formula. */
const DIGITS = 6;
/** Runs of a forecast: few, as no figure is judged here, only whether it moves. */
const DRAWS = 20;
/** What an answer says beside its figures. */
const NOT_FIGURES = ['cautions', 'unread'];

interface Example {
  readonly name: string;
  readonly word: Word;
  readonly input: object;
}

/** Every number of a value with its place, to a fixed number of digits. */
export function figuresOf(value: unknown, at = ''): readonly string[] {
  if (typeof value === 'number') return [`${at} ${value.toPrecision(DIGITS)}`];
  if (typeof value === 'boolean' || value === null) return [`${at} ${String(value)}`];
  if (typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    NOT_FIGURES.includes(key) ? [] : figuresOf(inner, `${at}.${key}`),
  );
}

/** Every figure that is pinned, one a line. */
export async function pinnedFigures(): Promise<readonly string[]> {
  const file = path.join(root, 'test/contract/examples.json');
  const { cases } = JSON.parse(readFileSync(file, 'utf8')) as { readonly cases: readonly Example[] };
  const lines: string[] = [];
  for (const { name, word, input } of cases) {
    const reply = (await task(word)).ask(word === 'sour' ? { ...input, draws: DRAWS } : input);
    if (!reply.ok) throw new Error(`${name}: ${JSON.stringify(reply.problems)}`);
    lines.push(...figuresOf(reply.value, name));
  }
  const plot = fold(gardenEntries());
  lines.push(...figuresOf(plotLedger({ plot, from: DEMO_FIRST_DAY, to: DEMO_LAST_DAY }).value, 'season'));
  for (const batch of plot.batches.values()) {
    if (batch.contents.parts.length > 0) lines.push(...figuresOf(liquidOf(strainedFrom(plot, batch)), `${batch.peg}`));
  }
  for (const bottle of plot.bottles.values()) {
    const { daysLeft, temperatureC } = useFirstDates(bottle, plot, DEMO_LAST_DAY);
    lines.push(...figuresOf({ daysLeft, temperatureC }, `bottles of ${bottle.peg}`));
  }
  return lines;
}

/** The digest of such figures. */
export function answersDigest(figures: readonly string[]): string {
  return digestOfLines(figures);
}
