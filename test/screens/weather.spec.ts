// The weather sheet: typed figures close a spray for wind on the can card and give the next window; a file is shown before
// it is kept. A bed eaten raw is never offered a spray.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

const ON = '2026-07-06';

async function demo(page: Page): Promise<void> {
  await page.addInitScript((day) => {
    if (sessionStorage.getItem('tilthwright.demo-day') === null) sessionStorage.setItem('tilthwright.demo-day', day);
  }, ON);
}

async function hoursOf(page: Page, bed: string) {
  await page.locator('.bed-row', { hasText: bed }).click();
  return page.locator('.hours');
}

test('a forecast with wind and heavy rain is typed, closes the strip, and the next window is told', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await demo(page);
  await page.goto('/weather');
  await page.locator('[id="weather-0.windMPerS"]').fill('30');
  await page.getByRole('button', { name: 'Keep this weather' }).click();
  await expect(page.locator('.trouble')).toContainText('"30" has no unit; allowed: km/h, mph, m/s, kn.');
  await page.locator('[id="weather-0.windMPerS"]').fill('30 km/h');
  await page.locator('[id="weather-0.rainMm"]').fill('14 mm');
  await page.locator('[id="weather-1.highC"]').fill('21');
  await page.locator('[id="weather-1.rainMm"]').fill('0 mm');
  await page.getByRole('button', { name: 'Keep this weather' }).click();
  await expect(page.locator('.weather-form .said')).toHaveText('Written down.');
  await page.getByRole('link', { name: 'To the can card' }).click();
  const hours = await hoursOf(page, 'Middle');
  await expect(page.locator('.holds')).toContainText('Windy, 30\u00a0km/h');
  await expect(page.locator('.holds')).toContainText('Heavy rain is told');
  await expect(hours.locator('.hours-next')).toHaveText('open Tue 7\u00a0July, 00:00');
  await expect(page.getByRole('radio', { name: 'on the leaves' })).toHaveCount(0);
  expect(errors).toEqual([]);
});

test('a forecast file is refused with its line, then shown, then kept', async ({ page }) => {
  await demo(page);
  await page.goto('/weather');
  const give = (text: string) =>
    page.locator('#forecast-file').setInputFiles({ name: 'f.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await give(`time,wind (km/h)\n${ON}T14:00,fresh\n`);
  await expect(page.getByRole('alert')).toContainText('Line 2, wind (km/h): "fresh" is not a number');
  await give(`time,wind (km/h),rain (mm)\n${ON}T14:00,30,0\n${ON}T15:00,8,0\n`);
  await expect(page.getByText('2 hours on 1 day')).toBeVisible();
  await page.getByRole('button', { name: 'Keep this forecast' }).click();
  await expect(page.getByRole('button', { name: 'Keep this forecast' })).toHaveCount(0);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
});
