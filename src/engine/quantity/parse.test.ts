import { describe, expect, it } from 'vitest';
import { writtenPlainly } from './number.ts';
import { type AmountProblemCode, parseAmount, type Wanted } from './parse.ts';
import { range } from './range.ts';

const mass: Wanted = { dimension: 'mass' };
const volume: Wanted = { dimension: 'volume' };

function value(typed: string, wanted: Wanted): number {
  const read = parseAmount(typed, wanted);
  if (!read.ok) throw new Error(`${typed}: ${read.problem.message}`);
  return read.value;
}

function problem(typed: string, wanted: Wanted): AmountProblemCode | 'read' {
  const read = parseAmount(typed, wanted);
  return read.ok ? 'read' : read.problem.message;
}

describe('an amount as growers write it', () => {
  // 1 lb = 0.45359237 kg, 1 oz = 1/16 of it: 5 lb 4 oz = 5.25 × 0.45359237.
  const masses: readonly (readonly [string, number])[] = [
    ['2.4 kg', 2.4],
    ['0.8kg', 0.8],
    ['250 g', 0.25],
    ['250 G', 0.25],
    ['1,5 kg', 1.5],
    ['½ kg', 0.5],
    ['5 lb 4 oz', 5.25 * 0.45359237],
    ['5lb4oz', 5.25 * 0.45359237],
    ['5 lb, 4 oz', 5.25 * 0.45359237],
    ['5 lbs and 4 ozs', 5.25 * 0.45359237],
    ['1 kg 200 g', 1.2],
    ['2.4 kg', 2.4],
    ['1,500.5 g', 1.5005],
    ['1.500,5 g', 1.5005],
    ['0,500 kg', 0.5],
    ['01.500 kg', 1.5],
    ['0.250 kg', 0.25],
    ['12,50 kg', 12.5],
    ['1250 g', 1.25],
    ['1 250 g', 1.25],
    ['1\u202f250 g', 1.25],
    ['1 250,5 g', 1.2505],
    ['1250.375 g', 1.250375],
    ['1,2345 kg', 1.2345],
    ['1.250.000 mg', 1.25],
    ['1,250,000 mg', 1.25],
    ['1 1/2 kilos', 1.5],
    ['1-1/2 kg', 1.5],
    ['3/4 lb', 0.75 * 0.45359237],
  ];
  for (const [typed, kg] of masses) {
    it(`"${typed}" is ${kg} kg`, () => {
      expect(value(typed, mass)).toBeCloseTo(kg, 12);
    });
  }

  it('keeps what was typed, and says what it was read as', () => {
    const read = parseAmount(' 5 lb 4 oz ', mass);
    expect(read).toMatchObject({ ok: true, asTyped: ' 5 lb 4 oz ', reading: '5 lb + 4 oz' });
  });

  // 2 US gallons = 2 × 231 in³ × 2.54³ cm³ = 7.570823568 L; 2 imperial = 9.09218 L.
  const volumes: readonly (readonly [string, Wanted, number])[] = [
    ['1,5 L', volume, 1.5],
    ['250 mL', volume, 0.25],
    ['2 US gal', volume, 7.570823568],
    ['2 gal (US)', volume, 7.570823568],
    ['2 gal', { ...volume, gallon: 'us' }, 7.570823568],
    ['2 gal', { ...volume, gallon: 'imperial' }, 9.09218],
    ['2 imperial gallons', { ...volume, gallon: 'us' }, 9.09218],
    ['3 pints', { ...volume, gallon: 'imperial' }, 1.70478375],
    ['20 fl. oz.', { ...volume, gallon: 'imperial' }, 0.56826125],
    ['6 tbsp', { ...volume, spoon: 'metric' }, 0.09],
    ['6 tablespoons', { ...volume, spoon: 'au' }, 0.12],
    ['1½ cups', { ...volume, spoon: 'metric' }, 0.375],
    ['1 1/2 cups', { ...volume, spoon: 'metric' }, 0.375],
    ['1 cup 2 tbsp', { ...volume, spoon: 'metric' }, 0.28],
    ['6 metric tbsp', volume, 0.09],
    ['2 m3', volume, 2000],
  ];
  for (const [typed, wanted, litres] of volumes) {
    it(`"${typed}" (${wanted.gallon ?? wanted.spoon ?? 'no country set'}) is ${litres} L`, () => {
      expect(value(typed, wanted)).toBeCloseTo(litres, 12);
    });
  }

  it('reads areas, temperatures and counts', () => {
    expect(value('5.76 m²', { dimension: 'area' })).toBe(5.76);
    expect(value('100 sq ft', { dimension: 'area' })).toBeCloseTo(9.290304, 12);
    expect(value('-4 °C', { dimension: 'temperature' })).toBe(-4);
    expect(value('0 C', { dimension: 'temperature' })).toBe(0);
    expect(value('14 °F', { dimension: 'temperature' })).toBeCloseTo(-10, 12);
    expect(value('8', { dimension: 'count' })).toBe(8);
  });

  it('takes a bare number only where its unit is agreed', () => {
    expect(problem('2.4', mass)).toBe('unit-missing');
    expect(value('2.4', { ...mass, bareUnit: 'kg' })).toBe(2.4);
    expect(value('20', { dimension: 'temperature', bareUnit: 'C' })).toBe(20);
    expect(problem('5 lb 4', { ...mass, bareUnit: 'oz' })).toBe('unit-missing');
  });
});

