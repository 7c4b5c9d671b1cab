// Two batches with one number, as two phones without signal give out, are told apart wherever a batch is named.
import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { heldBottle, orders } from '../../../test/scenarios/held-bottle.ts';
import { litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { pegName } from './batch-name.ts';
import { feedOf } from './cress.ts';
import { fillOffers } from './fill.ts';
import { lineView } from './line.ts';
import { liquidsOf } from './liquid.ts';
import { pegView } from './peg.ts';
import { pegForms } from './peg-forms.ts';
import { pickList } from './pick.ts';
import { shedSheet, tagsOf } from './prints.ts';
import { openQuestions } from './questions.ts';
import { sayEntry } from './record.ts';
import { pegsToSearch, recordIndex } from './record-search.ts';
import { shelf } from './shelf.ts';

const now = '2026-07-10T09:00';
const { bed, batch, bottle, ground } = heldBottle('stays');
const rake = recorder({ by: 'Rake', device: 'phone-rake', seed: 5 });
const filledAgain = (more: object = {}, on = '2026-06-12T18:20') =>
  rake.did('peg.filled', on, { peg: 14, water: [{ volume: litres(6), source: 'tap' }], temperatureC: 20, ...more });
const other = filledAgain();
const looks = ['2026-06-20T18:00', '2026-06-24T18:00', '2026-07-08T18:00'].map((on) =>
  rake.did('peg.looked', on, { batch: other.id, acidity: meter(3.8), smell: 'sour', temperatureC: 20 }),
);
const fed = rake.did('bed.fed', '2026-07-09T18:00', {
  bed: bed.id,
  from: [{ bottle: bottle.id, volume: litres(0.1) }],
  poured: litres(4),
  way: 'soil',
});
const entries = [...ground, other, ...looks, fed];
const plot = fold(entries);
const [ours, theirs] = ['14 (2026-06-01)', '14 (2026-06-12)'];

describe('two batches with the number 14', () => {
  it('go by their dates, whatever the order in which they came', () => {
    for (const order of orders(entries)) {
      const folded = fold(order);
      expect(pegName(folded, { id: batch.id, peg: 14 })).toBe(ours);
      expect(pegName(folded, { id: other.id, peg: 14 })).toBe(theirs);
    }
  });
  it('go by their vessels where these differ, else by the time of day, else by a letter', () => {
    const names = (...list: readonly ReturnType<typeof filledAgain>[]) => {
      const folded = fold(list);
      return list.map(({ id }) => pegName(folded, { id, peg: 14 }));
    };
    expect(names(filledAgain({ vesselName: 'barrel' }), filledAgain({ vesselName: 'pail' }))).toEqual([
      '14 (barrel)',
      '14 (pail)',
    ]);
    expect(names(filledAgain(), filledAgain({}, '2026-06-12T19:00'))).toEqual([
      '14 (2026-06-12 18:20)',
      '14 (2026-06-12 19:00)',
    ]);
    expect(new Set(names(filledAgain(), filledAgain()))).toEqual(new Set(['14 (a)', '14 (b)']));
    expect(names(filledAgain())).toEqual([14]);
  });
  it('are told apart on the peg sheet, the overview, the shelf and at the can', () => {
    const views = [...plot.batches.values()].map((one) => pegView({ plot, batch: one, now }));
    expect(views.map(({ peg }) => peg)).toEqual([ours, theirs]);
    expect(lineView({ plot, now }).pegs.map(({ peg, number }) => [peg, number])).toEqual([
      [ours, 14],
      [theirs, 14],
    ]);
    expect(shelf({ plot, now }).bottles.map(({ peg }) => peg)).toEqual([ours]);
    expect(liquidsOf(plot, now).map(({ peg }) => peg)).toContain(ours);
    expect(feedOf(plot, bottle.id)?.peg).toBe(ours);
  });
  it('are told apart on pick day and on every print', () => {
    expect(pickList({ plot, now })[0]?.last?.pegs).toEqual([ours]);
    expect(shedSheet({ plot, now }).pegs.map(({ peg }) => peg)).toEqual([ours, theirs]);
    expect([...new Set(tagsOf({ plot, now }).map(({ said }) => said))].sort()).toEqual([ours, theirs]);
  });
  it('are two choices where one is poured into the other, or starts a new one', () => {
    const view = pegView({ plot, batch: plot.batches.get(batch.id) as never, now });
    const join = pegForms(plot, view, now).find(({ act }) => act === 'join');
    const asked = join?.asked.find(({ field }) => field === 'from');
    expect(asked?.as === 'one' && asked.words).toEqual([theirs]);
    const starters = fillOffers({ plot, now }).starters.map(({ peg }) => peg);
    expect(starters).toEqual(expect.arrayContaining([ours, theirs]));
  });
  it('are told apart in the record, its search and its questions', () => {
    expect(sayEntry(looks[0] as never, plot)).toContain(`peg\u00a0${theirs}`);
    const choices = pegsToSearch(plot);
    expect(choices.map(([, said]) => said)).toEqual([ours, theirs]);
    const index = recordIndex({ plot, entries, plotId: 'sedge-corner' });
    index.prepare(entries.length);
    const found = (value: string | undefined) => index.search({ peg: value, kind: 'peg.looked' }).acts;
    expect(found(choices[1]?.[0])).toHaveLength(3);
    expect(found('14')).toHaveLength(6);
    const late = rake.did('peg.toppedUp', '2026-06-11', { batch: other.id, water: [{ volume: litres(1) }] });
    const asked = openQuestions(fold([...entries, late]), [...entries, late], { now, device: 'phone-can' });
    expect(asked.map(({ sentence }) => sentence).join(' ')).toContain(`An act on peg ${theirs} is dated before`);
  });
});
