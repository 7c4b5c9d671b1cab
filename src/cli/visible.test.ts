// No sign of a name can repaint the terminal, turn a figure around or hide: not in an answer, not in a refusal, not in JSON.

import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { run } from './run.ts';
import { visible } from './visible.ts';

const HIDDEN = [
  '\u0007',
  '\u001b[31m',
  '\u009b2J',
  '\u202e',
  '\u2066',
  '\u200b',
  '\u200d',
  '\ufeff',
  '\u2028',
  '\u{e0041}',
  '\ud800',
  '\u007f',
];
const RAW = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u;
/** All that was written, its own line ends apart. */
const flat = (text: string) => text.replaceAll('\n', '');
const asked = (args: readonly string[], input: unknown) =>
  run(args, { folder: '.', stdin: Readable.from([Buffer.from(JSON.stringify(input))]) });

describe('a hidden sign', () => {
  it('is written out, and what shows stays', () => {
    expect(visible('kale\u202e 12')).toBe('kale\\u202e 12');
    expect(visible('\u{e0041}')).toBe('\\udb40\\udc41');
    expect(visible('12\u00a0L of feed, 2½ spoons, häufig, 🥬')).toBe('12\u00a0L of feed, 2½ spoons, häufig, 🥬');
  });

  const beds = (name: string) => ({
    beds: [{ name, areaM2: 10, crop: 'kale' }],
    acts: [{ bed: name, kind: 'pour', on: '2026-05-01', concentrateL: 1 }],
    from: '2026-04-01',
    to: '2026-09-30',
    [`no field ${name}`]: 1,
  });

  it.each(HIDDEN)('%j reaches no line of an answer', async (sign) => {
    const { out, code } = await asked(['beds', '--why'], beds(`Gate${sign}`));
    expect(code).toBe(0);
    expect(out).toContain(`Gate${visible(sign)}`);
    expect(flat(out)).not.toMatch(RAW);
  });

  it.each(HIDDEN)('%j reaches no answer in JSON, which reads as the same name', async (sign) => {
    const { out, code } = await asked(['beds', '--json'], beds(`Gate${sign}`));
    expect(code).toBe(0);
    expect(flat(out)).not.toMatch(RAW);
    expect(JSON.parse(out).beds[0].name).toBe(`Gate${sign}`);
  });

  it.each(HIDDEN)('%j reaches no refusal', async (sign) => {
    const { err, code } = await asked(['beds'], {
      ...beds('Gate'),
      to: `later${sign}`,
      acts: [{ bed: `x${sign}`, kind: sign }],
    });
    expect(code).toBe(2);
    expect(flat(err)).not.toMatch(RAW);
    const { err: ofCall } = await run([`fit${sign}`, `--${sign}`], { folder: '.', stdin: Readable.from([]) });
    expect(flat(ofCall)).not.toMatch(RAW);
    expect(ofCall).toContain('; allowed: ');
  });
});

describe('a long name', () => {
  const long = 'x'.repeat(5000);
  it('is cut in a refusal and in the list of what was not read', async () => {
    const { err } = await asked(['can'], { canL: long, [long]: { [long]: 1 }, ratio: { n: 200, reading: long } });
    for (const line of err.trimEnd().split('\n')) expect(line.length).toBeLessThan(300);
    expect(err).toContain('x…');
    const { out } = await asked(['can'], { canL: 9, ratio: { n: 200, reading: 'in' }, [long]: 1 });
    expect(out).toMatch(/Not read, because this word has no such field: x{59}…\./);
  });

  it('of a file is cut', async () => {
    const { err } = await run(['can', long], { folder: '.', stdin: Readable.from([]) });
    expect(err.length).toBeLessThan(300);
  });
});

describe('fields that no word has', () => {
  it('are named up to twelve, and the rest are counted', async () => {
    const many = Object.fromEntries(Array.from({ length: 64_000 }, (_, i) => [`k${i}`, i]));
    const { out, code } = await asked(['can'], { canL: 9, ratio: { n: 200, reading: 'in' }, ...many });
    expect(code).toBe(0);
    expect(out).toContain('k0, k1, k2, k3, k4, k5, k6, k7, k8, k9, k10, k11 and 63988 more.');
  });

  it('never take a known field with them, whatever dots they hold', async () => {
    const input = {
      vessel: { volumeL: 20 },
      plants: [{ material: 'grass-clippings-fresh', massKg: 2 }],
      water: { volumeL: 10, alkalinityMeqPerL: 2.5, ph: 6 },
    };
    const plain = JSON.parse((await asked(['fit', '--json'], input)).out);
    const odd = { ...input, 'water.ph': 9, 'water.alkalinityMeqPerL': 0, 'plants[0].massKg': 7, 'vessel.volumeL': 1 };
    const answer = JSON.parse((await asked(['fit', '--json'], odd)).out);
    expect({ ...answer, cautions: [] }).toEqual({ ...plain, cautions: [] });
    const { text } = answer.cautions.find((one: { rule: string }) => one.rule === 'field-not-read');
    expect(text).toContain('["water.ph"], ["water.alkalinityMeqPerL"], ["plants[0].massKg"], ["vessel.volumeL"]');
  });
});
