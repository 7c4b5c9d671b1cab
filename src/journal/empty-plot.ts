// The plot of a record that holds nothing yet: what fold gives for no entries, without the fold and its tables, so that
// the first screen need not wait for them.

import type { Plot } from './fold.ts';

/** A plot of which nothing is known but its id. */
export function emptyPlot(id: string): Plot {
  return {
    id,
    facts: {},
    beds: new Map(),
    vessels: new Map(),
    cans: new Map(),
    tellings: new Map(),
    waters: [],
    lots: new Map(),
    products: [],
    labels: new Map(),
    batches: new Map(),
    bottles: new Map(),
    heapFed: [],
    heapLooked: [],
    soilTests: [],
    ownCrops: [],
    weather: [],
    feedTests: [],
    heapTests: [],
    photos: [],
    trialsLaid: [],
    trialsWeighed: [],
    lessonsReset: [],
    questions: [],
    sealed: [],
    waiting: [],
  };
}
