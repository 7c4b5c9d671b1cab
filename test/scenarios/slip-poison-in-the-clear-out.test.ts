// Clearing out a border: poisonous plants among it are named by the grower and stay out, each by its own source.

import { describe, expect, it } from 'vitest';
import type { SlipOutcome, SourceSlip } from '#engine/scraps/slip.ts';
import { read } from './slip.ts';

const border: SourceSlip = { whose: 'own', from: 'garden', treated: 'no', condition: 'fresh' };

describe('a border cleared out', () => {
  it.each([
    ['asters and foxgloves', 'out', 'excluded-foxglove', 'Youngken and Karas 1964'],
    ['oleander prunings', 'out', 'excluded-oleander', 'Blue Ridge Poison Center'],
    ['hedge of yew', 'out', 'excluded-yew', 'Botanical Garden of Naples'],
    ['hemlock by the ditch', 'out', 'excluded-poison-hemlock', 'Washington State Noxious Weed Control Board'],
    ['giant hogweed stems', 'out', 'excluded-giant-hogweed', 'Kitsap County'],
    ['rhubarb leaves', 'compost-only', 'excluded-rhubarb-leaf', 'our caution'],
    ['walnut leaves', 'compost-only', 'excluded-walnut', 'Funt and Martin'],
  ] satisfies readonly [string, SlipOutcome, string, string][])('with %s', (species, outcome, rule, source) => {
    const said = read({ ...border, species });
    expect(said.outcome).toBe(outcome);
    const caution = said.cautions.find((one) => one.rule === rule);
    expect(caution?.level).toBe('stop');
    expect(caution?.source).toContain(source);
  });

  it('goes in where the plants are named and none of them stays out', () => {
    expect(read({ ...border, species: 'asters, phlox and grass' })).toMatchObject({ outcome: 'in', cautions: [] });
  });

  it('goes to a hot heap where nobody has named the plants', () => {
    expect(read(border)).toMatchObject({ outcome: 'compost-only', goes: 'hot-heap', by: 'slip-plant-not-named' });
  });

  it('is not cleared of poison by saying that its weedkiller test came out clear', () => {
    expect(read({ ...border, species: 'monkshood', treated: 'no' }).outcome).toBe('out');
  });
});
