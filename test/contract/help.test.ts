// Help: the page, the fields and the schema of each word, the lists of names, and the workings of an answer.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { words } from '#tasks/index.ts';
import { materialList } from '#tasks/lists.ts';
import { root } from '../house/code.ts';
import { tilthwright } from './process.ts';

/** Fields that the contract names for each word; the schema must have them. */
const CONTRACT_FIELDS = {
  fit: ['vessel', 'plants', 'water', 'sugar', 'targetPh', 'beds'],
  can: ['batch', 'ratio', 'aim', 'canL', 'areaM2', 'depthLPerM2', 'spoon', 'water'],
  water: ['volumeL', 'freeChlorineMgPerL', 'chloramineMgPerL', 'alkalinity', 'use'],
  strain: ['plants', 'water', 'sugar', 'days', 'temperatureC', 'finalPh', 'drainedL', 'solidsKg'],
  sour: ['vessel', 'plants', 'water', 'sugar', 'targetPh', 'beds', 'temperatureC', 'days', 'lid', 'looks'],
  heap: ['ingredients', 'target'],
  beds: ['beds', 'acts', 'from', 'to'],
} as const;

describe('help', () => {
  it('lists every word', async () => {
    const { code, out } = await tilthwright(['help']);
    expect(code).toBe(0);
    for (const word of words) expect(out).toMatch(new RegExp(`^  ${word} `, 'm'));
  });

  it.each(words)('prints the fields and the schema of %s', async (word) => {
    const [text, json] = await Promise.all([tilthwright(['help', word]), tilthwright(['help', word, '--json'])]);
    expect([text.code, json.code]).toEqual([0, 0]);
    const schema = JSON.parse(json.out) as { $schema: string; type: string; properties: Record<string, unknown> };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.type).toBe('object');
    expect(Object.keys(schema.properties)).toEqual(expect.arrayContaining([...CONTRACT_FIELDS[word]]));
    for (const field of CONTRACT_FIELDS[word]) expect(text.out).toMatch(new RegExp(`^  ${field}\\??  \\S`, 'm'));
  });

  it('lists every material with its name and where it may go', async () => {
    const { code, out } = await tilthwright(['help', 'materials']);
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines).toHaveLength(materialList().length);
    for (const line of lines)
      expect(line).toMatch(/^[a-z0-9-]+ {2,}\S.* {2,}(liquid feed or compost|compost alone|set aside|out)/);
  });
});

describe('an answer', () => {
  it('shows how its figures came about when asked why', async () => {
    const { cases } = JSON.parse(readFileSync(path.join(root, 'test/contract/examples.json'), 'utf8')) as {
      cases: readonly { word: string; input: unknown }[];
    };
    const input = JSON.stringify(cases.find(({ word }) => word === 'fit')?.input);
    const [text, json] = await Promise.all([
      tilthwright(['fit', '--why'], input),
      tilthwright(['fit', '--why', '--json'], input),
    ]);
    const { workings } = JSON.parse(json.out) as { workings: readonly { figure: string; formula: string }[] };
    expect(workings.map(({ figure }) => figure)).toContain('fill.volumeL');
    for (const { figure, formula } of workings) {
      expect(text.out).toContain(`(${figure})`);
      expect(text.out).toContain(formula);
    }
  });

  it('is read from a named file as from standard input', async () => {
    const file = await tilthwright(['fit', 'test/contract/one-pail.json', '--json']);
    const piped = await tilthwright(
      ['fit', '-', '--json'],
      readFileSync(path.join(root, 'test/contract/one-pail.json'), 'utf8'),
    );
    expect(file.code).toBe(0);
    expect(file.out).toBe(piped.out);
  });
});
