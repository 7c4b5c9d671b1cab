import { describe, expect, it } from 'vitest';
import { parseAmount } from '#engine/quantity/parse.ts';
import { parseRatio, ratioVolumes } from '#engine/quantity/ratio.ts';
import { sayAmountProblem } from '#words/quantity.ts';

describe('a can of "2 gal" at 1 to 40', () => {
  it('asks once whose gallon, each with what it holds', () => {
    const read = parseAmount('2 gal', { dimension: 'volume' });
    if (read.ok) throw new Error('a gallon was assumed');
    const { allowed } = sayAmountProblem(read);
    expect(allowed.replaceAll('\u00a0', ' ')).toBe('which gallon: US (3785 mL) or imperial (4546 mL)');
  });

  // 1 to 40 is 1/41 of the can: 9.09218 L / 41 = 221.8 mL; 7.570823568 L / 41 = 184.7 mL.
  it('takes 222 mL if the gallon is imperial and 185 mL if it is US', () => {
    const ratio = parseRatio('1 to 40');
    if (!ratio.ok || !ratio.clear) throw new Error('1 to 40 is clear');
    const concentrate = (gallon: 'us' | 'imperial') => {
      const can = parseAmount('2 gal', { dimension: 'volume', gallon });
      if (!can.ok) throw new Error(can.problem.message);
      return Math.round(ratioVolumes({ ratio: ratio.ratio, mixtureL: can.value }).concentrateMl);
    };
    expect(concentrate('imperial')).toBe(222);
    expect(concentrate('us')).toBe(185);
  });
});
