// How long a touch on "more" takes until the pail stands redrawn, in the real browser on the built page: the
// time the script takes by itself, and the time to the next painted frame (a frame of 60 a second lasts
// 16.7 ms, and a touch meets it at any moment). With the machine as it is, and with its CPU slowed fourfold.

import path from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { findChromium } from '../scripts/programs.mjs';
import { createApp } from '../src/server/app.ts';
import { withPainted } from './painted.ts';
import { middle } from './rate.ts';

const STEPS = 30;

/** Middle and worst of the steps, ms. */
export interface StepTimes {
  readonly slowed: number;
  readonly scriptMs: number;
  readonly paintedMs: number;
  readonly worstPaintedMs: number;
}

/** Times the steps on the example of the weigh-in sheet. */
export async function stepTimes(
  root: string,
): Promise<{ readonly browser: string; readonly times: readonly StepTimes[] }> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('no Chromium was found (node scripts/ensure.mjs chromium)');
  const app = await createApp(path.join(root, 'dist/web'));
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const times = [await timed(browser, address, 1), await timed(browser, address, 4)];
    return { browser: browser.version(), times };
  } finally {
    await browser.close();
    await app.close();
  }
}

async function timed(browser: Browser, address: string, slowed: number): Promise<StepTimes> {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(`${address}/weigh-in`);
  await page.getByRole('button', { name: 'Show me an example' }).click();
  const more = page.getByRole('button', { name: /clippings.* more$/i }).first();
  await more.waitFor();
  await withPainted(page);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const measured = await more.evaluate(async (button: HTMLElement, steps: number) => {
    // The largest drawing of the sheet is the pail; what it shows must change with every step.
    const drawings = () => [...document.querySelectorAll('svg')].map((one) => one.outerHTML).join('');
    const found: { scriptMs: number; paintedMs: number; redrawn: boolean }[] = [];
    for (let i = 0; i < steps + 3; i++) {
      await painted();
      const before = drawings();
      // Not in step with the frames: a touch may fall anywhere between two of them.
      await new Promise((resolve) => setTimeout(resolve, (i * 7) % 17));
      const begun = performance.now();
      button.click();
      const scriptMs = performance.now() - begun;
      const paintedMs = (await painted()) - begun;
      found.push({ scriptMs, paintedMs, redrawn: drawings() !== before });
    }
    return found.slice(3);
  }, STEPS);
  await page.close();
  const still = measured.filter(({ redrawn }) => !redrawn).length;
  if (still > 0) throw new Error(`${still} of ${STEPS} steps changed nothing in the drawing: no time to tell`);
  return {
    slowed,
    scriptMs: middle(measured.map((one) => one.scriptMs)),
    paintedMs: middle(measured.map((one) => one.paintedMs)),
    worstPaintedMs: Math.max(...measured.map((one) => one.paintedMs)),
  };
}
