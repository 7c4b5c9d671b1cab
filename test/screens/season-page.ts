// A season typed into the page by role and name, as a grower would: from the first visit to a strained and bottled batch. Every name
// is taken from the words of the page, so that another wording is no other test. Blocks are pressed by the keyboard: a pointer at the
// place of the press before is held off for a second after each act.

import { readFile } from 'node:fs/promises';
import { expect, type Page, type TestInfo } from '@playwright/test';
import type { Entry } from '#journal/entry.ts';
import { importLines } from '#journal/file-reader.ts';
import { lookDe } from '#words/de/look.ts';
import { fillSheet } from '#words/en/fill.ts';
import { look } from '#words/en/look.ts';
import { answerNames, fieldNames, form, plotWords } from '#words/en/plot.ts';
import { files } from '#words/en/record.ts';
import { answers, asked, stock } from '#words/en/scraps-stock.ts';
import { strainSheet } from '#words/en/straining.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';

/** A text as it is typed, and what it means in kg, L, m² or °C. */
export type Meant = readonly [text: string, si: number];

/** Everything that is typed in one season. */
export interface Typed {
  readonly units: 'metric' | 'us' | 'imperial';
  readonly language: 'en' | 'de';
  readonly decimals: 'point' | 'comma';
  readonly gallon?: 'us';
  readonly vessel: Meant;
  readonly bed: Meant;
  readonly can: Meant;
  readonly alkalinity: Meant;
  readonly lot: Meant;
  readonly planned: Meant;
  readonly plannedWater: Meant;
  readonly sugar: Meant;
  readonly warmth: Meant;
  readonly drained: Meant;
  readonly solids: Meant;
  readonly bottle: Meant;
  readonly filled: Meant;
}

const name = (of: string) => fieldNames[of] ?? of;
const answer = (of: string) => answerNames[of] ?? of;

/** The page at noon of a day, on a sheet. */
export async function at(page: Page, on: string, address: string): Promise<void> {
  await page.clock.setFixedTime(new Date(`${on}T12:00:00Z`));
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor({ state: 'attached' });
}

/** A form folded under its heading: opened, its fields filled, and written down. */
async function fold(page: Page, summary: string, fields: Readonly<Record<string, string>>): Promise<void> {
  const within = page.locator('details').filter({ has: page.getByText(summary, { exact: true }) });
  await within.locator('summary').press('Enter');
  for (const [label, text] of Object.entries(fields)) {
    const field = within.getByLabel(label, { exact: true });
    if ((await field.evaluate((one) => one.tagName)) === 'SELECT') await field.selectOption({ label: text });
    else await field.fill(text);
  }
  await within.getByRole('button', { name: form.write }).press('Enter');
  await expect(within.getByRole('button', { name: form.write })).toHaveCount(0);
}

/** Name, keyholder, vessel, bed, can and water. */
export async function firstVisit(page: Page, on: string, typed: Typed): Promise<void> {
  await at(page, on, '/plot');
  const steps = page.getByRole('region', { name: plotWords.firstStepsHeading });
  const write = () => steps.getByRole('button', { name: form.write }).press('Enter');
  await steps.getByLabel(name('name')).fill('Hedge End');
  await write();
  await fold(page, plotWords.addKeyholder, {
    [name('tag')]: 'Rake',
    [name('units')]: answer(typed.units),
    ...(typed.gallon && { [name('gallon')]: answer(typed.gallon) }),
    [name('decimals')]: answer(typed.decimals),
    [name('language')]: answer(typed.language),
  });
  const rake = page.getByRole('group', { name: plotWords.signsAs }).getByRole('radio', { name: 'Rake' });
  await rake.press('Space');
  await expect(rake).toBeChecked();
  // The next step stands once the one before is written down: what only it asks is filled first.
  await steps.getByLabel(name('volume')).fill(typed.vessel[0]);
  await steps.getByLabel(name('name')).fill('bucket with the dented rim');
  await write();
  await steps.getByLabel(name('area')).fill(typed.bed[0]);
  await steps.getByLabel(name('name')).fill('Bohnenrankgerüstbeetreihe');
  await steps.getByLabel(name('crop')).fill('kale');
  await steps.getByLabel(name('eaten')).selectOption({ label: answer('cooked') });
  await write();
  await expect(steps.getByRole('link', { name: plotWords.toWeighIn })).toBeVisible();
  await fold(page, plotWords.addCan, { [name('name')]: 'green can', [name('volume')]: typed.can[0] });
  await fold(page, plotWords.addWater, {
    [name('source')]: answer('tap'),
    [name('alkalinity')]: typed.alkalinity[0],
  });
}

const choose = (page: Page, group: string, word: string) =>
  page.getByRole('group', { name: group }).getByRole('radio', { name: word, exact: true }).press('Space');

