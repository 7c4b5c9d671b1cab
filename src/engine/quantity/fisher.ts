// The exact test for two small groups: how likely so many marked ones would fall into the first group by chance
// alone. Used for seedlings in pots; what a small chance means is decided where it is used.

/** How many of a group are marked. */
export interface Marked {
  readonly markedCount: number;
  readonly allCount: number;
}

/**
 * Chance of at least so many marked in the first group, were all shared out at random (Fisher's exact test, one-sided).
 * `sum over x >= a of C(K, x) C(N - K, n - x) / C(N, n)`, with a marked of n in the first group, K marked of N in all.
 * Limits: whole numbers, 0 <= marked <= all; NaN where they are not. Small groups need a large difference.
 * @returns chance from 0 to 1
 * @memory Fisher 1935, The design of experiments, chapter 2
 * @checked published/fisher-exact.csv, worked/fisher-exact.csv
 */
export function chanceOfSoMany(first: Marked, second: Marked): number {
  if (!sound(first) || !sound(second)) return Number.NaN;
  const markedCount = first.markedCount + second.markedCount;
  const allCount = first.allCount + second.allCount;
  const mostCount = Math.min(markedCount, first.allCount);
  const ways = logChoose(allCount, first.allCount);
  let chance = 0;
  for (let x = first.markedCount; x <= mostCount; x += 1) {
    const rest = first.allCount - x;
    if (rest > allCount - markedCount) continue;
    chance += Math.exp(logChoose(markedCount, x) + logChoose(allCount - markedCount, rest) - ways);
  }
  return Math.min(1, chance);
}

function sound({ markedCount, allCount }: Marked): boolean {
  return Number.isInteger(markedCount) && Number.isInteger(allCount) && markedCount >= 0 && markedCount <= allCount;
}

/** Natural logarithm of the ways to choose some out of all. */
function logChoose(allCount: number, someCount: number): number {
  let sum = 0;
  for (let i = 1; i <= someCount; i += 1) sum += Math.log((allCount - someCount + i) / i);
  return sum;
}
