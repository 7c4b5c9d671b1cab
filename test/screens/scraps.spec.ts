// Scraps on a phone: a neighbour's untold clippings from the scale to the bean test, and a site that keeps kitchen
// scraps out. The own record, empty at first; by label and role, as a grower would.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

async function content(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  const faint = (await new AxeBuilder({ page }).withRules(['color-contrast-enhanced']).analyze()).violations;
  expect(faint.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide).toBeLessThanOrEqual(0);
}

const answer = (page: Page, question: string | RegExp, word: string) =>
  page.getByRole('group', { name: question }).getByRole('radio', { name: word, exact: true }).check();

for (const way of ['a touch', 'the keyboard'] as const) {
  test(`the answer that follows the weight is taken at once, by ${way}`, async ({ page }) => {
    await page.goto('/scraps');
    await page.getByLabel('Kind of scraps').selectOption('grass-clippings-fresh');
    const own = page.getByRole('group', { name: /Whose is it/ }).getByRole('radio', { name: 'this plot' });
    await own.waitFor();
    await page.getByLabel('It weighs').fill('9 kg');
    // The weight is left by this very press, and read anew: the answers must stay where they are.
    if (way === 'a touch') await own.click();
    else {
      await page.keyboard.press('Tab');
      await page.keyboard.press('Space');
    }
    await expect(own).toBeChecked();
  });
}

test('a neighbour’s untold clippings are set aside, and enter neither batch nor heap until the beans clear them', async ({
  page,
}) => {
  test.setTimeout(180_000);
  const errors = gatherErrors(page);
  await page.goto('/scraps');
  await page.getByLabel('Kind of scraps').selectOption('grass-clippings-fresh');
  await page.getByLabel('It weighs').fill('9 kg');
  // Unanswered questions are named; nothing is written down.
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Whose is it' })).toBeVisible();
  await answer(page, /Whose is it/, 'a neighbour’s garden');
  await answer(page, /weedkiller used/, 'not known');
  await answer(page, /How does it look/, 'fresh');
  // Said before it is written down, with where it goes.
  await expect(page.locator('.becomes')).toContainText('Set aside.');
  await expect(page.locator('.becomes')).toContainText('do the bean test');
  await page.getByRole('button', { name: 'Write it down' }).click();
  const lot = page.locator('.lots > li').first();
  await expect(lot).toContainText('grass clippings, fresh');
  await lot.getByText('Why, and what may be done').click();
  await expect(lot.getByRole('button', { name: 'To the heap: not this one' })).toHaveAttribute('aria-disabled', 'true');

  // Not at the vessel, and not at the weigh-in: greyed there with the reason.
  await page.goto('/fill');
  const kept = page.getByRole('list', { name: 'Not for this vessel' });
  await expect(kept.getByRole('button')).toHaveAttribute('aria-disabled', 'true');
  await expect(kept).toContainText('nobody can say what it was treated with');
  await expect(page.getByRole('button', { name: /^\+ grass clippings/ })).toHaveCount(0);
  await page.goto('/weigh-in');
  await expect(page.getByRole('list', { name: 'Not for this vessel' })).toContainText('set aside');

  // The card: one A5 sheet with the days to read between.
  await page.goto('/scraps');
  await page.getByRole('link', { name: 'Print the card of its bean test' }).click();
  await page.getByLabel('Sown on').fill('2026-02-20');
  // 20 February and 21 and 28 days.
  await expect(page.locator('.bean-card')).toContainText('Read between Fri 13\u00a0Mar and Fri 20\u00a0Mar');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.bean-card').evaluate((card) => card.scrollHeight <= card.clientHeight + 1)).toBe(true);
  const file = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(file) ?? [];
  expect([width, height].map((points) => Math.round((Number(points) * 25.4) / 72))).toEqual([148, 210]);
  expect(file.match(/\/Type \/Page\b/g)).toHaveLength(1);
  await page.emulateMedia({ media: 'screen' });

  // The beans, counted: none deformed of nine in either.
  await page.goto('/scraps');
  await page.getByText('Write down what the beans showed').click();
  const today = await page.getByLabel('Sown on').getAttribute('max');
  const sown = new Date(Date.parse(`${today}T12:00:00Z`) - 24 * 86_400_000).toISOString().slice(0, 10);
  await page.getByLabel('Sown on').fill(sown);
  await page.getByLabel('True leaves on the control').fill('3');
  for (const pots of [/Test pots/, /Control pots/]) {
    const group = page.getByRole('group', { name: pots });
    await group.getByLabel('pots').fill('3');
    await group.getByLabel('beans sown').fill('9');
    await group.getByLabel('came up').fill('9');
    await group.getByLabel('deformed').fill('0');
  }
  await expect(page.getByText('No harm seen in the beans', { exact: false })).toBeVisible();
  await expect(
    page.getByText('Deformed: 0 of 9 in the test pots, 0 of 9 in the control', { exact: false }),
  ).toBeVisible();
  await content(page);
  await page.getByRole('button', { name: 'Write the verdict down' }).click();
  await expect(page.getByRole('heading', { name: 'May go in a pail' })).toBeVisible();
  await lot.getByText('More', { exact: true }).click();
  await expect(lot.getByRole('button', { name: /^All 9.kg to the heap/ })).toBeVisible();
  await page.goto('/fill');
  await expect(page.getByRole('button', { name: /^\+ grass clippings, fresh/ })).toBeVisible();
  expect(errors).toEqual([]);
});

test('a site that forbids kitchen scraps greys them in every list, in its own words with its date', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await page.goto('/plot');
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Name the plot: done')).toBeVisible();
  await page.locator('#plot-own-fold summary').click();
  const facts = page.locator('#plot-own-fold');
  await facts.getByLabel('Site rule, as it is written').fill('No kitchen waste on any plot.');
  await facts.getByLabel('Date of the rule').fill('2026-03-14');
  await facts.getByLabel('May scraps be brought in from outside?').selectOption('yes');
  await facts.getByLabel('Are kitchen scraps allowed?').selectOption('no');
  await facts.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('definition').filter({ hasText: 'No kitchen waste on any plot.' })).toBeVisible();

  const greyed = /Greyed: Kitchen scraps.*14\u00a0Mar 2026: "No kitchen waste on any plot\."/;
  for (const [sheet, list] of [
    ['/scraps', '#lot-material'],
    ['/weigh-in', '#choose-scrap'],
    ['/fill', '#fill-kind'],
  ] as const) {
    await page.goto(sheet);
    await expect(page.getByText(greyed)).toBeVisible();
    await expect(page.locator(`${list} option[value="kitchen-trimmings"]`)).toBeDisabled();
    await expect(page.locator(`${list} option[value="cabbage-leaves"]`)).toBeEnabled();
  }
  // What may grow on the plot is asked where it comes from; from a kitchen it is out, in the site's own words.
  await page.goto('/scraps');
  await page.getByLabel('Kind of scraps').selectOption('carrot');
  await answer(page, /Whose is it/, 'our kitchen');
  await expect(page.locator('.becomes')).toContainText('Out: neither pail nor heap.');
  await expect(page.locator('.becomes')).toContainText('"No kitchen waste on any plot."');
  await answer(page, /Whose is it/, 'this plot');
  await answer(page, /weedkiller used/, 'no');
  await answer(page, /How does it look/, 'wilted');
  await expect(page.locator('.becomes')).toContainText('May go in a pail.');
  await content(page);
  expect(errors).toEqual([]);
});
