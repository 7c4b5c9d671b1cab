// One look at a batch, as the keyholder noted it: acidity, nose, top, who, and the day since it was filled.
// Here looks are put in order and gathered into visits; what they mean stands in trend.ts and judge.ts.

import { isAtMost } from './days.ts';

/** The smell words, four that go with souring and four that are foul; the ninth says nothing about the batch. */
export const SMELLS = [
  'grassy',
  'sour',
  'yeasty',
  'vinegar',
  'butter-gone-off',
  'ammonia',
  'egg',
  'sewage',
  'cannot-smell',
] as const;
export type Smell = (typeof SMELLS)[number];

/** What the top of the batch looks like. */
export const SURFACES = ['clear', 'bubbles', 'flat-white', 'fuzzy-white', 'coloured-fuzz', 'larvae'] as const;
export type Surface = (typeof SURFACES)[number];

/** What the acidity was read with; a reading that does not say is held to the strip's stricter lines. */
export type ReadBy = 'meter' | 'strip';

export interface Look {
  /** Days since the batch was filled; parts of a day count. */
  readonly day: number;
  readonly ph?: number | undefined;
  readonly by?: ReadBy | undefined;
  readonly smell?: Smell | undefined;
  readonly surface?: Surface | undefined;
  /** Tag of the keyholder; without one a nose is nobody's twice. */
  readonly who?: string | undefined;
}

/** Looks within an hour of each other are one visit: nobody can say which came first. @practice our caution, no source */
export const VISIT_DAYS = 1 / 24;

const FOUL: readonly Smell[] = ['butter-gone-off', 'ammonia', 'egg', 'sewage'];

/** Whether the nose found one of the four foul words. @practice */
export function isFoul(look: Look): boolean {
  return look.smell !== undefined && FOUL.includes(look.smell);
}

/** Whether the nose said anything at all. @arithmetic */
export function hasNose(look: Look): boolean {
  return look.smell !== undefined && look.smell !== 'cannot-smell';
}

/** Whether the look saw anything: an entry with no acidity, no smell and no top is no look. @arithmetic */
export function sawSomething(look: Look): boolean {
  return look.ph !== undefined || look.surface !== undefined || hasNose(look);
}

/** Looks by day, those of one moment in one fixed order, so that the order of arrival never matters. @arithmetic */
export function inOrder(looks: readonly Look[]): readonly Look[] {
  return [...looks].sort((a, b) => a.day - b.day || compareText(sameMomentKey(a), sameMomentKey(b)));
}

/**
 * Neighbouring entries within an hour of the first of them, gathered.
 * @arithmetic
 */
export function visits<T extends { readonly day: number }>(ordered: readonly T[]): readonly (readonly T[])[] {
  const gathered: [T, ...T[]][] = [];
  for (const entry of ordered) {
    const open = gathered.at(-1);
    if (open && isAtMost({ fromDay: open[0].day, toDay: entry.day }, VISIT_DAYS)) open.push(entry);
    else gathered.push([entry]);
  }
  return gathered;
}

function sameMomentKey(look: Look): string {
  return [look.ph ?? '', look.by ?? '', look.smell ?? '', look.surface ?? '', look.who ?? ''].join('|');
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
