import { describe, expect, it } from 'vitest';
import { asWritten, formatAmount, formatIn, type Manner } from './format.ts';

const NBSP = /\u00a0/g;
const text = (value: number, dimension: 'mass' | 'volume' | 'area' | 'temperature', manner: Manner = 'metric') =>
  formatAmount({ value, dimension }, manner).text.replace(NBSP, ' ');

describe('an amount written for a grower', () => {
  it('uses the unit that gives at least one of it', () => {
    expect(text(2.4, 'mass')).toBe('2.4 kg');
    expect(text(0.25, 'mass')).toBe('250 g');
    expect(text(0.045, 'volume')).toBe('45 mL');
    expect(text(24, 'volume')).toBe('24 L');
    expect(text(5.76, 'area')).toBe('5.76 m²');
    expect(text(18, 'temperature')).toBe('18 °C');
  });

  it('shows three digits, whole numbers from 100 up', () => {
    expect(text(10.5612, 'volume')).toBe('10.6 L');
    expect(text(123.456, 'volume')).toBe('123 L');
    expect(text(2.3456, 'mass')).toBe('2.35 kg');
  });

  it('names the country of every gallon, pint and ounce of fluid', () => {
    expect(text(9.09218, 'volume', 'imperial')).toBe('2 imperial gal');
    expect(text(7.570823568, 'volume', 'us')).toBe('2 US gal');
  });

  it('writes pounds with ounces, and carries sixteen ounces over', () => {
    expect(text(5.25 * 0.45359237, 'mass', 'us')).toBe('5 lb 4 oz');
    expect(text(1.9999 * 0.45359237, 'mass', 'us')).toBe('2 lb');
    expect(text(68 / 1.8 - 32 / 1.8, 'temperature', 'us')).toBe('68 °F');
  });

  it('never says 1000 g or 1000 mL', () => {
    expect(text(0.99999, 'mass')).toBe('1 kg');
    expect(text(0.9996, 'volume')).toBe('1 L');
  });

  it('keeps figure and unit on one line', () => {
    expect(formatIn(2, 'gal-us').text).not.toContain(' ');
  });

  it('shows what the grower typed as typed', () => {
    expect(asWritten({ value: 2.381, dimension: 'mass', asTyped: '5 lb 4 oz' }, 'metric')).toBe('5 lb 4 oz');
    expect(asWritten({ value: 2.4, dimension: 'mass' }, 'metric').replace(NBSP, ' ')).toBe('2.4 kg');
  });

  it('says unknown where there is no number', () => {
    expect(text(Number.NaN, 'mass')).toContain('unknown');
  });
});
