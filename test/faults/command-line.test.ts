// The short run of the hostile inputs, and that what is counted would be seen: a planted fault of each kind is.

import { describe, expect, it } from 'vitest';
import { type Reply, type Task, task, words } from '#tasks/index.ts';
import { run } from '../../scripts/faults/command-line.ts';
import { attack } from './hostile/attack.ts';
import { makerOf } from './hostile/input.ts';
import { counting } from './hostile/reads.ts';

describe('hostile inputs on the command line', () => {
  it('never throw, never give a figure that is none, never a refusal without field, value and allowed range', async () => {
    const { failed, lines, aside } = await run({ scale: 0.004 });
    expect(failed, [...lines, ...(aside ?? [])].join('\n')).toBe(0);
    for (const word of words)
      expect(lines.join('\n')).toMatch(new RegExp(`^${word}(, with few draws)?: 400 inputs`, 'm'));
  });

  it.each(words)('of %s are the same at every run, and differ from each other', async (word) => {
    const asked = await task(word);
    const texts = () => {
      const maker = makerOf(word, asked);
      return Array.from({ length: 200 }, (_, i) => maker.text(i));
    };
    const first = texts();
    expect(texts()).toEqual(first);
    expect(new Set(first).size).toBeGreaterThan(180);
  });
});

describe('a planted fault', () => {
  const tried = async (ask: Task['ask']) => {
    const { faults } = await attack({
      word: 'can',
      from: 0,
      to: 60,
      quick: true,
      planted: ({ schema }) => ({ schema, ask }),
    });
    return [...new Set(faults.map(({ kind }) => kind))];
  };
  const answer = (value: object): Reply => ({
    ok: true,
    value: { cautions: [], ...value },
    sentences: () => ['Pour it.'],
    workings: () => [],
  });
  const refusal = (message: string, allowed: string): Reply => ({
    ok: false,
    problems: [{ field: 'canL', value: 3, message, allowed }],
  });

  it.each([
    ['throws', 'throws', () => Object.keys(JSON.parse('null'))],
    ['a figure that is none', 'figure', () => answer({ canL: Number.POSITIVE_INFINITY })],
    ['a band out of order', 'figure', () => answer({ low: 2, likely: 1, high: 3 })],
    ['a refusal that allows nothing', 'message', () => refusal('is too small', '')],
    ['a refusal in the words of a library', 'message', () => refusal('Invalid input', 'see help for this word')],
    ['a hole in a sentence', 'written', () => ({ ...answer({}), sentences: () => ['Pour undefined L.'] })],
  ] as const)('is seen: %s', async (_, kind, ask) => {
    expect(await tried(ask as Task['ask'])).toContain(kind);
  });

  it('is seen: an input that is read over and over', async () => {
    const overAndOver = (input: unknown): Reply => {
      for (let i = 0; i < 2000; i++) JSON.stringify(input);
      return refusal('is too small', '0.1 to 1000 L');
    };
    expect(await tried(overAndOver)).toContain('work');
  });
});

describe('looks into an input', () => {
  const look = (fields: number, times: number) => {
    const input = Object.fromEntries(Array.from({ length: fields }, (_, i) => [`k${i}`, i]));
    const counted = counting(input, { _zod: { def: { type: 'any' } } } as never);
    for (let i = 0; i < times; i++) Object.entries(counted.input as object);
    return counted.readsForEach;
  };
  it('grow with how often the whole of it is read', () => {
    expect(look(1000, 4)).toBeCloseTo(2 * look(1000, 2), 6);
  });

  it('do not change what a word answers', async () => {
    const asked = await task('can');
    const input = { ratio: { n: 200, reading: 'in' }, canL: 9, odd: [1, { a: 2 }] };
    const counted = counting(input, asked.schema);
    const reply = asked.ask(counted.input);
    expect(JSON.stringify(reply)).toBe(JSON.stringify(asked.ask(input)));
    expect(counted.readsForEach).toBeGreaterThan(0);
  });
});
