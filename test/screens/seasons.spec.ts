// Three seasons typed into the page by role and name, each in other units: from the first visit to a poured can. What the record
// keeps is held against what was meant, and what the sheets show against the engine asked with the grower's own figures.

import { expect, type Page, test } from '@playwright/test';
import { useFirst } from '#engine/bottle/keep.ts';
import { pour } from '#engine/can/pour.ts';
import { material } from '#engine/tables/index.ts';
import { momentOf } from '#journal/moment.ts';
import { fit } from '#tasks/fit.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { matchedRatio } from '#tasks/plot/strength.ts';
import { strain as strainWord } from '#tasks/strain.ts';
import { canCard as german } from '#words/de/can-card.ts';
import { sayDate } from '#words/en/app.ts';
import { canCard as english } from '#words/en/can-card.ts';
import { sumLine } from '#words/en/straining.ts';
import { verdict } from '#words/en/weigh-in.ts';
import { at, entriesOf, fill, firstVisit, lookAt, type Meant, strain, type Typed, weigh } from './season-page.ts';
import { gatherErrors } from './sheet.ts';

test.use({
  viewport: { width: 390, height: 844 },
  timezoneId: 'UTC',
  contextOptions: { reducedMotion: 'reduce' },
  actionTimeout: 15_000,
});

const LB_KG = 0.453_592_37;
const GALLON_US_L = 3.785_411_784;
const MEQ_PER_MG = 1 / 50.043;

const SEASONS: Readonly<Record<string, Typed>> = {
  'litres and a point': {
    ...{ units: 'metric', language: 'en', decimals: 'point' },
    ...{ vessel: ['12 L', 12], bed: ['5.76 m²', 5.76], can: ['10 L', 10], alkalinity: ['212', 212 * MEQ_PER_MG] },
    ...{ lot: ['6.4 kg', 6.4], planned: ['2.1 kg', 2.1], plannedWater: ['5.2 L', 5.2], sugar: ['150 g', 0.15] },
    ...{ warmth: ['20 °C', 20], drained: ['5.6 L', 5.6], solids: ['1 ¼ kg', 1.25], bottle: ['1 L', 1] },
    filled: ['900 mL', 0.9],
  },
  'US gallons and pounds': {
    ...{ units: 'us', gallon: 'us', language: 'en', decimals: 'point' },
    ...{ vessel: ['3 gal', 3 * GALLON_US_L], bed: ['62 sq ft', 62 * 0.092_903_04], can: ['2 gal', 2 * GALLON_US_L] },
    ...{ alkalinity: ['90', 90 * MEQ_PER_MG], lot: ['14 lb', 14 * LB_KG], planned: ['4 lb 10 oz', 4.625 * LB_KG] },
    ...{ plannedWater: ['1 ½ gal', 1.5 * GALLON_US_L], sugar: ['5 oz', (5 * LB_KG) / 16], warmth: ['68 °F', 20] },
    ...{ drained: ['1 ¼ gal', 1.25 * GALLON_US_L], solids: ['2 lb 12 oz', 2.75 * LB_KG] },
    ...{ bottle: ['1 L', 1], filled: ['30 US fl oz', (30 * GALLON_US_L) / 128] },
  },
  'decimal commas, in German at bucket and can': {
    ...{ units: 'metric', language: 'de', decimals: 'comma' },
    ...{ vessel: ['12,5 L', 12.5], bed: ['4,8 m²', 4.8], can: ['9,5 L', 9.5], alkalinity: ['180', 180 * MEQ_PER_MG] },
    ...{ lot: ['6,25 kg', 6.25], planned: ['2,2 kg', 2.2], plannedWater: ['5,4 L', 5.4], sugar: ['160 g', 0.16] },
    ...{ warmth: ['20 °C', 20], drained: ['5,75 L', 5.75], solids: ['1.250 g', 1.25], bottle: ['1 L', 1] },
    filled: ['0,9 L', 0.9],
  },
};

const FILLED_ON = '2026-06-01';
const LOOKS: readonly (readonly [on: string, ph: number])[] = [
  ['2026-06-02', 5.4],
  ['2026-06-04', 4.2],
  ['2026-06-07', 3.9],
  ['2026-06-12', 3.8],
];
const STRAINED_ON = '2026-06-13';

