// The plot's own facts as told, and who is about; each with its form.

import { For, Show } from 'solid-js';
import { factForms, madeStricter, readThing } from '#tasks/plot/facts.ts';
import { typedForm } from '#tasks/plot/form.ts';
import { fieldsSaid } from '#tasks/plot/record-names.ts';
import { fieldNames, plotWords as words } from '#words/en/plot.ts';
import { stricterHeading } from '#words/en/profile.ts';
import { useRecord } from '../app/context.tsx';
import { FoldForm } from '../parts/small-form.tsx';

const label = (field: string) => fieldNames[field] ?? field;

export function OwnFacts() {
  const record = useRecord();
  const facts = () => record.plot().facts;
  const told = () => {
    const { keyholders: _, ...own } = facts();
    return fieldsSaid(own, record.plot());
  };
  const effects = () => madeStricter(record.plot());
  const read = (form: 'plot' | 'about') => (typed: Readonly<Record<string, string>>) => {
    const found = readThing(form, typed, { known: facts(), now: record.now() });
    if (!found.ok) return found;
    const { act } = found;
    return { ok: true as const, write: act && (() => record.act(act.kind, act.body)) };
  };
  return (
    <section aria-labelledby="plot-facts">
      <h2 id="plot-facts">{words.facts}</h2>
      <dl class="inputs">
        <For each={told()}>
          {({ path, text }) => (
            <div>
              <dt>{label(path)}</dt>
              <dd>{text}</dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={effects().length > 0}>
        <h3 id="stricter">{stricterHeading}</h3>
        <ul class="plain stricter" aria-labelledby="stricter" aria-live="polite">
          <For each={effects()}>{(line) => <li>{line}</li>}</For>
        </ul>
      </Show>
      <FoldForm
        id="plot-own"
        summary={words.changeFacts}
        asked={factForms.plot}
        start={typedForm(factForms.plot, facts())}
        label={label}
        read={read('plot')}
      />
      <FoldForm
        id="plot-about"
        summary={words.about}
        asked={factForms.about}
        start={typedForm(factForms.about, facts())}
        label={label}
        read={read('about')}
      />
      <Show when={facts().present === undefined}>
        <p class="note">{words.aboutNote}</p>
      </Show>
    </section>
  );
}
