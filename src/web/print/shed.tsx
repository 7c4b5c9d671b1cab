// The shed sheet, A4: the pick list with a blank pencil column, pegs, bottles, blank lines to write on, and the number
// to call.

import { createMemo, For, type JSX, Show } from 'solid-js';
import { type ShedSheet, shedSheet as sheetOf } from '#tasks/plot/prints.ts';
import { app } from '#words/en/app.ts';
import { print, shedSheet } from '#words/en/print.ts';
import { useRecord } from '../app/context.tsx';
import { StateMark } from '../drawings/state-mark.tsx';
import { MadeWith } from '../parts/made-with.tsx';
import { byId, paged } from '../parts/paged.tsx';
import { OnlyShown, PrintFrame } from './frame.tsx';

const PENCIL_LINES = 9;
/** Bottles drawn at first, those to be used first. */
const BOTTLES = 60;
const { head } = shedSheet;

export function ShedPrint() {
  const record = useRecord();
  const sheet = createMemo(() => sheetOf({ plot: record.plot(), now: record.now() }));
  const isEmpty = () => sheet().pegs.length + sheet().bottles.length + sheet().picks.length === 0;
  const nothing = () => (isEmpty() ? { sentence: print.noShed, act: print.noShedAct, to: '/plot' } : undefined);
  return (
    <PrintFrame title={shedSheet.title} note={print.shedNote} nothing={nothing()}>
      <article class="shed-sheet">
        <header>
          <h2>{sheet().name ?? shedSheet.title}</h2>
          <p>{shedSheet.standsOn(record.today())}</p>
        </header>
        <Picks sheet={sheet()} />
        <Pegs sheet={sheet()} />
        <Bottles sheet={sheet()} />
        <section>
          <h3>{shedSheet.pencil}</h3>
          <Table
            class="pencil-lines"
            heads={[head.on, head.who, head.what]}
            rows={Array.from({ length: PENCIL_LINES }, (_, i) => i)}
          >
            {() => (
              <>
                <td />
                <td />
                <td />
              </>
            )}
          </Table>
        </section>
        <p class="poison">
          <b>{sheet().poisonLine === undefined ? shedSheet.noPoison : shedSheet.poison(sheet().poisonLine ?? '')}</b>
          <Show when={sheet().poisonLine === undefined}>
            <span class="to-write" />
          </Show>
          <span>{shedSheet.notADrink}</span>
        </p>
        <MadeWith />
        <footer class="title-block">
          <span>A4</span>
          <span>{record.isDemo ? app.demo : (sheet().name ?? app.own)}</span>
          <span>{shedSheet.title}</span>
        </footer>
      </article>
    </PrintFrame>
  );
}

function Picks(props: { readonly sheet: ShedSheet }) {
  return (
    <Show when={props.sheet.picks.length > 0}>
      <section>
        <h3>{shedSheet.pick}</h3>
        <Table heads={[head.bed, head.crop, head.answer, head.last]} pencil={head.picked} rows={props.sheet.picks}>
          {(bed) => (
            <>
              <th scope="row">
                {bed.tag} {bed.name}
              </th>
              <td>{bed.crop}</td>
              <td>
                <span class="marked">
                  <StateMark state={bed.answer} size={20} />
                  <b>{shedSheet.answer(bed.answer, bed.tillOn)}</b>
                </span>
              </td>
              <td>{shedSheet.feed(bed.last?.days, bed.last?.pegs ?? [])}</td>
            </>
          )}
        </Table>
      </section>
    </Show>
  );
}

function Pegs(props: { readonly sheet: ShedSheet }) {
  return (
    <section>
      <h3>{shedSheet.pegs}</h3>
      <Show when={props.sheet.pegs.length > 0} fallback={<p>{shedSheet.none}</p>}>
        <Table heads={[head.peg, head.state, head.vessel, head.next]} pencil={head.looked} rows={props.sheet.pegs}>
          {(peg) => (
            <>
              <th scope="row">{peg.peg}</th>
              <td>
                <span class="marked">
                  <StateMark state={peg.state} size={20} />
                  <span>
                    <b>{shedSheet.state(peg.state, peg.held)}</b>, {shedSheet.day(peg.day)}
                  </span>
                </span>
              </td>
              <td>{[peg.vessel.name, peg.vessel.place].filter((text) => text !== undefined).join(', ')}</td>
              <td>{shedSheet.date(peg.nextLookOn)}</td>
            </>
          )}
        </Table>
      </Show>
    </section>
  );
}

function Bottles(props: { readonly sheet: ShedSheet }) {
  const shown = paged(() => props.sheet.bottles, BOTTLES, byId);
  return (
    <section>
      <h3>{shedSheet.bottles}</h3>
      <Show when={props.sheet.bottles.length > 0} fallback={<p>{shedSheet.none}</p>}>
        <OnlyShown of={shown} all={props.sheet.bottles.length} />
        <Table
          heads={[head.peg, head.litres, head.first, head.vent]}
          rows={props.sheet.bottles.slice(0, shown.ids().length)}
        >
          {(bottle) => (
            <>
              <th scope="row">{bottle.peg}</th>
              <td>{shedSheet.litres(bottle.leftL.likely)}</td>
              <td>{bottle.useFirst.keeping === 'none' ? shedSheet.none : shedSheet.date(bottle.useFirst.likely)}</td>
              <td>{shedSheet.date(bottle.lastVentedOn)}</td>
            </>
          )}
        </Table>
      </Show>
    </section>
  );
}

/** A table of the sheet; `pencil` heads a blank column to write in. */
function Table<T>(props: {
  readonly heads: readonly string[];
  readonly pencil?: string;
  readonly class?: string;
  readonly rows: readonly T[];
  readonly children: (row: T) => JSX.Element;
}) {
  return (
    <table class={props.class}>
      <thead>
        <tr>
          <For each={props.heads}>{(text) => <th scope="col">{text}</th>}</For>
          <Show when={props.pencil}>
            <th scope="col" class="pencil">
              {props.pencil}
            </th>
          </Show>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {(row) => (
            <tr>
              {props.children(row)}
              <Show when={props.pencil}>
                <td class="pencil" />
              </Show>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
