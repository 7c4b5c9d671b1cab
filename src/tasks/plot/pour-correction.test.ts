// A pour told anew: its litres, its concentrate and its strength never contradict each other in silence.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { CONCENTRATE_FOR } from './pour-correction.ts';
import { correctionTyped, readCorrection } from './record.ts';

const { did } = recorder();
const bed = did('bed.described', '2026-05-01', { name: 'Long' });
const filled = did('peg.filled', '2026-05-01', { peg: 1, water: [{ volume: { typed: '9 L', volumeL: 9 } }] });
const whole: Body<'bed.fed'> = {
  bed: bed.id,
  from: [{ batch: filled.id, volume: { typed: '281 mL', volumeL: 0.281 } }],
  poured: { typed: '11.5 L', volumeL: 11.5 },
  ratio: { n: 40, reading: 'to' },
  way: 'soil',
};
const plot = fold([bed, filled]);
const FIRST = 'from.0.volume';

function corrected(typed: Readonly<Record<string, string>>, body = whole) {
  const pour = did('bed.fed', '2026-06-01T07:00', body);
  const read = readCorrection(
    pour,
    { ...correctionTyped(pour), ...typed },
    {},
    {
      line: pour.id,
      now: '2026-06-02T07:00',
      plot,
    },
  );
  if (read.ok) return { body: read.body as Body<'bed.fed'>, offers: [] };
  return { trouble: read.troubles.get('poured')?.sentence, offers: read.troubles.get('poured')?.offers ?? [] };
}

describe('11.5 L with 281 mL at 1 to 40, corrected to 5 L', () => {
  it('asks about the concentrate before anything is kept', () => {
    const asked = corrected({ poured: '5 L' });
    expect(asked.trouble).toContain('How much concentrate');
    // 281 · 5 / 11.5 = 122.2 mL; 5 / 0.281 − 1 = 16.8
    expect(asked.offers.map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual([
      'Keep the strength: 122 mL of concentrate',
      'Keep the concentrate: 281 mL, 1 to 16.8',
    ]);
  });
  it('keeps the strength with less concentrate, or the concentrate with another strength', () => {
    const [strength, concentrate] = corrected({ poured: '5 L' }).offers.map(({ put }) => put);
    const same = corrected({ poured: '5 L', ...strength }).body;
    expect(same).toMatchObject({ ratio: { n: 40, reading: 'to' }, from: [{ volume: { volumeL: 0.122 } }] });
    const stronger = corrected({ poured: '5 L', ...concentrate }).body;
    expect(stronger).toMatchObject({ ratio: { n: 16.8, reading: 'to' }, from: [{ volume: { volumeL: 0.281 } }] });
  });
  it('asks again where the litres change after the answer', () => {
    for (const { put } of corrected({ poured: '5 L' }).offers) {
      expect(corrected({ ...put, poured: '8 L' }).trouble).toContain('How much concentrate');
    }
  });
  it('takes a concentrate that was typed as well, with the strength of both', () => {
    // 5 / 0.1 − 1 = 49
    expect(corrected({ poured: '5 L', [FIRST]: '100 mL' }).body?.ratio).toEqual({ n: 49, reading: 'to' });
  });
  it('asks nothing where the litres stay, and never leaves a strength that the amounts deny', () => {
    // 11.5 / 0.5 − 1 = 22
    expect(corrected({ [FIRST]: '500 mL' }).body?.ratio).toEqual({ n: 22, reading: 'to' });
    expect(corrected({ note: 'evening' }).body).toMatchObject({ ratio: whole.ratio, from: whole.from });
  });
  it('drops the strength of a can half poured, whose concentrate alone is told anew: nobody can know it', () => {
    const half = { ...whole, poured: { typed: '6 L', volumeL: 6 } };
    expect(corrected({ [FIRST]: '200 mL' }, half).body?.ratio).toBeUndefined();
    const put = corrected({ poured: '3 L' }, half).offers[0]?.put;
    expect(put?.[CONCENTRATE_FOR]).toBe('3 L');
    expect(corrected({ poured: '3 L', ...put }, half).body?.ratio).toEqual(whole.ratio);
  });
});
