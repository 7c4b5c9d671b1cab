// The weigh-in for every hand and eye: axe in light and dark at both widths, keyboard alone, 200 % zoom, targets
// of 64 px, contrast of figures at 7:1, a phone lying on its side; and the pictures of docs/screens.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors, openSheet, overfill, verdictText } from './sheet.ts';

const SIZES = [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
] as const;

for (const size of SIZES) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test.describe(`${size.width} px, ${colorScheme}`, () => {
      test.use({ viewport: size, colorScheme, contextOptions: { reducedMotion: 'reduce' } });

      test('axe finds nothing on the empty sheet, the overfull pail and a working', async ({ page }) => {
        await openSheet(page);
        await scan(page);
        await overfill(page);
        await scan(page);
        await page
          .getByRole('button', { name: /^why\?/ })
          .first()
          .click();
        await page.getByRole('dialog').waitFor();
        await scan(page);
      });

      test('figures stand out from the paper at 7 to 1 or more', async ({ page }) => {
        await openSheet(page);
        await overfill(page);
        const contrasts = await figureContrasts(page);
        expect(contrasts.length).toBeGreaterThan(8);
        for (const one of contrasts) expect(one.ratio, one.text).toBeGreaterThanOrEqual(7);
      });

      test('the picture of the sheet is kept', async ({ page }) => {
        const errors = gatherErrors(page);
        await openSheet(page);
        await overfill(page);
        await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        await page.setViewportSize({ width: size.width, height });
        await page.evaluate(() => scrollTo(0, 0));
        await page.screenshot({
          path: `docs/screens/weigh-in-${size.width}-${colorScheme}.png`,
          animations: 'disabled',
        });
        expect(errors).toEqual([]);
      });
    });
  }

  test.describe(`${size.width} px`, () => {
    test.use({ viewport: size });

    test('every target is 64 px or more each way, and two of a row stand 12 px apart', async ({ page }) => {
      await openSheet(page);
      await overfill(page);
      const small = await page
        .locator('button, select, input:not([type=radio]), label.block, a, summary')
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
      const gaps = await page.locator('.row-keys, .row-weight, .choices').evaluateAll((rows) =>
        rows
          .filter((row) => row.getBoundingClientRect().width > 0)
          .flatMap((row) =>
            [...row.children].slice(1).map((next, i) => {
              const a = row.children[i]?.getBoundingClientRect();
              const b = next.getBoundingClientRect();
              return a ? Math.max(b.left - a.right, b.top - a.bottom) : 0;
            }),
          ),
      );
      for (const gap of gaps) expect(gap).toBeGreaterThanOrEqual(11.9);
    });

    test('text is 18 px or more everywhere', async ({ page }) => {
      await openSheet(page);
      await overfill(page);
      const small = await page.locator('body *').evaluateAll((all) =>
        all
          .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
          .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < 18)
          .map((one) => `${one.tagName} ${one.textContent?.slice(0, 40)}`),
      );
      expect(small).toEqual([]);
    });
  });
}

// 200 % zoom of a 1280 px window leaves 640 CSS px; of a 640 px window, 320.
for (const width of [640, 320]) {
  test(`at 200 % zoom (${width} px left) nothing scrolls sideways and nothing is cut off`, async ({ page }) => {
    await page.setViewportSize({ width, height: 400 });
    await openSheet(page);
    await overfill(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    const outside = await page
      .locator('button, input, select, h2, p')
      .evaluateAll(
        (all, limit) =>
          all.filter((one) => one.getBoundingClientRect().right > limit + 1).map((one) => one.textContent),
        width,
      );
    expect(outside).toEqual([]);
  });
}

test('the keyboard alone reaches a fit, steps a weight, takes a cure and takes it back', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openSheet(page);
  const tabTo = async (name: RegExp) => {
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const one = document.activeElement as HTMLElement | null;
        const label = one?.id ? document.querySelector(`label[for="${one.id}"]`)?.textContent : '';
        return `${one?.getAttribute('aria-label') ?? ''} ${label ?? ''} ${one?.textContent ?? ''}`.trim();
      });
      if (name.test(here)) return;
    }
    throw new Error(`no way by Tab to ${name}`);
  };
  await tabTo(/^Vessel holds/);
  await page.keyboard.type('12 L');
  await tabTo(/^Find one by name/);
  await page.keyboard.type('clippings, fresh');
  await page.keyboard.press('Enter');
  await page.keyboard.type('3 kg');
  await tabTo(/^Water$/);
  await page.keyboard.type('8 L');
  // 8 + 3 × 1.0 = 11.0 L against 9.0: 2.0 L too much
  await expect(page.locator('.say')).toContainText('too much');
  expect(await verdictText(page)).toBe('2.0 L too much');
  await page.locator('#vessel-volume').focus();
  await tabTo(/grass clippings, fresh, .* less/);
  await page.keyboard.press('Space');
  expect(await verdictText(page)).toBe('1.9 L too much');
  await tabTo(/Leave out/);
  await page.keyboard.press('Enter');
  await expect(page.locator('.say')).toContainText('to spare');
  await page.keyboard.press('Enter');
  expect(await verdictText(page)).toBe('1.9 L too much');
});

test('the large switch turns the paper, whatever the system says', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await openSheet(page);
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const day = await paper();
  const turn = page.getByRole('switch', { name: 'Night paper' });
  await turn.click();
  await expect(turn).toBeChecked();
  const night = await paper();
  expect(night).not.toBe(day);
  await page.emulateMedia({ colorScheme: 'dark' });
  await turn.click();
  expect(await paper()).toBe(day);
});

test.describe('a phone lying on its side', () => {
  test.use({ viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true });

  test('shows the pail and the next weight to reach, and gives the whole sheet back on request', async ({ page }) => {
    await openSheet(page);
    await page.getByRole('button', { name: 'Show the whole sheet' }).click();
    await overfill(page);
    await page.getByRole('button', { name: 'Lay it by the scale' }).click();
    await expect(page.getByRole('heading', { name: 'Which vessel?' })).toBeHidden();
    await expect(page.getByRole('img', { name: /cut open/ })).toBeVisible();
    await expect(page.locator('.scale-figure')).toHaveText(/^7.L$/);
    await page.getByRole('button', { name: 'It is in; next' }).click();
    await expect(page.locator('.scale-figure')).toHaveText(/^250.g$/);
    const box = await page.locator('.scale-figure').boundingBox();
    expect(box?.height).toBeGreaterThan(80);
    expect((box?.y ?? 999) + (box?.height ?? 0)).toBeLessThan(390);
  });
});

async function scan(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`)).toEqual(
    [],
  );
}

/** Contrast (WCAG 2.2 relative luminance) of every figure against the paper under it. */
async function figureContrasts(page: Page): Promise<{ text: string; ratio: number }[]> {
  return page
    .locator(
      '.say b, .say, .entry, .foot-say b, svg .figure, svg .figure-accent, svg text, .fact p, .cure b, .caution p:first-child',
    )
    .evaluateAll((all) => {
      const channel = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
      const light = (color: string) => {
        const [r = 0, g = 0, b = 0] = (color.match(/[\d.]+/g) ?? []).map((part) => channel(Number(part) / 255));
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const paper = light(getComputedStyle(document.body).backgroundColor);
      return all.map((one) => {
        const style = getComputedStyle(one);
        const ink = light(one instanceof SVGElement ? style.fill : style.color);
        return {
          text: (one.textContent || (one as HTMLInputElement).value || '').trim(),
          ratio: (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05),
        };
      });
    });
}
