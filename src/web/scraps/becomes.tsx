// What becomes of a lot, shown before it is written down: the outcome, where it goes instead, and why.

import { createMemo, For, Show } from 'solid-js';
import { type SlipTold, slipAsks, weighedBody } from '#tasks/plot/slip-questions.ts';
import { slipView } from '#tasks/plot/slips.ts';
import { stock } from '#words/en/scraps-stock.ts';
import { useRecord } from '../app/context.tsx';
import { CautionList } from '../parts/caution-list.tsx';

const NO_MASS = { typed: '', massKg: 0 };

export function Becomes(props: { readonly told: SlipTold }) {
  const record = useRecord();
  const view = createMemo(() => {
    const { told } = props;
    const plot = record.plot();
    const { asks, open } = slipAsks({ told, plot });
    if (open.length > 0 || (asks.length === 0 && told.material === '')) return undefined;
    return slipView({ plot, lot: weighedBody({ told, plot, mass: NO_MASS }), on: record.today() });
  });
  return (
    <div class="becomes" aria-live="polite">
      <Show when={view()}>
        {(seen) => (
          <>
            <h3>{stock.becomes}</h3>
            <For each={seen().says}>{(line, i) => <p>{i() === 0 ? <b>{line}</b> : line}</p>}</For>
            <CautionList cautions={seen().cautions} />
          </>
        )}
      </Show>
    </div>
  );
}
