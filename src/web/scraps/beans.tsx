// What the pots of a bean test showed, as counted on the reading day: the counts, the verdict with its working, the act.

import { createMemo, createSignal, For, Show } from 'solid-js';
import { readBeanTest } from '#tasks/plot/slips.ts';
import { app } from '#words/en/app.ts';
import { beans } from '#words/en/scraps-stock.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { CautionList } from '../parts/caution-list.tsx';
import { DayField } from '../parts/day-field.tsx';
import { PlainField } from '../parts/plain-field.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';

const COUNTS = ['potCount', 'sownCount', 'germinatedCount', 'deformedCount'] as const;
type Count = (typeof COUNTS)[number];
type Pots = Readonly<Record<Count, string>>;

const NO_POTS: Pots = { potCount: '', sownCount: '', germinatedCount: '', deformedCount: '' };

export function BeansRead(props: { readonly lot: string }) {
  const record = useRecord();
  const { draft, change, clear, found } = useDraft(`beans-${props.lot}`, {
    sownOn: '',
    leaves: '',
    test: NO_POTS,
    control: NO_POTS,
  });
  const [asked, setAsked] = createSignal(false);
  const [trouble, setTrouble] = createSignal('');
  const verdict = createMemo(() => {
    const { sownOn, leaves } = draft();
    const test = counted(draft().test);
    const control = counted(draft().control);
    const leavesCount = whole(leaves);
    if (sownOn === '' || test === undefined || control === undefined || leavesCount === undefined) return undefined;
    return readBeanTest({ lot: props.lot, sownOn, readOn: record.today(), leavesCount, test, control });
  });
  async function write() {
    const read = verdict();
    if (read === undefined) {
      setTrouble(beans.needs);
      return;
    }
    setTrouble('');
    const sent = draft();
    try {
      await record.act('lot.tested', read.act, () => clear(sent));
    } catch {
      setTrouble(app.notSaved);
    }
  }
  const id = (part: string) => `beans-${props.lot}-${part}`;
  return (
    <details class="fold beans" open={found}>
      <summary>{beans.enter}</summary>
      <div class="scraps-form">
        <DayField id={id('sown')} label={beans.sownOn} value={draft().sownOn} onDay={(sownOn) => change({ sownOn })} />
        <PlainField
          numeric
          id={id('leaves')}
          label={beans.leaves}
          value={draft().leaves}
          onText={(leaves) => change({ leaves })}
        />
        <For each={['test', 'control'] as const}>
          {(kind) => (
            <fieldset class="counts">
              <legend>{kind === 'test' ? beans.testPots : beans.controlPots}</legend>
              <For each={COUNTS}>
                {(count) => (
                  <PlainField
                    numeric
                    id={id(`${kind}-${count}`)}
                    label={beans.counts[count]}
                    value={draft()[kind][count]}
                    onText={(text) => change({ [kind]: { ...draft()[kind], [count]: text } })}
                  />
                )}
              </For>
            </fieldset>
          )}
        </For>
        <p class="note">{beans.deformedNote}</p>
        <div aria-live="polite">
          <Show when={verdict()}>
            {(read) => (
              <>
                <CautionList cautions={read().cautions} />
                <ul class="plain">
                  <For each={read().says}>{(line) => <li>{line}</li>}</For>
                </ul>
                <button type="button" class="why" aria-label={beans.working} onClick={() => setAsked(true)}>
                  {sheet.why}
                </button>
              </>
            )}
          </Show>
        </div>
        <Show when={trouble()}>
          <p class="trouble" role="alert">
            {trouble()}
          </p>
        </Show>
        <button type="button" class="block" onClick={() => void write()}>
          {beans.put}
        </button>
      </div>
      <WorkingDialog
        model={{ workings: () => (asked() ? verdict()?.workings : undefined), closeWhy: () => setAsked(false) }}
      />
    </details>
  );
}

function whole(text: string): number | undefined {
  return /^\s*\d{1,4}\s*$/.test(text) ? Number(text) : undefined;
}

function counted(pots: Pots): Readonly<Record<Count, number>> | undefined {
  const [potCount, sownCount, germinatedCount, deformedCount] = COUNTS.map((count) => whole(pots[count]));
  if (potCount === undefined || sownCount === undefined) return undefined;
  if (germinatedCount === undefined || deformedCount === undefined) return undefined;
  return { potCount, sownCount, germinatedCount, deformedCount };
}