/** The engine's answers to what was meant. */
function engine({ vessel, planned, plannedWater, sugar, alkalinity, drained, solids, bed, can }: Typed) {
  const plants = [{ material: 'grass-clippings-fresh', massKg: planned[1], treated: 'no' }];
  const water = { volumeL: plannedWater[1], alkalinityMeqPerL: alkalinity[1] };
  const sweet = { product: 'white-sugar', massKg: sugar[1] };
  const put = fit({ vessel: { volumeL: vessel[1], gasRoom: 0.25, lid: 'loose' }, plants, water, sugar: sweet });
  const out = strainWord({
    ...{ plants, water, sugar: sweet, temperatureC: 20, finalPh: 3.8, drainedL: drained[1], solidsKg: solids[1] },
    ...{ days: 12, state: 'ready' },
  });
  if (!put.ok || !out.ok) throw new Error(JSON.stringify([put, out]));
  const dry = material('grass-clippings-fresh')?.figures.dryMatter?.likely ?? Number.NaN;
  const ratio = matchedRatio((1000 * planned[1]) / (plannedWater[1] + planned[1] * (1 - dry)));
  if (ratio === undefined) throw new Error('no ratio');
  const { dose } = pour({
    ...{ strength: { kind: 'ratio', ratio }, canL: can[1], areaM2: bed[1], depthLPerM2: 2, way: 'soil', spoon: null },
  });
  const cans = dose?.bed?.cans ?? [];
  return { put: put.value, out: out.value, cans };
}

const shown = (page: Page, text: string) => expect(page.getByRole('main')).toContainText(text);

for (const [title, typed] of Object.entries(SEASONS)) {
  test(`${title}: kept as it was meant, and shown as the engine has it, from the first visit to a poured can`, async ({
    page,
  }, info) => {
    test.setTimeout(180_000);
    const errors = gatherErrors(page);
    const { put, out, cans } = engine(typed);
    await firstVisit(page, FILLED_ON, typed);
    await weigh(page, FILLED_ON, typed);
    await fill(page, FILLED_ON, typed, async () => {
      await shown(page, `${verdict(put.fill).figure} ${verdict(put.fill).rest}`);
    });
    for (const [on, ph] of LOOKS) await lookAt(page, on, ph, typed);
    await strain(page, STRAINED_ON, typed, async () => {
      await shown(page, sumLine(out.balance));
    });
    await at(page, STRAINED_ON, '/shelf');
    const { days } = useFirst({ finalPh: 3.8, temperatureC: 20, sound: true });
    const by = onDay(momentOf(STRAINED_ON).dateDay + Math.floor(days.likely));
    await shown(page, sayDate(by, STRAINED_ON));
    const words = typed.language === 'de' ? german : english;
    await at(page, '2026-06-15', '/can');
    await page.getByRole('link', { name: /Bohnenrankgerüstbeetreihe/ }).click();
    for (const [i, can] of cans.entries()) {
      await shown(page, words.ml(can.concentrateMl));
      await page
        .getByRole('button', { name: words.poured(i + 1), exact: true })
        .last()
        .press('Enter');
    }
    const concentrateL = cans.reduce((sum, { concentrateMl }) => sum + concentrateMl, 0) / 1000;
    const pouredL = cans.reduce((sum, { volumeL }) => sum + volumeL, 0);
    await shown(page, words.done(words.litres(pouredL), words.ml(concentrateL * 1000)));
    const entries = await entriesOf(page, '2026-06-15', info);
    const kept = (kind: string): object => entries.find((one) => one.kind === kind)?.body ?? {};
    const si = (unit: 'massKg' | 'volumeL' | 'areaM2', [, value]: Meant) => ({ [unit]: expect.closeTo(value, 9) });
    expect(kept('vessel.described')).toMatchObject({ volume: si('volumeL', typed.vessel) });
    expect(kept('bed.described')).toMatchObject({ area: si('areaM2', typed.bed) });
    expect(kept('can.described')).toMatchObject({ volume: si('volumeL', typed.can) });
    expect(kept('scraps.weighed')).toMatchObject({ mass: si('massKg', typed.lot) });
    expect(kept('peg.filled')).toMatchObject({
      parts: [{ mass: si('massKg', typed.planned) }],
      water: [{ volume: si('volumeL', typed.plannedWater) }],
      sugar: [{ mass: si('massKg', typed.sugar) }],
      temperatureC: expect.closeTo(typed.warmth[1], 9),
    });
    expect(kept('peg.strained')).toMatchObject({
      drained: si('volumeL', typed.drained),
      solids: si('massKg', typed.solids),
      acidity: { ph: 3.8, by: 'meter' },
    });
    expect(kept('bottle.filled')).toMatchObject({
      filled: si('volumeL', typed.filled),
      size: si('volumeL', typed.bottle),
    });
    expect(kept('bed.fed')).toMatchObject({
      from: [{ volume: { volumeL: expect.closeTo(concentrateL, 9) } }],
      poured: { volumeL: expect.closeTo(pouredL, 9) },
    });
    expect(
      entries.filter(({ kind }) => kind === 'peg.looked').map(({ body }) => (body as { acidity: object }).acidity),
    ).toEqual(LOOKS.map(([, ph]) => ({ ph, by: 'meter', typed: ph.toFixed(1) })));
    expect(errors).toEqual([]);
  });
}
