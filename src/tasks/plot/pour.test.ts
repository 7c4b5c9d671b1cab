// The can card's numbers and the entry it writes.

import { describe, expect, it } from 'vitest';
import { SCHOOL_RAW_DAYS } from '#engine/can/limits.ts';
import { keptVolume } from '#engine/quantity/kept.ts';
import { fold } from '#journal/fold.ts';
import { bedFed } from '#journal/kinds/beds.ts';
import { can } from '#tasks/can.ts';
import { DEMO_PLOT, gardenEntries } from '#tasks/demo/garden.ts';
import { stricter } from '#words/en/profile.ts';
import { litres, recorder } from '../../../test/scenarios/recorder.ts';
import { liquidsOf } from './liquid.ts';
import { passedOverOn } from './passed-over.ts';
import { cansOf, fedBody, fillsFor, jugLevelMm, type PourAsk, pourCard, readCanSize } from './pour.ts';
import { typedChoice } from './strength.ts';

const ON = '2026-07-06';
const plot = fold(gardenEntries(ON));
const now = `${ON}T11:00`;
const bedOf = (tag: string) => [...plot.beds.values()].find(({ facts }) => facts.tag === tag)?.id ?? '';
const ask = (tag: string, more: Partial<PourAsk> = {}): PourAsk => ({
  plot,
  now,
  bed: bedOf(tag),
  liquid: liquidsOf(plot, now)[0]?.id,
  canL: 10,
  ...more,
});
const IMPERIAL_GALLON_L = 4.54609;

describe('the dose of a can at 1 to 40', () => {
  // 10 L / 41 = 243.9 mL, 2 imperial gallons of 4.54609 L / 41 = 221.8 mL, 7 L / 41 = 170.7 mL.
  it.each([
    [10, 244],
    [2 * IMPERIAL_GALLON_L, 222],
    [7, 171],
  ])('of %d L is %d mL', (canL, doseMl) => {
    const card = pourCard(ask('M', { canL }));
    expect(card.missing).toBeUndefined();
    expect(Math.round(card.cans[0]?.concentrateMl ?? 0)).toBe(doseMl);
    expect(card.cans[0]?.measures[0]).toMatchObject({ tool: 'jug', count: doseMl });
  });
  it('is what the word can of the command line gives for the same bed', () => {
    const card = pourCard(ask('M'));
    const told = can({ ratio: { n: 40, reading: 'to' }, canL: 10, areaM2: 5.76, depthLPerM2: 2 });
    if (!told.ok) throw new Error('the command refuses');
    expect(card.cans.map(({ volumeL }) => volumeL)).toEqual(told.value.cans?.map(({ volumeL }) => volumeL));
    card.cans.forEach(({ concentrateMl }, i) => {
      expect(concentrateMl).toBeCloseTo(told.value.cans?.[i]?.concentrateMl ?? 0, 2);
    });
    expect(card.totalL).toBe(told.value.totalL);
  });
  it('for 11.52 L is one full can and one of 1.52 L with a 41st of that', () => {
    const [full, part] = pourCard(ask('M')).cans;
    expect([full?.full, part?.full, part?.volumeL]).toEqual([true, false, 1.52]);
    expect(part?.concentrateMl).toBeCloseTo(1520 / 41, 9);
  });
  it('is drawn in the jug, and below 60 mL in the syringe the plot has', () => {
    expect(pourCard(ask('M')).cans.map(({ drawn }) => drawn)).toEqual(['jug', 'syringe']);
  });
  it('offers spoons only of a told country and within 5 %', () => {
    const spoons = (spoon: PourAsk['spoon']) =>
      pourCard(ask('M', { canL: 7, strength: typedChoice({ n: 100, reading: 'in' }), spoon }))
        .cans[0]?.measures.filter(({ tool }) => tool === 'tablespoon')
        .map(({ count }) => count);
    expect(spoons(undefined)).toEqual([]);
    // 70 mL in spoons of 15 mL: 4⅔ exactly.
    expect(spoons('metric')?.[0]).toBeCloseTo(14 / 3, 9);
  });
  it('under 2 mL goes in two steps', () => {
    const small = pourCard(ask('M', { canL: 1, strength: typedChoice({ n: 1000, reading: 'in' }) }));
    // 1 mL in 1 L: 10 mL in 90 mL of water, 10 mL of that.
    expect(small.cans[0]?.twoStep).toEqual({ firstConcentrateMl: 10, firstWaterMl: 90, thenMl: 10 });
    expect(small.cans[0]?.measures).toEqual([]);
  });
});

