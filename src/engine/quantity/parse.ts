// Reads an amount as a grower writes it ("5 lb 4 oz", "1½ cups", "1,5 L") into SI, and keeps it as typed.
// It never guesses: a gallon or spoon without a country, a mark that may stand before thousands, a volume
// where a mass is wanted are answered with a problem and, where one question settles it, with that question.
// Figures are read in number.ts, unit names in names.ts; the sentences stand in words/quantity.ts.

import { type Ask, askCountry, askStyle, type Countries, settledUnit } from './ask.ts';
import { massFromVolume } from './bulk.ts';
import { type Named, unitNamed } from './names.ts';
import { plainText, readFigure } from './number.ts';
import type { Range } from './range.ts';
import { READER, type ReadWith, readWithOf } from './read-with.ts';
import { readSides } from './sides.ts';
import { celsiusFromFahrenheit, type Dimension, UNITS, type UnitId } from './units.ts';

/** What is wanted, and what the grower has already settled. */
export interface Wanted extends Countries {
  readonly dimension: Dimension;
  /** Unit of a bare number; without it a bare number is a problem (a count is always bare). */
  readonly bareUnit?: UnitId | 'C' | 'F' | undefined;
  /** Where a mass may come by volume: its product's mass per litre, or 'ask' while none is named. */
  readonly bulkKgPerL?: Range | 'ask' | undefined;
}

export type AmountProblemCode =
  | 'empty'
  | 'not-a-number'
  | 'ambiguous-mark'
  | 'unclear-number'
  | 'negative'
  | 'zero'
  | 'too-large'
  | 'too-small'
  | 'not-whole'
  | 'unit-missing'
  | 'unit-unknown'
  | 'wrong-dimension'
  | 'country-needed'
  | 'product-needed';

/** Why no amount was read, and what would do. */
export interface AmountProblem {
  readonly value: string;
  readonly message: AmountProblemCode;
  readonly allowed: { readonly dimension: Dimension; readonly least: number; readonly most: number };
  /** The unit as typed, and what it measures, where that is the trouble. */
  readonly unit?: string;
  readonly found?: Dimension;
}

export type ParsedAmount =
  | {
      readonly ok: true;
      /** kg, L, m2 or °C; a plain count. */
      readonly value: number;
      readonly asTyped: string;
      /** What each figure was read as, with the unit and its country. */
      readonly reading: string;
      /** Only for a mass given by volume, in kg: `value` is its likely. */
      readonly band?: Range;
      /** What it was read with, to be kept beside it. */
      readonly readWith: ReadWith;
    }
  | { readonly ok: false; readonly problem: AmountProblem; readonly ask?: Ask };

/**
 * Least and most that are believed, in SI; outside them a slipped decimal or a wrong unit is likelier.
 * The most are those of the task fields: no bucket garden lifts a tonne or fills 2,000 L.
 * @our-caution
 */
export const BELIEVED: Readonly<Record<Dimension, { readonly least: number; readonly most: number }>> = {
  mass: { least: 1e-6, most: 1000 },
  volume: { least: 1e-6, most: 2000 },
  area: { least: 1e-4, most: 5000 },
  temperature: { least: -10, most: 60 },
  count: { least: 1, most: 10_000 },
};

/** One figure with its unit, in SI; `factor` orders the terms of "5 lb 4 oz". */
interface Term {
  readonly value: number;
  readonly reading: string;
  readonly dimension: Dimension;
  readonly factor: number;
}

interface Refusal {
  readonly code: AmountProblemCode;
  readonly unit?: string;
  readonly found?: Dimension;
  readonly ask?: Ask;
}

/**
 * An amount as typed, in SI, or why it could not be read.
 * @range BELIEVED; zero and negative amounts are problems except for a temperature
 * @returns kg, L, m2, °C or a count
 * @arithmetic sum of figures times the factors of units.ts
 */
export function parseAmount(typed: string, wanted: Wanted): ParsedAmount {
  const allowed = { dimension: wanted.dimension, ...BELIEVED[wanted.dimension] };
  const fail = ({ code, ask, ...more }: Refusal): ParsedAmount => {
    const problem: AmountProblem = { value: typed, message: code, allowed, ...more };
    return ask === undefined ? { ok: false, problem } : { ok: false, problem, ask };
  };
  const sides = wanted.dimension === 'area' ? readSides(plainText(typed), wanted.style) : undefined;
  if (sides !== undefined && 'ask' in sides)
    return fail({ code: 'ambiguous-mark', ask: askStyle(sides.ask, sides.behind) });
  if (sides !== undefined) {
    const { areaM2, reading } = sides;
    if (!(areaM2 > 0)) return fail({ code: 'zero' });
    if (areaM2 > allowed.most) return fail({ code: 'too-large' });
    if (areaM2 < allowed.least) return fail({ code: 'too-small' });
    return { ok: true, value: areaM2, asTyped: typed, reading, readWith: { ...readWithOf(wanted), reader: READER } };
  }
  const read = readTerms(plainText(typed), wanted);
  if ('code' in read) return fail(read);
  const { terms, question } = read;
  const sum = terms.reduce((total, term) => total + term.value, 0);
  if (wanted.dimension !== 'temperature' && !(sum > 0)) return fail({ code: sum < 0 ? 'negative' : 'zero' });
  if (question !== undefined) return fail(question);
  if (wanted.dimension === 'count' && !Number.isInteger(sum)) return fail({ code: 'not-whole' });
  const { bulkKgPerL } = wanted;
  const byVolume = wanted.dimension === 'mass' && terms[0]?.dimension === 'volume' && typeof bulkKgPerL === 'object';
  const band = byVolume ? massFromVolume({ volumeL: sum, bulkKgPerL }) : undefined;
  const value = band?.likely ?? sum;
  if (!((band?.high ?? value) <= allowed.most)) return fail({ code: 'too-large' });
  if (!(value >= allowed.least)) return fail({ code: 'too-small' });
  const reading = terms.map((term) => term.reading).join(' + ');
  return {
    ok: true,
    value,
    asTyped: typed,
    reading,
    readWith: readWithOf(wanted),
    ...(band !== undefined && { band }),
  };
}

