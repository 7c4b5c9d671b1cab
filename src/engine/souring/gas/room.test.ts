// CO2 in the air of a room, and what each lid lets through.

import { describe, expect, it } from 'vitest';
import { LIDS, lidMeaning } from './lid.ts';
import { CO2_LIMITS_PPM, leastAirChangesPerH, leastRoomM3, mostPpm, OUTSIDE_PPM, risePpm } from './room.ts';

const shed = { gasLPerDay: 24, roomM3: 10, airChangesPerH: 0.5 };

describe('the air of a room', () => {
  it('settles where as much gas leaves as comes', () => {
    // 1 L an hour into 0.5 × 10,000 L of fresh air an hour: 200 ppm
    expect(risePpm(shed, Number.POSITIVE_INFINITY)).toBeCloseTo(200, 8);
    expect(risePpm(shed, 1 / 0.5)).toBeCloseTo(200 * (1 - Math.exp(-1)), 8);
  });

  it('rises straight on where no air is renewed', () => {
    // 24 L in a day into 10,000 L
    expect(risePpm({ ...shed, airChangesPerH: 0 }, 24)).toBeCloseTo(2400, 8);
  });

  it('never holds more than all the gas of the batch', () => {
    const shut = { ...shed, airChangesPerH: 0, totalGasL: 50 };
    expect(mostPpm(shut)).toBeCloseTo(OUTSIDE_PPM + 5000, 8);
    expect(mostPpm({ ...shed, totalGasL: 50 })).toBeCloseTo(OUTSIDE_PPM + 200, 8);
    expect(mostPpm({ ...shut, totalGasL: Number.NaN })).toBeNaN();
    expect(mostPpm({ ...shut, gasLPerDay: 0, totalGasL: 0 })).toBe(OUTSIDE_PPM);
  });

  it('stands at the limit with the least air, and in the least room', () => {
    const small = { gasLPerDay: 40, roomM3: 0.5 };
    const airChangesPerH = leastAirChangesPerH(small, CO2_LIMITS_PPM.day);
    expect(OUTSIDE_PPM + risePpm({ ...small, airChangesPerH }, Number.POSITIVE_INFINITY)).toBeCloseTo(5000, 6);
    const roomM3 = leastRoomM3({ gasLPerDay: 40, airChangesPerH: 0.3 }, CO2_LIMITS_PPM.day);
    const there = risePpm({ gasLPerDay: 40, airChangesPerH: 0.3, roomM3 }, Number.POSITIVE_INFINITY);
    expect(OUTSIDE_PPM + there).toBeCloseTo(5000, 6);
    expect(leastRoomM3({ gasLPerDay: 0, airChangesPerH: 0 }, CO2_LIMITS_PPM.day)).toBe(0);
    expect(leastRoomM3({ gasLPerDay: 1, airChangesPerH: 0 }, CO2_LIMITS_PPM.day)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a lid', () => {
  it('keeps gas in only when it is tight', () => {
    expect(LIDS.filter((lid) => !lidMeaning(lid).letsGasOut)).toEqual(['tight']);
  });

  it('lets the more air in, the more open it is, from airtight 0 to open 1', () => {
    const open = LIDS.map((lid) => lidMeaning(lid).opennessFraction.likely);
    expect(open).toEqual([...open].sort((a, b) => a - b));
    expect([open[0], open.at(-1)]).toEqual([0, 1]);
  });

  it('is not said to keep insects out when it only lies there or is missing', () => {
    expect(LIDS.filter((lid) => !lidMeaning(lid).keepsInsectsOut)).toEqual(['loose', 'none']);
  });
});
