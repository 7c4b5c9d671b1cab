// The wait between pour and picking, a reason at a time. 120 and 90 days are 7 CFR 205.203(c)(1); the other figures are
// our cautions and stand in limits.ts under that name.
import { describe, expect, it } from 'vitest';
import { NOTHING_TOLD } from '../scraps/profile.ts';
import { type EatingAsk, eatingWait } from './eating.ts';

const lettuce: EatingAsk = {
  crop: 'lettuce',
  eaten: 'raw-leaf',
  animalOrigin: 'no',
  held: true,
  way: 'soil',
  profile: NOTHING_TOLD,
};
const tomato: EatingAsk = { ...lettuce, crop: '8 tomatoes', eaten: 'raw-fruit' };
const kale: EatingAsk = { ...lettuce, crop: 'kale', eaten: 'cooked' };
const told = (change: Partial<typeof NOTHING_TOLD>) => ({ profile: { ...NOTHING_TOLD, ...change } });
const says = (ask: EatingAsk) => {
  const { how, days, reason } = eatingWait(ask);
  return [how, days, reason];
};

describe('a bed eaten raw', () => {
  it('takes a held batch of plants on the soil, 14 days before picking, and no spray', () => {
    expect(says(lettuce)).toEqual(['soil', 14, 'held-raw']);
    expect(eatingWait(lettuce).source).toBe('our-caution');
  });
  it('waits 120 days for a batch that was not held, or of which nobody told', () => {
    expect(says({ ...lettuce, held: false })).toEqual(['soil', 120, 'not-held-raw']);
    expect(says({ ...tomato, held: undefined })).toEqual(['soil', 120, 'not-held-raw']);
    expect(says({ ...lettuce, animalOrigin: undefined })).toEqual(['soil', 120, 'source-not-known']);
  });
  it('waits 120 days after roof water where it touches the soil, 90 where it is staked', () => {
    expect(says({ ...lettuce, animalOrigin: 'possible' })).toEqual(['soil', 120, 'animal-origin-possible']);
    expect(says({ ...tomato, animalOrigin: 'possible' })).toEqual(['soil', 90, 'animal-origin-possible']);
    expect(eatingWait({ ...tomato, animalOrigin: 'possible' })).toMatchObject({
      source: 'our-caution',
      daysSource: 'cfr-7-205-203',
    });
  });
  it('takes a root eaten raw as touching the soil, whatever grows there: 7 CFR 205.203(c)(1)(ii) has 120 days for it', () => {
    const root: EatingAsk = { ...tomato, eaten: 'raw-root', animalOrigin: 'yes' };
    expect(eatingWait({ ...root, eaten: 'raw-fruit' })).toMatchObject({ touchesSoil: false, days: 90 });
    expect(eatingWait(root)).toMatchObject({ touchesSoil: true, days: 120 });
    expect(eatingWait({ ...root, eaten: 'raw-leaf' })).toMatchObject({ touchesSoil: true, days: 120 });
  });
  it('waits as long where food is sold, though the batch was held', () => {
    expect(says({ ...tomato, ...told({ sells: true }) })).toEqual(['soil', 90, 'sold-untreated']);
    expect(says({ ...lettuce, ...told({ sells: true }) })).toEqual(['soil', 120, 'sold-untreated']);
  });
  it('waits 21 days where a class eats, by our caution', () => {
    expect(says({ ...lettuce, ...told({ school: true }) })).toEqual(['soil', 21, 'school']);
  });
  it('gets nothing where someone of weak immunity eats', () => {
    expect(says({ ...tomato, ...told({ immuneWeak: true }) })).toEqual(['never', 120, 'immune-weak']);
  });
  it('waits longest once a guard was overridden', () => {
    expect(says({ ...tomato, overridden: true })).toEqual(['soil', 120, 'overridden']);
  });
  it('names the regulation where our own caution asks as long, and what nobody told before what was told', () => {
    const manured: EatingAsk = { ...lettuce, animalOrigin: 'yes', held: false, overridden: true };
    expect(eatingWait(manured)).toMatchObject({ days: 120, reason: 'animal-origin', source: 'cfr-7-205-203' });
    expect(says({ ...lettuce, animalOrigin: undefined, held: false })).toEqual(['soil', 120, 'source-not-known']);
  });
  it('counts as such where nobody told, with a part that touches the soil', () => {
    expect(eatingWait({ ...lettuce, crop: undefined, eaten: undefined })).toMatchObject({
      countsAs: 'raw',
      touchesSoil: true,
    });
  });
});

describe('a bed that is cooked', () => {
  it('waits for nothing but manure, meat and plates, and those it waits for as the code has it', () => {
    expect(says(kale)).toEqual(['leaf', 0, 'cooked']);
    expect(says({ ...kale, held: false, animalOrigin: 'possible' })).toEqual(['soil', 0, 'cooked']);
    expect(says({ ...kale, animalOrigin: 'yes' })).toEqual(['soil', 120, 'animal-origin']);
    expect(says({ ...kale, crop: 'aubergines', animalOrigin: 'yes' })).toEqual(['soil', 90, 'animal-origin']);
    expect(says({ ...kale, crop: 'aubergines', animalOrigin: 'yes', way: 'leaf' })).toEqual([
      'soil',
      120,
      'animal-origin',
    ]);
  });
  it('counts as raw where it is sold, unless the code lists it as rarely eaten raw', () => {
    expect(eatingWait({ ...kale, ...told({ sells: true }) }).countsAs).toBe('raw');
    expect(eatingWait({ ...kale, crop: 'potatoes', ...told({ sells: true }) }).countsAs).toBe('cooked');
    expect(eatingWait({ ...kale, crop: 'potatoes, kale', ...told({ sells: true }) }).countsAs).toBe('raw');
  });
});

describe('a bed that nobody eats from', () => {
  it('waits for nothing, and gets no spray from what animals may have left', () => {
    expect(says({ ...lettuce, eaten: 'not-eaten', held: false })).toEqual(['leaf', 0, 'not-eaten']);
    expect(says({ ...lettuce, eaten: 'not-eaten', animalOrigin: 'yes' })).toEqual(['soil', 0, 'not-eaten']);
  });
});
