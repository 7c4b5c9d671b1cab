import { describe, expect, it } from 'vitest';
import { sayFit } from '#words/en/fit.ts';
import { answer, overfull } from './weigh-in.ts';

describe('the same amounts in a 60 L barrel', () => {
  const said = answer({ vessel: { volumeL: 60, gasRoom: 0.25 }, ...overfull });

  it('says how empty it is', () => {
    // 10.6 L of 45 L usable is 24 %.
    expect(said.fill.usedPercent).toBeGreaterThan(22);
    expect(said.fill.usedPercent).toBeLessThan(25);
    expect(sayFit(said)[0]).toContain('24');
  });

  it('offers to make more or to use a smaller vessel', () => {
    expect(said.cures.map((cure) => cure.kind)).toEqual(['more', 'vessel']);
    expect(said.cures[0]?.factor).toBeGreaterThan(4);
    expect(said.cures[1]?.volumeL).toBeLessThan(15);
  });
});
