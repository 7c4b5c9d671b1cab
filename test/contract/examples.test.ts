// The contract's examples, from one file: through the tasks, and through the command line as text and as JSON.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { task, type Word, words } from '#tasks/index.ts';
import { root } from '../house/code.ts';
import { valuesAt } from './paths.ts';
import { tilthwright } from './process.ts';

interface Expectation {
  readonly path: string;
  /** How the expected value comes about. */
  readonly because: string;
  readonly value?: number;
  readonly values?: readonly number[];
  readonly tolerance?: number;
  readonly equals?: unknown;
  readonly contains?: readonly unknown[];
  readonly matches?: string;
  readonly present?: boolean;
  readonly atMostPath?: string;
}

interface Example {
  readonly name: string;
  readonly word: Word;
  readonly input: unknown;
  readonly expect: readonly Expectation[];
  readonly says: readonly string[];
}

const { cases } = JSON.parse(readFileSync(path.join(root, 'test/contract/examples.json'), 'utf8')) as {
  cases: readonly Example[];
};

describe('the contract', () => {
  it('has an example of every word', () => {
    expect(new Set(cases.map(({ word }) => word))).toEqual(new Set(words));
  });
});

describe.each(cases)('$name', ({ word, input, expect: expected, says }) => {
  it('holds in the tasks', async () => {
    const reply = (await task(word)).ask(input);
    if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
    for (const one of expected) check(reply.value, one);
    const stopped = reply.value.cautions.some(({ level }) => level === 'stop');
    expect(reply.workings().length > 0).toBe(!stopped || word !== 'can');
  });

  it('holds on the command line, as JSON', async () => {
    const { code, out, err } = await tilthwright([word, '--json'], JSON.stringify(input));
    expect(err).toBe('');
    expect(code).toBe(0);
    const answer: unknown = JSON.parse(out);
    for (const one of expected) check(answer, one);
  });

  it('is told in sentences on the command line', async () => {
    const { code, out, err } = await tilthwright([word], JSON.stringify(input));
    expect(err).toBe('');
    expect(code).toBe(0);
    for (const pattern of says) expect(out).toMatch(new RegExp(pattern));
    expect(out).not.toMatch(/undefined|NaN|Infinity|\[object/);
  });
});

function check(answer: unknown, one: Expectation): void {
  const found = valuesAt(answer, one.path);
  const why = `${one.path}: ${one.because}; found ${JSON.stringify(found)}`;
  if (one.present !== undefined)
    expect(
      found.some((value) => value != null),
      why,
    ).toBe(one.present);
  if (one.value !== undefined) near(found, [one.value], one.tolerance, why);
  if (one.values !== undefined) near(found, one.values, one.tolerance, why);
  if ('equals' in one) expect(found, why).toEqual([one.equals]);
  if (one.contains !== undefined) expect(found, why).toEqual(expect.arrayContaining([...one.contains]));
  if (one.matches !== undefined) expect(found.join('\n'), why).toMatch(new RegExp(one.matches, 'i'));
  if (one.atMostPath !== undefined) {
    const [ceiling] = valuesAt(answer, one.atMostPath);
    expect(found, why).toHaveLength(1);
    expect(Number(found[0]), why).toBeLessThanOrEqual(Number(ceiling));
  }
}

function near(found: readonly unknown[], wanted: readonly number[], tolerance: number | undefined, why: string): void {
  if (tolerance === undefined) throw new Error(`no tolerance is given: ${why}`);
  expect(found, why).toHaveLength(wanted.length);
  for (const [i, value] of wanted.entries()) {
    expect(found[i], why).toBeTypeOf('number');
    expect(Math.abs(Number(found[i]) - value), why).toBeLessThanOrEqual(tolerance);
  }
}
