// The record as it is searched, corrected, taken back, carried away in a file, forgotten and taken in again.

import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, type TestInfo, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const acts = (page: Page) => page.locator('.act-line');
async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** A plot with a name and a pail of 12 L. */
async function smallPlot(page: Page): Promise<void> {
  await open(page, '/plot');
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await page.keyboard.press('Enter');
  const steps = page.locator('.first-steps');
  await steps.getByLabel('Volume').fill('12 L');
  await steps.getByLabel('Name').fill('pail');
  await page.keyboard.press('Enter');
  await expect(page.getByText('One vessel: done')).toBeVisible();
  await open(page, '/record');
  await expect(acts(page)).toHaveCount(2);
}

test('an entry is corrected and taken back, and the first one stays readable', async ({ page }) => {
  const errors = gatherErrors(page);
  await smallPlot(page);
  const pail = acts(page).filter({ hasText: 'Vessel pail' });
  await pail.locator('summary').click();
  await pail.getByRole('button', { name: 'Correct it' }).click();
  await pail.getByLabel('Volume').fill('ten');
  await pail.getByRole('button', { name: 'Write the correction down' }).click();
  await expect(pail.getByText(/"ten" does not begin with a number/)).toBeVisible();
  await pail.getByLabel('Volume').fill('10 L');
  const on = await pail.getByLabel('Date').inputValue();
  await pail.getByLabel('Date').fill('2031-06-08');
  await pail.getByRole('button', { name: 'Write the correction down' }).click();
  await expect(pail.getByText('This date is still to come.')).toBeVisible();
  await expect(pail.locator('summary')).not.toContainText('corrected');
  await pail.getByLabel('Date').fill(on);
  await pail.getByRole('button', { name: 'Write the correction down' }).click();
  await expect(pail.locator('summary')).toContainText('corrected');
  await expect(pail.locator('summary')).toContainText('10 L');
  await expect(pail.locator('.version')).toHaveCount(2);
  await expect(pail.locator('.version').first()).toContainText('12 L');
  await pail.getByRole('button', { name: 'Take it back' }).click();
  await pail.getByRole('button', { name: 'Yes, take it back' }).click();
  const today = new Date().toLocaleString('en-GB', { day: 'numeric' });
  await expect(pail.locator('summary')).toContainText(new RegExp(`taken back by me on \\w+ ${today}.*, \\d\\d:\\d\\d`));
  await expect(pail.locator('.version').first()).toContainText('12 L');
  await open(page, '/plot');
  await expect(page.getByText('One vessel', { exact: true })).toBeVisible();
  expect(errors).toEqual([]);
});

/** Takes the pail back, which is one entry more. */
async function takeBackThePail(page: Page): Promise<void> {
  const pail = acts(page).filter({ hasText: 'Vessel pail' });
  await pail.locator('summary').click();
  await pail.getByRole('button', { name: 'Take it back' }).click();
  await pail.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(pail.locator('summary')).toContainText('taken back');
}

/** Makes the file and saves it; tells where. */
async function madeFile(page: Page, info: TestInfo, name = 'whole.jsonl'): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.locator('#make-file').click();
  const download = await waiting;
  expect(download.suggestedFilename()).toMatch(/^tilthwright-hedge-end-[a-z]+-[a-z]+-\d{4}-\d\d-\d\d-\d{4}\.jsonl$/);
  const file = info.outputPath(name);
  await download.saveAs(file);
  return file;
}
const fileOf = (lines: readonly (string | undefined)[]) => ({
  name: 'other.jsonl',
  mimeType: 'text/plain',
  buffer: Buffer.from(lines.join('\n')),
});

