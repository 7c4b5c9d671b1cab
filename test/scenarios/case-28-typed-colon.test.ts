import { describe, expect, it } from 'vitest';
import { parseRatio, ratioVolumes } from '#engine/quantity/ratio.ts';
import { sayReadings } from '#words/quantity.ts';

describe('"1:10" typed by a grower', () => {
  const read = parseRatio('1:10');
  if (!read.ok || read.clear) throw new Error('a typed colon was not asked about');

  it('is shown both ways for 10 L: 1,000 mL for 1 in 10, 909 mL for 1 to 10', () => {
    const said = sayReadings(read.readings, 10).map((line) => line.replaceAll('\u00a0', ' '));
    expect(said[0]).toMatch(/^1 in 10: 1000 mL of concentrate/);
    // 10,000 / 11 = 909.09
    expect(said[1]).toMatch(/^1 to 10: 909 mL of concentrate/);
  });

  it('is kept as volumes once chosen', () => {
    const [taken, added] = read.readings.map((ratio) => ratioVolumes({ ratio, mixtureL: 10 }));
    expect(taken?.concentrateMl).toBeCloseTo(1000, 9);
    expect(taken?.waterMl).toBeCloseTo(9000, 9);
    expect(added?.concentrateMl).toBeCloseTo(10_000 / 11, 9);
    expect(added?.waterMl).toBeCloseTo(100_000 / 11, 9);
  });
});
