// The shed sheet, A4: the pick list with a blank pencil column, pegs, bottles, blank lines to write on, and the number
// to call.

import { createMemo, For, Show } from 'solid-js';
import { type ShedSheet, shedSheet as sheetOf } from '#tasks/plot/prints.ts';
import { app } from '#words/en/app.ts';
import { print, shedSheet } from '#words/en/print.ts';
import { useRecord } from '../app/context.tsx';
import { StateMark } from '../drawings/state-mark.tsx';
import { PrintFrame } from './frame.tsx';

const PENCIL_LINES = 9;
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
          <table class="pencil-lines">
            <thead>
              <tr>
                <th scope="col">{head.on}</th>
                <th scope="col">{head.who}</th>
                <th scope="col">{head.what}</th>
              </tr>
            </thead>
            <tbody>
              <For each={Array.from({ length: PENCIL_LINES })}>
                {() => (
                  <tr>
                    <td />
                    <td />
                    <td />
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </section>
        <p class="poison">
          <b>{sheet().poisonLine === undefined ? shedSheet.noPoison : shedSheet.poison(sheet().poisonLine ?? '')}</b>
          <Show when={sheet().poisonLine === undefined}>
            <span class="to-write" />
          </Show>
          <span>{shedSheet.notADrink}</span>
        </p>
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
        <table>
          <thead>
            <tr>
              <th scope="col">{head.bed}</th>
              <th scope="col">{head.crop}</th>
              <th scope="col">{head.answer}</th>
              <th scope="col">{head.last}</th>
              <th scope="col" class="pencil">
                {head.picked}
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={props.sheet.picks}>
              {(bed) => (
                <tr>
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
                  <td class="pencil" />
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
    </Show>
  );
}

function Pegs(props: { readonly sheet: ShedSheet }) {
  return (
    <section>
      <h3>{shedSheet.pegs}</h3>
      <Show when={props.sheet.pegs.length > 0} fallback={<p>{shedSheet.none}</p>}>
        <table>
          <thead>
            <tr>
              <th scope="col">{head.peg}</th>
              <th scope="col">{head.state}</th>
              <th scope="col">{head.vessel}</th>
              <th scope="col">{head.next}</th>
              <th scope="col" class="pencil">
                {head.looked}
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={props.sheet.pegs}>
              {(peg) => (
                <tr>
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
                  <td class="pencil" />
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Show>
    </section>
  );
}

function Bottles(props: { readonly sheet: ShedSheet }) {
  return (
    <section>
      <h3>{shedSheet.bottles}</h3>
      <Show when={props.sheet.bottles.length > 0} fallback={<p>{shedSheet.none}</p>}>
        <table>
          <thead>
            <tr>
              <th scope="col">{head.peg}</th>
              <th scope="col">{head.litres}</th>
              <th scope="col">{head.first}</th>
              <th scope="col">{head.vent}</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.sheet.bottles}>
              {(bottle) => (
                <tr>
                  <th scope="row">{bottle.peg}</th>
                  <td>{shedSheet.litres(bottle.leftL.likely)}</td>
                  <td>
                    {bottle.useFirst.keeping === 'none' ? shedSheet.none : shedSheet.date(bottle.useFirst.likely)}
                  </td>
                  <td>{shedSheet.date(bottle.lastVentedOn)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Show>
    </section>
  );
}
