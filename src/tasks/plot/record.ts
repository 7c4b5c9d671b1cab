// The record as it is read: an entry in one sentence and field by field, and the form of a correction. Searching is
// record-search.ts, names of things and fields as typed are in record-names.ts, questions in questions.ts.

import type { Countries } from '#engine/quantity/ask.ts';
import type { Entry } from '#journal/entry.ts';
import { isWithdrawal } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { isOn } from '#journal/moment.ts';
import { canonical } from '#journal/same.ts';
import { newestBody } from '#journal/upgrade.ts';
import { fieldNames } from '#words/en/plot.ts';
import { sentences, record as words } from '#words/en/record.ts';
import { dateTrouble } from './date-trouble.ts';
import { type Asked, type FieldTrouble, readForm, type Troubles, type Typed, typedForm } from './form.ts';
import { concentrateTrouble, withStrengthAnew } from './pour-correction.ts';
import { fieldsSaid, REMARK, valuesSaid } from './record-names.ts';

/** An entry in one plain sentence. */
export function sayEntry(entry: Entry, plot: Plot): string {
  const say = sentences[entry.kind] satisfies (values: Readonly<Record<string, string | undefined>>) => string;
  const text = isWithdrawal(entry) ? words.takenBack : say(valuesSaid(newestBody(entry), plot));
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The fields of an entry with their names, as they were typed. */
export function entryFields(entry: Entry, plot: Plot): readonly { readonly name: string; readonly text: string }[] {
  if (isWithdrawal(entry)) return [];
  return fieldsSaid(newestBody(entry), plot).map(({ path, text }) => ({ name: words.field(fieldNames, path), text }));
}

/** Name of a field of an entry, for a form. */
export const fieldLabel = (path: string) => words.field(fieldNames, path);

const WRITTEN = ['note', 'why', 'name', 'crop', 'place', 'label', 'tag', 'text', 'vesselName'];
/** What a look may lack and a correction may add. */
const LOOK: readonly Asked[] = [
  {
    field: 'smell',
    as: 'one',
    words: ['grassy', 'sour', 'yeasty', 'vinegar', 'butter-gone-off', 'ammonia', 'egg', 'sewage', 'cannot-smell'],
  },
  { field: 'surface', as: 'one', words: ['clear', 'bubbles', 'flat-white', 'fuzzy-white', 'coloured-fuzz', 'larvae'] },
  { field: 'temperatureC', as: 'figure' },
  { field: 'lidBulged', as: 'yes' },
  { field: 'note', as: 'text' },
];

/** What a correction of an entry asks: its amounts, figures, written words and yes or no. */
export function correctionForm(entry: Entry): readonly Asked[] {
  const asked: Asked[] = [];
  walk(newestBody(entry), '');
  if (entry.kind !== 'peg.looked') return asked;
  return [...asked.filter(({ field }) => !LOOK.some((one) => one.field === field)), ...LOOK];

  function walk(value: unknown, path: string): void {
    const key = path.split('.').at(-1) ?? '';
    if (typeof value === 'number') asked.push({ field: path, as: 'figure' });
    else if (typeof value === 'boolean') asked.push({ field: path, as: 'yes' });
    else if (typeof value === 'string' && WRITTEN.includes(key)) asked.push({ field: path, as: 'text' });
    if (typeof value !== 'object' || value === null || key === REMARK) return;
    const one = amountAsked(value, path);
    if (one !== undefined) asked.push(one);
    else if (path !== 'cans' && path !== 'ratio')
      for (const [inner, of] of Object.entries(value)) walk(of, path === '' ? inner : `${path}.${inner}`);
  }
}

function amountAsked(value: object, field: string): Asked | undefined {
  if (!('typed' in value)) return undefined;
  if ('massKg' in value) return { field, as: 'amount', dimension: 'mass' };
  if ('volumeL' in value) return { field, as: 'amount', dimension: 'volume' };
  if ('areaM2' in value) return { field, as: 'amount', dimension: 'area' };
  if ('ph' in value && 'by' in value) return { field, as: 'reading', by: value.by === 'strip' ? 'strip' : 'meter' };
  if ('alkalinityMeqPerL' in value || 'hardnessMgPerLCaCo3' in value) return { field, as: 'degrees' };
  return undefined;
}

/** Where a correction's date and time are typed. */
export const ON_DATE = 'on.date';
export const ON_TIME = 'on.time';

/** A correction as it stands before anything is changed. */
export function correctionTyped(entry: Entry): Record<string, string> {
  const typed = typedForm(correctionForm(entry), newestBody(entry) as object);
  return { ...typed, [ON_DATE]: entry.on.slice(0, 10), [ON_TIME]: entry.on.slice(11) };
}

export type CorrectionRead =
  | { readonly ok: true; readonly on: string; readonly body: Body<Kind>; readonly changed: boolean }
  | { readonly ok: false; readonly troubles: Troubles };

/**
 * Reads a correction over the entry it corrects; a date that is left as it was is not asked about anew.
 * @param line id of the first entry of the act
 */
export function readCorrection(
  entry: Entry,
  typed: Typed,
  countries: Countries,
  { line, now, plot }: { readonly line: string; readonly now: string; readonly plot: Plot },
): CorrectionRead {
  const base = newestBody(entry) as object;
  const read = readForm(entry.kind, correctionForm(entry), typed, { base, countries });
  const on = [typed[ON_DATE] ?? '', typed[ON_TIME] ?? ''].filter(Boolean).join('T');
  const troubles = new Map<string, FieldTrouble>(read.ok ? [] : read.troubles);
  if (!isOn(on)) troubles.set(ON_DATE, { sentence: words.badDate });
  else if (on !== entry.on) {
    const found = dateTrouble({ on, now, plot, act: { line, kind: entry.kind, body: base } });
    if (found !== undefined) troubles.set(found.at === 'time' ? ON_TIME : ON_DATE, { sentence: found.sentence });
  }
  if (read.ok && isPour(read.body) && isPour(base)) {
    const found = concentrateTrouble(read.body, base, typed);
    if (found !== undefined) troubles.set('poured', found);
  }
  if (!read.ok || troubles.size > 0) return { ok: false, troubles };
  const changed = on !== entry.on || canonical(read.body) !== canonical(base);
  return { ok: true, on, body: withTypedAnew(pourAnew(read.body, base), base), changed };
}

function isPour(body: object): body is Body<'bed.fed'> {
  return 'poured' in body && 'from' in body;
}

/**
 * A pour whose litres or concentrate are told anew: its strength follows, and cans counted one by one tell nothing any more.
 */
function pourAnew(body: Body<Kind>, base: object): Body<Kind> {
  if (!isPour(body) || !isPour(base)) return body;
  if (canonical([body.poured, body.from]) === canonical([base.poured, base.from])) return body;
  const { cans: _, ...rest } = withStrengthAnew(body, base);
  return rest;
}

/** A figure told anew is what was typed from then on: the text beside it would still say the old one. */
function withTypedAnew<T>(value: T, base: unknown): T {
  if (typeof value !== 'object' || value === null || typeof base !== 'object' || base === null) return value;
  if (Array.isArray(value)) {
    return Array.isArray(base) ? (value.map((one, i) => withTypedAnew(one, base[i])) as T) : value;
  }
  const told = value as Readonly<Record<string, unknown>>;
  const before = base as Readonly<Record<string, unknown>>;
  const figure = FIGURES_TYPED.find((key) => typeof told[key] === 'number' && told[key] !== before[key]);
  if (figure !== undefined && typeof told.typed === 'string' && told.typed === before.typed) {
    return { ...told, typed: words.typedAnew(figure, told) } as T;
  }
  return Object.fromEntries(Object.entries(told).map(([key, one]) => [key, withTypedAnew(one, before[key])])) as T;
}

/** Figures that a correction asks for by themselves, apart from the text they were read from. */
const FIGURES_TYPED = ['value', 'yieldKgPerM2', 'low', 'likely', 'high'];
