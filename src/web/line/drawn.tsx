// The line of a plot that has something on it: today's amounts as status and way around in one; what wants a hand
// above it, the rest of the plot hanging below. Upright on a phone, lying on a wide screen.

import { A } from '@solidjs/router';
import { createEffect, createMemo, For, Show } from 'solid-js';
import { lineView, mannerOf } from '#tasks/plot/line.ts';
import { app, sayDate, titles } from '#words/en/app.ts';
import { handSaid, handsSaid, line } from '#words/en/line.ts';
import { useRecord } from '../app/context.tsx';
import { useDemo } from '../app/demo.ts';
import { TakeBack } from '../app/take-back.tsx';
import { LineDrawing } from '../drawings/line-drawing.tsx';
import { lyingLine } from '../drawings/line-lying.ts';
import { uprightLine } from '../drawings/line-upright.ts';
import { HandMark } from '../parts/marks.tsx';
import { measured, mediaIs } from '../parts/measured.ts';
import { byPlace, More, paged } from '../parts/paged.tsx';
import { PaperSwitch } from '../parts/paper-switch.tsx';
import { useLastFile } from '../record/last-file.ts';
import { Hanging } from './hanging.tsx';
import { NothingYet } from './nothing-yet.tsx';
import { pictureOf } from './picture.ts';
import '../styles/line.css';

const SHEET_NUMBER = 1;
/** Things to do that are drawn at first. */
const HANDS = 30;

export function DrawnLine() {
  const record = useRecord();
  const demo = useDemo();
  const [width, place] = measured(350);
  const isWide = mediaIs('(min-width: 1240px)');
  const manner = () => mannerOf(record.plot(), record.keyholder());
  const { lastFile } = useLastFile();
  const view = createMemo(() => {
    // The instant moves on with the minute that the record shows.
    const now = record.now();
    const kept = record.isDemo
      ? undefined
      : {
          entries: record.entries(),
          lastFile: lastFile(),
          nowMs: Date.now(),
          places: record.store.places(),
        };
    return lineView({ plot: record.plot(), now, kept });
  });
  // By their place in the list: the most urgent are drawn, the rest at a touch.
  const hands = paged(() => view().hands, HANDS, byPlace);
  const picture = createMemo(() => pictureOf(view(), manner()));
  const layout = createMemo(() => (isWide() ? lyingLine(picture(), width()) : uprightLine(picture(), width())));
  const name = () => view().name ?? titles.line;
  createEffect(() => {
    document.title = `${name()}: Tilthwright`;
  });
  return (
    <main class="page line-page">
      <header class="head">
        <h1>{name()}</h1>
        <span class="aside">{sayDate(view().today)}</span>
        <PaperSwitch />
      </header>
      <Show when={record.isDemo}>
        <fieldset class="choices demo-days" aria-label={line.demoDays}>
          <button type="button" class="block" onClick={() => demo.step(-1)}>
            {line.earlier}
          </button>
          <button type="button" class="block" onClick={() => demo.step(1)}>
            {line.later}
          </button>
          <button type="button" class="block" onClick={() => demo.leave()}>
            {line.leave}
          </button>
        </fieldset>
      </Show>
      <Show when={!view().empty} fallback={<NothingYet />}>
        <Show when={view().hands.length > 0} fallback={<p class="hands-none">{line.nothing}</p>}>
          <section class="hands" aria-label={line.hands}>
            <p class="hands-count">
              <HandMark />
              {handsSaid(view().hands.length)}
            </p>
            <ul>
              <For each={hands.ids()}>
                {(id) => (
                  <Show when={hands.of(id)}>
                    {(hand) => (
                      <li>
                        <A href={hand().to}>{handSaid(hand(), manner())}</A>
                      </li>
                    )}
                  </Show>
                )}
              </For>
            </ul>
            <More of={hands} />
          </section>
        </Show>
        <nav class="line-place" aria-label={app.stream} ref={place}>
          <LineDrawing picture={picture()} layout={layout()} />
        </nav>
        <Hanging view={view()} />
      </Show>
      <TakeBack />
      <footer class="title-block">
        <span>{SHEET_NUMBER}</span>
        <span>{record.isDemo ? app.demo : (view().name ?? app.own)}</span>
        <span>{view().empty ? record.keyholder() : `1 : ${layout().scale.denominator}`}</span>
      </footer>
    </main>
  );
}
