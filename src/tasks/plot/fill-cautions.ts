// What stands around a filling beside its recipe: an open vessel, the air of the room, who is about; and the stops that a
// reason passes over. What may go in and how full it gets is the word `fit`.

import { fillAirRules } from '#engine/rules/care.ts';
import { fillProfileRules } from '#engine/rules/profile.ts';
import { judge } from '#engine/rules/rule.ts';
import { insectRules } from '#engine/rules/vessel.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Overrode } from '#journal/parts/batch.ts';
import { careCautions } from '#words/en/care.ts';
import { profileCautions } from '#words/en/profile.ts';
import { type Caution, isReason, spoken } from '../caution.ts';
import type { FitResult } from '../fit.ts';
import type { FillAsk } from './fill.ts';
import { profileOf } from './profile.ts';

export type { Overrode };

/** What the rules say of a filling. */
export interface FillJudged {
  /** What the recipe, the lid and those who are about make them say. */
  readonly cautions: readonly Caution[];
  /** Stops that keep it from being pegged; those passed over with a reason are not among them. */
  readonly stops: readonly Caution[];
  readonly overrode: readonly Overrode[];
}

/** The recipe's cautions with those around it, and which stops still stand. */
export function judgedFill(plot: Plot, ask: FillAsk, fit: FitResult): FillJudged {
  const cautions = [...fit.cautions, ...aroundFill(plot, ask, fit)];
  const stops = cautions.filter(({ level }) => level === 'stop');
  const overrode = overrodeOf(stops, ask.passed);
  const isPassed = ({ rule }: Caution) => overrode.some((one) => one.rule === rule);
  return { cautions, stops: stops.filter((one) => !isPassed(one)), overrode };
}

/** The open vessel, the air of its room, and who is about. */
function aroundFill(plot: Plot, ask: FillAsk, { sugar }: FitResult): readonly Caution[] {
  const groupOf = (id: string | undefined) => (id === undefined ? undefined : material(id)?.group);
  const kitchenScraps = ask.parts.some((part) => {
    const lot = part.lot === undefined ? undefined : plot.lots.get(part.lot)?.act.body;
    return groupOf(part.material ?? lot?.material) === 'kitchen' || (lot?.origin ?? 'garden') !== 'garden';
  });
  const findings = [
    ...judge(insectRules, { lid: ask.lid }),
    ...judge(fillProfileRules, { profile: profileOf(plot), kitchenScraps }),
    ...judge(fillAirRules, { hexoseG: sugar.addedHexoseG }),
  ];
  return spoken(findings, careCautions, profileCautions);
}

/** Stops that a reason in words passes over. */
function overrodeOf(stops: readonly Caution[], passed: FillAsk['passed']): readonly Overrode[] {
  const rules = new Set(stops.flatMap(({ rule, override }) => (override === 'reason' ? [rule] : [])));
  return [...rules].flatMap((rule) => {
    const reason = passed?.[rule]?.trim();
    return isReason(reason) ? [{ rule, reason }] : [];
  });
}
