// A full bottle with sugar left in it: what it could come to, and what to do instead.

import { describe, expect, it } from 'vitest';
import { strain } from '#tasks/strain.ts';
import { sayStrain } from '#words/en/strain.ts';

const strained = (bottle: object) => {
  const answer = strain({
    plants: [{ massKg: 3, dryMatter: 0.15 }],
    water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
    days: 10,
    temperatureC: 20,
    finalPh: 3.8,
    drainedL: 6,
    solidsKg: 2.5,
    bottle: { volumeL: 1, filledL: 0.95, sugarLeftGPerL: 10, temperatureC: 20, ...bottle },
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
};
const stops = (bottle: object) => strained(bottle).cautions.filter((caution) => caution.level === 'stop');

describe('case 22, 0.95 L in a 1 L bottle with 10 g/L of sugar left', () => {
  it('could come to 2.7 atm when yeast turns all of it', () => {
    // 2 × 9.5/180.16 mol / (0.05/24.06 + 0.0390 × 0.95) = 0.1055 / 0.0391
    const value = strained({ cap: 'vent', material: 'plastic' });
    expect(value.pressure?.upToAtm).toBeCloseTo(2.7, 1);
    expect(sayStrain(value).join(' ')).toMatch(/up to 2\.7.atm/);
  });

  it('never goes into glass', () => {
    for (const cap of ['vent', 'screw', 'loose']) {
      expect(stops({ cap, material: 'glass' }).map((caution) => caution.rule)).toContain('bottle-of-glass');
    }
  });

  it('never gets a screw cap turned down; a venting cap or three quiet days in the pail instead', () => {
    const [stop] = stops({ cap: 'screw', material: 'plastic' });
    expect(stop?.rule).toBe('bottle-cap-turned-down');
    expect(stop?.text).toMatch(/venting cap/);
    expect(stop?.text).toMatch(/in the pail under a loose lid until gas has stopped for 3 days/);
    expect(stop?.text).toMatch(/up to 2\.7.atm/);
    expect(stop?.source).toBe('our caution, no source');
  });

  it('may stand in plastic with a venting cap', () => {
    expect(stops({ cap: 'vent', material: 'plastic' })).toEqual([]);
  });

  it('counts sugar that nobody knows as too much, and names no pressure', () => {
    const value = strained({ cap: 'screw', material: 'plastic', sugarLeftGPerL: undefined });
    expect(value.pressure?.upToAtm).toBeNull();
    expect(
      value.cautions
        .filter((caution) => caution.level === 'stop')
        .map((caution) => caution.text)
        .join(),
    ).toMatch(/not known, so it counts as too much/);
  });
});
