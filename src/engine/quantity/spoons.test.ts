import { describe, expect, it } from 'vitest';
import { spoonsFor } from './spoons.ts';
import { UNITS } from './units.ts';

describe('45 mL in spoons', () => {
  // 45 / 14.78676 = 3.043, three spoons hold 44.36 mL: −1.42 %. 45 / 17.75816 = 2.534, 2½ hold 44.40 mL: −1.34 %.
  it('is 3 metric, 3 US (−1.4 %), 2½ UK (−1.3 %) and 2¼ Australian tablespoons', () => {
    const best = (spoon: 'metric' | 'us' | 'uk' | 'au') => spoonsFor({ volumeMl: 45, spoon })[0];
    expect(best('metric')).toEqual({ tool: 'tablespoon', count: 3, text: '3', errorPercent: 0 });
    expect(best('us')).toMatchObject({ tool: 'tablespoon', count: 3, text: '3' });
    expect(best('us')?.errorPercent).toBeCloseTo((3 * 14.78676478125) / 0.45 - 100, 9);
    expect(best('uk')).toMatchObject({ tool: 'tablespoon', count: 2.5, text: '2½' });
    expect(best('uk')?.errorPercent).toBeCloseTo((2.5 * 17.7581640625) / 0.45 - 100, 9);
    expect(best('au')).toEqual({ tool: 'tablespoon', count: 2.25, text: '2¼', errorPercent: 0 });
  });
});

describe('spoons for a dose', () => {
  it('offers none where no count comes within 5 %', () => {
    // ⅓ teaspoon is 1.67 mL, ¼ is 1.25 mL: 1.45 mL is 14 % off both.
    expect(spoonsFor({ volumeMl: 1.45, spoon: 'metric' })).toEqual([]);
    expect(spoonsFor({ volumeMl: 0.2, spoon: 'metric' })).toEqual([]);
  });

  it('offers nothing for no dose and for what is no number', () => {
    expect(spoonsFor({ volumeMl: 0, spoon: 'us' })).toEqual([]);
    expect(spoonsFor({ volumeMl: Number.NaN, spoon: 'us' })).toEqual([]);
  });

  it('leads with the teaspoon below one tablespoon', () => {
    expect(spoonsFor({ volumeMl: 5, spoon: 'metric' })[0]).toMatchObject({ tool: 'teaspoon', count: 1, text: '1' });
    expect(spoonsFor({ volumeMl: 12.5, spoon: 'metric' })[0]).toMatchObject({ tool: 'teaspoon', text: '2½' });
  });

  it('never asks for more than twelve spoons', () => {
    expect(spoonsFor({ volumeMl: 500, spoon: 'metric' })).toEqual([]);
  });

  it('rounds up to a whole spoon in its text as in its count', () => {
    expect(spoonsFor({ volumeMl: 29.5, spoon: 'metric' })[0]).toMatchObject({ count: 2, text: '2' });
  });

  it('the UK tablespoon is 1/256 of an imperial gallon, three UK teaspoons', () => {
    expect(UNITS['tbsp-uk'].factor * 256).toBeCloseTo(4.54609, 12);
    expect(UNITS['tsp-uk'].factor * 3).toBeCloseTo(UNITS['tbsp-uk'].factor, 12);
  });
});
