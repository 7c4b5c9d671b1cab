// The whole app: opens the record (or the demo garden), and leads each address to its sheet. Sheets other than
// the line are fetched when first needed.

import { Route, Router } from '@solidjs/router';
import { createResource, createSignal, type JSX, lazy, Match, onCleanup, Switch } from 'solid-js';
import { app } from '#words/en/app.ts';
import { Hatches } from '../drawings/hatches.tsx';
import { LineScreen } from '../line/line.tsx';
import { RecordContext } from './context.tsx';
import { DemoContext, dayAfter } from './demo.ts';
import { visit } from './device.ts';
import '../styles/app.css';
import { DEMO_DAY } from './places.ts';

const sheets: readonly (readonly [path: string, sheet: () => JSX.Element])[] = [
  ['/', LineScreen],
  ['/plot', lazy(async () => ({ default: (await import('../plot/plot.tsx')).PlotScreen }))],
  ['/scraps', lazy(async () => ({ default: (await import('../scraps/scraps.tsx')).ScrapsScreen }))],
  ['/weigh-in', lazy(async () => ({ default: (await import('../weigh-in/weigh-in.tsx')).WeighIn }))],
  ['/two-cases', lazy(async () => ({ default: (await import('../two-cases/two-cases.tsx')).TwoCasesScreen }))],
  ['/fill', lazy(async () => ({ default: (await import('../fill/fill.tsx')).FillScreen }))],
  ['/peg/:batch', lazy(async () => ({ default: (await import('../peg/peg.tsx')).PegScreen }))],
  ['/peg/:batch/look', lazy(async () => ({ default: (await import('../look/look.tsx')).LookScreen }))],
  ['/peg/:batch/strain', lazy(async () => ({ default: (await import('../strain/strain.tsx')).StrainScreen }))],
  ['/shelf', lazy(async () => ({ default: (await import('../shelf/shelf.tsx')).ShelfScreen }))],
  ['/shelf/unknown', lazy(async () => ({ default: (await import('../jar/jar.tsx')).JarScreen }))],
  ['/can', lazy(async () => ({ default: (await import('../can/can.tsx')).CanScreen }))],
  ['/can/:bed', lazy(async () => ({ default: (await import('../can/can.tsx')).CanScreen }))],
  ['/pick', lazy(async () => ({ default: (await import('../pick/pick.tsx')).PickScreen }))],
  ['/weather', lazy(async () => ({ default: (await import('../weather/weather.tsx')).WeatherScreen }))],
  ['/cress/:feed', lazy(async () => ({ default: (await import('../weather/cress.tsx')).CressScreen }))],
  ['/got', lazy(async () => ({ default: (await import('../got/got.tsx')).GotScreen }))],
  ['/cover', lazy(async () => ({ default: (await import('../cover/cover.tsx')).CoverScreen }))],
  ['/got/:bed', lazy(async () => ({ default: (await import('../got/bed.tsx')).GotBedScreen }))],
  ['/heap', lazy(async () => ({ default: (await import('../heap/heap.tsx')).HeapScreen }))],
  ['/heap/:heap/cress', lazy(async () => ({ default: (await import('../weather/cress.tsx')).HeapCressScreen }))],
  ['/record', lazy(async () => ({ default: (await import('../record/record.tsx')).RecordScreen }))],
  ['/print/tags', lazy(async () => ({ default: (await import('../print/tags.tsx')).TagsPrint }))],
  ['/print/can', lazy(async () => ({ default: (await import('../print/can.tsx')).CanPrint }))],
  ['/print/bean/:lot', lazy(async () => ({ default: (await import('../print/bean.tsx')).BeanPrint }))],
  ['/print/cress', lazy(async () => ({ default: (await import('../print/cress.tsx')).CressPrint }))],
  ['/print/shed', lazy(async () => ({ default: (await import('../print/shed.tsx')).ShedPrint }))],
  ['*', LineScreen],
];

export function App() {
  const [demoDay, setDemoDay] = createSignal(visit.read(DEMO_DAY));
  const [record] = createResource(
    () => ({ day: demoDay() }),
    async ({ day }) => {
      const { openDemo, openOwn } = await import('./open.ts');
      return day === undefined ? openOwn() : openDemo(day);
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
    open: () => {
      import('#tasks/demo/garden.ts').then(({ DEMO_TODAY }) => stand(DEMO_TODAY)).catch(() => undefined);
    },
    step: (days: 1 | -1) => {
      const day = demoDay();
      if (day !== undefined) stand(dayAfter(day, days));
    },
    leave: () => stand(undefined),
  };

  return (
    <DemoContext.Provider value={demo}>
      <Hatches />
      <Switch>
        <Match when={record.error}>
          <main class="page">
            <p role="alert">{app.cannotOpen}</p>
          </main>
        </Match>
        <Match when={record()} keyed>
          {(open) => (
            <RecordContext.Provider value={open}>
              <Router>
                {sheets.map(([path, sheet]) => (
                  <Route path={path} component={sheet} />
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
