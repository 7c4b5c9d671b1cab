import { describe, expect, it } from 'vitest';
import { type Odd, oddLooks, oddWarmth } from '#engine/souring/odd.ts';
import { type SaidOfSour, sayForecast, sayLearned, saySour } from './sour.ts';
import { askAbout } from './sour-questions.ts';

const NBSP = '\u00a0';
const range = (low: number, likely: number, high: number) => ({ low, likely, high });
const span = (low: number, likely: number, high: number, openEnded = false) => ({
  ...range(low, likely, high),
  openEnded,
});

const said: SaidOfSour = {
  days: [0, 1, 2].map((day) => ({
    day,
    gasRangeLPerDay: range(0.5, day === 1 ? 3 : 1, 5),
    ethanolRangeGPerL: range(0.4, 1, 2.2),
    sugarRangeGPerL: range(0, 1, 7),
  })),
  reach: { '4.6': span(1, 2, 3), '4.2': span(2, 3, 5), '4.0': span(3, 4, 9) },
  plateauPh: range(3.5, 3.7, 4),
  heldDay: span(9, 12, 22, true),
  reachedFraction: { '4.6': 1, '4.2': 0.96, '4.0': 0.9, ready: 0.95, held: 0.8 },
  runDays: 22,
  state: 'souring',
  held: false,
  nextLookDay: 4,
  reasons: ['It falls.'],
  wouldChange: ['Two readings would make it ready.'],
  questions: [{ text: 'Was it °F?' }],
  rescues: [],
  looks: [{}],
  readings: [],
  beliefs: [],
  brake: 'acid',
};

describe('a forecast in words', () => {
  it('tells both dates as spans, and a late end that was not seen as later still', () => {
    const [sour, held] = sayForecast(said);
    expect(sour).toBe('Sour (pH 4.2): likely about day 3 (day 2 to day 5).');
    expect(held).toBe('Held: likely about day 12 (from day 9, perhaps later than day 22).');
  });

  it('says of a date that fewer than half come to how many do', () => {
    const [, held] = sayForecast({ ...said, heldDay: null, reachedFraction: { ...said.reachedFraction, held: 0.31 } });
    expect(held).toBe('Held: not likely within 22 days (about 3 in 10 draws get there).');
  });

  it('tells the lowest pH, what holds it back, gas, alcohol, and what is not foretold', () => {
    const text = sayForecast(said).join('\n');
    expect(text).toContain('about pH 3.7 (3.5 to 4.0)');
    expect(text).toContain('its own acid stops it');
    expect(text).toContain(`about 0.5 to 5.0${NBSP}L from day 1 to the next`);
    expect(text).toContain(`0.4 to 2.2${NBSP}g/L of alcohol`);
    expect(text).toContain('Germs are not foretold');
  });

  it('never promises: no date stands without likely, about or perhaps', () => {
    for (const line of sayForecast(said)) {
      if (/day \d/.test(line)) expect(line).toMatch(/likely|about|perhaps/);
      expect(line).not.toMatch(/\bwill be\b|certain|sure to/);
    }
  });
});

describe('the whole answer in words', () => {
  it('begins with the word of the batch, then its reasons, the next look, and what is asked', () => {
    const lines = saySour(said);
    expect(lines.slice(0, 5)).toEqual([
      'Souring: on its way, not ready.',
      'It falls.',
      'Two readings would make it ready.',
      'Next look: day 4.',
      'Question: Was it °F?',
    ]);
  });

  it('names readings outside their band and which way the looks point', () => {
    const lines = sayLearned({
      readings: [
        { day: 1, ph: 5.2, inBand: true },
        { day: 3, ph: 5.1, inBand: false },
        { day: 4, ph: 41, inBand: null },
      ],
      beliefs: [
        { unknown: 'rate', unit: 'factor', from: range(0.7, 1, 1.4), to: range(0.5, 0.6, 0.8) },
        { unknown: 'buffer', unit: 'factor', from: range(0.7, 1, 1.4), to: range(0.8, 1.1, 1.3) },
      ],
    });
    expect(lines).toEqual([
      '1 of 2 readings fell where the forecast before them had them.',
      'Outside: pH 5.1 on day 3.',
      'The looks suggest that it sours more slowly than usual.',
    ]);
  });
});

describe('questions', () => {
  const meter = (day: number, ph: number) => ({ day, ph, by: 'meter' as const });
  const all: readonly Odd[] = [
    ...oddLooks(
      [meter(0, 5), meter(2, 7.2), meter(1, 5.1), meter(1, 5.2), meter(3, 12), meter(4, 41), meter(-2, 6), meter(5, 4)],
      4,
    ),
    ...oddLooks([meter(0, 6.4), meter(1, 4.2)], 4),
    ...oddWarmth([
      [0, 68, 20],
      [1, 12, 140],
      [2, 20, 10],
    ]),
  ];

  it('ask about every kind of odd entry, name the number as typed, and say that it is kept', () => {
    expect(new Set(all.map(({ code }) => code)).size).toBe(11);
    for (const odd of all) {
      const text = askAbout(odd);
      expect(text).toContain(String(odd.value));
      expect(text).toMatch(/\?/);
      expect(text).toMatch(/\bkept\b/);
      expect(text).not.toMatch(/undefined|NaN/);
    }
  });
});
