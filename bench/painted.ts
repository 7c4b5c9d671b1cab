// What a measurement calls in the page: the wait until the next frame is painted.

import type { Page } from '@playwright/test';

declare global {
  /** Resolves once the next frame is painted, with the page's time then, ms. */
  function painted(): Promise<number>;
}

/** The compiler of tsx names functions through a helper of its own, which the page does not have either. */
const HELPERS = `
globalThis.__name = (named) => named;
globalThis.painted = () => new Promise((resolve) => {
  requestAnimationFrame(() => {
    const after = new MessageChannel();
    after.port1.onmessage = () => resolve(performance.now());
    after.port2.postMessage(0);
  });
});`;

/** Gives the page, and whatever it loads after, what a measurement calls. */
export async function withPainted(page: Page): Promise<void> {
  await page.addInitScript(HELPERS);
  await page.evaluate(HELPERS);
}
