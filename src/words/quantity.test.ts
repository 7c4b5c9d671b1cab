import { describe, expect, it } from 'vitest';
import { parseAmount, type Wanted } from '#engine/quantity/parse.ts';
import { parseRatio } from '#engine/quantity/ratio.ts';
import { spoonsFor } from '#engine/quantity/spoons.ts';
import { sayAmountProblem, sayRatioProblem, saySpoons } from './quantity.ts';

function said(typed: string, wanted: Wanted): string {
  const read = parseAmount(typed, wanted);
  if (read.ok) throw new Error(`"${typed}" was read`);
  const { message, allowed } = sayAmountProblem(read);
  return `${message}; allowed: ${allowed}`.replaceAll('\u00a0', ' ');
}

describe('what is said of an amount that cannot be read', () => {
  it('gives both ways to write a figure that two styles read differently', () => {
    const message = 'can be read in two ways: the mark may stand before decimals or thousands';
    expect(said('1,500 g', { dimension: 'mass' })).toBe(`${message}; allowed: 1500 g or 1.5 g`);
    expect(said('12.345 kg', { dimension: 'mass' })).toBe(`${message}; allowed: 12345 kg or 12.3450 kg`);
  });

  it('names the unit, the range or the form that would do', () => {
    expect(said('2 stones', { dimension: 'mass' })).toContain('has a unit that is not known here: stones');
    expect(said('5000 kg', { dimension: 'mass' })).toBe(
      'is more than can be believed; allowed: more than 0, up to 1000 kg',
    );
    expect(said('90 °C', { dimension: 'temperature' })).toBe('is more than can be believed; allowed: -10 to 60 °C');
    expect(said('2.4', { dimension: 'mass' })).toContain('has no unit; allowed: a mass, such as 2.4 kg');
  });

  it('says what was given and what is wanted, and how a fluid ounce is written', () => {
    expect(said('3 L', { dimension: 'mass' })).toContain('is a volume, and a mass is wanted');
    expect(said('6 oz', { dimension: 'volume' })).toMatch(/^is a mass, and a volume is wanted.*fl oz$/);
  });
});

describe('what is said of spoons and dilutions', () => {
  it('gives the count, the country and the error', () => {
    const [uk] = spoonsFor({ volumeMl: 45, spoon: 'uk' });
    const [metric] = spoonsFor({ volumeMl: 5, spoon: 'metric' });
    expect(uk && saySpoons(uk, 'uk')).toBe('2½ tablespoons (UK), 1.3 % under');
    expect(metric && saySpoons(metric, 'metric')).toBe('1 teaspoon (metric), exact');
  });

  it('asks for the concentrate first where a ratio is turned round', () => {
    const read = parseRatio('200:1');
    if (read.ok) throw new Error('200:1 was read');
    expect(sayRatioProblem(read).allowed).toContain('the concentrate first');
  });
});
