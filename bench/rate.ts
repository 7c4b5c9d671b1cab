// How often a second a piece of work can be done: warmed up, then several rounds of a fixed time; the middle
// round counts, the slowest and fastest are told beside it.

/** Times a second: the middle of the rounds, and the spread. */
export interface Rate {
  readonly perSecond: number;
  readonly slowest: number;
  readonly fastest: number;
}

const ROUNDS = 7;
const ROUND_MS = 400;

/** Measures one piece of work; `work` gets a running number, so that it need not do the same twice. */
export function rateOf(work: (i: number) => unknown): Rate {
  let kept: unknown;
  let i = 0;
  const round = (lastsMs: number): number => {
    const begun = performance.now();
    let done = 0;
    let passedMs = 0;
    while (passedMs < lastsMs) {
      for (let n = 0; n < 50; n++) kept = work(i++);
      done += 50;
      passedMs = performance.now() - begun;
    }
    return (done / passedMs) * 1000;
  };
  round(ROUND_MS);
  const rates = Array.from({ length: ROUNDS }, () => round(ROUND_MS)).sort((a, b) => a - b);
  if (kept === undefined) throw new Error('the work measured gave nothing');
  return { perSecond: middle(rates), slowest: rates[0] ?? 0, fastest: rates.at(-1) ?? 0 };
}

/** The middle of some numbers. */
export function middle(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? Number.NaN) + upper) / 2;
}
