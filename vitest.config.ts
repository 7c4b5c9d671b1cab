// Every test that needs no browser: beside its file in src, or in test/. The page tests of test/screens have
// their own runner. A test marked "only" stops the run; nothing is passed over in silence.

import './scripts/node-version.mjs';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    exclude: ['test/screens/**', 'node_modules/**'],
    allowOnly: false,
    maxWorkers: 2,
    // Work is bounded in draws and steps, not in seconds: on a slow day a test takes its time.
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
