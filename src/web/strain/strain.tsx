// Straining a batch: what came out, the sum in one line, what the liquid holds and may be used for, where the solids
// go, and into which bottles. Both acts are written together, and only when they are durable.

import { A, useParams } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Batch } from '#journal/parts/batch.ts';
import { pegName } from '#tasks/plot/batch-name.ts';
import { batchNamed } from '#tasks/plot/peg.ts';
import {
  calendarDayOf,
  explainStraining,
  type StrainingAsk,
  straining,
  strainingCare,
  waitingForBottlesL,
} from '#tasks/plot/straining.ts';
import { strainingActs } from '#tasks/plot/straining-acts.ts';
import { app, titles } from '#words/en/app.ts';
import { pegDay, strainSheet, sumLine } from '#words/en/straining.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { How } from '../parts/how.tsx';
import { measured } from '../parts/measured.ts';
import { habitsOf } from '../parts/typed.ts';
import { TypedField } from '../parts/typed-field.tsx';
import { WhyBlock } from '../parts/why.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/weigh-in.css';
import '../styles/strain.css';
import { BottlesQuestion } from './bottles.tsx';
import { bottlesTold, EMPTY_STRAIN, readStrain, type StrainDraft, strainedTold } from './draft.ts';
import { LiquidUse, Nutrients } from './liquid-facts.tsx';
import { strainSteps } from './strain-steps.tsx';
import { SumBars } from './sum-bars.tsx';

const SHEET_NUMBER = 7;

export function StrainScreen() {
  const record = useRecord();
  const params = useParams<{ batch: string }>();
  /** The batch as it stood when the sheet was opened stays shown once it is written down. */
  const [done, setDone] = createSignal<{ readonly peg: ReturnType<typeof pegName>; readonly bottled: boolean }>();
  const batch = createMemo(() => batchNamed(record.plot(), params.batch));
  return (
    <Show
      when={done()}
      fallback={
        <Show
          when={batch()}
          fallback={
            <Sheet title={titles.strain} here="bottle" number={SHEET_NUMBER}>
              <p class="lead-in">{strainSheet.empty}</p>
              <A class="block" href="/">
                {strainSheet.toLine}
              </A>
            </Sheet>
          }
        >
          {(found) => <StrainForm batch={found()} onDone={setDone} />}
        </Show>
      }
    >
      {(written) => (
        <Sheet title={titles.strain} here="bottle" number={SHEET_NUMBER}>
          <p class="lead-in" role="status">
            {strainSheet.done(written().peg)} {written().bottled ? strainSheet.doneBottled : ''}
          </p>
          <div class="choices">
            <A class="block" href="/shelf">
              {strainSheet.toShelf}
            </A>
            <A class="block" href={`/peg/${params.batch}`}>
              {strainSheet.toPeg}
            </A>
          </div>
        </Sheet>
      )}
    </Show>
  );
}

