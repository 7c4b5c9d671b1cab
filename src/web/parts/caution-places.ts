// The lists of cautions of one sheet, known to each other, so that of all that are no stops at most two stand open at
// once and nothing is said twice. The sheet hands it down; each list joins it while it is shown.

import { type Accessor, createContext, createSignal, onCleanup, onMount, useContext } from 'solid-js';
import type { Caution } from '#tasks/caution.ts';

type Place = Accessor<readonly Caution[]>;

export interface Places {
  readonly all: Accessor<readonly Place[]>;
  readonly join: (place: Place) => void;
  readonly leave: (place: Place) => void;
}

export const CautionPlaces = createContext<Places>();

/** The places of one sheet, none yet. */
export function cautionPlaces(): Places {
  const [all, setAll] = createSignal<readonly Place[]>([]);
  return {
    all,
    join: (place) => setAll((places) => [...places, place]),
    leave: (place) => setAll((places) => places.filter((one) => one !== place)),
  };
}

/** Joins the places of the sheet; alone where the list stands in a fold of its own. Gives all places, and which is this. */
export function useCautionPlace(
  mine: Place,
  apart: boolean,
): () => { readonly here: number; readonly all: readonly Place[] } {
  const sheet = useContext(CautionPlaces);
  const alone = { here: 0, all: [mine] };
  if (sheet === undefined || apart) return () => alone;
  onMount(() => sheet.join(mine));
  onCleanup(() => sheet.leave(mine));
  return () => {
    const all = sheet.all();
    const here = all.indexOf(mine);
    return here < 0 ? alone : { here, all };
  };
}
