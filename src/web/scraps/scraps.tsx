// Scraps in stock: each lot with its weight, where it may go and why, and what may be done with it; below it the form
// that weighs one in.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { type LotView, lotToHeap, stockView } from '#tasks/plot/scraps.ts';
import { type SlipTold, slipAsks, toldOf, weighedBody } from '#tasks/plot/slip-questions.ts';
import { app } from '#words/en/app.ts';
import { asked, beans, lotLine, places, stock } from '#words/en/scraps-stock.ts';
import { withUnit } from '#words/figures.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { byId, More, paged } from '../parts/paged.tsx';
import '../styles/weigh-in.css';
import '../styles/scraps.css';
import { BeansRead } from './beans.tsx';
import { Becomes } from './becomes.tsx';
import { SlipPart } from './slip-part.tsx';
import { WeighLot } from './weigh-lot.tsx';

/** Lots of one place drawn at first. */
const LOTS = 30;
const ORDER = ['liquid', 'set-aside', 'compost-only', 'out'] as const;

export function ScrapsScreen() {
  const record = useRecord();
  const view = createMemo(() => stockView({ plot: record.plot(), today: record.today() }));
  return (
    <Sheet title={stock.title} here="scraps" number={3}>
      <Show when={view().lots.length > 0} fallback={<p>{stock.empty}</p>}>
        <h2>{stock.list}</h2>
        <For each={ORDER}>
          {(place) => <Lots place={place} lots={view().lots.filter(({ goes }) => goes === place)} />}
        </For>
        <A class="block go" href="/weigh-in">
          {stock.toPail}
        </A>
      </Show>
      <WeighLot />
    </Sheet>
  );
}

/** The lots that may go to one place. */
function Lots(props: { readonly place: LotView['goes']; readonly lots: readonly LotView[] }) {
  const lots = paged(() => props.lots, LOTS, byId);
  return (
    <Show when={props.lots.length > 0}>
      <h3 class="lots-goes">{places[props.place]}</h3>
      <ul class="plain lots">
        <For each={lots.ids()}>{(id) => <Show when={lots.of(id)}>{(lot) => <LotLine lot={lot()} />}</Show>}</For>
      </ul>
      <More of={lots} />
    </Show>
  );
}

function LotLine(props: { readonly lot: LotView }) {
  const record = useRecord();
  const [trouble, setTrouble] = createSignal('');
  const stops = createMemo(() => props.lot.cautions.filter(({ level }) => level === 'stop'));
  const others = createMemo(() => props.lot.cautions.filter(({ level }) => level !== 'stop'));
  async function toHeap() {
    const body = lotToHeap(record.plot(), props.lot.id);
    if (body === undefined) return;
    try {
      await record.act('heap.fed', body);
    } catch {
      setTrouble(app.notSaved);
    }
  }
  return (
    <li>
      <b>{props.lot.name}</b>
      <span>{lotLine(props.lot)}</span>
      {/* A stop says itself where the lot goes; the first sentence of any other is the heading of the group. */}
      <Show
        when={stops().length > 0}
        fallback={
          <For each={props.lot.says.length > 1 ? props.lot.says.slice(1) : props.lot.says}>
            {(line) => <p>{line}</p>}
          </For>
        }
      >
        <CautionList cautions={stops()} />
      </Show>
      <Show when={props.lot.beanTest}>
        <A class="block" href={`/print/bean/${props.lot.id}`}>
          {beans.card}
        </A>
        <BeansRead lot={props.lot.id} />
      </Show>
      <details class="fold">
        <summary>{props.lot.goes === 'liquid' ? stock.more : stock.why}</summary>
        <CautionList cautions={others()} apart />
        <Show
          when={props.lot.heapMay}
          fallback={
            <button type="button" class="block" aria-disabled="true">
              {stock.noHeap}
            </button>
          }
        >
          <button type="button" class="block" onClick={() => void toHeap()}>
            {stock.toHeap(withUnit(props.lot.leftKg, 'kg'))}
          </button>
        </Show>
        <SlipAgain lot={props.lot} />
      </details>
      <Show when={trouble()}>
        <p class="trouble" role="alert">
          {trouble()}
        </p>
      </Show>
    </li>
  );
}

/** The slip of a lot answered anew: a correction, so that the first answer stays readable. */
function SlipAgain(props: { readonly lot: LotView }) {
  const record = useRecord();
  const [told, setTold] = createSignal<SlipTold>();
  const [trouble, setTrouble] = createSignal('');
  const kept = () => record.plot().lots.get(props.lot.id)?.act;
  const begin = () => {
    const act = kept();
    if (act !== undefined) setTold(toldOf(act.body));
  };
  async function write() {
    const act = kept();
    const now = told();
    if (act === undefined || now === undefined) return;
    const plot = record.plot();
    const { open } = slipAsks({ told: now, plot });
    if (open.length > 0) {
      setTrouble(stock.stillOpen(open.map((question) => asked[question])));
      return;
    }
    const { goes: _, slip, condition, origin, kitchen, ...rest } = act.body;
    const fresh = weighedBody({ told: now, plot, mass: act.body.mass });
    const untold = slip?.untreatedMonths === undefined ? {} : { untreatedMonths: slip.untreatedMonths };
    try {
      const body = { ...rest, ...fresh, ...(fresh.slip && { slip: { ...untold, ...fresh.slip } }) };
      await record.correct(act.entry, { on: act.entry.on, body });
    } catch {
      setTrouble(app.notSaved);
      return;
    }
    setTold(undefined);
  }
  return (
    <Show
      when={told()}
      fallback={
        <button type="button" class="block" onClick={begin}>
          {stock.answerSlip}
        </button>
      }
    >
      {(now) => (
        <section class="scraps-form" aria-label={stock.answering(props.lot.name)}>
          <SlipPart prefix={`again-${props.lot.id}`} told={now()} onTell={(next) => setTold({ ...now(), ...next })} />
          <Becomes told={now()} />
          <Show when={trouble()}>
            <p class="trouble" role="alert">
              {trouble()}
            </p>
          </Show>
          <div class="choices">
            <button type="button" class="block" onClick={() => void write()}>
              {stock.put}
            </button>
            <button type="button" class="block" onClick={() => setTold(undefined)}>
              {stock.leaveSlip}
            </button>
          </div>
        </section>
      )}
    </Show>
  );
}
