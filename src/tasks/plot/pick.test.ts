// Pick day on the demo garden, and on a bed made for each answer.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { onDay } from './dates.ts';
import { pickList } from './pick.ts';

const list = (on: string) => pickList({ plot: fold(gardenEntries(on)), now: `${on}T11:00` });
const bed = (on: string, tag: string) => list(on).find((one) => one.tag === tag);

describe('pick day on 16 July in the demo garden', () => {
  it('lets the lettuce be picked, which was never fed', () => {
    expect(bed('2026-07-16', 'S')).toMatchObject({ answer: 'pick', why: 'never-fed', last: undefined });
  });
  it('says cook only for what was entered as cooked', () => {
    const cooked = list('2026-07-16').filter(({ answer }) => answer === 'cook');
    expect(cooked.map(({ tag }) => tag).sort()).toEqual(['F', 'M', 'X']);
  });
  it('waits with the tunnel, fed on 14 July by Can and by Rake, and names the question with its range', () => {
    const tunnel = bed('2026-07-16', 'T');
    expect(tunnel).toMatchObject({ answer: 'wait', tillOn: '2026-07-28', why: 'held-raw', waitDays: 14 });
    expect(tunnel?.question).toMatchObject({ kind: 'twin-feeds' });
    // Can poured 20 L, Rake 4 imperial gallons of 4.54609 L: 20 L at least, 38.18 L at most.
    expect(tunnel?.lastL?.low).toBeCloseTo(20, 9);
    expect(tunnel?.lastL?.high).toBeCloseTo(20 + 4 * 4.54609, 6);
  });
  it('tells the last feed: soil, 9 days ago, peg 14, held', () => {
    expect(bed('2026-07-16', 'G')?.last).toMatchObject({ way: 'soil', days: 9, pegs: [14], held: true });
  });
  it('lists what can be taken first, then what waits, then what is not ripe by its own date', () => {
    expect(list('2026-07-16').map(({ tag }) => tag)).toEqual(['S', 'R', 'M', 'F', 'X', 'P', 'T', 'G']);
  });
  it('lets the pots be picked on the fourteenth day after the pour, not on the thirteenth', () => {
    // Poured on 7 July: 20 July is day 13, 21 July day 14; the pots are poured again on the 21st, so look before noon's pour.
    const plot = fold(gardenEntries('2026-07-20'));
    const pots = (now: string) => pickList({ plot, now }).find(({ tag }) => tag === 'P')?.answer;
    expect(pots('2026-07-20T11:00')).toBe('wait');
    expect(pots('2026-07-21T06:00')).toBe('pick');
  });
});

