// The whole app: opens the record (or the demo garden), and leads each address to its sheet. Sheets other than
// the line are fetched when first needed.

import { Route, Router } from '@solidjs/router';
import {
  createComponent,
  createResource,
  createSignal,
  type JSX,
  lazy,
  Match,
  onCleanup,
  Show,
  Switch,
} from 'solid-js';
import { app } from '#words/en/app.ts';
import { LineScreen } from '../line/line.tsx';
import { ByView, fetchFailureView, Guarded } from './boundary.tsx';
import { RecordContext } from './context.tsx';
import { DemoContext, dayAfter } from './demo.ts';
import { visit } from './device.ts';
import { Patterns, patterns } from './patterns.tsx';
import { DEMO_DAY } from './places.ts';
import { part, recordTaken } from './trouble.ts';
import '../styles/app.css';

const sheets: readonly (readonly [path: string, sheet: () => JSX.Element])[] = [
  ['/', LineScreen],
  ['/plot', later(async () => (await import('../plot/plot.tsx')).PlotScreen)],
  ['/scraps', later(async () => (await import('../scraps/scraps.tsx')).ScrapsScreen)],
  ['/weigh-in', later(async () => (await import('../weigh-in/weigh-in.tsx')).WeighIn)],
  ['/two-cases', later(async () => (await import('../two-cases/two-cases.tsx')).TwoCasesScreen)],
  ['/fill', later(async () => (await import('../fill/fill.tsx')).FillScreen)],
  ['/peg/:batch', later(async () => (await import('../peg/peg.tsx')).PegScreen)],
  ['/peg/:batch/look', later(async () => (await import('../look/look.tsx')).LookScreen)],
  ['/peg/:batch/strain', later(async () => (await import('../strain/strain.tsx')).StrainScreen)],
  ['/shelf', later(async () => (await import('../shelf/shelf.tsx')).ShelfScreen)],
  ['/shelf/unknown', later(async () => (await import('../jar/jar.tsx')).JarScreen)],
  ['/can', later(async () => (await import('../can/can.tsx')).CanScreen)],
  ['/can/:bed', later(async () => (await import('../can/can.tsx')).CanScreen)],
  ['/pick', later(async () => (await import('../pick/pick.tsx')).PickScreen)],
  ['/weather', later(async () => (await import('../weather/weather.tsx')).WeatherScreen)],
  ['/cress/:feed', later(async () => (await import('../weather/cress.tsx')).CressScreen)],
  ['/got', later(async () => (await import('../got/got.tsx')).GotScreen)],
  ['/cover', later(async () => (await import('../cover/cover.tsx')).CoverScreen)],
  ['/got/:bed', later(async () => (await import('../got/bed.tsx')).GotBedScreen)],
  ['/heap', later(async () => (await import('../heap/heap.tsx')).HeapScreen)],
  ['/heap/:heap/cress', later(async () => (await import('../weather/cress.tsx')).HeapCressScreen)],
  ['/record', later(async () => (await import('../record/record.tsx')).RecordScreen)],
  ['/print/tags', later(async () => (await import('../print/tags.tsx')).TagsPrint)],
  ['/print/can', later(async () => (await import('../print/can.tsx')).CanPrint)],
  ['/print/bean/:lot', later(async () => (await import('../print/bean.tsx')).BeanPrint)],
  ['/print/cress', later(async () => (await import('../print/cress.tsx')).CressPrint)],
  ['/print/shed', later(async () => (await import('../print/shed.tsx')).ShedPrint)],
  ['*', LineScreen],
];

/** A sheet that is fetched when it is first needed. */
function later(sheet: () => Promise<() => JSX.Element>): () => JSX.Element {
  return lazy(async () => {
    const [fetched] = await part(() => Promise.all([sheet(), patterns()]));
    return { default: fetched };
  });
}

/** A sheet in whose place stands what failed, should it fail. */
function guarded(sheet: () => JSX.Element): () => JSX.Element {
  return () => <Guarded>{createComponent(sheet, {})}</Guarded>;
}

export function App() {
  const [demoDay, setDemoDay] = createSignal(visit.read(DEMO_DAY));
  const [record] = createResource(
    () => ({ day: demoDay() }),
    async ({ day }) => {
      const { openDemo, openOwn } = await part(() => import('./open.ts'));
      const opened = await (day === undefined ? openOwn() : openDemo(day));
      // Here while all is well, for the day when a sheet fails and nothing more arrives.
      fetchFailureView().catch(() => undefined);
      return opened;
    },
  );
  onCleanup(() => record.latest?.close());

  function stand(day: string | undefined) {
    if (day === undefined) visit.remove(DEMO_DAY);
    else visit.write(DEMO_DAY, day);
    record.latest?.close();
    setDemoDay(day);
  }
  const demo = {
    day: demoDay,
    open: async () => {
      const { DEMO_TODAY } = await import('#tasks/demo/garden.ts');
      stand(DEMO_TODAY);
    },
    step: (days: 1 | -1) => {
      const day = demoDay();
      if (day !== undefined) stand(dayAfter(day, days));
    },
    leave: () => stand(undefined),
  };

  return (
    <DemoContext.Provider value={demo}>
      <Patterns />
      <Switch>
        <Match when={record.error}>
          <ByView show={({ FailedOpening }) => <FailedOpening error={record.error} />} />
        </Match>
        <Match when={record()} keyed>
          {(open) => (
            <RecordContext.Provider value={open}>
              <Show when={open.isDemo ? undefined : recordTaken()}>
                {(why) => <ByView show={({ RecordTaken }) => <RecordTaken why={why()} />} />}
              </Show>
              <Router>
                {sheets.map(([path, sheet]) => (
                  <Route path={path} component={guarded(sheet)} />
                ))}
              </Router>
            </RecordContext.Provider>
          )}
        </Match>
        <Match when={record.loading}>
          <main class="page">
            <p role="status">{app.opening}</p>
          </main>
        </Match>
      </Switch>
    </DemoContext.Provider>
  );
}
