// What must be refused: exit code 2, nothing on stdout, one line for each problem with its field and what would do.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { run } from '#cli/run.ts';
import { task, type Word } from '#tasks/index.ts';
import { root } from '../house/code.ts';
import { changed } from './paths.ts';
import { type Ended, tilthwright } from './process.ts';

interface Bad {
  readonly name: string;
  readonly word: Word;
  readonly change?: Readonly<Record<string, unknown>>;
  readonly text?: string;
  readonly fields: readonly string[];
  readonly says?: string;
}

const { good, cases } = JSON.parse(readFileSync(path.join(root, 'test/contract/bad-input.json'), 'utf8')) as {
  good: Readonly<Record<Word, unknown>>;
  cases: readonly Bad[];
};

function refused({ code, out, err }: Ended, fields: readonly string[]): void {
  const lines = err.split('\n');
  expect(out).toBe('');
  expect(lines.pop()).toBe('');
  expect(lines.map((line) => line.split(': ')[0]).sort()).toEqual([...fields].sort());
  for (const line of lines) expect(line).toMatch(/^\S+: .+; allowed: .+/);
  expect(code).toBe(2);
}

describe('the inputs that are spoilt below', () => {
  it.each(Object.keys(good) as Word[])('%s is answered while it is whole', async (word) => {
    expect((await task(word)).ask(good[word]).ok).toBe(true);
  });
});

describe.each(cases)('$name', ({ word, change, text, fields, says }) => {
  const input = text ?? JSON.stringify(changed(good[word], change ?? {}));

  it('is refused at each field by the command line', async () => {
    const ended = await tilthwright([word], input);
    refused(ended, fields);
    if (says !== undefined) expect(ended.err).toContain(says);
  });

  it('is refused in the same words where JSON is asked for', async () => {
    const here = { folder: root, stdin: Readable.from([Buffer.from(input)]) };
    const ended = await run([word, '--json'], here);
    refused(ended, fields);
    if (says !== undefined) expect(ended.err).toContain(says);
  });
});

describe('a call of the command line', () => {
  it('that asks for JSON is refused without any', async () => {
    refused(await tilthwright(['fit', '--json'], '{}'), ['vessel', 'plants', 'water']);
  });

  it.each([
    ['no word', [], ['word']],
    ['an unknown word', ['feed'], ['word']],
    ['an unknown flag and a second file', ['fit', '--loud', 'a', 'b'], ['flag', 'arguments']],
    ['a file that is not there', ['fit', 'no-such-file.json'], ['FILE']],
    ['a folder in place of a file', ['fit', 'test'], ['FILE']],
  ])('with %s is refused', async (_, args, fields) => {
    refused(await tilthwright(args), fields);
  });

  it('with an unknown word names the words there are', async () => {
    expect((await tilthwright(['feed'])).err).toContain('fit, can, water, strain, sour, heap, beds, help');
  });
});
