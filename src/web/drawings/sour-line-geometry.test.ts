import { describe, expect, it } from 'vitest';
import {
  alarmPath,
  bandPaths,
  type DrawnReading,
  figurePlace,
  labelled,
  limitNames,
  linePath,
  namesSide,
  sourScale,
  spanOn,
  warmthStrip,
} from './sour-line-geometry.ts';

const reading = (day: number, ph: number, errorPh = 0.1): DrawnReading => ({ day, ph, errorPh, text: ph.toFixed(1) });
const room = { width: 350, height: 380, lastDay: 9 };

describe('the paper of a sour line', () => {
  it('has room for every reading with its error, and for every day asked', () => {
    const readings = [reading(0, 7.4, 0.3), reading(3, 6.4), reading(40, 3.4, 0.3)];
    const scale = sourScale(readings, room);
    for (const { day, ph, errorPh } of readings) {
      expect(scale.y(ph + errorPh)).toBeGreaterThanOrEqual(scale.top);
      expect(scale.y(ph - errorPh)).toBeLessThanOrEqual(scale.bottom);
      expect(scale.x(day)).toBeLessThanOrEqual(scale.right);
    }
  });
  it('puts equal steps of pH and of days at equal distances', () => {
    const scale = sourScale([reading(0, 6.3)], room);
    expect(scale.y(4) - scale.y(5)).toBeCloseTo(scale.y(5) - scale.y(6), 9);
    expect(scale.x(2) - scale.x(1)).toBeCloseTo(scale.x(9) - scale.x(8), 9);
  });
  it('starts at day 0 and ends on a tick', () => {
    const scale = sourScale([], { ...room, lastDay: 22 });
    expect(scale.dayTicks[0]).toBe(0);
    expect(scale.dayTicks.at(-1)).toBe(scale.days);
    expect(scale.days).toBeGreaterThanOrEqual(22);
  });
});

describe('the line of alarm', () => {
  it('goes down in steps: at 5.0 from its day on, at 4.6 from its day on', () => {
    const scale = sourScale([], room);
    const path = alarmPath(
      [
        { ph: 5, day: 3 },
        { ph: 4.6, day: 5 },
      ],
      scale,
    );
    const at = (value: number) => value.toFixed(1);
    expect(path).toBe(
      `M${at(scale.x(3))} ${at(scale.top)}H${at(scale.x(3))}V${at(scale.y(5))}H${at(scale.x(5))}V${at(scale.y(4.6))}H${at(scale.right)}`,
    );
  });
  it('is left out where its days are not known', () => {
    expect(alarmPath([], sourScale([], room))).toBe('');
  });
});

describe('the figures beside the dots', () => {
  it('keep the last and the first, and leave out what would stand on another', () => {
    const readings = [reading(0, 6.3), reading(0.1, 6.2), reading(4, 4.1), reading(4.05, 4.1)];
    const kept = labelled(readings, sourScale(readings, room));
    expect(kept).toContain(readings[3]);
    expect(kept).toContain(readings[0]);
    expect(kept).not.toContain(readings[2]);
  });
  it('are none where nothing was read', () => {
    expect(labelled([], sourScale([], room))).toEqual([]);
  });
});

describe('the names of the limits', () => {
  const side = (readings: readonly DrawnReading[], lastDay: number) =>
    namesSide(readings, sourScale(readings, { ...room, lastDay }));
  it('stand at the left while the readings are above or come down at the right', () => {
    expect(side([], 12)).toBe('left');
    expect(side([reading(0, 6.9), reading(6, 5.7)], 12)).toBe('left');
    expect(side([reading(0, 6.9), reading(6, 5.7), reading(12, 4.4)], 12)).toBe('left');
  });
  it('make way to the right for a batch that came down early', () => {
    expect(side([reading(0, 6.3), reading(2, 4.5), reading(4, 4.1)], 12)).toBe('right');
  });
});

