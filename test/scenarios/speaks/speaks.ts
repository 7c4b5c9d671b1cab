// Which caution speaks in a situation, and that all others stay silent: the form of one case, and how a case is put
// to the rules. Notes may stand beside; a stop, hold or caution that a case does not name is a failure.

import { batchRules } from '#engine/rules/batch.ts';
import { bioassayRules } from '#engine/rules/bioassay.ts';
import { foulGasRules, lidGasRules, roomGasRules } from '#engine/rules/gas.ts';
import { beforeTipping } from '#engine/rules/rescue.ts';
import { type Finding, judge, type Level, type Rule } from '#engine/rules/rule.ts';
import { judgeSlip } from '#engine/rules/slip.ts';
import { germinationRules, pourHourRules, sprayRules } from '#engine/rules/spray.ts';
import { bottleUseRules } from '#engine/rules/vessel.ts';
import { type BioassayReading, bioassayVerdict } from '#engine/scraps/bioassay.ts';
import type { SourceSlip } from '#engine/scraps/slip.ts';
import { can } from '#tasks/can.ts';
import { fit } from '#tasks/fit.ts';
import { sour } from '#tasks/sour.ts';
import { strain } from '#tasks/strain.ts';
import { water } from '#tasks/water.ts';

/** One situation as a grower meets it. */
export interface Case {
  /** What is the case, as a statement. */
  readonly when: string;
  readonly place: keyof typeof places;
  readonly ask: unknown;
  /** Every stop, hold and caution that must speak; all others must be silent. */
  readonly speaks: readonly string[];
  /** Rules, notes included, that a hasty tool would let speak here. */
  readonly silent: readonly string[];
}

interface Spoken {
  readonly rule: string;
  readonly level: Level;
}

type Said =
  | { readonly ok: true; readonly value: { readonly cautions: readonly Spoken[] } }
  | { readonly ok: false; readonly problems: unknown };

const word =
  (ask: (input: unknown) => Said) =>
  (input: unknown): readonly Spoken[] => {
    const said = ask(input);
    if (!said.ok) throw new Error(JSON.stringify(said.problems));
    return said.value.cautions;
  };

const rules =
  <Situation>(list: readonly Rule<Situation>[]) =>
  (situation: unknown): readonly Finding[] =>
    judge(list, situation as Situation);

/** A place of decision, and how it is asked there. */
const places = {
  water: word(water),
  'weigh-in': word(fit),
  watching: word(sour),
  straining: word(strain),
  can: word(can),
  slip: (ask: unknown) => judgeSlip({ slip: ask as SourceSlip }).findings,
  'bean test': (ask: unknown) => judge(bioassayRules, bioassayVerdict(ask as BioassayReading)),
  bottle: rules(bottleUseRules),
  'closed lid': rules(lidGasRules),
  room: rules(roomGasRules),
  'foul batch': rules(foulGasRules),
  tipping: (ask: unknown) => beforeTipping(ask as Parameters<typeof beforeTipping>[0]),
  batch: rules(batchRules),
  'hour to spray': rules(sprayRules),
  'hour to pour': rules(pourHourRules),
  'cress test': rules(germinationRules),
};

/** Rule ids that speak, by level: what asks for an act, and notes. */
export function heard({ place, ask }: Case): { readonly asks: readonly string[]; readonly notes: readonly string[] } {
  const found = places[place](ask);
  const ids = (list: readonly Spoken[]) => [...new Set(list.map(({ rule }) => rule))].sort();
  return {
    asks: ids(found.filter(({ level }) => level !== 'note')),
    notes: ids(found.filter(({ level }) => level === 'note')),
  };
}
