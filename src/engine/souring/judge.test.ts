// The table of states, row by row: each expectation is the table's own wording with numbers on either side of its limits.
import { describe, expect, it } from 'vitest';
import { judgeBatch } from './judge.ts';
import type { Look, ReadBy, Smell } from './look.ts';

/** Readings written as "day pH smell", one after a comma. */
function batch(readings: string, by: ReadBy = 'meter'): readonly Look[] {
  return readings.split(', ').map((reading) => {
    const [day, ph, smell] = reading.split(' ');
    return { day: Number(day), ph: Number(ph), by, ...(smell && { smell: smell as Smell }) };
  });
}

const at20 = (looks: readonly Look[], today = Math.max(...looks.map((look) => look.day))) =>
  judgeBatch({ looks, temperatureC: 20, today });
const codes = (judged: { readonly reasons: readonly { readonly code: string }[] }) => judged.reasons.map((r) => r.code);

describe('souring', () => {
  it('holds while pH falls and no line is passed', () => {
    expect(at20(batch('0 6.3, 1 5.4')).state).toBe('souring');
  });
  it('holds at the very hour of the line, not after it', () => {
    expect(at20(batch('0 6.3, 3 5.5')).state).toBe('souring');
    expect(at20(batch('0 6.3, 3.1 5.5')).state).toBe('slow');
  });
});

describe('slow', () => {
  it('starts above 4.6 after five days at 20 °C', () => {
    expect(at20(batch('0 6.3, 2 5.0, 5 4.7')).state).toBe('souring');
    expect(at20(batch('0 6.3, 2 5.0, 5.2 4.7')).state).toBe('slow');
  });
  it('stays slow once a line was passed, although a later reading is under it', () => {
    expect(at20(batch('0 6.3, 4 5.2, 6 4.4')).state).toBe('slow');
  });
  it('starts a pad earlier by strip: 5.0 after four days is slow by strip, not by meter', () => {
    const readings = '0 6.5, 4 5.0';
    expect(at20(batch(readings, 'strip')).state).toBe('slow');
    expect(at20(batch(readings)).state).toBe('souring');
  });
  it('becomes a doubt when three days bring no fall', () => {
    const judged = at20(batch('0 6.3, 4 5.2, 7 5.2'));
    expect(judged.state).toBe('doubtful');
    expect(codes(judged)).toContain('stuck');
  });
  it('counts an unknown temperature as too late', () => {
    expect(
      judgeBatch({
        looks: batch('0 6.3, 1 5.8'),
        temperatureC: Number.NaN,
        today: 1,
      }).state,
    ).toBe('slow');
  });
});

describe('ready', () => {
  it('needs two readings at or below 4.2 that are 48 hours apart', () => {
    expect(at20(batch('0 6.3, 2 4.2, 3.9 4.1')).state).toBe('souring');
    expect(at20(batch('0 6.3, 2 4.2, 4 4.1')).state).toBe('ready');
  });
  it('lets the later reading stand 0.1 above the earlier, not more', () => {
    expect(at20(batch('0 6.3, 2 4.0, 4 4.1')).state).toBe('ready');
    expect(at20(batch('0 6.3, 2 4.0, 4 4.2')).state).toBe('doubtful');
  });
  it('needs 3.7 twice by strip', () => {
    expect(at20(batch('0 6.5, 2 4.0, 4 4.0', 'strip')).state).toBe('souring');
    expect(at20(batch('0 6.5, 2 3.7, 4 3.7', 'strip')).state).toBe('ready');
  });
  it('holds a reading that does not say its tool to the strip line', () => {
    const looks: Look[] = [
      { day: 0, ph: 6.3 },
      { day: 2, ph: 4.1 },
      { day: 4, ph: 4.1 },
    ];
    expect(at20(looks).state).toBe('souring');
  });
  it('is lost again by a reading above 4.2', () => {
    expect(at20(batch('0 6.3, 2 4.2, 4 4.2, 6 4.3')).state).toBe('souring');
  });
});

describe('doubtful', () => {
  it('follows one foul word while pH falls', () => {
    const judged = at20(batch('0 6.3, 1 5.5 egg'));
    expect(judged.state).toBe('doubtful');
    expect(judged.nextLookDay).toBe(2);
  });
  it('follows a foul word at or below 4.6 that does not fall', () => {
    expect(at20(batch('0 6.3, 2 4.6, 3 4.6 ammonia')).state).toBe('doubtful');
  });
  it('follows a climb of 0.2 to 0.3 by meter, of one pad by strip', () => {
    expect(at20(batch('2 3.9, 4 4.1')).state).toBe('doubtful');
    expect(at20(batch('2 3.9, 4 4.2')).state).toBe('doubtful');
    expect(at20(batch('2 3.5, 4 4.0', 'strip')).state).toBe('doubtful');
  });
  it('follows two people who smell differently within a day, until one of them comes round', () => {
    const start = batch('0 6.3, 2 4.1');
    const fork: Look = { day: 4, ph: 4.0, by: 'meter', smell: 'egg', who: 'Fork' };
    const rake: Look = { day: 4.5, smell: 'sour', who: 'Rake' };
    const forkAgain: Look = { day: 4.8, smell: 'sour', who: 'Fork' };
    expect(at20([...start, fork, rake]).state).toBe('doubtful');
    expect(at20([...start, fork, rake, forkAgain]).state).toBe('ready');
  });
  it('follows two people who read the same visit far apart', () => {
    const start = batch('0 6.3, 2 4.1');
    const rake: Look = { day: 4, ph: 3.6, by: 'meter', who: 'Rake' };
    const fork: Look = { day: 4.01, ph: 4.0, by: 'meter', who: 'Fork' };
    expect(codes(at20([...start, rake, fork]))).toContain('readers-differ');
  });
  it('does not follow a nose that cannot smell', () => {
    expect(at20(batch('0 6.3, 2 4.1 sour, 4 4.1 cannot-smell')).state).toBe('ready');
  });
});

