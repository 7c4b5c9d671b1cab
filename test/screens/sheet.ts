// How the page tests work the weigh-in sheet: as a grower would, by label and role.

import type { Page } from '@playwright/test';

/** Opens the sheet and waits until answers can be given. */
export async function openSheet(page: Page): Promise<void> {
  await page.goto('/weigh-in');
  // The sheet is fetched: until then its place is told to be opening, without a heading.
  await page.locator('h1').waitFor({ state: 'attached' });
}

/** Puts a lot of scraps in by its id, and types its weight. */
export async function putIn(page: Page, material: string, weight: string): Promise<void> {
  await page.getByLabel('Kind of scraps').selectOption(material);
  await page.getByRole('button', { name: 'Put it in' }).click();
  const entry = page.locator('[id^="lot-"].entry').last();
  await entry.fill(weight);
  await entry.press('Enter');
}

/** 12 L pail, 7.0 L water, 2.4 kg clippings, 0.8 kg trimmings, 0.3 kg wet grounds, 250 g white sugar. */
export async function overfill(page: Page): Promise<void> {
  await page.getByLabel('Vessel holds').fill('12 L');
  await putIn(page, 'grass-clippings-fresh', '2.4 kg');
  await putIn(page, 'kitchen-trimmings', '0.8 kg');
  await putIn(page, 'coffee-grounds', '0.3 kg');
  await page.getByRole('textbox', { name: 'Water' }).fill('7 L');
  await page.getByLabel('Kind of sugar').selectOption('white-sugar');
  await page.getByRole('textbox', { name: 'Sugar' }).fill('250 g');
  await page.getByRole('textbox', { name: 'Sugar' }).press('Enter');
}

/** The largest figure of the sheet with its words, such as "1.6 L too much". */
export async function verdictText(page: Page): Promise<string> {
  const text = await page.locator('.say').textContent();
  return (text ?? '').replaceAll(/[\u00a0\s]+/g, ' ').trim();
}

/** Everything the page wrote as an error or threw, gathered from now on. */
export function gatherErrors(page: Page): string[] {
  const errors: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  return errors;
}

/** Addresses of all sheets that need no peg and no bed. */
export const SHEETS = [
  '/',
  '/plot',
  '/scraps',
  '/weigh-in',
  '/two-cases',
  '/fill',
  '/shelf',
  '/shelf/unknown',
  '/can',
  '/pick',
  '/weather',
  '/heap',
  '/got',
  '/cover',
  '/record',
];
/** Addresses of the prints of a whole plot. */
export const PRINTS = ['/print/tags', '/print/can', '/print/shed'];
