// The nitrogen need of a bed less what the ground gives, worked by hand.

import { describe, expect, it } from 'vitest';
import { cropOf } from '#engine/ground/crops.ts';
import { bedNeed } from '#engine/ground/need.ts';

const crop = (id: string) => {
  const found = cropOf(id);
  if (found === undefined) throw new Error(`no crop ${id}`);
  return found;
};

describe('the nitrogen need', () => {
  it('less 6.7 g/m² for 3 % organic matter, 3.4 to 13', () => {
    const need = bedNeed({ crops: [crop('kale')], areaM2: 1, soil: { organicMatterPercent: 3 } });
    const [matter] = need.credits;
    expect(matter?.nG.low).toBeCloseTo(3.36, 2);
    expect(matter?.nG.likely).toBeCloseTo(6.72, 2);
    expect(matter?.nG.high).toBeCloseTo(13.44, 2);
    expect(need.needG.n?.likely).toBeCloseTo(20 - 6.72, 6);
  });

  it('is never below 0', () => {
    const need = bedNeed({ crops: [crop('pea')], areaM2: 2, soil: { organicMatterPercent: 9, nitrateNGPerM2: 10 } });
    expect(need.needG.n).toEqual({ low: 0, likely: 0, high: 0 });
  });
});
