// One bed at the tap: its litres, the can in hand with its dose, the holds, and one touch for each can poured. The entry
// is written once, when the last can is poured or the keyholder stops; until then the cans stay in the draft.

import { A } from '@solidjs/router';
import { createMemo, createSignal, Show } from 'solid-js';
import { pourNow } from '#tasks/plot/figures-now.ts';
import { withRemark } from '#tasks/plot/figures-shown.ts';
import { fedBody, toolsOf } from '#tasks/plot/pour.ts';
import { steppedLitres } from '#tasks/plot/round.ts';
import { useDraft } from '../app/draft.ts';
import { canSteps } from '../drawings/can-steps.tsx';
import { How } from '../parts/how.tsx';
import { UndoButton } from '../parts/undo-button.tsx';
import { AskAir, AskAnimals, AskPicking, AskSoil, AskWay, BedHead, Done, Failed, Holds } from './around.tsx';
import { Cans } from './cans.tsx';
import { type Can, type Said, type Setup, same } from './chosen.ts';
import { Dose } from './dose.tsx';
import { Hours } from './hours.tsx';
import { NoDose } from './no-dose.tsx';
import { type Screen, ScreenSetter, Stepper } from './screen-set.tsx';
import { Workings } from './workings.tsx';

/** What stays of a pour until it is written down, and what was said of the soil and the picking on a date. */
interface Pouring {
  /** Fraction poured of each can so far. */
  readonly poured: readonly number[];
  readonly begun: Setup | undefined;
  readonly saidOn: string | undefined;
  readonly said: Said;
}

const NONE: Pouring = { poured: [], begun: undefined, saidOn: undefined, said: {} };

export function CanCard(props: { readonly can: Can; readonly bed: string; readonly screen: Screen }) {
  const { can } = props;
  const { record, words } = can;
  const { draft, change, clear } = useDraft<Pouring>(`can.${props.bed}`, NONE);
  const [saving, setSaving] = createSignal<'saving' | 'failed'>();
  const [done, setDone] = createSignal<{
    readonly entry: string;
    readonly litres: string;
    readonly ml: string;
    readonly brought: string;
  }>();
  const today = record.today;
  const said = createMemo<Said>(() => (draft().saidOn === today() ? draft().said : {}), {}, { equals: same });
  const setup = createMemo(() => draft().begun ?? can.setupFor(props.bed, said().way), undefined, { equals: same });
  // A touch that pours a can changes neither, so that the card need not be worked out again.
  const card = createMemo(() => can.cardFor(props.bed, said(), setup()));
  const poured = () => draft().poured;
  const say = (next: Said) => change({ saidOn: today(), said: { ...said(), ...next } });
  const stands = () => {
    const was = done();
    return was &&
      record
        .plot()
        .beds.get(props.bed)
        ?.feeds.some(({ id }) => id === was.entry)
      ? was
      : undefined;
  };

  const pass = (rule: string, reason: string) => say({ passed: { ...said().passed, [rule]: reason } });

  function pour(fraction: number) {
    const next = [...poured(), fraction];
    change({ poured: next, begun: setup() });
    if (next.length >= card().cans.length) write();
  }

  function write() {
    const now = card();
    const told = fedBody(now, poured(), said().nextPick);
    if (told === undefined || saving() === 'saving') return;
    setSaving('saving');
    const brought = pourNow(record.plot(), told.from);
    const body = withRemark(told, brought);
    record
      .act('bed.fed', body, (entry) => {
        const concentrateL = body.from.reduce((sum, { volume }) => sum + volume.volumeL, 0);
        setDone({
          entry: entry.id,
          litres: words().litres(body.poured.volumeL),
          ml: words().ml(concentrateL * 1000),
          brought: words().brought(brought.figures),
        });
        clear();
        setSaving(undefined);
      })
      .catch(() => setSaving('failed'));
  }

  return (
    <>
      <BedHead can={can} card={card()} poured={stands() !== undefined} />
      <Show
        when={!stands()}
        fallback={
          <Done
            can={can}
            text={words().done(stands()?.litres ?? '', stands()?.ml ?? '')}
            brought={stands()?.brought ?? ''}
          />
        }
      >
        <Show when={poured().length === 0}>
          <AskWay can={can} card={card()} said={said()} onSay={say} />
        </Show>
        <Show
          when={poured().length === 0 && card().way === 'soil' && card().missing === undefined && card().bed?.portion}
        >
          {(portion) => (
            <Stepper
              label={words().per[portion().unit]}
              value={words().litres(portion().litresPer)}
              less={words().less}
              more={words().more}
              onStep={(by) =>
                can.change({
                  litresPer: { ...can.chosen().litresPer, [props.bed]: steppedLitres(portion().litresPer, by) },
                })
              }
            />
          )}
        </Show>
        <Show when={card().missing === undefined} fallback={<NoDose can={can} card={card()} onPass={pass} />}>
          <Dose
            words={words()}
            card={card()}
            at={Math.min(poured().length, card().cans.length - 1)}
            jugMl={toolsOf(record.plot()).jugMl}
            screen={props.screen}
            units={can.keyholder().units}
          />
          <Cans words={words()} card={card()} poured={poured()} onPour={() => pour(1)} />
          <Show when={poured().length === 0}>
            <Show when={card().way === 'leaf'} fallback={<AskSoil can={can} card={card()} said={said()} onSay={say} />}>
              <p>{words().leafSteps}</p>
              <AskAir can={can} card={card()} said={said()} onSay={say} />
            </Show>
          </Show>
          <Holds can={can} card={card()} begun={poured().length > 0} onUnpass={(rule) => pass(rule, '')} />
          <Show when={saving() !== 'failed'} fallback={<Failed can={can} onAgain={write} />}>
            <div class="acts">
              <button
                type="button"
                class="block act wide"
                id="can-poured"
                disabled={saving() === 'saving' || poured().length >= card().cans.length}
                onClick={() => pour(1)}
              >
                {saving() === 'saving' ? words().saving : words().poured(poured().length + 1)}
              </button>
              <button
                type="button"
                class="block wide"
                id="can-half"
                disabled={saving() === 'saving' || poured().length >= card().cans.length}
                onClick={() => pour(0.5)}
              >
                {words().half}
              </button>
              <Show when={poured().length > 0}>
                <UndoButton
                  of={poured().length}
                  class="block wide"
                  onPress={() => {
                    const left = poured().slice(0, -1);
                    change({ poured: left, begun: left.length === 0 ? undefined : draft().begun });
                  }}
                >
                  {words().undoCan(poured().length)}
                </UndoButton>
                {/* It ends the pour: not for a finger that has just poured a can, either. */}
                <UndoButton of={poured().length} class="block wide" onPress={write}>
                  {words().stopHere}
                </UndoButton>
              </Show>
            </div>
          </Show>
        </Show>
        <Show when={card().bed !== undefined && poured().length === 0}>
          <Hours can={can} card={card()} said={said()} />
        </Show>
        <Show when={poured().length === 0}>
          <AskAnimals can={can} card={card()} />
          <AskPicking can={can} card={card()} said={said()} onSay={say} />
        </Show>
        <div class="asides">
          <Show when={card().workings.length > 0}>
            <Workings words={words()} workings={card().workings} />
          </Show>
          <How
            open={words().howOpen}
            close={words().close}
            heading={words().how}
            steps={words().howSteps.map((text, i) => ({ drawing: canSteps[i]?.(), text }))}
          />
          <A class="block" href="/can">
            {words().toChoose}
          </A>
        </div>
        <ScreenSetter screen={props.screen} words={words()} />
      </Show>
    </>
  );
}
