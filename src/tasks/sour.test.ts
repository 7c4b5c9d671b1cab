import { beforeAll, describe, expect, it } from 'vitest';
import { saySour } from '#words/en/sour.ts';
import { answerSour, explainSour, likelySour, openSour, runSour, type SourResult, sour } from './sour.ts';

const DRAWS = 60;
const pail = {
  vessel: { volumeL: 12, gasRoom: 0.25 },
  plants: [
    { material: 'grass-clippings-fresh', massKg: 2, treated: 'no' },
    { material: 'kitchen-trimmings', massKg: 0.8 },
  ],
  water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
  sugar: { product: 'white-sugar', massKg: 0.2 },
  temperatureC: 20,
};
const meter = (...looks: readonly (readonly [number, number])[]) =>
  looks.map(([day, ph]) => ({ day, ph, by: 'meter' }));

function ask(more: object = {}): SourResult {
  const said = sour({ ...pail, ...more }, { draws: DRAWS });
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}

function opened(more: object = {}) {
  const asked = openSour({ ...pail, ...more });
  if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
  return asked.opened;
}

const ordered = ({ low, likely, high }: { low: number; likely: number; high: number }) =>
  low <= likely && likely <= high;

describe('a forecast without looks', () => {
  let plain: SourResult;
  beforeAll(() => {
    plain = ask();
  });

  it('has every day from 0 to 21 unless other days are asked', () => {
    expect(plain.days.map(({ day }) => day)).toEqual(Array.from({ length: 22 }, (_, day) => day));
    expect(plain.band).toHaveLength(21 * 4 + 1);
    expect(ask({ days: 3 }).days).toHaveLength(4);
  });

  it('gives every range in order, and the likely one as the plain figure', () => {
    for (const day of plain.days) {
      for (const one of Object.values(day)) if (typeof one === 'object') expect(ordered(one)).toBe(true);
      expect(day.gasLPerDay).toBe(day.gasRangeLPerDay.likely);
      expect(day.sugarGPerL).toBe(day.sugarRangeGPerL.likely);
    }
    for (const one of [...Object.values(plain.reach), plain.plateauPh, plain.heldDay])
      expect(one === null || ordered(one)).toBe(true);
  });

  it('starts from the sugar that went in: 200 g of white sugar in 8.3 L of liquid', () => {
    // hexose of 1 kg sucrose: 1.053 kg (342.3 g take up 18 g of water); liquid = 6 + water of the plants
    expect(plain.days[0]?.sugarGPerL).toBeCloseTo((200 * 1.053) / plain.liquidL, 0);
  });

  it('passes 4.6 before 4.2 before 4.0 before it is held', () => {
    const days = [plain.reach['4.6'], plain.reach['4.2'], plain.reach['4.0'], plain.heldDay].map((one) => one?.likely);
    expect(days).toEqual([...days].sort((a, b) => (a ?? Infinity) - (b ?? Infinity)));
    expect(days[0]).toBeGreaterThan(0);
  });

  it('is unknown, since nobody has read the acidity, and says no word for it before the first look', () => {
    expect(plain.state).toBe('unknown');
    expect(plain.held).toBe(false);
    expect(saySour(plain)[0]).toMatch(/^Sour \(pH 4\.2\)/);
  });

  it('is the same every time', () => {
    expect(ask()).toEqual(plain);
  });

  it('says null, and in how many draws it came, where fewer than half get there', () => {
    const bare = ask({ sugar: undefined, water: { volumeL: 7, alkalinityMeqPerL: 20 }, temperatureC: 4, days: 7 });
    expect(bare.reach['4.0']).toBeNull();
    expect(bare.reachedFraction['4.0']).toBeLessThan(0.5);
    expect(saySour(bare).join(' ')).toMatch(/not likely within \d+ days/);
  });
});

describe('slices of runs', () => {
  it('are the same runs, however they are cut', () => {
    const batch = opened({ days: 7 });
    const whole = runSour(batch, 0, 24);
    const cut = [...runSour(batch, 0, 10), ...runSour(batch, 10, 14)];
    expect(answerSour(batch, cut)).toEqual(answerSour(batch, whole));
  });

  it('are kept by a key that looks do not change, and everything that runs does', () => {
    const { key } = opened();
    expect(opened({ looks: meter([3, 5]), today: 4 }).key).toBe(key);
    for (const more of [{ temperatureC: 21 }, { lid: 'none' }, { days: 40 }, { starterL: 1 }, { saltKg: 0.1 }])
      expect(opened(more).key).not.toBe(key);
  });

  it('can be handed to a worker', () => {
    const batch = opened({ days: 5, looks: meter([1, 6]) });
    expect(runSour(structuredClone(batch), 0, 3)).toEqual(runSour(batch, 0, 3));
  });
});

