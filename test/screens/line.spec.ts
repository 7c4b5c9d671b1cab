// The line from scraps to beds as a grower meets it: an empty plot, the demo garden on a middle day, ways to every
// sheet, and its pictures.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

const MIDDLE_DAY = '2026-06-15';

async function openLine(page: Page, on?: string): Promise<void> {
  if (on !== undefined) {
    await page.addInitScript((day) => {
      if (sessionStorage.getItem('tilthwright.demo-day') === null) sessionStorage.setItem('tilthwright.demo-day', day);
    }, on);
  }
  await page.goto('/');
  await page.getByRole('heading', { level: 1 }).waitFor();
}

for (const size of [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
] as const) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test.describe(`${size.width} px, ${colorScheme}`, () => {
      test.use({ viewport: size, colorScheme, contextOptions: { reducedMotion: 'reduce' } });

      test('the demo on a middle day: axe is content, nothing scrolls sideways, the picture is kept', async ({
        page,
      }) => {
        const errors = gatherErrors(page);
        await openLine(page, MIDDLE_DAY);
        await page.getByRole('link', { name: /^Peg 15: souring/ }).waitFor();
        const found = await new AxeBuilder({ page }).analyze();
        expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(size.width);
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        await page.setViewportSize({ width: size.width, height });
        await page.screenshot({ path: `docs/screens/line-${size.width}-${colorScheme}.png`, animations: 'disabled' });
        expect(errors).toEqual([]);
      });
    });
  }

  test(`${size.width} px: words of the line keep within the sheet, and links are 64 px and apart`, async ({ page }) => {
    await page.setViewportSize(size);
    await openLine(page, MIDDLE_DAY);
    await page.getByRole('link', { name: /^Peg 15/ }).waitFor();
    const outside = await page
      .locator('.line-drawing text')
      .evaluateAll(
        (all, limit) => all.filter((one) => one.getBoundingClientRect().right > limit).map((one) => one.textContent),
        size.width,
      );
    expect(outside).toEqual([]);
    const hits = await page.locator('.line-link > .line-hit:first-child').evaluateAll((all) =>
      all.map((one) => {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        return { left, top, right, bottom };
      }),
    );
    expect(hits.length).toBe(6);
    for (const [i, a] of hits.entries()) {
      expect(Math.min(a.right - a.left, a.bottom - a.top)).toBeGreaterThanOrEqual(63.9);
      for (const b of hits.slice(i + 1))
        expect(Math.max(b.left - a.right, a.left - b.right, b.top - a.bottom, a.top - b.bottom)).toBeGreaterThanOrEqual(
          11.5,
        );
    }
  });
}

test.describe('at 390 px', () => {
  test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

  test('an empty plot says what will stand here; the demo opens, steps a day and leaves no trace', async ({ page }) => {
    await openLine(page);
    await expect(page.getByText('Here a line will run from your scraps')).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page.getByRole('button', { name: 'Show me the demo garden' }).click();
    await expect(page.getByRole('heading', { name: 'Sedge Corner' })).toBeVisible();
    await expect(page.locator('.aside')).toHaveText('Tue 7\u00a0July');
    await page.getByRole('button', { name: 'A day earlier' }).click();
    await expect(page.locator('.aside')).toHaveText('Mon 6\u00a0July');
    await expect(page.locator('.title-block')).toContainText('demo, all invented');
    await page.getByRole('button', { name: 'Leave the demo' }).click();
    await expect(page.getByText('Here a line will run from your scraps')).toBeVisible();
  });

  test('each stretch and each peg leads to its sheet without loading the page anew', async ({ page }) => {
    await openLine(page, MIDDLE_DAY);
    await page.evaluate(() => Object.assign(window, { sameVisit: true }));
    for (const [name, address] of [
      [/^Scraps/, /\/weigh-in$/],
      [/^Peg 14: souring/, /\/peg\/[0-9a-f-]+$/],
      [/^Bottle/, /\/shelf$/],
      [/^Can/, /\/can$/],
      [/^Bed/, /\/pick$/],
    ] as const) {
      await page.locator('.line-drawing').getByRole('link', { name }).locator('.line-hit').first().click();
      await expect(page).toHaveURL(address);
      await page.goBack();
      await page.locator('.line-drawing').waitFor();
    }
    expect(await page.evaluate(() => 'sameVisit' in window)).toBe(true);
  });

  test('what wants a hand is counted, listed and led to', async ({ page }) => {
    await openLine(page, '2026-07-14');
    await expect(page.locator('.hands-count')).toHaveText('2 things want a hand today');
    await page.getByRole('link', { name: /let the gas out/ }).click();
    await expect(page).toHaveURL(/\/shelf$/);
  });
});
