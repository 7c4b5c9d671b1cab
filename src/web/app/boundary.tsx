// Where a sheet, or the opening of the record, fails: what stands in its place (failed.tsx) is fetched while all is well, so
// that it is there when nothing else arrives. Until it is, one plain sentence stands there.

import { createSignal, ErrorBoundary, type JSX, Show } from 'solid-js';
import { app } from '#words/en/app.ts';

type View = typeof import('./failed.tsx');
const [view, setView] = createSignal<View>();

/** Fetches what a failure is shown by, and what makes the file there. */
export async function fetchFailureView(): Promise<void> {
  if (view() !== undefined) return;
  const fetched = await import('./failed.tsx');
  setView(() => fetched);
  await fetched.fileMaker();
}

/** Shows a failure by the view, as soon as that is there. */
export function ByView(props: { readonly show: (view: View) => JSX.Element }) {
  fetchFailureView().catch(() => undefined);
  return (
    <Show when={view()} fallback={<Plainly />}>
      {(fetched) => props.show(fetched())}
    </Show>
  );
}

function Plainly() {
  return (
    <main class="page" id="failed-plainly">
      <p role="alert">{app.failedPlainly}</p>
      <a class="block" href={location.pathname} target="_self">
        {app.reload}
      </a>
    </main>
  );
}

/** A sheet, or what failed in its place. */
export function Guarded(props: { readonly children: JSX.Element }) {
  return (
    <ErrorBoundary
      fallback={(error, again) => <ByView show={({ FailedSheet }) => <FailedSheet error={error} again={again} />} />}
    >
      {props.children}
    </ErrorBoundary>
  );
}
