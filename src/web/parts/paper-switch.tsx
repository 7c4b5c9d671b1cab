// Day paper or night paper: follows the system until this one large switch is used; then this device remembers.

import { createSignal } from 'solid-js';
import { app } from '#words/en/app.ts';
import { lasting } from '../app/device.ts';
import { PAPER } from '../app/places.ts';
import { mediaIs } from './measured.ts';

const [chosen, setChosen] = createSignal(keptChoice());

/** What was chosen on an earlier visit; the page shows it at once. */
function keptChoice(): boolean | undefined {
  const kept = lasting.read(PAPER);
  if (kept === undefined) return undefined;
  document.documentElement.dataset.paper = kept;
  return kept === 'night';
}

export function PaperSwitch() {
  const systemDark = mediaIs('(prefers-color-scheme: dark)');
  const night = () => chosen() ?? systemDark();
  function turn() {
    const paper = night() ? 'day' : 'night';
    setChosen(paper === 'night');
    document.documentElement.dataset.paper = paper;
    lasting.write(PAPER, paper);
  }
  return (
    <button type="button" class="block paper" role="switch" aria-checked={night()} onClick={turn}>
      <svg class="swatch" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
        <rect class="edge" x="2" y="2" width="24" height="24" />
        <path class="tip" d={night() ? 'M2 2H26V26H2Z' : 'M14 2H26V26H14Z'} />
      </svg>
      {app.nightPaper}
    </button>
  );
}
