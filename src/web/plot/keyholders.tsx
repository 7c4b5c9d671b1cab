// Keyholders by tag, with their units, gallon, spoons and language; and who signs on this device.

import { For, Show } from 'solid-js';
import { factForms, readKeyholder } from '#tasks/plot/facts.ts';
import { typedForm } from '#tasks/plot/form.ts';
import { answerNames, fieldNames, keyholderLine, plotWords as words } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { FoldForm } from '../parts/small-form.tsx';

const label = (field: string) => fieldNames[field] ?? field;

export function Keyholders() {
  const record = useRecord();
  const list = () => record.plot().facts.keyholders ?? [];
  const tags = () => list().map(({ tag }) => tag);
  const read = (tag: string | undefined) => (typed: Readonly<Record<string, string>>) => {
    const found = readKeyholder(typed, record.plot(), tag);
    if (!found.ok) return found;
    const { act } = found;
    return { ok: true as const, write: act && (() => record.act(act.kind, act.body)) };
  };
  return (
    <section aria-labelledby="plot-keyholders">
      <h2 id="plot-keyholders">{words.keyholders}</h2>
      <p class="note">{words.keyholdersNote}</p>
      <Show when={list().length > 0}>
        <ChoiceRow
          name="signs"
          legend={words.signsAs}
          words={tags().map((tag) => [tag, tag] as const)}
          taken={record.keyholder()}
          onTake={(tag) => record.setKeyholder(tag)}
        />
      </Show>
      <For each={tags()}>
        {(tag) => (
          <Show when={list().find((one) => one.tag === tag)}>
            {(one) => (
              <FoldForm
                id={`keyholder-${tag}`}
                summary={tag}
                line={keyholderLine({
                  units: answerNames[one().units ?? ''],
                  gallon: answerNames[one().gallon ?? ''],
                  spoon: answerNames[one().spoon ?? ''],
                  decimals: answerNames[one().decimals ?? ''],
                  language: answerNames[one().language ?? ''],
                  cannotSmell: one().cannotSmell === true,
                })}
                asked={factForms.keyholder}
                start={typedForm(factForms.keyholder, one())}
                label={label}
                read={read(tag)}
              />
            )}
          </Show>
        )}
      </For>
      <FoldForm
        id="keyholder-new"
        summary={words.addKeyholder}
        asked={factForms.keyholder}
        start={{}}
        label={label}
        read={read(undefined)}
      />
    </section>
  );
}
