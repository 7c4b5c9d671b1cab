// Pick day in the demo garden on 16 July, two days after Can and Rake both fed the tunnel.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

async function open(page: Page): Promise<void> {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-16'));
  await page.goto('/pick');
  await page.locator('.pick-list > li').first().waitFor();
}

test('each bed has one word, and why stands one touch below with its source', async ({ page }) => {
  const errors = gatherErrors(page);
  await open(page);
  await expect(page.locator('.pick-answer')).toHaveText([
    'Pick',
    'Pick',
    'Cook',
    'Cook',
    'Cook',
    'Wait till 21\u00a0July',
    'Wait till 28\u00a0July',
    'Wait till 21\u00a0July',
  ]);
  const gate = page.locator('.pick-list > li', { hasText: 'tomatoes' });
  await expect(gate.locator('.pick-last')).toHaveText('fed 9 days ago');
  await expect(gate.locator('.pick-why')).toBeHidden();
  await gate.locator('summary').click();
  await expect(gate.locator('.pick-why')).toContainText('First day to pick it raw: Tue 21\u00a0July.');
  await expect(gate.locator('.pick-why')).toContainText('soil, 9 days ago, peg 14, held');
  await expect(gate.locator('.pick-why')).toContainText('14\u00a0days from pour to picking');
  await expect(gate.locator('.pick-why')).toContainText('our caution, no source');
  const tunnel = page.locator('.pick-list > li', { hasText: 'cucumber' });
  await expect(tunnel).toContainText('Told twice?');
  await tunnel.locator('summary').click();
  await expect(tunnel).toContainText('20 to 38\u00a0L');
  expect(errors).toEqual([]);
});

test('no line asks for more than six words to be read', async ({ page }) => {
  await open(page);
  const lines = await page.locator('.pick-list summary').evaluateAll((all) =>
    all.flatMap((summary) => {
      // What stands at one height is one line to read.
      const rows: { top: number; text: string }[] = [];
      for (const part of summary.querySelectorAll('.pick-bed, .pick-answer, .pick-crop, .pick-last, .pick-twice')) {
        const own = [...part.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE);
        const text = own.map((node) => node.textContent).join('');
        const range = document.createRange();
        if (own[0] === undefined) continue;
        range.selectNodeContents(own[0]);
        const { top, height } = range.getBoundingClientRect();
        const row = rows.find((one) => Math.abs(one.top - (top + height / 2)) < 10);
        if (row) row.text += ` ${text}`;
        else rows.push({ top: top + height / 2, text });
      }
      return rows.map(({ text }) => text);
    }),
  );
  expect(lines.length).toBeGreaterThan(16);
  for (const line of lines) expect(line.match(/\p{L}+|\d+/gu)?.length ?? 0, line).toBeLessThanOrEqual(6);
});

/** Goes to another sheet without a reload: the demo garden is in memory alone. */
async function walkTo(page: Page, to: string): Promise<void> {
  await page.evaluate((path) => {
    history.pushState({}, '', path);
    dispatchEvent(new PopStateEvent('popstate'));
  }, to);
}

test('after a pour the list shows the right word and date at once', async ({ page }) => {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-06'));
  await page.goto('/pick');
  const gate = page.locator('.pick-list > li', { hasText: 'tomatoes' });
  await expect(gate.locator('.pick-answer')).toHaveText('Pick');
  await walkTo(page, '/can');
  await page.locator('.bed-row', { hasText: 'Gate' }).click();
  for (let can = 1; can <= 2; can++) {
    await expect(page.locator('#can-poured')).toHaveText(`Can ${can} is poured`);
    await page.locator('#can-poured').click();
  }
  await expect(page.locator('.poured-all')).toContainText('poured');
  await walkTo(page, '/pick');
  // 6 July and 14 days: held, eaten raw, on the soil.
  await expect(gate.locator('.pick-answer')).toHaveText('Wait till 20\u00a0July');
  await expect(gate.locator('.pick-last')).toHaveText('fed today');
});

test('a lettuce bed is never offered a spray, and no dose while it gets no feed', async ({ page }) => {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-06'));
  await page.goto('/can');
  await page.locator('.bed-row', { hasText: 'Shed' }).click();
  await expect(page.locator('.no-dose')).toBeVisible();
  for (const role of ['radio', 'button', 'link', 'checkbox'] as const)
    await expect(page.getByRole(role, { name: /spray|leaf|leaves/i })).toHaveCount(0);
});

test('food that is sold tightens the date', async ({ page }) => {
  await open(page);
  const gate = page.locator('.pick-list > li', { hasText: 'tomatoes' });
  await expect(gate.locator('.pick-answer')).toHaveText('Wait till 21\u00a0July');
  await walkTo(page, '/plot');
  const sold = page.getByLabel('Is any of the harvest sold or handed on?');
  await page.getByRole('heading', { level: 1, name: 'The plot' }).waitFor();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  await sold.selectOption('yes');
  await page.locator('form').filter({ has: sold }).getByRole('button', { name: 'Write it down' }).click();
  await walkTo(page, '/pick');
  // Fed on 7 July: a staked tomato waits 90 days, to 5 October.
  await expect(gate.locator('.pick-answer')).toHaveText('Wait till 5\u00a0Oct');
  await gate.locator('summary').click();
  await expect(gate.locator('.pick-why')).toContainText('Food is sold from here');
  await expect(gate.locator('.pick-why')).toContainText('21 CFR 112');
  await expect(page.locator('.pick-list > li', { hasText: 'kale' }).locator('.pick-answer')).toContainText('Wait till');
});

test('an empty phone is told what will stand here', async ({ page }) => {
  await page.goto('/pick');
  await expect(page.getByText('one word: pick, wait or cook')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Tell the beds of the plot' })).toBeVisible();
});

test('it prints with a blank column for the pencil, without blocks', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.pick-pencil').first()).toBeVisible();
  await expect(page.locator('#print-pick')).toBeHidden();
  expect((await page.pdf({ format: 'A4' })).byteLength).toBeGreaterThan(1000);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });
    test(`axe finds nothing; the picture is kept, ${colorScheme}`, async ({ page }) => {
      await open(page);
      await page.locator('summary').nth(6).click();
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
      await page.screenshot({
        path: `docs/screens/pick-390-${colorScheme}.png`,
        fullPage: true,
        animations: 'disabled',
      });
    });
  });
}
