// Spoons: US 14.787 mL, metric 15, UK 17.758, Australian 20; volumes: 9,000/200 and 9,000/201.
import { describe, expect, it } from 'vitest';
import { card, rulesOf, textOf } from './can-card.ts';

const ask = (reading: 'in' | 'to', spoon: string | null = null) => card({ ratio: { n: 200, reading }, canL: 9, spoon });

describe('1 in 200 in a 9 L can', () => {
  it('is 45.0 mL and 8,955 mL', () => {
    expect(ask('in').perCan).toEqual({ concentrateMl: 45, waterMl: 8955 });
  });
  it('is 44.78 mL and 8,955.22 mL when read as 1 to 200', () => {
    expect(ask('to').perCan).toEqual({ concentrateMl: 44.78, waterMl: 8955.22 });
  });
  it('shows both readings', () => {
    expect(ask('in').otherReading).toMatchObject({ reading: 'to', concentrateMl: 44.78 });
  });
  it.each([
    ['metric', 3, '3 ', 0],
    ['us', 3, '3 ', -1.4],
    ['uk', 2.5, '2½', -1.3],
    ['au', 2.25, '2¼', 0],
  ])('is %s tablespoons: %d', (spoon, count, text, errorPercent) => {
    const measure = ask('in', spoon).measures?.find(({ tool }) => tool === 'tablespoon');
    expect(measure).toMatchObject({ count, errorPercent });
    expect(measure?.text).toContain(text);
  });
  it('offers no spoon while its country is not named', () => {
    expect(ask('in').measures?.map(({ tool }) => tool)).toEqual(['jug', 'syringe']);
  });
  it('says that the ratio is common practice without a source, and that it is for today', () => {
    expect(rulesOf(ask('in'), 'note')).toEqual(expect.arrayContaining(['ratio-is-practice', 'use-today']));
    expect(textOf(ask('in'))).toMatch(/common practice without a source/);
    expect(textOf(ask('in'))).toMatch(/today; tip the rest on soil/);
  });
});
