// Every sentence of the cover, over random plots: it names a bed, a material and an amount where it tells one to do or to
// buy something, and speaks as a grower does, never as a solver.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planCover } from '#engine/ground/cover/plan.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import * as cover from '#words/en/cover.ts';
import { coverSheet } from '#words/en/cover-sheet.ts';
import * as ways from '#words/en/scrap-ways.ts';
import { anyCover } from '../programme/covers.ts';

const SEED = 20261126;
const KEPT_OFF =
  /\b(duals?|constraints?|constrained|objectives?|optim\w*|shadow\w*|feasib\w*|infeasib\w*|slack|variables?)\b/i;
const solve = await loadSolver();

describe(`sentences of the cover (seed ${SEED})`, () => {
  it('hold no word of a solver, and name bed, material and amount where something is to be done', () => {
    let done = 0;
    let held = 0;
    fc.assert(
      fc.property(anyCover, (input) => {
        const answer = planCover(input, solve);
        // Grams of 1e-323 are beyond the solver: it says so, and the sheet has a sentence for it.
        fc.pre(answer.ok);
        const { plan } = answer;
        const { uses, buys, binds, open, notKnown } = plan;
        const acts = [...cover.sayUses(uses), ...cover.sayBuys(buys, uses)];
        for (const sentence of acts) {
          expect(sentence).toMatch(/bed [AB]/);
          expect(sentence).toMatch(/source [rst]/);
          expect(sentence).toMatch(/\d/);
        }
        const short = cover.sayShort(open);
        for (const sentence of short)
          expect(sentence).toMatch(/bed [AB] stays .*\d.* short\. That cannot be closed without/);
        // A gap that would be written as 0.0 g is not said.
        const said = open.filter(({ leftG }) => leftG >= 0.05);
        expect(short).toHaveLength(new Set(said.map(({ bed }) => bed)).size);
        done += acts.length;
        held += binds.length;
        for (const sentence of [...cover.sayCover(plan), ...short, ...cover.sayNotKnown(notKnown)])
          expect(sentence).not.toMatch(KEPT_OFF);
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
    expect(done).toBeGreaterThan(100);
    expect(held).toBeGreaterThan(50);
  });

  it('nor do the fixed texts of the sheet and of the ways', () => {
    const texts = JSON.stringify([coverSheet, cover.nutrientNames, cover.noCover, Object.keys(ways)]);
    expect(texts.length).toBeGreaterThan(1000);
    expect(texts).not.toMatch(KEPT_OFF);
  });
});
