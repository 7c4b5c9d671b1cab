// The tests of one room, in one world of modules: a mutant is asked of some fifty files, and the files of the engine are
// read once for all of them. Which tests is told by MUTATE_TESTS.

import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: JSON.parse(process.env.MUTATE_TESTS ?? '[]'),
    isolate: false,
    pool: 'threads',
    maxWorkers: 1,
    allowOnly: false,
    testTimeout: 60_000,
  },
});
