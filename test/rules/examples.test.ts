// Every rule of the engine from both sides: it speaks in its example, and keeps silent just beside it.

import { describe, expect, it } from 'vitest';
import { allRules } from '#engine/rules/index.ts';
import { ALWAYS } from './example.ts';
import { examples } from './examples.ts';

describe('the rules of the engine', () => {
  it('have one example each', () => {
    const ids = [...new Set(allRules.map(({ id }) => id))];
    expect(examples.map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
  });

  it.each(examples)('let $id speak in its situation', ({ speaks }) => {
    expect(speaks).not.toBe(false);
  });

  it.each(examples.filter(({ silent }) => silent !== ALWAYS))('keep $id silent beside it', ({ silent }) => {
    expect(silent).toBe(false);
  });

  it('speak each time they are asked in two places alone: what the tag says, and how to tip', () => {
    const always = examples.filter(({ silent }) => silent === ALWAYS).map(({ id }) => id);
    expect(always.toSorted()).toEqual(['strained-tag-not-a-drink', 'tip-under-dry-leaves']);
    const askedOfNothing = allRules
      .filter(({ id }) => always.includes(id))
      .map(({ when }) => when({ volumeL: Number.NaN } as never));
    expect(askedOfNothing).toEqual([{}, {}]);
  });
});
