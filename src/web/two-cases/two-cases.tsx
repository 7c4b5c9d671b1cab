// The sheet of two cases: what the change is likely to do in one sentence, both vessels, both sour lines and the figures
// one beneath another, then the first case as it is, and the second with everything that can be changed.

import { A, useNavigate } from '@solidjs/router';
import { createSignal, Show } from 'solid-js';
import { app } from '#words/en/app.ts';
import { sayDifference } from '#words/en/two-cases.ts';
import { caseActs, twoCases } from '#words/en/two-cases-labels.ts';
import { scaleText } from '#words/en/weigh-in.ts';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { mediaIs } from '../parts/measured.ts';
import { UndoButton } from '../parts/undo-button.tsx';
import '../styles/weigh-in.css';
import '../styles/two-cases.css';
import { CaseRow } from './case-row.tsx';
import { CautionsAt, ChangeRows, WARMTH_STEP, warmer } from './change-rows.tsx';
import type { Chop } from './draft.ts';
import { CaseFigures } from './figures.tsx';
import { createTwoCases, type TwoCases } from './model.ts';
import { Lines, Vessels } from './pictures.tsx';
import { StandingRoom } from './standing-room.tsx';

const SHEET_NUMBER = 2;
const LINES_HIGH = { narrow: 214, wide: 214 } as const;

export function TwoCasesScreen() {
  const model = createTwoCases(twoCases.takenAct);
  const [denominator, setDenominator] = createSignal<number>();
  const wide = mediaIs('(min-width: 1000px)');
  const hasBase = () => model.draft().base !== undefined;
  return (
    <Sheet
      title={twoCases.title}
      here="pail"
      number={SHEET_NUMBER}
      scale={denominator() === undefined ? undefined : scaleText(denominator() ?? 1)}
    >
      <Show
        when={hasBase()}
        fallback={
          <>
            <p class="lead-in">{twoCases.none}</p>
            <A href="/weigh-in" class="block act" id="to-weigh-in">
              {twoCases.toWeighIn}
            </A>
          </>
        }
      >
        <div class="columns two-cases">
          {/* It scrolls by itself beside the rows; so it is reached by keyboard there. */}
          <section class="left" aria-label={twoCases.both} tabindex={wide() ? 0 : undefined}>
            <Told model={model} />
            <Vessels model={model} onScale={setDenominator} />
            <Show when={wide()}>
              <Lines model={model} height={LINES_HIGH.wide} />
            </Show>
            <CaseFigures model={model} />
          </section>
          <Show when={!wide()}>
            <div class="lines-stay">
              <Lines model={model} height={LINES_HIGH.narrow} />
            </div>
          </Show>
          <div class="right">
            <AsItIs model={model} />
            <IfYou model={model} />
            <StandingRoom model={model} />
            <Show when={model.lastAct()}>
              {(last) => (
                <div class="foot">
                  <UndoButton of={model} id="case-take-back" onPress={() => model.takeBack()}>
                    <b>{app.takeBack}</b>
                    <span>{last()}</span>
                  </UndoButton>
                </div>
              )}
            </Show>
          </div>
        </div>
      </Show>
    </Sheet>
  );
}

/** The sentence over all. */
function Told(props: { readonly model: TwoCases }) {
  const { difference, before, after } = props.model;
  const said = () => {
    const differs = difference();
    return differs ? sayDifference({ ...differs, withinDays: before.days }) : twoCases.unreadable;
  };
  const over = () => after.answer()?.filled.fill.fits === false && before.answer()?.filled.fill.fits === true;
  return (
    <p class="case-said" role="status">
      {said()}
      <Show when={over()}>
        {' '}
        <span class="accent">{twoCases.overFull}</span>
      </Show>
    </p>
  );
}

/** The first case: how it stands, what is wrong with it, and the way back with it. */
function AsItIs(props: { readonly model: TwoCases }) {
  const { model } = props;
  const { before } = model;
  const navigate = useNavigate();
  const stops = () => before.cautions().filter(({ level }) => level === 'stop' || level === 'hold');
  return (
    <section class="ask" aria-labelledby="case-before">
      <h2 id="case-before">{twoCases.asItIs}</h2>
      <CaseRow
        model={model}
        id="base-warmth"
        name={twoCases.warmth}
        hint={twoCases.warmthHint}
        dimension="temperature"
        field={model.draft().warmth}
        trouble={before.trouble('warmth')}
        step={WARMTH_STEP}
        stepped={(way) => warmer(way, before.reading()?.warmthC)}
        onField={(act, warmth, typing) => model.change(act, () => ({ warmth, warmthTold: true }), typing)}
      />
      <Show when={!model.draft().warmthTold}>
        <p class="note">{twoCases.warmthUntold}</p>
      </Show>
      <ChoiceRow<Chop>
        name="base-chop"
        legend={twoCases.chop}
        words={[
          ['coarse', twoCases.chops.coarse],
          ['chopped', twoCases.chops.chopped],
          ['fine', twoCases.chops.fine],
        ]}
        taken={model.draft().chop}
        onTake={(chop) => model.change(caseActs.answered(twoCases.chop), () => ({ chop }))}
      />
      <CautionList cautions={stops()} />
      <button
        type="button"
        class="block"
        id="keep-it"
        onClick={() => {
          model.take('before');
          navigate('/weigh-in');
        }}
      >
        {twoCases.keep}
      </button>
    </section>
  );
}

/** The second case: everything that can be changed, and the way back with it. */
function IfYou(props: { readonly model: TwoCases }) {
  const { model } = props;
  const navigate = useNavigate();
  const isChanged = () => (model.difference()?.changes.length ?? 0) > 0;
  return (
    <section class="ask" aria-labelledby="case-after">
      <h2 id="case-after">{twoCases.ifYou}</h2>
      <ChangeRows model={model} />
      <CautionsAt of={model.after} at="fill" />
      <button
        type="button"
        class="block act"
        id="take-it"
        onClick={() => {
          model.take('after');
          navigate('/weigh-in');
        }}
      >
        {twoCases.take}
      </button>
      <p class="note">{twoCases.takeNote}</p>
      <Show when={isChanged()}>
        <button
          type="button"
          class="block"
          id="make-same"
          onClick={() => model.change(caseActs.same, () => ({ changed: {} }))}
        >
          {twoCases.allSame}
        </button>
      </Show>
    </section>
  );
}
