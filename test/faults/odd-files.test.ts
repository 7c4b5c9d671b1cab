import { expect, it } from 'vitest';
import { run } from '../../scripts/faults/odd-files.ts';

it('odd files are refused with line and reason and leave nothing, or are taken in whole', async () => {
  const found = await run({ scale: 0.05 });
  expect(found.aside ?? []).toEqual([]);
  expect(found.failed).toBe(0);
});
