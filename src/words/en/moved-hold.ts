// Why the day moved from which a batch counts as held, and that a pour of before was right by the rule of its day.

import { LONGER_HOLD } from '#engine/souring/earlier-hold.ts';
import type { PegName } from '../peg-name.ts';
import { versionDate } from './version.ts';

const since = versionDate(LONGER_HOLD.on);
const dated = (on: string) => versionDate(on.slice(0, 10));

export const movedHoldWords = {
  batch: (peg: PegName, before: string, now: string) =>
    `Since ${since} a batch must stay sour for longer before it counts as held. For peg\u00a0${peg} that moved the day from ${dated(before)} to ${dated(now)}. Published kill times ask for it: Breidt and Caldwell 2011; Breidt, Hayes and McFeeters 2007.`,
  pours: (dates: readonly string[]) =>
    `Poured on ${dates.map(dated).join(', ')}: that was right by the rule of its day. Since ${since} more days are asked. What is eaten raw waits as after a batch that was not held.`,
  /** After "Eaten raw, and fed from a batch that was not held": nobody did wrong. */
  rightThen: `The pour was right by the rule of its day. Since ${since} more days are asked, so the longer wait counts.`,
  heldThen: 'held by the rule of that day',
} as const;
