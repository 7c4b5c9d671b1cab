// The look at a bucket: at most five touches for any look, the sentence that follows, what is kept, and for whom.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openDemo, pegPath } from './demo-peg.ts';
import { segmentsOf, sizeOf, withExif } from './jpeg.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

/** The day before peg 15 is looked at on day 9: it stands at 5.7, 11 °C. */
const DAY = '2026-06-19';

async function openLook(page: Page, by?: string, on = DAY, peg = 15): Promise<void> {
  await openDemo(page, on, by);
  await page.goto(pegPath(peg, '/look'));
  await page.locator('.asking').waitFor();
}

const strip = (page: Page, name: string) => page.locator(`#strip-${name}`);
const block = (page: Page, of: string, name: string | RegExp) =>
  strip(page, of).getByRole('button', { name, exact: typeof name === 'string' });

/** Touches a look takes from an open sheet to its sentence, counted by the page. */
async function touches(page: Page, steps: readonly (readonly [of: string, name: string | RegExp])[]): Promise<number> {
  await page.evaluate(() => {
    const seen = window as unknown as { touched: number };
    seen.touched = 0;
    addEventListener('pointerdown', () => seen.touched++, { capture: true });
  });
  for (const [of, name] of steps) await block(page, of, name).click();
  await page.locator('.peg-verdict').waitFor();
  return page.evaluate(() => (window as unknown as { touched: number }).touched);
}

test('no look takes more than five touches, whatever was read, smelled, seen and felt', async ({ page }) => {
  const errors = gatherErrors(page);
  const looks: readonly (readonly (readonly [string, string | RegExp])[])[] = [
    [
      ['sour', /^meter, 5/],
      ['sour', 'Meter 5.1'],
      ['nose', 'grassy'],
      ['top', 'clear'],
      ['warmth', /^11 °C/],
    ],
    [
      ['warmth', /about 30/],
      ['top', 'larvae'],
      ['nose', 'sewage'],
      ['sour', /^meter, 7/],
      ['sour', '8 or over'],
    ],
    [
      ['sour', 'strip 4.0'],
      ['nose', 'cannot smell'],
      ['top', 'coloured fuzz'],
      ['warmth', /^13 °C/],
    ],
  ];
  await openLook(page);
  for (const [i, steps] of looks.entries()) {
    if (i > 0) await page.reload();
    await page.locator('.asking').waitFor();
    expect(await touches(page, steps)).toBeLessThanOrEqual(5);
    await expect(page.locator('.next-look, .told')).not.toHaveCount(0);
  }
  expect(errors).toEqual([]);
});

test('one sentence with reasons, what would change it and the next look; taken back, the strips are there again', async ({
  page,
}) => {
  await openLook(page);
  await touches(page, [
    ['sour', /^meter, 5/],
    ['sour', 'Meter 5.1'],
    ['nose', 'grassy'],
    ['top', 'clear'],
    ['warmth', /^11 °C/],
  ]);
  await expect(page.locator('.peg-verdict')).toHaveText('Peg 15 is slow, not lost.');
  await expect(page.locator('.told-head')).toBeFocused();
  await expect(page.locator('.seen')).toContainText('by meter, nose grassy, top clear');
  await expect(page.locator('.told')).toContainText('Cold makes it slow');
  await expect(page.locator('.told')).toContainText('A foul smell would make it doubtful');
  // Slow is looked at again after three days: 19 + 3.
  await expect(page.locator('.next-look')).toContainText('Mon 22\u00a0June');
  const line = page.getByRole('img', { name: /^Sour line of peg 15/ });
  await expect(line).toHaveAccessibleName(/pH 6\.9 ± 0\.1.*pH 5\.1 ± 0\.1/);
  await expect(page.getByRole('table', { name: 'Readings of peg 15' }).getByRole('row')).toHaveCount(5);
  await page.locator('#take-back').click();
  await expect(page.locator('.asking')).toBeVisible();
  await expect(strip(page, 'sour')).toContainText('last 5.7 by meter');
});

test('what is left out is skipped; a reload in the middle keeps what was answered', async ({ page }) => {
  await openLook(page);
  await expect(page.locator('#write-down')).toHaveAttribute('aria-disabled', 'true');
  await page.locator('#write-down').click({ force: true });
  await expect(page.locator('.asking')).toBeVisible();
  await block(page, 'sour', 'strip 5.0').click();
  await block(page, 'nose', 'sour').click();
  await page.reload();
  await expect(block(page, 'sour', 'strip 5.0')).toHaveAttribute('aria-pressed', 'true');
  await strip(page, 'nose')
    .getByRole('button', { name: /^leave out/ })
    .click();
  await expect(page.locator('#write-down')).toHaveText('Write it down, nose, top and warmth skipped');
  await page.locator('#write-down').click();
  await expect(page.locator('.seen')).toHaveText('pH\u00a05.0\u00a0±\u00a00.3 by strip.');
});

test('a strip read by somebody else is theirs, and the switch stays for the next look', async ({ page }) => {
  await openLook(page);
  await page.getByRole('switch', { name: 'Somebody else reads it' }).click();
  await block(page, 'sour', 'Can').click();
  await block(page, 'sour', 'strip 5.0').click();
  await page.locator('#write-down').click();
  await expect(page.locator('.seen')).toContainText('read by Can');
  await page.getByRole('button', { name: 'Another look' }).click();
  await expect(page.getByRole('switch', { name: 'read by Can' })).toBeChecked();
});