describe('a bed fed from a batch', () => {
  const rake = recorder();
  const area = { typed: '4 m2', areaM2: 4 };
  const raw = rake.did('bed.described', '2026-05-01', { name: 'Raw', area, crop: 'beans', eaten: 'raw-fruit' });
  const untold = rake.did('bed.described', '2026-05-01', { name: 'Untold', area, crop: 'beans' });
  const filled = rake.did('peg.filled', '2026-05-24', {
    peg: 7,
    water: [{ volume: litres(6), source: 'tap' }],
    temperatureC: 20,
  });
  const look = (on: string, ph: number, smell: 'sour' | 'egg' = 'sour') =>
    rake.did('peg.looked', on, { batch: filled.id, acidity: meter(ph), smell, temperatureC: 20 });
  const strained = rake.did('peg.strained', '2026-06-10', { batch: filled.id, drained: litres(5), rest: 'nothing' });
  const pour = (on: string, more: object = {}, of = raw.id) =>
    rake.did('bed.fed', on, {
      bed: of,
      from: [{ batch: filled.id, volume: litres(0.2) }],
      poured: litres(8),
      way: 'soil',
      ...more,
    });
  const ground = [raw, untold, filled, strained];
  const answer = (entries: readonly Entry[], now: string, name = 'Raw') =>
    pickList({ plot: fold([...ground, ...entries]), now }).find((one) => one.name === name);
  const notHeld = [look('2026-06-05', 4.4), look('2026-06-07', 4.1), look('2026-06-09', 4.1)];

  it('waits 120 days where the batch was not held', () => {
    // 12 June + 120 days = 10 October
    expect(answer([...notHeld, pour('2026-06-12')], '2026-07-01T09:00')).toMatchObject({
      answer: 'wait',
      tillOn: '2026-10-10',
      why: 'not-held-raw',
      source: 'nosb-2004',
    });
  });
  it('waits 120 days where nobody wrote down what was poured', () => {
    expect(answer([pour('2026-06-12', { from: [] })], '2026-07-01T09:00')).toMatchObject({
      tillOn: '2026-10-10',
      why: 'source-not-known',
    });
  });
  it('waits 120 days where the leaves were sprayed', () => {
    expect(answer([...notHeld, pour('2026-06-12', { way: 'leaf' })], '2026-07-01T09:00')?.why).toBe('sprayed-raw');
  });
  it('waits for the longest of two pours, not for the last', () => {
    const held = [look('2026-05-26', 3.9), look('2026-05-28', 3.8), look('2026-06-09', 3.8)];
    // Held from 10 June on: fifteen days at 20 °C after 26 May. The pour of 6 June came before that.
    const both = answer([...held, pour('2026-06-06'), pour('2026-06-20')], '2026-06-25T09:00');
    expect(both?.last?.held).toBe(true);
    expect(both?.tillOn).toBe('2026-10-04');
  });
  it('waits longest once the batch is lost, though it was held when it was poured', () => {
    const held = [look('2026-05-26', 3.9), look('2026-05-28', 3.8), look('2026-06-09', 3.8)];
    const later = [look('2026-06-22', 5.6, 'egg'), look('2026-06-24', 6.2, 'egg')];
    expect(answer([...held, pour('2026-06-20')], '2026-06-25T09:00')?.waitDays).toBe(14);
    expect(answer([...held, ...later, pour('2026-06-20')], '2026-06-25T09:00')?.waitDays).toBe(120);
  });
  it('waits no longer for a pour that was cancelled, nor for the second telling of one act', () => {
    const held = [look('2026-05-26', 3.9), look('2026-05-28', 3.8), look('2026-06-09', 3.8)];
    const first = pour('2026-06-20T18:00');
    const later = pour('2026-06-24T18:00');
    expect(answer([...held, first, later], '2026-06-25T09:00')?.tillOn).toBe('2026-07-08');
    const cancelled = answer([...held, first, later, rake.withdrew(later)], '2026-06-25T09:00');
    expect(cancelled).toMatchObject({ tillOn: '2026-07-04', last: { on: '2026-06-20' } });
    const can = recorder({ by: 'Can', device: 'phone-can', seed: 9 });
    const from = [{ batch: filled.id, volume: litres(0.2) }];
    const told = can.did('bed.fed', '2026-06-21T08:00', { bed: raw.id, from, poured: litres(4), way: 'soil' });
    const [question] = fold([...ground, ...held, first, told]).questions;
    const settled = can.did('question.answered', '2026-06-22', { question: question?.key ?? '', stands: [first.id] });
    expect(answer([...held, first, told], '2026-06-25T09:00')?.tillOn).toBe('2026-07-05');
    expect(answer([...held, first, told, settled], '2026-06-25T09:00')).toMatchObject({
      tillOn: '2026-07-04',
      last: { id: first.id },
      lastL: { low: 8, high: 8 },
      question: undefined,
    });
  });
  it('waits from today for a pour whose date is still to come, never for the one before it alone', () => {
    const held = [look('2026-05-26', 3.9), look('2026-05-28', 3.8), look('2026-06-09', 3.8)];
    const said = answer([...held, pour('2026-06-11'), pour('2026-07-20')], '2026-06-25T09:00');
    expect(said).toMatchObject({ answer: 'wait', tillOn: '2026-07-09', last: { on: '2026-06-25' } });
  });
  it('counts as eaten raw where nobody told, and says so', () => {
    const fed = answer([...notHeld, pour('2026-06-12', {}, untold.id)], '2026-07-01T09:00', 'Untold');
    expect(fed).toMatchObject({ answer: 'wait', eatenNotTold: true });
  });
  it('shows the working of its wait: 120 days less the 19 that passed', () => {
    const working = answer([...notHeld, pour('2026-06-12')], '2026-07-01T09:00')?.working;
    expect(working?.value).toBe(101);
    expect(working?.sources).toEqual(['nosb-2004']);
  });
});

