// The page never goes blank: what a browser refuses, and what fails to arrive, is said in a sentence of its own, and what
// can still be done stays within reach.

import { expect, type Page, test } from '@playwright/test';
import { app, beginning } from '#words/en/app.ts';

/** Takes away both small storages of the browser before the page runs. */
async function withoutSmallStorage(page: Page, how: 'throws' | 'null'): Promise<void> {
  await page.addInitScript((kind) => {
    for (const name of ['localStorage', 'sessionStorage']) {
      Object.defineProperty(window, name, {
        configurable: true,
        get() {
          if (kind === 'null') return null;
          throw new DOMException('The operation is insecure.', 'SecurityError');
        },
      });
    }
  }, how);
}

for (const how of ['throws', 'null'] as const) {
  test(`a browser whose local storage ${how} goes on from sheet to sheet, and says what it does not keep`, async ({
    page,
  }) => {
    const faults: string[] = [];
    page.on('pageerror', (fault) => faults.push(fault.message));
    await withoutSmallStorage(page, how);
    await page.goto('/plot');
    await expect(page.locator('.stream')).toBeVisible();
    await expect(page.locator('#drafts-unkept')).toHaveCount(0);
    await page.getByRole('textbox').first().fill('Half a name');
    await expect(page.locator('#drafts-unkept')).toHaveText(app.draftsUnkept);
    // From sheet to sheet it still holds.
    await page.locator('.stream a').first().click();
    await expect(page).toHaveURL(/\/scraps$/);
    await page.goBack();
    await expect(page.getByRole('textbox').first()).toHaveValue('Half a name');
    // The demo garden opens too, and is left again.
    await page.goto('/');
    await page.getByRole('button', { name: beginning.demo }).click();
    await expect(page.locator('.title-block')).toContainText(app.demo);
    expect(faults).toEqual([]);
  });
}