test('a nose that cannot smell is told to ask a second one', async ({ page }) => {
  await openLook(page);
  await block(page, 'sour', 'strip 5.0').click();
  await block(page, 'nose', 'cannot smell').click();
  await page.locator('#write-down').click();
  await expect(page.locator('.told-head')).toContainText('ask a second person');
});

test('a keyholder kept with German looks in German', async ({ page }) => {
  await openLook(page, 'Trowel');
  await expect(page.locator('.look')).toHaveAttribute('lang', 'de');
  await touches(page, [
    ['sour', /^Messgerät, 5/],
    ['sour', 'Messgerät 5,1'],
    ['nose', 'grasig'],
    ['top', 'klar'],
    ['warmth', /^11 °C/],
  ]);
  await expect(page.locator('.peg-verdict')).toHaveText('Pflock 15 ist langsam, nicht verloren.');
  await expect(page.locator('.next-look')).toContainText('Mo 22.\u00a0Juni');
});

test('a photo is kept small and without what the camera wrote beside it, three at most', async ({ page }) => {
  // Every picture the page reads, the kept one as it comes out of the store among them.
  await page.addInitScript(() => {
    const seen: Blob[] = [];
    Object.assign(window, { readPictures: seen });
    const read = window.createImageBitmap.bind(window);
    window.createImageBitmap = ((source: ImageBitmapSource, ...more: [ImageBitmapOptions?]) => {
      if (source instanceof Blob) seen.push(source);
      return read(source, ...more);
    }) as typeof window.createImageBitmap;
  });
  await openLook(page);
  await block(page, 'sour', 'strip 5.0').click();
  await page.locator('#write-down').click();
  const drawn = await page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 2400;
    canvas.height = 1200;
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg'));
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
  });
  const photo = withExif(Uint8Array.from(drawn));
  expect(segmentsOf(photo)).toContain(0xe1);
  for (let count = 1; count <= 3; count++) {
    await page
      .locator('.photo input')
      .setInputFiles({ name: 'look.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(photo) });
    await expect(page.locator('.photos canvas')).toHaveCount(count);
  }
  await expect(page.locator('.photo input')).toHaveCount(0);
  // Each photo is read twice: the file, then what was kept of it.
  await expect.poll(() => page.evaluate(() => (window as unknown as Pictures).readPictures.length)).toBe(6);
  const kept = await page.evaluate(async () => {
    const blobs = (window as unknown as Pictures).readPictures.slice(1, 2);
    return [...new Uint8Array((await blobs[0]?.arrayBuffer()) ?? new ArrayBuffer(0))];
  });
  expect(segmentsOf(Uint8Array.from(kept))).not.toContain(0xe1);
  expect(Buffer.from(kept).toString('latin1')).not.toContain('Exif');
  expect(Buffer.from(kept).toString('latin1')).not.toContain('51.4779N');
  expect(sizeOf(Uint8Array.from(kept))).toEqual({ width: 1600, height: 800 });
});

test('why and how stand beside it, and axe finds nothing in light or dark', async ({ page }) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await openLook(page);
    await scan(page);
    await page.getByRole('button', { name: 'How a look is done' }).click();
    await expect(page.getByRole('dialog').getByRole('listitem')).toHaveCount(5);
    await scan(page);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: /^why\?/ }).click();
    await expect(page.getByRole('dialog')).toContainText('day by which it ought to be at pH 5.0');
    await page.keyboard.press('Escape');
    await block(page, 'sour', 'strip 5.0').click();
    await page.locator('#write-down').click();
    await page.locator('.peg-verdict').waitFor();
    await scan(page);
  }
});

for (const width of [360, 390, 1280]) {
  test(`every target of the look is 64 px each way and 12 px from the next at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    await openLook(page);
    await block(page, 'nose', 'sour').click();
    const check = async () => {
      const boxes = await page.locator('.look button:visible, .look a:visible').evaluateAll((all) =>
        all.map((one) => {
          const { left, right, top, bottom } = one.getBoundingClientRect();
          return { name: one.textContent ?? '', left, right, top: top + scrollY, bottom: bottom + scrollY };
        }),
      );
      const small = boxes.filter((one) => one.right - one.left < 63.9 || one.bottom - one.top < 63.9);
      expect(small.map(({ name }) => name)).toEqual([]);
      // The ink block floats over the strips: what scrolls under it is covered, not beside it.
      const still = boxes.filter(({ name }) => !name.startsWith('Write it down'));
      const close = still.flatMap((a, i) =>
        still.slice(i + 1).flatMap((b) => {
          const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
          const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
          return Math.max(across, down) < 11.9 ? [`${a.name} and ${b.name}`] : [];
        }),
      );
      expect(close).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    };
    await check();
    await block(page, 'sour', /^meter, 7/).click();
    await check();
  });
}

test('the keyboard alone takes a look', async ({ page }) => {
  await openLook(page);
  await block(page, 'sour', 'strip 5.0').focus();
  await page.keyboard.press('Enter');
  await page.locator('#write-down').focus();
  await page.keyboard.press('Space');
  await expect(page.locator('.peg-verdict')).toBeVisible();
});

test('a peg that is not there, and one that was emptied, say so and lead on', async ({ page }) => {
  await openDemo(page, '2026-06-26');
  await page.goto('/peg/nowhere/look');
  await expect(page.locator('.no-peg')).toContainText('No peg of this plot has that address');
  await page.goto(pegPath(14, '/look'));
  await expect(page.locator('.no-peg')).toContainText('Peg 14 was emptied on Sat 20\u00a0June');
});

interface Pictures {
  readonly readPictures: Blob[];
}

async function scan(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}
