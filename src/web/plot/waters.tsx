// The waters of the plot as their reports told them, the newest report of each first; and a form for the next.

import { For, Show } from 'solid-js';
import { factForms, readWater } from '#tasks/plot/facts.ts';
import { fieldsSaid } from '#tasks/plot/record-names.ts';
import { sayDate } from '#words/en/app.ts';
import { answerNames, fieldNames, plotWords as words } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { FoldForm } from '../parts/small-form.tsx';

const label = (field: string) => fieldNames[field] ?? field;

export function Waters() {
  const record = useRecord();
  const read = (typed: Readonly<Record<string, string>>) => {
    const found = readWater(typed, record.now());
    if (!found.ok) return found;
    const { act } = found;
    return { ok: true as const, write: act && (() => record.act(act.kind, act.body)) };
  };
  return (
    <section aria-labelledby="plot-waters">
      <h2 id="plot-waters">{words.waters}</h2>
      <Show when={record.plot().waters.length === 0}>
        <p>{words.watersEmpty}</p>
      </Show>
      <For each={record.plot().waters.toReversed()}>
        {({ body, when }) => (
          <details class="fold">
            <summary>
              {body.name ?? answerNames[body.source] ?? body.source}, {sayDate(when.on, record.today())}
            </summary>
            <dl class="inputs">
              <For each={fieldsSaid(body, record.plot())}>
                {({ path, text }) => (
                  <div>
                    <dt>{label(path)}</dt>
                    <dd>{text}</dd>
                  </div>
                )}
              </For>
            </dl>
          </details>
        )}
      </For>
      <FoldForm id="water-new" summary={words.addWater} asked={factForms.water} start={{}} label={label} read={read} />
    </section>
  );
}