describe('an amount that cannot be read', () => {
  const bad: readonly (readonly [string, Wanted, AmountProblemCode])[] = [
    ['', mass, 'empty'],
    ['   ', mass, 'empty'],
    ['some', mass, 'not-a-number'],
    ['NaN kg', mass, 'not-a-number'],
    ['Infinity kg', mass, 'not-a-number'],
    ['1,500 g', mass, 'ambiguous-mark'],
    ['12,345 g', mass, 'ambiguous-mark'],
    ['1.500 kg', mass, 'ambiguous-mark'],
    ['5 lb 1,250 oz', mass, 'ambiguous-mark'],
    ['1 250 30 g', mass, 'unclear-number'],
    ['0 250 g', mass, 'unclear-number'],
    ['1,250.500,5 g', mass, 'unclear-number'],
    ['1.2.3 kg', mass, 'unclear-number'],
    ['1e3 g', mass, 'unclear-number'],
    ['2-3 kg', mass, 'unclear-number'],
    ['2–3 kg', mass, 'unclear-number'],
    ['1:200 kg', mass, 'unclear-number'],
    ['1/0 kg', mass, 'unclear-number'],
    ['1 3/2 kg', mass, 'unclear-number'],
    ['5 lb.4 oz', mass, 'unclear-number'],
    ['5 lb,4 oz', mass, 'unclear-number'],
    ['2 kg 3 kg', mass, 'unclear-number'],
    ['4 oz 5 lb', mass, 'unclear-number'],
    ['20 °C 5 °C', { dimension: 'temperature' }, 'unclear-number'],
    ['-2 kg', mass, 'negative'],
    ['−2 kg', mass, 'negative'],
    ['0 kg', mass, 'zero'],
    ['0', { dimension: 'count' }, 'zero'],
    ['5000 kg', mass, 'too-large'],
    [`${'9'.repeat(400)} kg`, mass, 'too-large'],
    ['0.0001 mg', mass, 'too-small'],
    ['6000 m2', { dimension: 'area' }, 'too-large'],
    ['212 °F', { dimension: 'temperature' }, 'too-large'],
    ['-30 °C', { dimension: 'temperature' }, 'too-small'],
    ['2.5', { dimension: 'count' }, 'not-whole'],
    ['2 kg clippings', mass, 'unit-unknown'],
    ['2 Mg', mass, 'unit-unknown'],
    ['2 metric gal', volume, 'unit-unknown'],
    ['3 L', mass, 'wrong-dimension'],
    ['6 oz', volume, 'wrong-dimension'],
    ['2 kg', { dimension: 'count' }, 'wrong-dimension'],
  ];
  for (const [typed, wanted, message] of bad) {
    it(`"${typed.slice(0, 20)}" as a ${wanted.dimension}: ${message}`, () => {
      expect(problem(typed, wanted)).toBe(message);
    });
  }

  it.each([
    ['1,250 g', 'point', 1.25],
    ['1,250 g', 'comma', 0.00125],
    ['1.250 g', 'comma', 1.25],
    ['1.250 g', 'point', 0.00125],
    // What every style reads alike stays so, whatever was decided.
    ['1.5 g', 'comma', 0.0015],
    ['1,5 g', 'point', 0.0015],
    ['1,500.5 g', 'comma', 1.5005],
  ] as const)('"%s" with a decimal %s is %d kg', (typed, style, kg) => {
    expect(value(typed, { ...mass, style })).toBeCloseTo(kg, 12);
  });

  it('asks which mark stands before the decimals, and shows what each gives', () => {
    const read = parseAmount('1.250 kg', mass);
    expect(read).toMatchObject({
      ok: false,
      ask: {
        kind: 'style',
        written: '1.250',
        behind: 'kg',
        choices: [
          { style: 'comma', value: 1250 },
          { style: 'point', value: 1.25 },
        ],
      },
    });
  });

  it.each([
    ['1,250 g', 'point', '1250 g'],
    ['1,250 g', 'comma', '1.25 g'],
    ['12.345 kg', 'point', '12.3450 kg'],
    ['5 lb 1,250 oz', 'comma', '5 lb 1.25 oz'],
    ['1,250,000 mg', 'comma', '1,250,000 mg'],
  ] as const)('writes "%s" as a decimal %s reads it, so that nobody asks again: "%s"', (typed, style, plainly) => {
    expect(writtenPlainly(typed, style)).toBe(plainly);
    expect(value(plainly, mass)).toBe(value(typed, { ...mass, style }));
  });

  it('asks whose gallon, and shows each in mL', () => {
    const read = parseAmount('3 pints', volume);
    if (read.ok) throw new Error('a pint without a country was read');
    expect(read.problem.message).toBe('country-needed');
    expect(read.ask?.kind).toBe('gallon');
    expect(read.ask?.kind === 'gallon' && read.ask.choices.map(({ mL }) => Math.round(mL))).toEqual([473, 568]);
  });

  it('tells a negative or empty amount before it asks about the spoon', () => {
    expect(problem('-6 tbsp', volume)).toBe('negative');
    expect(problem('0 tbsp', volume)).toBe('zero');
    expect(problem('6 tbsp 3 stones', volume)).toBe('unit-unknown');
  });
});

describe('a mass given by volume', () => {
  const brown = range(0.7, 0.85, 0.95);

  it('is asked for its product while none is named', () => {
    const read = parseAmount('100 mL', { ...mass, bulkKgPerL: 'ask' });
    if (read.ok) throw new Error('a volume without a product was read as a mass');
    expect(read.problem.message).toBe('product-needed');
    expect(read.ask?.kind).toBe('product');
  });

  it('is the volume times the mass per litre of the product, as a band', () => {
    const read = parseAmount('100 mL', { ...mass, bulkKgPerL: brown });
    if (!read.ok) throw new Error(read.problem.message);
    expect(read.value).toBeCloseTo(0.085, 12);
    expect(read.band?.low).toBeCloseTo(0.07, 12);
    expect(read.band?.high).toBeCloseTo(0.095, 12);
  });

  it('is too large where its upper end is, so that whatever is read can be kept', () => {
    expect(problem('1100 L', { ...mass, bulkKgPerL: brown })).toBe('too-large');
  });

  it('stays a plain mass where a mass is typed', () => {
    const read = parseAmount('250 g', { ...mass, bulkKgPerL: brown });
    expect(read).toMatchObject({ ok: true, value: 0.25 });
    expect('band' in read).toBe(false);
  });
});
