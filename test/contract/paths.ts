// Looking into an answer by the dotted paths of examples.json, and changing an input by them.
//   cans.*.volumeL          every item of a list
//   measures.?jug.count      the items of a list whose tool is that one

/** Every value at a path; none where the path leads nowhere. */
export function valuesAt(top: unknown, path: string): readonly unknown[] {
  let here: readonly unknown[] = [top];
  for (const step of path.split('.')) {
    here = here.flatMap((one) => {
      if (step === '*') return Array.isArray(one) ? one : [];
      if (step.startsWith('?')) return itemsWith(one, step.slice(1));
      if (typeof one !== 'object' || one === null || !Object.hasOwn(one, step)) return [];
      return [(one as Record<string, unknown>)[step]];
    });
  }
  return here;
}

function itemsWith(list: unknown, word: string): readonly unknown[] {
  if (!Array.isArray(list)) return [];
  return list.filter((item) => (item as { tool?: unknown }).tool === word);
}

/** A deep copy of an input with some of its fields set; null takes a field away. */
export function changed(input: unknown, changes: Readonly<Record<string, unknown>>): unknown {
  const copy = structuredClone(input) as Record<string, unknown>;
  for (const [path, value] of Object.entries(changes)) {
    const steps = path.replace(/\[(\d+)\]/g, '.$1').split('.');
    const last = steps.pop() ?? '';
    const holder = steps.reduce<Record<string, unknown>>((one, step) => one[step] as Record<string, unknown>, copy);
    if (value === null) delete holder[last];
    else holder[last] = value;
  }
  return copy;
}