describe('what went into the batch, and who eats', () => {
  const rake = recorder({ seed: 5 });
  const area = { typed: '4 m2', areaM2: 4 };
  const bedOf = (name: string, crop: string, eaten: 'raw-leaf' | 'raw-fruit' | 'cooked') =>
    rake.did('bed.described', '2026-05-01', { name, area, crop, eaten });
  const lettuce = bedOf('Lettuce', 'lettuce', 'raw-leaf');
  const tomato = bedOf('Tomato', 'tomatoes', 'raw-fruit');
  const kale = bedOf('Kale', 'kale', 'cooked');
  const potato = bedOf('Potato', 'potatoes', 'cooked');
  const beds = [lettuce, tomato, kale, potato];
  const batch = (of: object) => {
    const filled = rake.did('peg.filled', '2026-05-24', {
      peg: 7,
      water: [{ volume: litres(6), source: 'tap' }],
      temperatureC: 20,
      ...of,
    });
    const look = (on: string, ph: number) =>
      rake.did('peg.looked', on, { batch: filled.id, acidity: meter(ph), smell: 'sour', temperatureC: 20 });
    const looks = [look('2026-05-26', 3.9), look('2026-05-28', 3.8), look('2026-06-11', 3.8)];
    const strained = rake.did('peg.strained', '2026-06-11', { batch: filled.id, drained: litres(5), rest: 'nothing' });
    const poured = (more: object) =>
      beds.map((bed) =>
        rake.did('bed.fed', '2026-06-12', {
          bed: bed.id,
          from: [{ batch: filled.id, volume: litres(0.2) }],
          poured: litres(8),
          way: 'soil',
          ...more,
        }),
      );
    return (more: object = {}) => [...beds, filled, ...looks, strained, ...poured(more)];
  };
  const answers = (entries: readonly Entry[], now = '2026-06-13T09:00') =>
    new Map(pickList({ plot: fold(entries), now }).map((one) => [one.name, one]));
  const plain = batch({});
  const roof = batch({ water: [{ volume: litres(6), source: 'butt' }] });
  const manure = batch({ parts: [{ material: 'horse-manure', mass: { typed: '1 kg', massKg: 1 } }] });

  it('lets a held batch of plants be picked after 14 days, and cooks what is cooked', () => {
    const said = answers(plain());
    expect(said.get('Lettuce')).toMatchObject({ tillOn: '2026-06-26', why: 'held-raw' });
    expect(said.get('Kale')?.answer).toBe('cook');
  });

  it('waits after roof water: 120 days where it touches the soil, 90 where it is staked, none where it is cooked', () => {
    // 12 June + 120 days = 10 October, + 90 = 10 September (date -d).
    const said = answers(roof());
    expect(said.get('Lettuce')).toMatchObject({ tillOn: '2026-10-10', why: 'animal-origin-possible' });
    expect(said.get('Tomato')).toMatchObject({ tillOn: '2026-09-10', source: 'our-caution' });
    expect(said.get('Kale')?.answer).toBe('cook');
    expect(said.get('Tomato')?.waitsFor?.animalWhy).toEqual(['open-water']);
  });

  it('waits 120 days for a root eaten raw after roof water, whatever crop was entered', () => {
    const said = (eaten: 'raw-root' | 'raw-fruit') => {
      const bed = rake.did('bed.described', '2026-05-01', { name: 'New', area, crop: 'tomatoes', eaten });
      const fed = rake.did('bed.fed', '2026-06-12', {
        bed: bed.id,
        from: [{ batch: roof().find(({ kind }) => kind === 'peg.filled')?.id ?? '', volume: litres(0.2) }],
        poured: litres(8),
        way: 'soil',
      });
      return answers([...roof(), bed, fed]).get('New');
    };
    // A staked tomato waits 90 days: 10 September.
    expect(said('raw-fruit')).toMatchObject({ tillOn: '2026-09-10', touchesSoil: false });
    expect(said('raw-root')).toMatchObject({ tillOn: '2026-10-10', touchesSoil: true });
  });

  it('waits with cooked beds too after manure, and says cook once the days have passed', () => {
    const said = answers(manure());
    expect(said.get('Kale')).toMatchObject({ answer: 'wait', tillOn: '2026-10-10', why: 'animal-origin' });
    expect(answers(manure(), '2026-10-10T09:00').get('Kale')).toMatchObject({
      answer: 'cook',
      why: 'waited-long-enough',
    });
  });

  it('counts the water of the can, where it was told', () => {
    const butt = rake.did('water.reported', '2026-05-01', { source: 'butt' });
    expect(answers([butt, ...plain({ water: butt.id })]).get('Tomato')?.why).toBe('animal-origin-possible');
  });

  it('waits longer at once where food is sold, and counts kale as raw but potatoes as cooked', () => {
    const sells = rake.did('plot.described', '2026-06-13', { sells: true });
    const said = answers([...plain(), sells]);
    expect(said.get('Tomato')).toMatchObject({ tillOn: '2026-09-10', why: 'sold-untreated', source: 'cfr-21-112' });
    expect(said.get('Kale')).toMatchObject({ answer: 'wait', tillOn: '2026-10-10' });
    expect(said.get('Potato')?.answer).toBe('cook');
  });

  it('waits longest for a feed whose guard was overridden, with its reason, and not for a passed heat', () => {
    const passed = (rule: string) => ({ overrode: [{ rule, reason: 'nobody else about' }] });
    const marked = answers(plain(passed('bed-gets-none')));
    expect(marked.get('Tomato')).toMatchObject({ answer: 'wait', tillOn: '2026-10-10', why: 'overridden' });
    expect(marked.get('Kale')?.answer).toBe('wait');
    expect(marked.get('Tomato')?.overridden[0]?.overrode).toEqual([
      { rule: 'bed-gets-none', reason: 'nobody else about' },
    ]);
    expect(answers(plain(passed('hour-hot'))).get('Tomato')).toMatchObject({ why: 'held-raw', overridden: [] });
    expect(answers(plain(passed('a-rule-of-tomorrow'))).get('Tomato')?.why).toBe('overridden');
  });

  it('waits longest where someone of weak immunity eats, and 21 days where a class does', () => {
    const immune = rake.did('plot.described', '2026-06-13', { present: ['immune-weak'] });
    const school = rake.did('plot.described', '2026-06-13', { school: true });
    expect(answers([...plain(), immune]).get('Lettuce')).toMatchObject({ tillOn: '2026-10-10', why: 'immune-weak' });
    expect(answers([...plain(), school]).get('Lettuce')).toMatchObject({ tillOn: '2026-07-03', why: 'school' });
  });
});

describe('a date from its day', () => {
  it.each([
    // Days from 1 January 1970 by the POSIX day count: date -d @(days·86400).
    [0, '1970-01-01'],
    [11_016, '2000-02-29'],
    [20_630, '2026-06-26'],
    [-1, '1969-12-31'],
  ])('%d is %s', (day, on) => {
    expect(onDay(day)).toBe(on);
  });
});
