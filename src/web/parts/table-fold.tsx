// The table behind a drawing, folded under its name: it scrolls in a place of its own, and the keyboard reaches it.

import { For, type JSX } from 'solid-js';

export function TableFold(props: {
  readonly name: string;
  readonly columns: readonly string[];
  /** The rows. */
  readonly children: JSX.Element;
}) {
  return (
    <details class="fold">
      <summary>{props.name}</summary>
      <section class="got-table" aria-label={props.name} tabindex={0}>
        <table>
          <thead>
            <tr>
              <For each={props.columns}>{(name) => <th scope="col">{name}</th>}</For>
            </tr>
          </thead>
          <tbody>{props.children}</tbody>
        </table>
      </section>
    </details>
  );
}
