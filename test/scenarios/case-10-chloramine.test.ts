import { describe, expect, it } from 'vitest';
import { water } from '#tasks/water.ts';
import { sayWater } from '#words/en/water.ts';

describe('a report of 0.6 mg/L total chlorine as monochloramine, 5.2 L for the pail', () => {
  const ran = water({ volumeL: 5.2, chloramineMgPerL: 0.6, source: 'tap', plantsKg: 3.2 });
  if (!ran.ok) throw new Error('the report was refused');
  const said = sayWater(ran.value).join(' ').replaceAll('\u00a0', ' ');

  it('does not offer standing', () => {
    expect(said).not.toMatch(/half of it goes/);
    expect(said).toContain('Chloramine does not leave by standing');
  });

  it('says that for the pail it hardly matters: 3 mg against 3.2 kg of plants', () => {
    expect(said).toContain('For the pail it hardly matters: 3.12 mg of chlorine against 3.2 kg of plants');
  });

  it('calls it optional for diluting, with thiosulfate or carbon and a strip afterwards', () => {
    expect(said).toContain('For diluting it is optional');
    expect(said).toMatch(/thiosulfate crystals.*carbon filter.*test strip afterwards/);
  });

  it('says that ascorbic acid is disputed, and by whom', () => {
    const caution = ran.value.cautions.find(({ rule }) => rule === 'ascorbic-acid-disputed');
    expect(caution?.level).toBe('caution');
    expect(caution?.source).toContain('Basu');
    expect(caution?.source).toContain('2011');
  });
});
