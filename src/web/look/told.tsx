// What a look says once it is written down: one sentence in large type with its shape, what was seen, the sour line,
// why, what would change it, when to look again.

import { createMemo, For, onMount, Show } from 'solid-js';
import type { BatchLook } from '#journal/parts/batch.ts';
import type { Caution } from '#tasks/caution.ts';
import type { PegView } from '#tasks/plot/peg.ts';
import { READING_ERROR_PH } from '#tasks/plot/peg-seen.ts';
import type { LookWords } from '#words/en/look.ts';
import { SourLine } from '../drawings/sour-line.tsx';
import { StateMark } from '../drawings/state-mark.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { HandMark } from '../parts/marks.tsx';
import { measured } from '../parts/measured.ts';
import type { PegForetold } from '../souring/peg.ts';
import { type Foretold, sourPicture } from './picture.ts';

export interface VerdictProps {
  readonly view: PegView;
  readonly words: LookWords;
  readonly today: string;
  readonly temperature: (temperatureC: number) => string;
}

/** The sentence with its shape, and what it means for pouring. */
export function PegVerdict(props: VerdictProps) {
  const said = () => props.words.verdict(props.view.peg, props.view.state, props.view.held);
  const mark = () => (props.view.state === 'ready' && props.view.held ? 'held' : props.view.state);
  return (
    <>
      <p class="peg-verdict">
        <StateMark state={mark()} size={60} />
        <span>
          {said().lead} <b>{said().word}</b>
        </span>
      </p>
      <p class="advice">{props.words.advice(props.view.state, props.view.held)}</p>
      <Show when={props.view.hand === 'too-warm' && props.view.temperature}>
        {(told) => (
          <p class="accent">
            <HandMark />
            {props.words.tooWarm(props.temperature(told().lastC))}
          </p>
        )}
      </Show>
    </>
  );
}

/** The sour line at the width of its place. */
export function PegSourLine(
  props: VerdictProps & { readonly height: number; readonly foretold: Foretold; readonly bracketed: boolean },
) {
  const [width, place] = measured(350);
  const picture = createMemo(() => sourPicture(props));
  return (
    <div ref={place} class="drawing-place">
      <Show
        when={props.view.readings.length > 0 || props.foretold.comes}
        fallback={<p class="note">{props.words.line.nothing}</p>}
      >
        <SourLine picture={picture()} width={width()} height={props.height} />
      </Show>
    </div>
  );
}

/** Why, and what would change it; what only the model sees stands last. */
export function Reasons(
  props: Pick<VerdictProps, 'view' | 'words'> & { readonly beside?: readonly string[] | undefined },
) {
  return (
    <>
      <h2>{props.words.whyHeading(props.view.state, props.view.held)}</h2>
      <ol class="numbered">
        <For each={props.view.reasons}>{({ code, values }) => <li>{props.words.reason(code, values)}</li>}</For>
        <For each={props.beside ?? []}>{(reason) => <li>{reason}</li>}</For>
      </ol>
      <Show when={props.view.wouldChange.length > 0}>
        <h2>{props.words.changeHeading}</h2>
        <ul class="plain">
          <For each={props.view.wouldChange}>{({ code, values }) => <li>{props.words.change(code, values)}</li>}</For>
        </ul>
      </Show>
    </>
  );
}

/** When to look again. */
export function NextLook(props: Pick<VerdictProps, 'view' | 'words' | 'today'>) {
  return (
    <p class="next-look">
      <Show when={props.view.nextLookOn} fallback={props.words.noNextLook}>
        {(on) => (
          <>
            <span>{props.words.nextLook}</span>
            <b>
              {props.words.date(on(), props.today)}
              {on() === props.today ? `, ${props.words.today}` : ''}
            </b>
          </>
        )}
      </Show>
    </p>
  );
}

/** What one look saw, in one line. */
export function seenIn(look: BatchLook, words: LookWords, temperature: (temperatureC: number) => string): string {
  const { acidity, readBy, smell, surface, temperatureC } = look.body;
  return words.seen({
    reading: acidity && { ph: acidity.ph, errorPh: READING_ERROR_PH[acidity.by], by: acidity.by },
    readBy,
    smell,
    surface,
    temperature: temperatureC === undefined ? undefined : temperature(temperatureC),
  });
}

/** The look as it is told right after it was taken. */
export function Told(
  props: VerdictProps & {
    readonly look: BatchLook;
    readonly askNose: boolean;
    readonly foretold: PegForetold;
    readonly cautions: readonly Caution[];
  },
) {
  /** Where the reading of this look was expected. */
  const expected = () => {
    const { acidity } = props.look.body;
    const one = props.foretold.forecast()?.readings.findLast(({ ph, by }) => ph === acidity?.ph && by === acidity.by);
    return one?.expectedPh && { ...one.expectedPh, inside: one.inBand === true };
  };
  let heading: HTMLDivElement | undefined;
  onMount(() => {
    heading?.focus();
    scrollTo({ top: 0, behavior: 'instant' });
  });
  return (
    <div class="told">
      <div ref={heading} tabIndex={-1} class="told-head" role="status">
        <PegVerdict {...props} />
        <p class="seen">{seenIn(props.look, props.words, props.temperature)}.</p>
        <Show when={props.foretold.foretold().comes && props.look.body.acidity !== undefined}>
          <p class="was-expected">
            <Show when={expected()}>
              {(band) =>
                band().inside
                  ? props.words.line.insideOf(band().low, band().high)
                  : props.words.line.outsideOf(band().low, band().high)
              }
            </Show>
          </p>
        </Show>
        <Show when={props.askNose}>
          <p>
            <HandMark />
            {props.words.secondNose}
          </p>
        </Show>
      </div>
      <CautionList cautions={props.cautions} words={props.words} />
      <PegSourLine {...props} height={380} foretold={props.foretold.foretold()} bracketed={true} />
      <Reasons view={props.view} words={props.words} />
      <NextLook view={props.view} words={props.words} today={props.today} />
    </div>
  );
}
