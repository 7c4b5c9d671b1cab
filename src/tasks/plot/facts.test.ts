import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { kg, litres, recorder } from '../../../test/scenarios/recorder.ts';
import { DEMO_TODAY, gardenEntries } from '../demo/garden.ts';
import {
  bedStrips,
  countriesOf,
  firstSteps,
  madeStricter,
  readKeyholder,
  readThing,
  readWater,
  vesselsDrawn,
  wantsPoisonLine,
} from './facts.ts';

const NOW = '2026-07-06T11:00';
const garden = fold(gardenEntries(DEMO_TODAY));
const troublesOf = (read: { readonly ok: boolean; readonly troubles?: ReadonlyMap<string, unknown> }) =>
  [...(read.troubles?.keys() ?? [])].sort();

describe('the form of a vessel', () => {
  it('keeps the volume as typed beside its litres', () => {
    const read = readThing('vessel', { name: 'pail', volume: '2 US gal' }, { now: NOW });
    // 2 × 231 cubic inches = 7.5708 L
    expect(read).toMatchObject({
      ok: true,
      act: { kind: 'vessel.described', body: { volume: { typed: '2 US gal' } } },
    });
    const volume = read.ok && read.act && 'volume' in read.act.body ? read.act.body.volume?.volumeL : undefined;
    expect(volume).toBeCloseTo(7.5708, 3);
  });
  it('asks whose gallon it is, and keeps the country beside what was typed where the keyholder settled it', () => {
    const unsettled = readThing('vessel', { name: 'can', volume: '2 gal' }, { now: NOW });
    expect(!unsettled.ok && unsettled.troubles.get('volume')?.ask?.kind).toBe('gallon');
    const read = readThing(
      'vessel',
      { name: 'can', volume: '2 gal' },
      { now: NOW, countries: countriesOf(garden, 'Rake') },
    );
    expect(read).toMatchObject({
      act: { body: { volume: { typed: '2 gal', volumeL: 9.09218, readWith: { gallon: 'imperial' } } } },
    });
  });
  it('tells all its problems at once, each at its field', () => {
    expect(troublesOf(readThing('vessel', { volume: '-3 L', gasRoomFraction: '7' }, { now: NOW }))).toEqual([
      'gasRoomFraction',
      'name',
      'volume',
    ]);
  });
  it('tells only what changed of a known one, and nothing where nothing did', () => {
    const pail = [...garden.vessels.values()].find(({ name }) => name === '12 L pail');
    const typed = { name: '12 L pail', volume: '12 L', lid: 'loose', place: 'by the tap' };
    const read = readThing('vessel', { ...typed, gasRoomFraction: '0.25' }, { now: NOW, known: pail });
    expect(read).toEqual({
      ok: true,
      act: { kind: 'vessel.described', body: { vessel: pail?.id, place: 'by the tap' } },
    });
    const same = { ...typed, place: 'shed window', gasRoomFraction: '0.25' };
    expect(readThing('vessel', same, { now: NOW, known: pail })).toEqual({ ok: true, act: undefined });
  });
  it('does not empty what was told once', () => {
    const pail = [...garden.vessels.values()].find(({ name }) => name === '12 L pail');
    const read = readThing(
      'vessel',
      { name: '12 L pail', volume: '12 L', lid: 'loose', gasRoomFraction: '0.25' },
      { now: NOW, known: pail },
    );
    expect(troublesOf(read)).toEqual(['place']);
  });
});

describe('the form of a bed', () => {
  it('reads an area in square feet, and pots by number and volume', () => {
    const read = readThing(
      'bed',
      { name: 'A', area: '100 sq ft', 'pots.count': '3', 'pots.volumeL': '15 L' },
      { now: NOW },
    );
    expect(read).toMatchObject({ ok: true, act: { body: { pots: { count: 3, volumeL: 15 } } } });
    // 100 × 0.3048² m²
    expect(JSON.stringify(read)).toMatch(/"areaM2":9\.2903/);
  });
  it('refuses an area of nothing and one past 5,000 m²', () => {
    expect(troublesOf(readThing('bed', { name: 'A', area: '0 m²' }, { now: NOW }))).toEqual(['area']);
    expect(troublesOf(readThing('bed', { name: 'A', area: '5001 m²' }, { now: NOW }))).toEqual(['area']);
  });
});

