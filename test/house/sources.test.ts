// The page of sources is current, and the tables the ground is summed by rest on what was seen published.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { sourcesPage, tableCounts } from '../../scripts/sources.ts';
import { root } from './code.ts';

const LEAST_SHARE = 0.7;

describe('docs/sources.md', () => {
  it('is what the tables say; if not, run node --import tsx scripts/sources.ts', () => {
    expect(readFileSync(path.join(root, 'docs/sources.md'), 'utf8')).toBe(sourcesPage());
  });

  it('counts every figure under one mark', () => {
    for (const { table, figures, seen, derived, memory, practice } of tableCounts()) {
      expect(seen + derived + memory + practice, table).toBe(figures);
    }
  });
});

describe('the tables of crops, soil tests and release', () => {
  it.each(['crops.csv', 'soil-tests.csv', 'release.csv'])(
    '%s rests for at least 70 % of its figures on a source seen published',
    (table) => {
      const found = tableCounts().find((one) => one.table === table);
      expect((found?.onSeenSource ?? 0) / (found?.figures ?? 1)).toBeGreaterThanOrEqual(LEAST_SHARE);
    },
  );
});
