// What we read into the definitions of 21 CFR 112 beyond what they say; what they say is test/published/eating-days.test.ts.

import { describe, expect, it } from 'vitest';
import { type AnimalOrigin, type Eaten, eatingWait } from '#engine/can/eating.ts';
import { NOTHING_TOLD } from '#engine/scraps/profile.ts';
import { worked } from '../published/rows.ts';

describe('definitions of the codes as we read them', () => {
  it.each(worked('eating-days.csv'))('$case: $expected', (row) => {
    const found = eatingWait({
      crop: row.crop,
      eaten: row.eaten as Eaten,
      animalOrigin: row.animalOrigin as AnimalOrigin,
      held: true,
      way: 'soil',
      profile: { ...NOTHING_TOLD, sells: row.sells === 'yes' },
    });
    expect(String(found[row.quantity as keyof typeof found])).toBe(row.expected);
  });
});
