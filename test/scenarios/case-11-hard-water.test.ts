import { describe, expect, it } from 'vitest';
import { sourCanPh } from '#engine/scraps/water.ts';
import { water } from '#tasks/water.ts';
import { sayWater } from '#words/en/water.ts';

describe('5.2 L of water of 212 mg/L alkalinity', () => {
  const ran = water({ volumeL: 5.2, alkalinity: { value: 212, unit: 'mg/L CaCO3' }, source: 'tap' });
  if (!ran.ok) throw new Error('the water was refused');
  const said = sayWater(ran.value).join(' ').replaceAll('\u00a0', ' ');

  it('costs about 2 g of acid, to be ignored', () => {
    expect(ran.value.alkalinityMeqPerL).toBeCloseTo(4.24, 2);
    expect(Math.abs((ran.value.lacticAcidEatenG ?? 0) - 2)).toBeLessThanOrEqual(0.1);
    expect(said).toContain('costs about 2.0 g of acid: ignore it');
  });

  it('leaves a can of 1 in 200 hardly sour at all', () => {
    expect(said).toContain('Diluted 1 in 200 with this water the can is hardly sour at all');
    // Between 6.9 at 2.5 meq/L and 7.1 at 5.0 meq/L, by the same charge balance worked separately.
    const ph = sourCanPh({ alkalinityMeqPerL: 4.24, waterPh: 7.6, n: 200 });
    expect(ph).toBeGreaterThan(6.8);
    expect(ph).toBeLessThan(7.2);
  });
});
