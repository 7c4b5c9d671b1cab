import { describe, expect, it } from 'vitest';
import { type Draft, EMPTY, exampleDraft, field } from './draft.ts';
import { lotField, readDraft, troublesOf } from './reading.ts';

const noWater = () => undefined;
const asMeq = (typed: string) => Number(typed);

function told(change: Partial<Draft> = {}): Draft {
  return {
    ...EMPTY,
    vessel: { ...EMPTY.vessel, volume: field('12 L') },
    lots: [{ key: 1, material: 'grass-clippings-fresh', weight: field('2.4 kg'), bowl: undefined, treated: undefined }],
    water: { ...EMPTY.water, volume: field('7 L') },
    ...change,
  };
}

describe('reading the weigh-in sheet', () => {
  it('misses all three answers on an empty sheet, finds no fault with it and asks nothing of the engine', () => {
    const reading = readDraft(EMPTY, asMeq);
    expect(reading.missing).toEqual(['vessel', 'scraps', 'water']);
    expect(reading.troubles.size).toBe(0);
    expect(reading.question).toBeUndefined();
  });

  it('has a question for the engine after three answers, sugar not among them', () => {
    expect(readDraft(told(), asMeq).question).toEqual({
      vessel: { volumeL: 12, gasRoom: 0.25 },
      plants: [{ material: 'grass-clippings-fresh', massKg: 2.4 }],
      water: { volumeL: 7 },
    });
  });

  it('names every entry that cannot be read, all at once, and asks nothing while one cannot', () => {
    const draft = told({
      vessel: { ...EMPTY.vessel, volume: field('3 gal'), gasRoom: field('95 %') },
      lots: [
        { key: 1, material: 'grass-clippings-fresh', weight: field('-2 kg'), bowl: undefined, treated: undefined },
        { key: 2, material: 'carrot', weight: field('lots'), bowl: undefined, treated: undefined },
      ],
      water: { ...EMPTY.water, volume: field('0 L'), alkalinity: field('hard') },
    });
    const reading = readDraft(draft, noWater);
    expect([...reading.troubles.keys()].sort()).toEqual(
      ['lot.1.weight', 'lot.2.weight', 'vessel.gasRoom', 'vessel.volume', 'water.alkalinity', 'water.volume'].sort(),
    );
    for (const trouble of reading.troubles.values()) expect(trouble.sentence).toMatch(/; allowed: /);
    expect(reading.question).toBeUndefined();
  });

  it('asks whose gallon it is, with both sizes, and reads it once that is settled', () => {
    const draft = told({ vessel: { ...EMPTY.vessel, volume: field('3 gal') } });
    const ask = readDraft(draft, asMeq).troubles.get('vessel.volume')?.ask;
    expect(ask?.kind === 'gallon' && ask.choices.map((choice) => choice.country)).toEqual(['us', 'imperial']);
    // 3 × 231 in³ = 11.356 L; 3 × 4.54609 L = 13.638 L
    expect(readDraft({ ...draft, gallon: 'us' }, asMeq).vesselL).toBeCloseTo(11.3562, 4);
    expect(readDraft({ ...draft, gallon: 'imperial' }, asMeq).vesselL).toBeCloseTo(13.63827, 5);
  });

  it('offers units for a bare figure and never guesses one', () => {
    const draft = told({ water: { ...EMPTY.water, volume: field('7') } });
    const reading = readDraft(draft, asMeq);
    expect(reading.troubles.get('water.volume')?.units).toContain('L');
    expect(reading.waterL).toBeUndefined();
  });

  it('takes the bowl off what stands on the scale, and refuses a bowl as heavy as all of it', () => {
    const lot = { key: 1, material: 'carrot', weight: field('2.75 kg'), treated: undefined };
    const net = readDraft(told({ lots: [{ ...lot, bowl: field('350 g') }] }), asMeq);
    expect(net.lotKg.get(1)).toBeCloseTo(2.4, 9);
    const heavy = readDraft(told({ lots: [{ ...lot, bowl: field('2.75 kg') }] }), asMeq);
    expect(heavy.troubles.has(lotField(1, 'bowl'))).toBe(true);
    expect(heavy.question).toBeUndefined();
  });

  it('asks which sugar before spoons of it are a weight', () => {
    const spoons = told({ spoon: 'metric', sugar: { product: undefined, weight: field('6 tbsp') } });
    expect(readDraft(spoons, asMeq).troubles.get('sugar.weight')?.ask?.kind).toBe('product');
    const named = readDraft({ ...spoons, sugar: { ...spoons.sugar, product: 'white-sugar' } }, asMeq);
    expect(named.sugarKg).toBeGreaterThan(0.05);
    expect(named.sugarKg).toBeLessThan(0.1);
  });

  it('leaves a lot that is not weighed out of the question and keeps the others', () => {
    const first = { material: 'carrot', bowl: undefined, treated: undefined };
    const lots = [
      { ...first, key: 1, weight: field('1 kg') },
      { ...first, key: 2, weight: field('') },
    ];
    expect(readDraft(told({ lots }), asMeq).question?.plants).toHaveLength(1);
  });

  it('puts a problem of the task at the field it is about', () => {
    const lots = told().lots;
    const found = troublesOf(
      [
        { field: 'plants[0].massKg', value: 0, message: 'must be more than 0', allowed: 'up to 1000 kg' },
        { field: 'vessel.volumeL', value: 0, message: 'must be more than 0', allowed: 'up to 2000 L' },
        { field: 'targetPh', value: 41, message: 'is too large', allowed: '2 to 12' },
      ],
      lots,
    );
    expect([...found.keys()]).toEqual(['lot.1.weight', 'vessel.volume', 'sheet']);
  });

  it('reads the whole example without a fault', () => {
    const reading = readDraft(exampleDraft(1), asMeq);
    expect(reading.troubles.size).toBe(0);
    expect(reading.question?.plants).toHaveLength(3);
  });
});