describe('the likely line', () => {
  it('lies within the band of the draws on most days and passes the lines in order', () => {
    const batch = opened();
    const line = likelySour(batch);
    const { band } = answerSour(batch, runSour(batch, 0, DRAWS));
    const inside = line.days.filter(({ ph }, i) => ph >= (band[i]?.ph.low ?? 0) && ph <= (band[i]?.ph.high ?? 0));
    expect(inside.length).toBeGreaterThan(0.9 * band.length);
    expect(line.reach['4.6'] ?? Infinity).toBeLessThan(line.reach['4.2'] ?? Infinity);
  });
});

describe('looks', () => {
  const looks = meter([0, 6.3], [1, 5.2], [2, 4.5], [4, 4.1], [7, 3.8], [9, 3.7]);
  let seen: SourResult;
  beforeAll(() => {
    seen = ask({ looks });
  });

  it('give the word of the table of states, for the day of the last look', () => {
    expect(seen.today).toBe(9);
    expect(seen.state).toBe('ready');
    expect(seen.held).toBe(false);
    expect(seen.reasons.length).toBeGreaterThan(0);
    expect(seen.wouldChange.length).toBeGreaterThan(0);
    expect(saySour(seen)[0]).toMatch(/^Ready\. Not held yet/);
  });

  it('narrow the band of the days to come', () => {
    const plain = ask();
    const width = (of: SourResult) => (of.days[9]?.ph.high ?? 0) - (of.days[9]?.ph.low ?? 0);
    expect(width(seen)).toBeLessThan(width(plain));
  });

  it('stand beside the band they were expected in, with the error of their tool', () => {
    expect(seen.readings.map(({ day, ph }) => [day, ph])).toEqual(looks.map(({ day, ph }) => [day, ph]));
    for (const { errorPh, expectedPh } of seen.readings) {
      expect(ordered(errorPh)).toBe(true);
      expect(expectedPh !== null && ordered(expectedPh)).toBe(true);
    }
  });

  it('move beliefs, each told before and after', () => {
    expect(seen.beliefs.map(({ unknown }) => unknown)).toEqual([
      'rate',
      'count',
      'buffer',
      'sugar',
      'warmth',
      'startPh',
    ]);
    for (const { from, to } of seen.beliefs) expect(ordered(from) && ordered(to)).toBe(true);
  });

  it('can be tried on the same runs without a new opening', () => {
    const batch = opened();
    expect(answerSour(batch, runSour(batch, 0, DRAWS), opened({ looks }).input.looks)).toEqual(seen);
  });

  it('of which none is younger than ten days make it unknown', () => {
    expect(ask({ looks: meter([9, 3.7]), today: 19 }).state).toBe('unknown');
  });

  it('that show it lost leave only tipping, with how it is done, and no forecast in words', () => {
    const lost = ask({ looks: [...meter([0, 6.1], [3, 6.3]), { day: 5, ph: 6.9, by: 'meter', smell: 'egg' }] });
    expect(lost.state).toBe('lost');
    expect(lost.rescues.map(({ kind }) => kind)).toEqual(['tip']);
    const rules = lost.cautions.map(({ rule }) => rule);
    expect(rules).toEqual(expect.arrayContaining(['foul-closed-open-it-outdoors', 'tip-nothing-of-it-on-a-bed']));
    expect(saySour(lost).join(' ')).not.toMatch(/likely about day/);
  });

  it('that show it slow offer ways to save it, least effort first and tipping last', () => {
    const slow = ask({ temperatureC: 11, looks: meter([0, 6.9], [3, 6.4], [6, 5.7], [9, 5.1]) });
    expect(slow.state).toBe('slow');
    expect(slow.rescues[0]?.kind).toBe('wait');
    expect(slow.rescues.at(-1)?.kind).toBe('tip');
    for (const { text } of slow.rescues) expect(text.length).toBeGreaterThan(10);
  });
});

