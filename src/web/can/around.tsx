// What stands around the dose: the bed with its litres, the band of holds, what is asked at the tap, and the end.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { passedOverOn } from '#tasks/plot/passed-over.ts';
import type { PourCard } from '#tasks/plot/pour.ts';
import type { NextPick } from '#tasks/plot/round.ts';
import { waterSaid, waterUntold } from '#tasks/plot/water-untold.ts';
import type { CanCardWords } from '#words/en/can-card.ts';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { UndoButton } from '../parts/undo-button.tsx';
import type { Can, Said } from './chosen.ts';
import { Reasons } from './reasons.tsx';

/** Bed name and litres on top. */
export function BedHead(props: { readonly can: Can; readonly card: PourCard; readonly poured: boolean }) {
  const { words, record } = props.can;
  const marks = () => {
    const bed = record.plot().beds.get(props.card.bed?.bed ?? '');
    return bed === undefined ? [] : passedOverOn(record.plot(), bed);
  };
  const size = () => {
    const portion = props.card.bed?.portion;
    if (portion === undefined) return '';
    return portion.unit === 'pot' ? words().pots(portion.count) : words().area(portion.count);
  };
  return (
    <Show when={props.card.bed}>
      {(bed) => (
        <section class="bed-head">
          <div>
            <h2>{size() === '' ? bed().name : words().bedLine(bed().name, size())}</h2>
            <p>
              {props.card.way === 'leaf'
                ? words().onLeaf(bed().crop ?? bed().name)
                : bed().crop === undefined
                  ? words().onSoilNoCrop
                  : words().onSoil(bed().crop ?? '')}
            </p>
            <For each={marks()}>
              {({ rule, reason, on }) => (
                <p class="passed-mark">
                  {words().passedMark(words().passable[rule] ?? rule, reason, words().date(on, record.today()))}
                </p>
              )}
            </For>
          </div>
          <Show when={!props.poured && props.card.missing === undefined && bed().portion}>
            {(portion) => <b class="big">{words().litres(portion().totalL)}</b>}
          </Show>
        </section>
      )}
    </Show>
  );
}

/** One band: what was passed over, then holds, cautions and notes; "use today" always. */
export function Holds(props: {
  readonly can: Can;
  readonly card: PourCard;
  /** Cans are poured already: what was passed over stays so. */
  readonly begun: boolean;
  readonly onUnpass: (rule: string) => void;
}) {
  const { words } = props.can;
  // "Use today" stands by itself, in large type.
  const others = () => [...props.card.beware, ...props.card.notes].filter(({ rule }) => rule !== 'use-today');
  return (
    <section class="holds" aria-label={words().holds}>
      <Show when={!props.card.enough}>
        <p class="accent">
          <b>{words().notEnough(props.card.liquid?.leftL.likely ?? 0, props.card.concentrateL * 1000)}</b>
        </p>
      </Show>
      <For each={props.card.passedOver}>
        {({ finding, reason }) => (
          <div class="passed-over">
            <p>
              <b>{words().passedHere(words().passable[finding.rule] ?? finding.rule, reason)}</b>
            </p>
            <Show when={!props.begun}>
              <UndoButton of={finding.rule} onPress={() => props.onUnpass(finding.rule)}>
                {words().passTakeBack}
              </UndoButton>
            </Show>
          </div>
        )}
      </For>
      <Show when={props.card.beware.length === 0 && props.card.passedOver.length === 0}>
        <p>{words().noHolds}</p>
      </Show>
      <Reasons findings={others()} words={words()} />
      <p class="use-today">
        <b>{words().useToday}</b>
      </p>
    </section>
  );
}

const entriesOf = <T extends string>(from: Readonly<Record<T, string>>) =>
  Object.entries(from) as unknown as readonly (readonly [T, string])[];

type WaterSource = keyof CanCardWords['waterFrom'];

interface Asked {
  readonly can: Can;
  readonly card: PourCard;
  readonly said: Said;
  readonly onSay: (said: Said) => void;
}

/** When a bed eaten raw is picked next, where that decides. */
export function AskPicking(props: Asked) {
  const { words } = props.can;
  const answers = () => props.card.picking.map((answer) => [answer, words().picks[answer]] as const);
  return (
    <Show when={props.card.picking.length > 0}>
      <ChoiceRow<NextPick>
        name="next-pick"
        legend={words().pickAsk}
        words={answers()}
        taken={props.said.nextPick}
        onTake={(nextPick) => props.onSay({ nextPick })}
      />
    </Show>
  );
}

