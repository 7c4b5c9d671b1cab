// No dose: why, what to do instead, and where to go. A stop that is a matter of judgement gives way to a reason in words.

import { A } from '@solidjs/router';
import { For, Show } from 'solid-js';
import type { Missing, PourCard } from '#tasks/plot/pour.ts';
import { StateMark } from '../drawings/state-mark.tsx';
import { PassOver } from '../parts/pass-over.tsx';
import type { Can } from './chosen.ts';
import { Reasons } from './reasons.tsx';

/** Rules that are settled on the sheet of the plot. */
const OF_THE_PLOT = ['bed-gets-none', 'bed-nothing-grows', 'bed-size-not-told', 'bed-eaten-not-told'];

export function NoDose(props: {
  readonly can: Can;
  readonly card: PourCard;
  readonly onPass: (rule: string, reason: string) => void;
}) {
  const { words } = props.can;
  const missing = (): Missing => props.card.missing ?? 'reasons';
  const never = () => props.card.barred.some(({ level }) => level === 'stop');
  const toPlot = () => missing() === 'size' || props.card.barred.some(({ rule }) => OF_THE_PLOT.includes(rule));
  const toPeg = () => (props.card.barred.some(({ rule }) => rule.startsWith('batch-')) ? props.card.liquid : undefined);
  return (
    <section class="no-dose" role="status">
      <p class="say">
        <StateMark state={never() ? 'lost' : 'wait'} size={60} />
        <b>{words().noDose}</b>
      </p>
      <p>{words().goWhere[missing()]}</p>
      <Reasons findings={props.card.barred} words={words()} />
      <Show when={props.card.passable}>
        <For each={props.card.barred}>
          {({ rule }) => (
            <PassOver
              id={`pass-${rule}`}
              words={words()}
              what={words().passable[rule] ?? rule}
              onPass={(reason) => props.onPass(rule, reason)}
            />
          )}
        </For>
      </Show>
      <div class="asides">
        <Show when={toPlot()}>
          <A class="block" href={props.card.bed === undefined ? '/plot' : `/plot#bed-${props.card.bed.bed}-fold`}>
            {words().toPlot}
          </A>
        </Show>
        <Show when={toPeg()}>
          {(liquid) => (
            <A class="block" href={`/peg/${liquid().batch}`}>
              {words().toPeg(liquid().peg)}
            </A>
          )}
        </Show>
      </div>
    </section>
  );
}
