// One sheet: head, short stream as the way around, its content, the last acts to take back, title block.
// Every screen but the print sheets stands in one.

import { A } from '@solidjs/router';
import { createEffect, For, type JSX, Show } from 'solid-js';
import { app, type Stretch, stretches } from '#words/en/app.ts';
import { CautionPlaces, cautionPlaces } from '../parts/caution-places.ts';
import { MadeWith } from '../parts/made-with.tsx';
import { PaperSwitch } from '../parts/paper-switch.tsx';
import { useRecord } from './context.tsx';
import { factsKept } from './device.ts';
import { FileBeforeUpdate } from './file-before-update.tsx';
import { NewerVersion } from './newer-version.tsx';
import { TabsUnheard } from './tabs-unheard.tsx';
import { TakeBack } from './take-back.tsx';

export interface SheetProps {
  readonly title: string;
  /** Beside the title: a date, a bed, a peg. */
  readonly aside?: string | undefined;
  readonly here?: Stretch | undefined;
  /** Number of the sheet and its scale, for the title block. */
  readonly number: number;
  readonly scale?: string | undefined;
  readonly children: JSX.Element;
}

export function Sheet(props: SheetProps) {
  const record = useRecord();
  createEffect(() => {
    document.title = `${props.title}: Tilthwright`;
  });
  return (
    <main class="page">
      <WayBack />
      <header class="head">
        <h1>{props.title}</h1>
        <Show when={props.aside}>
          <span class="aside">{props.aside}</span>
        </Show>
        <PaperSwitch />
      </header>
      <WayAround here={props.here} />
      <CautionPlaces.Provider value={cautionPlaces()}>{props.children}</CautionPlaces.Provider>
      <TakeBack />
      <Show when={!factsKept()}>
        <p class="note" role="status" id="drafts-unkept">
          {app.draftsUnkept}
        </p>
      </Show>
      <TabsUnheard />
      <NewerVersion>
        <FileBeforeUpdate />
      </NewerVersion>
      <div class="paper-only">
        <MadeWith />
      </div>
      <footer class="title-block">
        <span>{props.number}</span>
        <span>{record.isDemo ? app.demo : (record.plot().facts.name ?? app.own)}</span>
        <span>{props.scale ?? record.keyholder()}</span>
      </footer>
    </main>
  );
}

/** The plot's name, and the way back to the whole line. */
export function WayBack() {
  const record = useRecord();
  return (
    <A href="/" class="way-back" end>
      {record.isDemo ? app.demo : (record.plot().facts.name ?? app.own)}: {app.back}
    </A>
  );
}

/** The short stream: each stretch a link, the one stood on with the peg and a heavy word. */
export function WayAround(props: { readonly here: Stretch | undefined }) {
  return (
    <nav aria-label={app.stream}>
      <ol class="stream">
        <For each={stretches}>
          {(stretch) => (
            <li aria-current={stretch.id === props.here ? 'page' : undefined}>
              <A href={stretch.to} class="stretch">
                <Show when={stretch.id === props.here} fallback={<span class="tick" />}>
                  <svg class="stream-peg" width="18" height="25" viewBox="0 0 18 25" aria-hidden="true">
                    <path class="peg" d="M0 0H18V14L9 24L0 14Z" />
                  </svg>
                </Show>
                <span>{stretch.word}</span>
              </A>
            </li>
          )}
        </For>
      </ol>
    </nav>
  );
}
