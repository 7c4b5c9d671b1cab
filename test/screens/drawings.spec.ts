// Drawings of the demo garden held to the figures beside them: each is read back from the SVG that the browser has, by the
// ticks, bars and scales it shows itself, and compared with what the sheet says in words. Shapes' own tests are in test/drawings.

import { expect, type Locator, type Page, test } from '@playwright/test';
import { cornersOf, type Mark, readBy, turnedL } from '../drawings/read-back.ts';
import { openDemo, pegPath } from './demo-peg.ts';
import { openSheet, overfill } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

/** One element of a drawing, as it stands in the page. */
interface Part {
  readonly name: string;
  readonly kind: string;
  readonly text: string;
  readonly d: string;
  readonly at: Readonly<Record<string, number>>;
}

/** All of a drawing at one moment, in the order of the page. */
async function partsOf(svg: Locator): Promise<readonly Part[]> {
  await svg.waitFor();
  return svg.evaluate((root) =>
    [...root.querySelectorAll('*')].map((one) => ({
      name: one.tagName,
      kind: one.getAttribute('class') ?? '',
      text: one.textContent ?? '',
      d: one.getAttribute('d') ?? '',
      at: Object.fromEntries([...one.attributes].map(({ name, value }) => [name, Number(value)])),
    })),
  );
}

const named = (parts: readonly Part[], name: string, kind: string) =>
  parts.filter((part) => part.name === name && part.kind.split(' ').includes(kind));
const firstY = ({ d }: Part) => cornersOf(d)[0]?.y ?? Number.NaN;
const firstX = ({ d }: Part) => cornersOf(d)[0]?.x ?? Number.NaN;
/** The numbers of a text; thousands stand apart by a thin space. */
const numbers = (text: string) =>
  [...text.matchAll(/\d+(?:[\u2009\u202f]\d{3})*(?:\.\d+)?/g)].map(([found]) =>
    Number(found.replaceAll(/[\u2009\u202f]/g, '')),
  );
const number = (text: string | null) => numbers(text ?? '')[0] ?? Number.NaN;

/** Marks of an axis: strokes of one kind, each with the figure that is written next after it. */
function marksOf(parts: readonly Part[], stroke: RegExp, at: (part: Part) => number): readonly Mark[] {
  return parts.flatMap((part, i) => {
    if (part.name !== 'path' || !stroke.test(part.d)) return [];
    const text = parts[i + 1];
    return text?.name === 'text' && /\d/.test(text.text) ? [{ figure: number(text.text), at: at(part) }] : [];
  });
}

/** The scale of a sheet, once its drawing has said it. */
async function scaleOf(page: Page): Promise<number> {
  await expect(page.locator('.title-block')).toContainText(/1\s:\s\d/);
  return pxPerMOf(await page.locator('.title-block').textContent());
}

/** Pixels to the metre by a written "1 : 12", at 96 px to the inch. */
const pxPerMOf = (text: string | null) =>
  96 / 0.0254 / (numbers(/1\s:\s[\d.]+/.exec(text ?? '')?.[0] ?? '')[1] ?? Number.NaN);
/** A drawn wall without its lips: the room inside. */
const insideOf = (wall: string) =>
  `M${cornersOf(wall)
    .slice(1, -1)
    .map(({ x, y }) => `${x} ${y}`)
    .join('L')}`;
/** The axis of a drawn wall: the middle of its corners. */
function axisOf(path: string): number {
  const xs = cornersOf(path).map(({ x }) => x);
  return (Math.min(...xs) + Math.max(...xs)) / 2;
}
function near(found: number, asked: number, off: number, what: string): void {
  expect(Math.abs(found - asked), `${what}: drawn ${found}, said ${asked}`).toBeLessThanOrEqual(off);
}

/** Checks a drawing once its sheet has come to its size: scale, figures and shapes are read one after the other. */
async function settled(check: () => Promise<void>): Promise<void> {
  await expect(check).toPass({ timeout: 15_000 });
}

