// How strong: matched to the published feed, or a ratio as typed, with both readings of a bare colon as volumes.

import { createSignal, For, Show } from 'solid-js';
import { readRatio, strengthFor, typedChoice, wantedLeafGPerL } from '#tasks/plot/strength.ts';
import { sayRatioProblem } from '#words/quantity.ts';
import { ChoiceRow } from '../parts/choice-row.tsx';
import type { Can } from './chosen.ts';

export function HowStrong(props: { readonly can: Can }) {
  const { words, chosen, liquid, can } = props.can;
  const [typed, setTyped] = createSignal('');
  const read = () => (typed().trim() === '' ? undefined : readRatio(typed()));
  const matched = () => strengthFor({ kind: 'matched' }, liquid()?.plantsGPerL);
  const canL = () => can()?.volumeL ?? 10;
  const mlIn = (concentrateMlPerL: number) => concentrateMlPerL * canL();
  const unclear = () => {
    const found = read();
    return found?.ok && !found.clear ? found.readings : [];
  };
  const problem = () => {
    const found = read();
    if (found === undefined || found.ok) return undefined;
    const said = sayRatioProblem(found);
    return `${said.message}: ${said.allowed}`;
  };
  const options = () => {
    const match = matched();
    const { strength } = chosen();
    return [
      ...(match?.leafGPerL === undefined ? [] : [['matched', words().matched(match.ratio, match.leafGPerL)] as const]),
      ...(strength.kind === 'typed'
        ? [['typed', words().reading(strength.ratio, mlIn(strength.concentrateMlPerL), canL())] as const]
        : []),
    ];
  };
  function take(text: string) {
    setTyped(text);
    const found = readRatio(text);
    if (found.ok && found.clear) props.can.change({ strength: typedChoice(found.ratio) });
  }
  return (
    <section class="can-question">
      <Show when={options().length > 0} fallback={<h3>{words().howStrong}</h3>}>
        <ChoiceRow
          name="strength"
          legend={words().howStrong}
          words={options()}
          taken={chosen().strength.kind}
          onTake={(kind) => kind === 'matched' && props.can.change({ strength: { kind: 'matched' } })}
        />
      </Show>
      <p class="note">{matched() === undefined ? words().noMatch : words().matchedNote(wantedLeafGPerL())}</p>
      <details class="fold">
        <summary>{words().typedStrength}</summary>
        <div class="field">
          <label for="can-ratio">
            {words().typedStrength}
            <small>{words().typedHint}</small>
          </label>
          <input
            id="can-ratio"
            class="entry"
            type="text"
            autocomplete="off"
            value={typed()}
            aria-invalid={problem() === undefined ? undefined : true}
            onChange={(event) => take(event.currentTarget.value)}
          />
        </div>
        <Show when={problem()}>
          <p class="accent" role="alert">
            {problem()}
          </p>
        </Show>
        <Show when={unclear().length > 0}>
          <p>{words().twoReadings}</p>
          <div class="choices">
            <For each={unclear()}>
              {(ratio) => {
                const choice = typedChoice(ratio);
                return (
                  <button
                    type="button"
                    class="block"
                    onClick={() => {
                      props.can.change({ strength: choice });
                      setTyped('');
                    }}
                  >
                    {choice.kind === 'typed' ? words().reading(ratio, mlIn(choice.concentrateMlPerL), canL()) : ''}
                  </button>
                );
              }}
            </For>
          </div>
        </Show>
      </details>
    </section>
  );
}
