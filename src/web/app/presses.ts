// One press is one act. What a press writes keeps its ids from the first press on: pressed again while it is being
// written, or within a second after with nothing typed, it is the same act; pressed again after a failure, it is written under the ids it
// had, so that the store knows it where it was kept after all. Later on an equal act is an act of its own.

import type { Entry } from '#journal/entry.ts';
import { canonical } from '#journal/same.ts';

/** A second press within this time of the act's being written belongs to the first. @our-caution */
export const SAME_PRESS_MS = 1000;
/** Pressed again this long after a failure, an act still is the one that failed. @our-caution */
export const SAME_TRY_MS = 10 * 60_000;

/** Where tries that were not acknowledged outlive the page. */
export interface Tries {
  readonly read: () => readonly Try[];
  readonly keep: (tries: readonly Try[]) => void;
}

/** What a press was to write and was not acknowledged. */
export interface Try {
  readonly entries: readonly Entry[];
  /** When it was pressed, by the device's clock. */
  readonly pressedAt: string;
}

interface Pressed {
  readonly entries: readonly Entry[];
  readonly beganMs: number;
  readonly pressedAt: string;
  /** While it is being written. */
  writing?: Promise<void> | undefined;
  keptMs?: number;
}

/** The presses of one record. `aliveMs` only ever counts up; a device's clock may be set. */
export function createPresses(given: {
  readonly aliveMs: () => number;
  readonly nowMs: () => number;
  /** When something was typed last, by `aliveMs`: what is pressed then is meant. */
  readonly typedMs?: () => number;
  readonly tries?: Tries;
}) {
  const { aliveMs, nowMs, tries, typedMs = () => Number.NEGATIVE_INFINITY } = given;
  const pressed = new Map<string, Pressed>();
  for (const { entries, pressedAt } of tries?.read() ?? []) {
    const ago = nowMs() - Date.parse(pressedAt);
    if (!(ago >= 0 && ago < SAME_TRY_MS)) continue;
    pressed.set(saidBy(entries), { entries, pressedAt, beganMs: aliveMs() - ago });
  }
  const keepTries = () => {
    const open = [...pressed.values()].filter(({ keptMs }) => keptMs === undefined);
    tries?.keep(open.map(({ entries, pressedAt }) => ({ entries, pressedAt })));
  };
  const isSame = ({ keptMs, beganMs, writing }: Pressed) =>
    writing !== undefined ||
    (keptMs === undefined
      ? aliveMs() - beganMs < SAME_TRY_MS
      : aliveMs() - keptMs < SAME_PRESS_MS && typedMs() < keptMs);
  return {
    /**
     * Writes what a press makes; resolves with the entries of its first press once they are durable.
     * @param made what this press would write by itself
     * @throws what `append` throws; the same press again then is the same act
     */
    async press(
      made: readonly Entry[],
      append: (entries: readonly Entry[]) => Promise<void>,
    ): Promise<readonly Entry[]> {
      const says = saidBy(made);
      for (const [key, one] of pressed) if (!isSame(one)) pressed.delete(key);
      const one: Pressed = pressed.get(says) ?? {
        entries: made,
        beganMs: aliveMs(),
        pressedAt: new Date(nowMs()).toISOString(),
      };
      if (one.keptMs !== undefined) return one.entries;
      if (one.writing === undefined) {
        pressed.set(says, one);
        keepTries();
        one.writing = append(one.entries).finally(() => {
          one.writing = undefined;
        });
      }
      await one.writing;
      one.keptMs ??= aliveMs();
      keepTries();
      return one.entries;
    },
  };
}

/** What entries say, under whichever ids: equal for two presses of one act. Only a correction says when it was done. */
function saidBy(entries: readonly Entry[]): string {
  const said = ({ plot, by, kind, v, body, replaces, on }: Entry) =>
    replaces === undefined ? { plot, by, kind, v, body } : { plot, by, kind, v, body, replaces, on };
  const told = canonical(entries.map(said));
  // Acts of one press may name each other by their ids.
  return entries.reduce((text, { id }, i) => text.replaceAll(id, `act ${i}`), told);
}