/** Every "figure unit" of the text; a term that waits for an answer counts with its bare figure. */
function readTerms(text: string, wanted: Wanted): { terms: readonly Term[]; question?: Refusal } | Refusal {
  if (text === '') return { code: 'empty' };
  const sign = text.startsWith('-') ? -1 : 1;
  let rest = text.replace(/^- */, '');
  const terms: Term[] = [];
  let question: Refusal | undefined;
  while (rest !== '') {
    const figure = readFigure(rest, wanted.style);
    if (!figure.ok && figure.why === 'ambiguous-mark') {
      const ask = askStyle(figure.readings, unitText(figure.rest).trim());
      return { code: figure.why, ask };
    }
    if (!figure.ok) return { code: terms.length > 0 ? 'unclear-number' : figure.why };
    const written = unitText(figure.rest);
    const behind = figure.rest.slice(written.length);
    if (/^[.,]/.test(behind) && /\S$/.test(written)) return { code: 'unclear-number' };
    rest = behind.trim();
    const unit = written
      .trim()
      .replace(/(?:,|&|\+|\band)$/, '')
      .trim();
    const term = readTerm({ count: sign * figure.value, unit, alone: terms.length === 0 && rest === '' }, wanted);
    if (!('code' in term)) terms.push(term);
    else if (term.ask === undefined) return unit === '' ? term : { ...term, unit };
    else {
      question ??= { ...term, unit };
      terms.push({ value: sign * figure.value, reading: '', dimension: wanted.dimension, factor: Number.NaN });
    }
  }
  for (const [i, term] of terms.entries()) {
    const before = terms[i - 1];
    if (before === undefined) continue;
    if (before.factor <= term.factor || term.dimension === 'temperature') return { code: 'unclear-number' };
    if (question === undefined && before.dimension !== term.dimension) return { code: 'unclear-number' };
  }
  return question === undefined ? { terms } : { terms, question };
}

/** Everything up to the next figure; the 2 of "m2" belongs to the unit. */
function unitText(rest: string): string {
  return /^(?:[^\d.,]|[.,](?!\d)|(?<=m|ft|yd)[23](?!\d))*/.exec(rest)?.[0] ?? '';
}

type Written = { readonly count: number; readonly unit: string; readonly alone: boolean };

function readTerm({ count, unit, alone }: Written, wanted: Wanted): Term | Refusal {
  if (unit !== '') {
    const named = unitNamed(unit);
    return named === undefined ? { code: 'unit-unknown' } : fromNamed(count, named, wanted);
  }
  if (wanted.dimension === 'count' && alone)
    return { value: count, reading: shortest(count), dimension: 'count', factor: 1 };
  const { bareUnit } = wanted;
  if (bareUnit === undefined || !alone) return { code: 'unit-missing' };
  const named: Named =
    bareUnit === 'C' || bareUnit === 'F' ? { kind: 'temperature', scale: bareUnit } : { kind: 'unit', unit: bareUnit };
  return fromNamed(count, named, wanted);
}

function fromNamed(count: number, named: Named, wanted: Wanted): Term | Refusal {
  if (named.kind === 'temperature') {
    if (wanted.dimension !== 'temperature') return { code: 'wrong-dimension', found: 'temperature' };
    const temperatureC = named.scale === 'C' ? count : celsiusFromFahrenheit(count);
    return { value: temperatureC, reading: `${shortest(count)} °${named.scale}`, dimension: 'temperature', factor: 1 };
  }
  const found = named.kind === 'unit' ? UNITS[named.unit].dimension : 'volume';
  const byVolume = wanted.dimension === 'mass' && found === 'volume' && wanted.bulkKgPerL !== undefined;
  if (found !== wanted.dimension && !byVolume) return { code: 'wrong-dimension', found };
  const unit = named.kind === 'unit' ? named.unit : settledUnit(named, wanted);
  if (unit === undefined && named.kind !== 'unit') return { code: 'country-needed', found, ask: askCountry(named) };
  if (byVolume && wanted.bulkKgPerL === 'ask')
    return { code: 'product-needed', found, ask: { kind: 'product', choices: [] } };
  const { factor, symbol } = UNITS[unit as UnitId];
  return { value: count * factor, reading: `${shortest(count)} ${symbol}`, dimension: found, factor };
}

function shortest(value: number): string {
  return String(Number(value.toPrecision(6)));
}