describe('no dose', () => {
  it('is given for a bed that waits, and the reason stands in its place', () => {
    const card = pourCard(ask('T'));
    expect(card.cans).toEqual([]);
    expect(card.missing).toBe('reasons');
    expect(card.barred.map(({ rule }) => rule)).toEqual(['raw-bed-picked-soon']);
  });
  it('is given for the lettuce bed, whatever is said of its picking', () => {
    const shed = bedOf('S');
    const card = pourCard(ask('S', { nextPick: { [shed]: 'far' } }));
    expect([card.missing, card.cans]).toEqual(['reasons', []]);
    expect(card.barred[0]?.rule).toBe('bed-gets-none');
  });
  it('is given without a batch, a can or a bed, and the card says which is missing', () => {
    expect(pourCard(ask('M', { liquid: undefined })).missing).toBe('liquid');
    expect(pourCard(ask('M', { canL: undefined })).missing).toBe('can');
    expect(pourCard({ ...ask('M'), bed: 'no-such-bed' }).missing).toBe('bed');
  });
});

describe('the band of holds', () => {
  const rules = (more: Partial<PourAsk>) => pourCard(ask('M', more)).beware.map(({ rule }) => rule);

  it('holds on dry soil, and the dose stays', () => {
    const card = pourCard(ask('M', { soil: 'dry' }));
    expect(card.beware).toContainEqual(expect.objectContaining({ rule: 'pour-soil-dry', level: 'hold' }));
    expect(card.cans).toHaveLength(2);
  });
  it('holds in the heat typed for the day: 26 °C on 29 June, 24 °C on 24 June', () => {
    const hot = fold(gardenEntries('2026-07-02'));
    const card = (on: string) => pourCard({ ...ask('M'), plot: hot, now: `${on}T11:00` });
    expect(card('2026-06-29').beware.map(({ rule }) => rule)).toContain('pour-hot');
    expect(card('2026-06-24').beware.map(({ rule }) => rule)).not.toContain('pour-hot');
  });
  it('warns of wind of 8 m/s and of 18 mm of rain', () => {
    const told = fold(gardenEntries('2026-06-24'));
    const on = (day: string) =>
      pourCard({ ...ask('F'), plot: told, now: `${day}T23:00`, liquid: liquidsOf(told, now)[0]?.id });
    expect(on('2026-06-21').beware.map(({ rule }) => rule)).toContain('pour-windy');
    expect(on('2026-06-19').beware.map(({ rule }) => rule)).toContain('pour-heavy-rain-soon');
  });
  it('on moist soil asks only for the rain that nobody told', () => {
    expect(rules({ soil: 'moist' })).toEqual(['pour-hour-not-known']);
  });
  it('is silent on moist soil once no rain is told for the day', () => {
    const dry = recorder({ plot: plot.id ?? '' }).did('weather.typed', `${ON}T08:00`, {
      what: 'forecast',
      days: [{ on: ON, highC: 21, rainMm: 0 }],
    });
    const told = fold([...gardenEntries(ON), dry]);
    expect(pourCard({ ...ask('M', { soil: 'moist' }), plot: told }).beware).toEqual([]);
  });
  it('knows cracked and soaked soil', () => {
    expect(rules({ soil: 'cracked' })).toContain('pour-soil-dry');
    expect(rules({ soil: 'soaked' })).toContain('pour-soil-soaked');
  });
  it('always says to use it today', () => {
    expect(pourCard(ask('M')).notes.map(({ rule }) => rule)).toContain('use-today');
  });
});

describe('the entry of a bed fed', () => {
  const card = pourCard(ask('M', { can: cansOf(plot).at(-1)?.id }));

  it('holds every can with its fraction, what reached the bed, and all that left the bottle', () => {
    const body = fedBody(card, [1, 0.5]);
    expect(bedFed.safeParse(body).success).toBe(true);
    expect(body?.cans?.map(({ volumeL, pouredFraction }) => [volumeL, pouredFraction])).toEqual([
      [10, 1],
      [1.52, 0.5],
    ]);
    // 10 + 0.76 L reached the bed; the concentrate of both cans, 11.52 / 41 L, left the bottle.
    expect(body?.poured.volumeL).toBeCloseTo(10.76, 9);
    expect(body?.from[0]?.volume.volumeL).toBeCloseTo(11.52 / 41, 9);
    expect(body?.from[0]?.bottle).toBe(card.liquid?.id);
  });
  it('holds only the cans that were poured where one stops early', () => {
    const body = fedBody(card, [1]);
    expect(body?.cans).toHaveLength(1);
    expect(body?.from[0]?.volume.volumeL).toBeCloseTo(10 / 41, 9);
  });
  it('is none while nothing was poured', () => {
    expect(fedBody(card, [])).toBeUndefined();
    expect(fedBody(card, [0, 0])).toBeUndefined();
  });
  it('says which hold was passed', () => {
    const dry = pourCard(ask('M', { soil: 'dry' }));
    expect(fedBody(dry, [1])?.overrode?.map(({ rule }) => rule)).toEqual(['pour-soil-dry']);
    expect(bedFed.safeParse(fedBody(dry, [1])).success).toBe(true);
  });
  it('says so where less is left than the bed wants', () => {
    const little = pourCard(ask('M', { strength: typedChoice({ n: 1, reading: 'in' }) }));
    // Undiluted, 11.52 L are wanted and 6.3 L were bottled.
    expect(little.enough).toBe(false);
    expect(card.enough).toBe(true);
  });
});

