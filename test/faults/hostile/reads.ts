// Counts how often a word looks into its input: work that grows with the input and no faster shows in this count on
// every machine alike.

import { toJSONSchema } from 'zod/v4/core';
import type { Task } from '#tasks/index.ts';

export interface Counted {
  /** The input, every look into it counted. */
  readonly input: unknown;
  /** Looks so far, for each value of the input and each field of the word. */
  readonly readsForEach: number;
}

const fieldCounts = new WeakMap<object, number>();

export function counting(input: unknown, schema: Task['schema']): Counted {
  let reads = 0;
  const known = new WeakMap<object, object>();
  const size = sizeOf(input) + fieldCount(schema);
  return {
    input: seen(input),
    get readsForEach() {
      return reads / size;
    },
  };

  function seen(value: unknown): unknown {
    if (typeof value !== 'object' || value === null) return value;
    const before = known.get(value);
    if (before !== undefined) return before;
    const proxy = new Proxy(value, {
      get(target, key) {
        reads += 1;
        return seen(Reflect.get(target, key));
      },
      has(target, key) {
        reads += 1;
        return Reflect.has(target, key);
      },
      getOwnPropertyDescriptor(target, key) {
        reads += 1;
        return Reflect.getOwnPropertyDescriptor(target, key);
      },
    });
    known.set(value, proxy);
    return proxy;
  }
}

/** Values in an input, itself among them. */
function sizeOf(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce<number>((sum, one) => sum + sizeOf(one), 1);
}

function fieldCount(schema: Task['schema']): number {
  const before = fieldCounts.get(schema);
  if (before !== undefined) return before;
  const count = sizeOf(toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }));
  fieldCounts.set(schema, count);
  return count;
}
