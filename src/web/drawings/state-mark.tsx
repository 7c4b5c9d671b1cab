// The shape that stands by the word for a batch or a bed, never without the word: each with its own outline and
// hatch, so that grey print and any eye can tell them apart. Hatches are drawn line by line: they need no pattern.

import type { JSX } from 'solid-js';
import type { State } from '#engine/souring/reason.ts';

/** The six words for a batch, the mark held, and the three answers of pick day. */
export type MarkName = State | 'held' | 'pick' | 'cook' | 'wait';

const MARKS: Readonly<Record<MarkName, () => JSX.Element>> = {
  souring: () => (
    <>
      <path class="h2" d="M4.6 21H29.4M6.7 25H27.3M12 29H22" />
      <path class="outline" d="M4 17H30" />
      <circle class="outline" cx="17" cy="17" r="13" />
    </>
  ),
  slow: () => (
    <>
      <path class="h2" d="M13.8 20.5H20.2M10.6 24H23.4M8.3 26.5H25.7" />
      <path class="outline" d="M6 5H28L6 29H28Z" />
    </>
  ),
  ready: () => <circle class="tip" cx="17" cy="17" r="14" />,
  held: () => (
    <>
      <circle class="tip" cx="17" cy="17" r="9" />
      <circle class="outline" cx="17" cy="17" r="14" />
    </>
  ),
  doubtful: () => (
    <>
      <path class="h2" d="M9 10V24M13 6V28M17 3V31M21 6V28M25 10V24" />
      <path class="outline" d="M17 2L32 17L17 32L2 17Z" />
    </>
  ),
  lost: () => (
    <>
      <rect class="tip" x="4" y="4" width="26" height="26" />
      <path class="cross" d="M9 9L25 25M25 9L9 25" />
    </>
  ),
  unknown: () => <circle class="outline" cx="17" cy="17" r="13" stroke-dasharray="5.2 3" />,
  pick: () => <circle class="tip" cx="17" cy="17" r="14" />,
  cook: () => (
    <>
      <path class="h2" d="M4.5 14H29.5M5.3 18H28.7M6 22H28M6.6 26H27.4" />
      <path class="outline" d="M3 9H31L27 30H7Z" />
      <path class="outline" d="M1 9H33M13 4H21" />
    </>
  ),
  wait: () => (
    <>
      <path class="h2" d="M9 25V29M9 25H5M13 21V29M17 17V29M21 13V29M25 9V29" />
      <rect class="outline" x="5" y="5" width="24" height="24" />
      <path class="edge" d="M5 29L29 5" />
    </>
  ),
};

/** A state mark, 34 px beside a word, 60 px in a verdict. */
export function StateMark(props: { readonly state: MarkName; readonly size?: number | undefined }) {
  return (
    <svg class="state-mark" width={props.size ?? 34} height={props.size ?? 34} viewBox="0 0 34 34" aria-hidden="true">
      {MARKS[props.state]()}
    </svg>
  );
}
