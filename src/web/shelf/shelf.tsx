// The shelf: bottles in rows drawn to one scale, litres left against what a round wants, dates to finish them, the vent
// diary, and bottles tipped out. Figures come from the task; acts are written when they are durable.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { spoken } from '#tasks/caution.ts';
import { bottleCare } from '#tasks/plot/facts.ts';
import { type ShelfView, shelf } from '#tasks/plot/shelf.ts';
import { app, sayDate, titles } from '#words/en/app.ts';
import { profileCautions } from '#words/en/profile.ts';
import { emptiedLine, leftDoubt, leftWords, roundLine, shelfSheet, strengthLine } from '#words/en/shelf.ts';
import { scaleText } from '#words/en/weigh-in.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { How } from '../parts/how.tsx';
import { byId, More, paged } from '../parts/paged.tsx';
import '../styles/weigh-in.css';
import '../styles/shelf.css';
import { BottleGroup } from './bottle-group.tsx';
import { ventSteps } from './vent-steps.tsx';

const SHEET_NUMBER = 8;
/** Groups of bottles, and lines of emptied ones, drawn at first. */
const GROUPS = 12;
const EMPTIED = 40;

export function ShelfScreen() {
  const record = useRecord();
  const view = createMemo<ShelfView>(() => shelf({ plot: record.plot(), now: record.now() }));
  const [denominator, setDenominator] = createSignal<number>();
  const [refused, setRefused] = createSignal(false);
  const groups = paged(() => view().bottles, GROUPS, byId);
  const emptied = paged(() => view().emptied, EMPTIED, byId);
  const sizes = () => view().bottles.map(({ sizeL }) => sizeL);
  const scale = () => {
    const found = denominator();
    return view().bottles.length > 0 && found !== undefined ? scaleText(found) : undefined;
  };
  return (
    <Sheet title={titles.shelf} aside={sayDate(record.today())} here="bottle" number={SHEET_NUMBER} scale={scale()}>
      <Show when={view().bottles.length > 0} fallback={<EmptyShelf />}>
        <p class="say">
          <b>{leftWords(view().leftL).figure}</b> {leftWords(view().leftL).rest}
        </p>
        <Show when={leftDoubt(view().leftL)}>{(doubt) => <p class="note">{doubt()}</p>}</Show>
        <Show when={view().round}>
          {(round) => (
            <>
              <p>{roundLine(round(), view().inDateL)}</p>
              <p class="note">{strengthLine(round())}</p>
            </>
          )}
        </Show>
        <Show when={refused()}>
          <p class="trouble" role="alert">
            {app.notSaved}
          </p>
        </Show>
        <For each={groups.ids()}>
          {(id) => (
            <Show when={groups.of(id)}>
              {(group) => (
                <BottleGroup
                  group={group()}
                  allSizesL={sizes()}
                  wantsL={view().bottles[0]?.id === id ? view().round?.concentrateL : undefined}
                  onScale={setDenominator}
                  onRefused={setRefused}
                />
              )}
            </Show>
          )}
        </For>
        <More of={groups} />
        <CautionList cautions={spoken(bottleCare(record.plot()), profileCautions)} />
        <p class="note drawn">{shelfSheet.drawn}</p>
      </Show>
      <Show when={view().emptied.length > 0}>
        <details class="fold">
          <summary>{shelfSheet.stoodEmpty}</summary>
          <ul class="plain">
            <For each={emptied.ids()}>
              {(id) => <Show when={emptied.of(id)}>{(one) => <li>{emptiedLine(one(), record.today())}</li>}</Show>}
            </For>
          </ul>
          <More of={emptied} />
        </details>
      </Show>
      <div class="shelf-links">
        <Show when={view().bottles.length > 0}>
          <How steps={ventSteps()} heading={app.howHeading} open={app.how} close={app.close} />
        </Show>
        <A class="block" href="/shelf/unknown">
          {shelfSheet.unknown}
        </A>
      </div>
    </Sheet>
  );
}

function EmptyShelf() {
  return (
    <>
      <p class="lead-in">{shelfSheet.empty}</p>
      <A class="block" href="/">
        {shelfSheet.emptyAct}
      </A>
    </>
  );
}
