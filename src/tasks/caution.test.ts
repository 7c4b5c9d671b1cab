// What stands open on a sheet, what counts as a reason, and what a stop says to do instead.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allRules } from '#engine/rules/index.ts';
import { type Caution, instead, isReason, OPEN_BESIDE_STOPS, onSheet, spoken } from './caution.ts';

const SEED = 5;
const caution = (level: Caution['level'], rule: string, text = rule): Caution => ({ rule, level, text, source: 's' });
const cautions = fc.array(
  fc.record({
    rule: fc.constantFrom('a', 'b', 'c'),
    level: fc.constantFrom('stop' as const, 'hold' as const, 'caution' as const, 'note' as const),
    text: fc.constantFrom('x', 'y', 'z'),
    source: fc.constant('s'),
  }),
  { maxLength: 8 },
);
const places = fc.array(cautions, { minLength: 1, maxLength: 4 });

describe('the cautions of a sheet', () => {
  it('show a hold before a caution before a note, and fold what comes after two', () => {
    const list = [caution('note', 'n'), caution('caution', 'c'), caution('stop', 's'), caution('hold', 'h')];
    const { open, folded } = onSheet(0, [list]);
    expect(open.map(({ rule }) => rule)).toEqual(['s', 'h', 'c']);
    expect(folded.map(({ rule }) => rule)).toEqual(['n']);
  });

  it('count over all places of the sheet, so that a hold further down comes before a note further up', () => {
    const up = [caution('note', 'n1'), caution('note', 'n2')];
    const down = [caution('hold', 'h')];
    expect(onSheet(0, [up, down]).open.map(({ rule }) => rule)).toEqual(['n1']);
    expect(onSheet(1, [up, down]).open.map(({ rule }) => rule)).toEqual(['h']);
  });

  it('say a thing once, and keep two sentences of one rule apart', () => {
    const list = [caution('stop', 's', 'of lot 1'), caution('stop', 's', 'of lot 2'), caution('stop', 's', 'of lot 1')];
    expect(onSheet(0, [list]).open).toHaveLength(2);
    expect(onSheet(1, [list, list])).toEqual({ open: [], folded: [] });
  });

  it('always show every stop, at most two others, and nothing twice', () => {
    fc.assert(
      fc.property(places, (all) => {
        const shown = all.map((_, here) => onSheet(here, all));
        const open = shown.flatMap((one) => one.open);
        const folded = shown.flatMap((one) => one.folded);
        const keys = [...open, ...folded].map(({ rule, text }) => `${rule} ${text}`);
        expect(new Set(keys).size).toBe(keys.length);
        expect(new Set(keys)).toEqual(new Set(all.flat().map(({ rule, text }) => `${rule} ${text}`)));
        expect(folded.some(({ level }) => level === 'stop')).toBe(false);
        expect(open.filter(({ level }) => level !== 'stop').length).toBeLessThanOrEqual(OPEN_BESIDE_STOPS);
      }),
      { seed: SEED },
    );
  });
});

describe('a reason', () => {
  it.each(['', 'x', 'x y z', 'because', '. . . . . . . . . . . . . . .', '1 2 3 4 5 6 7 8 9 10', 'no no no'])(
    'is not given by "%s"',
    (text) => {
      expect(isReason(text)).toBe(false);
    },
  );
  it.each(['The lettuce is gone, beans grow here now.', 'Salat ist abgeerntet, jetzt Bohnen'])(
    'is given by "%s"',
    (text) => {
      expect(isReason(text)).toBe(true);
    },
  );
});

describe('a stop', () => {
  it('carries whether a reason may pass it and what to do instead; nothing else does', () => {
    const finding = {
      rule: 'bed-gets-none',
      level: 'stop',
      values: {},
      source: 'our-caution',
      override: 'reason',
    } as const;
    const [stop] = spoken([finding], { 'bed-gets-none': () => 'No feed.' });
    expect(stop).toMatchObject({ override: 'reason', instead: instead['bed-gets-none'] });
    const [note] = spoken([{ rule: 'n', level: 'note', values: {}, source: 'practice' }], { n: () => 'Note.' });
    expect(Object.keys(note ?? {})).toEqual(['rule', 'level', 'text', 'source']);
  });

  it('has something to do instead, whichever rule it is', () => {
    const stops = allRules.filter(({ level }) => level === 'stop').map(({ id }) => id);
    expect(stops.filter((id) => instead[id] === undefined)).toEqual([]);
  });
});
