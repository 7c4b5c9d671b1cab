// Laws of amounts that hold for every input: what is written reads back, what is typed is kept, and no text
// whatever is read as a number without saying so.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asWritten, formatAmount, formatIn, type Manner } from '#engine/quantity/format.ts';
import { BELIEVED, parseAmount } from '#engine/quantity/parse.ts';
import { concentrateFraction, parseRatio } from '#engine/quantity/ratio.ts';
import { SPOON_TOLERANCE_PERCENT, spoonsFor } from '#engine/quantity/spoons.ts';
import { SPOON_COUNTRIES, UNITS, type UnitId } from '#engine/quantity/units.ts';

const run = { seed: 20261125, numRuns: 500 };
console.info(`property/quantity: fast-check seed ${run.seed}`);

const manner = fc.constantFrom<Manner>('metric', 'us', 'imperial');
const dimension = fc.constantFrom('mass' as const, 'volume' as const, 'area' as const, 'temperature' as const);
/** Sizes from a pinch to the most that is believed, spread evenly over their decades. */
const size = (most: number) => fc.double({ min: -4, max: Math.log10(most), noNaN: true }).map((power) => 10 ** power);

describe('parse(format(x))', () => {
  it('equals x within the last digit shown, in every manner', () => {
    fc.assert(
      fc.property(dimension, manner, size(900), (what, how, drawn) => {
        const value = what === 'temperature' ? Math.min(drawn, 59) - 5 : Math.max(drawn, what === 'area' ? 0.02 : 2e-4);
        const written = formatAmount({ value, dimension: what }, how);
        const read = parseAmount(written.text, { dimension: what });
        expect(read.ok).toBe(true);
        if (read.ok) expect(Math.abs(read.value - value)).toBeLessThanOrEqual(written.lastDigit * 0.5 * (1 + 1e-9));
      }),
      run,
    );
  });

  it('equals x within the last digit shown, in every unit', () => {
    const ids = Object.keys(UNITS) as UnitId[];
    fc.assert(
      fc.property(fc.constantFrom(...ids), size(900), (id, count) => {
        const { dimension: what, factor } = UNITS[id];
        const value = count * factor;
        fc.pre(value >= BELIEVED[what].least * 2 && value <= BELIEVED[what].most * 0.99);
        const written = formatIn(value, id);
        const read = parseAmount(written.text, { dimension: what });
        expect(read.ok).toBe(true);
        if (read.ok) expect(Math.abs(read.value - value)).toBeLessThanOrEqual(written.lastDigit * 0.5 * (1 + 1e-9));
      }),
      run,
    );
  });

  it('is exact for what a grower typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom('g', 'kg', 'lb', 'oz'), (hundredths, unit) => {
        const typed = `${hundredths / 100} ${unit}`;
        const read = parseAmount(typed, { dimension: 'mass' });
        if (!read.ok) throw new Error(`${typed}: ${read.problem.message}`);
        const again = parseAmount(asWritten({ ...read, dimension: 'mass' }, 'metric'), { dimension: 'mass' });
        expect(again).toEqual(read);
      }),
      run,
    );
  });
});

describe('any text', () => {
  it('is read as a finite amount within what is believed, or refused with its own text', () => {
    const shreds = fc.constantFrom(
      '1',
      '2',
      ',500',
      '.',
      ',',
      ' ',
      '½',
      '/',
      '-',
      'kg',
      'lb',
      'oz',
      'cup',
      'm2',
      'e',
      ':',
      '€',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(shreds, { maxLength: 8 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(text, dimension, (typed, what) => {
        const read = parseAmount(typed, { dimension: what });
        if (!read.ok) {
          expect(read.problem.value).toBe(typed);
          return;
        }
        const { least, most } = BELIEVED[what];
        expect(read.value).toBeGreaterThanOrEqual(least);
        expect(read.value).toBeLessThanOrEqual(most);
        expect(read.asTyped).toBe(typed);
      }),
      { ...run, numRuns: 2000 },
    );
  });

  it('without a country is never read as a gallon, pint, cup or spoon', () => {
    const measures = ['gal', 'quart', 'pints', 'fl oz', 'cups', 'tbsp', 'teaspoons'];
    fc.assert(
      fc.property(fc.constantFrom(...measures), fc.integer({ min: 1, max: 50 }), (measure, count) => {
        const read = parseAmount(`${count} ${measure}`, { dimension: 'volume' });
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.ask?.choices.length).toBeGreaterThanOrEqual(2);
      }),
      run,
    );
  });
});

describe('spoons and ratios', () => {
  it('no spoon count is further off than its tolerance, and its error is the error of its count', () => {
    fc.assert(
      fc.property(size(200), fc.constantFrom(...SPOON_COUNTRIES), (volumeMl, spoon) => {
        for (const measured of spoonsFor({ volumeMl, spoon })) {
          const one = UNITS[`${measured.tool === 'tablespoon' ? 'tbsp' : 'tsp'}-${spoon}`].factor * 1000;
          expect(Math.abs(measured.errorPercent)).toBeLessThanOrEqual(SPOON_TOLERANCE_PERCENT);
          expect(measured.count * one).toBeCloseTo(volumeMl * (1 + measured.errorPercent / 100), 9);
          expect(Number.isInteger(measured.count * 12)).toBe(true);
        }
      }),
      run,
    );
  });

  it('the concentrate of "in" is (n + 1)/n times that of "to"', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (n) => {
        const read = parseRatio(`1:${n}`);
        if (!read.ok || read.clear) throw new Error('a typed colon was not asked about');
        const [taken, added] = read.readings.map(concentrateFraction);
        expect((taken ?? 0) / (added ?? 1)).toBeCloseTo((n + 1) / n, 9);
      }),
      run,
    );
  });
});
