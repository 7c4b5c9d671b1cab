import { describe, expect, it } from 'vitest';
import { ABOUT_C, type Answers, lookBody, NEAR_C, PADS, skipped, TENTHS, UNANSWERED, WHOLES } from './answers.ts';

const batch = '01999999-9999-7999-8999-999999999999';
const all: Answers = {
  sour: { ph: 5.1, by: 'meter', typed: '5.1' },
  nose: 'grassy',
  top: 'clear',
  warmth: 11,
};

describe('the body of a look', () => {
  it('holds every answer, the acidity as typed beside the figure', () => {
    expect(lookBody(all, { batch, readBy: '', noseNote: undefined })).toEqual({
      batch,
      acidity: { typed: '5.1', ph: 5.1, by: 'meter' },
      smell: 'grassy',
      surface: 'clear',
      temperatureC: 11,
    });
  });
  it('leaves out what was skipped: skipping is no answer', () => {
    expect(lookBody({ ...UNANSWERED, warmth: 0 }, { batch, readBy: 'Fork', noseNote: 'x' })).toEqual({
      batch,
      temperatureC: 0,
    });
    expect(skipped({ ...all, top: null })).toEqual(['top']);
  });
  it('says who read the strip, and that a nose was another one', () => {
    const body = lookBody(all, { batch, readBy: 'Fork', noseNote: 'Nose of a second person.' });
    expect(body).toMatchObject({ readBy: 'Fork', note: 'Nose of a second person.' });
    expect(lookBody({ ...all, nose: 'cannot-smell' }, { batch, readBy: '', noseNote: 'x' })).not.toHaveProperty('note');
  });
});

describe('the blocks of a look', () => {
  // Two touches for the acidity at most, one each for nose, top and warmth; the last one writes it down.
  it('reach every tenth of a meter from 3.0 to 7.9 in two touches, every pad in one', () => {
    const reached = WHOLES.flatMap((whole) => TENTHS.map((tenth) => Math.round(10 * whole + tenth)));
    expect(reached).toEqual(Array.from({ length: 50 }, (_, i) => 30 + i));
    expect(PADS).toEqual([3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7]);
  });
  it('reach every temperature from 3 to 42 °C within 2 degrees in one touch', () => {
    for (let degrees = 3; degrees <= 42; degrees++) {
      expect(ABOUT_C.some((about) => Math.abs(about - degrees) <= 2)).toBe(true);
    }
    expect(NEAR_C).toContain(0);
  });
});
