// The weigh-in laid aside while two cases are compared: its draft with all that can be taken back, kept in the browser.
// It comes back once, with the case that was taken on top where one was.

import { lasting } from '../app/device.ts';
import { draftPrefix } from '../app/draft.ts';
import type { Draft } from './draft.ts';
import type { LaidAside } from './sheet-state.ts';

const KEY = 'weigh-in-laid-aside';

interface Kept extends LaidAside {
  /** The case that was taken, and what the block that takes it back says. */
  readonly taken?: { readonly draft: Draft; readonly act: string };
}

const place = () => `${draftPrefix()}${KEY}`;

/** Lays the sheet aside. */
export function layAside(sheet: LaidAside): void {
  lasting.write(place(), JSON.stringify(sheet));
}

/** Puts a case on top of what was laid aside; what stood there can be taken back to. */
export function putOnTop(base: Draft, draft: Draft, act: string): void {
  const aside = laidAside() ?? { draft: base, past: [], lastKey: lastKeyOf(base) };
  const kept: Kept = { ...aside, taken: { draft, act } };
  lasting.write(place(), JSON.stringify(kept));
}

/** Leaves the draft for the weigh-in where nothing was laid aside: on coming back by another way. */
export function leaveFor(base: Draft): void {
  if (laidAside() === undefined) layAside({ draft: base, past: [], lastKey: lastKeyOf(base) });
}

/** Takes up what was laid aside, once. */
export function takeUp(): LaidAside | undefined {
  const aside = laidAside();
  lasting.remove(place());
  if (aside?.taken === undefined) return aside;
  const { draft, past, lastKey, taken } = aside;
  return { draft: taken.draft, past: [...past, { draft, act: taken.act, typing: undefined }], lastKey };
}

/** The draft that was laid aside, left where it is. */
export function laidAsideDraft(): Draft | undefined {
  return laidAside()?.draft;
}

function laidAside(): Kept | undefined {
  try {
    const text = lasting.read(place());
    return text === undefined ? undefined : (JSON.parse(text) as Kept);
  } catch {
    return undefined;
  }
}

function lastKeyOf({ lots }: Draft): number {
  return Math.max(0, ...lots.map(({ key }) => key));
}
