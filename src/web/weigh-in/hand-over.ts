// Hands the weighed-in plan to the filling sheet: every amount as it was read here, with all that it was read with, and each
// lot under the key that it has on this sheet. Rows without a weight are no part of the plan.

import { material } from '#engine/tables/index.ts';
import { lasting } from '../app/device.ts';
import { draftPrefix } from '../app/draft.ts';
import { PLAN_KEY, type WeighInPlan } from '../fill/draft.ts';
import type { Draft } from './draft.ts';
import type { FitQuestion, Reading } from './reading.ts';

/** Leaves the plan where the filling sheet looks for it. */
export function handOver(question: FitQuestion, { amounts, weighedLots }: Reading, draft: Draft): void {
  const { gallon, spoon, style } = draft;
  const { product } = draft.sugar;
  const plan: WeighInPlan = {
    vessel: amounts.vessel,
    gasRoom: question.vessel.gasRoom,
    ...(question.vessel.lid === undefined ? {} : { lid: question.vessel.lid }),
    ...(draft.vessel.shape === undefined ? {} : { shape: draft.vessel.shape }),
    plants: weighedLots.map(({ key, material: id, treated }) => ({
      key,
      material: id,
      name: material(id)?.name ?? id,
      amount: amounts.lots.get(key),
      ...(treated === undefined ? {} : { treated }),
    })),
    water: amounts.water,
    ...(question.water.alkalinityMeqPerL === undefined ? {} : { alkalinityMeqPerL: question.water.alkalinityMeqPerL }),
    ...(product === undefined ? {} : { sugar: { product, amount: amounts.sugar } }),
    countries: { gallon, spoon, style },
  };
  lasting.write(`${draftPrefix()}${PLAN_KEY}`, JSON.stringify(plan));
}
