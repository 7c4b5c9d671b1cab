// The second case follows the first in all that is not changed, and nothing of the first is lost.

import { describe, expect, it } from 'vitest';
import { exampleDraft, field } from '../weigh-in/draft.ts';
import { casesOf, NO_CASES, takenDraft, withChanges } from './draft.ts';
import { netKg, readCase, readRoom } from './reading.ts';

const base = exampleDraft(1);
const cases = casesOf(base, NO_CASES);

describe('two cases of a weigh-in', () => {
  it('ask the same while nothing is changed', () => {
    expect(readCase(cases, 'after')?.input).toEqual(readCase(cases, 'before')?.input);
    expect(readCase(cases, 'before')?.input?.temperatureC).toBe(18);
  });

  it('change the second alone', () => {
    const changed = { ...cases, changed: { warmth: field('26 °C'), sugar: field('200 g'), chop: 'fine' as const } };
    expect(readCase(changed, 'before')?.input).toEqual(readCase(cases, 'before')?.input);
    const after = readCase(changed, 'after')?.input;
    expect(after).toMatchObject({ temperatureC: 26, chop: 'fine', sugar: { product: 'white-sugar', massKg: 0.2 } });
  });

  it('read Fahrenheit as typed: 68 °F is 20 °C', () => {
    // (68 − 32) / 1.8 = 20
    const changed = { ...cases, changed: { warmth: field('68 °F') } };
    expect(readCase(changed, 'after')?.input?.temperatureC).toBeCloseTo(20, 9);
  });

  it('hold back the case that cannot be read, and keep what was typed', () => {
    const changed = { ...cases, changed: { water: field('much') } };
    expect(readCase(changed, 'after')?.input).toBeUndefined();
    expect(readCase(changed, 'after')?.troubles.has('water.volume')).toBe(true);
    expect(readCase(changed, 'before')?.input).toBeDefined();
  });

  it('leave a lot out where its weight is taken away, and count a typed weight without the bowl', () => {
    const first = base.lots[0];
    if (first === undefined) throw new Error('no lot');
    const bowled = { ...base, lots: [{ ...first, bowl: field('300 g') }, ...base.lots.slice(1)] };
    // 2.1 kg in a bowl of 0.3 kg: 1.8 kg
    expect(netKg(readCase({ ...cases, base: bowled }, 'before'), first.key)).toBeCloseTo(1.8, 9);
    const typed = { ...cases, base: bowled, changed: { lots: { [first.key]: field('1 kg') } } };
    expect(netKg(readCase(typed, 'after'), first.key)).toBeCloseTo(1, 9);
    expect(withChanges(base, { lots: { [first.key]: field('') } }).lots).toHaveLength(base.lots.length - 1);
  });

  it('hand back the first whole, and the second with its changes, its warmth and its pieces', () => {
    const changed = { ...cases, changed: { warmth: field('26 °C'), water: field('6 L') } };
    expect(takenDraft(changed, 'before')).toEqual({ ...base, standing: { warmth: '18 °C', chop: 'chopped' } });
    const after = takenDraft(changed, 'after');
    expect(after?.standing).toEqual({ warmth: '26 °C', chop: 'chopped' });
    expect(after?.water.volume.text).toBe('6 L');
    expect(after?.lots).toEqual(base.lots);
  });
});

describe('the room', () => {
  it('is read with its unit or without, and refused beyond what a room can be', () => {
    expect(readRoom({ roomM3: field('9 m³') }).value).toBe(9);
    expect(readRoom({ roomM3: field('0,5') }).value).toBe(0.5);
    expect(readRoom({ roomM3: field('90000') }).trouble?.sentence).toMatch(/0\.1 to 1,000/);
  });
});
