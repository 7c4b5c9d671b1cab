// The record as it is read and searched: every act with its sentence, its versions and what it is about, newest first;
// the form of a correction; and how long the record has stood on this device alone. Names of things and fields as typed
// are in record-names.ts, questions in questions.ts.

import type { Countries } from '#engine/quantity/ask.ts';
import type { Entry, Kept, Sealed } from '#journal/entry.ts';
import { isWithdrawal } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { isOn, momentOf } from '#journal/moment.ts';
import { type RecordLine, recordOf } from '#journal/record.ts';
import { canonical } from '#journal/same.ts';
import { newestBody } from '#journal/upgrade.ts';
import { fieldNames } from '#words/en/plot.ts';
import { sentences, record as words } from '#words/en/record.ts';
import { dateTrouble } from './date-trouble.ts';
import { type Asked, type FieldTrouble, readForm, type Troubles, type Typed, typedForm } from './form.ts';
import { fieldsSaid, REMARK, valuesSaid } from './record-names.ts';

/** One act of the record, ready to be shown. */
export interface RecordAct {
  readonly id: string;
  readonly kind: Kind;
  readonly state: RecordLine['state'];
  readonly on: string;
  readonly by: string;
  readonly sentence: string;
  /** The version that counts; undefined where it was taken back. */
  readonly shown: Entry | undefined;
  readonly versions: readonly Entry[];
}

export interface RecordSearch {
  readonly text?: string;
  readonly kind?: string;
  readonly peg?: number | undefined;
  readonly bed?: string;
  /** A day, as 2026-06-10. */
  readonly day?: string;
}

export interface RecordFound {
  readonly acts: readonly RecordAct[];
  readonly total: number;
  readonly sealed: readonly Sealed[];
  readonly waitingCount: number;
}

/** The acts that a search asks for, the newest first; all of them where it asks for nothing. */
export function searchRecord(
  { plot, entries, plotId }: { readonly plot: Plot; readonly entries: readonly Kept[]; readonly plotId: string },
  search: RecordSearch = {},
): RecordFound {
  const { lines, sealed } = recordOf(entries, plotId);
  const wanted = search.text?.trim().toLowerCase() ?? '';
  const acts: RecordAct[] = [];
  for (const line of lines) {
    const entry = line.shown ?? line.versions[0];
    if (entry === undefined) continue;
    if (search.kind && entry.kind !== search.kind) continue;
    if (search.day && entry.on.slice(0, 10) !== search.day) continue;
    const about = aboutOf(line, plot);
    if (search.peg !== undefined && !about.pegs.includes(search.peg)) continue;
    if (search.bed && !about.beds.includes(search.bed)) continue;
    const act = actOf(line, entry, plot);
    if (wanted !== '' && !searchable(act, plot).includes(wanted)) continue;
    acts.push(act);
  }
  return { acts, total: lines.length, sealed, waitingCount: plot.waiting.length };
}

function actOf({ id, state, shown, versions }: RecordLine, entry: Entry, plot: Plot): RecordAct {
  const by = versions[0]?.by ?? entry.by;
  return { id, kind: entry.kind, state, on: entry.on, by, sentence: sayEntry(entry, plot), shown, versions };
}

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

function searchable(act: RecordAct, plot: Plot): string {
  const fields = act.versions.flatMap((version) => entryFields(version, plot).map(({ text }) => text));
  return [act.sentence, act.by, ...fields].join('\n').toLowerCase();
}

/** Pegs and beds that an act is about. */
function aboutOf(
  { versions }: RecordLine,
  plot: Plot,
): { readonly pegs: readonly number[]; readonly beds: readonly string[] } {
  const pegs: number[] = [];
  const beds: string[] = [];
  for (const { id, body } of versions) {
    const made = plot.batches.get(id) ?? plot.bottles.get(id);
    if (made !== undefined) pegs.push(made.peg);
    if (plot.beds.has(id)) beds.push(id);
    mentioned(body, (text) => {
      const peg = plot.batches.get(text)?.peg ?? plot.bottles.get(text)?.peg;
      if (peg !== undefined) pegs.push(peg);
      if (plot.beds.has(text)) beds.push(text);
    });
  }
  return { pegs, beds };
}

function mentioned(value: unknown, tell: (text: string) => void): void {
  if (typeof value === 'string') tell(value);
  else if (typeof value === 'object' && value !== null)
    for (const inner of Object.values(value)) mentioned(inner, tell);
}

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
  if (!read.ok || troubles.size > 0) return { ok: false, troubles };
  const changed = on !== entry.on || canonical(read.body) !== canonical(base);
  return { ok: true, on, body: withTypedAnew(withoutStaleCans(read.body, base), base), changed };
}

/** Cans counted one by one tell nothing any more once the litres or the concentrate are told anew. */
function withoutStaleCans(body: Body<Kind>, base: object): Body<Kind> {
  if (!('cans' in body && 'poured' in body && 'from' in body)) return body;
  const before = base as Partial<Body<'bed.fed'>>;
  if (canonical([body.poured, body.from]) === canonical([before.poured, before.from])) return body;
  const { cans: _, ...rest } = body;
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

/** A device that made no file for so many days says so. @practice */
export const DAYS_WITHOUT_FILE = 7;

export interface SavedElsewhere {
  /** Days that entries have stood on this device alone; 0 where the last file holds them all. */
  readonly days: number;
  /** Entries that are in no file. */
  readonly count: number;
  readonly isDue: boolean;
}

/**
 * How long entries have stood on this device alone.
 * @param lastFileAt instant of the last file made, or undefined
 * @param nowAt instant now, both in UTC
 */
export function savedElsewhere(
  entries: readonly Kept[],
  { lastFileAt, nowAt }: { readonly lastFileAt: string | undefined; readonly nowAt: string },
): SavedElsewhere {
  let oldest: string | undefined;
  let count = 0;
  for (const { at } of entries) {
    if (lastFileAt !== undefined && at <= lastFileAt) continue;
    count++;
    if (oldest === undefined || at < oldest) oldest = at;
  }
  if (oldest === undefined) return { days: 0, count, isDue: false };
  const days = Math.max(0, momentOf(nowAt.slice(0, 10)).dateDay - momentOf(oldest.slice(0, 10)).dateDay);
  return { days, count, isDue: days >= DAYS_WITHOUT_FILE };
}
