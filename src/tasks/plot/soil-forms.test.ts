// A soil report typed in line by line: the classes are those of the published scales (test/published/soil-tests.csv);
// what cannot be right is asked about, and kept only where the grower says so.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { readSoilReport, type SoilRow, type SoilTyped } from './soil-forms.ts';

const me = recorder();
const bed = me.did('bed.described', '2026-04-01', { name: 'Long' });
const plot = fold([bed]);
const row = (told: Partial<SoilRow>): SoilRow => ({ what: 'p', value: '', unit: '', method: '', depth: '', ...told });
const typed = (rows: readonly Partial<SoilRow>[], change: Partial<SoilTyped> = {}): SoilTyped => ({
  of: 'bed',
  rows: rows.map(row),
  laboratory: '',
  note: '',
  insists: false,
  ...change,
});
const read = (told: SoilTyped) => readSoilReport(told, { plot, bed: bed.id });
const troublesOf = (told: SoilTyped) => {
  const found = read(told).read;
  return found.ok ? [] : [...found.troubles.keys()];
};

describe('a soil report', () => {
  // Bray-1: 15 to 24 ppm medium (table 21.2 of building-soils); 40 lb/acre are 20 ppm. Mehlich-3 K: from 278 lb/acre very high.
  it.each([
    [{ value: '20', unit: 'ppm', method: 'Bray-1' }, 'Tests medium', 'Building soils'],
    [{ value: '40', unit: 'lb/acre', method: 'Bray P1' }, 'Tests medium', 'Building soils'],
    [{ value: '10', unit: 'mg/kg', method: 'Bray-1' }, 'Tests low', 'Building soils'],
    [{ what: 'k', value: '81', unit: 'lb/acre', method: 'Mehlich-3' }, 'Tests low', ''],
    [{ what: 'k', value: '278', unit: 'lb/ac', method: 'M3' }, 'Tests more than high', ''],
    [{ value: '2', unit: 'index', method: 'Olsen' }, 'Tests medium', ''],
  ] as const)('says the class of %j at once, with its scale', (line, says, source) => {
    const { rows, read: body } = read(typed([line]));
    expect(rows[0]?.says[0]).toContain(says);
    expect(rows[0]?.says[0]?.toLowerCase()).toContain(source.toLowerCase());
    expect(rows[0]?.question).toBeUndefined();
    expect(body.ok).toBe(true);
  });
  it('reads 44.8 kg/ha as 40 lb/acre: one pound an acre is 1.12085 kg/ha', () => {
    const says = (value: string, unit: string) => read(typed([{ value, unit, method: 'Bray-1' }])).rows[0]?.says[0];
    expect(says(String(15 * 2 * 1.12085 + 0.01), 'kg/ha')).toContain('medium');
    expect(says(String(15 * 2 * 1.12085 - 0.01), 'kg/ha')).toContain('low');
  });
  it('tells what other published scales call the same value', () => {
    // 20 ppm by Bray: the midwest guide has most vegetables gain below 35 to 40 ppm, so low there
    expect(read(typed([{ value: '20', unit: 'ppm', method: 'Bray-1' }])).rows[0]?.says[1]).toMatch(
      /Other published scales: .*low \(/,
    );
  });
  it.each([
    [[{ value: '20', unit: 'ppm' }], 'By which method'],
    [[{ value: '20', unit: 'ppm', method: 'Spurway' }], 'By which method'],
    [[{ what: 'k', value: '20', unit: 'ppm', method: 'Olsen' }], 'Is the method right'],
    [[{ value: '20', unit: 'mg/L', method: 'Bray-1' }], 'Is the unit of'],
    [[{ value: '20', unit: 'bushels', method: 'Bray-1' }], 'Is the unit of'],
    [
      [
        { value: '20', unit: 'ppm', method: 'Olsen' },
        { what: 'ph', value: '5.6' },
      ],
      'An Olsen number on a soil of pH\u00a05.6',
    ],
    [[{ what: 'nitrate', value: '20', unit: 'furlongs' }], 'Nitrate nitrogen is read'],
    [[{ what: 'organic-matter', value: '20', unit: 'g/kg' }], 'This is read here in %'],
  ] as const)('asks about %j, gives no class and keeps it only if told so', (rows, question) => {
    const found = read(typed(rows));
    expect(found.rows[0]?.question?.text).toContain(question);
    expect(found.rows[0]?.says).toEqual([]);
    expect(troublesOf(typed(rows))).toEqual(['insists']);
    const kept = read(typed(rows, { insists: true })).read;
    expect(kept.ok && kept.body.figures).toHaveLength(rows.length);
  });
  it('takes the pH told of the bed before, where the report has none', () => {
    const sour = me.did('soil.tested', '2026-04-02', {
      bed: bed.id,
      figures: [{ what: 'ph', typed: '5.6', value: 5.6, unit: 'pH' }],
    });
    const told = typed([{ value: '20', unit: 'ppm', method: 'Olsen' }]);
    const later = readSoilReport(told, { plot: fold([bed, sour]), bed: bed.id });
    expect(later.rows[0]?.question?.text).toContain('5.6');
    expect(read(told).rows[0]?.question).toBeUndefined();
  });
  it('keeps what was typed beside what it was read as', () => {
    const { read: found } = read(
      typed([{ value: '20,5 ppm', method: 'Bray-1', depth: '8 in' }], { laboratory: 'County' }),
    );
    expect(found.ok && found.body).toEqual({
      bed: bed.id,
      laboratory: 'County',
      figures: [{ what: 'p', typed: '20,5', value: 20.5, unit: 'ppm', method: 'Bray-1', depthCm: 20.32 }],
    });
  });
  it('takes a share with its sign in the place of the value', () => {
    const { read: found } = read(typed([{ what: 'organic-matter', value: '4 %' }]));
    expect(found.ok && found.body.figures).toEqual([{ what: 'organic-matter', typed: '4', value: 4, unit: '%' }]);
  });
  it('of the whole plot names no bed', () => {
    const { read: found } = read(typed([{ what: 'ph', value: '6.4' }], { of: 'plot' }));
    expect(found.ok && 'bed' in found.body).toBe(false);
  });
  it('counts nitrate by its depth: 10 ppm in 17 cm are 20 lb/acre, 2.24 g/m², in 34 cm twice that', () => {
    const says = (depth: string) =>
      read(typed([{ what: 'nitrate', value: '10', unit: 'ppm', depth }])).rows[0]?.says.join(' ');
    expect(says('')).toMatch(/2\.2\u00a0g .*17 cm/);
    expect(says('34 cm')).toMatch(/4\.5\u00a0g/);
    expect(says('34 cm')).not.toContain('17 cm');
  });
  it.each([
    [[{ value: '', unit: 'ppm' }], ['figures.0.value']],
    [[{ value: 'much', unit: 'ppm' }], ['figures.0.value']],
    [[{ value: '1,500', unit: 'ppm' }], ['figures.0.value']],
    [[{ value: '20 ppm', unit: 'mg/L' }], ['figures.0.value']],
    [[{ value: '20', method: 'Bray-1' }], ['figures.0.unit']],
    [[{ what: 'ph', value: '13' }], ['figures.0.value']],
    [[{ what: 'organic-matter', value: '101' }], ['figures.0.value']],
    [[{ value: '20', unit: 'ppm', method: 'Bray-1', depth: 'deep' }], ['figures.0.depth']],
    [[{ value: '20', unit: 'ppm', method: 'Bray-1', depth: '301 cm' }], ['figures.0.depth']],
    [[{}, {}], ['figures']],
  ] as const)('refuses %j at its field', (rows, fields) => {
    expect(troublesOf(typed(rows))).toEqual(fields);
  });
  it('tells the troubles of all lines at once, each by its own number', () => {
    expect(troublesOf(typed([{ value: 'x', unit: 'ppm' }, {}, { value: '3', method: 'Olsen' }]))).toEqual([
      'figures.0.value',
      'figures.2.unit',
    ]);
  });
});
