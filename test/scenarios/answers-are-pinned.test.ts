// A formula never changes under an old number: the answers to fixed questions are pinned with the model in
// data/versions.json. Where they move while the tables stand still, a formula changed: add a row that raises `model`.

import path from 'node:path';
import { expect, it } from 'vitest';
import { versionsIn } from '../../scripts/versions.mjs';
import { root } from '../house/code.ts';
import type { Row } from '../house/versions.ts';
import { answersDigest, figuresOf, pinnedFigures } from './answers.ts';

const rows = versionsIn(path.join(root, 'data')) as readonly Row[];

it('the answers are those of the newest row of data/versions.json', async () => {
  const figures = await pinnedFigures();
  expect(figures.length).toBeGreaterThan(1000);
  expect({ answers: rows.at(-1)?.answers }).toEqual({ answers: answersDigest(figures) });
});

it('a figure that moves beyond the pinned digits moves the digest; a sentence does not', () => {
  const digest = (value: unknown) => answersDigest(figuresOf(value));
  expect(digest({ a: 1.23457, said: 'so' })).toBe(digest({ a: 1.2345700001, said: 'or so', cautions: [{ level: 1 }] }));
  expect(digest({ a: 1.23457 })).not.toBe(digest({ a: 1.23458 }));
  expect(digest({ a: 1 })).not.toBe(digest({ b: 1 }));
});
