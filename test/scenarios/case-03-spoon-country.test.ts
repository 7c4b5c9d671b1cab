import { describe, expect, it } from 'vitest';
import { parseAmount } from '#engine/quantity/parse.ts';
import { sayAmountProblem } from '#words/quantity.ts';

describe('"6 tablespoons" while no spoon has been chosen', () => {
  const read = parseAmount('6 tablespoons', { dimension: 'volume' });

  it('is not read as any number', () => {
    expect(read.ok).toBe(false);
    expect('value' in read).toBe(false);
  });

  it('asks which of 14.8, 15, 17.8 and 20 mL, each by country', () => {
    if (read.ok) throw new Error('a spoon was assumed');
    const { message, allowed } = sayAmountProblem(read);
    expect(message).toContain('tablespoons');
    for (const choice of ['US (14.8', 'metric (15', 'UK (17.8', 'Australian (20']) expect(allowed).toContain(choice);
  });

  it('is read once one is chosen, with the country beside it', () => {
    const chosen = parseAmount('6 tablespoons', { dimension: 'volume', spoon: 'uk' });
    if (!chosen.ok) throw new Error(chosen.problem.message);
    // 6 / 256 of an imperial gallon of 4.54609 L
    expect(chosen.value).toBeCloseTo((6 * 4.54609) / 256, 12);
    expect(chosen.reading).toBe('6 UK tbsp');
    expect(chosen.asTyped).toBe('6 tablespoons');
  });
});
