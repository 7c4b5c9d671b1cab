// The demo garden's pegs for the page tests: which address each has, and how the garden is opened at a day.

import type { Page } from '@playwright/test';
import { fold } from '#journal/fold.ts';
import { DEMO_PLOT, gardenEntries } from '#tasks/demo/garden.ts';

/** Address of a peg's sheet. */
export function pegPath(peg: number, sheet: '' | '/look' = ''): string {
  const batch = [...fold(gardenEntries(), DEMO_PLOT).batches.values()].find((one) => one.peg === peg);
  if (batch === undefined) throw new Error(`no peg ${peg} in the demo garden`);
  return `/peg/${batch.id}${sheet}`;
}

/** The demo garden on a date, signed by one of its keyholders; the own record stays untouched. */
export async function openDemo(page: Page, on: string, by = 'Fork'): Promise<void> {
  await page.addInitScript(
    ([day, tag]) => {
      if (sessionStorage.getItem('tilthwright.demo-day') === null) sessionStorage.setItem('tilthwright.demo-day', day);
      localStorage.setItem('tilthwright.keyholder', tag);
    },
    [on, by] as const,
  );
}
