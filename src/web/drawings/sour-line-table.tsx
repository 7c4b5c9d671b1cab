// What is expected, day by day, as a table: the same that the band and the temperatures show.

import { For, Show } from 'solid-js';
import type { SourLinePicture } from './sour-line.tsx';

export function ExpectedTable(props: { readonly picture: SourLinePicture }) {
  const days = () => props.picture.band.filter(({ day }) => Number.isInteger(day) && day <= props.picture.lastDay);
  const warmth = (day: number) => {
    const found = props.picture.warmth.find((one) => one.day === day);
    return found === undefined ? '' : props.picture.words.betweenC(found.lowC, found.highC);
  };
  return (
    <Show when={days().length > 0}>
      <table>
        <caption>{props.picture.words.expectedCaption}</caption>
        <thead>
          <tr>
            <For each={props.picture.words.expectedTable}>{(head) => <th scope="col">{head}</th>}</For>
          </tr>
        </thead>
        <tbody>
          <For each={days()}>
            {({ day, low, high }) => (
              <tr>
                <th scope="row">{props.picture.words.dayName(day)}</th>
                <td>{props.picture.words.between(low, high)}</td>
                <td>{warmth(day)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </Show>
  );
}
