// One press is one act: pressed twice, pressed again after a failure, or kept while the page could not show it; and a
// finger that has just pressed undoes nothing.

import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const act = (page: Page) => page.locator('#lot-write');
const lots = (page: Page) => page.locator('.lots > li');

/** The scraps sheet with a lot of the own plot typed in, ready to be written down. */
async function lotTyped(page: Page, weight = '9 kg'): Promise<void> {
  await page.getByLabel('Kind of scraps').selectOption('grass-clippings-fresh');
  await page.getByLabel('It weighs').fill(weight);
  for (const [question, word] of [
    [/Whose is it/, 'this plot'],
    [/weedkiller used/, 'no'],
    [/How does it look/, 'fresh'],
  ] as const)
    await page.getByRole('group', { name: question }).getByRole('radio', { name: word, exact: true }).check();
}

/** Written down and shown, the form ready for the next lot. */
async function lotShown(page: Page, count: number): Promise<void> {
  await expect(lots(page)).toHaveCount(count);
  await expect(page.getByLabel('It weighs')).toHaveValue('');
}

/** Every entry in the record's sheet after the page was loaded again: what the disk holds. */
async function keptAfterReload(page: Page, count: number): Promise<void> {
  await page.goto('/record');
  await expect(page.locator('.act-line')).toHaveCount(count);
}

test('pressed twice at the scraps sheet, one lot is written down, and nothing is asked for after it', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await page.goto('/scraps');
  await lotTyped(page);
  await act(page).dblclick();
  await expect(lots(page)).toHaveCount(1);
  await expect(page.getByRole('alert')).toHaveCount(0);
  await keptAfterReload(page, 1);
  expect(errors).toEqual([]);
});

test('two equal lots, typed one after the other, are two', async ({ page }) => {
  await page.goto('/scraps');
  for (const count of [1, 2]) {
    await lotTyped(page);
    await act(page).click();
    await lotShown(page, count);
  }
  await keptAfterReload(page, 2);
});

test('what is typed for the next lot while the first is being written stays', async ({ page }) => {
  await page.goto('/scraps');
  await expect(act(page)).toBeVisible();
  // From now on the page hears of a write only once it is let.
  await page.evaluate(() => {
    const isLet = new Promise((resolve) => addEventListener('let-it', resolve, { once: true }));
    const open = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given: Parameters<typeof open>) {
      const tx = open.apply(this, given);
      if (given[1] !== 'readwrite') return tx;
      const listen = tx.addEventListener.bind(tx);
      tx.addEventListener = ((type: string, heard: EventListener) =>
        listen(
          type,
          type === 'complete' ? (event) => void isLet.then(() => heard(event)) : heard,
        )) as typeof tx.addEventListener;
      return tx;
    };
  });
  await lotTyped(page);
  await act(page).click();
  await lotTyped(page, '2 kg');
  await page.evaluate(() => dispatchEvent(new Event('let-it')));
  await expect(lots(page)).toHaveCount(1);
  await expect(page.getByLabel('It weighs')).toHaveValue('2 kg');
  await act(page).click();
  await lotShown(page, 2);
});

test('kept, but not to be shown: it is acknowledged, the page says so, and loaded again it shows the lot', async ({
  browser,
}) => {
  // No worker that would answer in the server's place.
  const page = await browser.newPage({ serviceWorkers: 'block' });
  await page.route(/\/assets\/plot-made-[^/]*\.js$/, (route) => route.abort());
  await page.goto('/scraps');
  await lotTyped(page);
  await act(page).click();
  await expect(page.getByText('Your entry is written down. This page could not show it.')).toBeVisible();
  // Acknowledged: the form is ready for the next lot.
  await expect(page.getByLabel('It weighs')).toHaveValue('');
  await page.unroute(/\/assets\/plot-made-[^/]*\.js$/);
  await page.locator('#show-again').click();
  await expect(lots(page)).toHaveCount(1);
  await keptAfterReload(page, 1);
  await page.close();
});

