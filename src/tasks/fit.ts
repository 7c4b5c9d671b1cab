// The word `fit`: does it fit, will it sour. Schema, call and result; the same for form and command line.

import * as z from 'zod/mini';
import type { Cure } from '#engine/pail/cures.ts';
import { type Fit, fit as fitRecipe } from '#engine/pail/fit.ts';
import type { Recipe } from '#engine/pail/recipe.ts';
import type { BatchUse } from '#engine/pail/use.ts';
import type { Layer, Lift } from '#engine/pail/volume.ts';
import type { Range } from '#engine/quantity/range.ts';
import { fitRules } from '#engine/rules/fit.ts';
import { judge } from '#engine/rules/rule.ts';
import { scrapsRules } from '#engine/rules/scraps.ts';
import { lidRules } from '#engine/rules/vessel.ts';
import type { Assumed } from '#engine/scraps/part.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarOrWhite } from '#engine/scraps/sugar.ts';
import { assumedOfWater, assumedUsual, usual } from '#engine/scraps/usual.ts';
import { workFill, workInputs, workSugar } from '#engine/working/fit.ts';
import type { Working } from '#engine/working/working.ts';
import { type About, fitCautions } from '#words/en/fit.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { vesselCautions } from '#words/en/vessel.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import { listOf, number, object, oneOf, text, volumeL } from './fields.ts';
import { portion, sugarIn, waterIn } from './portion.ts';
import { type Problem, read } from './problem.ts';

export const fitSchema = object(
  {
    vessel: object(
      {
        volumeL,
        gasRoom: z.optional(number(0, 0.9, 'share of the vessel')),
        emptyMassKg: z.optional(number(0, 200, 'kg')),
        lid: z.optional(oneOf(['loose', 'vent', 'tight'])),
      },
      'a vessel',
    ),
    plants: listOf(portion, 1, 40),
    water: waterIn,
    sugar: z.optional(sugarIn),
    targetPh: z._default(number(3.5, 4.6, 'pH'), 3.9),
    beds: z.optional(
      listOf(
        object(
          {
            name: z.optional(text(60)),
            areaM2: number(0.1, 5000, 'm²'),
            depthLPerM2: z._default(number(0.1, 20, 'L/m²'), 2),
            everyDays: z._default(number(1, 120, 'days'), 14),
          },
          'a bed',
        ),
        0,
        200,
      ),
    ),
  },
  'an object',
);

/** Sugar is no question while a lot stands in the recipe that stays out. */
const OF_SUGAR = ['sugar-window-closed', 'may-not-turn-sour', 'more-sugar-than-the-acid-uses'];

/** The contract's answer; see the contract for the meaning of each field. */
export interface FitResult {
  readonly fill: Fit['fill'];
  readonly lift: Lift;
  readonly layers: readonly Layer[];
  readonly cures: readonly Cure[];
  readonly sugar: Omit<Fit['sugar'], 'terms'>;
  readonly inputs: { readonly nG: Range; readonly pG: Range; readonly kG: Range };
  readonly use?: BatchUse;
  readonly unknown: Fit['unknown'];
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Caution[];
  /** What was asked, as the sentences name it. */
  readonly about: About;
}

export type FitInput = z.infer<typeof fitSchema>;
type Answer =
  | { readonly ok: true; readonly value: FitResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** White sugar stands in where no product is named yet: 0 kg of it. */
export function recipeOf(input: FitInput): Recipe {
  return {
    vessel: { ...input.vessel, gasRoom: input.vessel.gasRoom ?? usual('vessel.gasRoomFraction').likely },
    plants: input.plants.map(resolvePart),
    water: {
      ...input.water,
      alkalinityMeqPerL: input.water.alkalinityMeqPerL ?? usual('water.alkalinityMeqPerL').likely,
      ph: input.water.ph ?? usual('water.ph').likely,
    },
    sugar: { product: sugarOrWhite(input.sugar?.product), massKg: input.sugar?.massKg ?? 0 },
    targetPh: input.targetPh,
  };
}

/** The plants' assumptions; the settled volume's is the contract's own and told with the volume. */
export function assumedOfPlants(recipe: Recipe): readonly Assumed[] {
  return recipe.plants.flatMap((part) => part.assumed.filter((a) => a.field !== 'displacementLPerKg'));
}

/** What was counted of a vessel that was not told whole. */
export function assumedOfVessel(vessel: { readonly gasRoom?: number | undefined }): readonly Assumed[] {
  if (vessel.gasRoom !== undefined) return [];
  return [assumedUsual('vessel.gasRoomFraction', { field: 'gasRoom', material: 'vessel' })];
}

/** Does it fit, will it sour: any input in, the contract's answer or all its problems out. */
export function fit(input: unknown): Answer {
  const checked = read(fitSchema, input);
  if (!checked.ok) return checked;
  const recipe = recipeOf(checked.value);
  const answer = fitRecipe(recipe, checked.value.beds);
  const ofScraps = recipe.plants.flatMap((part, i) =>
    judge(scrapsRules, { part, treated: checked.value.plants[i]?.treated }),
  );
  const staysOut = ofScraps.some(({ level }) => level === 'stop');
  const findings = [
    ...ofScraps,
    ...judge(lidRules, {
      lid: checked.value.vessel.lid,
      vesselL: recipe.vessel.volumeL,
      liquidL: answer.fill.volumeL.likely,
    }),
    ...judge(fitRules, {
      fit: answer,
      vessel: recipe.vessel,
      sugarProduct: recipe.sugar.product.name,
      addedKg: recipe.sugar.massKg,
    }).filter(({ rule }) => !(staysOut && OF_SUGAR.includes(rule))),
  ];
  const { terms: _terms, ...sugar } = answer.sugar;
  return {
    ok: true,
    value: {
      ...answer,
      sugar,
      assumed: [
        ...assumedOfWater(checked.value.water),
        ...assumedOfVessel(checked.value.vessel),
        ...assumedOfPlants(recipe),
      ],
      cautions: [...spoken(findings, scrapsCautions, vesselCautions, fitCautions), ...unreadCaution(checked.unread)],
      about: {
        vesselL: recipe.vessel.volumeL,
        targetPh: recipe.targetPh,
        productName: recipe.sugar.product.name,
      },
    },
  };
}

/** The workings of every figure of the answer; none when the input has problems. */
export function explainFit(input: unknown): readonly Working[] {
  const checked = read(fitSchema, input);
  if (!checked.ok) return [];
  const recipe = recipeOf(checked.value);
  const answer = fitRecipe(recipe, checked.value.beds);
  return [...workFill(recipe, answer), ...workSugar(recipe, answer), ...workInputs(recipe, answer)];
}