/** Where animals may have reached a batch: why, and where its water came from, which decides where nobody said it. */
export function AskAnimals(props: { readonly can: Can; readonly card: PourCard }) {
  const { words, record } = props.can;
  const [saved, setSaved] = createSignal('');
  const liquid = () =>
    props.card.barred.some(({ rule }) => rule.startsWith('eating-animal-possible')) ? props.card.liquid : undefined;
  const untold = createMemo(() => {
    const batch = liquid()?.batch;
    return batch === undefined ? undefined : waterUntold(record.plot(), record.entries(), batch);
  });
  async function answer(source: WaterSource) {
    for (const { act, body } of waterSaid(untold()?.acts ?? [], source))
      await record.correct(act.entry, { on: act.entry.on, body });
    setSaved(words().waterSaved);
  }
  return (
    <>
      <Show when={liquid()}>
        {(asked) => (
          <section class="animals" aria-label={words().animalAsk(asked().peg)}>
            <p>{words().animalAsk(asked().peg)}</p>
            <ul>
              <For each={asked().animalWhy}>{(why) => <li>{words().animalWhys[why]}</li>}</For>
            </ul>
            {/* A new question begins with no answer taken. */}
            <Show when={untold()} keyed>
              {({ peg }) => (
                <ChoiceRow<WaterSource>
                  name={`water-from-${peg}`}
                  legend={words().waterAsk(peg)}
                  words={entriesOf(words().waterFrom)}
                  taken={undefined}
                  onTake={(source) => {
                    answer(source).catch(() => setSaved(words().notSaved));
                  }}
                />
              )}
            </Show>
          </section>
        )}
      </Show>
      <p role="status" class="said">
        {saved()}
      </p>
    </>
  );
}

/** The soil as one sees it. */
export function AskSoil(props: Asked) {
  const { words } = props.can;
  return (
    <ChoiceRow<NonNullable<Said['soil']>>
      name="soil"
      legend={words().soilAsk}
      words={entriesOf(words().soils)}
      taken={props.said.soil}
      onTake={(soil) => props.onSay({ soil })}
    />
  );
}

/** The air as one feels it, where no wind was told. */
export function AskAir(props: Asked) {
  const { words } = props.can;
  return (
    <ChoiceRow<NonNullable<Said['airSeen']>>
      name="air"
      legend={words().airAsk}
      words={entriesOf(words().airs)}
      taken={props.said.airSeen}
      onTake={(airSeen) => props.onSay({ airSeen })}
    />
  );
}

/** Soil or leaves, on a bed whose leaves may be wetted; no other bed is ever asked. */
export function AskWay(props: Asked) {
  const { words } = props.can;
  return (
    <Show when={props.card.leafAllowed}>
      <ChoiceRow<'soil' | 'leaf'>
        name="way"
        legend={words().wayAsk}
        words={entriesOf(words().ways)}
        taken={props.card.way}
        onTake={(way) => props.onSay({ way })}
      />
    </Show>
  );
}

/** The browser refused to keep it: the cans stay, and it is tried again. */
export function Failed(props: { readonly can: Can; readonly onAgain: () => void }) {
  return (
    <div class="acts" role="alert">
      <p class="accent">
        <b>{props.can.words().notSaved}</b>
      </p>
      <button type="button" class="block act wide" onClick={() => props.onAgain()}>
        {props.can.words().tryAgain}
      </button>
    </div>
  );
}

export function Done(props: { readonly can: Can; readonly text: string; readonly brought: string }) {
  const { words, record } = props.can;
  const others = () => [...record.plot().beds.values()].filter(({ facts }) => facts.gone !== true).length > 1;
  return (
    <section class="poured-all" role="status">
      <p class="say">{props.text}</p>
      <Show when={props.brought}>
        <p>{props.brought}</p>
      </Show>
      <p>
        <b>{words().useToday}</b> {words().cautions['care-wash-before-picking']?.({})}
      </p>
      <Show when={others()}>
        <A class="block act wide" href="/can">
          {words().otherBed}
        </A>
      </Show>
      <A class="block wide" classList={{ act: !others() }} href="/">
        {words().toLine}
      </A>
    </section>
  );
}
