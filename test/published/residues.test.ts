// Carbon to nitrogen of residues against two leaflets of the US conservation service: crop residues (nrcs-cn-cropping,
// table 1) and selected materials (nrcs-cn-feeding, which takes 40 % of carbon); carbon of plants (ma-2018, abstract); and
// the room that hay takes in water by the density of its dry matter (mcnulty-kennedy-1982, abstract: 1421 kg/m³).

import { describe, it } from 'vitest';
import { between, hold } from './held.ts';
import { num, published, rowBy } from './rows.ts';

const feeds = rowBy(published('nasem-2021.csv'), 'feed');
const feed = (name: string, column: string) => num(feeds(name), column);

describe('carbon to nitrogen', () => {
  it('wheat straw 80, corn stover 57, corn stalks to 100', () => {
    hold('materials', 'straw', 'cn', { likely: 80 });
    hold('materials', 'corn-stalks', 'cn', { likely: 57, high: 100 });
  });

  // aafc-holos-2025, nitrogen of straw: table 7, barley 3.8 to wheat 8.6 g/kg, grain corn 5 g/kg; table 46, 7.8 kg in 880 kg.
  it('straw from barley to wheat with the carbon of the feed library, corn stalks from grain corn to the library', () => {
    const carbon = (100 - feed('wheat straw', 'ashPercentDm')) / 1.8;
    hold('materials', 'straw', 'cn', { low: carbon / 0.86, high: carbon / 0.38 });
    hold('materials', 'straw', 'nPercentDm', { low: 0.38, high: (100 * 7.8) / 880 });
    const stalks = feed('corn stalks, ensiled, high dry matter', 'cpPercentDm') / 6.25;
    hold('materials', 'corn-stalks', 'nPercentDm', { low: 0.5, likely: (0.5 + stalks) / 2 });
  });

  // mdc-1994-sawdust, composition of sawdust: perhaps 0.1 % nitrogen, fresh often 500; a fifth allowed.
  it('fresh sawdust 500, with 0.1 % nitrogen', () => {
    hold('materials', 'sawdust', 'cn', { low: 0.8 * 500, likely: 500 });
    hold('materials', 'sawdust', 'nPercentDm', { likely: 0.1, high: 1.2 * 0.1 });
  });

  it('wood chips 100 to 500, with nitrogen from 0.4 down to 0.08 %', () => {
    hold('materials', 'wood-chips', 'cn', between(100, 500));
    hold('materials', 'wood-chips', 'nPercentDm', { low: 0.08, likely: 40 / 300, high: 0.4 });
  });

  it('mature lucerne hay 25, half of it carbon; 2.7 % nitrogen of lucerne hay and that of the feed library', () => {
    const middle = feed('legume hay, mid-maturity', 'cpPercentDm') / 6.25;
    hold('materials', 'hay-legume', 'cn', { high: 25 });
    hold('materials', 'hay-legume', 'nPercentDm', { low: 50 / 25, likely: (2.7 + middle) / 2 });
  });

  it('plants hold 45.0 % carbon in seed and fruit and 47.9 % in stems; 40 % is taken for residues', () => {
    hold('release', 'plant', 'carbonPercentDm', { low: 40, likely: 45, high: 47.9 });
  });
});

describe('hay in water', () => {
  it.each([
    ['hay-grass', 'cool season grass hay, mature', 'bermudagrass hay'],
    ['hay-legume', 'legume hay, mid-maturity', 'legume hay, immature'],
  ])('%s: its dry matter and its water, 15 % allowed for trapped air', (id, usual, driest) => {
    const volume = (name: string) => {
      const dm = feed(name, 'dmPercent') / 100;
      return dm / 1.421 + 1 - dm;
    };
    const likely = volume(usual);
    hold('materials', id, 'displacementLPerKg', { low: volume(driest), likely, high: 1.15 * likely });
  });
});

describe('potato haulm', () => {
  // muck-potato-vines, abstract: vines of 11 to 13 % dry matter would not ensile alone.
  it('holds up to 13 % dry matter while it is green', () => {
    hold('materials', 'blighted-haulm', 'dryMatter', { high: 0.13 });
  });
});
