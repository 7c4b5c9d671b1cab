// Things made anew that came out as they were: the one of before stands for them. Whoever keeps something beside a batch or a
// bottle, as the sheets do, then finds it again after an entry that touched another.

/** Each thing as before where it says the same; where all do, in the same order, the very list of before. */
export function asBefore<T>(
  before: ReadonlyMap<string, T> | undefined,
  made: ReadonlyMap<string, T>,
): ReadonlyMap<string, T> {
  if (before === undefined) return made;
  const kept = new Map<string, T>();
  const order = before.keys();
  let isSame = before.size === made.size;
  for (const [id, one] of made) {
    const old = before.get(id);
    const taken = old !== undefined && saysSame(old, one) ? old : one;
    isSame = isSame && taken === old && order.next().value === id;
    kept.set(id, taken);
  }
  return isSame ? before : kept;
}

/** Whether two values say the same in every field; what they share is not looked into. */
export function saysSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((one, i) => saysSame(one, b[i]));
  if (Object.getPrototypeOf(a) !== Object.prototype || Object.getPrototypeOf(b) !== Object.prototype) return false;
  const keys = Object.keys(a) as (keyof typeof a)[];
  return keys.length === Object.keys(b).length && keys.every((key) => key in b && saysSame(a[key], b[key]));
}
