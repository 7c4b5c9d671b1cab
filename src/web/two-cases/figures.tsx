// The key figures of both cases, one beneath another, so that they compare at a glance; under each the span of many
// runs once it is there.

import { Show } from 'solid-js';
import type { CaseBands } from '#tasks/two-cases.ts';
import { SUGAR_DAY } from '#tasks/two-cases.ts';
import { caseFigures, sayDay, sayDays, saySpan } from '#words/en/two-cases.ts';
import { twoCases } from '#words/en/two-cases-labels.ts';
import type { OneCase, TwoCases } from './model.ts';

export function CaseFigures(props: { readonly model: TwoCases }) {
  const { before, after } = props.model;
  const waits = () => [before, after].some((one) => one.answer() !== undefined && one.band() === undefined);
  const failed = () => before.failed() || after.failed();
  return (
    <section class="case-figures" aria-label={twoCases.figures}>
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{twoCases.asItIs}</th>
            <th scope="col">{twoCases.ifYou}</th>
          </tr>
        </thead>
        <tbody>
          <Row
            model={props.model}
            name={twoCases.rows.sour}
            figure={({ figures }) => sayDay(figures.sourDay, before.days)}
            span={({ sourDay }) => sayDays(sourDay)}
          />
          <Row
            model={props.model}
            name={twoCases.rows.held}
            figure={({ figures }) => sayDay(figures.heldDay, before.days)}
            span={({ heldDay }) => sayDays(heldDay)}
          />
          <Row
            model={props.model}
            name={twoCases.rows.plateau}
            figure={({ figures }) => caseFigures.ph(figures.plateauPh)}
            span={({ plateauPh }) => saySpan(plateauPh, 1)}
          />
          <Row
            model={props.model}
            name={twoCases.rows.sugar(SUGAR_DAY)}
            figure={({ figures }) => caseFigures.sugar(figures.sugarLeftGPerL)}
            span={({ sugarLeftGPerL }) => saySpan(sugarLeftGPerL, 1)}
          />
          <Row
            model={props.model}
            name={twoCases.rows.gas}
            figure={({ figures }) => caseFigures.gas(figures.mostGas.gasL, figures.mostGas.day)}
            span={({ mostGasL }) => saySpan(mostGasL, 1)}
          />
          <Row
            model={props.model}
            name={twoCases.rows.fill}
            figure={({ filled }) => caseFigures.fill(filled.fill.volumeL.likely, filled.fill.usableL)}
            accent={({ filled }) => !filled.fill.fits}
            under={({ filled }) =>
              filled.fill.fits
                ? caseFigures.under(filled.fill.usableL - filled.fill.volumeL.likely)
                : caseFigures.over(filled.fill.overL)
            }
          />
        </tbody>
      </table>
      <p class="note" role="status">
        {failed() ? twoCases.spansNone : waits() ? twoCases.spansComing : twoCases.spans}
      </p>
    </section>
  );
}

type Given = NonNullable<ReturnType<OneCase['answer']>>;

interface RowProps {
  readonly model: TwoCases;
  readonly name: string;
  readonly figure: (given: Given) => string;
  readonly span?: (band: CaseBands) => string;
  readonly under?: (given: Given) => string;
  readonly accent?: (given: Given) => boolean;
}

function Row(props: RowProps) {
  return (
    <tr>
      <th scope="row">{props.name}</th>
      <Cell {...props} of={props.model.before} />
      <Cell {...props} of={props.model.after} />
    </tr>
  );
}

function Cell(props: RowProps & { readonly of: OneCase }) {
  return (
    <td>
      <Show when={props.of.answer()}>
        {(given) => (
          <span classList={{ accent: props.accent?.(given()) === true }}>
            <b>{props.figure(given())}</b>
            <span class="case-span">
              {props.under?.(given()) ?? (props.of.band() ? props.span?.(props.of.band() as CaseBands) : '…')}
            </span>
          </span>
        )}
      </Show>
    </td>
  );
}
