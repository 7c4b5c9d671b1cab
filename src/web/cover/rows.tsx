// Lines of a draft on the cover's sheet: an empty one where there is none, another at a touch.

import { For, type JSX } from 'solid-js';

export function CoverRows<T extends object>(props: {
  readonly rows: readonly T[];
  readonly empty: T;
  readonly more: string;
  readonly onRows: (rows: readonly T[]) => void;
  readonly children: (i: number, row: () => T, change: (next: Partial<T>) => void) => JSX.Element;
}) {
  const shown = (): readonly T[] => (props.rows.length > 0 ? props.rows : [props.empty]);
  const change = (i: number, next: Partial<T>) =>
    props.onRows(shown().map((row, at) => (at === i ? { ...row, ...next } : row)));
  return (
    <>
      <For each={shown().map((_, i) => i)}>
        {(i) => (
          <fieldset class="cover-offer">
            {props.children(
              i,
              () => shown()[i] ?? props.empty,
              (next) => change(i, next),
            )}
          </fieldset>
        )}
      </For>
      <button type="button" class="block" onClick={() => props.onRows([...shown(), props.empty])}>
        {props.more}
      </button>
    </>
  );
}
