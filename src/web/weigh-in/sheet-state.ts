// The sheet's draft with everything that can be done to it. Every act can be taken back, the last first;
// typing in one field counts as one act.

import { createSignal } from 'solid-js';
import { type Draft, EMPTY, exampleDraft, type Field, field, type Lot } from './draft.ts';

export interface Past {
  readonly draft: Draft;
  readonly act: string;
  readonly typing: string | undefined;
}

/** The sheet with all that can be taken back, as plain data. */
export interface LaidAside {
  readonly draft: Draft;
  readonly past: readonly Past[];
  readonly lastKey: number;
}

const KEPT_ACTS = 60;

export type Sheet = ReturnType<typeof createSheet>;

/** A new sheet with nothing told yet, or one that was laid aside. */
export function createSheet(aside?: LaidAside) {
  const [draft, setDraft] = createSignal<Draft>(aside?.draft ?? EMPTY);
  const [past, setPast] = createSignal<readonly Past[]>(aside?.past ?? []);
  let lastKey = aside?.lastKey ?? 0;

  function change(act: string, next: (now: Draft) => Draft, typing?: string) {
    const now = draft();
    const before = past();
    if (typing === undefined || before.at(-1)?.typing !== typing) {
      setPast([...before, { draft: now, act, typing }].slice(-KEPT_ACTS));
    }
    setDraft(next(now));
  }

  return {
    draft,
    lastAct: () => past().at(-1)?.act,
    asPlain: (): LaidAside => ({ draft: draft(), past: past(), lastKey }),
    change,
    takeBack() {
      const last = past().at(-1);
      if (last === undefined) return;
      setPast(past().slice(0, -1));
      setDraft(last.draft);
    },
    /** A text that stands as typed but is not read yet; read when it can be, or when the field is left. */
    typed(old: Field, text: string, readable: boolean): Field {
      return readable ? field(text) : { text, settled: old.settled };
    },
    addLot(act: string, material: string): number {
      lastKey += 1;
      const lot: Lot = { key: lastKey, material, weight: field(''), bowl: undefined, treated: undefined };
      change(act, (now) => ({ ...now, lots: [...now.lots, lot] }));
      return lot.key;
    },
    changeLot(act: string, key: number, next: (lot: Lot) => Lot, typing?: string) {
      change(act, (now) => ({ ...now, lots: now.lots.map((lot) => (lot.key === key ? next(lot) : lot)) }), typing);
    },
    loadExample(act: string) {
      const example = exampleDraft(lastKey + 1);
      lastKey += example.lots.length;
      change(act, () => example);
    },
    clear(act: string) {
      change(act, () => EMPTY);
    },
  };
}
