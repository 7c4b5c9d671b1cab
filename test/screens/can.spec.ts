// The can card at the tap: in the demo garden on the day before the first round, and on a phone that knows nothing yet.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

/** The demo garden on a date, without a touch of the own record. */
async function demo(page: Page, on = '2026-07-06'): Promise<void> {
  await page.addInitScript((day) => {
    if (sessionStorage.getItem('tilthwright.demo-day') === null) sessionStorage.setItem('tilthwright.demo-day', day);
  }, on);
}

async function openBed(page: Page, name: string): Promise<void> {
  await page.goto('/can');
  await page.locator('.bed-row', { hasText: name }).click();
  await page.locator('.bed-head').waitFor();
}

test('one bed is poured can by can, half of the last, written down once, and taken back', async ({ page }) => {
  const errors = gatherErrors(page);
  await demo(page);
  await openBed(page, 'Gate');
  await expect(page.locator('.bed-head .big')).toHaveText('11.5\u00a0L');
  await expect(page.locator('.dose-figure')).toHaveText('244\u00a0mL');
  await expect(page.locator('.fill-to')).toContainText('10\u00a0L');
  await expect(page.getByText('Use today; tip the rest on soil.')).toBeVisible();
  await expect(page.locator('.can-sheet input[type=text], .can-sheet textarea')).toHaveCount(0);

  await page.getByRole('button', { name: 'Can 1 is poured' }).first().click();
  await expect(page.locator('.fill-to')).toContainText('1.5\u00a0L');
  // A reload in the middle keeps the can that was poured.
  await page.reload();
  await expect(page.locator('#can-poured')).toHaveText('Can 2 is poured');
  await page.locator('#can-half').click();
  // 10 L and half of 1.52 L; 11.52 L / 41 of concentrate left the bottle.
  await expect(page.locator('.poured-all')).toContainText('10.8\u00a0L poured, with 281\u00a0mL');
  await page.locator('#take-back').click();
  await expect(page.locator('#can-poured')).toHaveText('Can 1 is poured');
  expect(errors).toEqual([]);
});

test('no dose: the lettuce bed never, the tunnel until its picking is 14 days away', async ({ page }) => {
  await demo(page);
  await openBed(page, 'Shed');
  await expect(page.locator('.no-dose')).toContainText('No dose');
  await expect(page.locator('.dose, #can-poured, .cans')).toHaveCount(0);
  await openBed(page, 'Tunnel');
  await expect(page.locator('.no-dose')).toContainText('picked in 7\u00a0days');
  await page.getByRole('radio', { name: 'in 14 days or more' }).check();
  await expect(page.locator('.bed-head .big')).toHaveText('20\u00a0L');
});

test('dry soil holds and the dose stays; why and how stand beside it', async ({ page }) => {
  await demo(page);
  await openBed(page, 'Middle');
  await page.getByRole('radio', { name: 'dry', exact: true }).check();
  await expect(page.locator('.holds')).toContainText('The soil is dry');
  await expect(page.locator('.dose-figure')).toHaveText('244\u00a0mL');
  await page.getByRole('button', { name: 'why? the dose' }).click();
  await expect(page.getByRole('dialog')).toContainText('plants in a litre poured');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'How a can is mixed and poured' }).click();
  await expect(page.getByRole('dialog').locator('.how-steps > li')).toHaveCount(5);
});

test('a can of 2 gal asks whose gallon once; a typed colon shows both readings', async ({ page }) => {
  await demo(page);
  await page.goto('/can');
  await page.getByText('Another can').click();
  await page.locator('#can-size').fill('2 gal');
  await page.getByRole('button', { name: 'Keep this can' }).click();
  await page.getByRole('button', { name: 'imperial gallon' }).click();
  await expect(page.getByRole('radio', { name: '2 gal can (9.1\u00a0L)' })).toBeChecked();
  await page.getByText('A ratio of your own', { exact: true }).first().click();
  await page.locator('#can-ratio').fill('1:10');
  await page.locator('#can-ratio').press('Enter');
  // 9.09 L: a tenth is 909 mL, an eleventh 827 mL.
  await expect(page.getByRole('button', { name: '909\u00a0mL' })).toBeVisible();
  await page.getByRole('button', { name: '827\u00a0mL' }).click();
  await expect(page.getByRole('radio', { name: '1 to 10: 827\u00a0mL' })).toBeChecked();
  await page.locator('.bed-row', { hasText: 'Middle' }).click();
  await expect(page.locator('.dose-figure')).toHaveText('827\u00a0mL');
});

