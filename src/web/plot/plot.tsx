// The facts sheet: the plot and its rule, who is about, keyholders, beds as strips, vessels to scale, cans and waters.
// Each form writes one entry. A newcomer finds three steps to a first pail at its head.

import { A } from '@solidjs/router';
import { Show } from 'solid-js';
import { bedStrips, bedsWithoutArea, passedLines, vesselsDrawn, wantsPoisonLine } from '#tasks/plot/facts.ts';
import { titles } from '#words/en/app.ts';
import { bedLine, canLine, vesselLine, plotWords as words } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { DemoBlock } from '../parts/demo-block.tsx';
import '../styles/plot.css';
import '../styles/small-form.css';
import { BedsDrawing } from './beds-drawing.tsx';
import { FirstSteps } from './first-steps.tsx';
import { Keyholders } from './keyholders.tsx';
import { OwnFacts } from './own-facts.tsx';
import { Things } from './things.tsx';
import { VesselsDrawing } from './vessels-drawing.tsx';
import { Waters } from './waters.tsx';

export function PlotScreen() {
  const record = useRecord();
  const { plot } = record;
  const strips = () => bedStrips(plot());
  const undrawn = () => bedsWithoutArea(plot()).map(({ name, tag }) => name ?? tag ?? '');
  const vessels = () => vesselsDrawn(plot());
  const bedFacts = () => [...strips().map(({ facts }) => facts), ...bedsWithoutArea(plot())];
  return (
    <Sheet title={titles.plot} aside={plot().facts.name} number={2}>
      <FirstSteps />
      <Show when={plot().facts.name !== undefined}>
        <Show when={wantsPoisonLine(plot())}>
          <p class="wants">{words.wantsPoisonLine}</p>
        </Show>
        <div class="plot-columns">
          <div>
            <OwnFacts />
            <Keyholders />
          </div>
          <div>
            <section aria-labelledby="plot-beds">
              <h2 id="plot-beds">{words.beds}</h2>
              <Show when={strips().length > 0} fallback={<p>{words.bedsEmpty}</p>}>
                <BedsDrawing strips={strips()} />
              </Show>
              <Show when={undrawn().length > 0}>
                <p class="note">{words.notDrawn(undrawn())}</p>
              </Show>
              <Things
                form="bed"
                list={bedFacts()}
                title={(bed) => `${bed.tag ?? ''} ${bed.name ?? ''}`.trim()}
                line={(bed) =>
                  bedLine({
                    area: bed.area?.typed,
                    fedArea: bed.fedArea?.typed,
                    pots: bed.pots && words.pots(bed.pots.count, bed.pots.volumeL),
                    crop: bed.crop,
                    eaten: bed.eaten,
                    feed: bed.feed,
                  })
                }
                marks={(bed) => passedLines(plot(), bed.id, record.today())}
                add={words.addBed}
              />
            </section>
            <section aria-labelledby="plot-vessels">
              <h2 id="plot-vessels">{words.vessels}</h2>
              <Show when={vessels().length > 0} fallback={<p>{words.vesselsEmpty}</p>}>
                <VesselsDrawing vessels={vessels()} />
              </Show>
              <Things
                form="vessel"
                list={[...plot().vessels.values()].filter(({ gone }) => gone !== true)}
                title={({ name }) => name ?? ''}
                line={({ volume, lid, place }) => vesselLine({ volume: volume?.typed, lid, place })}
                add={words.addVessel}
              />
            </section>
            <section aria-labelledby="plot-cans">
              <h2 id="plot-cans">{words.cans}</h2>
              <Show when={plot().cans.size === 0}>
                <p>{words.cansEmpty}</p>
              </Show>
              <Things
                form="can"
                list={[...plot().cans.values()].filter(({ gone }) => gone !== true)}
                title={({ name }) => name ?? ''}
                line={({ volume, nozzleMm }) => canLine({ volume: volume?.typed, nozzleMm })}
                add={words.addCan}
              />
            </section>
            <Waters />
          </div>
        </div>
      </Show>
      <p>
        <A class="block" href="/record">
          {words.toRecord}
        </A>
        <A class="block" href="/weather">
          {words.toWeather}
        </A>
      </p>
      <DemoBlock />
    </Sheet>
  );
}