test('refused by the disk once and pressed again, it is one entry', async ({ page }) => {
  await page.addInitScript(() => {
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...given: Parameters<typeof add>) {
      if (this.name === 'entries' && sessionStorage.getItem('refused') === null) {
        sessionStorage.setItem('refused', 'yes');
        throw new DOMException('no room', 'QuotaExceededError');
      }
      return add.apply(this, given);
    };
  });
  await page.goto('/scraps');
  await lotTyped(page);
  await act(page).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Not written down yet' })).toBeVisible();
  await act(page).click();
  await expect(lots(page)).toHaveCount(1);
  await keptAfterReload(page, 1);
});

test('kept but never acknowledged, since the page was closed: pressed again after the reload it is one entry', async ({
  page,
}) => {
  await page.goto('/scraps');
  await lotTyped(page);
  // The write reaches the disk, and the page never hears of it.
  await page.evaluate(() => {
    const open = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given: Parameters<typeof open>) {
      const tx = open.apply(this, given);
      if (given[1] !== 'readwrite') return tx;
      const listen = tx.addEventListener.bind(tx);
      tx.addEventListener = ((type: string, heard: EventListener) => {
        listen(type, type === 'complete' ? () => document.documentElement.setAttribute('data-on-disk', '') : heard);
      }) as typeof tx.addEventListener;
      return tx;
    };
  });
  await act(page).click();
  await expect(page.locator('html[data-on-disk]')).toHaveCount(1);
  await page.reload();
  // The lot is there, and so is what was typed: the press was not acknowledged.
  await expect(lots(page)).toHaveCount(1);
  await expect(page.getByLabel('It weighs')).toHaveValue('9 kg');
  await act(page).click();
  await expect(page.getByLabel('It weighs')).toHaveValue('');
  await keptAfterReload(page, 1);
});

test('a finger that taps twice does not undo what slid under it, and a press that is meant does', async ({ page }) => {
  await page.goto('/scraps');
  // The worst that can slide under it: a block over the whole page, drawn as soon as there is something to undo.
  await page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('#take-back { position: fixed; inset: 0; z-index: 9; height: 100vh; }');
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  });
  await lotTyped(page);
  await act(page).scrollIntoViewIfNeeded();
  const place = await act(page).boundingBox();
  if (place === null) throw new Error('no block to press');
  const [x, y] = [place.x + place.width / 2, place.y + place.height / 2];
  await page.mouse.click(x, y);
  await page.locator('#take-back').waitFor();
  for (const by of [0, 3, -3]) await page.mouse.click(x + by, y);
  await expect(lots(page)).toHaveCount(1);
  await expect(page.locator('#take-back')).toContainText('Undo');
  await page.locator('#take-back').click({ position: { x: 5, y: 5 } });
  await expect(lots(page)).toHaveCount(0);
  await page.goto('/record');
  await expect(page.locator('.act-line')).toContainText(['taken back']);
});

test('by the keyboard an act is undone without a wait', async ({ page }) => {
  await page.goto('/scraps');
  await lotTyped(page);
  await act(page).press('Enter');
  await page.locator('#take-back').press('Enter');
  await expect(page.locator('#take-back')).toHaveCount(0);
  await expect(lots(page)).toHaveCount(0);
});

test('with the clock moved by a month undo counts on; after a reload it cancels without minutes', async ({ page }) => {
  await page.addInitScript(() => {
    const now = Date.now;
    Date.now = () => now() + Number(sessionStorage.getItem('shift-ms') ?? 0);
  });
  await page.goto('/scraps');
  let count = 0;
  for (const days of [-30, 30]) {
    await lotTyped(page);
    await act(page).click();
    await lotShown(page, ++count);
    await expect(page.locator('#take-back')).toContainText('10 min left');
    await page.evaluate((by) => sessionStorage.setItem('shift-ms', String(by * 86_400_000)), days);
    await lotTyped(page, '2 kg');
    await act(page).click();
    await lotShown(page, ++count);
    await expect(page.locator('#take-back')).toContainText('10 min left');
  }
  await page.reload();
  await expect(page.locator('#take-back')).toContainText('Cancel this entry');
  await expect(page.locator('#take-back')).not.toContainText('min');
});