async function open(page: Page, on: string, address: string): Promise<void> {
  await openDemo(page, on);
  await page.goto(address);
}

test('the liquid in a vessel: its litres by wall and scale, on its own sheet and on the line', async ({ page }) => {
  await open(page, '2026-06-20', pegPath(15));
  let saidL = Number.NaN;
  const svg = page.locator('.standing svg.drawing');
  await settled(async () => {
    const parts = await partsOf(svg);
    saidL = number((await svg.getAttribute('aria-label'))?.split('to scale:')[1] ?? '');
    const pxPerM = await scaleOf(page);
    const wall = insideOf(named(parts, 'path', 'outline')[0]?.d ?? '');
    const drawnL = named(parts, 'path', 'layer').reduce((sum, { d }) => sum + turnedL(d, axisOf(wall), pxPerM), 0);
    near(drawnL, saidL, 0.02 * saidL, 'litres in the vessel');
    // Up to the fill line: the first figure of the drawing, beside its dimension.
    const usableY = firstY(named(parts, 'path', 'fill-line')[0] as Part);
    const usableL = number(named(parts, 'text', 'figure')[0]?.text ?? '');
    near(turnedL(wall, axisOf(wall), pxPerM, usableY), usableL, 0.02 * usableL, 'litres to the fill line');
    near(turnedL(wall, axisOf(wall), pxPerM), 30, 0.6, 'litres to the rim');
  });

  await page.goto('/');
  await settled(async () => {
    const line = await partsOf(page.locator('.line-drawing'));
    const link = page.locator('.line-link[aria-label^="Peg 15"]');
    const peg = await partsOf(link);
    const [layer, vessel] = [named(peg, 'path', 'layer')[0], named(peg, 'path', 'line-vessel')[0]];
    near(
      turnedL(layer?.d ?? '', axisOf(vessel?.d ?? ''), thingPxPerM(line)),
      saidL,
      0.03 * saidL,
      'litres on the line',
    );
  });
});

/** Pixels to the metre of the things on the line: its last ruled bar with its figure. */
function thingPxPerM(line: readonly Part[]): number {
  const bar = named(line, 'path', 'hair').at(-1);
  const said = line.filter(({ name }) => name === 'tspan').at(-1)?.text ?? '';
  const [from, to] = cornersOf(bar?.d ?? '');
  return ((to?.x ?? 0) - (from?.x ?? 0)) / (number(said) * (/\scm$/.test(said) ? 0.01 : 1));
}

test('the sour line: each reading at its pH and day by the ticks, as in the table behind it', async ({ page }) => {
  await open(page, '2026-06-20', pegPath(15));
  const parts = await partsOf(page.locator('.sour-line svg.drawing'));
  const ph = readBy(marksOf(parts, /h6$/, firstY));
  const day = readBy(marksOf(parts, /v7$/, firstX));
  const rows = await page.getByRole('table', { name: 'Readings of peg 15' }).locator('tbody tr').allTextContents();
  const dots = named(parts, 'circle', 'lead');
  expect(dots).toHaveLength(rows.length);
  const readings = await page
    .getByRole('table', { name: 'Readings of peg 15' })
    .locator('tbody tr td:nth-child(2)')
    .allTextContents();
  const dates = await page.getByRole('table', { name: 'Readings of peg 15' }).locator('tbody th').allTextContents();
  const dayOf = (text: string) =>
    Date.parse(`${text.replaceAll('\u00a0', ' ').replace(/^\D+/, '')} 2026 UTC`) / 86_400_000;
  dots.forEach(({ at }, i) => {
    near(ph(at['cy'] ?? 0), number(readings[i] ?? ''), 0.02, `pH of reading ${i}`);
    near(day(at['cx'] ?? 0), dayOf(dates[i] ?? '') - dayOf(dates[0] ?? ''), 0.8, `day of reading ${i}`);
  });
  const limits = (['food', 'ready', 'held'] as const).map((name) =>
    ph(firstY(named(parts, 'path', `limit-${name}`)[0] as Part)),
  );
  [4.6, 4.2, 4].forEach((asked, i) => {
    near(limits[i] ?? 0, asked, 0.02, 'limit');
  });
});

