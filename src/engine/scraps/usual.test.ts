// What is taken where nobody told: each figure as it was set, with where it comes from. One taken too low asks for too little sugar, or
// lets a bottle stand too long.

import { describe, expect, it } from 'vitest';
import { figures } from '../tables/index.ts';
import { assumedUsual, type Untold, usual, usualBand } from './usual.ts';

const SET: Readonly<Record<Untold, readonly [low: number, likely: number, high: number, source: string]>> = {
  'vessel.gasRoomFraction': [0.25, 0.25, 0.25, 'practice'],
  'water.alkalinityMeqPerL': [0.5, 4, 6, 'our-caution'],
  'water.ph': [7.6, 7.6, 7.6, 'practice'],
  'part.dryMatter': [0.05, 0.12, 0.35, 'our-caution'],
  'dressing.dryMatter': [0.1, 0.3, 0.6, 'our-caution'],
  'dressing.bulkKgPerM3': [400, 400, 400, 'our-caution'],
  'bottle.temperatureC': [30, 30, 30, 'our-caution'],
  'batch.days': [10, 10, 10, 'our-caution'],
  'batch.finalPh': [3.9, 3.9, 3.9, 'our-caution'],
  'batch.drainedFraction': [0.5, 0.65, 0.8, 'our-caution'],
  'bed.widthM': [1.2, 1.2, 1.2, 'practice'],
  'soil.temperatureC': [10, 15, 20, 'our-caution'],
  'crop.seasonDays': [120, 120, 120, 'our-caution'],
};

describe('what is usual', () => {
  it('is every row of its table and no other', () => {
    const rows = [...figures('usual')].flatMap(([id, of]) => Object.keys(of).map((quantity) => `${id}.${quantity}`));
    expect(rows.toSorted()).toEqual(Object.keys(SET).toSorted());
  });
  it.each(Object.entries(SET))('%s is the figure that was set', (untold, [low, likely, high, source]) => {
    expect(usual(untold as Untold)).toMatchObject({ low, likely, high, source });
    expect(usualBand(untold as Untold)).toEqual({ low, likely, high });
  });
  it('is listed under the name of its field, with its source', () => {
    expect(assumedUsual('vessel.gasRoomFraction', { field: 'gasRoom', material: 'vessel' })).toEqual({
      field: 'gasRoom',
      material: 'vessel',
      value: { low: 0.25, likely: 0.25, high: 0.25 },
      source: 'practice',
    });
  });
  it('is our own fault where the table lacks it', () => {
    expect(() => usual('vessel.colour' as Untold)).toThrow('data/usual.csv has no vessel.colour');
  });
});
