// A newer version never takes a form away: it is fetched and waits, the sheet goes on as it is, and only its own
// block takes it. The built page is served from a copy whose worker is then changed, as a second build's is.

import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { createApp } from '../../src/server/app.ts';

const built = path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web');

interface Marked extends Window {
  sameVisit?: boolean;
}

test('a newer version waits while a form is half typed, and is taken by its own block alone', async ({ page }) => {
  const copy = await mkdtemp(path.join(os.tmpdir(), 'tilthwright-newer-'));
  await cp(built, copy, { recursive: true });
  const app = await createApp(copy);
  try {
    const address = await app.listen({ host: '127.0.0.1', port: 0 });
    await page.goto(`${address}/scraps`);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const typed = page.getByRole('textbox').first();
    await typed.fill('half a na');
    await page.evaluate(() => {
      (window as Marked).sameVisit = true;
    });

    await appendFile(path.join(copy, 'sw.js'), '\n// a second build\n');
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await expect(page.locator('#take-newer')).toBeVisible();
    const held = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return { waits: registration?.waiting?.state, sameVisit: (window as Marked).sameVisit };
    });
    expect(held).toEqual({ waits: 'installed', sameVisit: true });
    await expect(typed).toHaveValue('half a na');

    // A click, not a key: leaving the field says that it cannot be read, which must not move the block from under the mouse.
    await page.locator('#take-newer').click();
    await page.waitForFunction(() => (window as Marked).sameVisit === undefined);
    await expect(page.getByRole('textbox').first()).toHaveValue('half a na');
    await expect(page.locator('#take-newer')).toHaveCount(0);
  } finally {
    await app.close();
    await rm(copy, { recursive: true, force: true });
  }
});
