// Diseased crops and weeds that spread: out of pail and cold heap, with the place they go to instead.

import { describe, expect, it } from 'vitest';
import type { SourceSlip } from '#engine/scraps/slip.ts';
import { read } from './slip.ts';

const bed: SourceSlip = { whose: 'own', from: 'garden', treated: 'no', condition: 'fresh' };

describe('what comes off a sick or weedy bed', () => {
  it.each([
    ['tomatoes with late blight', 'excluded-late-blight', 'USABlight'],
    ['cabbage roots, clubroot', 'excluded-clubroot', 'Noble and Roberts 2004'],
    ['onions with white rot', 'excluded-white-rot', 'UC Statewide'],
  ])('%s goes where the plant-health rules say, neither pail nor heap', (species, rule, source) => {
    const said = read({ ...bed, species });
    expect([said.outcome, said.goes, said.by]).toEqual(['out', 'plant-health-rules', rule]);
    expect(said.cautions[0]?.text).toMatch(/Keep it out of the heap too/);
    expect(said.cautions[0]?.source).toContain(source);
  });

  it.each(['bindweed', 'couch grass', 'ground elder', 'horsetail'])(
    '%s goes to a collection, not to the heap',
    (species) => {
      expect(read({ ...bed, species })).toMatchObject({ outcome: 'out', goes: 'garden-waste-collection' });
    },
  );

  it('says of Japanese knotweed that the law has a word in it', () => {
    expect(read({ ...bed, species: 'Japanese knotweed' }).cautions[0]?.text).toMatch(
      /In England the law .*other countries have rules of their own/,
    );
  });

  it('sends weeds in seed and dock roots to a heap that gets hot', () => {
    for (const species of ['weeds in seed', 'dock roots']) {
      expect(read({ ...bed, species }), species).toMatchObject({ outcome: 'compost-only', goes: 'hot-heap' });
    }
  });

  it('takes healthy haulm and young weeds without a word', () => {
    for (const species of ['tomato haulm, healthy', 'chickweed before it flowers']) {
      expect(read({ ...bed, species })).toMatchObject({ outcome: 'in', cautions: [] });
    }
  });
});
