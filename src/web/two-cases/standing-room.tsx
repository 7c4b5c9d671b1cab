// Where the vessel will stand, folded away until it is asked for: the open air, a shed or a cupboard, how its air is
// renewed, and what carbon dioxide both cases could bring there against the published limits.

import { For, Show } from 'solid-js';
import { sayRoom } from '#words/en/gas.ts';
import { caseActs, caseRoom, stepWords, twoCases } from '#words/en/two-cases-labels.ts';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { field } from '../weigh-in/draft.ts';
import { WeightRow } from '../weigh-in/weight-row.tsx';
import { type Airing, type Place, ROOMS } from './draft.ts';
import type { TwoCases } from './model.ts';

const SHED_STEP_M3 = 1;
const CUPBOARD_STEP_M3 = 0.1;

export function StandingRoom(props: { readonly model: TwoCases }) {
  const { model } = props;
  const place = () => model.draft().place;
  const step = () => (place() === 'cupboard' ? CUPBOARD_STEP_M3 : SHED_STEP_M3);
  const next = (way: 1 | -1) => {
    const now = model.room().value;
    const value = now === undefined ? Number.NaN : Number((now + way * step()).toFixed(2));
    return value >= CUPBOARD_STEP_M3 ? stepWords.roomText(value) : undefined;
  };
  const size = () => (place() === 'cupboard' ? caseRoom.size.cupboard : caseRoom.size.shed);
  const set = (act: string, text: string, settled: boolean, typing?: string) =>
    model.change(act, ({ roomM3 }) => ({ roomM3: settled ? field(text) : { text, settled: roomM3.settled } }), typing);
  const nothing = () => undefined;
  return (
    <details class="fold" id="case-room">
      <summary>{caseRoom.heading}</summary>
      <div class="case-block">
        <ChoiceRow<Place>
          name="case-place"
          legend={caseRoom.question}
          words={[
            ['open', caseRoom.places.open],
            ['shed', caseRoom.places.shed],
            ['cupboard', caseRoom.places.cupboard],
          ]}
          taken={place()}
          onTake={(taken) =>
            model.change(caseActs.answered(caseRoom.question), () => ({
              place: taken,
              ...(taken !== 'open' && { roomM3: field(ROOMS[taken]) }),
            }))
          }
        />
        <Show when={place() !== 'open'} fallback={<p>{caseRoom.openAir}</p>}>
          <WeightRow
            id="case-room-size"
            name={size()}
            entryLabel={size()}
            hint={caseRoom.sizeHint}
            field={model.draft().roomM3}
            trouble={model.room().trouble}
            step={{ size: step(), text: stepWords.room(step()) }}
            canStep={next(-1) !== undefined}
            onStep={(way) => {
              const text = next(way);
              if (text !== undefined) set(caseActs.step(size()), text, true);
            }}
            onType={(text) => set(caseActs.typed(size()), text, /^\d+(?:[.,]\d+)?(?:\s*m³)?$/.test(text), 'room')}
            onLeave={(text) => {
              if (text !== model.draft().roomM3.settled) set(caseActs.typed(size()), text, true, 'room');
            }}
            onGallon={nothing}
            onSpoon={nothing}
            onStyle={nothing}
            onUnit={nothing}
          />
          <ChoiceRow<Airing>
            name="case-airing"
            legend={caseRoom.airing}
            words={[
              ['shut', caseRoom.airings.shut],
              ['draughty', caseRoom.airings.draughty],
              ['open', caseRoom.airings.open],
            ]}
            taken={model.draft().airing}
            onTake={(airing) => model.change(caseActs.answered(caseRoom.airing), () => ({ airing }))}
          />
          <Show when={model.airChanges()}>{(perH) => <p class="note">{caseRoom.airingNote(perH())}</p>}</Show>
          <For each={[model.before, model.after]}>
            {(one) => (
              <Show when={one.air()}>
                {(air) => (
                  <div>
                    <h3>{one.which === 'before' ? twoCases.asItIs : twoCases.ifYou}</h3>
                    <Show when={air().cautions.length === 0}>
                      <For each={sayRoom(air())}>{(sentence) => <p>{sentence}</p>}</For>
                    </Show>
                    <CautionList cautions={air().cautions} />
                  </div>
                )}
              </Show>
            )}
          </For>
        </Show>
      </div>
    </details>
  );
}