test('jug and cans of a pour: the mark at its millilitres, each can filled to its litres', async ({ page }) => {
  await open(page, '2026-07-06', '/can');
  await page.locator('.bed-row', { hasText: 'Gate' }).click();
  const jug = await partsOf(page.locator('svg.jug'));
  const ml = readBy(
    jug.flatMap((part, i) => {
      const text = jug.slice(i + 1, i + 3).find(({ name }) => name === 'text');
      return part.kind === 'edge' && part.d.startsWith('M150') && text
        ? [{ figure: number(text.text), at: firstY(part) }]
        : [];
    }),
  );
  near(
    ml(firstY(named(jug, 'path', 'mark-accent')[0] as Part)),
    number(await page.locator('.dose-figure').textContent()),
    1,
    'dose',
  );
  const filled = async () => {
    const [said, parts] = [
      number(await page.locator('.fill-to b').textContent()),
      await partsOf(page.locator('.cans [aria-current] svg.can')),
    ];
    return { said, high: named(parts, 'rect', 'bare')[0]?.at['height'] ?? Number.NaN };
  };
  const whole = await filled();
  await page.getByRole('button', { name: 'Can 1 is poured' }).first().click();
  await expect(page.locator('#can-poured')).toHaveText('Can 2 is poured');
  const part = await filled();
  near((part.high / whole.high) * whole.said, part.said, 0.06, 'litres in the second can');
});

test('the can card for the wall: each can has its mark at the millilitres that are written beside it', async ({
  page,
}) => {
  await open(page, '2026-07-06', '/print/can');
  const parts = await partsOf(page.locator('svg.tag-jug'));
  const ml = readBy(marksOf(parts, /h6$/, firstY));
  const marks = named(parts, 'path', 'jug-mark').map(firstY);
  const names = named(parts, 'text', 'jug-name').map(({ text }) => numbers(text).at(-1) ?? Number.NaN);
  expect(names).toHaveLength(3);
  names.forEach((said, i) => {
    near(ml(marks[i] ?? 0), said, 1, 'mark');
  });
});

test('bottles on the shelf: their litres by wall and scale, and under them what a round takes', async ({ page }) => {
  await open(page, '2026-07-07', '/shelf');
  const svg = page.locator('.bottle-group svg.drawing').first();
  await settled(async () => {
    const parts = await partsOf(svg);
    const label = (await svg.getAttribute('aria-label'))?.split('to scale:')[1] ?? '';
    const said = [...label.matchAll(/([\d.]+)\sL/g)].map(([, litres]) => Number(litres));
    const pxPerM = await scaleOf(page);
    const drawn = named(parts, 'path', 'layer').map(({ d }) => ({
      litres: turnedL(d, axisOf(d), pxPerM),
      x: axisOf(d),
    }));
    expect(drawn).toHaveLength(said.length);
    drawn.forEach(({ litres }, i) => {
      near(litres, said[i] ?? 0, 0.03, 'litres in a bottle');
    });
    const [from, to] = cornersOf(named(parts, 'path', 'hair')[0]?.d ?? '');
    const apart = (drawn[1]?.x ?? 0) - (drawn[0]?.x ?? 0);
    // Over each bottle lies the share that is taken of what that one holds.
    const takenL = drawn.reduce((sum, { litres, x }) => {
      const over = Math.min(to?.x ?? 0, x + apart / 2) - Math.max(from?.x ?? 0, x - apart / 2);
      return sum + litres * Math.max(0, over / apart);
    }, 0);
    near(takenL, number(named(parts, 'text', 'figure').at(-1)?.text ?? ''), 0.06, 'litres of a round');
  });
});

