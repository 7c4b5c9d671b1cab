// The second case: warmth, sugar, water, each lot of scraps, the size of the pieces and the lid, each with what to mind
// where it is decided.

import { createMemo, For, Show } from 'solid-js';
import { formatAmount } from '#engine/quantity/format.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { material, sugars } from '#engine/tables/index.ts';
import type { Caution } from '#tasks/caution.ts';
import { caseActs, casePlaceOf, stepWords, twoCases } from '#words/en/two-cases-labels.ts';
import { shortName } from '#words/en/weigh-in.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { type Field, field, type Lid, type Lot } from '../weigh-in/draft.ts';
import { massStep, stepped, sugarStep, volumeStep } from '../weigh-in/steps.ts';
import { CaseRow } from './case-row.tsx';
import type { Chop } from './draft.ts';
import type { OneCase, TwoCases } from './model.ts';
import { netKg } from './reading.ts';

const text = (value: number, dimension: 'mass' | 'volume' | 'temperature') =>
  formatAmount({ value, dimension }, 'metric').text;
const LEAST_C = -5;
const MOST_C = 50;
/** A lot of no bowl is shown as it was typed. */
const NONE: Field = field('');

/** One degree warmer or colder; undefined beyond what a garden sees. */
export function warmer(byC: 1 | -1, nowC: number | undefined): string | undefined {
  if (nowC === undefined) return undefined;
  const next = Math.round(nowC + byC);
  return next < LEAST_C || next > MOST_C ? undefined : text(next, 'temperature');
}

export const WARMTH_STEP = { size: 1, text: stepWords.warmth(1) } as const;

/** Nothing is drawn anew for cautions that say the same. */
const sameText = (a: readonly Caution[], b: readonly Caution[]) => JSON.stringify(a) === JSON.stringify(b);

/** What to mind of a case, of one kind. */
export function CautionsAt(props: {
  readonly of: OneCase;
  readonly other?: OneCase;
  readonly at: ReturnType<typeof casePlaceOf>;
}) {
  const here = createMemo<readonly Caution[]>(
    () => {
      const known = new Set((props.other?.cautions() ?? []).map(({ rule, text }) => `${rule} ${text}`));
      return props.of
        .cautions()
        .filter(({ rule, text }) => casePlaceOf(rule) === props.at && !known.has(`${rule} ${text}`));
    },
    [],
    { equals: sameText },
  );
  return <CautionList cautions={here()} />;
}

