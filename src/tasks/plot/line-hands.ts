// What wants a hand today, the most urgent first, each with the sheet it leads to. Judgement stands in the engine and
// in the tasks for peg and shelf; here is only the order.

import type { Plot } from '#journal/fold.ts';
import type { PegName } from '#words/peg-name.ts';
import { liesAhead } from './counted.ts';
import type { BottlesOnLine, PegOnLine } from './line.ts';
import type { Round } from './line-round.ts';

/** In the order in which they are listed. */
export type HandKind =
  | 'lost'
  | 'lid-bulged'
  | 'too-warm'
  | 'vent'
  | 'doubtful'
  | 'unknown'
  | 'look'
  | 'bottle'
  | 'strain'
  | 'past-use-first'
  | 'round'
  | 'question'
  | 'file';

export interface Hand {
  readonly kind: HandKind;
  /** Address of the sheet where it is done. */
  readonly to: string;
  readonly peg?: PegName;
  readonly litres?: number;
  readonly count?: number;
}

export interface HandsAsk {
  readonly plot: Plot;
  readonly pegs: readonly PegOnLine[];
  readonly groups: readonly BottlesOnLine[];
  readonly round: Round;
  /** Entries stand on this device alone, and have for a week. */
  readonly fileDue: boolean;
}

/** Drained liquid below this is what clings to the pail. @practice */
const LEAST_TO_BOTTLE_L = 0.3;

export function handsOf(ask: HandsAsk): readonly Hand[] {
  const { plot, pegs, groups, round, fileDue } = ask;
  const found: Hand[] = [];
  const each = (kind: HandKind, which: (peg: PegOnLine) => boolean, end: '' | '/look' | '/strain' = '') => {
    for (const one of pegs) if (which(one)) found.push({ kind, to: `/peg/${one.batch}${end}`, peg: one.peg });
  };
  each('lost', ({ state }) => state === 'lost');
  each('lid-bulged', ({ batch, state }) => state !== 'lost' && bulged(plot, batch));
  each('too-warm', ({ hand }) => hand === 'too-warm');
  for (const one of groups) if (one.ventDue) found.push({ kind: 'vent', to: '/shelf', peg: one.peg });
  each('doubtful', ({ state }) => state === 'doubtful', '/look');
  each('unknown', ({ state }) => state === 'unknown', '/look');
  each(
    'look',
    ({ state, lookDue }) => lookDue && (state === 'souring' || state === 'slow' || state === 'ready'),
    '/look',
  );
  for (const { id, peg, liquid } of plot.batches.values())
    if (liquid.drainedL > 0 && liquid.leftL >= LEAST_TO_BOTTLE_L)
      found.push({ kind: 'bottle', to: `/peg/${id}/strain`, peg, litres: liquid.leftL });
  each('strain', ({ state, held }) => state === 'ready' && held, '/strain');
  for (const { past, peg } of groups) if (past) found.push({ kind: 'past-use-first', to: '/shelf', peg });
  if (round.due) found.push({ kind: 'round', to: '/can', litres: round.dueL });
  const questions = plot.questions.length + Number(liesAhead(plot));
  if (questions > 0) found.push({ kind: 'question', to: '/record', count: questions });
  if (fileDue) found.push({ kind: 'file', to: '/record' });
  return found;
}

/** Whether the last look that said anything of the lid saw it bulge. */
function bulged(plot: Plot, batch: string): boolean {
  const found = plot.batches.get(batch);
  const told = found?.looks.findLast(({ body }) => body.lidBulged !== undefined);
  return told?.body.lidBulged === true || found?.doubtful.some(({ body }) => body.lidBulged === true) === true;
}
