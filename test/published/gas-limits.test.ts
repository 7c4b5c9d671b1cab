// The limits for the air people breathe, as published.

import { describe, expect, it } from 'vitest';
import { H2S_LIMITS_PPM } from '#engine/souring/gas/hydrogen-sulphide.ts';
import { CO2_LIMITS_PPM } from '#engine/souring/gas/room.ts';
import { num, published } from './rows.ts';

const HELD: Readonly<Record<string, Readonly<Record<string, number>>>> = { co2: CO2_LIMITS_PPM, h2s: H2S_LIMITS_PPM };

describe('limits for the air people breathe', () => {
  it.each(published('gas-limits.csv').map((row) => [`${row.gas}: ${row.case}`, row] as const))('%s', (_name, row) => {
    expect(HELD[row.gas ?? '']?.[row.limit ?? '']).toBe(num(row, 'expectedPpm'));
  });
});
