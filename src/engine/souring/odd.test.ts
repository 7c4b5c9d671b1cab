import { describe, expect, it } from 'vitest';
import { oddLooks, oddWarmth, reckoned, reckonedC, toJudge, toLearnFrom } from './odd.ts';

const codes = (looks: Parameters<typeof oddLooks>[0], today = 30) => oddLooks(looks, today).map(({ code }) => code);
const meter = (day: number, ph: number) => ({ day, ph, by: 'meter' as const });
const MINUTE = 1 / 1440;

describe('looks that are asked about', () => {
  it('are none in an ordinary record, read weekly or daily', () => {
    expect(codes([meter(0, 6.5), meter(7, 3.9), meter(14, 3.8)])).toEqual([]);
    expect(codes([6.3, 5.2, 4.5, 4.1, 3.8, 3.7].map((ph, i) => meter([0, 1, 2, 4, 7, 9][i] as number, ph)))).toEqual(
      [],
    );
  });

  it('are those typed out of the order of their days', () => {
    const [odd] = oddLooks([meter(0, 6.5), meter(5, 4.4), meter(3, 5)], 30);
    expect(odd).toMatchObject({ code: 'out-of-order', about: 'looks[2].day', value: 3 });
  });

  it('are two readings within a minute, and not within an hour', () => {
    expect(codes([meter(1, 5), meter(1, 5.1)])).toEqual(['same-minute']);
    expect(codes([meter(1, 5), meter(1 + MINUTE, 5.1)])).toEqual(['same-minute']);
    expect(codes([meter(1, 5), meter(1 + 60 * MINUTE, 5.1)])).toEqual([]);
  });

  it('are two readings within a minute also where one smell was noted apart from them', () => {
    expect(codes([meter(1, 5), { day: 1, smell: 'sour' }, meter(1, 5)])).toEqual(['same-minute']);
  });

  it('are a jump of 2 pH up at any distance, and down where it was quick or ends below 3', () => {
    expect(codes([meter(0, 4.4), meter(9, 6.4)])).toEqual(['jump-up']);
    expect(codes([meter(0, 4.4), meter(9, 6.3)])).toEqual([]);
    expect(codes([meter(0, 6.4), meter(1, 4.4)])).toEqual(['jump-down']);
    expect(codes([meter(0, 6.4), meter(6, 4.4)])).toEqual([]);
    expect(codes([meter(0, 6.4), meter(6, 2.6)])).toEqual(['jump-down']);
  });

  it('find a jump between neighbours in time, however they were typed', () => {
    expect(codes([meter(3, 4.9), meter(2, 7.1), meter(1, 5.4)])).toEqual(['jump-down', 'out-of-order', 'out-of-order']);
    expect(codes([meter(1, 5), meter(3, 4.8), meter(2, 7)])).toEqual(['out-of-order', 'jump-up']);
  });

  it('ask once about a reading that leaps away and comes back', () => {
    const spike = oddLooks([meter(1, 5.4), meter(2, 7.6), meter(3, 5), meter(4, 4.6)], 30);
    expect(spike.map(({ code, about }) => [code, about])).toEqual([['jump-up', 'looks[1].ph']]);
  });

  it('are a pH outside 2 to 10, and one that no liquid has', () => {
    expect(codes([meter(1, 11)])).toEqual(['ph-outside']);
    expect(codes([meter(1, 1.9)])).toEqual(['ph-outside']);
    expect(codes([meter(1, 41)])).toEqual(['ph-impossible']);
    expect(codes([meter(1, -1)])).toEqual(['ph-impossible']);
  });

  it('are days before the filling and after today', () => {
    expect(codes([meter(-1, 6.5)])).toEqual(['before-filling']);
    expect(codes([meter(9, 4)], 8)).toEqual(['after-today']);
  });
});

describe('temperatures that are asked about', () => {
  it('are degrees Fahrenheit typed as Celsius: 68 is asked about and reckoned as 20', () => {
    expect(oddWarmth(68)).toMatchObject([{ code: 'fahrenheit', about: 'temperatureC', value: 68 }]);
    // (68 − 32) · 5/9 = 20
    expect(reckonedC(68)).toBeCloseTo(20, 12);
    expect(reckoned([[0, 50, 68]])).toEqual([[0, 10, 20]]);
  });

  it('are none up to 45 °C, where heat is another matter', () => {
    for (const told of [-2, 0, 12, 30, 36, 45]) {
      expect(oddWarmth(told)).toEqual([]);
      expect(reckonedC(told)).toBe(told);
    }
  });

  it('are each named by their place in a list, and a low above its high is turned round', () => {
    const told = [
      [0, 12, 18],
      [1, 54, 20],
      [2, 19, 11],
    ] as const;
    expect(oddWarmth(told).map(({ code, about }) => [code, about])).toEqual([
      ['fahrenheit', 'temperatureC[1][1]'],
      ['low-above-high', 'temperatureC[2]'],
    ]);
    expect(reckoned(told)).toMatchObject([
      [0, 12, 18],
      [1, (54 - 32) / 1.8, 20],
      [2, 11, 19],
    ]);
  });

  it('are frost below −5 °C and more than 130, which is no weather in °F either', () => {
    expect(oddWarmth(-6).map(({ code }) => code)).toEqual(['temperature-outside']);
    expect(oddWarmth(140).map(({ code }) => code)).toEqual(['temperature-outside']);
    expect(reckonedC(140)).toBe(140);
  });
});

describe('what odd looks may still do', () => {
  it('keeps every look for the judgement, an impossible acidity as not read', () => {
    const looks = [meter(0, 6.4), meter(1, 41), meter(2, 11)];
    expect(toJudge(looks)).toEqual([looks[0], { ...looks[1], ph: Number.NaN }, looks[2]]);
  });

  it('teaches the forecast no acidity outside 2 to 10 and nothing outside its days, and one reading once', () => {
    const nose = { day: 2, ph: 11, by: 'meter', smell: 'sour' } as const;
    const taught = toLearnFrom([meter(-1, 6.6), meter(1, 5), meter(1, 5), nose, meter(12, 4)], 9);
    expect(taught).toEqual([meter(1, 5), { day: 1, by: 'meter' }, { day: 2, by: 'meter', smell: 'sour' }]);
  });
});
