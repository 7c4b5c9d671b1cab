// Filling a vessel: plan against what the scale said, the answer computed anew with every weight, the stops that keep
// it from being finished, and the peg. The act is acknowledged only when it is durable.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { material } from '#engine/tables/index.ts';
import { kindOf } from '#plot/place/basin.ts';
import { explainFill, fillAnswer, fillBody, fillOffers } from '#tasks/plot/fill.ts';
import { app, sayDate, titles } from '#words/en/app.ts';
import { fillNeeds, fillSheet, pegTaken } from '#words/en/fill.ts';
import { shortName } from '#words/en/weigh-in.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { habitsOf } from '../parts/typed.ts';
import { TypedField } from '../parts/typed-field.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/weigh-in.css';
import '../styles/strain.css';
import '../styles/fill.css';
import {
  allAsPlanned,
  EMPTY_FILL,
  type FillDraft,
  fromPlan,
  PLAN_KEY,
  readField,
  type WeighInPlan,
  waitsForPlan,
} from './draft.ts';
import { LiquidPart } from './liquid-part.tsx';
import { Passing } from './passing.tsx';
import { Pegged, type PeggedFacts } from './pegged.tsx';
import { newVessel, readFill } from './reading.ts';
import { ScrapsPart } from './scraps-part.tsx';
import { Standing } from './standing.tsx';
import { VesselPart } from './vessel-part.tsx';

const SHEET_NUMBER = 3;