/** A lot on the scale, with its slip. */
export async function weigh(page: Page, on: string, { lot }: Typed): Promise<void> {
  await at(page, on, '/scraps');
  await page.getByLabel(stock.name).selectOption('grass-clippings-fresh');
  await page.getByLabel(stock.amount).fill(lot[0]);
  await choose(page, asked.place, answers.place['this-plot']);
  await choose(page, asked.treated, answers.treated.no);
  await choose(page, asked.condition, answers.condition.fresh);
  await page.getByRole('button', { name: stock.put }).press('Enter');
  await expect(page.getByRole('heading', { name: stock.list })).toBeVisible();
}

/** Types an amount into the field of a name. */
async function type(page: Page, label: string, [text]: Meant): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.press('Enter');
}

/** Weighed in, handed over and filled, all as planned. */
export async function fill(page: Page, on: string, typed: Typed, shows: (page: Page) => Promise<void>): Promise<void> {
  await at(page, on, '/weigh-in');
  await type(page, sheet.vesselVolume, typed.vessel);
  // Asked once for the whole sheet.
  if (typed.gallon !== undefined) await page.getByRole('button', { name: /^US, / }).press('Enter');
  await page.getByLabel(sheet.chooseScrap).selectOption('grass-clippings-fresh');
  await page.getByRole('button', { name: sheet.addScrap }).press('Enter');
  const weight = page.getByRole('textbox', { name: /grass clippings/ });
  await weight.fill(typed.planned[0]);
  await weight.press('Enter');
  await choose(page, sheet.treatedQuestion, sheet.treated.no);
  await type(page, sheet.waterVolume, typed.plannedWater);
  await page.getByLabel(sheet.sugarProduct).selectOption('white-sugar');
  await type(page, sheet.sugarWeight, typed.sugar);
  await page.getByRole('button', { name: sheet.fillNow }).press('Enter');
  await page.getByRole('button', { name: fillSheet.allAsPlanned }).press('Enter');
  await choose(page, fillSheet.lidQuestion, fillSheet.lids.loose);
  await type(page, fillSheet.warmth, typed.warmth);
  await page.getByLabel(fillSheet.waterFrom, { exact: true }).first().selectOption({ label: fillSheet.sources.tap });
  await shows(page);
  await page.getByRole('button', { name: fillSheet.act }).press('Enter');
  await expect(page.getByText(fillSheet.done(1))).toBeVisible();
}

/** One look in the keyholder's language: a meter's reading, the nose, the top, as warm as it was. */
export async function lookAt(page: Page, on: string, ph: number, { language }: Typed): Promise<void> {
  const words = language === 'de' ? lookDe : look;
  await at(page, on, '/peg/1/look');
  const press = (of: string | RegExp) =>
    page.getByRole('button', { name: of, exact: typeof of === 'string' }).press('Enter');
  await press(words.meterWhole(Math.floor(ph)));
  await press(`${words.meter} ${words.ph(ph)}`);
  await press(words.smells[ph < 4.6 ? 'sour' : 'grassy']);
  await press(words.surfaces.clear);
  await press(new RegExp(words.asLast));
  await expect(page.getByRole('button', { name: words.lookAgain })).toBeVisible();
}

/** Strained into bottles that let gas out. */
export async function strain(
  page: Page,
  on: string,
  typed: Typed,
  shows: (page: Page) => Promise<void>,
): Promise<void> {
  await at(page, on, '/peg/1/strain');
  const put = async (label: string, text: string) => {
    const field = page.getByRole('textbox', { name: label });
    await field.fill(text);
    await field.press('Enter');
  };
  await put(strainSheet.drained, typed.drained[0]);
  await put(strainSheet.solids, typed.solids[0]);
  await choose(page, strainSheet.restQuestion, strainSheet.rest.nothing);
  await put(strainSheet.ph, typed.decimals === 'comma' ? '3,8' : '3.8');
  await choose(page, strainSheet.byQuestion, strainSheet.by.meter);
  await choose(page, strainSheet.bottleQuestion, strainSheet.kinds.plastic);
  await put(strainSheet.size, typed.bottle[0]);
  await put(strainSheet.filled, typed.filled[0]);
  await put(strainSheet.count, '4');
  await choose(page, strainSheet.capQuestion, strainSheet.caps.vent);
  await shows(page);
  await page.getByRole('button', { name: strainSheet.actBoth }).press('Enter');
  await expect(page.getByText(strainSheet.done(1))).toBeVisible();
}

/** Every entry of the record, out of the file that the page makes. */
export async function entriesOf(page: Page, on: string, info: TestInfo): Promise<readonly Entry[]> {
  await at(page, on, '/record');
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: files.make }).press('Enter');
  const file = info.outputPath('record.jsonl');
  await (await waiting).saveAs(file);
  const read = importLines(await readFile(file, 'utf8'), () => undefined);
  if (!read.ok) throw new Error(JSON.stringify(read.refused));
  return read.fresh as readonly Entry[];
}
