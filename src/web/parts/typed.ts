// Amounts as typed into a form that is kept as a draft: a text, what it was last read as, whose gallon and spoon it is.
// The reading is the engine's; the sentence for what cannot be read stands in words.

import type { Countries } from '#engine/quantity/ask.ts';
import type { Manner } from '#engine/quantity/format.ts';
import type { AmountRead } from '#engine/quantity/kept.ts';
import { figureAlone } from '#engine/quantity/number.ts';
import { type ParsedAmount, parseAmount, type Wanted } from '#engine/quantity/parse.ts';
import type { PlotFacts } from '#journal/parts/described.ts';
import { canonical } from '#journal/same.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import { troubles } from '#words/en/weigh-in-labels.ts';
import { sayAmountProblem } from '#words/quantity.ts';
import type { Field } from '../weigh-in/draft.ts';
import type { Trouble } from '../weigh-in/reading.ts';

/** How a keyholder writes and reads amounts. */
export interface Habits extends Countries {
  readonly manner: Manner;
}

/** An amount read, or the trouble that stands at its field; both absent while nothing was typed. */
export interface TypedReading {
  readonly value?: number;
  /** The amount as it was read, to be kept; absent for a plain figure. */
  readonly read?: AmountRead;
  readonly trouble?: Trouble;
}

export const NO_TEXT: Field = { text: '', settled: '' };

/** The keyholder's habits, as the plot has them. */
export function habitsOf(facts: PlotFacts, tag: string): Habits {
  const holder = facts.keyholders?.find((one) => one.tag === tag);
  return { manner: holder?.units ?? 'metric', ...countriesOf({ facts }, tag) };
}

type Measured = 'mass' | 'volume' | 'temperature' | 'count';

const UNITS = { mass: ['kg', 'g', 'lb'], volume: ['L', 'mL', 'gal'], temperature: ['°C', '°F'], count: [] } as const;

/**
 * What a text from another sheet was read as there. A mass told by the volume of a product is none where another product is
 * chosen: then the text is read here.
 */
function takenAs({ read, settled }: Field, more: Partial<Wanted> | undefined): AmountRead | undefined {
  if (read === undefined || read.asTyped !== settled) return undefined;
  const bulk = read.readWith.bulkKgPerL;
  const isSame = bulk === undefined || read.band === undefined || canonical(bulk) === canonical(more?.bulkKgPerL);
  return isSame ? read : undefined;
}

/** What a field holds. */
export function readTyped(
  field: Field,
  dimension: Measured,
  countries: Countries,
  more?: Partial<Wanted>,
): TypedReading {
  if (field.settled.trim() === '') return {};
  const taken = takenAs(field, more);
  if (taken !== undefined) return { value: taken.value, read: taken };
  const read = parse(field.settled, dimension, countries, more);
  if (read.ok) return { value: read.value, read };
  const said = sayAmountProblem(read);
  const sentence = troubles.field(field.settled, said.message, said.allowed);
  if (read.ask) return { trouble: { sentence, ask: read.ask } };
  return { trouble: read.problem.message === 'unit-missing' ? { sentence, units: UNITS[dimension] } : { sentence } };
}

/** The field as it is left: what was only passed through stays as it was read. */
export function leftField(field: Field, text: string): Field {
  return text === field.settled ? field : { text, settled: text };
}

/** The field after a key: what can be read is read at once, the rest when the field is left. */
export function typedInto(
  old: Field,
  text: string,
  dimension: Measured,
  countries: Countries,
  more?: Partial<Wanted>,
): Field {
  const readable = text.trim() === '' || parse(text, dimension, countries, more).ok;
  return readable ? { text, settled: text } : { text, settled: old.settled };
}

function parse(text: string, dimension: Measured, countries: Countries, more?: Partial<Wanted>): ParsedAmount {
  const { gallon, spoon, style } = countries;
  return parseAmount(text, { dimension, gallon, spoon, style, ...more });
}

/** A plain figure between two limits, with a point or a comma; undefined where nothing was typed. */
export function readFigure(
  field: Field,
  limits: { readonly least: number; readonly most: number; readonly say: (typed: string) => string },
): TypedReading {
  const typed = field.settled.trim();
  if (typed === '') return {};
  const value = figureAlone(typed, limits);
  return value === undefined ? { trouble: { sentence: limits.say(typed) } } : { value };
}
