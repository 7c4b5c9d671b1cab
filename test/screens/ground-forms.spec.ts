// The sheet of one bed at 390 px: a soil report in ppm and in pounds an acre gets the class of its published scale, what
// cannot be right is asked about, a dressing and an own crop count at once, and a reload loses nothing typed. Values and
// classes are those of test/published/soil-tests.csv.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

async function openBed(page: Page, name: string): Promise<void> {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-08-20'));
  await page.goto('/got');
  await page.locator('.got-bed-link', { hasText: name }).click();
  await expect(page.locator('h1')).toContainText(`${name}: what it got`);
}

async function fold(page: Page, summary: string) {
  const found = page.locator('details.fold', { has: page.locator('summary', { hasText: summary }) });
  if ((await found.getAttribute('open')) === null) await found.locator('summary').click();
  await found.locator('form').waitFor();
  return found;
}

test('a soil report says its classes at once, asks about what cannot be right, and survives a reload', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await openBed(page, 'Middle');
  let report = await fold(page, 'A soil report');
  const line = (n: number) => report.locator('.soil-line').nth(n);
  // The sheet begins with lines for pH, phosphorus and potassium.
  await line(1).getByLabel('Value').fill('20');
  await line(1).getByLabel('Unit').fill('ppm');
  await expect(line(1)).toContainText('By which method');
  await line(1).getByLabel('Method').fill('Bray-1');
  await expect(line(1)).toContainText('Tests medium');
  await expect(line(1)).toContainText('Other published scales');
  await line(1).getByLabel('Value').fill('40');
  await line(1).getByLabel('Unit').fill('lb/acre');
  await expect(line(1)).toContainText('Tests medium');
  await line(2).getByLabel('Value').fill('278');
  await line(2).getByLabel('Unit').fill('lb/acre');
  await line(2).getByLabel('Method').fill('Mehlich-3');
  await expect(line(2)).toContainText('Tests more than high');
  // Olsen was made for neutral and limy soil.
  await line(0).getByLabel('Value').fill('5.6');
  await line(1).getByLabel('Method').fill('Olsen');
  await expect(line(1)).toContainText('An Olsen number on a soil of pH\u00a05.6');
  await expect(line(1)).toContainText('ask the laboratory which extract it used');
  await report.getByRole('button', { name: 'Write it down' }).click();
  await expect(report).toContainText('A line above is in question');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);

  await page.reload();
  report = await fold(page, 'A soil report');
  await expect(line(1).getByLabel('Value')).toHaveValue('40');
  await expect(line(1).getByLabel('Method')).toHaveValue('Olsen');
  await expect(line(2).getByLabel('Unit')).toHaveValue('lb/acre');
  await line(1).getByLabel('Method').fill('Bray-1');
  await report.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('Phosphorus: tests medium. Potassium: tests more than high.')).toBeVisible();
  await expect(page.locator('.went-on').last()).toContainText('phosphorus 40\u00a0lb/acre by Bray-1');
  expect(errors).toEqual([]);
});

test('a line in question is kept as typed where the grower says so, and gives no class', async ({ page }) => {
  await openBed(page, 'Middle');
  const report = await fold(page, 'A soil report');
  const line = report.locator('.soil-line').nth(1);
  await line.getByLabel('Value').fill('20');
  await line.getByLabel('Unit').fill('mg/L');
  await line.getByLabel('Method').fill('Bray-1');
  await expect(line).toContainText('Is the unit of phosphorus');
  await report.getByLabel('Keep the lines as typed all the same').check();
  await report.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.went-on').last()).toContainText('phosphorus 20\u00a0mg/L by Bray-1');
  await expect(page.getByText('Phosphorus: no report that could be read.')).toBeVisible();
});

test('two barrows of compost count at once, and can be taken back', async ({ page }) => {
  const errors = gatherErrors(page);
  await openBed(page, 'Middle');
  const says = page.locator('.got-bed-says');
  const before = await says.textContent();
  const form = await fold(page, 'Compost, mulch or solids went on');
  await form.getByLabel('Of what').selectOption('material:finished-compost');
  await form.getByLabel('How much').fill('2 barrows');
  await form.getByRole('button', { name: 'Write it down' }).click();
  await expect(form).toContainText('Say how many litres one barrow holds');
  await form.getByLabel('One barrow holds, L').fill('80');
  await form.getByRole('button', { name: 'Write it down' }).click();
  const went = page.locator('.went-on li', { hasText: '2 barrows, compost' });
  await expect(went).toBeVisible();
  await expect(says).not.toHaveText(before ?? '');
  await went.getByRole('button', { name: /^Take it back/ }).click();
  await went.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(went).toHaveCount(0);
  await expect(says).toHaveText(before ?? '');
  expect(errors).toEqual([]);
});

test('a bought meal stands with its label, and goes onto the bed by weight', async ({ page }) => {
  await openBed(page, 'Middle');
  const bought = await fold(page, 'A product was bought');
  await bought.getByLabel('Its name').fill('hoof meal');
  await bought.getByLabel('N-P-K as the label has them').fill('12-5-0');
  // 5 % of P₂O₅ are 2.18 % of phosphorus
  await expect(bought).toContainText('2.18 % of phosphorus');
  await bought.getByRole('button', { name: 'Write it down' }).click();
  const form = await fold(page, 'Compost, mulch or solids went on');
  await form.getByRole('radio', { name: 'A bought product' }).check();
  await form.getByLabel('Of what').selectOption({ label: 'hoof meal' });
  await form.getByLabel('How much').fill('1 kg');
  await form.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.went-on').first()).toContainText('1 kg, product of hoof meal');
  await expect(page.locator('body')).toContainText('whether hoof meal dissolves or has to rot first was not told');
});

test('a goal out of the usual is asked about and kept; an own crop gets a need', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-08-20'));
  await page.goto('/plot');
  const bed = page.locator('details', { hasText: 'M Middle' }).last();
  await bed.locator('summary').first().click();
  await bed.getByLabel('Crop', { exact: true }).fill('oca');
  await bed.getByRole('button', { name: 'Write it down' }).click();
  await page.locator('.way-back').click();
  await page.locator('a[href="/got"]').first().click();
  await page.locator('.got-bed-link', { hasText: 'Middle' }).click();
  const says = page.locator('.got-bed-says');
  await expect(says).toContainText('How much nitrogen it needs is not known');
  const own = await fold(page, 'Your own crop: oca');
  await own.getByLabel('Nitrogen to be had').fill('12');
  await own.getByLabel('Harvest, kg/m²').fill('2 to 4');
  await own.getByRole('button', { name: 'Write it down' }).click();
  await expect(own).toContainText('Say where you have it from');
  await own.getByLabel('Where you have it from').fill('Our own scale, 2025');
  await own.getByRole('button', { name: 'Write it down' }).click();
  await expect(says).toContainText('Needs');
  await expect(says).toContainText('How much potassium it needs is not known');
  const goal = await fold(page, 'What you expect to pick');
  await expect(goal).toContainText('Our own scale, 2025');
  await goal.getByLabel(/^How much oca/).fill('9 kg/m²');
  await expect(goal).toContainText('Is 9.00\u00a0kg/m² right? Usual are 2.0 to 4.0');
  await goal.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.went-on').last()).toContainText('Hoped to pick on');
  expect(errors).toEqual([]);
});
