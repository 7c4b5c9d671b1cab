// The word `water`: what a water asks for before it goes into pail or can. Schema, call and result.

import * as z from 'zod/mini';
import { judge } from '#engine/rules/rule.ts';
import { waterRules } from '#engine/rules/water.ts';
import {
  type AlkalinityUnit,
  alkalinityMeqPerL,
  assessWater,
  MEQ_PER_UNIT,
  type WaterAnswer,
  type WaterAsked,
} from '#engine/scraps/water.ts';
import { workWater } from '#engine/working/water.ts';
import type { Working } from '#engine/working/working.ts';
import { sayAdvice, waterCautions } from '#words/en/water.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import { massKg, number, object, oneOf, volumeL } from './fields.ts';
import { type Problem, read, says } from './problem.ts';

const UNITS = ['mg/L CaCO3', 'mmol/L', 'meq/L', 'dH', 'fH', 'clark', 'gpg'] as const satisfies AlkalinityUnit[];
/** The most acid a water is believed to take up; the hardest drinking waters stay below 10. */
const MOST_MEQ_PER_L = 20;

/** "degrees", "°", "deg d": a hardness whose country is not said. */
const SOME_DEGREE = /deg|°|grad|hard/i;
const one = (unit: AlkalinityUnit) => MEQ_PER_UNIT[unit].toFixed(2);
const WHICH_DEGREE = `dH (German, ${one('dH')} meq/L each), fH (French, ${one('fH')} each) or clark (English, ${one('clark')} each)`;

const alkalinityUnit = z.enum(UNITS, {
  error: (issue) =>
    typeof issue.input === 'string' && SOME_DEGREE.test(issue.input)
      ? says('does not say whose degree it is', WHICH_DEGREE)
      : says('is not a unit of alkalinity known here', UNITS.join(', ')),
});

const alkalinity = z
  .strictObject(
    { value: number(0, 1000, 'of its unit'), unit: alkalinityUnit },
    { error: () => says('is not an alkalinity', `an object with value and unit (${UNITS.join(', ')})`) },
  )
  .check((context) => {
    const { value, unit } = context.value;
    if (alkalinityMeqPerL({ value, unit }) <= MOST_MEQ_PER_L) return;
    const most = Math.floor(MOST_MEQ_PER_L / MEQ_PER_UNIT[unit]);
    context.issues.push({
      code: 'custom',
      path: ['value'],
      input: value,
      message: says('is too large', `0 to ${most} ${unit}`),
    });
  });

export const waterSchema = object(
  {
    volumeL,
    freeChlorineMgPerL: z.optional(number(0, 20, 'mg/L')),
    chloramineMgPerL: z.optional(number(0, 20, 'mg/L as chlorine')),
    alkalinity: z.optional(alkalinity),
    use: z.optional(oneOf(['pail', 'can', 'raw-crop'])),
    source: z.optional(oneOf(['tap', 'rain', 'roof', 'ditch', 'pond', 'well'])),
    plantsKg: z.optional(massKg),
  },
  'an object',
);

/** The contract's answer; a figure whose input was not given is absent, and the advice says so. */
export interface WaterResult extends Omit<WaterAnswer, 'advice'> {
  readonly advice: readonly string[];
  readonly cautions: readonly Caution[];
}

type Answer =
  | { readonly ok: true; readonly value: WaterResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What a water asks for: any input in, the contract's answer or all its problems out. */
export function water(input: unknown): Answer {
  const checked = read(waterSchema, input);
  if (!checked.ok) return checked;
  const asked: WaterAsked = checked.value;
  const answer = assessWater(asked);
  const cautions = [...spoken(judge(waterRules, asked), waterCautions), ...unreadCaution(checked.unread)];
  return { ok: true, value: { ...answer, advice: answer.advice.map(sayAdvice), cautions } };
}

/** The workings of every figure of the answer; none when the input has problems. */
export function explainWater(input: unknown): readonly Working[] {
  const checked = read(waterSchema, input);
  return checked.ok ? workWater(checked.value, assessWater(checked.value)) : [];
}
