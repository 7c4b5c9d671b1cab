// Pick day: can I take this home? One line a bed, what can be taken now first; why, one touch below.

import { A } from '@solidjs/router';
import { createMemo, For, Show } from 'solid-js';
import { type PickAnswer, type PickBed, pickList } from '#tasks/plot/pick.ts';
import { sayDate, titles } from '#words/en/app.ts';
import { movedHoldWords } from '#words/en/moved-hold.ts';
import { pick, pickHowIn, pickWhy } from '#words/en/pick.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { type MarkName, StateMark } from '../drawings/state-mark.tsx';
import { WorkingLines } from './working-lines.tsx';
import '../styles/pick.css';

const SHEET = 5;
const MARKS: Readonly<Record<PickAnswer, MarkName>> = { pick: 'pick', wait: 'wait', cook: 'cook' };

export function PickScreen() {
  const record = useRecord();
  const beds = createMemo(() => pickList({ plot: record.plot(), now: record.now() }));
  return (
    <Sheet title={titles.pick} aside={sayDate(record.today())} here="bed" number={SHEET}>
      <Show
        when={beds().length > 0}
        fallback={
          <section class="pick-empty">
            <p class="lead-in">{pick.empty}</p>
            <A class="block act" href="/plot">
              {pick.start}
            </A>
          </section>
        }
      >
        <ul class="pick-list">
          <For each={beds()}>{(bed) => <PickLine bed={bed} today={record.today()} />}</For>
        </ul>
        <p class="pick-foot">{pick.foot}</p>
        <button type="button" class="block" id="print-pick" onClick={() => print()}>
          {pick.print}
        </button>
      </Show>
    </Sheet>
  );
}

function PickLine(props: { readonly bed: PickBed; readonly today: string }) {
  const label = () => props.bed.name || props.bed.tag;
  const answer = () => {
    if (props.bed.answer === 'wait') return pick.wait(props.bed.tillOn ?? props.today, props.today);
    return props.bed.answer === 'cook' ? pick.cook : pick.pick;
  };
  return (
    <li>
      <details>
        <summary>
          <span class="pick-bed">{label()}</span>
          <StateMark state={MARKS[props.bed.answer]} />
          <b class="pick-answer">{answer()}</b>
          <span class="pick-crop">{props.bed.crop ?? pick.noCrop}</span>
          <span class="pick-last">
            {props.bed.last === undefined ? pick.neverFed : pick.ago(props.bed.last)}
            <Show when={props.bed.question}>
              <b class="accent pick-twice">{pick.toldTwice}</b>
            </Show>
          </span>
          <span class="pick-pencil" aria-hidden="true">
            {pick.pencil}
          </span>
        </summary>
        <Why {...props} />
      </details>
    </li>
  );
}

function Why(props: { readonly bed: PickBed; readonly today: string }) {
  const earlier = () => props.bed.waitsFor !== undefined && props.bed.waitsFor.id !== props.bed.last?.id;
  return (
    <div class="pick-why">
      <Show when={props.bed.tillOn}>
        {(till) => (
          <p>
            <b>{pick.waitDay(till(), props.today)}</b>
          </p>
        )}
      </Show>
      <p>{pickWhy[props.bed.why](props.bed.waitDays ?? 0, props.bed.touchesSoil)}</p>
      <Show when={props.bed.why === 'not-held-raw' && props.bed.waitsFor?.heldThen}>
        <p>{movedHoldWords.rightThen}</p>
      </Show>
      <p class="source">{pick.source(props.bed.source)}</p>
      <Show when={props.bed.daysSource !== props.bed.source}>
        <p class="source">{pick.daysFrom(props.bed.daysSource)}</p>
      </Show>
      <Show when={props.bed.waitsFor?.animalWhy.length}>
        <ul class="pick-how-in">
          <For each={props.bed.waitsFor?.animalWhy}>{(why) => <li>{pickHowIn[why]}</li>}</For>
        </ul>
      </Show>
      <Show when={props.bed.last}>{(last) => <p>{pick.last(pick.feed(last()))}</p>}</Show>
      <Show when={earlier() && props.bed.waitsFor}>
        {(feed) => (
          <p>
            {feed().laid === undefined
              ? pick.waitsFor(feed().on, props.today)
              : pick.waitsForLaid(feed().laid ?? 'compost', feed().on, props.today)}
          </p>
        )}
      </Show>
      <For each={props.bed.overridden}>
        {(feed) => (
          <For each={feed.overrode}>{({ reason }) => <p>{pick.overrode(reason, feed.on, props.today)}</p>}</For>
        )}
      </For>
      <Show when={props.bed.eatenNotTold}>
        <p>{pick.eatenNotTold}</p>
        <A class="block" href="/plot">
          {pick.tell}
        </A>
      </Show>
      <Show when={props.bed.question && props.bed.lastL}>
        {(litres) => (
          <>
            <p>
              <b>{pick.question(litres())}</b>
            </p>
            <A class="block" href="/record">
              {pick.answerIt}
            </A>
          </>
        )}
      </Show>
      <Show when={(props.bed.firstPickOn ?? '') > props.today && props.bed.firstPickOn}>
        {(on) => <p>{pick.notRipe(on(), props.today)}</p>}
      </Show>
      <Show when={props.bed.working}>{(working) => <WorkingLines working={working()} />}</Show>
    </div>
  );
}
