// A plot as a stranger would have it: the season of the demo garden taken in from a file as one's own, with names of thirty
// letters and no tags. The page's clock stands at a day of that season.

import { expect, type Page } from '@playwright/test';
import { isSealed, type Kept } from '#journal/entry.ts';
import { exportLines } from '#journal/lines.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';

/** Thirty letters and more, with a word that no line can break. */
const LONG = {
  'bed.described': 'under the old pear tree, Bohnenrankgerüstbeetreihe',
  'vessel.described': 'with the dented rim behind the greenhouse',
  'can.described': 'with the long spout from the allotment shed',
  'plot.described': 'between the railway bank and Kleingartenanlage',
} as const;

/** The demo's entries until a day, under long names and without a tag. */
export function strangersEntries(untilOn: string) {
  return gardenEntries(untilOn).map((kept) => {
    if (isSealed(kept) || !(kept.kind in LONG)) return kept;
    const { tag: _, ...body } = kept.body as { readonly name?: string; readonly tag?: string };
    const more = LONG[kept.kind as keyof typeof LONG];
    return { ...kept, body: { ...body, name: `${body.name ?? ''} ${more}` } };
  });
}

/** Takes entries in as this phone's own; the clock stands at noon of the day. */
export async function takeIn(page: Page, entries: readonly Kept[], on: string): Promise<void> {
  await page.clock.setFixedTime(new Date(`${on}T11:00:00Z`));
  await page.goto('/record');
  const file = { name: 'plot.jsonl', mimeType: 'application/jsonl', buffer: Buffer.from(exportLines(entries)) };
  await page.locator('#take-file').setInputFiles(file);
  await expect(page.locator('.acts > li').first()).toBeVisible();
}

/** The stranger's plot as this phone's own. */
export async function openStranger(page: Page, on: string): Promise<void> {
  await takeIn(page, strangersEntries(on), on);
}

/** Pieces of text that lie over one another, as "first over second"; a piece and what it stands in are not two. */
export function overprinted(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const pieces: { readonly at: Element; readonly text: string; readonly box: DOMRect }[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const at = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (
        at === null ||
        text === '' ||
        at.closest('[aria-hidden=true], .unseen, option, script, style, dialog:not([open])')
      )
        continue;
      // A bar that stays at the edge of the window is meant to lie over what scrolls under it.
      let bar: Element | null = at;
      while (bar !== null && getComputedStyle(bar).position !== 'sticky') bar = bar.parentElement;
      if (bar !== null) continue;
      if (!at.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects()) if (box.width > 1 && box.height > 1) pieces.push({ at, text, box });
    }
    const found: string[] = [];
    for (const [i, a] of pieces.entries()) {
      for (const b of pieces.slice(i + 1)) {
        if (a.at === b.at || a.at.contains(b.at) || b.at.contains(a.at)) continue;
        // Two lines may share the edge of their boxes; letters fill about the middle two thirds of a line.
        const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        if (wide > 2 && high > 0.35 * Math.min(a.box.height, b.box.height))
          found.push(`"${a.text.slice(0, 40)}" over "${b.text.slice(0, 40)}"`);
      }
    }
    return found;
  });
}
