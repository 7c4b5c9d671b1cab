// The demo garden, opened on the days of its season: every entry is one the record takes, and the pegs stand as told.

import { describe, expect, it } from 'vitest';
import { judgeBatch } from '#engine/souring/judge.ts';
import { importLines } from '#journal/file-reader.ts';
import { fold, type Plot } from '#journal/fold.ts';
import { exportLines } from '#journal/lines.ts';
import { looksForJudge } from '#journal/parts/batch.ts';
import { readEntry } from '#journal/read.ts';
import { DEMO_FIRST_DAY, DEMO_LAST_DAY, DEMO_PLOT, DEMO_TODAY, gardenEntries } from '#tasks/demo/garden.ts';
import { lineView } from '#tasks/plot/line.ts';
import { sourceAt } from '#tasks/plot/liquid.ts';
import { pegWord } from '#tasks/plot/peg.ts';
import { pickList } from '#tasks/plot/pick.ts';

const all = gardenEntries();
const on = (day: string): Plot => fold(gardenEntries(day));
const peg = (plot: Plot, number: number) => [...plot.batches.values()].find((batch) => batch.peg === number);
const bed = (plot: Plot, tag: string) => [...plot.beds.values()].find(({ facts }) => facts.tag === tag);

function stateOf(number: number, day: string, today: number) {
  const batch = peg(on(day), number);
  const temperatureC = batch?.temperatureC;
  if (batch === undefined || temperatureC === undefined) throw new Error(`no peg ${number} on ${day}`);
  return judgeBatch({ looks: looksForJudge(batch).filter((look) => look.day <= today + 0.5), temperatureC, today });
}

describe('the entries of the demo garden', () => {
  it('are read by the record whole, each of them', () => {
    const damaged = all.flatMap((entry) => {
      const read = readEntry(JSON.parse(JSON.stringify(entry)));
      return read.state === 'damaged' ? [{ kind: entry.kind, on: entry.on, problems: read.problems }] : [];
    });
    expect(damaged).toEqual([]);
    expect(all.length).toBeGreaterThan(100);
  });
  it('are the same each time, under ids that no two share, in the plot of the demo alone', () => {
    expect(gardenEntries()).toEqual(all);
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    expect(new Set(all.map(({ plot }) => plot))).toEqual(new Set([DEMO_PLOT]));
  });
  it('name nothing that was not there before: no entry waits on any day', () => {
    const days = [...new Set(all.map((entry) => entry.on.slice(0, 10)))];
    expect(days[0]).toBe(DEMO_FIRST_DAY);
    expect(days.at(-1)).toBe(DEMO_LAST_DAY);
    for (const day of days) expect([day, on(day).waiting]).toEqual([day, []]);
  });
  it('raise one question in the whole season: whether two people fed the tunnel on day 34 of peg 14', () => {
    const plot = on(DEMO_LAST_DAY);
    expect(plot.questions.map(({ kind }) => kind)).toEqual(['twin-feeds']);
    expect(plot.questions[0]?.values.bed).toBe(bed(plot, 'T')?.id);
    const twins = all.filter(({ id }) => plot.questions[0]?.about.includes(id));
    expect(twins.map(({ by }) => by).sort()).toEqual(['Can', 'Rake']);
    expect(new Set(twins.map(({ device }) => device)).size).toBe(2);
    // 10 June and 34 days
    expect(twins.map((twin) => twin.on.slice(0, 10))).toEqual(['2026-07-14', '2026-07-14']);
    expect(on('2026-07-13').questions).toEqual([]);
  });
  it('come back whole from a file', () => {
    const read = importLines(exportLines(all), () => undefined);
    expect(read.ok && new Set(read.fresh.map(({ id }) => id))).toEqual(new Set(all.map(({ id }) => id)));
  });
});