export function FillScreen() {
  const record = useRecord();
  const plan = useDraft<WeighInPlan>(PLAN_KEY, {});
  const { draft, change, clear } = useDraft<FillDraft>('fill', EMPTY_FILL);
  const offers = createMemo(() => fillOffers({ plot: record.plot(), now: record.now() }));
  const habits = createMemo(() => ({
    ...habitsOf(record.plot().facts, record.keyholder()),
    ...(draft().countries ?? {}),
  }));
  const reading = createMemo(() => readFill(draft(), offers(), habits()));
  const answered = createMemo(() => {
    const { ask } = reading();
    return ask && fillAnswer(record.plot(), ask);
  });
  const answer = () => {
    const given = answered();
    return given?.ok ? given.value : undefined;
  };
  const problems = () => {
    const given = answered();
    return given === undefined || given.ok ? [] : given.problems;
  };
  const [asked, setAsked] = createSignal<readonly string[]>();
  const workings = createMemo(() => {
    const figures = asked();
    const { ask } = reading();
    return figures && ask && explainFill(record.plot(), ask).filter(({ figure }) => figures.includes(figure));
  });
  const [denominator, setDenominator] = createSignal<number>();
  const [pegged, setPegged] = createSignal<PeggedFacts>();
  const [refused, setRefused] = createSignal(false);
  const [busy, setBusy] = createSignal(false);

  onMount(() => {
    // A plan newer than the one the rows were made from takes their place; without one the draft goes on.
    const told = plan.draft();
    if (plan.found && JSON.stringify(told) !== draft().planText) change({ ...EMPTY_FILL, ...fromPlan(told, offers()) });
  });

  const shape = () => reading().offer?.shape ?? kindOf(reading().vesselL ?? 0, draft().newShape);
  const stops = () => answer()?.stops ?? [];
  const barred = () => [...new Set(answer()?.barred ?? [])];
  const holds = () => answer()?.fit.cautions.some(({ level }) => level === 'hold') ?? false;
  const ready = () =>
    reading().needs.length === 0 && answer() !== undefined && stops().length === 0 && barred().length === 0 && !busy();
  async function describeVessel(): Promise<string> {
    const body = newVessel(draft(), reading());
    if (body === undefined) throw new Error('no volume');
    // Kept at once: a second try after a refused filling must not describe it twice.
    const { id } = await record.act('vessel.described', body, (entry) => change({ vessel: entry.id }));
    return id;
  }

  async function write() {
    const { ask, peg, warmth } = reading();
    if (!ready() || ask === undefined || peg === undefined) return;
    setBusy(true);
    try {
      const vessel = draft().vessel === 'new' ? await describeVessel() : draft().vessel;
      const place = draft().place.text.trim() || undefined;
      const body = fillBody(
        { ...ask, vessel: { ...ask.vessel, id: vessel } },
        { peg, place, temperatureC: warmth.value, overrode: answer()?.overrode },
      );
      const names = ask.parts.map((part) =>
        shortName(part.name ?? (part.material === undefined ? '' : (material(part.material)?.name ?? ''))),
      );
      await record.act('peg.filled', body, ({ id: batch, on, by }) => {
        setPegged({ peg, batch, on, by, temperatureC: warmth.value, place, names });
        clear();
        plan.clear();
        setRefused(false);
        scrollTo(0, 0);
      });
    } catch {
      setRefused(true);
    } finally {
      setBusy(false);
    }
  }

  const parts = () => ({ draft: draft(), change, reading: reading(), offers: offers(), habits: habits() });
  return (
    <Sheet
      title={titles.fill}
      aside={sayDate(record.today())}
      here="pail"
      number={SHEET_NUMBER}
      scale={answer() && denominator() !== undefined ? fillSheet.scale(denominator() ?? 1) : undefined}
    >
      <Show when={pegged()} keyed>
        {(facts) => <Pegged pegged={facts} onAnother={() => setPegged(undefined)} />}
      </Show>
      <Show when={pegged() === undefined}>
        <div class="columns">
          <div class="left">
            <Standing
              answer={answer()}
              vesselL={reading().vesselL}
              shape={shape()}
              onScale={setDenominator}
              onWhy={(...figures) => setAsked(figures)}
            />
            <Show when={draft().rows.length === 0}>
              <A class="block" href="/weigh-in">
                {fillSheet.toWeighIn}
              </A>
            </Show>
            <Show when={answer()}>
              <p class="note">{fillSheet.drawn}</p>
            </Show>
          </div>
          <div class="right">
            <VesselPart {...parts()} />
            <ScrapsPart {...parts()}>
              <Show when={waitsForPlan(draft())}>
                <button type="button" class="block" onClick={() => change(allAsPlanned(draft()))}>
                  {fillSheet.allAsPlanned}
                </button>
              </Show>
            </ScrapsPart>
            <LiquidPart {...parts()} />
            <Show when={answer()}>{(given) => <CautionList cautions={given().cautions} />}</Show>
            <section class="ask" aria-labelledby="fill-peg">
              <h2 id="fill-peg">
                <b class="number">6</b> {fillSheet.pegQuestion}
              </h2>
              <TypedField
                id="fill-peg-number"
                label={fillSheet.peg}
                hint={fillSheet.pegHint}
                field={draft().peg.text === '' ? readField(String(offers().nextPeg)) : draft().peg}
                trouble={
                  reading().pegTrouble ??
                  (offers().pegsInUse.includes(reading().peg ?? 0)
                    ? { sentence: pegTaken(reading().peg ?? 0) }
                    : undefined)
                }
                countries={habits()}
                onField={(peg) => change({ peg })}
                onCountries={(countries) => change({ countries })}
              />
            </section>
            <div class="act-foot">
              <For each={problems()}>
                {(problem) => (
                  <p class="trouble" role="alert">
                    {problem.field}: {problem.message}; {problem.allowed}
                  </p>
                )}
              </For>
              <Show when={reading().needs.length > 0}>
                <p class="note">{fillNeeds(reading().needs)}</p>
              </Show>
              <Show when={stops().length > 0}>
                <p role="alert">
                  <b>{fillSheet.stopped}</b>
                </p>
              </Show>
              <Passing
                stops={stops()}
                overrode={answer()?.overrode ?? []}
                onPass={(rule, reason) => change({ passed: { ...draft().passed, [rule]: reason } })}
              />
              <Show when={barred().length > 0}>
                <div role="alert">
                  <p>
                    <b>{fillSheet.barred}</b>
                  </p>
                  <ul class="plain">
                    <For each={barred()}>{(line) => <li>{line}</li>}</For>
                  </ul>
                </div>
              </Show>
              <Show when={stops().length === 0 && barred().length === 0 && holds()}>
                <p>{fillSheet.holdsStand}</p>
              </Show>
              <button
                type="button"
                class="block act"
                aria-disabled={!ready()}
                onClick={() => {
                  // Not ready: to the first entry that cannot be read, wherever it stands.
                  if (!ready()) document.querySelector<HTMLElement>('.right [aria-invalid="true"]')?.focus();
                  write().catch(() => setRefused(true));
                }}
              >
                {fillSheet.act}
              </button>
              <Show when={refused()}>
                <p class="trouble" role="alert">
                  {app.notSaved}
                </p>
              </Show>
            </div>
          </div>
        </div>
      </Show>
      <WorkingDialog model={{ workings, closeWhy: () => setAsked(undefined) }} />
    </Sheet>
  );
}
