// Two cases side by side as a grower meets them: handed over from the weigh-in and back, one case stepped without the
// other, typed values, keyboard alone, axe by day and by night, targets of 64 px.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors, openSheet } from './sheet.ts';

const cell = (page: Page, row: string, column: number) =>
  page.locator('.case-figures tr', { hasText: row }).locator('td').nth(column).locator('b');

/** The example of the weigh-in, handed over. */
async function open(page: Page): Promise<void> {
  await openSheet(page);
  await page.getByRole('button', { name: 'Show me an example' }).click();
  await page.getByRole('button', { name: /^What if/ }).click();
  await expect(page.locator('.case-said')).toContainText('Nothing is changed yet');
}

test('without a weigh-in it says what will stand here, and leads to one', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.goto('/two-cases');
  await expect(page.getByText('Two cases of a filling will stand here')).toBeVisible();
  await page.getByRole('link', { name: 'Weigh in first' }).click();
  await expect(page.getByRole('heading', { name: 'Which vessel?' })).toBeVisible();
  expect(errors).toEqual([]);
});

test('steps and typed values change the second case alone, and each act is taken back', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page);
  const before = await cell(page, 'Fills', 0).textContent();
  const sour = await cell(page, 'pH', 0).textContent();
  await page.locator('#case-warmth').locator('xpath=..').getByRole('button', { name: /more/ }).click();
  await expect(page.locator('#case-warmth')).toHaveValue(/^19.°C$/);
  await expect(page.locator('#base-warmth')).toHaveValue(/^18.°C$/);
  await expect(page.locator('.case-said')).toContainText('One degree warmer');
  await page.locator('#case-water').fill('6.2 L');
  // 5.2 L to 6.2 L: one litre more water, and a litre more in the vessel
  await expect(page.locator('.case-said')).toContainText('1 L more water');
  expect(await cell(page, 'Fills', 0).textContent()).toBe(before);
  expect(await cell(page, 'pH', 0).textContent()).toBe(sour);
  const litres = (text: string | null) => Number.parseFloat(text ?? '');
  expect(litres(await cell(page, 'Fills', 1).textContent())).toBeCloseTo(litres(before) + 1, 1);
  await expect(page.getByText('as it is: 5.2 L')).toBeVisible();
  await page.locator('#case-take-back').click();
  await expect(page.locator('#case-water')).toHaveValue('5.2 L');
  await page.locator('#case-take-back').click();
  await expect(page.locator('.case-said')).toContainText('Nothing is changed yet');
  // What cannot be read keeps its place with its sentence, and holds that case back.
  await page.locator('#case-sugar').fill('a bit');
  await page.locator('#case-sugar').press('Enter');
  await expect(page.locator('#case-sugar-trouble')).toBeVisible();
  await expect(page.locator('#case-sugar')).toHaveValue('a bit');
  expect(errors).toEqual([]);
});

test('a case is handed back to the weigh-in, and taken back there; nothing told before is lost', async ({ page }) => {
  await openSheet(page);
  await page.getByRole('button', { name: 'Show me an example' }).click();
  await page.getByRole('textbox', { name: 'Water' }).fill('5 L');
  await page.getByRole('button', { name: /^What if/ }).click();
  await page.locator('#case-water').fill('4 L');
  await page.locator('#case-warmth').fill('25');
  await page.locator('#case-warmth').press('Enter');
  // A figure without its unit is asked about, and one touch settles it.
  await page.getByRole('button', { name: '°C', exact: true }).click();
  await page.reload();
  await expect(page.locator('#case-water')).toHaveValue('4 L');
  await page.getByRole('button', { name: 'Take this one' }).click();
  await expect(page.getByRole('textbox', { name: 'Water' })).toHaveValue('4 L');
  await expect(page.getByText(/From the two cases: it stands at 25.°C/)).toBeVisible();
  await page.locator('#take-back').click();
  await expect(page.getByRole('textbox', { name: 'Water' })).toHaveValue('5 L');
  // The acts before the hand-over can still be taken back.
  await page.locator('#take-back').click();
  await expect(page.getByRole('textbox', { name: 'Water' })).toHaveValue('5.2 L');
});

test('keyboard alone steps the second case and hands it back', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page);
  await page.locator('#case-before').click();
  const tabTo = async (name: RegExp, times: number) => {
    for (let i = 0, seen = 0; i < 60; i++) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const one = document.activeElement;
        return one?.getAttribute('aria-label') ?? one?.textContent ?? '';
      });
      if (name.test(here) && ++seen === times) return;
    }
    throw new Error(`no way by Tab to ${name}`);
  };
  await tabTo(/^Warmth where it stands, .* more$/, 2);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Space');
  await expect(page.locator('#case-warmth')).toHaveValue(/^20.°C$/);
  await expect(page.locator('.case-said')).toContainText('Two degrees warmer');
  await tabTo(/^Take this one/, 1);
  await page.keyboard.press('Enter');
  await expect(page.getByText(/it stands at 20.°C/)).toBeVisible();
});

test('the room is asked for on request, and a shut cupboard is held against the published limit', async ({ page }) => {
  await open(page);
  await page.getByText('Where will it stand?').click();
  await page.getByLabel('cupboard').check();
  await page.getByLabel('shut tight').check();
  await page.locator('#case-room-size').fill('0.2');
  await expect(
    page
      .locator('#case-room')
      .getByText(/that workplaces allow/)
      .first(),
  ).toBeVisible();
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [390, 1280]) {
    test(`${width} px, ${colorScheme}: axe finds nothing, nothing scrolls sideways, targets are 64 px`, async ({
      browser,
      baseURL,
    }) => {
      const context = await browser.newContext({
        colorScheme,
        viewport: { width, height: 844 },
        baseURL: baseURL ?? '',
      });
      const page = await context.newPage();
      await open(page);
      await page.locator('#case-warmth').fill('26 °C');
      await page.getByText('Where will it stand?').click();
      await page.getByLabel('cupboard').check();
      await expect(page.locator('.case-figures .note')).toContainText('8 in 10 runs', { timeout: 60_000 });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      const faint = (await new AxeBuilder({ page }).withRules(['color-contrast-enhanced']).analyze()).violations;
      expect(faint.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(wide).toBeLessThanOrEqual(0);
      const small = await page
        .locator('.two-cases')
        .locator('button, select, input:not([type=radio]), label.block, summary')
        .evaluateAll((all) =>
          all
            .map((one) => ({
              box: one.getBoundingClientRect(),
              name: `${one.tagName} ${one.textContent?.slice(0, 30)}`,
            }))
            .filter(({ box }) => box.width > 0 && (box.height < 63.9 || box.width < 63.9))
            .map(({ box, name }) => `${name}: ${box.width} x ${box.height}`),
        );
      expect(small).toEqual([]);
      await context.close();
    });
  }
}
