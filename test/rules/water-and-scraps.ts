// Water and scraps: each kind of water and lot that a rule is about, beside one that it is not about.

import { type ScrapsSituation, scrapsRules } from '#engine/rules/scraps.ts';
import { waterRules } from '#engine/rules/water.ts';
import type { Portion } from '#engine/scraps/part.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import type { WaterAsked } from '#engine/scraps/water.ts';
import { examplesOf } from './example.ts';

const tap: WaterAsked = { volumeL: 8, source: 'tap', use: 'raw-crop' };
const water = examplesOf(waterRules, {
  'water-of-animal-origin-possible': [{ ...tap, source: 'roof' }, tap],
  'water-source-not-named': [{ ...tap, source: undefined }, tap],
  'rain-not-boiled': [{ ...tap, source: 'rain' }, tap],
  'well-not-tested': [{ ...tap, source: 'well' }, tap],
  // 40 CFR 141.65: 4.0 mg/L, chlorine and chloramine alike
  'more-chlorine-than-drinking-water': [
    { ...tap, freeChlorineMgPerL: 2, chloramineMgPerL: 2.1 },
    { ...tap, freeChlorineMgPerL: 2, chloramineMgPerL: 2 },
  ],
  'ascorbic-acid-disputed': [
    { ...tap, chloramineMgPerL: 1 },
    { ...tap, freeChlorineMgPerL: 1 },
  ],
  'thiosulfate-two-figures': [{ ...tap, freeChlorineMgPerL: 1 }, tap],
  'hardness-is-not-alkalinity': [
    { ...tap, alkalinity: { value: 12, unit: 'dH' } },
    { ...tap, alkalinity: { value: 4, unit: 'meq/L' } },
  ],
  'mmol-read-as-bicarbonate': [
    { ...tap, alkalinity: { value: 4, unit: 'mmol/L' } },
    { ...tap, alkalinity: { value: 4, unit: 'meq/L' } },
  ],
});

function lot(portion: Portion): ScrapsSituation {
  return { part: resolvePart(portion), treated: portion.treated };
}
const of = (material: string, treated: Portion['treated'] = 'no') => lot({ material, massKg: 1, treated });
const carrot = of('carrot');
const ownName = lot({ name: 'something from the shed', massKg: 1, dryMatter: 0.2 });
/** A lot under an id that the table does not have. */
const noRow: ScrapsSituation = { ...ownName, part: { ...ownName.part, id: 'no-such-row' } };

const scraps = examplesOf(scrapsRules, {
  'weedkiller-treated': [of('grass-clippings-fresh', 'yes'), of('grass-clippings-fresh', 'no')],
  'weedkiller-unknown': [of('grass-clippings-fresh', 'unknown'), of('grass-clippings-fresh', 'no')],
  'weedkiller-not-answered': [lot({ material: 'grass-clippings-fresh', massKg: 1 }), of('grass-clippings-fresh', 'no')],
  'pet-waste': [of('pet-waste'), carrot],
  'meat-fish-dairy': [of('meat-fish-dairy'), carrot],
  'cooked-food': [of('cooked-food'), carrot],
  'diseased-haulm': [of('blighted-haulm'), carrot],
  'raw-manure': [of('horse-manure'), of('finished-compost')],
  'seeds-in-the-liquid': [of('seeded-weeds'), carrot],
  'rhubarb-leaves': [of('rhubarb-leaves'), carrot],
  'compost-in-the-liquid': [of('finished-compost'), of('horse-manure')],
  'lime-in-the-liquid': [of('eggshell'), carrot],
  'dry-and-woody': [of('straw'), of('grass-clippings-fresh')],
  'not-in-the-liquid': [noRow, carrot],
  'lot-not-in-the-list': [ownName, carrot],
  'salt-of-the-sea': [of('seaweed'), carrot],
  'citrus-oil': [of('citrus-peel'), carrot],
});

export const waterAndScraps = [...water, ...scraps];