describe('a stop that is a matter of judgement', () => {
  // The Shed bed gets no feed: so the plot says. Its crop is cleared and beans are cooked, so nothing else bars it.
  const { did } = recorder({ by: 'Rake', plot: DEMO_PLOT, seed: 77 });
  const shed = bedOf('S');
  const beans = did('bed.planted', '2026-06-25', { bed: shed, act: 'planted', crop: 'beans', eaten: 'cooked' });
  const entries = [...gardenEntries(ON), beans];
  const replanted = fold(entries);
  const passed = { 'bed-gets-none': 'The lettuce is gone and beans grow here.' };
  const of = (more: Partial<PourAsk> = {}) => pourCard({ ...ask('S', more), plot: replanted });

  it('bars the dose, and says that a reason would give it', () => {
    const card = of();
    expect([card.missing, card.passable, card.cans]).toEqual(['reasons', true, []]);
    expect(card.barred.map(({ rule, override }) => [rule, override])).toEqual([['bed-gets-none', 'reason']]);
  });
  it.each(['', 'x', 'just because'])('is not passed by "%s"', (reason) => {
    expect(of({ passed: { 'bed-gets-none': reason } }).cans).toEqual([]);
  });
  it('is passed by a reason in words, which the entry keeps and the bed is marked with until it is planted anew', () => {
    const card = of({ passed });
    expect(card.missing).toBeUndefined();
    const body = fedBody(card, [1]);
    if (body === undefined) throw new Error('nothing poured');
    const kept = { rule: 'bed-gets-none', reason: passed['bed-gets-none'] };
    expect(body.overrode).toEqual([kept]);
    expect(bedFed.safeParse(body).success).toBe(true);
    const fed = did('bed.fed', ON, body);
    const marked = fold([...entries, fed]);
    const bed = marked.beds.get(shed);
    expect(bed && passedOverOn(marked, bed)).toEqual([{ ...kept, on: ON }]);
    const anew = fold([...entries, fed, did('bed.planted', '2026-07-07', { bed: shed, act: 'sown', crop: 'rocket' })]);
    const sown = anew.beds.get(shed);
    expect(sown && passedOverOn(anew, sown)).toEqual([]);
  });
  it('does not give way where a stop without override stands beside it', () => {
    const weak = did('plot.described', '2026-06-25', { present: ['immune-weak'] });
    const raw = fold([...gardenEntries(ON), weak]);
    const card = pourCard({ ...ask('S', { passed, way: 'leaf' }), plot: raw });
    expect(card.barred.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(['eating-immune-weak-raw-bed', 'leaf-eaten-raw']),
    );
    expect([card.passable, card.cans]).toEqual([false, []]);
  });
  it('leaves no mark where only a hold was shown', () => {
    const dry = fedBody(pourCard(ask('M', { soil: 'dry' })), [1]);
    if (dry === undefined) throw new Error('nothing poured');
    const marked = fold([...gardenEntries(ON), did('bed.fed', ON, dry)]);
    const bed = marked.beds.get(bedOf('M'));
    expect(dry.overrode).toHaveLength(1);
    expect(bed && passedOverOn(marked, bed)).toEqual([]);
  });
});

