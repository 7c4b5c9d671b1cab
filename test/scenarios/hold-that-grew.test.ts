// A record of before the hold grew: the peg says why its day moved, a pour of then is called right, and the wait before
// picking is today's, on the careful side. At a moment before the change nothing of it is said.

import path from 'node:path';
import { expect, it } from 'vitest';
import { earlierHoldDays, LONGER_HOLD } from '#engine/souring/earlier-hold.ts';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { movedBy } from '#tasks/plot/moved-figures.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { movedHoldWords } from '#words/en/moved-hold.ts';
import { pick, pickWhy } from '#words/en/pick.ts';
import { versionsIn } from '../../scripts/versions.mjs';
import { root } from '../house/code.ts';
import type { Row } from '../house/versions.ts';
import { litres, meter, recorder } from './recorder.ts';

const rake = recorder();
const bed = rake.did('bed.described', '2026-05-01', {
  name: 'Raw',
  area: { typed: '4 m2', areaM2: 4 },
  crop: 'beans',
  eaten: 'raw-fruit',
});
const filled = rake.did('peg.filled', '2026-10-01', {
  peg: 7,
  water: [{ volume: litres(6), source: 'tap' }],
  temperatureC: 20,
});
// At 3.9 from 3 October on, 20 °C: by the rule of then held on 10 October, by today's on 18 October.
const looks = ['2026-10-03', '2026-10-05', '2026-10-12', '2026-10-18'].map((on) =>
  rake.did('peg.looked', on, { batch: filled.id, acidity: meter(3.9), smell: 'sour', temperatureC: 20 }),
);
const strained = rake.did('peg.strained', '2026-10-18T20:00', {
  batch: filled.id,
  drained: litres(5),
  rest: 'nothing',
});
const pour = (on: string, more: object = {}) =>
  rake.did('bed.fed', on, {
    bed: bed.id,
    from: [{ batch: filled.id, volume: litres(0.2) }],
    poured: litres(8),
    way: 'soil',
    ...more,
  });
const plotOf = (...more: readonly Entry[]) => fold([bed, filled, ...looks, strained, ...more]);
const said = (entries: readonly Entry[], only: { batch?: string; bed?: string; now: string }) =>
  movedBy(plotOf(...entries), only).map(({ sentence }) => sentence.replaceAll('\u00a0', ' '));
const picked = (now: string, ...pours: readonly Entry[]) => pickList({ plot: plotOf(...pours), now })[0];
const NOW = '2026-12-05T09:00';

it('stands in the list of versions with its day', () => {
  const rows = versionsIn(path.join(root, 'data')) as readonly Row[];
  expect(rows.find(({ model }) => model === LONGER_HOLD.model)?.on).toBe(LONGER_HOLD.on);
  expect([9, 10, 15, 20].map(earlierHoldDays)).toEqual([Number.POSITIVE_INFINITY, 24, 16, 7]);
});

it('the peg says why its day moved, with both days, and nothing before the change', () => {
  const [sentence = ''] = said([], { batch: filled.id, now: NOW });
  expect(sentence).toContain('For peg 7 that moved the day from 10 Oct 2026 to 18 Oct 2026.');
  expect(sentence).toContain('Breidt and Caldwell 2011');
  expect(said([], { batch: filled.id, now: '2026-10-20T09:00' })).toEqual([]);
});

it('a pour of then is called right on the sheets of the bed, and raw picking waits as after a batch not held', () => {
  const then = pour('2026-10-12T18:00');
  expect(said([then], { bed: bed.id, now: NOW })).toEqual([
    expect.stringMatching(/^Poured on 12 Oct 2026: that was right by the rule of its day\./),
  ]);
  const line = picked(NOW, then);
  // 12 October and 120 days
  expect(line).toMatchObject({ answer: 'wait', why: 'not-held-raw', waitDays: 120, tillOn: '2027-02-09' });
  expect(line?.waitsFor).toMatchObject({ held: false, heldThen: true });
  expect(line?.last && pick.feed(line.last)).toContain(movedHoldWords.heldThen);
  expect(pickWhy['not-held-raw'](120, false)).toContain('not held');
});

it('a pour that was too early by both rules, or made under today’s, is not called right', () => {
  expect(picked(NOW, pour('2026-10-08T18:00'))?.waitsFor?.heldThen).toBeUndefined();
  const figuresShown = {
    tables: { number: 2, on: '2026-11-30', digest: '0badcafe' },
    model: 2,
    entered: '1a2b3c4d',
    figures: [{ what: 'nG', low: 0.1, likely: 0.2, high: 0.3 }],
  };
  expect(picked(NOW, pour('2026-10-12T18:00', { figuresShown }))?.waitsFor?.heldThen).toBeUndefined();
  expect(picked(NOW, pour('2026-10-19T18:00'))?.last).toMatchObject({ held: true });
});
