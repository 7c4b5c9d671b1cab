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

describe('the tables of crops, materials, soil tests and release', () => {
  it.each([
    [['crops.csv']],
    [['food-figures.csv', 'group-figures.csv', 'material-figures.csv']],
    [['soil-tests.csv']],
    [['release.csv']],
  ])('%j rest for at least 70 % of their figures on a source seen published', (tables) => {
    const found = tableCounts().filter(({ table }) => tables.includes(table));
    expect(found.length).toBe(tables.length);
    const sum = (of: 'figures' | 'onSeenSource') => found.reduce((total, one) => total + one[of], 0);
    expect(sum('onSeenSource') / sum('figures')).toBeGreaterThanOrEqual(LEAST_SHARE);
  });
});