describe('when it is picked next', () => {
  const { did } = recorder({ by: 'Rake', plot: DEMO_PLOT, seed: 77 });
  const T = bedOf('T');
  const said = (nextPick: NonNullable<PourAsk['nextPick']>[string]) => ({ nextPick: { [T]: nextPick } });

  it('is asked where a day would settle the hold, and the same answers stay once one is given', () => {
    expect(pourCard(ask('T')).picking).toEqual(['soon', 'later', 'far']);
    expect(pourCard(ask('T', said('later')))).toMatchObject({ missing: undefined, picking: ['soon', 'later', 'far'] });
    expect(pourCard(ask('M')).picking).toEqual([]);
  });
  it('has the 21 days of a school among its answers, before and after they are said', () => {
    const school = fold([...gardenEntries(ON), did('plot.described', '2026-06-25', { school: true })]);
    const of = (more: Partial<PourAsk> = {}) => pourCard({ ...ask('T', more), plot: school });
    expect(of().picking).toEqual(['soon', 'later', 'after-21', 'far']);
    expect(of(said('later')).missing).toBe('reasons');
    expect(of(said('after-21'))).toMatchObject({ missing: undefined, picking: ['soon', 'later', 'after-21', 'far'] });
    const row = stricter.school;
    expect(row).toContain(`${SCHOOL_RAW_DAYS} days before it is picked`);
  });
  it('is asked beside a stop that a reason may pass, so that the way through is open', () => {
    const weak = fold([...gardenEntries(ON), did('plot.described', '2026-06-25', { present: ['immune-weak'] })]);
    const of = (more: Partial<PourAsk> = {}) => pourCard({ ...ask('T', more), plot: weak });
    expect(of()).toMatchObject({ missing: 'reasons', passable: false, picking: ['soon', 'later', 'far'] });
    expect(of(said('far'))).toMatchObject({ missing: 'reasons', passable: true });
    const passed = { 'eating-immune-weak-raw-bed': 'It is preserved for the others.' };
    expect(of({ ...said('far'), passed }).missing).toBeUndefined();
  });
});

describe('a plot that sells', () => {
  it('holds on a bed eaten raw, by the published rule, and on one whose crop the buyer may eat raw', () => {
    const { did } = recorder({ by: 'Rake', plot: DEMO_PLOT, seed: 77 });
    const sells = fold([...gardenEntries(ON), did('plot.described', '2026-06-25', { sells: true })]);
    const rules = (tag: string, from = sells) => {
      const card = pourCard({ ...ask(tag, { nextPick: { [bedOf(tag)]: 'later' } }), plot: from });
      return [...card.barred, ...card.beware].map(({ rule }) => rule);
    };
    expect(rules('G')).toContain('eating-sold-picked-soon');
    // Kale is not among the crops rarely eaten raw of 21 CFR 112.2(a)(1).
    expect(rules('M')).toContain('eating-sold-picked-soon');
    for (const tag of ['G', 'M']) expect(rules(tag, plot).filter((rule) => rule.startsWith('eating-sold'))).toEqual([]);
  });
});

describe('tools', () => {
  it('stand as high as volume over floor: 244 mL in a bore of 100 mm is 31 mm', () => {
    // 244,000 mm³ / (π · 50²) mm² = 31.07 mm
    expect(jugLevelMm({ volumeMl: 244, boreMm: 100 })).toBeCloseTo(31.07, 2);
  });
  it('are filled again where one is too small, the last one to its mark', () => {
    expect(fillsFor({ volumeMl: 244, toolMl: 1000 })).toEqual({ full: 0, restMl: 244 });
    expect(fillsFor({ volumeMl: 1500, toolMl: 1000 })).toEqual({ full: 1, restMl: 500 });
    expect(fillsFor({ volumeMl: 2000, toolMl: 1000 })).toEqual({ full: 1, restMl: 1000 });
  });
  it('of 2 gal are asked whose gallon; told once, the can has its litres', () => {
    const asked = readCanSize('2 gal', {});
    expect(!asked.ok && asked.ask?.kind).toBe('gallon');
    const told = readCanSize('2 gal', { gallon: 'imperial' });
    expect(told.ok && told.value).toBeCloseTo(2 * IMPERIAL_GALLON_L, 6);
    const rake = recorder();
    const kept = rake.did('can.described', ON, {
      name: '2 gal can',
      kind: 'can',
      volume: told.ok ? keptVolume(told) : litres(0),
    });
    expect(cansOf(fold([kept]))).toMatchObject([{ typed: '2 gal (imperial)' }]);
  });
  it('are chosen among the cans that are there: no sprayer, none that is gone, one of no kind', () => {
    const rake = recorder();
    const can = (name: string, more: object) => rake.did('can.described', ON, { name, volume: litres(7), ...more });
    const all = [can('green', { kind: 'can' }), can('bare', {}), can('mist', { kind: 'sprayer' })];
    const names = cansOf(fold([...all, can('lost', { kind: 'can', gone: true })])).map(({ name }) => name);
    expect(names.toSorted()).toEqual(['bare', 'green']);
  });
});
