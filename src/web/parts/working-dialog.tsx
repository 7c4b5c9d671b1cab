// One touch from any figure to its working: formula, inputs, range, sources, doubts. The one component that
// renders a Working, whichever figure it is of.

import { createEffect, For, Show } from 'solid-js';
import { asRange } from '#engine/quantity/range.ts';
import { citation } from '#engine/tables/index.ts';
import type { Working } from '#engine/working/working.ts';
import { workingWords } from '#words/en/weigh-in.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';

/** The workings asked for, while some are, and what closes them. */
export interface WhyAsked {
  readonly workings: () => readonly Working[] | undefined;
  readonly closeWhy: () => void;
}

/** The workings asked for, over the sheet; closed by its block or by Escape. */
export function WorkingDialog(props: { readonly model: WhyAsked }) {
  const { workings, closeWhy } = props.model;
  let dialog: HTMLDialogElement | undefined;
  createEffect(() => {
    if (workings() && !dialog?.open) dialog?.showModal();
    if (!workings() && dialog?.open) dialog.close();
  });
  return (
    <dialog ref={dialog} class="working" aria-labelledby="working-heading" onClose={() => closeWhy()}>
      <div class="working-sheet">
        <header class="head">
          <h2 id="working-heading">{sheet.whyHeading}</h2>
          <button type="button" class="block" onClick={() => dialog?.close()}>
            {sheet.close}
          </button>
        </header>
        <For each={workings()}>{(working) => <WorkingView working={working} />}</For>
      </div>
    </dialog>
  );
}

function WorkingView(props: { readonly working: Working }) {
  const range = () => asRange(props.working.value);
  return (
    <section class="one-working">
      <h3>{props.working.label}</h3>
      <p class="working-value">{workingWords.input(range().likely, props.working.unit)}</p>
      <Show when={range().low !== range().high}>
        <p>{workingWords.range(range(), props.working.unit)}</p>
      </Show>
      <h4>{workingWords.formula}</h4>
      <p>{props.working.formula}</p>
      <h4>{workingWords.inputs}</h4>
      <dl class="inputs">
        <For each={props.working.inputs}>
          {(input) => (
            <div>
              <dt>
                {input.label}
                <Show when={input.source}>{(source) => <small>{citation(source())}</small>}</Show>
              </dt>
              <dd>{workingWords.input(input.value, input.unit)}</dd>
            </div>
          )}
        </For>
      </dl>
      <h4>{workingWords.sources}</h4>
      <ul class="plain">
        <For each={props.working.sources} fallback={<li>{workingWords.noSource}</li>}>
          {(source) => <li>{citation(source)}</li>}
        </For>
      </ul>
      <Show when={props.working.doubts.length > 0}>
        <h4>{workingWords.doubts}</h4>
        <ul class="plain">
          <For each={props.working.doubts}>{(doubt) => <li>{doubt}</li>}</For>
        </ul>
      </Show>
    </section>
  );
}
