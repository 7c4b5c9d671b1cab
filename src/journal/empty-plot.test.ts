import { describe, expect, it } from 'vitest';
import { emptyPlot } from './empty-plot.ts';
import { fold } from './fold.ts';

describe('the empty plot', () => {
  it('is what the fold gives for no entries', () => {
    expect(emptyPlot('some-plot')).toEqual(fold([], 'some-plot'));
  });
});
