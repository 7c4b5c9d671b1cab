// Into which bottles: kind, size, how many, cap, where they stand. A drink bottle is never offered; one that is typed
// is answered with a stop.

import { Show } from 'solid-js';
import type { Countries } from '#engine/quantity/ask.ts';
import type { StrainingAnswer } from '#tasks/plot/straining.ts';
import { bottlesSum, strainSheet, sugarLeftLine, useFirstLine } from '#words/en/straining.ts';
import { sayPressure } from '#words/en/vessel.ts';
import { BottleRow } from '../drawings/bottle-row.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { measured } from '../parts/measured.ts';
import { TypedField } from '../parts/typed-field.tsx';
import { WhyBlock } from '../parts/why.tsx';
import type { StrainDraft, StrainReading } from './draft.ts';

/** More bottles than this are told in the sentence alone. */
const MOST_DRAWN = 40;

export function BottlesQuestion(props: {
  readonly draft: StrainDraft;
  readonly change: (next: Partial<StrainDraft>) => void;
  readonly reading: StrainReading;
  readonly answer: StrainingAnswer | undefined;
  readonly countries: Countries;
  readonly today: string;
  readonly onWhy: (...figures: readonly string[]) => void;
}) {
  const [width, setPlace] = measured(350);
  const plan = () => props.reading.plan;
  const field = (
    name: 'size' | 'filled' | 'count' | 'warmth',
    dimension: 'volume' | 'count' | 'temperature',
    label: string,
    hint: string,
  ) => (
    <TypedField
      id={`strain-${name}`}
      label={label}
      hint={hint}
      dimension={dimension}
      field={props.draft[name]}
      trouble={props.reading.fields[name].trouble}
      countries={props.countries}
      onField={(next) => props.change({ [name]: next })}
      onCountries={(countries) => props.change({ countries })}
    />
  );
  return (
    <>
      <ChoiceRow
        name="bottle-kind"
        legend={strainSheet.bottleQuestion}
        words={[
          ['plastic', strainSheet.kinds.plastic],
          ['other', strainSheet.kinds.other],
        ]}
        taken={props.draft.kind}
        onTake={(kind) => props.change({ kind })}
      />
      <Show when={props.draft.kind === 'other'}>
        <TypedField
          id="strain-kind"
          label={strainSheet.kindTyped}
          hint={strainSheet.kindHint}
          field={props.draft.kindTyped}
          trouble={
            props.reading.material === 'unclear' && props.draft.kindTyped.settled.trim() !== ''
              ? { sentence: strainSheet.kindUnclear }
              : undefined
          }
          countries={props.countries}
          onField={(kindTyped) => props.change({ kindTyped })}
          onCountries={(countries) => props.change({ countries })}
        />
      </Show>
      <div class="two">
        {field('size', 'volume', strainSheet.size, strainSheet.sizeHint)}
        {field('filled', 'volume', strainSheet.filled, strainSheet.filledHint)}
        {field('count', 'count', strainSheet.count, strainSheet.countHint)}
        {field('warmth', 'temperature', strainSheet.warmth, strainSheet.warmthHint)}
        <TypedField
          id="strain-place"
          label={strainSheet.place}
          hint={strainSheet.placeHint}
          field={props.draft.place}
          trouble={undefined}
          countries={props.countries}
          onField={(place) => props.change({ place })}
          onCountries={(countries) => props.change({ countries })}
        />
      </div>
      <ChoiceRow
        name="cap"
        legend={strainSheet.capQuestion}
        words={[
          ['vent', strainSheet.caps.vent],
          ['loose', strainSheet.caps.loose],
          ['screw', strainSheet.caps.screw],
        ]}
        taken={props.draft.cap}
        onTake={(cap) => props.change({ cap })}
      />
      <div ref={setPlace}>
        <Show when={plan()}>
          {(told) => (
            <>
              <Show when={told().count <= MOST_DRAWN && told().filledL <= told().sizeL}>
                <BottleRow
                  eachL={Array.from({ length: told().count }, () => told().filledL)}
                  sizeL={told().sizeL}
                  allSizesL={[told().sizeL]}
                  width={width()}
                  tallPx={120}
                  alternative={bottlesSum(told().count, told().filledL, props.answer?.toBottleL ?? 0)}
                />
              </Show>
              <Show when={props.answer}>
                {(answer) => (
                  <>
                    <p>{bottlesSum(told().count, told().filledL, answer().toBottleL)}</p>
                    <p>{sugarLeftLine(answer().sugarLeftGPerL)}</p>
                    <Show when={answer().strain.pressure}>
                      {(pressure) => (
                        <div class="fact">
                          <p>{sayPressure(pressure())}</p>
                          <WhyBlock of={sayPressure(pressure())} onAsk={() => props.onWhy('pressure.upToAtm')} />
                        </div>
                      )}
                    </Show>
                    <div class="fact">
                      <p>{useFirstLine(answer().useFirst, answer().strain.useFirst.keeping, props.today)}</p>
                      <WhyBlock of={strainSheet.bottlesHeading} onAsk={() => props.onWhy('useFirst.days')} />
                    </div>
                  </>
                )}
              </Show>
            </>
          )}
        </Show>
      </div>
    </>
  );
}
