// A safety value: what it is called, where it stands in code or table, what is stated of it and by whom, and how the
// engine behaves at it, just under and just over. The figures that are expected are typed here from the publication or
// the stated caution, never imported. They are run as tests, moved one by one (moved.ts), and shown in docs/rules.md.

import assert from 'node:assert/strict';
import type { Origin, Rule, Values } from '#engine/rules/rule.ts';

export interface Value {
  /** What it is, so that whoever reads the name of a failed test knows which value moved. */
  readonly name: string;
  /**
   * Where it stands: a file of the engine and the name there, `can/limits.ts POUR_PH.low`, or a table, its row and quantity,
   * `data/heap.csv cfr-7.leastC`; behind the quantity one end of a band, where only that end is meant.
   */
  readonly at: string;
  /** The value as it is stated, with its unit. */
  readonly stated: string;
  readonly source: Origin;
  readonly locator?: string;
  /** How far it is moved up and down to see whether that is noticed; without it one for a whole number, else a twentieth. */
  readonly step?: number;
  /** For what is no number: a piece of code as it stands, and as it must not be. */
  readonly turned?: readonly [from: string, to: string];
  /** Throws where the engine does not behave as stated. */
  readonly holds: () => void;
}

/** Asks for each input, and wants the answer beside it. */
export function answers<Input>(
  ask: (input: Input) => unknown,
  ...rows: readonly (readonly [Input, unknown])[]
): () => void {
  return () => {
    for (const [input, expected] of rows) assert.deepEqual(ask(input), expected, `for ${JSON.stringify(input)}`);
  };
}

/** All of these hold. */
export function all(...parts: readonly (() => void)[]): () => void {
  return () => {
    for (const part of parts) part();
  };
}

/** Whether one rule of a list speaks in a situation. */
export function speaks<Situation>(rules: readonly Rule<Situation>[], id: string) {
  return (situation: Situation): boolean => valuesOf(rules, id)(situation) !== undefined;
}

/** What one rule of a list gives its sentence; undefined where it is silent. */
export function valuesOf<Situation>(rules: readonly Rule<Situation>[], id: string) {
  const arms = rules.filter((rule) => rule.id === id);
  assert.notEqual(arms.length, 0, `no rule ${id}`);
  return (situation: Situation): Values | undefined =>
    arms.map((arm) => arm.when(situation)).find((values) => values !== false) || undefined;
}