describe('odd entries', () => {
  const asked = (more: object) => ask({ days: 5, ...more }).questions.map(({ about }) => about);

  it('are asked about in words, and every look is kept', () => {
    const looks = meter([0, 6.4], [2, 5.6], [1, 6], [3, 7.8], [3, 7.8], [4, 41], [-1, 6.5]);
    const odd = ask({ days: 5, today: 4, looks });
    expect(odd.looks).toHaveLength(looks.length);
    expect(odd.readings).toHaveLength(looks.length);
    expect(new Set(odd.questions.map(({ about }) => about))).toEqual(
      new Set(['looks[2].day', 'looks[3].ph', 'looks[4].ph', 'looks[5].ph', 'looks[6].day']),
    );
    for (const { text } of odd.questions) expect(text).toMatch(/\?.*kept/);
  });

  it('are judged with: a doubtful jump still makes the word, and the reasons say that it is in question', () => {
    const jumped = ask({ days: 5, looks: meter([0, 6.4], [2, 4.8], [3, 6.9]) });
    expect(jumped.state).toBe('lost');
    expect(jumped.reasons.join(' ')).toMatch(/in question/);
  });

  it('of no acidity at all make it unknown rather than sour', () => {
    expect(ask({ days: 5, looks: meter([0, 6.4], [2, 41]) }).state).toBe('unknown');
  });

  it('of temperature are kept as typed in the question, and reckoned as the colder reading', () => {
    const odd = ask({ days: 5, temperatureC: 68 });
    expect(odd.questions).toMatchObject([{ about: 'temperatureC', value: 68 }]);
    expect(odd.meanC.allDays).toBeCloseTo(20, 9);
    expect(odd.temperatureC[0]?.meanC).toBeCloseTo(20, 9);
  });

  it('of 50 °F typed as °C do not shorten the hold to that of a warm batch', () => {
    // (50 − 32) · 5/9 = 10 °C: 39 days of hold, against 15 at 20 °C and above
    const low = meter([0, 6.4], [4, 3.9], [8, 3.8], [14, 3.8], [19, 3.8]);
    expect(ask({ days: 19, temperatureC: 50, looks: low }).held).toBe(false);
    expect(ask({ days: 19, temperatureC: 30, looks: low }).held).toBe(true);
  });

  it('are none in an ordinary record', () => {
    expect(asked({ looks: meter([0, 6.4], [2, 5.2], [5, 4.4]) })).toEqual([]);
  });
});

describe('what is no number at all', () => {
  it('is a problem at its field, with what would do', () => {
    const said = sour({ ...pail, temperatureC: 'warm', looks: [{ day: 'Monday', ph: 'low', by: 'meter' }] });
    expect(said.ok).toBe(false);
    if (said.ok) return;
    expect(said.problems.map(({ field }) => field).sort()).toEqual(['looks[0].day', 'looks[0].ph', 'temperatureC']);
    for (const { allowed } of said.problems) expect(allowed).not.toBe('');
  });
});

describe('cautions', () => {
  const rules = (more: object) => ask({ days: 5, ...more }).cautions.map(({ rule }) => rule);

  it('stop a tight lid, with the pressure foretold', () => {
    const tight = ask({ days: 5, lid: 'tight' });
    const [stop] = tight.cautions.filter(({ rule }) => rule === 'gas-behind-a-tight-lid');
    expect(stop?.level).toBe('stop');
    expect(stop?.text).toMatch(/bar/);
  });

  it('speak of a room only where one was told', () => {
    expect(rules({}).filter((rule) => rule.startsWith('room'))).toEqual([]);
    expect(rules({ room: { roomM3: 0.2 } })).toContain('room-gas-past-short-limit');
  });

  it('keep those of the weigh-in and of the scraps', () => {
    expect(rules({ vessel: { volumeL: 9 } })).toContain('past-the-fill-line');
    expect(rules({ plants: [{ material: 'grass-clippings-fresh', massKg: 2, treated: 'unknown' }] })).toContain(
      'weedkiller-unknown',
    );
  });

  it('name a field that was not read', () => {
    expect(rules({ moon: 'full' })).toContain('field-not-read');
  });
});

describe('the workings', () => {
  it('stand for every date and figure shown, with formula, inputs and sources', () => {
    const workings = explainSour({ ...pail, days: 7 }, { draws: DRAWS });
    const figures = workings.map(({ figure }) => figure);
    expect(figures).toEqual(expect.arrayContaining(['reach.4.2', 'plateauPh', 'hold.days', 'alarm.4.6']));
    for (const one of workings) {
      expect(one.formula).not.toBe('');
      expect(one.inputs.length).toBeGreaterThan(0);
      expect(one.sources.length).toBeGreaterThan(0);
    }
  });

  it('are none where the input has problems', () => {
    expect(explainSour({})).toEqual([]);
  });
});
