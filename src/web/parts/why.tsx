// The block beside a figure that opens its working; the working itself is drawn by working-dialog.tsx.

import { whyOf } from '#words/en/weigh-in.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';

/** The block beside a figure that opens its working. */
export function WhyBlock(props: { readonly of: string; readonly onAsk: () => void }) {
  return (
    <button type="button" class="why" aria-label={whyOf(props.of)} onClick={() => props.onAsk()}>
      {sheet.why}
    </button>
  );
}
