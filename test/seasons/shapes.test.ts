// One vessel has one shape and pots take one ground on every sheet, whatever they are called.

import { describe, expect, it } from 'vitest';
import type { Body } from '#journal/kinds/index.ts';
import { bedStrips, vesselsDrawn } from '#tasks/plot/facts.ts';
import { fillOffers } from '#tasks/plot/fill.ts';
import { lineView } from '#tasks/plot/line.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { EMPTY_FILL, type FillDraft, fromPlan } from '#web/fill/draft.ts';
import { newVessel, readFill } from '#web/fill/reading.ts';
import { readAlkalinity } from '#web/weigh-in/alkalinity.ts';
import { field as typedField } from '#web/weigh-in/draft.ts';
import { readDraft } from '#web/weigh-in/reading.ts';
import { filled, pail, weighIn } from './pail.ts';
import { handedOver } from './vessel.ts';

describe('one rule for the shape of a thing', () => {
  for (const [name, volumeL] of [
    ['old barrel', 12],
    ['Regentonne', 60],
  ] as const) {
    const { grower, batch } = filled({ name, volumeL });
    const onPeg = pegView({ plot: grower.plot, batch, now: grower.now }).vessel.kind;
    const [onFacts] = vesselsDrawn(grower.plot);
    it(`"${name}" of ${volumeL} L has one shape on the facts sheet, the filling sheet and its peg`, () => {
      expect(onFacts?.shape.kind).toBe(onPeg);
      expect(fillOffers(grower).vessels[0]?.shape).toBe(onPeg);
    });
  }
  const { grower } = pail();
  grower.did('bed.described', { name: 'Pots', pots: { count: 6, volumeL: 10 }, eaten: 'cooked' });
  const [row] = bedStrips(grower.plot);
  const [strip] = lineView({ plot: grower.plot, now: grower.now }).beds.strips;
  it('pots take the same ground on the facts sheet and on the overview', () => {
    expect([row?.lengthM, row?.widthM]).toEqual([strip?.lengthM, strip?.widthM]);
  });

  it('a kind that was chosen while filling stays its kind afterwards', () => {
    const made = pail();
    const draft = {
      ...weighIn(made),
      vessel: { ...weighIn(made).vessel, volume: typedField('60 L'), shape: 'drum' as const },
    };
    const plan = handedOver(draft);
    const sheet: FillDraft = { ...EMPTY_FILL, ...fromPlan(plan, fillOffers(made.grower)) };
    const body = newVessel(sheet, readFill(sheet, fillOffers(made.grower), {}));
    expect(body).toMatchObject({ name: '60 L drum', drawnAs: 'drum' });
    made.grower.did('vessel.described', body as Body<'vessel.described'>);
    expect(vesselsDrawn(made.grower.plot).map(({ shape }) => shape.kind)).toEqual(['pail', 'drum']);
  });
  it('goes by the litres where no kind was chosen', () => {
    const { vessel } = weighIn(pail());
    for (const [litres, kind] of [
      [12, 'pail'],
      [20, 'pail'],
      [30, 'drum'],
      [45, 'drum'],
      [60, 'barrel'],
    ] as const) {
      const draft = { ...weighIn(pail()), vessel: { ...vessel, volume: typedField(`${litres} L`) } };
      expect(readDraft(draft, readAlkalinity).shape).toBe(kind);
    }
  });
});
