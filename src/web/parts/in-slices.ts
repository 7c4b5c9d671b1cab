// Work of many steps, done in short slices between which the page answers a touch; a sheet shows what it has meanwhile.

import { type Accessor, createEffect, createSignal, onCleanup } from 'solid-js';

const SLICE_MS = 10;

/**
 * What the work came to last; undefined until it first ends.
 * @param begin reads what it is made of; where that changes, the work begins anew
 */
export function inSlices<T>(begin: () => Generator<void, T>): Accessor<T | undefined> {
  const [made, setMade] = createSignal<T>();
  createEffect(() => {
    const steps = begin();
    let timer = setTimeout(slice);
    onCleanup(() => clearTimeout(timer));
    function slice() {
      const until = performance.now() + SLICE_MS;
      let step = steps.next();
      while (step.done !== true && performance.now() < until) step = steps.next();
      const { value } = step;
      if (step.done === true) setMade(() => value as T);
      else timer = setTimeout(slice);
    }
  });
  return made;
}
