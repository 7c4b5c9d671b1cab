// What holds on every sheet of the app, on a phone, by day and by night paper: the accessibility scan is clean, nothing
// scrolls sideways, every control can be reached and has a name, and the browser reports no error.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors, PRINTS, SHEETS } from './sheet.ts';

const OF_A_PEG = ['', '/look', '/strain'];

/** The sheet of one bed, by the link that stands at its name. */
async function bedOf(page: Page): Promise<string> {
  await page.goto('/got');
  const bed = await page.locator('a[href^="/got/"]').first().getAttribute('href');
  expect(bed).toMatch(/^\/got\/./);
  return bed ?? '';
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every sheet, ${colorScheme}: axe is content, nothing scrolls sideways, no error`, async ({
    browser,
    baseURL,
  }) => {
    test.setTimeout(300_000);
    const context = await browser.newContext({
      colorScheme,
      viewport: { width: 390, height: 844 },
      baseURL: baseURL ?? '',
    });
    const page = await context.newPage();
    const errors = gatherErrors(page);
    await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-06-19'));
    await page.goto('/');
    const peg = await page.locator('a[href^="/peg/"]').first().getAttribute('href');
    expect(peg).toMatch(/^\/peg\/./);
    const bed = await bedOf(page);
    for (const address of [...SHEETS, bed, ...OF_A_PEG.map((rest) => `${peg}${rest}`), ...PRINTS]) {
      await page.goto(address);
      await page.locator('h1').first().waitFor();
      await page.waitForLoadState('networkidle');
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${address} ${id}: ${nodes[0]?.html}`)).toEqual([]);
      // 7:1 for figures and small text alike, 4.5:1 for large text (WCAG 2.2, 1.4.6).
      const faint = (await new AxeBuilder({ page }).withRules(['color-contrast-enhanced']).analyze()).violations;
      expect(faint.map(({ id, nodes }) => `${address} ${id}: ${nodes[0]?.html}`)).toEqual([]);
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (!address.startsWith('/print/')) expect(wide, `${address} scrolls sideways`).toBeLessThanOrEqual(0);
    }
    expect(errors).toEqual([]);
    await context.close();
  });
}

test('keyboard alone walks through every sheet: each stop of Tab is seen and named', async ({ page }) => {
  test.setTimeout(240_000);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-06-19'));
  await page.goto('/');
  const peg = await page.locator('a[href^="/peg/"]').first().getAttribute('href');
  const bed = await bedOf(page);
  for (const address of [...SHEETS, bed, ...OF_A_PEG.map((rest) => `${peg}${rest}`)]) {
    await page.goto(address);
    await page.locator('h1').first().waitFor();
    let stops = 0;
    for (; stops < 12; stops++) {
      await page.keyboard.press('Tab');
      const stop = await page.evaluate(() => {
        const at = document.activeElement;
        if (at === null || at === document.body) return undefined;
        const named = at.getAttribute('aria-label') ?? at.textContent ?? '';
        const label =
          at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.[0]?.textContent : '';
        const shown = getComputedStyle(at).outlineStyle !== 'none' || at.matches('input[type=radio], input[type=file]');
        return {
          name: (named || label || at.getAttribute('placeholder') || '').trim(),
          shown,
          tag: at.outerHTML.slice(0, 120),
        };
      });
      if (stop === undefined) break;
      expect(stop.name, `${address}: ${stop.tag}`).not.toBe('');
      expect(stop.shown, `${address} shows no focus on ${stop.tag}`).toBe(true);
    }
    expect(stops, `${address} has nothing to reach`).toBeGreaterThan(3);
  }
});