describe('names and figures on one paper', () => {
  const limits = [
    { text: '4.6 food line', ph: 4.6, under: false },
    { text: '4.2 ready if twice', ph: 4.2, under: false },
    { text: '4.0 for held', ph: 4.0, under: true },
  ] as const;
  const slow = [7, 6.4, 5.7, 5.1, 4.7, 4.4, 4.1].map((ph, i) => reading(i * 3, ph));
  it.each([270, 350, 640])('keep clear of one another and of the last figure, %s px wide', (width) => {
    for (let until = 1; until <= slow.length; until++) {
      const readings = slow.slice(0, until);
      const scale = sourScale(readings, { width, height: 380, lastDay: 22 });
      const names = limitNames(limits, readings, scale);
      const last = figurePlace(readings.at(-1) as DrawnReading, scale);
      for (const { box, text } of names) {
        const beside = last.anchor === 'start' ? box.right <= last.x : box.left >= last.x;
        const apart = beside || box.bottom <= last.y - 32 || box.top >= last.y;
        expect(apart || box.left >= last.x + 56 || box.right <= last.x - 56, `${text} at ${until}`).toBe(true);
      }
      for (const one of labelled(
        readings,
        scale,
        names.map(({ box }) => box),
      ).slice(0, -1)) {
        const { x, y } = figurePlace(one, scale);
        for (const { box } of names)
          expect(x + 34 <= box.left || x >= box.right || y <= box.top || y - 22 >= box.bottom).toBe(true);
      }
    }
  });
});

describe('what is expected', () => {
  const scale = sourScale([], room);
  const band = [
    { day: 0, low: 6, high: 6.5 },
    { day: 1, low: 3, high: 8 },
    { day: 99, low: 4, high: 5 },
  ];
  it('is a band between its low and its high edge, cut at the edges of the paper', () => {
    const at = (value: number) => value.toFixed(1);
    const { high, low } = bandPaths(band, scale);
    expect(high).toBe(`M${at(scale.left)} ${at(scale.y(6.5))}L${at(scale.x(1))} ${at(scale.top)}`);
    expect(low).toBe(`M${at(scale.left)} ${at(scale.y(6))}L${at(scale.x(1))} ${at(scale.bottom)}`);
  });
  it('is nothing before it is known', () => {
    expect(bandPaths([], scale)).toEqual({ high: '', low: '', area: '' });
    expect(linePath([], scale)).toBe('');
  });
  it('has room for the lowest pH that is likely', () => {
    expect(sourScale([], { ...room, lowestPh: 3.2 }).bottomPh).toBe(3);
  });
});

describe('a span of dates', () => {
  const scale = sourScale([], room);
  it('reaches from its first to its last day', () => {
    const drawn = spanOn({ from: 2, to: 5, openEnded: false }, scale);
    expect(drawn).toEqual({ from: scale.x(2), to: scale.x(5), goesOn: false });
  });
  it('goes on where its end is past the paper or not known, and is not drawn where it begins past it', () => {
    expect(spanOn({ from: 2, to: 99, openEnded: false }, scale)).toMatchObject({
      to: scale.x(scale.days),
      goesOn: true,
    });
    expect(spanOn({ from: 2, to: 5, openEnded: true }, scale)?.goesOn).toBe(true);
    expect(spanOn({ from: 99, to: 120, openEnded: false }, scale)).toBeUndefined();
  });
});

describe('the temperatures beneath', () => {
  it('stand between two lines five degrees apart or a multiple of it, at least four degrees clear of them', () => {
    const scale = sourScale([], room);
    const days = [0, 1, 2].map((day) => ({ day, lowC: 9, highC: 15 }));
    const strip = warmthStrip(days, { scale, top: 400, toldUntil: 2 });
    expect(strip.ticks.map(({ c }) => c)).toEqual([5, 20]);
    expect(strip.ticks.map(({ y }) => y)).toEqual([strip.bottom, 400]);
    expect(strip.told.split('L')).toHaveLength(8);
    expect(strip.ahead.split('L')).toHaveLength(4);
  });
});
