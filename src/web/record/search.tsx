// Searching the record: a word, a kind, a peg, a bed, a day.

import { createSignal, For, Show } from 'solid-js';
import type { RecordSearch } from '#tasks/plot/record-search.ts';
import { kindNames, record as words } from '#words/en/record.ts';
import type { PegName } from '#words/peg-name.ts';

export interface SearchProps {
  readonly search: RecordSearch;
  readonly pegs: readonly (readonly [value: string, said: PegName])[];
  readonly beds: readonly (readonly [id: string, name: string])[];
  readonly onSearch: (change: RecordSearch) => void;
}

export function Search(props: SearchProps) {
  const isNarrowed = () => Boolean(props.search.kind || props.search.peg || props.search.bed || props.search.day);
  // A plot of many years has as many pegs to choose from: drawn once somebody looks.
  const [isOpen, setOpen] = createSignal(isNarrowed());
  return (
    <section class="search" aria-labelledby="record-search">
      <h2 id="record-search">{words.searchHeading}</h2>
      <div class="field">
        <label for="search-text">{words.text}</label>
        <input
          id="search-text"
          class="entry plain"
          type="search"
          value={props.search.text ?? ''}
          onInput={(event) => props.onSearch({ text: event.currentTarget.value })}
        />
      </div>
      <details class="fold" open={isNarrowed()} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{words.moreToSearchBy}</summary>
        <Show when={isOpen()}>
          <div class="two">
            <div class="field">
              <label for="search-day">{words.day}</label>
              <input
                id="search-day"
                class="entry plain"
                type="date"
                value={props.search.day ?? ''}
                onInput={(event) => props.onSearch({ day: event.currentTarget.value })}
              />
            </div>
            <Choice
              id="search-kind"
              label={words.kind}
              taken={props.search.kind ?? ''}
              options={Object.entries(kindNames)}
              onTake={(kind) => props.onSearch({ kind })}
            />
            <Choice
              id="search-peg"
              label={words.pegField}
              taken={String(props.search.peg ?? '')}
              options={props.pegs.map(([value, said]) => [value, words.peg(said)] as const)}
              onTake={(peg) => props.onSearch({ peg: peg || undefined })}
            />
            <Choice
              id="search-bed"
              label={words.bedField}
              taken={props.search.bed ?? ''}
              options={props.beds}
              onTake={(bed) => props.onSearch({ bed })}
            />
          </div>
        </Show>
      </details>
    </section>
  );
}

function Choice(props: {
  readonly id: string;
  readonly label: string;
  readonly taken: string;
  readonly options: readonly (readonly [value: string, name: string])[];
  readonly onTake: (value: string) => void;
}) {
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <select id={props.id} onChange={(event) => props.onTake(event.currentTarget.value)}>
        <option value="" selected={props.taken === ''}>
          {words.all}
        </option>
        <For each={props.options}>
          {([value, name]) => (
            <option value={value} selected={props.taken === value}>
              {name}
            </option>
          )}
        </For>
      </select>
    </div>
  );
}