test('a file carries the record away and back, whole or not at all', async ({ page }, info) => {
  await smallPlot(page);
  const file = await madeFile(page, info);
  const lines = (await readFile(file, 'utf8')).trimEnd().split('\n');
  expect(lines).toHaveLength(3);

  await page.locator('#take-file').setInputFiles(file);
  await expect(page.locator('#file-said')).toContainText(/0.new entries; 2 stood here already/);
  await page.locator('#take-file').setInputFiles(fileOf([lines[0], lines[1], '{"id":"no"}']));
  await expect(page.locator('#file-said')).toContainText('The file was refused');
  await expect(page.getByText(/^Line 3, id/)).toBeVisible();
  await expect(acts(page)).toHaveCount(2);

  await page.getByText('Forget everything on this phone').click();
  await page.locator('#forget-file').setInputFiles(file);
  await page.locator('#forget-now').click();
  await page.waitForURL((address) => address.pathname === '/');
  await open(page, '/record');
  await expect(page.getByText('It starts with naming the plot')).toBeVisible();

  await page.locator('#take-file').setInputFiles(file);
  await expect(acts(page)).toHaveCount(2);
  await page.reload();
  await expect(acts(page)).toHaveCount(2);
  await expect(acts(page).filter({ hasText: 'Hedge End' })).toHaveCount(1);
});

test('a file counts as saved only once it was chosen again, and what it lacks is named', async ({ page }, info) => {
  await smallPlot(page);
  const never = 'No file of this record was checked yet.';
  await expect(page.locator('#last-file')).toHaveText(never);
  // A download that was cancelled looks the same to a page as one that arrived.
  const waiting = page.waitForEvent('download');
  await page.locator('#make-file').click();
  await (await waiting).cancel();
  await expect(page.locator('#made-said')).toContainText('We cannot see whether it was saved.');
  await page.reload();
  await expect(page.locator('#last-file')).toHaveText(never);
  await page.getByText('Forget everything on this phone').click();
  await expect(page.locator('#forget-file')).toBeAttached();
  await expect(page.locator('#forget-now')).toHaveCount(0);

  const file = await madeFile(page, info);
  const lines = (await readFile(file, 'utf8')).trimEnd().split('\n');
  const [header = '', name, pail] = lines;
  const said = page.locator('#forget-file-said');
  await page.locator('#forget-file').setInputFiles(fileOf([header.replace('"count":2', '"count":1'), name]));
  await expect(said).toContainText(/This file lacks 1.entry of this record/);
  await expect(said).toContainText(/\d+\s\w+: Vessel pail: 12\sL/);
  await expect(page.locator('#forget-now')).toHaveCount(0);
  await page.locator('#forget-file').setInputFiles(fileOf([header, name]));
  await expect(said).toContainText('This file is not a full copy');
  await expect(page.locator('#forget-now')).toHaveCount(0);
  // What was saved some other way is as good.
  await page.locator('#check-file').setInputFiles(fileOf([header, pail, name]));
  await expect(page.locator('#check-file-said')).toContainText(/holds everything: 2.entries and no photos/);
  await expect(page.locator('#last-file')).toContainText('Last checked file: ');
  await expect(page.locator('#forget-now')).toHaveCount(0);
  await page.locator('#forget-file').setInputFiles(file);
  await expect(page.locator('#forget-now')).toBeVisible();
  // Another tab writes on: the file holds everything no more.
  const other = await page.context().newPage();
  await open(other, '/record');
  await takeBackThePail(other);
  await other.close();
  await page.locator('#forget-now').click();
  await expect(page.locator('#forget-trouble')).toContainText(/1.entry or photo was added since you chose the file/);
  await expect(page.locator('#forget-now')).toHaveCount(0);
  await expect(acts(page)).toHaveCount(2);
});

