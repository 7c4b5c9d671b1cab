// Two cases of one filling: what one change does to the figures, and what a room's air comes to. Expectations are
// directions a grower would call common sense, and arithmetic shown beside them.

import { describe, expect, it } from 'vitest';
import { caseDifference, changesBetween } from './case-difference.ts';
import { answerSour, openSour, runSour } from './sour.ts';
import { answerCase, CASE_DAYS, type CaseAnswer, type CaseInput, caseBands, roomAir, sourInput } from './two-cases.ts';

const PAIL: CaseInput = {
  vessel: { volumeL: 12, gasRoom: 0.25, lid: 'loose' },
  plants: [
    { material: 'grass-clippings-fresh', massKg: 2.1, treated: 'no' },
    { material: 'cabbage-leaves', massKg: 0.7 },
  ],
  water: { volumeL: 5.2, alkalinityMeqPerL: 4.2 },
  sugar: { product: 'white-sugar', massKg: 0.15 },
  temperatureC: 14,
  chop: 'chopped',
};

function answered(input: CaseInput): CaseAnswer {
  const answer = answerCase(input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
}

const sourDay = (input: CaseInput) => answered(input).figures.sourDay ?? Number.POSITIVE_INFINITY;

describe('a case', () => {
  it('fills as fit says: 12 L with a quarter of gas room leaves 9 L', () => {
    // 12 × 0.75 = 9.0 L
    expect(answered(PAIL).filled.fill.usableL).toBeCloseTo(9, 12);
  });

  it('gives one line every six hours for the days foretold', () => {
    const { line } = answered(PAIL);
    expect(line).toHaveLength(CASE_DAYS * 4 + 1);
    expect(line.at(-1)?.day).toBe(CASE_DAYS);
  });

  it('is sour earlier where it stands warmer, and by no more than the line shows', () => {
    expect(sourDay({ ...PAIL, temperatureC: 22 })).toBeLessThan(sourDay(PAIL));
    const { line, figures } = answered(PAIL);
    const at = line.find(({ ph }) => ph <= 4.2)?.day ?? Number.NaN;
    expect(Math.abs(at - (figures.sourDay ?? Number.NaN))).toBeLessThanOrEqual(0.25);
  });

  it('with finer pieces is never later, with torn ones never earlier', () => {
    const lean: CaseInput = { ...PAIL, sugar: { product: 'white-sugar', massKg: 0.02 } };
    for (const input of [PAIL, lean]) {
      const chopped = sourDay(input);
      expect(sourDay({ ...input, chop: 'fine' })).toBeLessThanOrEqual(chopped);
      expect(sourDay({ ...input, chop: 'coarse' })).toBeGreaterThanOrEqual(chopped);
    }
    // Where the plants' own sugar is nearly all there is, the size of the pieces shows in the line itself.
    const lowest = (chop: CaseInput['chop']) => Math.min(...answered({ ...lean, chop }).line.map(({ ph }) => ph));
    expect(lowest('coarse')).toBeGreaterThan(lowest('fine'));
  });

  it('under a tight lid carries the stop of that lid', () => {
    const { cautions } = answered({ ...PAIL, vessel: { ...PAIL.vessel, lid: 'tight' } });
    expect(cautions.filter(({ level }) => level === 'stop').map(({ rule }) => rule)).toContain('lid-tight-no-vent');
  });

  it('that is no filling answers its problems and nothing else', () => {
    const answer = answerCase({ ...PAIL, water: { volumeL: -1 } });
    expect(answer.ok).toBe(false);
  });

  it('has spans of many runs that begin before the likely day and lie round the likely plateau', () => {
    const asked = openSour(sourInput(PAIL));
    if (!asked.ok) throw new Error('not opened');
    const bands = caseBands(answerSour(asked.opened, runSour(asked.opened, 0, 60)));
    const { figures } = answered(PAIL);
    expect(figures.plateauPh).toBeGreaterThanOrEqual(bands.plateauPh.low);
    expect(figures.plateauPh).toBeLessThanOrEqual(bands.plateauPh.high);
    expect(bands.sourDay?.low).toBeLessThan(figures.sourDay ?? Number.NaN);
  });
});

describe('what differs between two cases', () => {
  it('is named once each, in the order of the sheet', () => {
    const after: CaseInput = {
      ...PAIL,
      vessel: { ...PAIL.vessel, lid: 'vent' },
      plants: [{ material: 'grass-clippings-fresh', massKg: 1.6, treated: 'no' }],
      water: { volumeL: 6.2, alkalinityMeqPerL: 4.2 },
      sugar: { product: 'white-sugar', massKg: 0.2 },
      temperatureC: 22,
      chop: 'fine',
    };
    const changes = changesBetween(PAIL, after);
    expect(changes.map(({ kind }) => kind)).toEqual(['warmth', 'sugar', 'water', 'scrap', 'scrap', 'chop', 'lid']);
    // 22 − 14 = 8 °C; 200 − 150 = 50 g; 6.2 − 5.2 = 1 L; 1.6 − 2.1 = −0.5 kg; 0 − 0.7 = −0.7 kg
    const by = changes.map((one) =>
      one.kind === 'warmth'
        ? one.byC
        : one.kind === 'sugar'
          ? one.byG
          : one.kind === 'water'
            ? one.byL
            : one.kind === 'scrap'
              ? one.byKg
              : 0,
    );
    [8, 50, 1, -0.5, -0.7, 0, 0].forEach((value, i) => {
      expect(by[i]).toBeCloseTo(value, 9);
    });
  });

  it('is nothing between a case and itself, and a lid not told counts as laid on', () => {
    const { lid: _lid, ...vessel } = PAIL.vessel;
    expect(changesBetween(PAIL, { ...PAIL, vessel })).toEqual([]);
  });

  it('carries the days of both', () => {
    const warm: CaseInput = { ...PAIL, temperatureC: 22 };
    const both = caseDifference(
      { input: PAIL, figures: answered(PAIL).figures },
      { input: warm, figures: answered(warm).figures },
    );
    expect(both.sour.after).toBeLessThan(both.sour.before ?? Number.NaN);
  });
});

describe('the air of a room', () => {
  const { likely } = answered({ ...PAIL, temperatureC: 22 });

  it('holds less gas the better it is aired and the larger it is', () => {
    const shut = roomAir(likely, { roomM3: 1, airing: 'shut' }).mostPpm;
    expect(roomAir(likely, { roomM3: 1, airing: 'open' }).mostPpm).toBeLessThan(shut);
    expect(roomAir(likely, { roomM3: 10, airing: 'shut' }).mostPpm).toBeLessThan(shut);
  });

  it('of a cupboard of 0.1 m³ shut tight is past the limit of a working day, and is told so', () => {
    // A litre of CO2 in 0.1 m³ is 10,000 ppm; the limit of a working day is 5,000 ppm (OSHA, NIOSH).
    const litres = likely.days.reduce((sum, { gasRangeLPerDay }) => sum + gasRangeLPerDay.high, 0);
    expect(litres).toBeGreaterThan(1);
    const air = roomAir(likely, { roomM3: 0.1, airing: 'shut' });
    expect(air.mostPpm).toBeGreaterThan(air.dayLimitPpm);
    expect(air.cautions.map(({ rule }) => rule).join()).toMatch(/room-gas-past/);
    expect(roomAir(likely, { roomM3: 1000, airing: 'open' }).cautions).toEqual([]);
  });
});