describe('the pegs of the demo garden', () => {
  // Filled on Wednesday 10 June.
  it.each([
    ['2026-06-10', 0, 'souring'],
    ['2026-06-14', 4, 'souring'],
    ['2026-06-17', 7, 'ready'],
  ])('stand on %s, day %d of peg 14, at %s', (day, today, state) => {
    expect(stateOf(14, day, today).state).toBe(state);
  });
  it.each([
    ['2026-06-14', 3, 'souring'],
    ['2026-06-17', 6, 'slow'],
    ['2026-06-21', 10, 'slow'],
    ['2026-07-01', 20, 'slow'],
    ['2026-07-03', 22, 'ready'],
  ])('stand on %s, day %d of peg 15, at %s', (day, today, state) => {
    expect(stateOf(15, day, today).state).toBe(state);
  });
  it.each([
    ['2026-05-23', 3, 'souring'],
    ['2026-05-26', 6, 'lost'],
    ['2026-05-29', 9, 'lost'],
  ])('stand on %s, day %d of peg 16, at %s', (day, today, state) => {
    expect(stateOf(16, day, today).state).toBe(state);
  });
  it('have peg 13 held from 7 June, peg 14 from 4 July, and peg 15 never', () => {
    const word = (number: number, now: string) => {
      const plot = on(now.slice(0, 10));
      const batch = peg(plot, number);
      return batch && pegWord({ plot, batch, now });
    };
    // Peg 13 at 4.0 on 23 May at 20 °C: 15 days. Peg 14 at 3.8 on 17 June 09:30: ten days at 20 °C, then a shelf at 18,
    // a mean of 18.83 on 4 July: 15 + 9 · 1.17 / 5 = 17.1 days.
    expect([word(13, '2026-06-07T09:00')?.held, word(13, '2026-06-07T11:00')?.held]).toEqual([false, true]);
    expect([word(14, '2026-07-04T11:00')?.held, word(14, '2026-07-04T13:00')?.held]).toEqual([false, true]);
    expect(word(15, '2026-07-10T13:00')).toMatchObject({ state: 'ready', held: false });
  });
  it('pour nothing on any bed that was not held when it was poured', () => {
    const pours = all.filter(({ kind }) => kind === 'bed.fed');
    expect(pours[0]?.on).toBe('2026-07-04T17:00');
    const held = pours.map((pour) => {
      const [from] = (pour.body as { from: readonly [{ readonly bottle: string }] }).from;
      return [pour.on, sourceAt(on(pour.on.slice(0, 10)), from, pour.on)?.held];
    });
    expect(held.filter(([, isHeld]) => isHeld !== true)).toEqual([]);
    expect(held.length).toBeGreaterThan(15);
  });
  it('opens on a day with beds fed that morning, a tunnel that waits for its picking, and raw fruit that waits', () => {
    const now = `${DEMO_TODAY}T12:00`;
    const plot = on(DEMO_TODAY);
    expect(DEMO_TODAY).toBe('2026-07-07');
    expect(lineView({ plot, now }).round).toMatchObject({ on: '2026-07-21', held: 2, due: false });
    const picks = pickList({ plot, now });
    expect(
      picks
        .filter(({ last }) => last?.days === 0)
        .map(({ tag }) => tag)
        .sort(),
    ).toEqual(['F', 'G', 'M', 'P', 'X']);
    expect(picks.filter(({ answer }) => answer === 'wait').map(({ tag, tillOn }) => [tag, tillOn])).toEqual([
      ['P', '2026-07-21'],
      ['G', '2026-07-21'],
    ]);
  });
  it('put nothing of peg 16 on any bed', () => {
    const lost = peg(on(DEMO_LAST_DAY), 16);
    const sources = all.filter(({ kind }) => kind === 'bed.fed').map(({ body }) => JSON.stringify(body));
    expect(lost?.liquid).toMatchObject({ drainedL: 0, pouredL: 0 });
    expect(sources.filter((body) => body.includes(lost?.id ?? '-'))).toEqual([]);
    expect(lost?.lid).toBe('tight');
  });
  it('weigh what was put in them: 8.752 kg in peg 14, 20.55 kg in peg 15, 55 kg in peg 16', () => {
    const plot = on(DEMO_LAST_DAY);
    // 2.1 + 0.7 + 0.4 + 5.2 + 0.15 + 0.2 L at 1.01 kg/L; 4.6 + 1.6 + 14 + 0.35; 22 + 33
    expect(peg(plot, 14)?.mass.filledKg).toBeCloseTo(8.752, 9);
    expect(peg(plot, 15)?.mass.filledKg).toBeCloseTo(20.55, 9);
    expect(peg(plot, 16)?.mass.filledKg).toBeCloseTo(55, 9);
  });
});

