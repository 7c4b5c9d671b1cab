import { describe, expect, it } from 'vitest';
import { alkalinityMeqPerL, assessWater, lacticAcidEatenG, sourCanPh, type WaterAsked } from './water.ts';

const codes = (asked: WaterAsked) => assessWater(asked).advice.map(({ code }) => code);

describe('alkalinity in the units of reports', () => {
  it('212 mg/L CaCO3 is 4.24 meq/L: 212 / (100.0869 / 2)', () => {
    expect(alkalinityMeqPerL({ value: 212, unit: 'mg/L CaCO3' })).toBeCloseTo(212 / 50.04345, 9);
    expect(alkalinityMeqPerL({ value: 212, unit: 'mg/L CaCO3' })).toBeCloseTo(4.24, 2);
  });

  // Degrees by their definitions, in mg/L CaCO3 first: 10 · 100.0869/56.0774; 10; 64.79891/4.54609; 64.79891/3.785411784.
  it('one degree is 17.85 (German), 10 (French), 14.25 (English) and 17.12 mg/L CaCO3 (grain per US gallon)', () => {
    const asCaCo3 = (unit: 'dH' | 'fH' | 'clark' | 'gpg') => alkalinityMeqPerL({ value: 1, unit }) * 50.04345;
    expect(asCaCo3('dH')).toBeCloseTo(17.848, 3);
    expect(asCaCo3('fH')).toBeCloseTo(10, 9);
    expect(asCaCo3('clark')).toBeCloseTo(14.254, 3);
    expect(asCaCo3('gpg')).toBeCloseTo(17.118, 3);
  });

  it('mmol/L of bicarbonate is meq/L', () => {
    expect(alkalinityMeqPerL({ value: 3, unit: 'mmol/L' })).toBe(alkalinityMeqPerL({ value: 3, unit: 'meq/L' }));
  });
});

describe('acid that a water uses up', () => {
  it('is 90.08 mg for each meq', () => {
    expect(lacticAcidEatenG({ volumeL: 10, alkalinityMeqPerL: 1 })).toBeCloseTo(0.9008, 12);
  });

  it('is ignored while small beside the plants, and counted when it is not', () => {
    const alkalinity = { value: 4.24, unit: 'meq/L' } as const;
    // 14 L · 4.24 = 59 meq against 6.2 kg · 109 = 676: 8.8 %. Against 2 kg, 218: 27 %.
    expect(codes({ volumeL: 14, alkalinity, use: 'pail', plantsKg: 6.2 })).toContain('alkalinity-ignore');
    expect(codes({ volumeL: 14, alkalinity, use: 'pail', plantsKg: 2 })).toContain('alkalinity-counts');
    expect(codes({ volumeL: 5, alkalinity: { value: 8, unit: 'meq/L' }, use: 'pail' })).toContain('alkalinity-counts');
  });

  it('leaves a can 1 in 200 hardly sour in tap water and sour in rain', () => {
    // Charge balance by hand at 2.5 meq/L: pH 6.9; at 5.0: 7.1; at 0.05: below 4.7.
    expect(sourCanPh({ alkalinityMeqPerL: 2.5, waterPh: 7.6, n: 200 })).toBeCloseTo(6.9, 0);
    expect(sourCanPh({ alkalinityMeqPerL: 5, waterPh: 7.6, n: 200 })).toBeCloseTo(7.1, 0);
    expect(sourCanPh({ alkalinityMeqPerL: 0.05, waterPh: 7.6, n: 200 })).toBeLessThan(4.7);
    expect(codes({ volumeL: 10, alkalinity: { value: 2.5, unit: 'meq/L' }, use: 'can' })).toContain('can-hardly-sour');
    expect(codes({ volumeL: 10, alkalinity: { value: 2.5, unit: 'mg/L CaCO3' }, use: 'can' })).toContain(
      'can-stays-sour',
    );
  });

  it('undiluted the sour liquid stands at its own pH', () => {
    expect(sourCanPh({ alkalinityMeqPerL: 2.5, waterPh: 7.6, n: 1 })).toBeCloseTo(3.9, 5);
  });
});

describe('chlorine', () => {
  it('that is not known gives no dose, and says so', () => {
    const answer = assessWater({ volumeL: 10 });
    expect(answer.ascorbicAcidMg).toBeUndefined();
    expect(answer.advice.map(({ code }) => code)).toEqual(['chlorine-not-given', 'alkalinity-not-given']);
  });

  it('of nothing asks for nothing', () => {
    const answer = assessWater({ volumeL: 10, freeChlorineMgPerL: 0, use: 'can' });
    expect(answer.thiosulfatePentahydrateMg).toBe(0);
    expect(answer.advice.map(({ code }) => code)).toContain('no-chlorine');
  });

  it('free: half goes in 14 to 35 h indoors and in 0.3 to 2.3 h in sun', () => {
    // ln 2 / 0.05 = 13.9 h, ln 2 / 0.02 = 34.7 h; ln 2 / 2 = 0.35 h, ln 2 / 0.3 = 2.31 h
    const answer = assessWater({ volumeL: 10, freeChlorineMgPerL: 1 });
    expect(answer.halvingIndoorsH?.low).toBeCloseTo(13.86, 2);
    expect(answer.halvingIndoorsH?.high).toBeCloseTo(34.66, 2);
    expect(answer.halvingInSunH?.low).toBeCloseTo(0.347, 3);
    expect(answer.halvingInSunH?.high).toBeCloseTo(2.31, 2);
  });

  it('bound as chloramine: standing is not offered, not even beside free chlorine', () => {
    for (const freeChlorineMgPerL of [undefined, 0.2]) {
      const answer = assessWater({ volumeL: 10, freeChlorineMgPerL, chloramineMgPerL: 0.6 });
      expect(answer.halvingIndoorsH).toBeUndefined();
      const said = answer.advice.map(({ code }) => code);
      expect(said).toContain('standing-not-chloramine');
      expect(said).not.toContain('standing-free');
      expect(said).toContain('dose-thiosulfate');
    }
  });

  it('stronger than drinking water is not called a trifle', () => {
    const said = codes({ volumeL: 10, freeChlorineMgPerL: 10, use: 'raw-crop' });
    expect(said).not.toContain('pail-hardly-matters');
    expect(said).not.toContain('can-optional');
    expect(said).toContain('dose-either');
  });

  it('rain and ditches are not asked for a chlorine report', () => {
    for (const source of ['rain', 'roof', 'ditch', 'pond'] as const)
      expect(codes({ volumeL: 10, source })).not.toContain('chlorine-not-given');
    for (const source of ['tap', 'well', undefined] as const)
      expect(codes({ volumeL: 10, source })).toContain('chlorine-not-given');
  });
});
