// The demo garden's own entries, folded day by day: the word for pegs 14, 15 and 16 on the days the garden names, and why.
import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { DEMO_PLOT, gardenEntries } from '#tasks/demo/garden.ts';
import { type PegView, pegView } from '#tasks/plot/peg.ts';
import { reasonSentences } from '#words/en/souring.ts';

const DAY_MS = 86_400_000;
const dateAfter = (on: string, days: number) =>
  new Date(Date.parse(`${on}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);

/** A peg at noon so many days after it was filled, from the entries that were there by then. */
function onDay(peg: number, day: number): PegView {
  const filledOn = [...fold(gardenEntries(), DEMO_PLOT).batches.values()].find((one) => one.peg === peg)?.filled.on;
  if (filledOn === undefined) throw new Error(`no peg ${peg} in the demo garden`);
  const on = dateAfter(filledOn.slice(0, 10), day);
  const plot = fold(gardenEntries(on), DEMO_PLOT);
  const batch = [...plot.batches.values()].find((one) => one.peg === peg);
  if (batch === undefined) throw new Error(`no peg ${peg} on ${on}`);
  return pegView({ plot, batch, now: `${on}T12:00` });
}

const codes = (view: PegView) => view.reasons.map(({ code }) => code);
const said = (view: PegView) => view.reasons.map(({ code, values }) => reasonSentences[code](values));

describe('peg 14 of the demo garden', () => {
  it.each([0, 1, 2, 3, 4])('is souring on day %d', (day) => {
    expect(onDay(14, day)).toMatchObject({ state: 'souring', day, held: false });
  });
  it('is ready on day 7 by two readings, 4.1 and 3.8, and not held yet', () => {
    const view = onDay(14, 7);
    expect(view).toMatchObject({ state: 'ready', held: false });
    expect(codes(view)).toContain('two-low-readings');
    expect(said(view).join(' ')).toMatch(/pH 4\.1 on day 4, 3\.8 on day 7/);
    expect(view.acts).toContain('feed');
  });
  it('is not held on day 23, and is held on day 25: its days in bottles that vent count', () => {
    expect(onDay(14, 23)).toMatchObject({ state: 'ready', held: false });
    expect(onDay(14, 25)).toMatchObject({ state: 'ready', held: true });
  });
  it('keeps the word of its last look once it is bottled: nobody looks into an empty pail', () => {
    expect(onDay(14, 25)).toMatchObject({ state: 'ready', nextLookOn: undefined, hand: undefined });
  });
});

describe('peg 15 of the demo garden', () => {
  it.each([0, 3])('is souring on day %d', (day) => {
    expect(onDay(15, day).state).toBe('souring');
  });
  it.each([6, 9, 10, 12, 16, 20])('is slow on day %d, and cold is given as the reason', (day) => {
    const view = onDay(15, day);
    expect(view.state).toBe('slow');
    expect(codes(view)).toContain('line-passed');
    expect(said(view).join(' ')).toContain('Cold makes it slow');
  });
  it('is looked at again three days after day 9', () => {
    expect(onDay(15, 9).nextLookOn).toBe(dateAfter(onDay(15, 9).filledOn.slice(0, 10), 12));
  });
  it('is ready on day 22 and never held', () => {
    expect(onDay(15, 22).state).toBe('ready');
    for (let day = 0; day <= 36; day++) expect(onDay(15, day).held, `day ${day}`).toBe(false);
  });
});

describe('peg 16 of the demo garden', () => {
  it('is souring on day 3', () => {
    expect(onDay(16, 3).state).toBe('souring');
  });
  it.each([6, 9])('is lost on day %d: nothing is fed from it, its end is shown, its looks are kept', (day) => {
    const view = onDay(16, day);
    expect(view).toMatchObject({ state: 'lost', held: false, hand: 'lost', disposal: { ventFirst: true } });
    expect(codes(view)).toContain('foul-and-not-falling');
    expect(view.acts).not.toContain('feed');
    expect(view.acts).not.toContain('strain');
    expect(view.acts).toContain('tip');
    expect(view.looks.length).toBe(day === 6 ? 3 : 4);
  });
});
