import { describe, expect, it } from 'vitest';
import { spread, twoLines } from './spread.ts';

describe('names beside a drawing', () => {
  const room = { top: 0, bottom: 200 };

  it('stand at the height of their things where there is room', () => {
    expect(
      spread(
        [
          { y: 30, high: 20 },
          { y: 120, high: 20 },
        ],
        room,
      ),
    ).toEqual([20, 110]);
  });

  it('never overlap and keep their order when all want the same place', () => {
    const wanted = Array.from({ length: 7 }, () => ({ y: 100, high: 25 }));
    const tops = spread(wanted, room);
    for (let i = 1; i < tops.length; i++) expect(tops[i]).toBeGreaterThanOrEqual((tops[i - 1] ?? 0) + 25);
    expect((tops.at(-1) ?? 0) + 25).toBeLessThanOrEqual(room.bottom);
    expect(tops[0]).toBeGreaterThanOrEqual(room.top);
  });

  it('stand one under another from the top when they need more than there is', () => {
    const tops = spread(
      Array.from({ length: 10 }, () => ({ y: 199, high: 25 })),
      room,
    );
    expect(tops).toEqual([0, 25, 50, 75, 100, 125, 150, 175, 200, 225]);
  });

  it('break into two lines at a space and are cut with an ellipsis only beyond that', () => {
    expect(twoLines('water', 10)).toEqual(['water']);
    expect(twoLines('grass clippings', 10)).toEqual(['grass', 'clippings']);
    expect(twoLines('a very long name of a thing indeed', 10)[1]).toMatch(/…$/);
  });
});
