// "how?": at most five drawn steps over the sheet, in a native dialog; works without a signal like all the rest.

import { createSignal, For, type JSX, Show } from 'solid-js';

/** One step: what the hands do, drawn, and one short line. */
export interface HowStep {
  readonly drawing: JSX.Element;
  readonly text: string;
}

export interface HowProps {
  readonly steps: readonly HowStep[];
  readonly heading: string;
  /** The word on the block that opens it, and on the one that closes it. */
  readonly open: string;
  readonly close: string;
}

/** The block and its dialog; a sixth step is a fault of ours. */
export function How(props: HowProps) {
  let dialog: HTMLDialogElement | undefined;
  // Drawn when first asked for: nearly every visit to a sheet does without.
  const [asked, setAsked] = createSignal(false);
  return (
    <>
      <button
        type="button"
        class="why how"
        aria-label={props.heading}
        onClick={() => {
          setAsked(true);
          dialog?.showModal();
        }}
      >
        {props.open}
      </button>
      <dialog ref={dialog} class="working" aria-label={props.heading}>
        <div class="working-sheet">
          <header class="head">
            <h2>{props.heading}</h2>
            <button type="button" class="block" onClick={() => dialog?.close()}>
              {props.close}
            </button>
          </header>
          <Show when={asked()}>
            <Steps steps={props.steps} />
          </Show>
        </div>
      </dialog>
    </>
  );
}

function Steps(props: { readonly steps: readonly HowStep[] }) {
  const { steps } = props;
  if (steps.length > 5) throw new RangeError('How: more than five steps; split the job');
  return (
    <ol class="how-steps">
      <For each={steps}>
        {(step) => (
          <li>
            {step.drawing}
            <p>{step.text}</p>
          </li>
        )}
      </For>
    </ol>
  );
}
