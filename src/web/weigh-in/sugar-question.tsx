// Fourth on the sheet, asked by the sugar window itself once a fit stands; it stays while anything is told
// about sugar, so that an entry that cannot be read keeps its place.

import { Show } from 'solid-js';
import { sheet } from '#words/en/weigh-in-labels.ts';
import type { WeighIn } from './model.ts';

export function SugarQuestion(props: { readonly model: WeighIn }) {
  const stands = () => {
    const { product, weight } = props.model.sheet.draft().sugar;
    return props.model.result() !== undefined || product !== undefined || weight.text !== '';
  };
  return (
    <section class="ask" aria-labelledby="ask-sugar">
      <h2 id="ask-sugar">
        <b class="number">4</b> {sheet.sugarQuestion}
      </h2>
      <Show when={stands() && props.model.parts()} fallback={<p>{sheet.sugarBefore}</p>}>
        {(parts) => parts().SugarWindow({ model: props.model })}
      </Show>
    </section>
  );
}
