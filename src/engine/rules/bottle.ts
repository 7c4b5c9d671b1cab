// What to say when a batch is strained: a sum that does not close, more than could come out, a batch that is
// not sour or not sound, figures that are too low, and the tag. Bottles, caps and lids are vessel.ts.

import { CLOSES_WITHIN_PERCENT } from '../bottle/balance.ts';
import { bottleFigure } from '../bottle/figures.ts';
import type { StrainedBatch } from '../bottle/liquid.ts';
import type { Strained } from '../bottle/strained.ts';
import type { Part } from '../scraps/part.ts';
import { READY_PH } from '../souring/lines.ts';
import { judge, type Rule, type Values } from './rule.ts';
import { scrapsRules } from './scraps.ts';

export interface StrainSituation {
  readonly batch: StrainedBatch;
  readonly strained: Strained;
  /** State of the batch as last judged; undefined when not told. */
  readonly state?: string | undefined;
}

/** Acid-food line. */
const SOUR_PH = bottleFigure('sour-limit', 'ph').likely;

const NAMES = { n: 'nitrogen', p: 'phosphorus', k: 'potassium', ca: 'calcium', mg: 'magnesium' } as const;

/** Elements missing for some lot, and the lots, in words a sentence can hold. */
function gaps(strained: Strained): { readonly elements: string; readonly lots: string } | undefined {
  const open = Object.values(strained.fates).filter((fate) => fate.unknownIn.length > 0);
  if (open.length === 0) return undefined;
  const lots = [...new Set(open.flatMap((fate) => fate.unknownIn))];
  return { elements: open.map((fate) => NAMES[fate.element]).join(', '), lots: lots.join(', ') };
}

/** Whether a lot that the table sends to the heap may go in for a reason that was recorded: every stop of it gives way. */
function judgementLetsIn(part: Part): boolean {
  if (part.into !== 'compost-only') return false;
  return judge(scrapsRules, { part, treated: 'no' }).every(
    ({ level, override }) => level !== 'stop' || override === 'reason',
  );
}

/** Names of the lots that belong elsewhere, of one sort. */
function keptOut({ plants }: StrainedBatch, sort: (part: Part) => boolean): false | Values {
  const lots = plants.filter((part) => part.into !== 'liquid' && sort(part)).map((part) => part.name);
  return lots.length > 0 ? { lots: lots.join(', ') } : false;
}

export const strainRules: readonly Rule<StrainSituation>[] = [
  {
    id: 'strained-batch-lost',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'the state of the batch when strained: lost',
    speaksFor: 'general',
    override: 'none',
    when: ({ state }) => (state === 'lost' ? {} : false),
  },
  {
    id: 'strained-lot-not-for-liquid',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'lots in the batch that no reason lets into the liquid: animal, diseased, poisonous or not cleared',
    speaksFor: 'general',
    override: 'none',
    when: ({ batch }) => keptOut(batch, (part) => !judgementLetsIn(part)),
  },
  {
    id: 'strained-lot-of-the-heap',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'lots in the batch that stay out of the liquid as a matter of judgement: seeds, compost, lime, dry matter',
    speaksFor: 'general',
    when: ({ batch }) => keptOut(batch, judgementLetsIn),
  },
  {
    id: 'strained-batch-unknown',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'the state of the batch when strained: unknown',
    speaksFor: 'general',
    when: ({ state }) => (state === 'unknown' ? {} : false),
  },
  {
    id: 'strained-batch-doubtful',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'the state of the batch when strained: doubtful',
    speaksFor: 'general',
    when: ({ state }) => (state === 'doubtful' ? {} : false),
  },
  {
    id: 'strained-not-sour',
    level: 'hold',
    source: 'cfr-21-114',
    locator: '114.3',
    looksAt: 'the last acidity against the acid-food line',
    speaksFor: ['us'],
    when: ({ batch }) => (batch.finalPh <= SOUR_PH ? false : { ph: batch.finalPh, sourPh: SOUR_PH }),
  },
  {
    id: 'strained-before-ready',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'the last acidity between the acid-food line and the line for ready',
    speaksFor: 'general',
    when: ({ batch }) =>
      batch.finalPh > READY_PH && batch.finalPh <= SOUR_PH ? { ph: batch.finalPh, readyPh: READY_PH } : false,
  },
  {
    id: 'strained-more-than-could',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'litres drained against all the liquid there was',
    speaksFor: 'general',
    when: ({ batch, strained }) =>
      batch.drainedL <= strained.batchLiquidL ? false : { drainedL: batch.drainedL, couldL: strained.batchLiquidL },
  },
  {
    id: 'strained-sum-open',
    level: 'caution',
    source: 'practice',
    looksAt: 'mass in against mass out',
    speaksFor: 'general',
    when: ({ strained }) => {
      const { closes, inKg, outKg, unexplainedPercent } = strained.balance;
      return closes ? false : { inKg, outKg, unexplainedPercent, withinPercent: CLOSES_WITHIN_PERCENT };
    },
  },
  {
    id: 'strained-tag-not-a-drink',
    level: 'caution',
    source: 'carpenter-2021',
    looksAt: 'every straining: what is written on the tag',
    speaksFor: 'general',
    when: () => ({}),
  },
  {
    id: 'strained-figures-too-low',
    level: 'note',
    source: 'our-caution',
    looksAt: 'lots whose nutrients are not known',
    speaksFor: 'general',
    when: ({ strained }) => gaps(strained) ?? false,
  },
  {
    id: 'strained-starter-not-counted',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether starter went in',
    speaksFor: 'general',
    when: ({ batch }) => (batch.starterL > 0 ? { starterL: batch.starterL } : false),
  },
];
