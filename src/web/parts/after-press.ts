// What is said at a field when it is left waits until a pressed mouse is let go: a line that appears under a field moves
// whatever stands below it, and a block that moves away between press and release is never clicked.

let pressed = false;

if (typeof document !== 'undefined') {
  const press = (is: boolean) => () => {
    pressed = is;
  };
  document.addEventListener('pointerdown', press(true), { capture: true });
  for (const end of ['pointerup', 'pointercancel']) document.addEventListener(end, press(false), { capture: true });
}

/** Does `act` at once, or as soon as the pressed pointer is let go; before the click that follows in either case. */
export function afterPress(act: () => void): void {
  if (!pressed) {
    act();
    return;
  }
  const done = () => {
    for (const end of ['pointerup', 'pointercancel']) document.removeEventListener(end, done, { capture: true });
    act();
  };
  for (const end of ['pointerup', 'pointercancel']) document.addEventListener(end, done, { capture: true });
}
