// The four strips of a look, one under the other. The fourth answer writes it down; the ink block does so with what is
// there, the rest skipped. No keyboard, no drag, no long press.

import { For, Show } from 'solid-js';
import type { Smell, Surface } from '#engine/souring/look.ts';
import type { PegView } from '#tasks/plot/peg.ts';
import type { LookWords, Strip } from '#words/en/look.ts';
import { HandMark } from '../parts/marks.tsx';
import { ABOUT_C, type Answers, NEAR_C, STRIPS, skipped } from './answers.ts';
import { Choice, LookStrip } from './choice.tsx';
import { SourStrip } from './sour-strip.tsx';
import { TopDrawing } from './tops.tsx';

const NOSES: readonly Smell[] = [
  'grassy',
  'sour',
  'yeasty',
  'vinegar',
  'butter-gone-off',
  'ammonia',
  'egg',
  'sewage',
  'cannot-smell',
];
const TOPS: readonly Surface[] = ['clear', 'bubbles', 'flat-white', 'fuzzy-white', 'coloured-fuzz', 'larvae'];

export interface AskingProps {
  readonly words: LookWords;
  readonly view: PegView;
  readonly today: string;
  readonly answers: Answers;
  readonly others: readonly string[];
  readonly readBy: string;
  readonly cannotSmell: boolean;
  readonly saving: boolean;
  readonly failed: boolean;
  /** A temperature in the keyholder's manner. */
  readonly temperature: (temperatureC: number) => string;
  readonly onReadBy: (tag: string) => void;
  readonly onAnswer: (answer: Partial<Answers>) => void;
  readonly onSave: () => void;
}

export function Asking(props: AskingProps) {
  const left = () => skipped(props.answers);
  const nothing = () => left().length === STRIPS.length;
  const lastC = () => {
    const told = props.view.temperature?.lastC;
    return told === undefined ? undefined : Math.round(told);
  };

  /** What comes next is brought to the thumb where it is not on the screen yet. */
  function answer(strip: Strip, given: Partial<Answers>) {
    props.onAnswer(given);
    const next = left().find((one) => STRIPS.indexOf(one) > STRIPS.indexOf(strip));
    const place = next && document.getElementById(`strip-${next}`);
    if (place && place.getBoundingClientRect().bottom > innerHeight - 100)
      place.scrollIntoView({ block: 'start', behavior: 'instant' });
  }

  return (
    <div class="asking">
      <p class="note before">{props.words.nothingYet}</p>
      <SourStrip
        words={props.words}
        answer={props.answers.sour}
        last={props.view.readings.at(-1)}
        today={props.today}
        others={props.others}
        readBy={props.readBy}
        onReadBy={props.onReadBy}
        onAnswer={(sour) => answer('sour', { sour })}
      />
      <LookStrip
        strip="nose"
        words={props.words}
        answered={props.answers.nose !== null}
        onSkip={() => props.onAnswer({ nose: null })}
      >
        <Show when={props.cannotSmell}>
          <p class="note">{props.words.noseOfAnother}</p>
        </Show>
        <div class="three">
          <For each={NOSES}>
            {(nose) => (
              <Choice taken={props.answers.nose === nose} onTake={() => answer('nose', { nose })}>
                {props.words.smells[nose]}
              </Choice>
            )}
          </For>
        </div>
      </LookStrip>
      <LookStrip
        strip="top"
        words={props.words}
        answered={props.answers.top !== null}
        onSkip={() => props.onAnswer({ top: null })}
      >
        <div class="three">
          <For each={TOPS}>
            {(top) => (
              <Choice taken={props.answers.top === top} onTake={() => answer('top', { top })}>
                <TopDrawing top={top} />
                <span>{props.words.surfaces[top]}</span>
              </Choice>
            )}
          </For>
        </div>
      </LookStrip>
      <LookStrip
        strip="warmth"
        words={props.words}
        answered={props.answers.warmth !== null}
        onSkip={() => props.onAnswer({ warmth: null })}
      >
        <Show when={lastC()}>
          {(last) => (
            <div class="five">
              <For each={NEAR_C}>
                {(step) => (
                  <Choice
                    taken={props.answers.warmth === last() + step}
                    onTake={() => answer('warmth', { warmth: last() + step })}
                  >
                    <b>{props.temperature(last() + step)}</b>
                    <Show when={step === 0}>
                      <small>{props.words.asLast}</small>
                    </Show>
                  </Choice>
                )}
              </For>
            </div>
          )}
        </Show>
        <div class="four">
          <For each={ABOUT_C}>
            {(about) => (
              <Choice
                taken={
                  props.answers.warmth === about && !(Math.abs(about - (lastC() ?? Number.NaN)) <= Math.max(...NEAR_C))
                }
                onTake={() => answer('warmth', { warmth: about })}
              >
                <small>{props.words.about}</small>
                <b>{props.temperature(about)}</b>
              </Choice>
            )}
          </For>
        </div>
      </LookStrip>
      <div class="look-foot">
        <Show when={props.failed}>
          <p class="trouble" role="alert">
            <HandMark />
            {props.words.notKept}
          </p>
        </Show>
        <button
          type="button"
          class="block act"
          id="write-down"
          aria-disabled={nothing() || props.saving}
          onClick={() => props.onSave()}
        >
          {props.saving
            ? props.words.saving
            : left().length === 0 || nothing()
              ? props.words.save
              : props.words.saveSkipping(left())}
        </button>
      </div>
    </div>
  );
}
