import { describe, expect, it } from 'vitest';
import { answer, overfull } from './weigh-in.ts';

function timesThree(factor: number) {
  return {
    plants: overfull.plants.map((lot) => ({ ...lot, massKg: lot.massKg * factor })),
    water: { ...overfull.water, volumeL: overfull.water.volumeL * factor },
    sugar: { ...overfull.sugar, massKg: overfull.sugar.massKg * factor },
  };
}

describe('the recipe scaled up to a 200 L drum', () => {
  const beds = [{ name: 'Tunnel', areaM2: 10, depthLPerM2: 2, everyDays: 14 }];
  const said = answer({ vessel: { volumeL: 200, gasRoom: 0.25 }, ...timesThree(13), beds });

  it('shows the mass to lift and says to fill it where it stands', () => {
    // 13 × (2.4 + 0.8 + 0.3 + 7.0 + 0.25) kg = 139.75 kg.
    expect(said.fill.massKg).toBeCloseTo(139.75, 6);
    const heavy = said.cautions.find((c) => c.rule === 'fill-it-where-it-stands');
    expect(heavy?.text).toContain('Fill it where it stands');
  });

  it('flags a batch many times what a 10 m² bed can use before it ages', () => {
    const flag = said.cautions.find((c) => c.rule === 'more-than-the-beds-use');
    expect(flag?.text).toContain('smaller batch');
    expect(said.use?.timesTooMuch).toBeGreaterThan(10);
  });

  it('stays silent where the beds can use it', () => {
    const many = [{ areaM2: 1000, depthLPerM2: 2, everyDays: 14 }];
    const fine = answer({ vessel: { volumeL: 30, gasRoom: 0.25 }, ...timesThree(1), beds: many });
    expect(fine.cautions.some((c) => c.rule === 'more-than-the-beds-use')).toBe(false);
  });
});

describe('the recipe in a 30 L drum, twice over', () => {
  it('weighs more than 15 kg and says so', () => {
    const said = answer({ vessel: { volumeL: 30, gasRoom: 0.25 }, ...timesThree(2) });
    expect(said.fill.massKg).toBeCloseTo(21.5, 6);
    expect(said.cautions.some((c) => c.rule === 'fill-it-where-it-stands')).toBe(true);
  });
});
