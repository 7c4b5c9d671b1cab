import { describe, expect, it } from 'vitest';
import { water } from '#tasks/water.ts';

function cautions(input: object) {
  const ran = water({ volumeL: 10, ...input });
  if (!ran.ok) throw new Error('the water was refused');
  return ran.value;
}

describe('roof water and a bed of leaves eaten raw', () => {
  const answer = cautions({ source: 'roof', use: 'raw-crop' });
  const hold = answer.cautions.find(({ rule }) => rule === 'water-of-animal-origin-possible');
  const text = hold?.text.replaceAll('\u00a0', ' ') ?? '';

  it('prefers water straight from the tap, for the pail and for the can', () => {
    expect(answer.advice[0]).toContain('tap water, straight from the tap, for the pail and for the can');
    expect(text).toContain('take tap water, straight from the tap, for the pail and for the can');
  });

  it('says why: what birds leave on the roof', () => {
    expect(text).toContain('may hold what birds leave there');
  });

  it('holds: soil only, 120 and 90 days as for raw manure, as our own caution', () => {
    expect(hold?.level).toBe('hold');
    expect(text).toContain('soil only, never on leaves, at least 120 days');
    expect(text).toContain('90 days elsewhere');
    expect(text).toContain('7 CFR 205.203');
    expect(text).toContain('Local codes');
    expect(hold?.source).toBe('our caution, no source');
  });

  it('holds as well for ditch and pond water, and for pail and can', () => {
    for (const source of ['roof', 'ditch', 'pond'])
      for (const use of ['pail', 'can', 'raw-crop'])
        expect(cautions({ source, use }).cautions[0]?.rule).toBe('water-of-animal-origin-possible');
  });

  it('holds a raw crop while the source is not named, and not for tap water', () => {
    expect(cautions({ use: 'raw-crop' }).cautions[0]?.level).toBe('hold');
    expect(cautions({ use: 'raw-crop', source: 'tap' }).cautions).toEqual([]);
  });
});
