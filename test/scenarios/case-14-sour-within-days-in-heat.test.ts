import { describe, expect, it } from 'vitest';
import { saySour } from '#words/en/sour.ts';
import { expectOf } from './pail-at.ts';

const rules = ({ cautions }: ReturnType<typeof expectOf>) => cautions.map(({ rule }) => rule);

describe('a pail at 30 °C', () => {
  const hot = expectOf({ temperatureC: 30 });

  it('is likely to be sour within days', () => {
    expect(hot.reach['4.2']?.likely).toBeLessThan(7);
  });

  it('is not held before fifteen days after pH 4.0', () => {
    // fifteen days of hold at 20 °C and above, read off every six hours
    for (const end of ['low', 'likely'] as const) {
      expect(hot.heldDay?.[end]).toBeGreaterThanOrEqual((hot.reach['4.0']?.[end] ?? Number.NaN) + 15 - 1e-9);
    }
  });

  it('asks for a look every day', () => {
    expect(rules(hot)).toContain('warm-look-daily');
    expect(rules(hot)).not.toContain('too-hot-to-sour');
  });
});

describe('a pail that reaches 35 °C', () => {
  it.each([
    ['all the time', 35],
    [
      'in the afternoon of one day',
      [
        [0, 18, 24],
        [3, 24, 35],
        [4, 18, 24],
      ],
    ],
  ])('%s is told to stand in the shade', (_, temperatureC) => {
    const told = expectOf({ temperatureC, days: 7 });
    const [caution] = told.cautions.filter(({ rule }) => rule === 'too-hot-to-sour');
    expect(caution?.level).toBe('caution');
    expect(caution?.text).toMatch(/shade.*35/);
    expect(caution?.source).toBe('our caution, no source');
  });

  it('is told so too where 68 was typed as °C, beside the question whether it was °F', () => {
    const told = expectOf({ temperatureC: 68, days: 7 });
    expect(rules(told)).toContain('too-hot-to-sour');
    expect(saySour(told).join(' ')).toMatch(/Was it °F\?/);
  });
});
