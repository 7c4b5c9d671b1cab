// Day paper or night paper: follows the system until this one large switch is used. Nothing is stored.

import { createSignal } from 'solid-js';
import { sheet } from '#words/en/weigh-in-labels.ts';
import { mediaIs } from './measured.ts';

export function PaperSwitch() {
  const systemDark = mediaIs('(prefers-color-scheme: dark)');
  const [chosen, setChosen] = createSignal<boolean>();
  const night = () => chosen() ?? systemDark();
  function turn() {
    const next = !night();
    setChosen(next);
    document.documentElement.dataset.paper = next ? 'night' : 'day';
  }
  return (
    <button type="button" class="block paper" role="switch" aria-checked={night()} onClick={turn}>
      <svg class="swatch" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
        <rect class="edge" x="2" y="2" width="24" height="24" />
        <path class="tip" d={night() ? 'M2 2H26V26H2Z' : 'M14 2H26V26H14Z'} />
      </svg>
      {sheet.nightPaper}
    </button>
  );
}
