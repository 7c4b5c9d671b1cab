// The first sheet. A phone that knows nothing yet gets the beginning at once; the line itself is fetched as soon as
// there is something to draw.

import { createEffect, lazy, Show, Suspense } from 'solid-js';
import { app, titles } from '#words/en/app.ts';
import { useRecord } from '../app/context.tsx';
import { patterns } from '../app/patterns.tsx';
import { part } from '../app/trouble.ts';
import { PaperSwitch } from '../parts/paper-switch.tsx';
import { NothingYet } from './nothing-yet.tsx';
import '../styles/line.css';

const Drawn = lazy(async () => {
  const [{ DrawnLine }] = await part(() => Promise.all([import('./drawn.tsx'), patterns()]));
  return { default: DrawnLine };
});

export function LineScreen() {
  const record = useRecord();
  return (
    <Show when={record.entries().length === 0} fallback={<DrawnOrOpening />}>
      <Beginning />
    </Show>
  );
}

function DrawnOrOpening() {
  return (
    <Suspense
      fallback={
        <main class="page">
          <p role="status">{app.opening}</p>
        </main>
      }
    >
      <Drawn />
    </Suspense>
  );
}

function Beginning() {
  const record = useRecord();
  createEffect(() => {
    document.title = `${titles.line}: Tilthwright`;
  });
  return (
    <main class="page line-page">
      <header class="head">
        <h1>{titles.line}</h1>
      </header>
      <NothingYet />
      <PaperSwitch />
      <footer class="title-block">
        <span>1</span>
        <span>{app.own}</span>
        <span>{record.keyholder()}</span>
      </footer>
    </main>
  );
}
