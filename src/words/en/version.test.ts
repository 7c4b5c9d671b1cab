import { expect, it } from 'vitest';
import { madeWith } from './version.ts';

it('tables and formulas are named in one line that fits on a tag', () => {
  const line = madeWith({ tables: { number: 12, on: '2026-09-30', digest: '1a2b3c4d' }, model: 3 });
  expect(line.replaceAll('\u00a0', ' ')).toBe('Tables of 30 Sept 2026, 1a2b3c4d; model 3');
});