function StrainForm(props: {
  readonly batch: Batch;
  readonly onDone: (done: { readonly peg: ReturnType<typeof pegName>; readonly bottled: boolean }) => void;
}) {
  const record = useRecord();
  const { draft, change, clear } = useDraft<StrainDraft>(`strain.${props.batch.id}`, EMPTY_STRAIN);
  const countries = () => draft().countries ?? habitsOf(record.plot().facts, record.keyholder());
  const reading = createMemo(() => readStrain(draft(), countries()));
  const [width, setPlace] = measured(350);
  const [asked, setAsked] = createSignal<readonly string[]>();
  const [refused, setRefused] = createSignal(false);
  const [busy, setBusy] = createSignal(false);
  /** Nothing is left in the vessel: only bottles can still be told. */
  const onlyBottles = () => props.batch.ended !== undefined;
  const ask = createMemo<StrainingAsk>(() => {
    const { fields, plan } = reading();
    const ph = fields.ph.value;
    const { by } = draft();
    return {
      plot: record.plot(),
      batch: props.batch,
      now: record.now(),
      by: record.keyholder(),
      drainedL: onlyBottles() ? undefined : fields.drained.value,
      solidsKg: onlyBottles() ? undefined : fields.solids.value,
      acidity: ph === undefined || by === undefined || onlyBottles() ? undefined : { ph, by },
      bottle: draft().bottles && plan !== undefined && plan.filledL <= plan.sizeL ? plan : undefined,
    };
  });
  const strained = createMemo(() => straining(ask()));
  const answer = () => {
    const given = strained();
    return given.ok && (onlyBottles() || reading().fields.drained.value !== undefined) ? given.value : undefined;
  };
  const workings = createMemo(() => {
    const figures = asked();
    return figures && explainStraining(ask()).filter(({ figure }) => figures.includes(figure));
  });
  const overfilled = () => {
    const plan = reading().plan;
    return plan !== undefined && plan.filledL > plan.sizeL;
  };
  const wantsBottles = () => draft().bottles && (answer() !== undefined || onlyBottles());
  const touchedBottles = () => draft().kind !== undefined || draft().cap !== undefined || draft().size.text !== '';
  const needs = () => {
    const { fields, bottleNeeds } = reading();
    const list: (keyof typeof strainSheet.needs)[] = [];
    if (!onlyBottles()) {
      if (fields.drained.value === undefined) list.push('drained');
      if (draft().rest === undefined) list.push('rest');
      if (fields.ph.value !== undefined && draft().by === undefined) list.push('by');
    }
    if (wantsBottles() && (onlyBottles() || touchedBottles())) list.push(...bottleNeeds);
    return list;
  };
  const bottling = () => wantsBottles() && reading().plan !== undefined && reading().bottleNeeds.length === 0;
  /** A stop about the batch forbids bottles and beds, never telling what was done: without bottles it is written down. */
  const stops = () => (bottling() ? (answer()?.stops ?? []) : []);
  const ready = () =>
    needs().length === 0 &&
    !reading().unread &&
    stops().length === 0 &&
    !overfilled() &&
    !busy() &&
    (!onlyBottles() || bottling());
  const lacksPh = () => {
    const given = strained();
    return !given.ok && given.needs.includes('ph');
  };
  const problems = () => {
    const given = strained();
    return given.ok ? [] : given.problems;
  };

  async function write() {
    if (!ready()) return;
    setBusy(true);
    try {
      const acts = strainingActs({
        on: ask().now,
        shown: answer()?.shown,
        strained: onlyBottles() ? undefined : strainedTold(props.batch.id, draft(), reading()),
        bottled: bottling() ? bottlesTold(props.batch.id, draft(), reading()) : undefined,
      });
      const written = { peg: pegName(record.plot(), props.batch), bottled: bottling() };
      await record.acts(acts, () => {
        clear();
        props.onDone(written);
      });
    } catch {
      setRefused(true);
    } finally {
      setBusy(false);
    }
  }

  const field = (
    name: 'drained' | 'solids' | 'ph' | 'ec' | 'mesh',
    label: string,
    hint: string,
    dimension?: 'volume' | 'mass',
  ) => (
    <TypedField
      id={`strain-${name}`}
      label={label}
      hint={hint}
      {...(dimension === undefined ? {} : { dimension })}
      field={draft()[name]}
      trouble={reading().fields[name].trouble}
      countries={countries()}
      onField={(next) => change({ [name]: next })}
      onCountries={(next) => change({ countries: next })}
    />
  );
  const actWord = () =>
    onlyBottles() ? strainSheet.actBottled : bottling() ? strainSheet.actBoth : strainSheet.actStrained;
  const waitsL = () => waitingForBottlesL(props.batch);

  return (
    <Sheet
      title={titles.strain}
      aside={pegDay(pegName(record.plot(), props.batch), calendarDayOf(ask()))}
      here="bottle"
      number={SHEET_NUMBER}
    >
      <div ref={setPlace} />
      <Show
        when={!onlyBottles() || waitsL() > 0}
        fallback={
          <>
            <p class="lead-in">{strainSheet.ended}</p>
            <A class="block" href="/shelf">
              {strainSheet.toShelf}
            </A>
          </>
        }
      >
        <Show when={onlyBottles()}>
          <p class="lead-in">{strainSheet.waiting(waitsL())}</p>
        </Show>
        <Show when={!onlyBottles()}>
          <CautionList cautions={strainingCare(record.plot())} />
          <section class="ask" aria-labelledby="strain-out">
            <h2 id="strain-out">{strainSheet.cameOut}</h2>
            <div class="two">
              {field('drained', strainSheet.drained, strainSheet.volumeHint, 'volume')}
              {field('solids', strainSheet.solids, strainSheet.massHint, 'mass')}
            </div>
            <ChoiceRow
              name="rest"
              legend={strainSheet.restQuestion}
              words={[
                ['nothing', strainSheet.rest.nothing],
                ['stays', strainSheet.rest.stays],
              ]}
              taken={draft().rest}
              onTake={(rest) => change({ rest })}
            />
          </section>
          <section class="ask" aria-labelledby="strain-read">
            <h2 id="strain-read">{strainSheet.readings}</h2>
            {field('ph', strainSheet.ph, strainSheet.phHint)}
            <ChoiceRow
              name="read-by"
              legend={strainSheet.byQuestion}
              words={[
                ['meter', strainSheet.by.meter],
                ['strip', strainSheet.by.strip],
              ]}
              taken={draft().by}
              onTake={(by) => change({ by })}
            />
            <Show when={answer()?.ph.from === 'before' ? answer() : undefined}>
              {(given) => <p class="note">{strainSheet.phBefore(given().ph.ph)}</p>}
            </Show>
            <details class="fold">
              <summary>{strainSheet.more}</summary>
              <div class="two">
                {field('mesh', strainSheet.mesh, strainSheet.meshHint)}
                {field('ec', strainSheet.conductivity, strainSheet.conductivityHint)}
              </div>
            </details>
          </section>
        </Show>
        <Show when={answer()}>
          {(given) => (
            <>
              <section class="ask" aria-labelledby="strain-sum">
                <h2 id="strain-sum">{strainSheet.sumHeading}</h2>
                <div class="fact">
                  <p class="sum-line">{sumLine(given().strain.balance)}</p>
                  <WhyBlock
                    of={strainSheet.sumHeading}
                    onAsk={() => setAsked(['balance.inKg', 'balance.outKg', 'balance.unexplainedPercent'])}
                  />
                </div>
                <SumBars inParts={given().inParts} outParts={given().outParts} width={width()} />
              </section>
              <LiquidUse answer={given()} today={record.today()} />
              <CautionList cautions={given().cautions} />
              <Nutrients
                answer={given()}
                readDsPerM={reading().fields.ec.value}
                width={width()}
                onWhy={(...figures) => setAsked(figures)}
              />
            </>
          )}
        </Show>
        <For each={problems()}>
          {(problem) => (
            <p class="trouble" role="alert">
              {strainSheet.unread(problem.field)}
            </p>
          )}
        </For>
        <Show when={!onlyBottles()}>
          <section class="ask">
            <ChoiceRow
              name="solids-to"
              legend={strainSheet.solidsHeading}
              words={(['heap', 'pile-apart', 'bed', 'trench', 'out'] as const).map((to) => [
                to,
                strainSheet.solidsTo[to],
              ])}
              taken={draft().solidsTo}
              onTake={(solidsTo) => change({ solidsTo })}
            />
          </section>
        </Show>
        <section class="ask" aria-labelledby="strain-bottles">
          <h2 id="strain-bottles">{strainSheet.bottlesHeading}</h2>
          <Show
            when={answer() !== undefined}
            fallback={<p class="note">{lacksPh() ? strainSheet.noBottlesWithoutPh : strainSheet.noBottlesYet}</p>}
          >
            <label class="block plain-check">
              <input
                type="checkbox"
                checked={!draft().bottles}
                onChange={(event) => change({ bottles: !event.currentTarget.checked })}
              />
              <span>{strainSheet.bottlesNone}</span>
            </label>
            <Show when={draft().bottles}>
              <BottlesQuestion
                draft={draft()}
                change={change}
                reading={reading()}
                answer={answer()}
                countries={countries()}
                today={record.today()}
                onWhy={(...figures) => setAsked(figures)}
              />
            </Show>
          </Show>
        </section>
        <div class="act-foot">
          <Show when={needs().length > 0}>
            <p class="note">{strainSheet.stillNeeded(needs().map((need) => strainSheet.needs[need]))}</p>
          </Show>
          <Show when={stops().length > 0}>
            <p role="alert">
              <b>{strainSheet.stopped}</b>
            </p>
          </Show>
          <button
            type="button"
            class="block act"
            aria-disabled={!ready()}
            onClick={() => {
              write().catch(() => setRefused(true));
            }}
          >
            {actWord()}
          </button>
          <Show when={refused()}>
            <p class="trouble" role="alert">
              {app.notSaved}
            </p>
          </Show>
          <How steps={strainSteps()} heading={app.howHeading} open={app.how} close={app.close} />
        </div>
      </Show>
      <WorkingDialog model={{ workings, closeWhy: () => setAsked(undefined) }} />
    </Sheet>
  );
}
