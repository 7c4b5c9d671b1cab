// The prints in the medium they are made for: page sizes from the printed file, millimetres from the layout, the square
// code read back from a picture of it.

import { execFileSync } from 'node:child_process';
import { expect, type Page, test } from '@playwright/test';
import readQr from 'jsqr';
import { version } from '#engine/tables/version.ts';
import { madeWith } from '#words/en/version.ts';
import { findPdftotext } from '../../scripts/programs.mjs';

const PX_PER_MM = 96 / 25.4;
const POINTS_PER_MM = 72 / 25.4;

test.use({ viewport: { width: 1000, height: 1200 }, deviceScaleFactor: 3 });

async function openPrint(page: Page, which: 'tags' | 'can' | 'shed' | 'cress'): Promise<void> {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-06'));
  await page.emulateMedia({ media: 'screen' });
  await page.goto(`/print/${which}`);
  await page.getByRole('button', { name: 'Print' }).waitFor();
  await page.emulateMedia({ media: 'print' });
}

/** Sizes of the pages of the printed file, mm, as the file states them. */
async function printed(page: Page): Promise<readonly (readonly [number, number])[]> {
  const file = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const boxes = [...file.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
  const mm = (points: string | undefined) => Math.round(Number(points) / POINTS_PER_MM);
  return boxes.map(([, width, height]) => [mm(width), mm(height)] as const);
}

/** The text of the printed file as an independent reader finds it, runs of blanks folded. */
async function textOfPrint(page: Page): Promise<string> {
  const program = findPdftotext();
  if (program === undefined) throw new Error('pdftotext is missing: node scripts/ensure.mjs pdftotext');
  const file = await page.pdf({ preferCSSPageSize: true });
  return execFileSync(program, ['-layout', '-', '-'], { input: file, encoding: 'utf8' }).replaceAll(
    /[\s\u00a0]+/g,
    ' ',
  );
}

/** What the square code in a picture says. */
async function read(page: Page, picture: Buffer): Promise<string | undefined> {
  const { data, width, height } = await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext('2d');
    context?.drawImage(bitmap, 0, 0);
    const pixels = context?.getImageData(0, 0, bitmap.width, bitmap.height);
    return { data: [...(pixels?.data ?? [])], width: bitmap.width, height: bitmap.height };
  }, picture.toString('base64'));
  return readQr(Uint8ClampedArray.from(data), width, height)?.data;
}

test('jar tags: 62 by 40 mm each, the number 14 mm high, all of its text on it, and the code opens the peg', async ({
  page,
}) => {
  await openPrint(page, 'tags');
  const tags = page.locator('.tag');
  // Seven bottles of peg 14 and the drum of peg 15.
  await expect(tags).toHaveCount(8);
  for (const tag of await tags.all()) {
    const { high, inside } = await tag.evaluate((one) => {
      const boxes = [...one.querySelectorAll('.digit-ink')].map(
        (digit) => (digit as SVGGraphicsElement).getBBox().height,
      );
      return { high: Math.min(...boxes), inside: one.scrollHeight <= one.clientHeight + 1 };
    });
    // The drawing's units are millimetres: its width in mm and its viewBox agree.
    expect(high).toBeGreaterThanOrEqual(14);
    expect(inside).toBe(true);
  }
  const box = await tags.first().locator('.tag-digits').boundingBox();
  expect((box?.height ?? 0) / PX_PER_MM).toBeGreaterThanOrEqual(14);
  const first = tags.first();
  await expect(first).toContainText('Plant feed: not a drink');
  await expect(first).toContainText('use first by');
  await expect(first).toContainText('vent 7\u00a0July');
  await expect(first).toContainText('not on leaves of G, S, T, R, P (eaten raw)');
  const address = await read(page, await first.locator('.tag-qr').screenshot());
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/peg\/[0-9a-f-]{36}$/);
  expect(await printed(page)).toEqual(Array.from({ length: 8 }, () => [62, 40]));
  await page.emulateMedia({ media: 'screen' });
  await page.goto(address ?? '');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('14');
});

test('the text of each print reads back from its PDF', async ({ page }) => {
  await openPrint(page, 'tags');
  const tags = await textOfPrint(page);
  expect(tags).toContain('not a drink');
  expect(tags).toContain('use first by');
  await openPrint(page, 'can');
  expect(await textOfPrint(page)).toMatch(/10 L/);
  await openPrint(page, 'shed');
  const shed = await textOfPrint(page);
  for (const word of ['Gate', 'Tunnel', 'Pick', 'Cook', '15']) expect(shed).toContain(word);
});

test('every print, and a sheet on paper, names the tables and the formulas in its small print', async ({ page }) => {
  const small = madeWith(version).replaceAll('\u00a0', ' ');
  for (const which of ['tags', 'can', 'shed', 'cress'] as const) {
    await openPrint(page, which);
    await expect(page.locator('.made-with').first()).toBeVisible();
    expect(await textOfPrint(page)).toContain(small);
  }
  await page.emulateMedia({ media: 'screen' });
  await page.goto('/pick');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.locator('.made-with')).toBeHidden();
  await page.emulateMedia({ media: 'print' });
  expect(await textOfPrint(page)).toContain(small);
});

test('the can card: one A6 page with three cans and nothing to touch', async ({ page }) => {
  await openPrint(page, 'can');
  for (const dose of ['171\u00a0mL', '222\u00a0mL', '244\u00a0mL'])
    await expect(page.locator('tbody')).toContainText(dose);
  await expect(page.getByRole('button')).toHaveCount(0);
  const fits = await page.locator('.wall-card').evaluate((card) => card.scrollHeight <= card.clientHeight + 1);
  expect(fits).toBe(true);
  expect(await printed(page)).toEqual([[105, 148]]);
});

test('the shed sheet: one A4 page in black on white, with room for pencil', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openPrint(page, 'shed');
  const sheet = page.locator('.shed-sheet');
  await expect(sheet).toContainText('Can I take this home?');
  await expect(sheet.locator('tbody .pencil')).toHaveCount(8 + 1);
  for (const one of await sheet.locator('tbody .pencil').all()) await expect(one).toBeEmpty();
  await expect(sheet).toContainText('Poison line, to be written in:');
  await expect(sheet).toContainText('Sat 19\u00a0Sept');
  const colours = await sheet.evaluate((one) => {
    const style = getComputedStyle(one);
    return [style.color, style.backgroundColor];
  });
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  expect(await printed(page)).toEqual([[210, 297]]);
});
