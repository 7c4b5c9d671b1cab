// Where a round begins: from which batch, which can, how strong, and the beds in walking order with yes, hold or never.

import { A } from '@solidjs/router';
import { createMemo, For, Show } from 'solid-js';
import type { Liquid } from '#tasks/plot/liquid.ts';
import type { RoundBed, Verdict } from '#tasks/plot/round.ts';
import { type MarkName, StateMark } from '../drawings/state-mark.tsx';
import { byId, More, paged } from '../parts/paged.tsx';
import type { Can } from './chosen.ts';
import { HowStrong } from './how-strong.tsx';
import { Reasons } from './reasons.tsx';
import { WhichCan } from './which-can.tsx';

const VERDICT_MARKS: Readonly<Record<Verdict, MarkName>> = { yes: 'pick', hold: 'wait', never: 'lost' };

/** Bottles and pails drawn at first. */
const LIQUIDS = 12;

export function Choose(props: { readonly can: Can }) {
  const { words, liquids, liquid } = props.can;
  const shown = paged(liquids, LIQUIDS, byId);
  /** What is taken is always in sight. */
  const ids = () => {
    const taken = liquid()?.id;
    return taken === undefined || shown.ids().includes(taken) ? shown.ids() : [taken, ...shown.ids()];
  };
  return (
    <Show
      when={liquids().length > 0}
      fallback={
        <section class="can-empty">
          <p class="lead-in">{words().noLiquid}</p>
          <A class="block act" href="/">
            {words().startLiquid}
          </A>
          <A class="block" href="/shelf/unknown">
            {words().jar}
          </A>
        </section>
      }
    >
      <h2>{words().choose}</h2>
      <section class="can-question">
        <h3>{words().fromWhich}</h3>
        <For each={ids()}>
          {(id) => (
            <Show when={shown.of(id) ?? liquid()}>
              {(one) => <LiquidBlock can={props.can} liquid={one()} taken={id === liquid()?.id} />}
            </Show>
          )}
        </For>
        <More of={shown} say={words().showMore} />
        <A class="block" href="/shelf/unknown">
          {words().jar}
        </A>
      </section>
      <WhichCan can={props.can} />
      <HowStrong can={props.can} />
      <Beds can={props.can} />
    </Show>
  );
}

/** One thing to pour from; a lost or unknown one offers nothing but the way to its peg. */
function LiquidBlock(props: { readonly can: Can; readonly liquid: Liquid; readonly taken: boolean }) {
  const { words, record } = props.can;
  const none = () => props.liquid.state === 'lost' || props.liquid.state === 'unknown';
  const held = () => {
    const { state, held: isHeld, heldOn } = props.liquid;
    if (state !== 'ready') return '';
    if (isHeld) return `, ${words().held}`;
    return `, ${heldOn === undefined ? words().notHeld : words().heldFrom(words().date(heldOn, record.today()))}`;
  };
  const text = () => (
    <>
      <StateMark state={props.liquid.held ? 'held' : props.liquid.state} />
      <span>
        <b>{words().pegWord(props.liquid.peg)}</b>, {props.liquid.kind === 'bottle' ? words().bottles : words().drained}
        <br />
        {words().states[props.liquid.state]}
        {held()}, {words().left(words().litres(props.liquid.leftL.low), words().litres(props.liquid.leftL.high))}
      </span>
    </>
  );
  return (
    <Show
      when={!none()}
      fallback={
        <div class="no-liquid">
          <p class="block" aria-disabled="true">
            {text()}
          </p>
          <p>{words().cautions[`batch-${props.liquid.state}`]?.({ peg: props.liquid.peg })}</p>
          <A class="block" href={`/peg/${props.liquid.batch}`}>
            {words().toPeg(props.liquid.peg)}
          </A>
        </div>
      }
    >
      <button
        type="button"
        class="block wide"
        classList={{ taken: props.taken }}
        aria-pressed={props.taken}
        onClick={() => props.can.change({ liquid: props.liquid.id })}
      >
        {text()}
      </button>
    </Show>
  );
}

function Beds(props: { readonly can: Can }) {
  const { words } = props.can;
  const round = createMemo(props.can.round);
  return (
    <section class="can-question">
      <h3>{words().whichBed}</h3>
      <Show
        when={round().beds.length > 0}
        fallback={
          <>
            <p class="lead-in">{words().noBeds}</p>
            <A class="block act" href="/plot">
              {words().startBeds}
            </A>
          </>
        }
      >
        <ul class="round">
          <For each={round().beds}>{(bed) => <BedRow can={props.can} bed={bed} />}</For>
        </ul>
        <Show when={round().totalL > 0}>
          <p>{words().roundSum(round().totalL, round().concentrateL * 1000)}</p>
        </Show>
      </Show>
    </section>
  );
}

function BedRow(props: { readonly can: Can; readonly bed: RoundBed }) {
  const { words } = props.can;
  const telling = () => props.bed.reasons.filter(({ level }) => level !== 'note');
  const name = () => `${props.bed.tag === undefined ? '' : `${props.bed.tag} `}${props.bed.name}`;
  return (
    <li>
      <A class="block bed-row" href={`/can/${props.bed.bed}`}>
        <StateMark state={VERDICT_MARKS[props.bed.verdict]} />
        <span class="bed-name">
          <b>{words().verdicts[props.bed.verdict]}</b> {name()}
          <Show when={props.bed.crop}>
            <br />
            {props.bed.crop}
          </Show>
          <Show when={props.bed.fedDays !== undefined}>
            <br />
            {words().fedDays(props.bed.fedDays ?? 0)}
          </Show>
        </span>
        <Show when={props.bed.verdict !== 'never' && props.bed.portion}>
          {(portion) => <b class="bed-litres">{words().litres(portion().totalL)}</b>}
        </Show>
      </A>
      <Show when={telling().length > 0}>
        <details>
          <summary>{words().reasonsOf(name())}</summary>
          <Reasons findings={telling()} words={words()} apart />
        </details>
      </Show>
    </li>
  );
}
