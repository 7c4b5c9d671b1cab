// Unit factors against an independent program: GNU Units (Debian package "units"), asked afresh each time.
// Without the program these tests fail; they are never passed over.

import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { celsiusFromFahrenheit, fahrenheitFromCelsius, UNITS, type UnitId } from '#engine/quantity/units.ts';
import { type AlkalinityUnit, alkalinityMeqPerL } from '#engine/scraps/water.ts';
import { num, published } from './rows.ts';

const PROGRAM = '/usr/bin/units';

/** What the program answers, to 15 digits. */
function asked(expression: string, unit: string): number {
  const answer = execFileSync(PROGRAM, ['-t', '-d', '15', expression, unit], { encoding: 'utf8' }).trim();
  const value = Number(answer);
  if (answer === '' || !Number.isFinite(value)) throw new Error(`units said "${answer}" to ${expression} in ${unit}`);
  return value;
}

describe('unit factors, GNU Units', () => {
  for (const row of published('gnu-units.csv')) {
    it(`${row.case}: ${row.verdict} with ${row.expression}`, () => {
      const ours = UNITS[row.unit as UnitId].factor;
      const off = Math.abs(ours / asked(row.expression ?? '', row.si ?? '') - 1);
      if (row.verdict === 'differs') expect(Math.abs(off - 0.1839)).toBeLessThanOrEqual(num(row, 'tolerance'));
      else expect(off).toBeLessThanOrEqual(num(row, 'tolerance'));
    });
  }

  it('every unit of the tool is asked about, spoons and cups of pure practice apart', () => {
    const covered = new Set(published('gnu-units.csv').map((row) => row.unit));
    const bare = Object.keys(UNITS).filter((id) => !covered.has(id));
    expect(bare).toEqual(['tbsp-metric', 'tsp-metric', 'cup-au']);
  });

  it('temperatures agree both ways', () => {
    for (const temperatureF of [-40, 14, 50, 68, 98.6]) {
      const temperatureC = asked(`tempF(${temperatureF})`, 'tempC');
      expect(celsiusFromFahrenheit(temperatureF)).toBeCloseTo(temperatureC, 9);
      expect(fahrenheitFromCelsius(temperatureC)).toBeCloseTo(temperatureF, 9);
    }
  });

  // One equivalent of CaCO3 and CaO is half a mole. The program's atomic weights are older than ours and
  // differ by up to 5 in 100,000; hence a tolerance of 1 in 10,000.
  const degrees: readonly (readonly [AlkalinityUnit, string])[] = [
    ['mg/L CaCO3', '(mg/liter) / ((calcium + carbon + 3 oxygen) g/mol / 2)'],
    ['dH', '(10 mg/liter) / ((calcium + oxygen) g/mol / 2)'],
    ['fH', '(10 mg/liter) / ((calcium + carbon + 3 oxygen) g/mol / 2)'],
    ['clark', '(grain/brgallon) / ((calcium + carbon + 3 oxygen) g/mol / 2)'],
    ['gpg', '(grain/usgallon) / ((calcium + carbon + 3 oxygen) g/mol / 2)'],
  ];
  for (const [unit, expression] of degrees) {
    it(`one ${unit} of alkalinity is the same in mmol of charge per litre`, () => {
      const theirs = asked(expression, 'millimol/liter');
      expect(Math.abs(alkalinityMeqPerL({ value: 1, unit }) / theirs - 1)).toBeLessThanOrEqual(1e-4);
    });
  }
});