export function ChangeRows(props: { readonly model: TwoCases }) {
  const { model } = props;
  const { before, after } = model;
  const base = () => model.draft().base;
  const own = () => model.draft().changed;
  const warmth = () => own().warmth ?? model.draft().warmth;
  const product = () => own().product ?? base()?.sugar.product;
  const sugarField = () => own().sugar ?? base()?.sugar.weight ?? NONE;
  const sugarKg = () => after.reading()?.amounts.sugarKg ?? 0;
  const waterL = () => after.reading()?.amounts.waterL ?? 0;
  const lid = (): Lid => own().lid ?? base()?.vessel.lid ?? 'loose';
  const chop = (): Chop => own().chop ?? model.draft().chop;
  const isOther = (mine: Field | undefined, theirs: string) => mine !== undefined && mine.settled !== theirs;
  const wasSugar = () => {
    const kg = before.reading()?.amounts.sugarKg;
    return kg === undefined ? twoCases.sugarNone : text(kg, 'mass');
  };
  return (
    <>
      <CaseRow
        model={model}
        id="case-warmth"
        name={twoCases.warmth}
        hint={twoCases.warmthHint}
        dimension="temperature"
        field={warmth()}
        trouble={after.trouble('warmth')}
        step={WARMTH_STEP}
        stepped={(way) => warmer(way, after.reading()?.warmthC)}
        was={model.draft().warmth.settled}
        isChanged={isOther(own().warmth, model.draft().warmth.settled)}
        onField={(act, next, typing) => model.changed(act, { warmth: next }, typing)}
      />
      <CautionsAt of={after} at="warmth" />
      <div class="rows">
        <div class="field">
          <label for="case-product">{sheet.sugarProduct}</label>
          <select
            id="case-product"
            onChange={(event) =>
              model.changed(caseActs.answered(sheet.sugarProduct), { product: event.currentTarget.value || undefined })
            }
          >
            <Show when={base()?.sugar.product === undefined}>
              <option value="" selected={product() === undefined}>
                {sheet.noProduct}
              </option>
            </Show>
            <For each={sugars}>
              {(row) => (
                <option value={row.id} selected={row.id === product()}>
                  {row.name}
                </option>
              )}
            </For>
          </select>
        </div>
        <Show when={sugarProduct(product() ?? '')}>
          {(kind) => (
            <CaseRow
              model={model}
              id="case-sugar"
              name={kind().name}
              hint={sheet.sugarHint}
              hatch="sugar"
              dimension="mass"
              field={sugarField()}
              trouble={after.trouble('sugar.weight')}
              step={sugarStep(sugarKg())}
              stepped={(way) => {
                const next = stepped(sugarKg(), sugarStep(sugarKg()), way);
                if (next !== undefined) return text(next, 'mass');
                return sugarKg() > 0 ? '' : undefined;
              }}
              was={wasSugar()}
              isChanged={isOther(own().sugar, base()?.sugar.weight.settled ?? '')}
              onField={(act, next, typing) => model.changed(act, { sugar: next }, typing)}
            />
          )}
        </Show>
      </div>
      <CautionsAt of={after} at="sugar" />
      <CaseRow
        model={model}
        id="case-water"
        name={sheet.waterVolume}
        hint={sheet.waterHint}
        hatch="water"
        dimension="volume"
        field={own().water ?? base()?.water.volume ?? NONE}
        trouble={after.trouble('water.volume')}
        step={volumeStep(waterL())}
        stepped={(way) => {
          const next = stepped(waterL(), volumeStep(waterL()), way);
          return next === undefined ? undefined : text(next, 'volume');
        }}
        was={text(before.reading()?.amounts.waterL ?? 0, 'volume')}
        isChanged={isOther(own().water, base()?.water.volume.settled ?? '')}
        onField={(act, next, typing) => model.changed(act, { water: next }, typing)}
      />
      <div class="rows">
        <For each={(base()?.lots ?? []).filter(({ key }) => netKg(before.reading(), key) !== undefined)}>
          {(lot) => <LotRow model={model} lot={lot} />}
        </For>
      </div>
      <CautionsAt of={after} other={before} at="scraps" />
      <ChoiceRow<Chop>
        name="case-chop"
        legend={twoCases.chop}
        words={[
          ['coarse', twoCases.chops.coarse],
          ['chopped', twoCases.chops.chopped],
          ['fine', twoCases.chops.fine],
        ]}
        taken={chop()}
        onTake={(taken) => model.changed(caseActs.answered(twoCases.chop), { chop: taken })}
      />
      <p class="note">{twoCases.chopSizes}</p>
      <ChoiceRow<Lid>
        name="case-lid"
        legend={twoCases.lid}
        words={[
          ['loose', twoCases.lids.loose],
          ['vent', twoCases.lids.vent],
          ['tight', twoCases.lids.tight],
        ]}
        taken={lid()}
        onTake={(taken) => model.changed(caseActs.answered(twoCases.lid), { lid: taken })}
      />
      <CautionsAt of={after} at="lid" />
    </>
  );
}

function LotRow(props: { readonly model: TwoCases; readonly lot: Lot }) {
  const { model } = props;
  const row = () => material(props.lot.material);
  const name = () => row()?.name ?? props.lot.material;
  const wasKg = () => netKg(model.before.reading(), props.lot.key) ?? 0;
  const nowKg = () => netKg(model.after.reading(), props.lot.key);
  const own = () => model.draft().changed.lots?.[props.lot.key];
  return (
    <CaseRow
      model={model}
      id={`case-lot-${props.lot.key}`}
      name={shortName(name())}
      hint={sheet.weightHint}
      hatch={hatchOf(row() ?? { id: '', group: '' }) ?? 'trimmings'}
      dimension="mass"
      field={own() ?? field(text(wasKg(), 'mass'))}
      trouble={model.after.lotTrouble(props.lot.key)}
      step={massStep(nowKg() ?? 0)}
      stepped={(way) => {
        const next = stepped(nowKg() ?? 0, massStep(nowKg() ?? 0), way);
        if (next !== undefined) return text(next, 'mass');
        return nowKg() === undefined ? undefined : '';
      }}
      was={text(wasKg(), 'mass')}
      isChanged={own() !== undefined && own()?.settled !== text(wasKg(), 'mass')}
      onField={(act, next, typing) =>
        model.changed(act, { lots: { ...model.draft().changed.lots, [props.lot.key]: next } }, typing)
      }
    />
  );
}
