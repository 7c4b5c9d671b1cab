// A stranger's garden at 27.5° south in January: the sheets of the beds, of one bed and of the cover, and the overview still
// know what went on in spring. Where no place was told, the side of the equator is asked once.

import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { kg, recorder } from '../scenarios/recorder.ts';
import { gatherErrors } from './sheet.ts';
import { takeIn } from './stranger.ts';

/** Tomatoes planted in October, with compost and clippings in spring. */
function southernGarden(latitudeDeg: number | undefined) {
  const me = recorder({ seed: 61 });
  const plot = me.did('plot.described', '2026-08-01', {
    name: 'Corner',
    ...(latitudeDeg !== undefined && { latitudeDeg }),
  });
  const about = { name: 'Long', area: { typed: '6 m²', areaM2: 6 }, lengthM: 5 };
  const bed = me.did('bed.described', '2026-08-01', about);
  return [
    plot,
    bed,
    me.did('bed.dressed', '2026-09-20', { bed: bed.id, what: 'compost', amount: kg(30) }),
    me.did('bed.planted', '2026-10-10', { bed: bed.id, act: 'planted', crop: 'tomatoes' }),
    ...['2026-10-20', '2026-11-20'].map((on) =>
      me.did('bed.dressed', on, {
        bed: bed.id,
        what: 'mulch',
        material: 'grass-clippings-fresh',
        amount: kg(60),
      }),
    ),
  ];
}

for (const on of ['2026-12-31', '2027-01-02']) {
  test(`on ${on} every sheet counts what went on in spring`, async ({ page }) => {
    const errors = gatherErrors(page);
    await takeIn(page, southernGarden(-27.5), on);
    await page.goto('/got');
    const bed = page.locator('.got-beds > li', { hasText: 'Long' });
    await expect(bed).toContainText(/Needs 111\u00a0g .*got \d{3}\u00a0g .* too much/);
    await expect(page.getByText(/Counted from Sun 21\u00a0June/)).toBeVisible();
    await expect(page.getByText('Is your garden north or south')).toHaveCount(0);
    await page.getByRole('link', { name: 'Long' }).click();
    await expect(page.getByText(/Counted from Sun 21\u00a0June.*\(midwinter\)/)).toBeVisible();
    await expect(page.locator('.went-on').first()).toContainText('compost');
    await expect(page.locator('.got-bed-says')).toContainText(/got \d{3}\u00a0g .* too much/);
    await expect(page.locator('.release')).toContainText('the crop can have taken up');
    await page.goto('/cover');
    await page.locator('input[name="cover-nutrient"]').first().waitFor({ state: 'attached' });
    await expect(page.locator('main')).not.toContainText(/Long[^.]*nitrogen short/);
    await page.goto('/');
    await expect(page.locator('main')).toContainText('Bed6\u00a0m²');
    expect(errors).toEqual([]);
  });
}

test('the side of the equator is asked once, where no place was told', async ({ page }) => {
  await takeIn(page, southernGarden(undefined), '2027-01-02');
  await page.goto('/got');
  await expect(page.getByText('Is your garden north or south of the equator?')).toBeVisible();
  await expect(page.getByText(/Counted from Sat 3\u00a0Jan/)).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  await page.getByRole('button', { name: 'Say it is south' }).click();
  await expect(page.getByText('Is your garden north or south of the equator?')).toHaveCount(0);
  await expect(page.getByText(/Counted from Sun 21\u00a0June/)).toBeVisible();
  await page.getByRole('link', { name: 'Long' }).click();
  await expect(page.getByText(/\(midwinter\)/)).toBeVisible();
  await expect(page.getByText('Is your garden north or south of the equator?')).toHaveCount(0);
});
