// One group of bottles filled alike: drawn with what is left, its date, its vent diary, and the blocks for a vent and
// for tipping out.

import { A } from '@solidjs/router';
import { createSignal, For, Show } from 'solid-js';
import type { Countries } from '#engine/quantity/ask.ts';
import { keptVolume } from '#engine/quantity/kept.ts';
import type { ShelfBottle } from '#tasks/plot/shelf.ts';
import { cressForm } from '#words/en/cress.ts';
import {
  bottleAlternative,
  dateLine,
  dateWords,
  groupLine,
  roundDimension,
  shelfSheet,
  tipLabel,
  ventLabel,
  ventLine,
} from '#words/en/shelf.ts';
import { useRecord } from '../app/context.tsx';
import { BottleRow } from '../drawings/bottle-row.tsx';
import { HandMark } from '../parts/marks.tsx';
import { measured } from '../parts/measured.ts';
import { habitsOf, NO_TEXT, readTyped } from '../parts/typed.ts';
import { TypedField } from '../parts/typed-field.tsx';

const FOUND = ['nothing', 'hiss', 'froth', 'bulged'] as const;
const TIPS = ['heap', 'soil', 'out'] as const;
const TALL_PX = 118;

export function BottleGroup(props: {
  readonly group: ShelfBottle;
  readonly allSizesL: readonly number[];
  /** Concentrate that the next round takes; only on the group to be used first. */
  readonly wantsL: number | undefined;
  readonly onScale: (denominator: number) => void;
  readonly onRefused: (refused: boolean) => void;
}) {
  const record = useRecord();
  const [width, setPlace] = measured(350);
  const [amount, setAmount] = createSignal(NO_TEXT);
  const [told, setTold] = createSignal<Countries>();
  const [busy, setBusy] = createSignal(false);
  const countries = () => told() ?? habitsOf(record.plot().facts, record.keyholder());
  const readAmount = () => readTyped(amount(), 'volume', countries());
  const date = () => dateWords(props.group.useFirst, record.today());
  const id = () => `bottle-${props.group.id}`;
  const lastFound = () => props.group.vents.at(-1)?.found;

  async function write(act: () => Promise<unknown>) {
    if (busy()) return;
    setBusy(true);
    try {
      await act();
    } catch {
      props.onRefused(true);
      return;
    } finally {
      setBusy(false);
    }
    props.onRefused(false);
    setAmount(NO_TEXT);
  }
  const start = (act: () => Promise<unknown>) => {
    write(act).catch(() => props.onRefused(true));
  };
  const vent = (found: (typeof FOUND)[number]) =>
    start(() => record.act('bottle.vented', { bottle: props.group.id, found }));
  const tip = (to: (typeof TIPS)[number]) => {
    const { read: told, trouble } = readAmount();
    if (trouble !== undefined) return;
    const lost = told === undefined ? {} : { lost: keptVolume(told) };
    start(() => record.act('bottle.emptied', { bottle: props.group.id, to, ...lost }));
  };

  return (
    <section class="bottle-group" aria-labelledby={id()}>
      <div class="bottle-head">
        <h2 id={id()}>{shelfSheet.cardHeading(props.group.peg)}</h2>
        <p class="bottle-date" classList={{ accent: date().heap }}>
          <Show when={date().heap}>
            <HandMark />
          </Show>
          {date().head}
        </p>
      </div>
      <div>
        <div ref={setPlace}>
          <BottleRow
            eachL={props.group.eachL}
            sizeL={props.group.sizeL}
            allSizesL={props.allSizesL}
            width={width()}
            tallPx={TALL_PX}
            past={date().heap}
            alternative={bottleAlternative(props.group.peg, props.group.eachL, props.group.sizeL)}
            onScale={props.onScale}
            takes={
              props.wantsL === undefined || date().heap
                ? undefined
                : { litres: props.wantsL, text: roundDimension(props.wantsL) }
            }
          />
        </div>
        <p>{groupLine(props.group, record.today())}</p>
        <p class="note">{dateLine(props.group.useFirst, record.today())}</p>
        <p class="note">
          {shelfSheet.caps[props.group.cap]}, {shelfSheet.materials[props.group.material]}
        </p>
        <Show when={date().heap}>
          <button type="button" class="block" onClick={() => tip('heap')}>
            <HandMark />
            {shelfSheet.toHeap}
          </button>
        </Show>
      </div>
      <div>
        <Show when={lastFound() === 'bulged'}>
          <p class="accent">
            <HandMark />
            {shelfSheet.bulged}
          </p>
        </Show>
        <Show when={props.group.ventDue && lastFound() !== 'bulged'}>
          <p class="accent">
            <HandMark />
            {shelfSheet.ventDue}
          </p>
        </Show>
        <fieldset>
          <legend>{shelfSheet.ventHeading}</legend>
          <div class="vents">
            <For each={FOUND}>
              {(found) => (
                <button
                  type="button"
                  class="block"
                  aria-label={ventLabel(props.group.peg, shelfSheet.found[found])}
                  onClick={() => vent(found)}
                >
                  {shelfSheet.found[found]}
                </button>
              )}
            </For>
          </div>
        </fieldset>
        <details class="fold">
          <summary>{shelfSheet.ventDiary}</summary>
          <ul class="plain">
            <For each={props.group.vents.toReversed()} fallback={<li>{shelfSheet.noVents}</li>}>
              {(one) => <li>{ventLine(one, record.today())}</li>}
            </For>
          </ul>
        </details>
        <details class="fold">
          <summary>{shelfSheet.emptiedHeading}</summary>
          <TypedField
            id={`${id()}-amount`}
            label={shelfSheet.amount}
            hint={shelfSheet.amountHint}
            dimension="volume"
            field={amount()}
            trouble={readAmount().trouble}
            countries={countries()}
            onField={setAmount}
            onCountries={setTold}
          />
          <div class="tips">
            <For each={TIPS}>
              {(to) => (
                <button
                  type="button"
                  class="block"
                  aria-label={tipLabel(props.group.peg, shelfSheet.tips[to])}
                  onClick={() => tip(to)}
                >
                  {shelfSheet.tips[to]}
                </button>
              )}
            </For>
          </div>
        </details>
        <A class="block" href={`/cress/${props.group.id}`}>
          {cressForm.link}
        </A>
      </div>
    </section>
  );
}
