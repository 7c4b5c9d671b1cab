// The weigh-in sheet: pail and verdict on the left or top, the questions and rows beside or below, cures, the
// sugar window, what was assumed. Figures come from the model; this file only sets them on the sheet.

import { useNavigate } from '@solidjs/router';
import { createSignal, For, Show } from 'solid-js';
import { twoCases } from '#words/en/two-cases-labels.ts';
import { nutrientLine, scaleText, verdict } from '#words/en/weigh-in.ts';
import { acts, sheet } from '#words/en/weigh-in-labels.ts';
import { WayAround, WayBack } from '../app/sheet.tsx';
import '../styles/weigh-in.css';
import { AssumedList } from '../parts/assumed-list.tsx';
import { mediaIs } from '../parts/measured.ts';
import { PaperSwitch } from '../parts/paper-switch.tsx';
import { UndoButton } from '../parts/undo-button.tsx';
import { WhyBlock } from '../parts/why.tsx';
import { Cautions } from './cautions.tsx';
import { handOver } from './hand-over.ts';
import { layAside } from './kept.ts';
import { createWeighIn } from './model.ts';
import { ScrapsQuestion } from './scraps-question.tsx';
import { SugarQuestion } from './sugar-question.tsx';
import { Facts, Verdict } from './verdict.tsx';
import { VesselQuestion } from './vessel-question.tsx';
import { WaterQuestion } from './water-question.tsx';

export function WeighIn() {
  const model = createWeighIn();
  const { sheet: act, result, reading } = model;
  const [denominator, setDenominator] = createSignal<number>();
  const wide = mediaIs('(min-width: 1000px)');
  const [whole, setWhole] = createSignal(false);
  const navigate = useNavigate();
  const fillable = () => result()?.fill.fits === true && !act.draft().isExample;
  function fillNow() {
    const { question } = reading();
    if (question === undefined) return;
    handOver(question, reading(), act.draft());
    navigate('/fill');
  }
  function compare() {
    layAside(act.asPlain());
    navigate('/two-cases');
  }
  const untouched = () => reading().missing.length === 3 && act.draft().lots.length === 0;
  return (
    <main class="page" classList={{ whole: whole() }}>
      <WayBack />
      <header class="head">
        <h1>{sheet.title}</h1>
        <PaperSwitch />
      </header>
      <WayAround here="pail" />
      <div class="columns">
        <div class="left">
          <Verdict model={model} onScale={setDenominator} />
          <Show when={wide() && model.parts()}>{(parts) => parts().Cures({ model })}</Show>
          <Facts model={model} />
          <Show when={untouched()}>
            <button type="button" class="block" onClick={() => act.loadExample(acts.example)}>
              {sheet.showExample}
            </button>
          </Show>
          <Show when={act.draft().isExample}>
            <p class="example">
              <b>{sheet.exampleMark}</b>
              <button type="button" class="block" onClick={() => act.clear(acts.cleared)}>
                {sheet.clearExample}
              </button>
            </p>
          </Show>
          <Show when={model.parts()}>
            {(parts) => parts().ScaleView({ model, whole, onTurn: () => setWhole(!whole()) })}
          </Show>
        </div>
        <div class="right">
          <VesselQuestion model={model} />
          <Cautions model={model} place="vessel" />
          <ScrapsQuestion model={model} />
          <Cautions model={model} place="scraps" />
          <WaterQuestion model={model} />
          <Show when={!wide() && model.parts()}>{(parts) => parts().Cures({ model })}</Show>
          <SugarQuestion model={model} />
          <Show when={result()}>
            {(given) => (
              <>
                <details class="fold">
                  <summary>{sheet.nutrientsHeading}</summary>
                  <p class="note">{sheet.nutrientsNote}</p>
                  <For each={['n', 'p', 'k'] as const}>
                    {(element) => {
                      const missing = () => given().unknown.find((gap) => gap.element === element)?.materials ?? [];
                      const line = () => nutrientLine(element, given().inputs[`${element}G`], missing());
                      return (
                        <div class="fact">
                          <p>{line()}</p>
                          <WhyBlock of={line()} onAsk={() => model.askWhy(`inputs.${element}G`)} />
                        </div>
                      );
                    }}
                  </For>
                </details>
                <AssumedList assumed={given().assumed} />
              </>
            )}
          </Show>
          <Show when={act.draft().standing}>
            {(standing) => <p class="note">{twoCases.takenStands(standing().warmth, standing().chop)}</p>}
          </Show>
          <Show when={result()}>
            <button type="button" class="block" id="what-if" onClick={compare}>
              {twoCases.whatIf}
            </button>
          </Show>
          <Show when={fillable()}>
            <button type="button" class="block act" id="fill-now" onClick={fillNow}>
              {sheet.fillNow}
            </button>
          </Show>
          <Show when={act.lastAct()}>
            {(last) => (
              <div class="foot">
                <Show when={result()}>
                  {(given) => (
                    <p class="foot-say" aria-hidden="true">
                      <b classList={{ accent: !given().fill.fits }}>{verdict(given().fill).figure}</b>
                      {verdict(given().fill).rest}
                    </p>
                  )}
                </Show>
                <UndoButton of={act} id="take-back" onPress={() => act.takeBack()}>
                  <b>{sheet.takeBack}</b>
                  <span>{last()}</span>
                </UndoButton>
              </div>
            )}
          </Show>
        </div>
      </div>
      <footer class="title-block">
        <span>1</span>
        <span>{act.draft().isExample ? sheet.exampleMark : sheet.ownMark}</span>
        <span>{result() ? scaleText(denominator() ?? 1) : sheet.noScale}</span>
      </footer>
      <Show when={result()}>
        <p class="note drawn">{sheet.drawn}</p>
      </Show>
      <Show when={model.parts()}>{(parts) => parts().WorkingDialog({ model })}</Show>
    </main>
  );
}
