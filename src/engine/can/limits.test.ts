// Crop names as growers write them; the figures themselves are held by data/salt-tolerance.csv and its pins.
import { describe, expect, it } from 'vitest';
import { addedEcLimit, LONGEST_WAIT_DAYS, saltTolerance } from './limits.ts';

describe('salt tolerance', () => {
  it.each([
    ['tomato', 'tomato'],
    ['Tomatoes', 'tomato'],
    ['beans', 'bean'],
    ['strawberries', 'strawberry'],
    [' lettuce ', 'lettuce'],
    ['8 cherry tomatoes (red)', 'tomato'],
    ['zucchini', 'courgette'],
    // of several the one that bears least: strawberry 1.0 dS/m before lettuce 1.3 and tomato 2.5
    ['tomatoes & strawberries', 'strawberry'],
    ['lettuce; strawberries / tomatoes', 'strawberry'],
    ['kale with lettuce', 'lettuce'],
  ])('finds %s as %s', (typed, crop) => {
    expect(saltTolerance(typed)?.crop).toBe(crop);
  });
  it('knows nothing of a crop that is not in the table', () => {
    expect(saltTolerance('chard')).toBeUndefined();
    expect(saltTolerance('')).toBeUndefined();
    // a name within another word, or within a longer name, is not that crop
    expect(saltTolerance('sweet potatoes, climbing beans, spring onions')).toBeUndefined();
  });
  it('has bean at 1.0 dS/m and 19 %, tomato at 2.5 and 9.9 (Maas and Hoffman 1977)', () => {
    expect(saltTolerance('bean')).toMatchObject({ thresholdEcDsPerM: 1.0, slopePercentPerDsPerM: 19 });
    expect(saltTolerance('tomato')).toMatchObject({ thresholdEcDsPerM: 2.5, slopePercentPerDsPerM: 9.9 });
  });
});

describe('the salt a drench may add', () => {
  it('is that of seedlings while the age of the plants is not told', () => {
    expect(addedEcLimit(undefined)).toBe(addedEcLimit('seedling'));
    expect(addedEcLimit('established')).toBeGreaterThan(addedEcLimit('seedling'));
  });
});

describe('the longest wait', () => {
  it('is the 120 days of 7 CFR 205.203(c)(1), so no pour of the last 120 days is left out on pick day', () => {
    expect(LONGEST_WAIT_DAYS).toBe(120);
  });
});
