// One situation in which a rule speaks and one, as close to it as can be, in which it keeps silent. They are run
// as tests, and what a rule says in its example is what docs/rules.md shows.

import type { Rule, Values } from '#engine/rules/rule.ts';

/** In place of a silent situation, for a rule that has something to say each time it is asked. */
export const ALWAYS = 'always speaks';

/** A rule tried from both sides. */
export interface Example {
  readonly id: string;
  readonly speaks: false | Values;
  readonly silent: false | Values | typeof ALWAYS;
}

/** The situation that makes a rule speak, then the one that does not. */
export type Sides<Situation extends object> = readonly [speaks: Situation, silent: Situation | typeof ALWAYS];

/** Examples of one list of rules; a rule of several arms speaks when one of them does. */
export function examplesOf<Situation extends object>(
  rules: readonly Rule<Situation>[],
  sides: Readonly<Record<string, Sides<Situation>>>,
): readonly Example[] {
  return Object.entries(sides).map(([id, [speaks, silent]]) => {
    const arms = rules.filter((rule) => rule.id === id);
    const ask = (situation: Situation): false | Values =>
      arms.map((arm) => arm.when(situation)).find((values) => values !== false) ?? false;
    return { id, speaks: ask(speaks), silent: silent === ALWAYS ? ALWAYS : ask(silent as Situation) };
  });
}
