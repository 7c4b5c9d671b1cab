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
    expect(codes([meter(0, 6.5), meter(8, 4.6)], 8)).toEqual([]);
  });

  it('are not those at the very limits of what a batch can read', () => {
    expect(codes([meter(1, 2)])).toEqual([]);
    expect(codes([meter(1, 10)])).toEqual([]);
    expect(codes([meter(1, 0)])).toEqual(['ph-outside']);
    expect(codes([meter(1, 14)])).toEqual(['ph-outside']);
  });

  it('are asked about at the one that was typed later, where two are of one moment', () => {
    expect(oddLooks([meter(1, 5), meter(1, 5.1)], 30).map(({ about }) => about)).toEqual(['looks[1].ph']);
  });

  it('are not a jump from a reading farther back, nor from the first of two at one moment', () => {
    expect(codes([meter(0, 7), meter(1, 5.5), meter(2, 4.9)])).toEqual([]);
    expect(codes([meter(1, 6.8), meter(1, 5), meter(2, 4.6)])).toEqual(['same-minute']);
  });

  it('are a second jump that goes on, or comes back by no more than half', () => {
    expect(codes([meter(1, 5), meter(2, 7.5), meter(3, 9.8)])).toEqual(['jump-up', 'jump-up']);
    expect(codes([meter(1, 4), meter(2, 8), meter(3, 6)])).toEqual(['jump-up', 'jump-down']);
    expect(codes([meter(1, 4), meter(2, 8), meter(3, 5.9)])).toEqual(['jump-up']);
  });

  it('are asked about once where the pH itself is out of bounds, not as a jump to it or from it', () => {
    expect(codes([meter(1, 5), meter(2, 11)])).toEqual(['ph-outside']);
    expect(codes([meter(1, 11), meter(2, 5)])).toEqual(['ph-outside']);
  });

  it('are a fall of 2 within two days, the second day full, or one that ends below 3, not at 3', () => {
    expect(codes([meter(0, 6.4), meter(2, 4.4)])).toEqual(['jump-down']);
    expect(codes([meter(0, 6.4), meter(2.1, 4.4)])).toEqual([]);
    expect(codes([meter(0, 6.4), meter(6, 3)])).toEqual([]);
  });
});

describe('what a question is given for its sentence', () => {
  const asked = (looks: Parameters<typeof oddLooks>[0], today = 30) => oddLooks(looks, today).map((one) => one.values);

  it.each([
    ['days out of order', [meter(5, 4.4), meter(3, 4.5)], 30, { day: 3, beforeDay: 5 }],
    ['a day before the filling', [meter(-1, 6.5)], 30, { day: -1 }],
    ['a day after today', [meter(9, 4)], 8, { day: 9, today: 8 }],
    ['a pH out of bounds', [meter(1, 11)], 30, { ph: 11, day: 1, leastPh: 2, mostPh: 10 }],
    ['a jump by meter', [meter(1, 4), meter(2, 6)], 30, { ph: 6, day: 2, fromPh: 4, fromDay: 1, strip: false }],
    [
      'a jump by strip',
      [meter(1, 4), { day: 2, ph: 6, by: 'strip' as const }],
      30,
      { ph: 6, day: 2, fromPh: 4, fromDay: 1, strip: true },
    ],
  ])('is what was typed: %s', (_, looks, today, values) => {
    expect(asked(looks, today)).toEqual([values]);
  });

  it('is the temperature as typed, and as it is reckoned', () => {
    expect(oddWarmth(50).map((one) => one.values)).toEqual([{ typedC: 50, asC: 10 }]);
    expect(oddWarmth(-6).map((one) => one.values)).toEqual([{ typedC: -6 }]);
    expect(oddWarmth([[2, 19, 11]]).map((one) => one.values)).toEqual([{ day: 2, lowC: 19, highC: 11 }]);
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

  it('are Fahrenheit up to 130, frost down to −5 °C, and none where low and high are the same', () => {
    expect(oddWarmth(130).map(({ code }) => code)).toEqual(['fahrenheit']);
    expect(oddWarmth(-5)).toEqual([]);
    expect(oddWarmth([[0, 12, 12]])).toEqual([]);
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

  it('teaches the forecast the day of the filling and today', () => {
    const looks = [meter(0, 6.4), meter(9, 4)];
    expect(toLearnFrom(looks, 9)).toEqual(looks);
  });

  it.each([
    ['of another pH', meter(1 + MINUTE / 2, 5.1)],
    ['with another tool', { day: 1 + MINUTE / 2, ph: 5, by: 'strip' } as const],
    ['two minutes later', meter(1 + 2 * MINUTE, 5)],
  ])('teaches the forecast two readings within a minute where the second is one %s', (_, second) => {
    const taught = toLearnFrom([meter(1, 5), second], 9);
    expect(taught.map(({ ph }) => ph)).toEqual([5, second.ph]);
  });

  it('teaches the forecast one reading where the second is a minute later', () => {
    expect(toLearnFrom([meter(0, 5), meter(MINUTE, 5)], 9).map(({ ph }) => ph)).toEqual([5, undefined]);
  });
});
