// What is said before a lid comes off and after the look, from a small record.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { lookDe as german } from '#words/de/look.ts';
import { look as english } from '#words/en/look.ts';
import { kg, litres, recorder } from '../../../test/scenarios/recorder.ts';
import { afterLook, beforeLook } from './look-cautions.ts';
import { pegView } from './peg.ts';

type Look = Omit<Body<'peg.looked'>, 'batch'>;

/** A pail filled on 1 June and looked at, seen on a day of June. */
function seen(day: number, looks: readonly (readonly [day: number, look: Look])[], facts?: Body<'plot.described'>) {
  const { did } = recorder({ by: 'Rake' });
  const on = (n: number) => `2026-06-${String(n).padStart(2, '0')}`;
  const filled = did('peg.filled', on(1), {
    peg: 1,
    lid: 'loose',
    parts: [{ material: 'kale', mass: kg(2) }],
    water: [{ volume: litres(5) }],
  });
  const told = facts === undefined ? [] : [did('plot.described', on(1), facts)];
  const plot = fold([
    filled,
    ...told,
    ...looks.map(([n, look]) => did('peg.looked', on(n), { batch: filled.id, ...look })),
  ]);
  const batch = plot.batches.get(filled.id);
  if (batch === undefined) throw new Error('no batch');
  const view = pegView({ plot, batch, now: `${on(day)}T12:00` });
  const last = view.looks.at(-1);
  return {
    before: beforeLook(plot, view),
    after: last === undefined ? [] : afterLook(view, last),
  };
}
const ids = (findings: readonly { readonly rule: string }[]) => findings.map(({ rule }) => rule);
const sour: Look = { acidity: { typed: '3.9', ph: 3.9, by: 'meter' }, smell: 'sour', surface: 'clear' };
const egg: Look = { acidity: { typed: '6.9', ph: 6.9, by: 'meter' }, smell: 'egg' };

describe('before a look', () => {
  it('asks for gloves in the first three days and not after', () => {
    expect(ids(seen(2, []).before)).toEqual(['care-gloves-first-days']);
    expect(ids(seen(4, []).before)).toEqual(['care-gloves-first-days']);
    expect(ids(seen(5, []).before)).toEqual([]);
  });
  it('says nothing once it is sour', () => {
    expect(seen(3, [[2, sour]]).before).toEqual([]);
  });
  it('says to open a batch that smelt of egg outdoors, before anything else', () => {
    expect(ids(seen(9, [[8, egg]]).before)[0]).toBe('foul-closed-open-it-outdoors');
  });
  it('leaves the look to somebody else where someone pregnant or easily ill is about', () => {
    expect(ids(seen(9, [[8, sour]], { present: ['pregnant'] }).before)).toEqual(['hands-of-somebody-else']);
    expect(ids(seen(9, [[8, sour]], { present: ['children', 'dog'] }).before)).toEqual([]);
  });
});

describe('after a look', () => {
  it('speaks of what that look saw, and of nothing where it saw nothing amiss', () => {
    expect(seen(8, [[8, sour]]).after).toEqual([]);
    expect(ids(seen(8, [[8, { ...sour, surface: 'larvae' }]]).after)).toEqual(['care-larvae-cover']);
    expect(ids(seen(8, [[8, egg]]).after)).toContain('foul-closed-open-it-outdoors');
  });
});

describe('the words of a look', () => {
  const spoken = [
    ...seen(9, [[8, egg]], { present: ['pregnant', 'immune-weak'], school: true }).before,
    ...seen(2, [[2, { ...egg, surface: 'larvae' }]]).after,
    ...seen(2, []).before,
  ];
  it.each([
    ['English', english],
    ['German', german],
  ])('have a sentence for each rule, and what to do instead for each stop, in %s', (_, words) => {
    expect(new Set(ids(spoken)).size).toBeGreaterThan(5);
    for (const { rule, values, level } of spoken) {
      expect(words.cautions[rule]?.(values), rule).toMatch(/\w{3}/);
      if (level === 'stop') expect(words.instead[rule], rule).toMatch(/\w{3}/);
    }
  });
});
