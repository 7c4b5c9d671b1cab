// What a grower reads about gas.

import { describe, expect, it } from 'vitest';
import { foulGasRules, lidGasRules, roomGasRules } from '#engine/rules/gas.ts';
import { judge } from '#engine/rules/rule.ts';
import { gasCautions, sayClosed, sayFoulGas, sayGas, sayRoom } from './gas.ts';

const said = (found: ReturnType<typeof judge>) => found.map(({ rule, values }) => gasCautions[rule]?.(values) ?? '');

describe('the words for a foul closed bucket', () => {
  const [open = '', gas = '', nose = ''] = said(
    judge(foulGasRules, {
      state: 'lost',
      foulSmell: true,
      lid: 'tight',
      lidBulged: true,
      likelyPpm: 1623,
      highPpm: 6210,
    }),
  );

  it('name every step of opening it', () => {
    for (const step of [
      /not open it indoors/,
      /not alone/,
      /outdoors/,
      /children and the dog away/,
      /upwind/,
      /arm’s length/,
      /Never lean over it/,
      /stand aside and ease one clip/,
      /open for an hour/,
      /ill, get into fresh air at once and call the emergency number/,
    ]) {
      expect(open).toMatch(step);
    }
  });

  it('give the estimate to two digits beside the limits, and warn of the nose', () => {
    expect(gas).toMatch(/1,600.ppm/);
    expect(gas).toMatch(/6,200.ppm/);
    expect(gas).toMatch(/20.ppm.*100.ppm/);
    expect(gas).toMatch(/not a measurement/);
    expect(nose).toMatch(/100.ppm/);
  });

  it('say so when it cannot be reckoned', () => {
    const lines = said(judge(foulGasRules, { foulSmell: true, likelyPpm: Number.NaN, highPpm: Number.NaN }));
    expect(lines.join(' ')).toMatch(/is not known/);
    expect(lines.join(' ')).not.toMatch(/NaN|undefined|unknown share/);
  });
});

describe('the words for a tight lid', () => {
  it('give pressure, push and day where they are known', () => {
    const known = { lid: 'tight', mostPressureAtm: 1.124, pastDay: 4.2, lidDiameterM: 0.2 } as const;
    const [line = ''] = said(judge(lidGasRules, known));
    // 1.124 atm × 1.01325 = 1.1 bar; 1.124 × 10332.27 kgf/m2 × 0.031416 m2 = 365 kg
    expect(line).toMatch(/1\.1.bar above the air outside, a push of 365.kg on a 20.cm lid/);
    expect(line).toMatch(/From day 4/);
  });

  it('give none where it is not', () => {
    const [line = ''] = said(judge(lidGasRules, { lid: 'tight', mostPressureAtm: Number.NaN, lidDiameterM: 0.2 }));
    expect(line).toMatch(/not known/);
    expect(line).not.toMatch(/NaN|undefined|unknown/);
  });
});

describe('the words for a room', () => {
  it('name the gas, the limit and the cure', () => {
    const room = { gasLPerDay: 24, roomM3: 1, airChangesPerH: 0.2, totalGasL: 1000 };
    const [line = ''] = said(judge(roomGasRules, room));
    expect(line).toMatch(/5,400.ppm \(0\.54.%\)/);
    expect(line).toMatch(/5,000.ppm \(0\.5.%\)/);
    expect(line).toMatch(/0\.22 changes of air an hour/);
    expect(line).toMatch(/1\.1.m³/);
  });

  it('offer no larger room where no air is renewed', () => {
    const [line = ''] = said(judge(roomGasRules, { gasLPerDay: 24, roomM3: 1, airChangesPerH: 0, totalGasL: 8 }));
    expect(line).toMatch(/changes of air an hour here\. Nobody/);
  });
});

describe('the plain sentences', () => {
  it('give litres, pressure, air and foul gas, and admit what is not known', () => {
    expect(sayGas({ day: 2, gasL: 3.24 })[0]).toMatch(/3\.2.L from day 2 to day 3/);
    expect(sayGas({ day: 2, gasL: Number.NaN })[0]).toMatch(/not known/);
    expect(sayGas(undefined)).toHaveLength(1);
    const hot = { temperatureC: 35, pressureAtm: 1.6 };
    expect(sayClosed({ last: { day: 14, pressureAtm: 1.12 }, hot })[1]).toMatch(/35.°C.*1\.6.bar/);
    expect(sayClosed({ last: { day: 14, pressureAtm: Number.NaN }, hot })).toHaveLength(1);
    expect(sayRoom({ mostPpm: 630, dayLimitPpm: 5000, leastAirChangesPerH: 0.02 })[0]).toMatch(/630.ppm/);
    expect(sayRoom({ mostPpm: Number.NaN, dayLimitPpm: 5000, leastAirChangesPerH: 0 })[0]).toMatch(/not known/);
    expect(sayFoulGas({ low: 310, likely: 1623, high: 6210 })).toMatch(/1,600.ppm.*310.ppm.*6,200.ppm/);
  });
});
