// What cannot be closed, and what it would take: for each nutrient a bed still misses, what keeps every source of it
// away. Found from the limits that are used up in the answer.

import type { BedNutrient } from './amounts.ts';
import { emptyStocks, fullLayers, fullRows, lastPacks } from './binds.ts';
import { bringsGPerKg, type CoverInput, type CoverSource } from './input.ts';
import { canBeBought, mostOnBedKg } from './model.ts';
import type { Staged } from './stages.ts';

type Answer = Extract<Staged, { readonly ok: true }>;

/** Why a source of the missing nutrient brings no more. */
export type Hindrance =
  | 'stock'
  | 'money'
  | 'minutes'
  | 'layer'
  | 'room-p'
  | 'room-k'
  | 'salt'
  | 'fresh'
  | 'coffee'
  /** What it brings of something limited on this bed is not known. */
  | 'not-known'
  /** It does not go on this bed. */
  | 'kept-off'
  /** It would close it only by opening more elsewhere. */
  | 'robs';

/** A nutrient that stays short on a bed. */
export interface OpenGap extends BedNutrient {
  /** Sources that bring it, each with what keeps it away; none listed where no source brings it. */
  readonly hindered: readonly { readonly source: CoverSource; readonly by: readonly Hindrance[] }[];
}

/** Each gap of the plan with what keeps its sources away. @arithmetic */
export function openGaps(input: CoverInput, answer: Answer, balance: readonly BedNutrient[]): readonly OpenGap[] {
  const rows = fullRows(answer).map(({ tag }) => tag);
  const empty = new Set(emptyStocks(answer).map(({ source }) => source));
  const layers = fullLayers(answer);
  const packs = lastPacks(answer);
  const isOut = (kind: 'money' | 'minutes') => rows.some((tag) => tag.kind === kind);

  return balance
    .filter(({ leftG }) => leftG > 0)
    .map((gap) => ({
      ...gap,
      hindered: input.sources
        .filter((source) => bringsGPerKg(source, gap.nutrient, 'likely') > 0)
        .map((source) => {
          const by: Hindrance[] = [];
          if (source.offBeds?.includes(gap.bed.id)) by.push('kept-off');
          else if (!(mostOnBedKg(gap.bed, source) > 0)) by.push('not-known');
          if (!canBeBought(source) && (empty.has(source) || !((source.haveKg ?? 0) > 0))) by.push('stock');
          if (canBeBought(source) && empty.has(source) && (isOut('money') || packs.has(source.id))) by.push('money');
          if (isOut('minutes') && (source.minutesPerKg ?? 0) > 0) by.push('minutes');
          if (layers.some((one) => one.bed === gap.bed && one.source === source)) by.push('layer');
          for (const tag of rows) {
            if (!('bed' in tag) || tag.bed !== gap.bed || tag.kind === 'need') continue;
            if (tag.kind === 'room') {
              if (!((source.perKg[tag.nutrient === 'p' ? 'pG' : 'kG']?.high ?? 0) <= 0))
                by.push(`room-${tag.nutrient}`);
            } else if (tag.kind === 'salt') {
              if (!((source.perKg.saltG ?? 0) <= 0)) by.push('salt');
            } else if (source[tag.kind]) by.push(tag.kind);
          }
          if (by.length === 0) by.push('robs');
          return { source, by };
        }),
    }));
}