test('the line: bottles hold together what is written over them, strips are as long as the beds', async ({ page }) => {
  await open(page, '2026-07-07', '/');
  let lengths = new Map<string, number>();
  await settled(async () => {
    const line = await partsOf(page.locator('.line-drawing'));
    const link = page.locator('.line-link[aria-label^="Bottle"]');
    const said = number(await link.getAttribute('aria-label'));
    const pxPerM = thingPxPerM(line);
    const litres = named(await partsOf(link), 'rect', 'layer').map(
      ({ at }) => 1000 * Math.PI * ((at['width'] ?? 0) / 2 / pxPerM) ** 2 * ((at['height'] ?? 0) / pxPerM),
    );
    near(
      litres.reduce((sum, one) => sum + one, 0),
      said,
      0.06,
      'litres in bottles',
    );
    const beds = await partsOf(page.locator('.line-link[aria-label^="Bed"]'));
    const metre = cornersOf(named(line, 'path', 'hair').at(-2)?.d ?? '');
    const bedPxPerM = (metre[1]?.x ?? 0) - (metre[0]?.x ?? 0);
    lengths = new Map(
      beds.flatMap((part, i) => {
        const tag = beds[i + 1];
        return part.name === 'rect' && part.kind === 'edge' && tag?.name === 'text'
          ? [[tag.text, (part.at['width'] ?? 0) / bedPxPerM] as const]
          : [];
      }),
    );
  });
  await page.goto('/plot');
  const texts = (await partsOf(page.locator('figure svg.drawing', { has: page.locator('rect.hatched') }))).filter(
    ({ name, text }) => name === 'text' && /, \d/.test(text),
  );
  expect(texts.length).toBeGreaterThanOrEqual(6);
  for (const { text } of texts) {
    const [tag = '', metres = Number.NaN] = [text.trim().split(/\s/)[0], numbers(text).at(-1)];
    near(lengths.get(tag) ?? Number.NaN, metres, 0.05, `length of ${tag}`);
  }
});

test('vessels and beds of the plot: litres to the rim and metres by the scale beneath', async ({ page }) => {
  await open(page, '2026-06-20', '/plot');
  await settled(async () => {
    const figure = page.locator('figure', { has: page.locator('path.wall') });
    const vessels = await partsOf(figure.locator('svg.drawing'));
    const pxPerM = pxPerMOf(await figure.locator('figcaption').textContent());
    const walls = named(vessels, 'path', 'wall');
    const typed = named(vessels, 'text', 'figure').map(({ text }) => number(text));
    expect(walls.length).toBeGreaterThanOrEqual(3);
    walls.forEach(({ d }, i) => {
      near(turnedL(insideOf(d), axisOf(d), pxPerM), typed[i] ?? 0, 0.03 * (typed[i] ?? 0), 'litres of a vessel');
    });
    const plan = page.locator('figure', { has: page.locator('rect.hatched') });
    const beds = await partsOf(plan.locator('svg.drawing').first());
    const bedPxPerM = pxPerMOf(await plan.locator('figcaption').textContent());
    let read = 0;
    beds.forEach((part, i) => {
      const text = beds[i + 1];
      if (part.name !== 'rect' || text?.name !== 'text' || !/, \d/.test(text.text)) return;
      near((part.at['width'] ?? 0) / bedPxPerM, numbers(text.text).at(-1) ?? 0, 0.06, text.text);
      read++;
    });
    expect(read).toBeGreaterThanOrEqual(6);
  });
});

