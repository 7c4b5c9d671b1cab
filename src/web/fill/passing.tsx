// Stops of a filling that are a matter of judgement: each gives way to a reason in words, and can be taken up again.

import { For } from 'solid-js';
import type { Caution } from '#tasks/caution.ts';
import type { Overrode } from '#tasks/plot/fill-cautions.ts';
import { passableNames, passWords } from '#words/en/profile.ts';
import { PassOver } from '../parts/pass-over.tsx';
import { UndoButton } from '../parts/undo-button.tsx';

const named = (rule: string) => passableNames[rule] ?? rule;

export function Passing(props: {
  readonly stops: readonly Caution[];
  readonly overrode: readonly Overrode[];
  readonly onPass: (rule: string, reason: string) => void;
}) {
  /** Only where nothing else stops it: a reason that would not do is not asked for. */
  const rules = () =>
    props.stops.every(({ override }) => override === 'reason') ? [...new Set(props.stops.map(({ rule }) => rule))] : [];
  return (
    <>
      <For each={rules()}>
        {(rule) => (
          <PassOver
            id={`fill-pass-${rule}`}
            words={passWords}
            what={named(rule)}
            onPass={(reason) => props.onPass(rule, reason)}
          />
        )}
      </For>
      <For each={props.overrode}>
        {({ rule, reason }) => (
          <div class="passed-over">
            <p>
              <b>{passWords.passedHere(named(rule), reason)}</b>
            </p>
            <UndoButton of={rule} onPress={() => props.onPass(rule, '')}>
              {passWords.passTakeBack}
            </UndoButton>
          </div>
        )}
      </For>
    </>
  );
}
