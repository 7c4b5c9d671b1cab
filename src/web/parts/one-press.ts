// A second tap is not a second press. While an act is being written, and for a moment after, a tap at the same place or on
// the same control belongs to the press that made it, whatever slid under the finger meanwhile; so does any quick tap on
// something that undoes. Typing, or a press elsewhere, ends that. The keyboard is never kept waiting.

/** How long a press and what it drew hold the place. @our-caution */
const HOLD_MS = 1000;
/** Two taps nearer than this are at one place: the width of a fingertip. @our-caution */
const FINGER_PX = 40;
/** Marks a control that undoes. */
export const UNDOES = 'data-undoes';

interface Pressed {
  readonly control: Element;
  readonly x: number;
  readonly y: number;
  readonly atMs: number;
  writing: number;
  keptMs: number;
}

let last: Pressed | undefined;
let typedMs = Number.NEGATIVE_INFINITY;

if (typeof window !== 'undefined') {
  window.addEventListener('click', hear, { capture: true });
  window.addEventListener('input', typed, { capture: true });
}

/** Something else was entered: what is pressed now is meant. A choice is a press itself. */
function typed({ target }: Event) {
  if (target instanceof HTMLInputElement && ['radio', 'checkbox'].includes(target.type)) return;
  last = undefined;
  typedMs = performance.now();
}

/** When something was typed last, by the time since the page began; long ago where nothing was. */
export const lastTypedMs = (): number => typedMs;

function hear(event: MouseEvent) {
  const control =
    (event.target as Element).closest('button, a, summary, label, input, select') ?? (event.target as Element);
  // Not a pointer: nothing can have slid under it.
  const byHand = event.detail > 0;
  if (byHand && last !== undefined && belongsTo(last, control, event)) {
    event.preventDefault();
    event.stopImmediatePropagation();
    return;
  }
  const { clientX: x, clientY: y } = event;
  last = { control, x, y, atMs: performance.now(), writing: 0, keptMs: Number.NEGATIVE_INFINITY };
}

function belongsTo(before: Pressed, control: Element, { clientX, clientY }: MouseEvent): boolean {
  const isThere = Math.hypot(clientX - before.x, clientY - before.y) < FINGER_PX;
  const isHeld = before.writing > 0 || performance.now() - before.keptMs < HOLD_MS;
  if (isHeld && (isThere || control === before.control)) return true;
  const isQuick = performance.now() - before.atMs < HOLD_MS;
  return isQuick && isThere && control !== before.control && control.closest(`[${UNDOES}]`) !== null;
}

/** Says that the newest press makes an act; call what it returns once the act is kept or has failed. */
export function onePress(): (end: 'kept' | 'failed') => void {
  const press = last;
  if (press === undefined) return () => undefined;
  press.writing++;
  return (end) => {
    press.writing--;
    if (end === 'kept') press.keptMs = performance.now();
  };
}
