// Small marks that stand by a word, never without one: the triangle of what wants a hand, the shapes of the
// four levels of a caution.

import type { Level } from '#engine/rules/rule.ts';

/** Wants a hand now. */
export function HandMark() {
  return (
    <svg class="hand-mark" width="18" height="20" viewBox="0 0 22 24" aria-hidden="true">
      <path class="tip-accent" d="M2 1L20 12L2 23Z" />
    </svg>
  );
}

/** stop: square with a cut-out cross · hold: half-hatched square · caution: open triangle · note: open circle. */
export function LevelMark(props: { readonly level: Level }) {
  return (
    <svg class="level-mark" width="34" height="34" viewBox="0 0 34 34" aria-hidden="true">
      {props.level === 'stop' && (
        <>
          <rect class="tip" x="4" y="4" width="26" height="26" />
          <path class="cross" d="M10 10L24 24M24 10L10 24" />
        </>
      )}
      {props.level === 'hold' && (
        <>
          <rect class="outline" x="5" y="5" width="24" height="24" />
          <path class="layer" d="M5 29H29V5Z" fill="url(#h-window)" />
        </>
      )}
      {props.level === 'caution' && <path class="outline" d="M17 5L30 29H4Z" />}
      {props.level === 'note' && <circle class="outline" cx="17" cy="17" r="12" />}
    </svg>
  );
}
