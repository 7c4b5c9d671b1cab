// What stands in the place of a sheet that failed: what failed, that the record is not touched, how to go on, and a way
// to make the file that needs nothing of the sheet. It asks nothing of the plot, which may be what failed.

import { useLocation } from '@solidjs/router';
import { createEffect, createSignal, type JSX, on, Show } from 'solid-js';
import type { Kept } from '#journal/entry.ts';
import type { Store } from '#store/store.ts';
import { app } from '#words/en/app.ts';
import { failed, notOpened, stopped, trouble } from '#words/en/trouble.ts';
import { useRecord } from './context.tsx';
import { NewerVersion } from './newer-version.tsx';
import type { Record } from './record.ts';
import { WayAround } from './sheet.tsx';
import { MissingPart, messageOf, NotOpened, part } from './trouble.ts';

/** In the place of one sheet, with the way around above it. Another address tries anew. */
export function FailedSheet(props: { readonly error: unknown; readonly again: () => void }) {
  const record = useRecord();
  const location = useLocation();
  createEffect(on(() => location.pathname, props.again, { defer: true }));
  return (
    <Page heading={trouble.sheetFailed} says={sayFailed(props.error)} error={props.error} around>
      <p>{record.isDemo ? trouble.demoKept : trouble.kept}</p>
      <Reload />
      <button type="button" class="block" id="try-again" onClick={props.again}>
        {trouble.again}
      </button>
      <Show when={!record.isDemo}>
        <Show when={location.pathname !== '/record'}>
          <a class="block" href="/record">
            {trouble.toRecord}
          </a>
        </Show>
        <SaveFile of={toSave(record)} />
      </Show>
    </Page>
  );
}

/** In the place of everything, where the record does not open. */
export function FailedOpening(props: { readonly error: unknown }) {
  const store = () => (props.error instanceof NotOpened ? props.error.store : undefined);
  return (
    <Page heading={trouble.notOpen} says={sayNotOpened(props.error)} error={props.error}>
      <Reload />
      <Show when={store()}>
        {(open) => <SaveFile of={{ entries: () => open().all(), store: open(), plotName: '' }} />}
      </Show>
    </Page>
  );
}

/** Above every sheet, once the browser took the open record away. */
export function RecordTaken(props: { readonly why: keyof typeof stopped }) {
  const record = useRecord();
  return (
    <section class="page screen-only" id="record-taken" aria-label={trouble.recordClosed}>
      <p role="alert" class="wants">
        {stopped[props.why]}
      </p>
      <SaveFile of={toSave(record)} />
      <Reload />
    </section>
  );
}

function sayFailed(error: unknown): string {
  return error instanceof MissingPart ? failed.missing : failed.fault;
}

function sayNotOpened(error: unknown): string {
  return notOpened[error instanceof NotOpened ? error.why : error instanceof MissingPart ? 'missing' : 'fault'];
}

function Page(props: {
  readonly heading: string;
  readonly says: string;
  readonly error: unknown;
  readonly around?: boolean;
  readonly children: JSX.Element;
}) {
  return (
    <main class="page" id="failed">
      <header class="head">
        <h1>{props.heading}</h1>
      </header>
      <Show when={props.around}>
        <WayAround here={undefined} />
      </Show>
      <p role="alert" class="wants">
        {props.says}
      </p>
      {props.children}
      <NewerVersion />
      <details class="fold">
        <summary>{trouble.details}</summary>
        <p>{messageOf(props.error)}</p>
      </details>
    </main>
  );
}

function Reload() {
  return (
    <button type="button" class="block" id="reload" onClick={() => location.reload()}>
      {app.reload}
    </button>
  );
}

interface ToSave {
  readonly entries: () => Promise<readonly Kept[]> | readonly Kept[];
  readonly store: Store;
  readonly plotName: string;
}

/** What this page holds of the record, whatever became of its place. */
function toSave(record: Record): ToSave {
  return { entries: record.entries, store: record.store, plotName: plotNameOf(record) };
}

function plotNameOf(record: Record): string {
  try {
    return record.plot().facts.name ?? '';
  } catch {
    // The plot may be what failed; the file needs no name of it.
    return '';
  }
}

/** What makes the file is fetched while all is well, so that it is there when nothing else arrives. */
export const fileMaker = () => part(() => import('../record/save-all.ts'));

function SaveFile(props: { readonly of: ToSave }) {
  const [said, setSaid] = createSignal('');
  async function save() {
    const { saveAll } = await fileMaker();
    const { name, withPhotos } = await saveAll({ ...props.of, entries: await props.of.entries() });
    setSaid(withPhotos ? trouble.saved(name) : trouble.savedWithoutPhotos(name));
  }
  return (
    <>
      <button type="button" class="block" id="save-file" onClick={() => save().catch(() => setSaid(trouble.notSaved))}>
        {trouble.saveFile}
      </button>
      <p role="status" class="said">
        {said()}
      </p>
    </>
  );
}
