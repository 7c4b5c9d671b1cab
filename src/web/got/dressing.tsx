// The two forms of what went on besides liquid: a dressing with its amount and the grower's own analysis, and a bought
// product by its label. What is offered and what is read comes from tasks/plot/dress-forms.ts.

import { createMemo, For, Show } from 'solid-js';
import type { Entry } from '#journal/entry.ts';
import { containerIn, litresHeld } from '#tasks/plot/bulk-amount.ts';
import {
  type DressingKind,
  dressingSources,
  isRawOnRaw,
  readDressing,
  readLabel,
  readProduct,
} from '#tasks/plot/dress-forms.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import { dressForm, productForm } from '#words/en/ground-forms.ts';
import { useRecord } from '../app/context.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { GroundField, GroundForm, GroundTrouble } from './ground-form.tsx';

interface Dressing {
  readonly what: DressingKind;
  readonly of: string;
  readonly texts: Readonly<Record<string, string>>;
}
const NO_DRESSING: Dressing = { what: 'compost', of: '', texts: {} };
const ANALYSIS = ['dryMatter', 'nPercentDm', 'pPercentDm', 'kPercentDm', 'cn'] as const;

export function DressingForm(props: { readonly bed: string }) {
  const record = useRecord();
  const id = () => `dressing-${props.bed}`;
  const read = (draft: Dressing) => {
    const countries = countriesOf(record.plot(), record.keyholder());
    const { barrow, bucket } = draft.texts;
    return readDressing(draft, {
      bed: props.bed,
      litresOf: { barrow: litresHeld(barrow, countries), bucket: litresHeld(bucket, countries) },
      countries,
    });
  };
  return (
    <GroundForm
      id={id()}
      summary={dressForm.summary}
      empty={NO_DRESSING}
      read={(draft) => {
        const found = read(draft);
        return found.ok ? { ok: true, write: () => record.act('bed.dressed', found.body) } : found;
      }}
    >
      {({ draft, change, troubles }) => {
        const sources = createMemo(() => dressingSources(record.plot(), draft().what));
        const type = (field: string) => (text: string) => change({ texts: { ...draft().texts, [field]: text } });
        const container = () => containerIn(draft().texts.amount ?? '');
        const Text = (line: { readonly field: string; readonly numeric?: boolean }) => (
          <GroundField
            id={`${id()}-${line.field}`}
            label={dressForm.fields[line.field] ?? line.field}
            value={draft().texts[line.field] ?? ''}
            trouble={troubles().get(line.field)}
            numeric={line.numeric === true}
            onType={type(line.field)}
          />
        );
        return (
          <>
            <ChoiceRow
              name={`${id()}-what`}
              legend={dressForm.what}
              words={dressForm.kinds}
              taken={draft().what}
              onTake={(what) => change({ what, of: '' })}
            />
            <div class="field">
              <label for={`${id()}-of`}>{dressForm.of}</label>
              <select
                id={`${id()}-of`}
                aria-invalid={troubles().has('of') ? true : undefined}
                onChange={(event) => change({ of: event.currentTarget.value })}
              >
                <option value="" selected={draft().of === ''}>
                  {dressForm.notTold}
                </option>
                <For each={sources().groups}>
                  {(group) => (
                    <optgroup label={group.name}>
                      <For each={group.rows}>
                        {(row) => (
                          <option value={row.id} selected={draft().of === row.id}>
                            {row.name}
                          </option>
                        )}
                      </For>
                    </optgroup>
                  )}
                </For>
              </select>
              <GroundTrouble trouble={troubles().get('of')} />
              <Show when={sources().heldBack.length > 0}>
                <p class="note">{dressForm.heldBack(sources().heldBack)}</p>
              </Show>
              <Show when={draft().what === 'product' && sources().groups.length === 0}>
                <p class="note">{dressForm.noProducts}</p>
              </Show>
              <Show when={isRawOnRaw(record.plot(), props.bed, draft().what)}>
                <p class="note">{dressForm.raw}</p>
              </Show>
            </div>
            <Text field="amount" />
            <Show when={draft().what === 'cover-crop'}>
              <p class="note">{dressForm.notWeighed}</p>
            </Show>
            <Show when={container()}>{(one) => <Text field={one()} numeric />}</Show>
            <Show when={draft().what !== 'product'}>
              <details class="fold" open={ANALYSIS.some((field) => (draft().texts[field] ?? '') !== '')}>
                <summary>{dressForm.analysis}</summary>
                <div class="ground-analysis">
                  <For each={ANALYSIS}>{(field) => <Text field={field} numeric />}</For>
                </div>
              </details>
            </Show>
            <Text field="note" />
          </>
        );
      }}
    </GroundForm>
  );
}

const NO_PRODUCT: Readonly<Record<string, string>> = { what: 'feed', release: '' };

export function ProductForm() {
  const record = useRecord();
  const id = 'product-bought';
  return (
    <GroundForm
      id={id}
      summary={productForm.summary}
      empty={NO_PRODUCT}
      read={(draft) => {
        const found = readProduct(draft, countriesOf(record.plot(), record.keyholder()));
        if (!found.ok) return found;
        const { bought, release } = found.value;
        const purchase = { kind: 'product.bought', body: bought } as const;
        if (release === undefined) return { ok: true, write: () => record.acts([purchase]) };
        const label = (before: readonly Entry[]) => ({ product: before[0]?.id ?? '', release });
        return { ok: true, write: () => record.acts([purchase, { kind: 'product.labelled', body: label }]) };
      }}
    >
      {({ draft, change, troubles }) => {
        const Text = (line: { readonly field: string }) => (
          <GroundField
            id={`${id}-${line.field}`}
            label={productForm.fields[line.field] ?? line.field}
            value={draft()[line.field] ?? ''}
            trouble={troubles().get(line.field)}
            onType={(text) => change({ [line.field]: text })}
          />
        );
        return (
          <>
            <Text field="name" />
            <div class="field">
              <label for={`${id}-what`}>{productForm.fields.what}</label>
              <select id={`${id}-what`} onChange={(event) => change({ what: event.currentTarget.value })}>
                <For each={Object.entries(productForm.kinds)}>
                  {([kind, name]) => (
                    <option value={kind} selected={draft().what === kind}>
                      {name}
                    </option>
                  )}
                </For>
              </select>
            </div>
            <Text field="npk" />
            <Show when={readLabel(draft().npk ?? '')}>
              {(label) => <p class="note">{productForm.label(label())}</p>}
            </Show>
            <ChoiceRow
              name={`${id}-release`}
              legend={productForm.fields.release ?? ''}
              words={productForm.releases}
              taken={(draft().release ?? '') as '' | 'soluble' | 'slow'}
              onTake={(release) => change({ release })}
            />
            <Show when={(draft().release ?? '') === ''}>
              <p class="note">{productForm.unknownRelease}</p>
            </Show>
            <Text field="mass" />
            <Text field="price" />
            <Text field="note" />
          </>
        );
      }}
    </GroundForm>
  );
}
