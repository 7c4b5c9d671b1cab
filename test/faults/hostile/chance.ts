// Choices out of seeded numbers: the same input for the same number on every machine.

import { uniforms } from '#engine/souring/model/draws.ts';

export interface Chance {
  /** From 0 up to 1. */
  readonly uniform: () => number;
  /** A whole number from 0, below this one. */
  readonly below: (most: number) => number;
  readonly oneIn: (count: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
}

export function chanceOf(seed: number, stream: number): Chance {
  const uniform = uniforms(seed, stream);
  const below = (most: number) => Math.floor(uniform() * most);
  return {
    uniform,
    below,
    oneIn: (count) => below(count) === 0,
    pick: (list) => {
      if (list.length === 0) throw new Error('nothing to pick from');
      return list[below(list.length)] as (typeof list)[number];
    },
  };
}
