// A newcomer's shortest way: name the plot, one vessel, one bed; then weigh in. It leaves the sheet once all is there.

import { A } from '@solidjs/router';
import { Match, Show, Switch } from 'solid-js';
import { factForms, firstSteps } from '#tasks/plot/facts.ts';
import { type Asked, readForm } from '#tasks/plot/form.ts';
import { fieldNames, plotWords as words } from '#words/en/plot.ts';
import { deviceZone } from '../app/clock.ts';
import { useRecord } from '../app/context.tsx';
import { SmallForm } from '../parts/small-form.tsx';
import { useThing } from './things.tsx';

const label = (field: string) => fieldNames[field] ?? field;
const vesselLabel = (field: string) => (field === 'name' ? words.vesselName : label(field));
const bedLabel = (field: string) => (field === 'name' ? words.bedName : label(field));
const only = (asked: readonly Asked[], ...fields: readonly string[]) =>
  asked.filter(({ field }) => fields.includes(field));
const NAME = only(factForms.plot, 'name');
const VESSEL = only(factForms.vessel, 'name', 'volume');
const BED = only(factForms.bed, 'name', 'area', 'crop', 'eaten');

export function FirstSteps() {
  const record = useRecord();
  const steps = () => firstSteps(record.plot());
  const isDone = () => steps().name && steps().vessel && steps().bed;
  const hasPeg = () => record.plot().batches.size > 0;
  // Taken here, while the sheet is made: a prop is read again at each touch.
  const readVessel = useThing('vessel', () => undefined);
  const readBed = useThing('bed', () => undefined);
  const readName = (typed: Readonly<Record<string, string>>) => {
    const read = readForm('plot.described', NAME, typed);
    if (!read.ok) return read;
    return { ok: true as const, write: () => record.act('plot.described', { ...read.body, timeZone: deviceZone() }) };
  };
  /** The next step begins where one can read what it asks. */
  const toTop = () => section?.scrollIntoView({ block: 'start' });
  let section: HTMLElement | undefined;
  return (
    <Show when={!(isDone() && hasPeg())}>
      <section ref={section} class="first-steps" aria-labelledby="first-steps">
        <Show when={!steps().name}>
          <p>{words.emptyLead}</p>
        </Show>
        <h2 id="first-steps">{words.firstStepsHeading}</h2>
        <ol>
          <Step word={words.firstSteps.name} isDone={steps().name} />
          <Step word={words.firstSteps.vessel} isDone={steps().vessel} />
          <Step word={words.firstSteps.bed} isDone={steps().bed} />
        </ol>
        <Switch
          fallback={
            <>
              <p>{words.stepsDone}</p>
              <A class="block act" href="/weigh-in">
                {words.toWeighIn}
              </A>
            </>
          }
        >
          <Match when={!steps().name}>
            <SmallForm id="first-name" asked={NAME} start={{}} label={label} read={readName} onDone={toTop} />
            <p class="note">{words.zoneNote(deviceZone())}</p>
          </Match>
          <Match when={!steps().vessel}>
            <SmallForm
              id="first-vessel"
              asked={VESSEL}
              start={{}}
              label={vesselLabel}
              read={readVessel}
              onDone={toTop}
            />
          </Match>
          <Match when={!steps().bed}>
            <SmallForm id="first-bed" asked={BED} start={{}} label={bedLabel} read={readBed} onDone={toTop} />
          </Match>
        </Switch>
      </section>
    </Show>
  );
}

function Step(props: { readonly word: string; readonly isDone: boolean }) {
  return (
    <li classList={{ done: props.isDone }}>
      <span class="step">{props.word}</span>
      <Show when={props.isDone}>: {words.stepDone}</Show>
    </li>
  );
}
