// The facts sheet as a newcomer meets it, and as the demo garden fills it.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

async function open(page: Page): Promise<void> {
  await page.goto('/plot');
  await page.getByRole('heading', { level: 1 }).waitFor();
}
const write = (page: Page) => page.getByRole('button', { name: 'Write it down' });

test('a newcomer names the plot, a vessel and a bed, and is led to the scale', async ({ page }) => {
  const errors = gatherErrors(page);
  await open(page);
  await expect(page.getByText('It starts with a name')).toBeVisible();
  await write(page).click();
  await expect(page.getByText('Nothing is told here yet; tell at least this.')).toBeVisible();
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  // Keyboard alone.
  await page.keyboard.press('Enter');
  await expect(page.getByText('Name the plot: done')).toBeVisible();
  const steps = page.locator('.first-steps');
  await steps.getByLabel('Name').fill('old pail');
  await steps.getByLabel('Volume').fill('2 gal');
  await write(page).click();
  await expect(steps.getByText(/whose measure/)).toBeVisible();
  await steps.getByRole('button', { name: /^imperial/ }).click();
  await write(page).click();
  await expect(page.getByText('One vessel: done')).toBeVisible();
  await steps.getByLabel('Name').fill('Long bed');
  await steps.getByLabel('Area').fill('5.76 m²');
  await write(page).click();
  await expect(page.getByRole('link', { name: 'Weigh in' })).toBeVisible();
  await expect(page.getByRole('img', { name: /Vessels drawn to one scale: old pail/ })).toBeVisible();
  await expect(page.getByRole('img', { name: /Beds in walking order.*Long bed/ })).toBeVisible();
  await expect(page.locator('#plot-vessels ~ details').first()).toContainText('2 imperial gal');
  await page.reload();
  await expect(page.getByText('Hedge End').first()).toBeVisible();
  expect(errors).toEqual([]);
});

test('a half-typed form outlives a reload, and all its problems stand at their fields at once', async ({ page }) => {
  await open(page);
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await write(page).click();
  await page.getByText('Add a bed').click();
  const form = page.locator('#bed-new-fold');
  await form.getByLabel('Area', { exact: true }).fill('nought');
  await form.getByLabel('Length, m').fill('long');
  await page.reload();
  await expect(form.getByLabel('Area', { exact: true })).toHaveValue('nought');
  await form.getByRole('button', { name: 'Write it down' }).click();
  await expect(form.locator('[aria-invalid="true"]')).toHaveCount(3);
  await expect(form.getByLabel('Name', { exact: true })).toBeFocused();
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [390, 1280]) {
    test.describe(`${width} px, ${colorScheme}`, () => {
      test.use({ colorScheme, viewport: { width, height: 844 } });
      test('the demo garden is drawn, clean for axe, and gone when it is left', async ({ page }) => {
        await open(page);
        await page.locator('#demo-open').click();
        await expect(page.getByRole('img', { name: /Beds in walking order.*Gate.*Trial/ })).toBeVisible();
        await expect(page.getByText('demo, all invented', { exact: true })).toBeVisible();
        await expect(page.getByText(/Children are about: tell the number/)).toBeVisible();
        await page.getByText('Add a water or a new report').click();
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
        await page.locator('#demo-leave').click();
        await expect(page.getByText('It starts with a name')).toBeVisible();
      });
    });
  }
}
