import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { kinds } from '#journal/kinds/index.ts';
import { kindNames, sentences } from '#words/en/record.ts';
import { litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { DEMO_PLOT, gardenEntries } from '../demo/garden.ts';
import { CONCENTRATE_FOR } from './pour-correction.ts';
import { correctionForm, correctionTyped, entryFields, readCorrection } from './record.ts';
import { recordIndex } from './record-search.ts';

const entries = gardenEntries();
const plot = fold(entries);
const garden = recordIndex({ plot, entries, plotId: DEMO_PLOT });
garden.prepare(entries.length);
const NOW = '2026-07-16T11:00';
const corrected = (entry: Entry, typed: Readonly<Record<string, string>>) =>
  readCorrection(entry, typed, {}, { line: entry.id, now: NOW, plot });

describe('the record of the demo garden', () => {
  it('has a sentence and a name for every kind of entry', () => {
    expect(Object.keys(sentences).sort()).toEqual(Object.keys(kinds).sort());
    expect(Object.keys(kindNames).sort()).toEqual(Object.keys(kinds).sort());
  });
  it('says every entry whole: no gap, no code, no id', () => {
    const said = garden.search({}).acts.map(({ sentence }) => sentence);
    expect(said).toHaveLength(entries.length);
    expect(said.filter((one) => /undefined|NaN|\[object|\b[0-9a-f]{8}-|not in this record|:\s*\.$/.test(one))).toEqual(
      [],
    );
  });
  it('shows the newest act first', () => {
    const days = garden.search({}).acts.map(({ on }) => on.slice(0, 10));
    expect(days).toEqual([...days].sort().reverse());
  });
  it('finds the nine looks at peg 15, by kind and peg', () => {
    expect(garden.search({ kind: 'peg.looked', peg: 15 }).acts).toHaveLength(9);
  });
  it('finds what was done on a bed, on a day, and by a word of a note', () => {
    const tunnel = [...plot.beds.values()].find(({ facts }) => facts.tag === 'T')?.id ?? '';
    const pours = garden.search({ bed: tunnel, day: '2026-07-14' }).acts;
    expect(pours.map(({ by }) => by).sort()).toEqual(['Can', 'Rake']);
    expect(garden.search({ text: 'TIP IT' }).acts.map(({ on }) => on.slice(0, 10))).toEqual(['2026-06-20']);
  });
  it('knows of no word, peg or bed of an act before that is prepared, and of the newest first', () => {
    const fresh = recordIndex({ plot, entries, plotId: DEMO_PLOT });
    expect(fresh.search({ text: 'a' }).count).toBe(0);
    expect(fresh.search({ kind: 'peg.looked' }).count).toBe(garden.search({ kind: 'peg.looked' }).count);
    fresh.prepare(10);
    expect([fresh.isReady(), garden.isReady()]).toEqual([false, true]);
    const newest = garden.search({}, 10).acts.map(({ id }) => id);
    for (const { id } of fresh.search({ text: 'a' }).acts) expect(newest).toContain(id);
  });
  it('tells as many as are asked for in full, and counts them all', () => {
    const { acts, count } = garden.search({ kind: 'peg.looked', peg: 15 }, 4);
    expect([acts.length, count]).toEqual([4, 9]);
    expect(acts).toEqual(garden.search({ kind: 'peg.looked', peg: 15 }).acts.slice(0, 4));
  });
  it('opens an entry field by field as typed', () => {
    const filled = entries.find(
      ({ kind, body }) => kind === 'peg.filled' && (body as { peg: number }).peg === 14,
    ) as Entry;
    const fields = entryFields(filled, plot).map(({ name, text }) => `${name}: ${text}`);
    expect(fields).toContain('Weight of scraps, 1: 2.1 kg');
    expect(fields).toContain('Weight of sugar, 1: 150 g');
    expect(fields).toContain('Vessel: 12 L pail');
  });
});

describe('a correction', () => {
  const me = recorder();
  const filled = me.did('peg.filled', '2026-06-01', { peg: 3, water: [{ volume: litres(5) }] });
  const look = me.did('peg.looked', '2026-06-02T08:00', { batch: filled.id, acidity: meter(5.2) });

  it('changes an amount, a reading, a day, and leaves the rest', () => {
    const water = corrected(filled, { ...correctionTyped(filled), 'water.0.volume': '5,5 L' });
    expect(water).toMatchObject({
      ok: true,
      changed: true,
      on: '2026-06-01',
      body: { peg: 3, water: [{ volume: { typed: '5,5 L', volumeL: 5.5 } }] },
    });
    const typed = { ...correctionTyped(look), acidity: '4.2', smell: 'sour', 'on.date': '2026-06-03' };
    expect(corrected(look, typed)).toMatchObject({
      ok: true,
      on: '2026-06-03T08:00',
      body: { batch: filled.id, acidity: { typed: '4.2', ph: 4.2, by: 'meter' }, smell: 'sour' },
    });
  });
  it('may leave a field out that was told', () => {
    const read = corrected(look, { ...correctionTyped(look), acidity: '', surface: 'clear' });
    expect(read.ok && read.body).toEqual({ batch: filled.id, surface: 'clear' });
  });
  it('says when nothing was changed', () => {
    expect(corrected(filled, correctionTyped(filled))).toMatchObject({ ok: true, changed: false });
  });
  it('tells all problems at once', () => {
    const typed = { ...correctionTyped(filled), 'water.0.volume': '5', 'on.date': '2026-02-30' };
    const read = corrected(filled, typed);
    expect(!read.ok && [...read.troubles.keys()].sort()).toEqual(['on.date', 'water.0.volume']);
  });
  it('of a pour drops the cans that were counted for other litres', () => {
    const pour = entries.find(({ kind }) => kind === 'bed.fed') as Entry;
    const typed = correctionTyped(pour);
    const read = corrected(pour, { ...typed, poured: '3 L', [CONCENTRATE_FOR]: '3 L' });
    expect(read.ok && 'cans' in read.body).toBe(false);
    const later = corrected(pour, { ...typed, 'on.date': '2026-06-25' });
    expect(later.ok && 'cans' in later.body).toBe(true);
  });
  it('of a pour neither asks for the figures that were shown with it nor loses them', () => {
    const pour = entries.find(({ kind }) => kind === 'bed.fed') as Entry;
    const figuresShown = {
      tables: { number: 1, on: '2026-06-24', digest: '1a2b3c4d' },
      model: 1,
      entered: 'x',
      figures: [{ what: 'nG', low: 1, likely: 2, high: 3 }],
    };
    const shown: Entry = { ...pour, body: { ...(pour.body as object), figuresShown } };
    expect(correctionForm(shown)).toEqual(correctionForm(pour));
    expect(entryFields(shown, plot)).toEqual(entryFields(pour, plot));
    const read = corrected(shown, { ...correctionTyped(shown), poured: '3 L', [CONCENTRATE_FOR]: '3 L' });
    expect(read.ok && read.body).toMatchObject({ poured: { volumeL: 3 }, figuresShown });
  });
  it.each([
    'peg.looked',
    'scraps.weighed',
    'bed.fed',
    'peg.filled',
    'peg.strained',
    'bottle.filled',
    'water.reported',
    'weather.typed',
  ])('of %s starts from what stands, without a problem', (kind) => {
    for (const entry of entries.filter((one) => one.kind === kind)) {
      expect(corrected(entry, correctionTyped(entry))).toMatchObject({ ok: true, changed: false });
    }
  });
});
