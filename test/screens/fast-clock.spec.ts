// The evening before: a file of a phone whose clock is three hours fast is taken in. It fed the bed "tomorrow at 01:35";
// on every sheet of this phone the bed waits from now on.

import { expect, type Page, test } from '@playwright/test';
import { exportLines } from '#journal/lines.ts';
import { heldBottle } from '../scenarios/held-bottle.ts';
import { litres, recorder } from '../scenarios/recorder.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, timezoneId: 'UTC' });

const { bed, bottle, ground } = heldBottle();
const fed = recorder({ by: 'Rake', device: 'phone-rake', seed: 5 }).did('bed.fed', '2026-07-08T01:35', {
  bed: bed.id,
  from: [{ bottle: bottle.id, volume: litres(0.28) }],
  poured: litres(11.5),
  way: 'soil',
});

async function takeIn(page: Page, text: string): Promise<void> {
  await page.goto('/record');
  await page
    .locator('#take-file')
    .setInputFiles({ name: 'theirs.jsonl', mimeType: 'text/plain', buffer: Buffer.from(text) });
  await expect(page.locator('#file-said')).toContainText('Taken in');
}

test('pick day, the can card, the overview and the shed sheet wait from now on', async ({ page }) => {
  test.setTimeout(180_000);
  const errors = gatherErrors(page);
  await page.clock.setFixedTime(new Date('2026-07-07T22:35:00Z'));
  await takeIn(page, exportLines(ground));
  await page.goto('/pick');
  await expect(page.locator('.pick-answer')).toHaveText(['Pick']);

  await page.goto('/can');
  const atTheCan = page.getByRole('link', { name: /Gate beans/ });
  await expect(atTheCan).not.toContainText('fed today');
  await takeIn(page, exportLines([...ground, fed]));
  await expect(page.locator('.question')).toContainText('Is this phone’s clock wrong, or that one’s?');
  await page.goto('/pick');
  await expect(page.locator('.pick-answer')).toHaveText(['Wait till 21\u00a0July']);
  await page.goto('/can');
  await expect(atTheCan).toContainText(/Hold.*fed today/s);
  await page.goto('/print/shed');
  await expect(page.getByText(/21\u00a0July/).first()).toBeVisible();
  await page.goto('/');
  await expect(page.locator('a[href="/record"]').first()).toBeVisible();
  expect(errors).toEqual([]);
});
