import { describe, expect, it } from 'vitest';
import { reasonsDe } from './de/souring.ts';
import { reasonSentences } from './en/souring.ts';
import { languageOf, languages, wordsFor } from './language.ts';

const tongues = Object.keys(languages);

describe('the language of the wet-hand places', () => {
  it('is English where none was told or none of ours', () => {
    expect([languageOf(undefined), languageOf(''), languageOf('fr'), languageOf('toString')]).toEqual(
      Array(4).fill('en'),
    );
  });
  it('is German for a keyholder kept with it, however it was written', () => {
    expect([languageOf('de'), languageOf('DE'), languageOf('de-AT')]).toEqual(['de', 'de', 'de']);
  });
});

describe('a second language', () => {
  it('says the same figures as the English, with a decimal comma', () => {
    const values = {
      ...{ firstPh: 4.1, firstDay: 4, lastPh: 3.8, lastDay: 7, fromPh: 6.3, fromDay: 0, toPh: 5.2, toDay: 1 },
      ...{
        ph: 5.7,
        day: 6,
        linePh: 5,
        lineDay: 5,
        temperatureC: 11,
        smell: 'egg',
        smellDay: 6,
        days: 12,
        afterDays: 10,
      },
      ...{ lowPh: 4.2, highPh: 4.9, timesFactor: 3.1 },
      ...{ onePh: 3.6, otherPh: 4, sinceDay: 7, holdDays: 8, readingDay: 2, firstSmell: 'egg', lastSmell: 'sewage' },
    };
    const figures = (text: string) => (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((one) => one.replace(',', '.')).sort();
    for (const code of Object.keys(reasonSentences) as (keyof typeof reasonSentences)[]) {
      // "twice", "once" and "24 hours" stand as words or figures in both alike.
      expect(figures(reasonsDe[code](values)), code).toEqual(figures(reasonSentences[code](values)));
    }
  });
  it.each(tongues)('has at most five steps and no empty word: %s', (tongue) => {
    const { look } = wordsFor(tongue);
    expect(look.steps.length).toBeLessThanOrEqual(5);
    const words = [...look.steps, ...Object.values(look.smells), ...Object.values(look.surfaces)];
    expect(words.every((word) => word.trim().length > 0)).toBe(true);
    expect(new Set(words).size).toBe(words.length);
  });
});
