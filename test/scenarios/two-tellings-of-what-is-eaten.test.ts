// Two phones tell differently how a bed is eaten, and neither saw the other's. It is asked, and until it is answered the
// bed counts as each of the two: what is eaten raw by either of them is not opened by the other.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { isRawOnRaw } from '#tasks/plot/dress-forms.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { pourCard } from '#tasks/plot/pour.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { heldBottle, orders } from './held-bottle.ts';
import { litres, recorder } from './recorder.ts';

const now = '2026-07-07T09:00';
const { bed, bottle, ground, can } = heldBottle();
const rake = recorder({ by: 'Rake', device: 'phone-rake', seed: 6 });
const tell = (who: typeof can, on: string, told: object) => who.did('bed.described', on, { bed: bed.id, ...told });
const fed = can.did('bed.fed', '2026-07-04', {
  bed: bed.id,
  from: [{ bottle: bottle.id, volume: litres(0.28) }],
  poured: litres(11.5),
  way: 'soil',
});
const pickedOn = (entries: readonly Entry[]) => pickList({ plot: fold(entries), now })[0]?.answer;
const ask = { now, bed: bed.id, liquid: bottle.id, canL: 11.5, nextPick: { [bed.id]: 'soon' as const } };
const poured = (entries: readonly Entry[]) => pourCard({ ...ask, plot: fold(entries) }).missing ?? 'a dose';

describe.each([
  ['the raw one first', '2026-07-01', '2026-07-02'],
  ['the cooked one first', '2026-07-02', '2026-07-01'],
])('%s', (_, rawOn, cookedOn) => {
  const raw = tell(rake, rawOn, { eaten: 'raw-leaf', crop: 'lettuce', feed: 'soil' });
  const cooked = tell(can, cookedOn, { eaten: 'cooked', crop: 'potatoes', feed: 'soil' });
  const alone = [...ground, cooked];

  it('the cooked telling alone opens the bed, and the raw one alone does not', () => {
    expect([pickedOn([...alone, fed]), pickedOn([...ground, raw, fed])]).toEqual(['cook', 'wait']);
    expect([poured(alone), poured([...ground, raw])]).toEqual(['a dose', poured([...ground, raw])]);
    expect(poured([...ground, raw])).not.toBe('a dose');
  });
  it.each(orders([...alone, raw, fed]))('both together wait, whichever is shown, in any order', (...entries) => {
    expect(pickedOn(entries)).toBe('wait');
    expect(isRawOnRaw(fold(entries), bed.id, 'solids')).toBe(true);
  });
  it.each(orders([...alone, raw]))('both together are given no dose that one of them forbids', (...entries) => {
    const plot = fold(entries);
    expect(poured(entries)).toBe(poured([...ground, raw]));
    expect(roundOver({ plot, now, liquid: bottle.id, nextPick: ask.nextPick }).beds).toMatchObject([
      {
        verdict: roundOver({ plot: fold([...ground, raw]), now, liquid: bottle.id, nextPick: ask.nextPick }).beds[0]
          ?.verdict,
      },
    ]);
  });
  it.each([
    ['cooked', cooked, 'cook'],
    ['raw', raw, 'wait'],
  ] as const)('answered with the %s one, that one counts alone', (_, told, answer) => {
    const all = [...alone, raw, fed];
    const question = fold(all).questions[0]?.key ?? '';
    const answered = [...all, can.did('question.answered', '2026-07-06', { question, stands: [told.id] })];
    expect(pickedOn(answered)).toBe(answer);
    expect(fold(answered).beds.get(bed.id)?.mayBe).toBeUndefined();
  });
});

describe('clashes that say nothing of eating', () => {
  it('make no bed that may be', () => {
    const plot = fold([
      ...ground,
      tell(rake, '2026-07-01', { name: 'Door' }),
      tell(can, '2026-07-02', { name: 'Path' }),
    ]);
    expect([plot.questions.length, plot.beds.get(bed.id)?.mayBe]).toEqual([1, undefined]);
  });
});

describe('two clashes of one bed', () => {
  it('count in every mix of them, the strictest one too', () => {
    const crop = [
      tell(rake, '2026-07-01T08:00', { crop: 'carrots', over: [bed.id] }),
      tell(can, '2026-07-01T09:00', { crop: 'potatoes', over: [bed.id] }),
    ];
    const eaten = [
      tell(rake, '2026-07-02T08:00', { eaten: 'raw-root' }),
      tell(can, '2026-07-02T09:00', { eaten: 'cooked' }),
    ];
    const mixes = fold([...ground, ...crop, ...eaten])
      .beds.get(bed.id)
      ?.mayBe?.map((one) => `${one.crop} ${one.eaten}`);
    expect(mixes?.toSorted()).toEqual(['carrots cooked', 'carrots raw-root', 'potatoes raw-root']);
  });
});
