// A grower at work: what a form gave goes into the record by the journal's own gate, as on a phone, and the plot is folded
// anew. Whatever a form read as something else than what was meant is gathered here.

import type { Entry } from '#journal/entry.ts';
import { folding, type Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { write } from '#journal/write.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import type { Troubles, Typed } from '#tasks/plot/form.ts';
import type { Amount, Hand } from './amounts.ts';

export const TAG = 'Rake';
const DEVICE = 'phone-1';

/** Whether two figures are the same but for the last digits of binary arithmetic. */
export function alike(a: number | undefined | null, b: number | undefined | null): boolean {
  if (a === undefined || a === null || b === undefined || b === null) return a === b;
  return Object.is(a, b) || Math.abs(a - b) <= 1e-9 * Math.max(1e-3, Math.abs(a), Math.abs(b));
}

export class Grower {
  readonly entries: Entry[] = [];
  /** What a form read as something else than what was meant. */
  readonly misread: string[] = [];
  plot: Plot;
  /** Local date and time. */
  now: string;
  private readonly fold = folding();

  readonly hand: Hand;

  constructor(hand: Hand, startsOn: string) {
    this.hand = hand;
    this.plot = this.fold([]);
    this.now = `${startsOn}T09:00`;
  }

  get today(): string {
    return this.now.slice(0, 10);
  }

  get day(): number {
    return momentOf(this.now).dateDay;
  }

  /** Minutes on the local clock. */
  get minute(): number {
    return momentOf(this.now).wallMinute;
  }

  /** What the keyholder settled: as every form of the screens asks for it. */
  get countries() {
    return countriesOf(this.plot, TAG);
  }

  /** Waits some days, until an hour of the day. */
  wait(days: number, time = '09:00'): void {
    this.now = `${onDay(this.day + days)}T${time}`;
  }

  /** Waits some minutes within the hour. */
  after(minutes: number): void {
    const at = momentOf(this.now).wallMinute + minutes;
    const ofDay = at % 1440;
    const two = (value: number) => String(value).padStart(2, '0');
    this.now = `${onDay(Math.floor(at / 1440))}T${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`;
  }

  did<K extends Kind>(kind: K, body: Body<K>, on = this.now): Entry & { kind: K } {
    const count = this.entries.length + 1;
    const random = Uint8Array.from({ length: 10 }, (_, i) => (i < 2 ? (count >> (8 * (1 - i))) & 255 : (i * 29) & 255));
    const nowMs = momentOf(this.now).wallMinute * 60_000;
    const written = write({ kind, on, body }, { plot: 'seasons', by: TAG, device: DEVICE, nowMs, random });
    if (!written.ok)
      throw new Error(`not an entry: ${kind} ${JSON.stringify(written.problems)} ${JSON.stringify(body)}`);
    this.entries.push(written.entry);
    this.plot = this.fold([...this.entries]);
    return written.entry as Entry & { kind: K };
  }

  /** Notes where a figure of an entry is not the one that was meant. */
  meant(what: string, kept: number | undefined, { text, si }: Amount): void {
    if (!alike(kept, si)) this.misread.push(`${what}: "${text}" means ${si}, kept as ${kept}`);
  }
}

/** What a form read, or its troubles as an error. */
export function taken<T extends { readonly ok: true }>(
  what: string,
  read: T | { readonly ok: false; readonly troubles: Troubles },
  typed: Typed,
): T {
  if (read.ok) return read;
  const said = [...read.troubles].map(([field, { sentence }]) => `${field}: ${sentence}`);
  throw new Error(`${what} was refused: ${said.join(' ')} ${JSON.stringify(typed)}`);
}
