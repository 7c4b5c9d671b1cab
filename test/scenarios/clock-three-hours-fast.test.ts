// A phone whose clock is three hours fast feeds a bed "tomorrow at 01:35". Its file is taken in on another phone the
// evening before: nothing that is eaten raw may open there because of it.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { importLines } from '#journal/file-reader.ts';
import { fold } from '#journal/fold.ts';
import { exportLines } from '#journal/lines.ts';
import { lineView } from '#tasks/plot/line.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { pourCard } from '#tasks/plot/pour.ts';
import { shedSheet } from '#tasks/plot/prints.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { heldBottle, orders } from './held-bottle.ts';
import { kg, litres, meter, recorder } from './recorder.ts';

const now = '2026-07-07T22:35';
const { bed, bottle, batch, ground } = heldBottle();
const fast = recorder({ by: 'Rake', device: 'phone-rake', seed: 5 });
const fed = fast.did('bed.fed', '2026-07-08T01:35', {
  bed: bed.id,
  from: [{ bottle: bottle.id, volume: litres(0.28) }],
  poured: litres(11.5),
  way: 'soil',
});

/** What is on this phone once the file of the other was taken in. */
function takenIn(entries: readonly Entry[]): readonly Entry[] {
  const here = new Map(ground.map((entry) => [entry.id, entry]));
  const read = importLines(exportLines(entries), (id) => here.get(id));
  if (!read.ok) throw new Error('the file was refused');
  return [...ground, ...(read.fresh as readonly Entry[])];
}

describe.each(orders(takenIn([...ground, fed])))('the evening before, in order %#', (...entries) => {
  const plot = fold(entries);
  const pick = (at: string) => pickList({ plot, now: at }).find((one) => one.bed === bed.id);
  const ask = { plot, now, bed: bed.id, liquid: bottle.id, canL: 11.5, nextPick: { [bed.id]: 'far' as const } };

  it('pick day waits from now on, and names the feed', () => {
    expect(pick(now)).toMatchObject({ answer: 'wait', tillOn: '2026-07-21', waitDays: 14 });
    expect(pick(now)?.last).toMatchObject({ id: fed.id, days: 0, pouredL: 11.5 });
  });
  it('the can card does not say yes', () => {
    expect(pourCard({ ...ask, plot: fold(ground) }).bed).toMatchObject({ verdict: 'yes', fedDays: undefined });
    expect(pourCard(ask).bed).toMatchObject({ verdict: 'hold', fedDays: 0 });
    expect(pourCard(ask).beware.map(({ rule }) => rule)).toContain('bed-fed-just-now');
  });
  it('neither does the round, the overview or the sheet on the shed door', () => {
    expect(roundOver({ plot, now, liquid: bottle.id }).beds).toMatchObject([{ fedDays: 0 }]);
    expect(lineView({ plot, now }).round).toMatchObject({ due: false, dueL: 0, held: 1 });
    expect(shedSheet({ plot, now }).picks).toMatchObject([{ answer: 'wait', tillOn: '2026-07-21' }]);
  });
  it('and the next day it counts by its own date', () => {
    expect(pick('2026-07-08T09:00')).toMatchObject({ answer: 'wait', tillOn: '2026-07-22' });
  });
});

describe('a phone whose clock is 400 days fast', () => {
  const on = '2027-08-11T19:35';
  const answer = (...more: readonly Entry[]) => {
    const plot = fold([...ground, ...more]);
    const picked = pickList({ plot, now }).find((one) => one.bed === bed.id)?.answer;
    const card = pourCard({ plot, now, bed: bed.id, liquid: bottle.id, canL: 10, nextPick: { [bed.id]: 'far' } });
    return { picked, dose: card.missing === undefined && card.bed?.verdict === 'yes' };
  };
  const look = (more: object) => fast.did('peg.looked', on, { batch: batch.id, ...more });

  it('before it wrote anything: the bed may be picked, and fed', () => {
    expect(answer()).toEqual({ picked: 'pick', dose: true });
  });
  it('feeds it: it waits', () => {
    expect(answer({ ...fed, on })).toMatchObject({ picked: 'wait' });
  });
  it('lays solids of a batch on it: it waits', () => {
    const dressed = fast.did('bed.dressed', on, { bed: bed.id, what: 'solids', amount: kg(2), batch: batch.id });
    expect(answer(dressed)).toMatchObject({ picked: 'wait' });
  });
  it('plants it with what is cooked: that opens nothing', () => {
    const cooked = fast.did('bed.planted', on, { bed: bed.id, act: 'planted', crop: 'potatoes', eaten: 'cooked' });
    const manure = recorder({ seed: 9 }).did('bed.dressed', '2026-07-01', {
      bed: bed.id,
      what: 'mulch',
      material: 'horse-manure',
    });
    expect(answer(manure, cooked)).toMatchObject({ picked: 'wait' });
    expect(answer(cooked)).toMatchObject({ picked: 'cook' });
  });
  it('clears it: the feed before is still waited for', () => {
    const cleared = fast.did('bed.planted', on, { bed: bed.id, act: 'cleared' });
    expect(answer(cleared, { ...fed, on: '2026-07-06T18:00' })).toEqual({ picked: 'wait', dose: false });
  });
  it('smells the batch foul: its bottles give nothing', () => {
    expect(answer(look({ smell: 'egg' }))).toMatchObject({ dose: false });
  });
  it('finds mould: its bottles give nothing', () => {
    expect(answer(look({ surface: 'coloured-fuzz' }))).toMatchObject({ dose: false });
  });
  it('reads it higher than it was: its bottles give nothing', () => {
    expect(answer(look({ acidity: meter(4.4) }))).toMatchObject({ dose: false });
  });
});

describe('a good reading that lies ahead', () => {
  it('makes no batch ready, and none sour long enough', () => {
    const rake = recorder();
    const filled = rake.did('peg.filled', '2026-07-01T18:00', {
      peg: 3,
      water: [{ volume: litres(6), source: 'tap' }],
      temperatureC: 20,
    });
    const look = (by: typeof rake, on: string, ph: number) =>
      by.did('peg.looked', on, { batch: filled.id, acidity: meter(ph), smell: 'sour', temperatureC: 20 });
    const own = [filled, look(rake, '2026-07-05T18:00', 4.0)];
    const states = (entries: readonly Entry[], at: string) =>
      shedSheet({ plot: fold(entries), now: at }).pegs.map(({ state, held }) => ({ state, held }));
    expect(states(own, now)).toEqual([{ state: 'souring', held: false }]);
    expect(states([...own, look(fast, '2026-07-08T01:35', 3.9)], now)).toEqual([{ state: 'souring', held: false }]);
    // A phone a minute fast is taken as made now.
    expect(states([...own, look(fast, '2026-07-07T22:36', 3.9)], now)).toEqual([{ state: 'ready', held: false }]);
  });
});