test('the jug claims full size only once the screen was set against a bank card', async ({ page }) => {
  await demo(page);
  await openBed(page, 'Middle');
  await expect(page.getByText('not full size')).toBeVisible();
  await page.getByText('Show the jug at full size').click();
  await page.getByRole('button', { name: 'It fits' }).click();
  await page.reload();
  await expect(page.locator('.dose')).toContainText('full size, 31\u00a0mm from the floor');
  // 243.9 mL over a bore of 100 mm: 31 mm, drawn at 96 px to 25.4 mm
});

test('German stands on the card of a keyholder who reads it', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('tilthwright.keyholder', 'Trowel'));
  await demo(page);
  await openBed(page, 'Middle');
  await expect(page.locator('#can-poured')).toHaveText('Kanne 1 ist gegossen');
  await expect(page.locator('.can-sheet')).toHaveAttribute('lang', 'de');
});

test('an empty phone is told what will stand here and how it starts', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.goto('/can');
  await expect(page.getByText('once a batch was strained')).toBeVisible();
  await expect(page.getByRole('link', { name: 'To the line' })).toBeVisible();
  expect(errors).toEqual([]);
});

test('targets are 64 px and 12 px apart, and the answer is drawn on the touch', async ({ page }) => {
  await demo(page);
  await openBed(page, 'Middle');
  const small = await page.locator('.can-sheet :is(button, a, summary, label.block)').evaluateAll((all) =>
    all
      .map((one) => ({ box: one.getBoundingClientRect(), name: one.textContent?.slice(0, 30) }))
      .filter(({ box }) => box.width > 0 && (box.height < 63.9 || box.width < 63.9))
      .map(({ box, name }) => `${name}: ${box.width} x ${box.height}`),
  );
  expect(small).toEqual([]);
  const gaps = await page.locator('.acts, .asides, .choices').evaluateAll((rows) =>
    rows.flatMap((row) =>
      [...row.children]
        .filter((child) => child.getBoundingClientRect().width > 0)
        .flatMap((next, i, all) => {
          const a = all[i - 1]?.getBoundingClientRect();
          const b = next.getBoundingClientRect();
          return a ? [Math.max(b.left - a.right, b.top - a.bottom)] : [];
        }),
    ),
  );
  expect(gaps.length).toBeGreaterThan(1);
  for (const gap of gaps) expect(gap).toBeGreaterThanOrEqual(11.9);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const drawn = await page.locator('#can-poured').evaluate(
    (act: HTMLElement) =>
      new Promise<{ readonly handledMs: number; readonly drawnMs: number; readonly said: string }>((resolve) => {
        const from = performance.now();
        act.click();
        const handledMs = performance.now() - from;
        const said = document.querySelector('#can-poured')?.textContent ?? '';
        // The frame that paints it ends before a task posted from its animation callback runs.
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve({ handledMs, drawnMs: performance.now() - from, said });
          port2.postMessage('');
        });
      }),
  );
  // In the same task as the touch: the next frame has it, however fast the machine is.
  expect(drawn.said).toBe('Can 2 is poured');
  test.info().annotations.push({ type: 'touch to drawn answer, slowed fourfold', description: JSON.stringify(drawn) });
  process.stdout.write(
    `can card, slowed fourfold: handled in ${drawn.handledMs.toFixed(1)} ms, drawn in ${drawn.drawnMs.toFixed(1)} ms\n`,
  );
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });
    test(`axe finds nothing; the picture is kept, ${colorScheme}`, async ({ page }) => {
      await demo(page);
      await page.goto('/can');
      await page.locator('.bed-row').first().waitFor();
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
      await openBed(page, 'Tunnel');
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
      await openBed(page, 'Gate');
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
      await page.screenshot({
        path: `docs/screens/can-390-${colorScheme}.png`,
        fullPage: true,
        animations: 'disabled',
      });
    });
  });
}
