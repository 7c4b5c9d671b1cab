import { describe, expect, it } from 'vitest';
import { answer, overfull } from './weigh-in.ts';

describe("9 kg of a neighbour's clippings, weedkiller not known", () => {
  const plants = [{ material: 'grass-clippings-fresh', massKg: 9, treated: 'unknown' }];
  const said = answer({ ...overfull, vessel: { volumeL: 60, gasRoom: 0.25 }, plants });
  const hold = said.cautions.find((caution) => caution.rule === 'weedkiller-unknown');

  it('sets them aside, out of the pail and out of the shared heap', () => {
    expect(hold?.level).toBe('hold');
    expect(hold?.text).toMatch(/set aside, out of pail and shared heap/);
  });

  it('tells the bean test: at least three pots of each kind, three to four weeks, to three true leaves', () => {
    expect(hold?.text).toMatch(/at least 3 pots of it and 3 of clean mix/);
    expect(hold?.text).toMatch(/3 to 4 weeks, to 3 true leaves/);
    expect(hold?.source).toContain('Washington State University');
  });

  it('asks the question where nobody has answered it', () => {
    const [lot] = plants.map(({ treated: _treated, ...rest }) => rest);
    const asked = answer({ ...overfull, vessel: { volumeL: 60, gasRoom: 0.25 }, plants: [lot] });
    expect(asked.cautions.find((caution) => caution.rule === 'weedkiller-not-answered')?.level).toBe('caution');
  });
});
