// The cress test card, A5: the steps in order and a table for pencil, to stand beside the dishes.

import { For } from 'solid-js';
import { cressRows } from '#tasks/plot/cress.ts';
import { app } from '#words/en/app.ts';
import { cressForm as words } from '#words/en/cress.ts';
import { germinationCard } from '#words/en/spray.ts';
import { useRecord } from '../app/context.tsx';
import { MadeWith } from '../parts/made-with.tsx';
import { PrintFrame } from './frame.tsx';

export function CressPrint() {
  const record = useRecord();
  return (
    <PrintFrame title={words.cardTitle} note={words.cardNote} nothing={undefined}>
      <article class="shed-sheet cress-card">
        <header>
          <h2>{words.title}</h2>
        </header>
        <p>
          {words.cardFeed} <span class="to-write" /> {words.cardSown} <span class="to-write" /> {words.cardRead}{' '}
          <span class="to-write" />
        </p>
        <ol>
          <For each={germinationCard()}>{(step) => <li>{step}</li>}</For>
        </ol>
        <table class="pencil-lines">
          <thead>
            <tr>
              <th scope="col" />
              <th scope="col">{words.sown}</th>
              <th scope="col">{words.germinated}</th>
              <th scope="col">{words.roots}</th>
            </tr>
          </thead>
          <tbody>
            <For each={cressRows}>
              {(row) => (
                <tr>
                  <th scope="row">{words.row(row)}</th>
                  <td />
                  <td />
                  <td />
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <MadeWith />
        <footer class="title-block">
          <span>A5</span>
          <span>{record.isDemo ? app.demo : (record.plot().facts.name ?? app.own)}</span>
          <span>{words.title}</span>
        </footer>
      </article>
    </PrintFrame>
  );
}
