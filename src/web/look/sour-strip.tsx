// How sour: a pad of the paper strip in one touch, or a meter's figure in two: its whole, then its tenth. Whoever
// else reads it is named once and stays named on this device.

import { createSignal, For, Show } from 'solid-js';
import type { PegReading } from '#tasks/plot/peg-seen.ts';
import type { LookWords } from '#words/en/look.ts';
import { PADS, type SourAnswer, TENTHS, WHOLES } from './answers.ts';
import { Choice, LookStrip } from './choice.tsx';
import { PadDrawing } from './tops.tsx';

export interface SourStripProps {
  readonly words: LookWords;
  readonly answer: SourAnswer | null;
  readonly last: PegReading | undefined;
  readonly today: string;
  /** Tags of the other keyholders. */
  readonly others: readonly string[];
  readonly readBy: string;
  readonly onReadBy: (tag: string) => void;
  readonly onAnswer: (answer: SourAnswer | null) => void;
}

const OVER = 8;

export function SourStrip(props: SourStripProps) {
  const [whole, setWhole] = createSignal<number>();
  const take = (answer: SourAnswer) => {
    setWhole(undefined);
    props.onAnswer(answer);
  };
  const isTaken = (by: SourAnswer['by'], ph: number) => props.answer?.by === by && props.answer.ph === ph;
  const others = () => (props.others.length > 0 ? props.others : [props.words.somebody]);
  return (
    <LookStrip
      strip="sour"
      words={props.words}
      answered={props.answer !== null}
      onSkip={() => {
        setWhole(undefined);
        props.onAnswer(null);
      }}
    >
      <Show when={props.last}>
        {(last) => (
          <p class="note">{props.words.lastReading(last().ph, last().by, props.words.date(last().on, props.today))}</p>
        )}
      </Show>
      <Show
        when={whole() === undefined}
        fallback={
          <fieldset class="choice">
            <legend>{props.words.meterTenths(whole() ?? 0)}</legend>
            <div class="five">
              <For each={TENTHS}>
                {(tenth) => {
                  const ph = () => Math.round(10 * (whole() ?? 0) + tenth) / 10;
                  return (
                    <Choice
                      taken={isTaken('meter', ph())}
                      label={`${props.words.meter} ${props.words.ph(ph())}`}
                      onTake={() => take({ ph: ph(), by: 'meter', typed: ph().toFixed(1) })}
                    >
                      <b>{props.words.ph(ph())}</b>
                    </Choice>
                  );
                }}
              </For>
              <Show when={whole() === WHOLES.at(-1)}>
                <Choice
                  taken={isTaken('meter', OVER)}
                  onTake={() => take({ ph: OVER, by: 'meter', typed: props.words.meterOver })}
                >
                  {props.words.meterOver}
                </Choice>
              </Show>
              <button type="button" class="block pick-one" onClick={() => setWhole(undefined)}>
                {props.words.meterBack}
              </button>
            </div>
          </fieldset>
        }
      >
        <fieldset class="choice">
          <legend>{props.words.stripPads}</legend>
          <div class="four">
            <For each={PADS}>
              {(ph, i) => (
                <Choice
                  taken={isTaken('strip', ph)}
                  label={props.words.pad(ph)}
                  onTake={() => take({ ph, by: 'strip', typed: ph.toFixed(1) })}
                >
                  <PadDrawing bars={PADS.length - i()} />
                  <b>{props.words.ph(ph)}</b>
                </Choice>
              )}
            </For>
          </div>
        </fieldset>
        <fieldset class="choice">
          <legend>{props.words.meter}</legend>
          <div class="five">
            <For each={WHOLES}>
              {(one) => {
                const taken = () => props.answer?.by === 'meter' && Math.min(Math.floor(props.answer.ph), 7) === one;
                return (
                  <Choice taken={taken()} label={props.words.meterWhole(one)} onTake={() => setWhole(one)}>
                    <Show
                      when={taken() && props.answer}
                      fallback={
                        <>
                          <b>{props.words.wholeBlock(one)}</b>
                          <small>
                            {TENTHS[0]}–{TENTHS.at(-1)}
                          </small>
                        </>
                      }
                    >
                      {(answer) => <b>{props.words.ph(answer().ph)}</b>}
                    </Show>
                  </Choice>
                );
              }}
            </For>
          </div>
        </fieldset>
        <button
          type="button"
          class="block reader"
          role="switch"
          aria-checked={props.readBy !== ''}
          onClick={() => props.onReadBy(props.readBy === '' ? (others()[0] ?? '') : '')}
        >
          <svg width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
            <rect class="edge" x="2" y="2" width="24" height="24" />
            <Show when={props.readBy !== ''}>
              <path class="mark" d="M6 14L12 20L22 7" />
            </Show>
          </svg>
          {props.readBy === '' ? props.words.someoneReads : props.words.readByTag(props.readBy)}
        </button>
        <Show when={props.readBy !== '' && others().length > 1}>
          <div class="four">
            <For each={others()}>
              {(tag) => (
                <Choice taken={props.readBy === tag} onTake={() => props.onReadBy(tag)}>
                  {tag}
                </Choice>
              )}
            </For>
          </div>
        </Show>
      </Show>
    </LookStrip>
  );
}
