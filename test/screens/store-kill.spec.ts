// The browser is killed in mid-save, fifty times on one profile, then with a line of its log torn, then with its database
// gone: what had been acknowledged is there each time it is opened again, and an append is there whole or not at all.

import { expect, test } from '@playwright/test';
import { type KilledBrowser, killedBrowser } from './killed-browser.ts';
import { fillAndKill, loseDatabase, tearLog, whileMs } from './kills.ts';

const KILLS = 50;
const WHOLE = { missing: [], twice: 0, half: [] };

let browser: KilledBrowser;
test.beforeEach(async () => {
  browser = await killedBrowser();
});
test.afterEach(() => browser.end());

test('fifty kills in mid-save lose nothing that was acknowledged', async () => {
  test.setTimeout(600_000);
  for (let kill = 0; kill < KILLS; kill++) expect(await fillAndKill(browser, whileMs(kill))).toEqual(WHOLE);
  expect(await fillAndKill(browser, 0)).toEqual(WHOLE);
  expect(browser.acknowledged.size).toBeGreaterThan(KILLS);
});

test('a line torn by a kill, over which the browser drops its whole database, loses nothing', async () => {
  test.setTimeout(180_000);
  await fillAndKill(browser, 100);
  tearLog(browser);
  // The first opening writes on behind the torn line, the second stumbles over it.
  for (let i = 0; i < 3; i++) expect(await fillAndKill(browser, 100)).toEqual(WHOLE);
});

test('a database that is gone is made anew with all that was acknowledged', async () => {
  test.setTimeout(180_000);
  for (let i = 0; i < 2; i++) {
    expect(await fillAndKill(browser, 100)).toEqual(WHOLE);
    loseDatabase(browser);
  }
  expect(await fillAndKill(browser, 0)).toEqual(WHOLE);
});
