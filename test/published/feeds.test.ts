// Materials against the feed library of the US academies (nasem-2021, Nutrient Requirements of Dairy Cattle): nitrogen is
// crude protein over 6.25, carbon is the matter that burns over 1.8. Which feeds stand for which material, and how far a
// band is widened below or above them, is said here; the numbers of the library stand in the rows.

import { describe, it } from 'vitest';
import { material } from '#engine/tables/index.ts';
import { about, type Given, hold } from './held.ts';
import { num, published, rowBy } from './rows.ts';

const feed = rowBy(published('nasem-2021.csv'), 'feed');

const dm = (name: string) => num(feed(name), 'dmPercent') / 100;
const n = (name: string) => num(feed(name), 'cpPercentDm') / 6.25;
const carbon = (name: string) => (100 - num(feed(name), 'ashPercentDm')) / 1.8;
const cn = (name: string) => carbon(name) / n(name);
const p = (name: string) => num(feed(name), 'pPercentDm');
const k = (name: string) => num(feed(name), 'kPercentDm');

function holdAll(id: string, quantities: Readonly<Record<string, Given>>): void {
  for (const [quantity, given] of Object.entries(quantities)) hold('materials', id, quantity, given);
}

const apple = 'apple pomace or byproduct, wet';
const citrus = 'citrus pulp, wet';
const pineapple = 'pineapple cannery waste';
const potato = 'potato byproduct';
const ripe = 'cool season grass hay, mature';
const half = 'cool season grass hay, mid-maturity';
const bermuda = 'bermudagrass hay';
const mixed = 'grass legume mixture, grass hay, mature';
const clover = 'grass legume mixture, legume hay, mature';
const young = 'legume hay, immature';
const middle = 'legume hay, mid-maturity';
const old = 'legume hay, mature';
const pasture = 'pasture, legume';
const stalks = 'corn stalks, ensiled, high dry matter';
const wetStalks = 'corn stalks, ensiled, low dry matter';

describe('materials by the feed library', () => {
  it('apple pomace: one row, 15 % allowed for dry matter and nitrogen, 25 % for minerals, 40 % for sugars', () => {
    holdAll('apple-pomace', {
      dryMatter: about(dm(apple), 0.15),
      nPercentDm: about(n(apple), 0.15),
      cn: { low: cn(apple) / 1.15, likely: cn(apple), high: cn(apple) / 0.85 },
      pPercentDm: about(p(apple), 0.25),
      kPercentDm: about(k(apple), 0.25),
      sugarsGPerKgDm: about(10 * num(feed(apple), 'wscPercentDm'), 0.4),
    });
  });

  it('mixed fruit scraps: between apple, citrus and pineapple', () => {
    holdAll('fruit-scraps-mixed', {
      dryMatter: { low: 0.85 * dm(apple), likely: dm(citrus), high: dm(pineapple) },
      nPercentDm: { low: 0.85 * n(apple), likely: n(pineapple), high: n(citrus) },
      cn: { low: cn(citrus), likely: cn(pineapple), high: cn(apple) },
      pPercentDm: { low: 0.75 * p(apple), likely: p(pineapple), high: p(citrus) },
      kPercentDm: { low: k(apple), likely: k(citrus), high: k(pineapple) },
    });
  });

  it('kitchen trimmings end where apple pomace stands', () => {
    holdAll('kitchen-trimmings', {
      dryMatter: { high: dm(apple) },
      nPercentDm: { low: n(apple) },
      cn: { high: cn(apple) },
    });
  });

  it.each(['hay-grass', 'long-grass'])('%s: ripe to half ripe hay, 15 % allowed on the poor side', (id) => {
    holdAll(id, {
      nPercentDm: { low: 0.85 * n(ripe), likely: n(ripe), high: n(half) },
      cn: { low: cn(half), likely: cn(ripe), high: cn(ripe) / 0.85 },
      pPercentDm: { low: p(bermuda), likely: p(ripe), high: p(half) },
      kPercentDm: { low: k(mixed), likely: k(ripe), high: k(half) },
    });
  });

  it('dry matter of hay: least, ripe and most', () => {
    holdAll('hay-grass', { dryMatter: { low: dm(mixed), likely: dm(ripe), high: dm(bermuda) } });
    holdAll('hay-legume', { dryMatter: { low: dm(old), likely: dm(middle), high: dm(young) } });
  });

  it('legume hay and lucerne', () => {
    holdAll('hay-legume', {
      nPercentDm: { high: n(young) },
      cn: { low: cn(young) },
      pPercentDm: { low: p(clover), likely: p(middle), high: p(young) },
      kPercentDm: { low: k(old), likely: k(middle), high: k(young) },
    });
    holdAll('lucerne', {
      nPercentDm: { low: n(clover), likely: n(middle), high: n(pasture) },
      cn: { low: cn(pasture), likely: cn(middle), high: cn(old) },
      pPercentDm: { low: p(clover), likely: (p(middle) + p(young)) / 2, high: p(pasture) },
      kPercentDm: { low: k(old), likely: (k(old) + k(clover)) / 2, high: k(pasture) },
    });
  });

  it('legume tops: carbon of legume pasture over their own nitrogen; young rye and legume pasture are the wettest', () => {
    const own = material('legume-tops')?.figures.nPercentDm ?? { low: NaN, likely: NaN, high: NaN };
    const c = carbon(pasture);
    holdAll('legume-tops', {
      dryMatter: { low: dm(pasture) },
      cn: { low: c / own.high, likely: c / own.likely, high: c / own.low },
    });
    holdAll('grass-clippings-fresh', { dryMatter: { low: dm('rye annual fresh, immature') } });
  });

  it('potato peel ends where the by-product of potatoes stands', () => {
    holdAll('potato-peel', {
      nPercentDm: { low: n(potato) },
      cn: { high: cn(potato) },
      kPercentDm: { low: k(potato) },
    });
  });

  it('straw and corn stalks', () => {
    const straw = 'wheat straw';
    holdAll('straw', {
      dryMatter: { likely: dm(straw) },
      pPercentDm: { high: p(straw) },
      kPercentDm: { high: k(straw) },
    });
    holdAll('corn-stalks', {
      dryMatter: { low: 0.9 * dm(stalks), likely: dm(stalks) },
      nPercentDm: { high: n(wetStalks) },
      cn: { low: cn(wetStalks) },
      pPercentDm: { low: 0.75 * p(stalks), likely: p(stalks), high: p(wetStalks) },
      kPercentDm: { low: 0.75 * k(stalks), likely: k(stalks), high: k(wetStalks) },
    });
  });
});
