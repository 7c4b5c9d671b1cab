// Colours that the reader forces on every page (a high-contrast setting): whatever paper was chosen, each drawn line and figure
// stands off its ground by 7:1. A browser forces words, and leaves the lines of a drawing as their style has them.

import { expect, type Page, test } from '@playwright/test';

test.use({ viewport: { width: 390, height: 844 } });

/** The least contrast among all drawn strokes and figures of the page against the ground it stands on, and which one it is. */
function leastContrast(page: Page): Promise<{ readonly ratio: number; readonly what: string; readonly count: number }> {
  return page.evaluate(() => {
    const channels = (colour: string) => (/rgba?\(([^)]+)\)/.exec(colour)?.[1] ?? '').split(/[ ,/]+/).map(Number);
    // Relative luminance and contrast as WCAG 2.2 defines them.
    const luminance = (colour: string) => {
      const [r = 0, g = 0, b = 0] = channels(colour).map((c) =>
        c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
      );
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ground = (from: Element): string => {
      for (let at: Element | null = from; at !== null; at = at.parentElement) {
        const colour = getComputedStyle(at).backgroundColor;
        const alpha = channels(colour)[3];
        if (alpha === undefined || alpha > 0) return colour;
      }
      return 'rgb(255, 255, 255)';
    };
    let least = { ratio: 21, what: 'nothing drawn', count: 0 };
    // A digit's knocked-out edge is of the paper's own colour.
    for (const drawn of document.querySelectorAll('svg path:not(.digit-paper), svg line, svg polyline, svg text')) {
      const box = drawn.getBoundingClientRect();
      if (box.width + box.height === 0 || drawn.closest('defs') !== null) continue;
      const { stroke, fill } = getComputedStyle(drawn);
      const colour = drawn.tagName === 'text' ? fill : stroke;
      if (!colour.startsWith('rgb')) continue;
      const [a, b] = [luminance(colour), luminance(ground(drawn))];
      const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      least = {
        ...(ratio < least.ratio ? { ratio, what: drawn.outerHTML.slice(0, 100) } : least),
        count: least.count + 1,
      };
    }
    return least;
  });
}

for (const colorScheme of ['light', 'dark'] as const) {
  for (const paper of ['day', 'night'] as const) {
    test(`forced ${colorScheme} colours with ${paper} paper: dose, line and print keep their lines`, async ({
      page,
    }) => {
      await page.addInitScript((kept) => {
        sessionStorage.setItem('tilthwright.demo-day', '2026-07-06');
        localStorage.setItem('tilthwright.paper', kept);
      }, paper);
      await page.emulateMedia({ forcedColors: 'active', colorScheme });
      await page.goto('/can');
      await page.locator('.bed-row', { hasText: 'Gate' }).click();
      await page.locator('.dose-figure').waitFor();
      const dose = await leastContrast(page);
      expect(dose.count).toBeGreaterThan(10);
      expect(dose.ratio, dose.what).toBeGreaterThanOrEqual(7);
      for (const address of ['/', '/print/can', '/print/tags']) {
        await page.goto(address);
        await page.locator('svg path').first().waitFor({ state: 'attached' });
        await page.waitForLoadState('networkidle');
        const least = await leastContrast(page);
        expect(least.ratio, `${address}: ${least.what}`).toBeGreaterThanOrEqual(7);
      }
    });
  }
}
