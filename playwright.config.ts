// The page tests: the real server with the built page, in the real browser that scripts/programs.mjs finds.
// Every run takes a free port of its own, so that two runs on one machine never meet.

import './scripts/node-version.mjs';
import { createServer } from 'node:net';
import { defineConfig, devices } from '@playwright/test';
import { findChromium } from './scripts/programs.mjs';

const PORT_VARIABLE = 'PAGE_TEST_PORT';
process.env[PORT_VARIABLE] ??= String(await freePort());
const address = `http://127.0.0.1:${process.env[PORT_VARIABLE]}`;

export default defineConfig({
  testDir: 'test/screens',
  testMatch: '**/*.@(spec|test).ts',
  outputDir: 'test-results',
  forbidOnly: true,
  retries: 0,
  workers: 1,
  timeout: 90_000,
  expect: { timeout: 15_000 },
  reporter: [['list']],
  use: {
    ...devices['Desktop Chrome'],
    baseURL: address,
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: findChromium() ?? 'chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: 'node --import tsx src/server/main.ts',
    url: address,
    env: { PORT: process.env[PORT_VARIABLE] ?? '' },
    reuseExistingServer: false,
    stdout: 'ignore',
    stderr: 'pipe',
  },
});

/** A port that nobody listens on at this moment. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const bound = probe.address();
      probe.close(() => (bound && typeof bound === 'object' ? resolve(bound.port) : reject(new Error('no free port'))));
    });
  });
}
