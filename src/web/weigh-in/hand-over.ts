// Hands the weighed-in plan to the filling sheet: amounts as typed beside what they were read as.

import { material } from '#engine/tables/index.ts';
import { lasting } from '../app/device.ts';
import { draftPrefix } from '../app/draft.ts';
import { PLAN_KEY, type WeighInPlan } from '../fill/draft.ts';
import type { Draft } from './draft.ts';
import type { FitQuestion } from './reading.ts';

/** Leaves the plan where the filling sheet looks for it. */
export function handOver(question: FitQuestion, draft: Draft): void {
  const weighed = draft.lots.filter((lot) => question.plants.some((one) => one.material === lot.material));
  const plan: WeighInPlan = {
    vesselL: question.vessel.volumeL,
    gasRoom: question.vessel.gasRoom,
    ...(question.vessel.lid === undefined ? {} : { lid: question.vessel.lid }),
    ...(draft.vessel.shape === undefined ? {} : { shape: draft.vessel.shape }),
    plants: question.plants.map((plant, i) => ({
      ...plant,
      name: material(plant.material)?.name ?? plant.material,
      typed: weighed[i]?.weight.settled ?? '',
    })),
    waterL: question.water.volumeL,
    waterTyped: draft.water.volume.settled,
    ...(question.water.alkalinityMeqPerL === undefined ? {} : { alkalinityMeqPerL: question.water.alkalinityMeqPerL }),
    ...(question.sugar === undefined ? {} : { sugar: { ...question.sugar, typed: draft.sugar.weight.settled } }),
  };
  lasting.write(`${draftPrefix()}${PLAN_KEY}`, JSON.stringify(plan));
}
