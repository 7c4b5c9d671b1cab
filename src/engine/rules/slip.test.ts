import { describe, expect, it } from 'vitest';
import { citation, excluded, materials } from '#engine/tables/index.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { slipCautions, slipGoes, slipInstead, slipSays } from '#words/en/slip.ts';
import type { SourceSlip } from '../scraps/slip.ts';
import { excludedRules, judgeSlip, slipRules } from './slip.ts';

const own: SourceSlip = { whose: 'own', from: 'garden', treated: 'no', condition: 'fresh', species: 'lawn clippings' };
const clippings: SourceSlip = { ...own, species: undefined, material: 'grass-clippings-fresh' };
const LEVEL_OF = { 'compost-only': ['stop', 'hold'], 'set-aside': ['hold'], out: ['stop'] };

/** Slips that between them make every rule speak. */
const slips: readonly SourceSlip[] = [
  { ...own, treated: 'yes', sinceTreatedDays: 21 },
  { ...own, treated: 'yes', weedkiller: 'other', labelAllows: 'yes' },
  { ...own, treated: 'unknown' },
  { ...own, whose: 'neighbour', site: { outside: 'forbidden' } },
  { ...own, whose: 'neighbour', site: { outside: 'unknown' } },
  { ...own, whose: 'unknown' },
  { ...own, from: 'street' },
  { ...own, kitchen: 'plate' },
  { ...own, kitchen: 'cooked' },
  { ...own, kitchen: 'unknown' },
  { ...own, condition: 'slimy' },
  { ...own, condition: 'unknown' },
  { ...own, species: ' ' },
  { ...own, treated: 'unknown', beans: 'harmed' },
  ...excluded.map((row) => ({ ...own, excluded: [row.id] })),
];

describe('rules about source slips', () => {
  it('keep silent on fresh, untreated clippings of the own lawn', () => {
    expect(judgeSlip({ slip: clippings })).toEqual({ outcome: 'in', findings: [] });
  });

  it('each speak for one slip of the list, and every reason has its rule', () => {
    const spoke = slips.flatMap((slip) => judgeSlip({ slip }).findings.map(({ rule }) => rule));
    expect(new Set(spoke)).toEqual(new Set([...slipRules, ...excludedRules].map(({ id }) => id)));
    for (const slip of slips) expect(judgeSlip({ slip }).findings.length, JSON.stringify(slip)).toBeGreaterThan(0);
  });

  it('name the rule that decides, where the lot goes, and a level that fits the outcome', () => {
    for (const slip of slips) {
      const { outcome, goes, by, findings } = judgeSlip({ slip });
      expect(goes && slipGoes[goes]).toMatch(/\.$/);
      const level = findings.find(({ rule }) => rule === by)?.level;
      if (outcome === 'in') throw new Error('a slip of the list went in');
      expect(LEVEL_OF[outcome]).toContain(level);
    }
  });

  it('say a sentence for each finding, with every value filled in and a source that can be cited', () => {
    for (const slip of slips) {
      for (const finding of judgeSlip({ slip, siteRule: { text: 'No outside waste.', on: '2026-03-01' } }).findings) {
        const text = slipCautions[finding.rule]?.(finding.values) ?? '';
        expect(text, finding.rule).toMatch(/\.$/);
        expect(text).not.toMatch(/undefined|NaN|\[object/);
        expect(citation(finding.source)).not.toBe('');
      }
    }
  });

  it('leave something to do in place of every stop, and of nothing else', () => {
    const stops = [...slipRules, ...excludedRules].filter(({ level }) => level === 'stop').map(({ id }) => id);
    expect(Object.keys(slipInstead).toSorted()).toEqual(stops.toSorted());
  });

  it('let nobody override poison, burning sap, disease or weedkiller', () => {
    const firm = [
      'slip-weedkiller',
      ...excluded.filter((row) => row.group !== 'slow').map((row) => `excluded-${row.id}`),
    ];
    const soft = [...slipRules, ...excludedRules].filter(
      ({ id, override }) => firm.includes(id) && override !== 'none',
    );
    expect(soft.map(({ id }) => id).toSorted()).toEqual(
      excluded
        .filter((row) => row.into === 'hot-heap-only')
        .map((row) => `excluded-${row.id}`)
        .toSorted(),
    );
  });

  it('give no lot a softer place than the table of materials does, and say so in the words of that table', () => {
    const ORDER = ['liquid', 'compost-only', 'set-aside', 'out'];
    const OUTCOMES = ['in', 'compost-only', 'set-aside', 'out'];
    for (const row of materials) {
      const judged = judgeSlip({ slip: { ...clippings, material: row.id } });
      expect(OUTCOMES.indexOf(judged.outcome), row.id).toBeGreaterThanOrEqual(ORDER.indexOf(row.into));
      if (row.into === 'liquid') continue;
      expect(scrapsCautions[judged.by ?? '']?.({ material: row.name }), row.id).toBeDefined();
      expect(slipSays(judged)).toHaveLength(2);
    }
  });

  it('grow no softer when meat, plate scraps, manure, compost or a sick plant is added', () => {
    const OUTCOMES = ['in', 'compost-only', 'set-aside', 'out'];
    const rank = (slip: SourceSlip) => OUTCOMES.indexOf(judgeSlip({ slip }).outcome);
    for (const slip of [clippings, ...slips.map((one) => ({ ...one, material: 'grass-clippings-fresh' }))]) {
      for (const material of [
        'meat-fish-dairy',
        'cooked-food',
        'cattle-manure',
        'finished-compost',
        'blighted-haulm',
      ]) {
        expect(rank({ ...slip, material }), `${material} ${JSON.stringify(slip)}`).toBeGreaterThanOrEqual(rank(slip));
      }
      expect(rank({ ...slip, excluded: [...(slip.excluded ?? []), 'late-blight'] })).toBe(OUTCOMES.indexOf('out'));
    }
  });

  it('do not speak of weedkiller twice', () => {
    const { findings } = judgeSlip({ slip: { ...clippings, treated: 'unknown' } });
    expect(findings.map(({ rule }) => rule)).toEqual(['slip-treatment-unknown']);
  });
});
