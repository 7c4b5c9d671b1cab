// A date typed here: never after today, and a check of a vessel only between its filling and its emptying. From the
// correction form through the record to the word for the batch.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { dateTrouble } from '#tasks/plot/date-trouble.ts';
import { factForms, readThing, readWater } from '#tasks/plot/facts.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { correctionTyped, readCorrection } from '#tasks/plot/record.ts';
import { readWeather } from '#tasks/plot/weather.ts';
import { litres, meter, recorder } from './recorder.ts';

const rake = recorder();
const bed = rake.did('bed.described', '2026-05-01', { name: 'Gate', crop: 'beans', eaten: 'raw-fruit' });
const filled = rake.did('peg.filled', '2026-06-01T18:00', {
  peg: 14,
  water: [{ volume: litres(6), source: 'tap' }],
  temperatureC: 20,
});
const look = (on: string, ph: number) =>
  rake.did('peg.looked', on, { batch: filled.id, acidity: meter(ph), smell: 'sour', temperatureC: 20 });
const first = look('2026-06-05T18:00', 4.0);
const last = look('2026-06-08T18:00', 3.8);
const strained = rake.did('peg.strained', '2026-06-16T18:00', {
  batch: filled.id,
  drained: litres(5),
  rest: 'nothing',
});
const bottled = rake.did('bottle.filled', '2026-06-16T18:10', {
  batch: filled.id,
  filled: litres(1),
  count: 5,
  cap: 'vent',
  material: 'plastic',
});
const poured = rake.did('bed.fed', '2026-06-20T18:00', {
  bed: bed.id,
  from: [{ bottle: bottled.id, volume: litres(0.2) }],
  poured: litres(8),
  way: 'soil',
});
const emptied = [bed, filled, first, last, strained, bottled, poured];
const standing = [bed, filled, first, last];
const now = '2026-06-22T09:00';

/** The form of the record: its troubles by field, or the entry that it writes. */
function correction(
  entries: readonly Entry[],
  entry: Entry,
  typed: Readonly<Record<string, string>>,
): { readonly troubles: Readonly<Record<string, string>>; readonly written?: Entry } {
  const plot = fold(entries);
  const texts = { ...correctionTyped(entry), ...typed };
  const read = readCorrection(entry, texts, {}, { line: entry.id, now, plot });
  if (read.ok) return { troubles: {}, written: rake.corrected(entry as never, read.on, read.body as never) as Entry };
  return { troubles: Object.fromEntries([...read.troubles].map(([field, { sentence }]) => [field, sentence])) };
}

describe('a correction in the record sheet', () => {
  it('dated 2031 is stopped at its field, so that a ready batch stays ready', () => {
    const { troubles, written } = correction(standing, last, { 'on.date': '2031-06-08' });
    expect(troubles).toEqual({
      'on.date': 'This date is still to come. Please type a date up to Mon 22\u00a0June.',
    });
    expect(written).toBeUndefined();
    const plot = fold(standing);
    const batch = plot.batches.get(filled.id);
    expect(batch && pegView({ plot, batch, now: '2026-06-09T09:00' }).state).toBe('ready');
  });
  it('of today is stopped at its time while that is still to come', () => {
    const { troubles } = correction(standing, last, { 'on.date': '2026-06-22', 'on.time': '09:01' });
    expect(troubles).toEqual({ 'on.time': 'This time is still to come. Please type a time up to 09:00.' });
    expect(correction(standing, last, { 'on.date': '2026-06-22', 'on.time': '09:00' }).written).toBeDefined();
    expect(correction(standing, last, { 'on.date': '2026-06-22', 'on.time': '' }).written).toBeDefined();
  });
  it('puts no check before the filling and none after the emptying', () => {
    expect(correction(emptied, last, { 'on.date': '2026-05-31' }).troubles).toEqual({
      'on.date': 'Peg\u00a014 was filled on Mon 1\u00a0June, 18:00. Please type that day or a later one.',
    });
    expect(correction(emptied, last, { 'on.date': '2026-06-17' }).troubles).toEqual({
      'on.date': 'Peg\u00a014 was emptied on Tue 16\u00a0June, 18:00. Please type that day or an earlier one.',
    });
    expect(correction(emptied, last, { 'on.date': '2026-06-16', 'on.time': '' }).written).toBeDefined();
  });
  it('puts no filling after a check and no emptying before one', () => {
    expect(correction(emptied, filled, { 'on.date': '2026-06-06' }).troubles['on.date']).toMatch(/check of this batch/);
    expect(correction(emptied, strained, { 'on.date': '2026-06-07' }).troubles['on.date']).toMatch(
      /check of this batch/,
    );
    expect(correction(emptied, filled, { 'on.date': '2026-06-02' }).written).toBeDefined();
  });
  it('lets bottles and pours go on after the emptying', () => {
    expect(correction(emptied, bottled, { 'on.date': '2026-06-18' }).written).toBeDefined();
    expect(correction(emptied, poured, { 'on.date': '2026-06-21' }).written).toBeDefined();
  });
  it('of an entry whose date came from elsewhere may leave that date as it is', () => {
    const ahead = look('2026-06-23T18:00', 3.8);
    expect(correction([...standing, ahead], ahead, { note: 'read by lamp' }).written).toMatchObject({
      on: '2026-06-23T18:00',
    });
  });
  it.each([poured, bottled, bed, filled, strained])(
    'of any kind is stopped where it is still to come: $kind',
    (entry) => {
      expect(correction(emptied, entry, { 'on.date': '2026-06-23' }).troubles['on.date']).toMatch(/still to come/);
    },
  );
});

describe('the other forms that ask for a date', () => {
  const ahead = /This date is still to come/;
  it('stop it: a report of water, the rule of a site, when a forecast was made', () => {
    const water = readWater({ source: 'tap', reportOn: '2026-06-23' }, now);
    expect(!water.ok && water.troubles.get('reportOn')?.sentence).toMatch(ahead);
    const site = readThing('plot', { 'siteRule.text': 'no meat', 'siteRule.on': '2027-01-01' }, { now });
    expect(!site.ok && site.troubles.get('siteRule.on')?.sentence).toMatch(ahead);
    const weather = readWeather({ '0.highC': '21', issuedAt: '2026-06-23T06:00' }, { now, units: 'metric' });
    expect(!weather.ok && weather.troubles.get('issuedAt')).toMatch(ahead);
  });
  it('take today and what is behind', () => {
    expect(readWater({ source: 'tap', reportOn: '2026-06-22' }, now)).toMatchObject({ ok: true });
    expect(dateTrouble({ on: '2026-06-22', now })).toBeUndefined();
  });
  it('are all of them: no other form of facts asks for a date', () => {
    const dates = Object.values(factForms).flatMap((form) => form.filter(({ as }) => as === 'date'));
    expect(dates.map(({ field }) => field).sort()).toEqual(['reportOn', 'siteRule.on']);
  });
});