test('strips of what the beds got: the hatched share is what was given of the need, in grams', async ({ page }) => {
  await open(page, '2026-08-20', '/got');
  await page.locator('.got-beds > li').first().waitFor();
  await settled(async () => {
    const bar = cornersOf((await partsOf(page.locator('.got-scale svg.drawing')))[0]?.d ?? '').map(({ x }) => x);
    const metrePx = Math.max(...bar) - Math.min(...bar);
    let read = 0;
    for (const bed of await page.locator('.got-beds > li').all()) {
      const text = (await bed.textContent()) ?? '';
      const parts = await partsOf(bed.locator('svg.drawing'));
      const [need, got] = [number(/Needs ([^,]*)/.exec(text)?.[1] ?? ''), number(/got ([^,]*)/.exec(text)?.[1] ?? '')];
      const strip = named(parts, 'rect', 'edge').at(-1)?.at['width'];
      if (strip === undefined || !(need > 0)) continue;
      const metres = / ([\d.]+)\u00a0m,/.exec(text)?.[1];
      if (metres !== undefined) near(strip / metrePx, Number(metres), 0.05, `length: ${text}`);
      const wide = [...named(parts, 'rect', 'hatched'), ...named(parts, 'rect', 'over')]
        .filter(({ kind }) => !kind.includes('got-liquid'))
        .reduce((sum, { at }) => sum + (at['width'] ?? 0), 0);
      const broken = named(parts, 'path', 'got-break').length > 0;
      // The liquid, less than one per cent, is drawn by itself; half a gram is what the written figure rounds off.
      if (!broken) near((wide / strip) * need, got, 0.015 * need + 0.6, `grams: ${text}`);
      read++;
    }
    expect(read).toBeGreaterThanOrEqual(5);
  });
});

test('the season of a bed: what the crop takes up, week by week, as in the table behind', async ({ page }) => {
  await open(page, '2026-08-20', '/got');
  await page.getByRole('link', { name: 'Gate' }).click();
  const parts = await partsOf(page.locator('.release-curve'));
  const grams = readBy(marksOf(parts, /^M48 .*H/, firstY));
  const drawn = cornersOf(named(parts, 'path', 'outline')[0]?.d ?? '').map(({ y }) => grams(y));
  const rows = await page.locator('.release table tbody tr td:nth-child(2)').allTextContents();
  expect(rows.length).toBeGreaterThan(5);
  expect(drawn).toHaveLength(rows.length);
  rows.forEach((text, i) => {
    near(drawn[i] ?? Number.NaN, number(text), 0.6, `week ${i}`);
  });
});

test('the sum of a straining: each part as wide as its kilograms', async ({ page }) => {
  await open(page, '2026-06-19', '/peg/14/strain');
  await page.locator('#strain-drained').fill('6.3 L');
  await page.locator('#strain-solids').fill('2.1 kg');
  await page.locator('#strain-solids').press('Enter');
  await page.locator('.sum-line').waitFor();
  await settled(async () => {
    const bars = page.locator('svg[aria-label^="Two bars to one scale"]');
    const parts = (await partsOf(bars)).filter(({ name }) => name === 'rect');
    const said = (await page.locator('.sum-names li').allTextContents()).map(number);
    expect(parts).toHaveLength(said.length);
    const width = Number(await bars.getAttribute('width')) - 4;
    const inKg = parts.reduce((sum, { at }, i) => sum + (at['y'] === 2 ? (said[i] ?? 0) : 0), 0);
    parts.forEach(({ at }, i) => {
      near(((at['width'] ?? 0) / width) * inKg, said[i] ?? 0, 0.08, `part ${i}`);
    });
  });
});

test('the bar of sugar: the weight you entered at its grams by the marks of the bar', async ({ page }) => {
  await openSheet(page);
  await overfill(page);
  const svg = page.locator('.bar svg.drawing');
  await expect(svg.locator('text', { hasText: /^250/ })).toBeVisible();
  const parts = await partsOf(svg);
  const [zero] = parts.filter(({ d }) => /v9$/.test(d)).map(firstX);
  // No amount fits: the ends of the window stand the wrong way round, each with its figure.
  const said = (end: string) =>
    number(parts.find(({ name, text }) => name === 'text' && text.startsWith(end))?.text ?? '');
  const { x = 0, width = 0 } = named(parts, 'rect', 'over')[0]?.at ?? {};
  const grams = readBy([
    { figure: 0, at: zero ?? 0 },
    { figure: said('least'), at: x + width },
  ]);
  near(grams(x), said('most'), 1, 'most sugar');
  near(grams(firstX(named(parts, 'path', 'mark-accent')[0] as Part)), 250, 1.5, 'grams of sugar');
});