describe('the beds and bottles of the demo garden', () => {
  it('cover 44.8 m² and the pots, in walking order', () => {
    const beds = [...on(DEMO_TODAY).beds.values()];
    // 3 × 5.76 + 3.6 + 6.75 + 10 + 7.2
    expect(beds.reduce((sum, { facts }) => sum + (facts.area?.areaM2 ?? 0), 0)).toBeCloseTo(44.83, 9);
    expect(beds.map(({ facts }) => facts.tag).join('')).toBe('GMSFTRPX');
  });
  it('take 69 L a round, 1.68 L of concentrate in it', () => {
    const plot = on(DEMO_LAST_DAY);
    const round = ['G', 'M', 'F', 'P', 'X', 'T'].map((tag) => bed(plot, tag)?.feeds.find(({ pouredL }) => pouredL > 2));
    // 2 L/m² on 5.76 + 5.76 + 3.4 + 10 + 3.6 m², 12 L on the pots: 69.04 L; / 41 = 1.684 L
    expect(round.reduce((sum, feed) => sum + (feed?.pouredL ?? 0), 0)).toBeCloseTo(69.04, 9);
    expect(round.reduce((sum, feed) => sum + (feed?.concentrateL ?? 0), 0)).toBeCloseTo(1.684, 2);
  });
  it('leave the sum of the tunnel open, and a little in the bottles for the heap', () => {
    const tunnel = bed(on('2026-07-14'), 'T')?.pouredL;
    // 20 L surely; 4 imperial gallons = 18.184 L perhaps
    expect(tunnel?.low).toBeCloseTo(20, 9);
    expect(tunnel?.high).toBeCloseTo(38.184, 2);
    const bottles = [...on('2026-10-23').bottles.values()].find(({ peg }) => peg === 14);
    // 6.3 − 0.045 − 3 × 1.685 = 1.2 L, less 0.444 L if the tunnel was fed twice
    expect(bottles?.leftL.high).toBeCloseTo(1.2, 9);
    expect(bottles?.leftL.low).toBeCloseTo(0.756, 9);
    const emptied = [...on(DEMO_LAST_DAY).bottles.values()].find(({ peg }) => peg === 14)?.emptied;
    expect(emptied?.on.slice(0, 10)).toBe(DEMO_LAST_DAY);
  });
  it('weigh four pairs with +62, −18, +45 and +7 g between fed and water', () => {
    const { trialsWeighed } = on(DEMO_LAST_DAY);
    const pairs = [1, 2, 3, 4].map((n) => {
      const own = trialsWeighed.filter(({ body }) => body.block === `pair ${n}`);
      const grams = (treatment: string) =>
        (own.find(({ body }) => body.treatment === treatment)?.body.mass?.massKg ?? Number.NaN) * 1000;
      return Math.round(grams('fed') - grams('water'));
    });
    expect(pairs).toEqual([62, -18, 45, 7]);
  });
  it('keep the neighbour’s clippings set aside, and rhubarb, haulm and rice out of the liquid', () => {
    const goes = [...on(DEMO_TODAY).lots.values()].map((lot) => [lot.act.body.mass.massKg, lot.goes]);
    expect(goes.filter(([, place]) => place !== 'liquid')).toEqual([
      [9, 'set-aside'],
      [1.2, 'compost-only'],
      [3.5, 'out'],
      [0.6, 'out'],
    ]);
  });
});
