// The questions of a source slip, one block of answers for each that this lot needs.

import { createMemo, For, type JSX, Match, Switch } from 'solid-js';
import type { SlipQuestion, SlipTold } from '#tasks/plot/slip-questions.ts';
import { slipAsks } from '#tasks/plot/slip-questions.ts';
import { answers, asked, stock } from '#words/en/scraps-stock.ts';
import { useRecord } from '../app/context.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { DayField } from '../parts/day-field.tsx';
import { PlainField } from '../parts/plain-field.tsx';

/** A word list as the choice rows take it. */
function pairs<Word extends string>(names: Readonly<Record<Word, string>>, only?: readonly Word[]) {
  const all = Object.entries(names) as [Word, string][];
  return only === undefined ? all : all.filter(([word]) => only.includes(word));
}

type Chosen = 'kitchen' | 'treated' | 'weedkiller' | 'labelAllows' | 'condition';
const CHOSEN: readonly SlipQuestion[] = ['kitchen', 'treated', 'weedkiller', 'labelAllows', 'condition'];

export function SlipPart(props: {
  readonly prefix: string;
  readonly told: SlipTold;
  readonly onTell: (next: Partial<SlipTold>) => void;
}): JSX.Element {
  const record = useRecord();
  const seen = createMemo(() => slipAsks({ told: props.told, plot: record.plot() }));
  const shown = createMemo(() => seen().asks, undefined, { equals: (a, b) => a.join() === b.join() });
  const id = (question: string) => `${props.prefix}-${question}`;
  return (
    <For each={shown()}>
      {(question) => (
        <Switch>
          <Match when={question === 'name'}>
            <PlainField
              id={id('plant')}
              label={props.told.material === 'other' ? stock.plant : stock.plants}
              hint={stock.plantHint}
              value={props.told.name}
              onText={(name) => props.onTell({ name })}
            />
          </Match>
          <Match when={question === 'place'}>
            <ChoiceRow
              legend={asked.place}
              name={id('place')}
              words={pairs(answers.place, seen().places)}
              taken={props.told.place}
              onTake={(place) => props.onTell({ place })}
            />
          </Match>
          <Match when={question === 'when'}>
            <DayField
              id={id('when')}
              label={stock.when}
              value={props.told.treatedOn ?? ''}
              onDay={(on) => props.onTell({ treatedOn: on || undefined })}
            />
            <PlainField
              id={id('with')}
              label={stock.treatedWith}
              value={props.told.treatedWith ?? ''}
              onText={(treatedWith) => props.onTell({ treatedWith })}
            />
          </Match>
          <Match when={CHOSEN.includes(question) && (question as Chosen)}>
            {(one) => (
              <ChoiceRow
                legend={asked[one()]}
                name={id(one())}
                words={pairs<string>(answers[one()])}
                taken={props.told[one()]}
                onTake={(word) => props.onTell({ [one()]: word })}
              />
            )}
          </Match>
        </Switch>
      )}
    </For>
  );
}
