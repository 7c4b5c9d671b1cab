// Filling in the demo garden on the day the scraps were weighed: plan beside scale, a stop, the peg.

import { expect, test } from '@playwright/test';
import type { AmountRead } from '#engine/quantity/kept.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { PLAN_KEY, type WeighInPlan } from '#web/fill/draft.ts';
import { gatherErrors } from './sheet.ts';

/** An amount as the weigh-in hands it over. */
function read(asTyped: string, dimension: 'mass' | 'volume'): AmountRead {
  const amount = parseAmount(asTyped, { dimension });
  if (!amount.ok) throw new Error(asTyped);
  return amount;
}

const PLAN: WeighInPlan = {
  vessel: read('12 L', 'volume'),
  gasRoom: 0.25,
  lid: 'loose',
  shape: 'pail',
  plants: [
    { key: 1, material: 'grass-clippings-fresh', amount: read('2.1 kg', 'mass'), treated: 'no' },
    { key: 2, material: 'cabbage-leaves', amount: read('700 g', 'mass') },
  ],
  water: read('5.2 L', 'volume'),
  alkalinityMeqPerL: 4.24,
};

test.beforeEach(async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.addInitScript(
    ([key, plan]) => {
      if (sessionStorage.getItem('tilthwright.demo-day') !== null) return;
      sessionStorage.setItem('tilthwright.demo-day', '2026-06-09');
      localStorage.setItem(key, plan);
    },
    [`tilthwright.demo-draft.${PLAN_KEY}`, JSON.stringify(PLAN)] as const,
  );
});

test('more in than planned is computed anew; a tight lid stops it; the peg hangs with its first looks', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await page.goto('/fill');
  await page.getByRole('button', { name: 'All went in as planned' }).click();
  await page.locator('#fill-row-1').fill('2.4 kg');
  // 2.4 + 0.7 kg at 1.0 L/kg + 5.2 L = 8.3 L of 9.0
  await expect(page.locator('.say')).toHaveText(/0\.7\sL\s+to spare/);
  await expect(page.getByText('0.30\u00a0kg more than planned')).toBeVisible();
  await page.getByRole('radio', { name: 'tight' }).check();
  const act = page.getByRole('button', { name: 'Peg it' });
  await expect(act).toHaveAttribute('aria-disabled', 'true');
  await expect(page.getByText(/cannot be finished under a tight lid.*atm/)).toBeVisible();
  await page.reload();
  await expect(page.locator('#fill-row-1')).toHaveValue('2.4 kg');
  await page.getByRole('radio', { name: 'laid on loose' }).check();
  await page.locator('#fill-warmth').fill('20 °C');
  await act.click();
  // pegs 13 and 16 were given out by 9 June
  await expect(page.getByText('Peg 17 hangs.')).toBeVisible();
  await expect(page.getByText('Fri 12 June: day 3, pH below 5.0 by then'.replace(' June', '\u00a0June'))).toBeVisible();
  await expect(page.getByText('not a drink')).toBeVisible();
  expect(errors).toEqual([]);
});

test('what is set aside, compost-only or out is named with its reason and cannot be put in', async ({ page }) => {
  await page.goto('/fill');
  await expect(page.getByText('9\u00a0kg left: set aside', { exact: false })).toBeVisible();
  await expect(page.getByRole('button', { name: /rhubarb/i })).toHaveAttribute('aria-disabled', 'true');
  await expect(page.locator('#fill-kind option', { hasText: /rhubarb leaves/i })).toHaveCount(0);
});