describe('lost', () => {
  it('follows foul words twelve hours apart, not six', () => {
    expect(at20(batch('0 6.3, 2 4.0 egg, 2.25 4.0 egg')).state).toBe('doubtful');
    expect(at20(batch('0 6.3, 2 4.0 egg, 2.5 4.0 sewage')).state).toBe('lost');
  });
  it('follows a foul word above 4.6 when pH does not fall', () => {
    expect(at20(batch('0 6.3, 1 6.3 egg')).state).toBe('lost');
  });
  it('follows a climb of more than 0.3 by meter, of two pads by strip, and does not turn back', () => {
    expect(at20(batch('2 3.9, 4 4.3')).state).toBe('lost');
    expect(at20(batch('2 3.5, 4 4.5', 'strip')).state).toBe('lost');
    expect(at20(batch('2 3.9, 4 4.3, 6 3.8, 8 3.8')).state).toBe('lost');
  });
  it('follows larvae with a foul word, not larvae alone', () => {
    const larvae: Look = { day: 2, ph: 4.1, by: 'meter', surface: 'larvae' };
    const start = batch('0 6.3, 1 5.0');
    expect(at20([...start, larvae]).state).toBe('souring');
    expect(at20([...start, { ...larvae, smell: 'butter-gone-off' }]).state).toBe('lost');
  });
});

describe('unknown', () => {
  it('follows no acidity reading at all, whatever the nose says', () => {
    expect(
      at20([
        { day: 0, smell: 'grassy' },
        { day: 3, smell: 'sour', surface: 'clear' },
      ]).state,
    ).toBe('unknown');
  });
  it('follows no look at all', () => {
    expect(judgeBatch({ looks: [], temperatureC: 20, today: 0 }).state).toBe('unknown');
  });
  it('is not lifted by a look that saw nothing', () => {
    const looks: Look[] = [...batch('0 6.3, 2 4.1, 4 4.0'), { day: 13, smell: 'cannot-smell' }];
    expect(judgeBatch({ looks, temperatureC: 20, today: 14 }).state).toBe('unknown');
  });
  it('follows a foul word when the last acidity is ten days old', () => {
    const looks: Look[] = [...batch('0 6.3, 2 4.1, 4 4.0'), { day: 14, smell: 'egg' }];
    expect(judgeBatch({ looks, temperatureC: 20, today: 14 }).state).toBe('unknown');
  });
  it('follows a day, an acidity or a today that is no number', () => {
    const good = batch('0 6.3, 2 4.1, 4 4.0');
    expect(at20(good).state).toBe('ready');
    expect(at20([...good, { day: Number.NaN, smell: 'sour' }], 4).state).toBe('unknown');
    expect(at20([...good, { day: 4, ph: Number.NaN, by: 'meter' }], 4).state).toBe('unknown');
    expect(judgeBatch({ looks: good, temperatureC: 20, today: Number.NaN }).state).toBe('unknown');
  });
});

describe('held', () => {
  const sour = batch('0 6.3, 2 4.1, 4 4.0, 6 3.9, 10 3.9, 14 3.9');
  it('counts from the first reading at or below 4.0, here fifteen days from day 4', () => {
    expect(at20(sour, 18.9).held).toBe(false);
    expect(at20(sour, 19).held).toBe(true);
    expect(at20(sour, 19).heldFromDay).toBe(19);
  });
  it('starts anew after a reading above 4.0', () => {
    const broken = [...sour.slice(0, 4), ...batch('8 4.1, 10 3.9, 15 3.9')];
    expect(at20(broken, 15).heldFromDay).toBe(25);
  });
  it('is never reached below 10 °C, and not at an unknown temperature', () => {
    expect(judgeBatch({ looks: sour, temperatureC: 9, today: 19 }).held).toBe(false);
    expect(judgeBatch({ looks: sour, temperatureC: Number.NaN, today: 19 }).held).toBe(false);
  });
  it('asks 3.5 of a strip', () => {
    const at = (ph: number) => at20(batch(`0 6.5, 2 ${ph}, 6 ${ph}, 12 ${ph}`, 'strip'), 17).held;
    expect(at(3.7)).toBe(false);
    expect(at(3.5)).toBe(true);
  });
  it('lapses when nobody has looked for ten days', () => {
    expect(at20(sour, 24)).toMatchObject({ state: 'unknown', held: false });
  });
});
