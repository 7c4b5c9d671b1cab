// What stands around a print on the screen: its name, one block that prints it, the way back. None of it is printed.

import { A } from '@solidjs/router';
import { createEffect, type JSX, Show } from 'solid-js';
import { app } from '#words/en/app.ts';
import { print } from '#words/en/print.ts';
import { useRecord } from '../app/context.tsx';
import { More, type Paged } from '../parts/paged.tsx';
import '../styles/print.css';

export interface Nothing {
  readonly sentence: string;
  readonly act: string;
  readonly to: string;
}

export function PrintFrame(props: {
  readonly title: string;
  readonly note: string;
  /** What stands here where there is nothing to print. */
  readonly nothing: Nothing | undefined;
  readonly children: JSX.Element;
}) {
  const record = useRecord();
  createEffect(() => {
    document.title = `${props.title}: Tilthwright`;
  });
  return (
    <main class="page print-page">
      <header class="head screen-only">
        <h1>{props.title}</h1>
        <span class="aside">{record.isDemo ? app.demo : record.plot().facts.name}</span>
      </header>
      <Show
        when={props.nothing}
        fallback={
          <>
            <p class="screen-only print-note">{props.note}</p>
            <div class="choices screen-only print-acts">
              <button type="button" class="block act" onClick={() => window.print()}>
                {print.print}
              </button>
              <A class="block" href="/">
                {print.back}
              </A>
            </div>
            {props.children}
          </>
        }
      >
        {(nothing) => (
          <section class="screen-only nothing-yet">
            <p>{nothing().sentence}</p>
            <div class="choices">
              <A class="block act" href={nothing().to}>
                {nothing().act}
              </A>
              <A class="block" href="/">
                {print.back}
              </A>
            </div>
          </section>
        )}
      </Show>
    </main>
  );
}

/** Of a long list: how much of it is drawn and printed, and the next page of it. */
export function OnlyShown(props: { readonly of: Paged<unknown>; readonly all: number }) {
  return (
    <Show when={props.of.next() > 0}>
      <div class="screen-only print-acts">
        <p class="print-note" role="status">
          {print.onlyShown(props.of.ids().length, props.all)}
        </p>
        <More of={props.of} />
      </div>
    </Show>
  );
}
