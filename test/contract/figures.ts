// The figures of an answer: every number finite, every band in order.

import type { Answer } from '#tasks/index.ts';

/** What is wrong with the figures of an answer and of its workings. Infinite is right where the answer says that no amount does. */
export function figureFaults(reply: Answer, workings = reply.workings()): readonly string[] {
  const found = numberFaults({ answer: reply.value, workings });
  const wrong = found.filter((one) => !NO_AMOUNT.test(one));
  const unsaid = found.some((one) => one.includes('likely')) && !saysNoAmountDoes(reply);
  return unsaid ? [...wrong, 'no amount does, and no caution says so'] : wrong;
}

/** Figures that are infinite where no amount of sugar does: for the likely one the answer must say so in words. */
const NO_AMOUNT = /(leastHexoseG\.(low|likely|high)|asProductG|^workings\.\d+\.(value|inputs).*) is Infinity$/;

function saysNoAmountDoes({ value }: Answer): boolean {
  return value.cautions.some(({ rule }) => rule === 'sugar-window-closed');
}

/** Where an answer holds a number that is none, or a band out of order. */
export function numberFaults(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  const { low, likely, high } = value as { low?: unknown; likely?: unknown; high?: unknown };
  const band = typeof low === 'number' && typeof likely === 'number' && typeof high === 'number';
  const order =
    band && !(low <= likely && likely <= high) ? [`${path} is out of order: ${low}, ${likely}, ${high}`] : [];
  return [...order, ...Object.entries(value).flatMap(([key, one]) => numberFaults(one, path ? `${path}.${key}` : key))];
}