test('a clock 400 days ahead does not silence what no file holds', async ({ page }, info) => {
  await smallPlot(page);
  const now = Date.now();
  const days = (count: number) => new Date(now + count * 86_400_000);
  await expect(page.locator('#unsaved')).toHaveCount(0);
  const file = await madeFile(page, info);
  await page.clock.setFixedTime(days(8));
  await page.reload();
  await expect(page.locator('#unsaved')).toContainText(/2.entries are in no checked file; the oldest is 8.days old/);
  await open(page, '/');
  await expect(page.getByText('Some entries are in no checked file.')).toBeVisible();
  await page.clock.setFixedTime(days(400));
  await open(page, '/record');
  await page.locator('#check-file').setInputFiles(file);
  await expect(page.locator('#check-file-said')).toContainText('holds everything');
  await expect(page.locator('#unsaved')).toHaveCount(0);
  await page.clock.setFixedTime(days(1));
  await page.reload();
  await takeBackThePail(page);
  await expect(page.locator('#unsaved')).toContainText(/1.entry is in no checked file. The clock was wrong/);
});

test('a file of a phone three hours fast says so, is asked about, and what it lacks is offered', async ({
  page,
}, info) => {
  await smallPlot(page);
  const file = await madeFile(page, info);
  const [header = '', , vessel = ''] = (await readFile(file, 'utf8')).trimEnd().split('\n');
  const ahead = new Date(Date.now() + 3 * 3_600_000 + 5 * 60_000);
  const theirs = {
    ...JSON.parse(vessel),
    id: '019f3a5e-7c21-7b44-9d5e-0a1b2c3d4e5f',
    by: 'Rake',
    device: 'phone-rake',
    at: ahead.toISOString(),
    on: ahead.toLocaleString('sv-SE').slice(0, 16).replace(' ', 'T'),
  };
  const lines = [JSON.stringify({ ...JSON.parse(header), count: 2 }), vessel, JSON.stringify(theirs)];
  await page.locator('#take-file').setInputFiles(fileOf(lines));
  await expect(page.getByText(/lie at least 3.h( [45].min)? ahead of this phone’s clock/)).toBeVisible();
  await expect(page.getByText(/This phone holds 1.entry that the file does not/)).toBeVisible();
  const question = page.locator('.question').filter({ hasText: 'that one’s?' });
  await expect(question).toContainText(/up to 3.h/);
  await question.getByRole('button', { name: 'This phone’s clock' }).click();
  await expect(question).toContainText('Set date and time on this phone');
  await expect(page.locator('.question')).toHaveCount(1);
  const again = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make a file for the other phone' }).click();
  await (await again).saveAs(file);
  expect((await readFile(file, 'utf8')).trimEnd().split('\n')).toHaveLength(4);
});

test('the demo garden is searched, and leaves nothing in the own record', async ({ page }) => {
  const errors = gatherErrors(page);
  await open(page, '/record');
  await page.locator('#demo-open').click();
  await expect(page.locator('#demo-leave')).toBeVisible();
  await page.getByLabel('A word in it').fill('neighbour');
  await expect(acts(page)).toHaveCount(1);
  await expect(acts(page).locator('summary')).toContainText(/9 kg of .* set aside/);
  await page.getByLabel('A word in it').fill('');
  await page.getByText('By kind, peg, bed or day').click();
  await page.getByLabel('Peg', { exact: true }).selectOption('14');
  await page.getByLabel('Kind', { exact: true }).selectOption('peg.looked');
  await expect(acts(page)).toHaveCount(6);
  await expect(page.locator('#make-file')).toHaveCount(0);
  await page.locator('#demo-leave').click();
  await expect(page.getByText('It starts with naming the plot')).toBeVisible();
  expect(errors).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [390, 1280]) {
    test.describe(`${width} px, ${colorScheme}`, () => {
      test.use({ colorScheme, viewport: { width, height: 844 } });
      test('axe finds nothing on a record with an entry open for correction', async ({ page }) => {
        await smallPlot(page);
        await acts(page).first().locator('summary').click();
        await acts(page).first().getByRole('button', { name: 'Correct it' }).click();
        await page.getByText('Forget everything on this phone').click();
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
      });
    });
  }
}
