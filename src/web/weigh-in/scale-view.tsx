// The phone lying beside the scale: the pail and the next weight to reach, nothing else. A block brings the
// whole sheet back for a phone that cannot be turned.

import { createMemo, createSignal, Show } from 'solid-js';
import { formatAmount } from '#engine/quantity/format.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { material } from '#engine/tables/index.ts';
import { rowLabels, sheet } from '#words/en/weigh-in-labels.ts';
import type { WeighIn } from './model.ts';

interface Target {
  readonly name: string;
  readonly reads: string;
  readonly note: string | undefined;
}

export function ScaleView(props: {
  readonly model: WeighIn;
  readonly whole: () => boolean;
  readonly onTurn: () => void;
}) {
  const { sheet: act, reading } = props.model;
  const [at, setAt] = createSignal(0);
  const text = (value: number, dimension: 'mass' | 'volume') => formatAmount({ value, dimension }, 'metric').text;
  const targets = createMemo<readonly Target[]>(() => {
    const { waterL, sugarKg, lotKg, bowlKg, weighedLots } = reading();
    const product = sugarProduct(act.draft().sugar.product ?? '');
    const list: Target[] = [];
    if (waterL !== undefined) list.push({ name: sheet.waterVolume, reads: text(waterL, 'volume'), note: undefined });
    if (sugarKg !== undefined && product)
      list.push({ name: product.name, reads: text(sugarKg, 'mass'), note: undefined });
    for (const lot of weighedLots) {
      const net = lotKg.get(lot.key) ?? 0;
      const bowl = bowlKg.get(lot.key) ?? 0;
      list.push({
        name: material(lot.material)?.name ?? lot.material,
        reads: text(net + bowl, 'mass'),
        note: bowl > 0 ? rowLabels.net(text(net, 'mass'), text(bowl, 'mass')) : undefined,
      });
    }
    return list;
  });
  const here = () => targets()[at()];
  return (
    <section class="scale-view" aria-label={sheet.scaleNext}>
      <Show when={targets().length > 0} fallback={<p>{sheet.scaleNone}</p>}>
        <Show when={here()} fallback={<p class="scale-name">{sheet.scaleDone}</p>}>
          {(target) => (
            <div aria-live="polite">
              <p class="scale-name">{target().name}</p>
              <p class="scale-figure">{target().reads}</p>
              <Show when={target().note}>
                <p class="note">{target().note}</p>
              </Show>
            </div>
          )}
        </Show>
        <div class="choices">
          <button
            type="button"
            class="block"
            disabled={at() === 0}
            onClick={() => setAt(Math.max(0, Math.min(at(), targets().length) - 1))}
          >
            {sheet.scaleBack}
          </button>
          <button type="button" class="block act" disabled={here() === undefined} onClick={() => setAt(at() + 1)}>
            {sheet.scaleForward}
          </button>
        </div>
      </Show>
      <button type="button" class="block turn" onClick={() => props.onTurn()}>
        {props.whole() ? sheet.layByScale : sheet.wholeSheet}
      </button>
    </section>
  );
}
