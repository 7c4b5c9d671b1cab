// Clippings after weedkiller: the kind and the label decide, the days that went by do not.

import { describe, expect, it } from 'vitest';
import { ownClippings, read } from './slip.ts';

const treated = { ...ownClippings, treated: 'yes' } as const;

describe('clippings that weedkiller was used on', () => {
  it('stay on their lawn where it was a lasting kind, three weeks or two years ago', () => {
    for (const sinceTreatedDays of [21, 730]) {
      const said = read({ ...treated, weedkiller: 'lasting', sinceTreatedDays });
      expect([said.outcome, said.goes, said.by]).toEqual(['out', 'where-it-grew', 'slip-weedkiller']);
      expect(said.cautions[0]?.text).toContain(`${sinceTreatedDays}\u00a0days ago`);
      expect(said.cautions[0]?.source).toContain('National Pesticide Information Center');
    }
  });

  it('stay there too where the kind is not known or the label is not at hand', () => {
    expect(read(treated).outcome).toBe('out');
    expect(read({ ...treated, weedkiller: 'unknown', labelAllows: 'yes' }).outcome).toBe('out');
    expect(read({ ...treated, weedkiller: 'other', labelAllows: 'unknown' }).outcome).toBe('out');
  });

  it('wait for a bean test where another kind was used and its label lets them go', () => {
    const said = read({ ...treated, weedkiller: 'other', labelAllows: 'yes' });
    expect([said.outcome, said.by]).toEqual(['set-aside', 'slip-label-allows']);
  });
});
