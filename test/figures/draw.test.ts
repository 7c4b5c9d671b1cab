// The draw of figures to be moved: the same for the same seed, spread over the tables, and each move passes the checks of
// the tables. How many are noticed is counted by npm run figures.

import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawn, type Figure, figuresOf, moved } from '../../scripts/figures/draw.ts';
import { HEADING, linesOf, sectionOf } from '../../scripts/figures/page.ts';
import { makeTables } from '../../scripts/tables.mjs';
import { withSection } from '../../scripts/tests-page.ts';

const DATA = join(import.meta.dirname, '../../data');
const figures = figuresOf(DATA);
const nameOf = ({ table, line, end }: Figure) => `${table}:${line} ${end}`;

describe('the draw of figures', () => {
  it('knows every number of a row once, with its source and mark', () => {
    expect(new Set(figures.map(nameOf)).size).toBe(figures.length);
    const ends = figures.filter(
      ({ table, id, quantity }) => `${table} ${id} ${quantity}` === 'gas.csv co2 henrySlopeK',
    );
    expect(ends).toMatchObject([
      { end: 'low', stands: '2300', source: 'sander-2015', mark: 'seen' },
      { end: 'likely', stands: '2400' },
      { end: 'high', stands: '2400' },
    ]);
    expect(figures.filter(({ source, mark }) => source === '' || mark === '')).toEqual([]);
  });

  it('is the same for the same seed, another for another, and spread by how many figures a table holds', () => {
    const first = drawn(figures, { count: 200, seed: 1 });
    expect(first).toHaveLength(200);
    expect(new Set(first.map(nameOf)).size).toBe(200);
    expect(drawn(figures, { count: 200, seed: 1 })).toEqual(first);
    expect(drawn(figures, { count: 200, seed: 2 })).not.toEqual(first);
    const share = (list: readonly Figure[]) => list.filter(({ table }) => table === 'crops.csv').length / list.length;
    expect(Math.abs(share(first) - share(figures))).toBeLessThan(0.006);
  });

  it('moves a figure by a tenth, and the tables still pass', () => {
    for (const [at, figure] of drawn(figures, { count: 20, seed: 5 }).entries()) {
      const { to, text } = moved(DATA, figure, { seed: 5, at });
      expect(Math.abs(Number(to) / Number(figure.stands) - 1)).toBeCloseTo(0.1, 6);
      expect(makeTables(DATA, new Map([[figure.table, text]])).faults).toEqual([]);
    }
  });

  it('pushes the ends of a band along where a move would pass them', () => {
    const narrow = figures.find(({ table, id, end }) => `${table} ${id} ${end}` === 'extraction.csv liquid likely');
    if (narrow === undefined) throw new Error('data/extraction.csv has no density of the liquid');
    const { text } = moved(DATA, narrow, { seed: 1, at: 0 });
    expect(text.split('\n')[narrow.line]).toMatch(/^liquid,densityKgPerL,(0\.909,0\.909,1\.01|1\.01,1\.111,1\.111),/);
  });
});

describe('the section of docs/tests.md', () => {
  const [figure] = figures;
  if (figure === undefined) throw new Error('no figures');
  const noticed = { by: ['test/worked/a.test.ts'], tests: ['a'], unread: [] };
  const tried = [
    { figure, to: '1', noticed },
    { figure, to: '2', noticed: { by: [], tests: [], unread: ['test/worked/b.test.ts'] } },
  ];

  it('counts a test that could not run as nothing noticed', () => {
    expect(linesOf(tried, figures).at(-1)).toBe('Noticed: 1 of 2, 50.0 %.');
  });

  it('takes the place of the section before and leaves the others', () => {
    const section = sectionOf(tried, { figures, seed: 1, date: '2026-11-30' });
    const page = withSection(
      '# Tests\n\n## One\n\nleft\n\n## Figures of the tables\n\nmeasured before\n\n## Two\n\nleft too\n',
      HEADING,
      section,
    );
    expect(page).not.toContain('measured before');
    expect(page).toContain('## One\n\nleft\n');
    expect(page).toContain('\n## Two\n\nleft too\n');
    expect(withSection(page, HEADING, section)).toBe(page);
    expect(withSection('', HEADING, section)).toMatch(/^# .*\n\n## Figures of the tables\n/);
  });
});
