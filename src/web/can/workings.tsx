// "why?" of the dose: its workings over the sheet.

import { createSignal } from 'solid-js';
import type { Working } from '#engine/working/working.ts';
import type { CanCardWords } from '#words/en/can-card.ts';
import { WorkingDialog } from '../parts/working-dialog.tsx';

export function Workings(props: { readonly words: CanCardWords; readonly workings: readonly Working[] }) {
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <button type="button" class="why" aria-label={props.words.whyOf(props.words.dose)} onClick={() => setOpen(true)}>
        {props.words.why}
      </button>
      <WorkingDialog
        model={{ workings: () => (open() ? props.workings : undefined), closeWhy: () => setOpen(false) }}
      />
    </>
  );
}
