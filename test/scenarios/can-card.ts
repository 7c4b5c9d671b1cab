// The can card of one pour and the verdict of one batch, as the scenarios ask for them.

import type { Level } from '#engine/rules/rule.ts';
import { type Judgement, judgeBatch } from '#engine/souring/judge.ts';
import type { Look, Smell } from '#engine/souring/look.ts';
import { type CanResult, can } from '#tasks/can.ts';

/** A batch that may be poured anywhere: ready, held, measured. */
export const held14 = { peg: 14, state: 'ready', held: true, ph: 3.7, ecDsPerM: 4 };
/** The tap of the demo plot: 212 mg/L as CaCO3, 0.58 dS/m. */
export const tap = { alkalinityMeqPerL: 4.24, ecDsPerM: 0.58 };

/** The card, or a thrown list of problems. */
export function card(input: object): CanResult {
  const said = can(input);
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}

/** Rule ids of one level. */
export function rulesOf(result: CanResult, level: Level): readonly string[] {
  return result.cautions.filter((caution) => caution.level === level).map((caution) => caution.rule);
}

/** All caution texts of one card in one string. */
export function textOf(result: CanResult): string {
  return result.cautions.map((caution) => caution.text).join('\n');
}

/** Meter readings as [day, pH, smell?]. */
export function meter(readings: readonly (readonly [number, number, Smell?])[]): readonly Look[] {
  return readings.map(([day, ph, smell]) => ({ day, ph, by: 'meter', ...(smell && { smell }) }));
}

/** The verdict on one day. */
export function on(today: number, temperatureC: number, looks: readonly Look[]): Judgement {
  return judgeBatch({ looks, temperatureC, today });
}
