// Days between raw manure and harvest as 7 CFR 205.203(c)(1) prints them; which crops are rarely eaten raw, and what
// counts as untreated, as 21 CFR 112 has it. That we take a feed for raw manure or for such a tea is our own reading.

import { describe, expect, it } from 'vitest';
import { type AnimalOrigin, type Eaten, eatingWait } from '#engine/can/eating.ts';
import { RAW_MANURE_DAYS } from '#engine/can/limits.ts';
import { eatingRules } from '#engine/rules/eating.ts';
import { NOTHING_TOLD } from '#engine/scraps/profile.ts';
import { figures } from '#engine/tables/index.ts';
import { published } from './rows.ts';

describe('days and definitions of the codes', () => {
  for (const row of published('eating-days.csv')) {
    it(`${row.case}: ${row.expected}`, () => {
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
  }

  // 7 CFR 205.203(c)(1)(ii) and (iii)
  it('are 120 and 90 days', () => {
    expect(RAW_MANURE_DAYS).toEqual({ touchesSoil: 120, otherwise: 90 });
  });

  // 21 CFR 112.56(a)(1)(i): the interval of an untreated amendment is "[Reserved]", so no days may be cited from it.
  it('take no days from 21 CFR 112, which leaves them open', () => {
    for (const animalOrigin of ['no', 'possible', 'yes'] as const) {
      const { daysSource } = eatingWait({
        crop: 'lettuce',
        eaten: 'raw-leaf',
        animalOrigin,
        held: true,
        way: 'soil',
        profile: { ...NOTHING_TOLD, sells: true },
      });
      expect(daysSource).not.toBe('cfr-21-112');
    }
  });

  // 21 CFR 112.2(a)(1): of the list, what our table grows. Each such row of the table cites the code, and no other does.
  it('have the table call rarely raw just what the list names', () => {
    const listed = [
      ...['asparagus', 'beetroot', 'collards', 'sweet-corn', 'dill', 'aubergine', 'ginger', 'horseradish'],
      ...['okra', 'potato', 'pumpkin', 'winter-squash', 'sweet-potato'],
    ];
    const rarely = [...figures('eating')].filter(([, row]) => row.usuallyRaw?.likely === 0);
    expect(rarely.map(([id]) => id).sort()).toEqual(listed.sort());
    for (const [id, row] of rarely) expect(row.usuallyRaw?.source, id).toBe('cfr-21-112');
  });

  it('speak for the place whose codes they are, and for no other', () => {
    for (const { id, source, speaksFor } of eatingRules)
      if (/^(cfr|nosb)-/.test(source)) expect(speaksFor, id).toEqual(['us']);
  });
});
