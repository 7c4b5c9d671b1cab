import { describe, expect, it } from 'vitest';
import { axisDays, bandPath, casePaper, limitTops, linePath } from './case-lines-geometry.ts';

describe('the axis of two sour lines', () => {
  it('goes well past the later day at which one comes to 4.2, in few sizes', () => {
    // 1.4 × 2.4 = 3.4 -> 7; 1.4 × 12 = 16.8 -> 21; 28 where one does not come to it; 60 at most
    expect(axisDays([2.4, 1.6])).toBe(7);
    expect(axisDays([12, 3])).toBe(21);
    expect(axisDays([null, 3])).toBe(28);
    expect(axisDays([59, 3])).toBe(60);
  });

  it('runs from left to right and from a high pH down', () => {
    const paper = casePaper({ width: 350, height: 214, days: 7 });
    expect(paper.x(0)).toBe(paper.left);
    expect(paper.x(7)).toBe(paper.right);
    expect(paper.y(6)).toBeLessThan(paper.y(4));
    expect(paper.y(2)).toBe(paper.bottom);
  });

  it('keeps the names of the limits 20 px apart, each no higher than its line', () => {
    const paper = casePaper({ width: 350, height: 214, days: 7 });
    const tops = limitTops([{ ph: 4.6 }, { ph: 4.2 }, { ph: 4 }], paper);
    for (let i = 1; i < tops.length; i++) expect((tops[i] ?? 0) - (tops[i - 1] ?? 0)).toBeGreaterThanOrEqual(20);
  });
});

describe('a line and its span', () => {
  const paper = casePaper({ width: 350, height: 214, days: 7 });
  const days = [0, 3, 7, 20];

  it('end where the paper ends', () => {
    expect(
      linePath(
        days.map((day) => ({ day, ph: 5 })),
        paper,
      ).match(/L/g),
    ).toHaveLength(2);
    // Three days on the paper, above and below: six corners.
    const band = days.map((day) => ({ day, ph: { low: 4, high: 5 } }));
    expect(bandPath(band, paper).split(/[ML]/).filter(Boolean)).toHaveLength(6);
    expect(bandPath(band.slice(0, 1), paper)).toBe('');
  });
});