describe('a report of a water', () => {
  // 1 meq/L = 50.04 mg/L CaCO3 = 2.804 German degrees
  it.each([
    ['212', 'mg/L CaCO3', 4.236],
    ['4.24', 'meq/L', 4.24],
    ['11,88', 'dH', 4.237],
  ])('reads an alkalinity of %s %s', (alkalinity, unit, meqPerL) => {
    const read = readWater({ source: 'tap', alkalinity, 'alkalinity.unit': unit }, NOW);
    const found = read.ok && read.act ? read.act.body.alkalinity : undefined;
    expect(found?.alkalinityMeqPerL).toBeCloseTo(meqPerL, 2);
    expect(found?.typed).toBe(`${alkalinity} ${unit}`);
  });
  it('wants to know where the water comes from', () => {
    expect(troublesOf(readWater({ ph: '7.6' }, NOW))).toEqual(['source']);
  });
});

describe('keyholders', () => {
  it('are told as a whole list, with the others as they were', () => {
    const read = readKeyholder({ tag: 'Hoe', cannotSmell: 'yes' }, garden, undefined);
    const list = read.ok && read.act ? read.act.body.keyholders : [];
    expect(list?.map(({ tag }) => tag)).toEqual(['Rake', 'Fork', 'Can', 'Trowel', 'Hoe']);
    expect(list?.at(-1)).toEqual({ tag: 'Hoe', cannotSmell: true });
  });
  it('have each a tag of their own', () => {
    expect(troublesOf(readKeyholder({ tag: 'Fork' }, garden, undefined))).toEqual(['tag']);
    expect(troublesOf(readKeyholder({ units: 'metric' }, garden, undefined))).toEqual(['tag']);
  });
});

describe('what the facts sheet draws', () => {
  it('has beds in walking order with the width that their area and length give', () => {
    const strips = bedStrips(garden);
    expect(strips.map(({ facts }) => facts.tag).join('')).toBe('GMSFTRPX');
    // 10.0 m² over 5 m
    expect(strips.find(({ facts }) => facts.tag === 'T')).toMatchObject({ lengthM: 5, widthM: 2, lengthTold: true });
    expect(strips.find(({ facts }) => facts.tag === 'P')?.pots?.count).toBe(12);
  });
  it('has the fill line of each vessel at three quarters', () => {
    expect(vesselsDrawn(garden).map(({ usableL }) => usableL)).toEqual([9, 22.5, 45]);
  });
});

describe('the first steps', () => {
  it('are a name, a vessel and a bed, and are done one by one', () => {
    const me = recorder();
    const named = me.did('plot.described', '2026-05-01', { name: 'Mine' });
    const pail = me.did('vessel.described', '2026-05-01', { name: 'pail', volume: litres(12), emptyMass: kg(0.6) });
    expect(firstSteps(fold([]))).toEqual({ name: false, vessel: false, bed: false });
    expect(firstSteps(fold([named, pail]))).toEqual({ name: true, vessel: true, bed: false });
  });
  it('ask for the poison line where children are about', () => {
    expect(wantsPoisonLine(garden)).toBe(true);
    const me = recorder();
    const told = me.did('plot.described', '2026-05-01', { present: ['children'], poisonLine: '000' });
    expect(wantsPoisonLine(fold([told]))).toBe(false);
  });
});

describe('what the answers make stricter', () => {
  const plotOf = (body: Parameters<ReturnType<typeof recorder>['did']>[2]) =>
    fold([recorder({ by: 'Rake' }).did('plot.described', '2026-05-01', body as never)]);
  it('is nothing where nothing was told, or where the answers allow', () => {
    expect(madeStricter(plotOf({ name: 'Hedge End' }))).toEqual([]);
    expect(madeStricter(plotOf({ sells: false, kitchenScraps: true }))).toEqual([]);
  });
  it('is one line for each answer that changes something', () => {
    const told = plotOf({ sells: true, school: true, kitchenScraps: false, present: ['hens', 'immune-weak', 'dog'] });
    const lines = madeStricter(told);
    expect(lines).toHaveLength(6);
    expect(new Set(lines).size).toBe(6);
    expect(lines[0]).toMatch(/sold/);
  });
});
