import { describe, expect, it } from 'vitest';
import { massStep, stepped, sugarStep, volumeStep } from './steps.ts';

describe('one touch on minus or plus', () => {
  it('moves between a hundredth and a half of what stands there', () => {
    for (const value of [0.1, 0.4, 1, 2.4, 9.9, 30, 120]) {
      for (const step of [massStep(value), volumeStep(value)]) {
        expect(step.size / value).toBeLessThanOrEqual(1);
        expect(step.size / value).toBeGreaterThanOrEqual(0.01);
      }
    }
  });

  it('goes up and comes back to the same figure', () => {
    for (const value of [0.25, 2.4, 7]) {
      const step = massStep(value);
      expect(stepped(stepped(value, step, 1) ?? 0, step, -1)).toBe(value);
    }
  });

  it('starts from nothing at one step and never goes down to nothing', () => {
    expect(stepped(0, massStep(0), 1)).toBe(0.01);
    expect(stepped(0.01, sugarStep(0.01), -1)).toBeUndefined();
  });
});
