import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    exclude: ['test/screens/**', 'node_modules/**'],
    maxWorkers: 2,
    testTimeout: 60_000,
  },
});
