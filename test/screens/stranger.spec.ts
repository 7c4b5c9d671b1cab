// Every sheet as a stranger meets it: names of thirty letters and more, no tags, from 320 to 1280 px. Nothing is printed over
// anything else, and nothing runs out of the sheet sideways.

import { expect, test } from '@playwright/test';
import { gatherErrors, PRINTS, SHEETS } from './sheet.ts';
import { openStranger, overprinted } from './stranger.ts';

for (const [width, height] of [
  [320, 640],
  [390, 844],
  [1280, 800],
] as const) {
  test(`long names, no tags, ${width} px: no text over text, nothing sideways`, async ({ page }) => {
    test.setTimeout(300_000);
    await page.setViewportSize({ width, height });
    const errors = gatherErrors(page);
    await openStranger(page, '2026-07-06');
    await page.goto('/');
    const linked = async (from: string, to: string) => {
      await page.goto(from);
      return (await page.locator(`a[href^="${to}"]`).first().getAttribute('href')) ?? '';
    };
    const peg = await linked('/', '/peg/');
    const bed = await linked('/got', '/got/');
    const can = await linked('/can', '/can/');
    for (const of of [peg, bed, can]) expect(of).toMatch(/^\/\w+\/./);
    const faults: string[] = [];
    for (const address of [...SHEETS, ...PRINTS, peg, `${peg}/look`, `${peg}/strain`, bed, can]) {
      await page.goto(address);
      await page.locator('h1').first().waitFor();
      await page.waitForLoadState('networkidle');
      faults.push(...(await overprinted(page)).map((fault) => `${address}: ${fault}`));
      const beyond = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (!address.startsWith('/print/') && beyond > 0) faults.push(`${address}: ${beyond} px sideways`);
    }
    expect(faults).toEqual([]);
    expect(errors).toEqual([]);
  });
}
