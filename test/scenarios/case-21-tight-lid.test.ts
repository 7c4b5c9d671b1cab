// A lid shut tight without a vent: the fill cannot be finished, and the grower sees why in kilograms.

import { describe, expect, it } from 'vitest';
import { fit as weighIn } from '#tasks/fit.ts';
import { strain } from '#tasks/strain.ts';

/** A 12 L pail with 9 L in it: 6 L of water and 3 kg of settled plants. */
const pail = (lid: string) => ({
  vessel: { volumeL: 12, gasRoom: 0.25, lid },
  plants: [{ massKg: 3, dryMatter: 0.15, sugarsGPerKgDm: 100 }],
  water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
});

/** Kilograms of push that a sentence names. */
const kilograms = (text: string) => Number(/pushes with (\d+).kg/.exec(text)?.[1]);

describe('case 21, lid "tight, no vent"', () => {
  it('stops the fill and says how hard 4 g of sugar would push on a 20 cm lid', () => {
    const answer = weighIn(pail('tight'));
    const stop = answer.ok && answer.value.cautions.find((caution) => caution.rule === 'lid-tight-no-vent');
    expect(stop).toMatchObject({ level: 'stop' });
    const text = stop ? stop.text : '';
    expect(text).toMatch(/cannot be finished/);
    expect(text).toMatch(/4.g of sugar turned by yeast/);
    expect(text).toMatch(/20.cm lid/);
    // 0.0444 mol / (3/24.06 + 0.0390 × 9) = 0.0934 atm on 314 cm² at 1.033 kgf/cm² = 30 kgf; "about 32" with sugar to ± 10 %
    expect(kilograms(text)).toBeGreaterThanOrEqual(28);
    expect(kilograms(text)).toBeLessThanOrEqual(36);
  });

  it('says nothing of the kind for a loose lid or one with a vent', () => {
    for (const lid of ['loose', 'vent']) {
      const answer = weighIn(pail(lid));
      expect(answer.ok && answer.value.cautions.map((caution) => caution.rule)).not.toContain('lid-tight-no-vent');
    }
  });

  it('stops at straining too, where the vessel is an example 12 L pail', () => {
    const answer = strain({
      plants: [{ massKg: 3, dryMatter: 0.15 }],
      water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
      days: 10,
      temperatureC: 20,
      finalPh: 3.8,
      drainedL: 6,
      solidsKg: 2.5,
      vesselLid: 'tight',
    });
    const stop = answer.ok && answer.value.cautions.find((caution) => caution.rule === 'lid-tight-no-vent');
    expect(stop).toMatchObject({ level: 'stop' });
    expect(stop ? stop.text : '').toMatch(/For example, in a 12.L vessel with 9.L/);
    expect(kilograms(stop ? stop.text : '')).toBeGreaterThanOrEqual(28);
  });
});
