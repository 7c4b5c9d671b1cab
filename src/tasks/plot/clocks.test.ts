import { describe, expect, it } from 'vitest';
import { importLines } from '#journal/file-reader.ts';
import { fold } from '#journal/fold.ts';
import { exportLines, recordLines } from '#journal/lines.ts';
import { heldBottle, orders } from '../../../test/scenarios/held-bottle.ts';
import { litres, recorder } from '../../../test/scenarios/recorder.ts';
import { aheadOfNow, filesThatMet } from './clocks.ts';
import { counted } from './counted.ts';
import { lineView } from './line.ts';
import { openQuestions } from './questions.ts';

const now = '2026-07-07T22:35';
const reader = { now, device: 'phone-can' };
const { bed, bottle, ground } = heldBottle();
const fast = recorder({ by: 'Rake', device: 'phone-rake', seed: 5 });
const fed = fast.did('bed.fed', '2026-07-08T01:40', {
  bed: bed.id,
  from: [{ bottle: bottle.id, volume: litres(0.28) }],
  poured: litres(11.5),
  way: 'soil',
});

describe('entries that lie ahead of this phone', () => {
  it('are asked about, in whatever order they came', () => {
    for (const entries of orders([...ground, fed])) {
      const [question, ...more] = openQuestions(fold(entries), entries, reader);
      expect(more).toEqual([]);
      expect(question?.sentence).toMatch(/^1.entry from another phone \([a-z]+-[a-z]+\) lie.* up to 3.h 5.min ahead/);
      expect(question?.sentence).toContain('Is this phone’s clock wrong, or that one’s?');
      expect(question?.about).toMatchObject([{ id: fed.id, by: 'Rake' }]);
      expect(question?.offers.map(({ text }) => text)).toEqual([
        'This phone’s clock',
        'That phone’s clock, or a date typed wrong',
      ]);
    }
  });
  it('show on the overview as a question', () => {
    const hands = (entries: typeof ground) => lineView({ plot: fold(entries), now }).hands.map(({ kind }) => kind);
    expect(hands(ground)).not.toContain('question');
    expect(hands([...ground, fed])).toContain('question');
  });
  it('are asked about no more once the date was corrected, the entry taken back, or its time has come', () => {
    const entries = [...ground, fed];
    const right = fast.corrected(fed, '2026-07-07T22:00', fed.body as never);
    expect(openQuestions(fold([...entries, right]), [...entries, right], reader)).toEqual([]);
    const back = fast.withdrew(fed);
    expect(openQuestions(fold([...entries, back]), [...entries, back], reader)).toEqual([]);
    expect(openQuestions(fold(entries), entries, { ...reader, now: '2026-07-08T01:40' })).toEqual([]);
  });
  it('are none within the five minutes by which clocks differ anyway', () => {
    expect(aheadOfNow([fed], '2026-07-08T01:35')).toEqual([]);
    expect(aheadOfNow([fed], '2026-07-08T01:34')).toMatchObject([{ device: 'phone-rake', mostMinutes: 6 }]);
  });
  it('of this phone itself are said to be its own', () => {
    const entries = [...ground, fed];
    const [question] = openQuestions(fold(entries), entries, { now, device: 'phone-rake' });
    expect(question?.sentence).toMatch(/made on this phone/);
  });
});

describe('a plot in which nothing lies ahead', () => {
  it('is handed back as it is', () => {
    const plot = fold(ground);
    expect(counted(plot, now)).toBe(plot);
    const ahead = fold([...ground, fed]);
    const made = counted(ahead, now);
    expect(made).not.toBe(ahead);
    expect(counted(ahead, now)).toBe(made);
    expect(counted(made, now)).toBe(made);
    expect(counted(ahead, '2026-07-08T02:00')).toBe(ahead);
  });
});

describe('two phones whose files meet', () => {
  const nowMs = Date.parse('2026-07-07T20:35:00.000Z');
  const met = (text: string, entries = ground) => {
    const here = new Map(entries.map((entry) => [entry.id, entry]));
    const file = importLines(text, (id) => here.get(id));
    if (!file.ok) throw new Error('the file was refused');
    return filesThatMet({ entries: [...entries, ...file.fresh], file, device: 'phone-can', nowMs });
  };
  const at = (instant: string) => ({ ...fed, at: instant });

  it('prove a difference of at least what the other phone’s entries lie ahead', () => {
    expect(met(exportLines([...ground, at('2026-07-07T23:40:00.000Z')])).aheadMinutes).toBe(185);
  });
  it('prove one by the file itself, made later than its entries', () => {
    const maker = { madeAt: '2026-07-07T23:41:00.000Z', device: 'phone-rake' };
    expect(met([...recordLines(ground, 0, maker)].join('\n')).aheadMinutes).toBe(186);
  });
  it('prove nothing of a slow clock, of clocks five minutes apart, or of a file made here', () => {
    expect(met(exportLines([...ground, at('2026-07-05T20:00:00.000Z')])).aheadMinutes).toBeUndefined();
    expect(met(exportLines([...ground, at('2026-07-07T20:39:59.000Z')])).aheadMinutes).toBeUndefined();
    const maker = { madeAt: '2026-07-07T23:41:00.000Z', device: 'phone-can' };
    expect(met([...recordLines(ground, 0, maker)].join('\n')).aheadMinutes).toBeUndefined();
  });
  it('read a header whose making time is no instant, and say nothing of it', () => {
    const maker = { madeAt: 'yesterday', device: 'phone-rake' };
    expect(met([...recordLines(ground, 0, maker)].join('\n')).aheadMinutes).toBeUndefined();
  });
  it('show what the other lacks: entries here that its file does not hold', () => {
    expect(met(exportLines([...ground, fed])).lacksCount).toBe(0);
    expect(met(exportLines([...ground.slice(2), fed])).lacksCount).toBe(2);
  });
});
