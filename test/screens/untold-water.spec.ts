// A raw bed, a batch that is sour long enough, and water that nobody told of: the card asks for both on the spot, writes the
// water down, and the dose stands there.

import { expect, test } from '@playwright/test';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { gatherErrors } from './sheet.ts';
import { takeIn } from './stranger.ts';

const ON = '2026-07-06';

test.use({ viewport: { width: 390, height: 844 } });

test('the card of a raw bed asks for the picking and for the water, and no answer leads nowhere', async ({ page }) => {
  const errors = gatherErrors(page);
  const untold = gardenEntries(ON).map((kept) => {
    const body = kept.body as { readonly water?: readonly { readonly volume: unknown }[] };
    if (kept.kind !== 'peg.filled' || body.water === undefined) return kept;
    return { ...kept, body: { ...body, water: body.water.map(({ volume }) => ({ volume })) } };
  });
  await takeIn(page, untold, ON);
  await page.goto('/can');
  await page.locator('.bed-row', { hasText: 'Gate' }).click();
  const none = page.locator('.no-dose');
  await expect(none).toContainText('animals may have reached what is in this batch');
  await expect(page.locator('.animals')).toContainText('nobody told where its water came from');
  // Tomatoes are held off the soil: 90 days are enough, and stand among the answers.
  await expect(page.getByRole('radio', { name: 'in 90 days or more' })).toBeVisible();
  // Its own water, and then that of the batch it was started with.
  for (const peg of [14, 13]) {
    const asked = page.getByRole('group', { name: `Where did the water in peg ${peg} come from?` });
    await asked.getByRole('radio', { name: 'tap', exact: true }).click();
    await expect(page.getByText('The record now says where the water came from.')).toBeVisible();
    await expect(asked).toHaveCount(0);
  }
  await expect(page.locator('.animals')).toHaveCount(0);
  const picked = page.getByRole('radio', { name: 'in 14 days or more' });
  if (await none.isVisible()) await picked.check();
  await expect(page.locator('.bed-head .big')).toHaveText('11.5\u00a0L');
  await page.goto('/record');
  await expect(
    page
      .locator('.acts > li', { hasText: /peg 14/i })
      .filter({ hasText: /corrected/i })
      .first(),
  ).toBeVisible();
  expect(errors).toEqual([]);
});
