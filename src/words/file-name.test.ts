import { describe, expect, it } from 'vitest';
import { deviceTag } from './device-tag.ts';
import { fileName } from './file-name.ts';

const device = '019f3a5e-7c21-7b44-9d5e-0a1b2c3d4e5f';
const named = (plot: string) => fileName({ plot, device, now: '2026-07-07T18:35' });
const tag = deviceTag(device);

describe('the name of a file', () => {
  it.each([
    ['Sedge Corner', 'sedge-corner'],
    ['Möhren & Søn', 'mohren-s-n'],
    ['', 'plot'],
    ['Огород', 'plot'],
    ['../../etc', 'etc'],
    ['The allotment behind the old railway station', 'the-allotment-behind-the-old'],
    ['Antidisestablishmentarianismsgarten', 'antidisestablishmentarianismsg'],
    ['aaaaaaaaaaaaaaaaaaaaaaaaaaaaaa b', 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaa'],
  ])('of "%s" has plot, phone, date and time', (plot, plain) => {
    expect(named(plot)).toBe(`tilthwright-${plain}-${tag}-2026-07-07-1835.jsonl`);
    expect(named(plot)).toMatch(/^[a-z0-9-]+\.jsonl$/);
  });
  it('differs between two phones that make it in one minute', () => {
    expect(named('x')).not.toBe(fileName({ plot: 'x', device: 'another', now: '2026-07-07T18:35' }));
  });
});

describe('the short name of a phone', () => {
  it('is two plain words, the same each time', () => {
    expect(tag).toMatch(/^[a-z]+-[a-z]+$/);
    expect(deviceTag(device)).toBe(tag);
  });
  it('is spread: of 100 phones at least 80 have one of their own', () => {
    const tags = Array.from({ length: 100 }, (_, i) =>
      deviceTag(`019f3a5e-7c21-7b44-9d5e-${String(i).padStart(12, '0')}`),
    );
    expect(new Set(tags).size).toBeGreaterThanOrEqual(80);
  });
});
