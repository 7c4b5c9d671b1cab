// Names beside a drawing: each wants to stand at the height of its thing, none may touch its neighbour,
// all keep within the sheet. Two sweeps, downwards and back up.

/** One name: where it would stand, and how high it is. */
export interface Wanted {
  readonly y: number;
  readonly high: number;
}

/**
 * Tops for names given in order from above, as near to what each wants as the others allow.
 * When they need more room than there is, they stand one under another from the top.
 */
export function spread(wanted: readonly Wanted[], room: { readonly top: number; readonly bottom: number }): number[] {
  const tops: number[] = [];
  let free = room.top;
  for (const one of wanted) {
    const top = Math.max(free, one.y - one.high / 2);
    tops.push(top);
    free = top + one.high;
  }
  let floor = room.bottom;
  for (let i = wanted.length - 1; i >= 0; i--) {
    tops[i] = Math.max(room.top, Math.min(tops[i] ?? 0, floor - (wanted[i]?.high ?? 0)));
    floor = tops[i] ?? 0;
  }
  let next = room.top;
  return tops.map((top, i) => {
    const placed = Math.max(top, next);
    next = placed + (wanted[i]?.high ?? 0);
    return placed;
  });
}

/** A name broken into at most two lines of so many letters; what does not fit is cut with an ellipsis. */
export function twoLines(name: string, letters: number): readonly string[] {
  const words = name.split(' ');
  let first = words.shift() ?? '';
  while (words.length > 0 && `${first} ${words[0]}`.length <= letters) first += ` ${words.shift()}`;
  const rest = words.join(' ');
  if (rest === '') return [cut(first, letters + 2)];
  return [cut(first, letters + 2), cut(rest, letters + 1)];
}

function cut(text: string, letters: number): string {
  return text.length <= letters ? text : `${text.slice(0, letters - 1).trimEnd()}…`;
}
