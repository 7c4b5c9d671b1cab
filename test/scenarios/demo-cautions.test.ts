// What a season of the demo garden is warned of, act by act, against the list kept beside this file. A line more is a
// caution somebody must have wanted; a line less is one that fell silent.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautionsOfTheDemo } from './demo-cautions.ts';

const kept = readFileSync(new URL('demo-cautions.txt', import.meta.url), 'utf8')
  .trim()
  .split('\n');

describe('the cautions of the demo garden', () => {
  it('are those of the list, act by act', () => {
    expect(cautionsOfTheDemo()).toEqual(kept);
  });
});
