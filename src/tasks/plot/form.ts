// Small forms over one entry of the record: what is asked, how it is typed, and how the typed texts become the body of
// an entry, every problem at its field at once. Amounts keep what was typed beside what was read. The facts' forms are
// in facts.ts, those of corrections in record.ts.

import type { Ask as AmountAsk, Countries } from '#engine/quantity/ask.ts';
import { askStyle } from '#engine/quantity/ask.ts';
import { keptArea, keptMass, keptVolume } from '#engine/quantity/kept.ts';
import { NUMBER_STYLES, type NumberStyle, plainFigure, plainText, readFigure } from '#engine/quantity/number.ts';
import { type ParsedAmount, parseAmount } from '#engine/quantity/parse.ts';
import { type AlkalinityUnit, alkalinityMeqPerL, MEQ_PER_UNIT } from '#engine/scraps/water.ts';
import { type Body, type Kind, kinds } from '#journal/kinds/index.ts';
import { isDate } from '#journal/moment.ts';
import { problemsOf } from '#journal/problem.ts';
import { form as words } from '#words/en/plot.ts';
import { sayAmountProblem } from '#words/quantity.ts';
import { dateTrouble } from './date-trouble.ts';

export type Dimension = 'mass' | 'volume' | 'area';

/** One thing asked. `field` is the place in the body, with dots. */
export type Asked = { readonly field: string } & (
  | { readonly as: 'text' | 'date' | 'yes' | 'figure' }
  | { readonly as: 'amount'; readonly dimension: Dimension; readonly plain?: boolean }
  | { readonly as: 'degrees' }
  | { readonly as: 'reading'; readonly by: 'meter' | 'strip' }
  | { readonly as: 'one' | 'many'; readonly words: readonly string[] }
);

export type Typed = Readonly<Record<string, string>>;

/** What is wrong at a field, and the question that would settle it. */
export interface FieldTrouble {
  readonly sentence: string;
  readonly ask?: AmountAsk;
  readonly units?: readonly string[];
  /** Answers in one touch: their words, and what each puts into the form. */
  readonly offers?: readonly { readonly text: string; readonly put: Typed }[];
}
export type Troubles = ReadonlyMap<string, FieldTrouble>;

export type FormRead<K extends Kind> =
  | { readonly ok: true; readonly body: Body<K> }
  | { readonly ok: false; readonly troubles: Troubles };

const UNITS_TO_OFFER: Readonly<Record<Dimension, readonly string[]>> = {
  mass: ['kg', 'g', 'lb'],
  volume: ['L', 'mL', 'gal'],
  area: ['m²', 'sq ft'],
};
const KEPT = { mass: keptMass, volume: keptVolume, area: keptArea } as const;
/** Milligrams of CaCO3 in a litre for one meq/L. */
const MG_PER_MEQ = 1 / MEQ_PER_UNIT['mg/L CaCO3'];

/** Which unit a report's degrees are in stands beside its field. */
export const unitField = (field: string) => `${field}.unit`;

/** Which mark stands before the decimals, where it was asked at the field, stands beside it too. */
export const styleField = (field: string) => `${field}.style`;

/** What is settled for one field: what was asked there goes before the keyholder's own. */
export function settledFor(field: string, typed: Typed, countries: Countries): Countries {
  const style = NUMBER_STYLES.find((one) => one === typed[styleField(field)]);
  return style === undefined ? countries : { ...countries, style };
}

/**
 * Reads a form over what stands already; what is left as it was stays as it was.
 * @param now local date or date and time; needed where a form asks for a date, which is never after it
 */
export function readForm<K extends Kind>(
  kind: K,
  asked: readonly Asked[],
  typed: Typed,
  {
    base = {},
    countries = {},
    now,
  }: { readonly base?: object; readonly countries?: Countries; readonly now?: string | undefined } = {},
): FormRead<K> {
  const troubles = new Map<string, FieldTrouble>();
  let body: object = base;
  for (const one of asked) {
    const text = (typed[one.field] ?? '').trim();
    if (text === typedOf(one, base)[one.field] && !unitChanged(one, typed, base)) continue;
    const read = readOne(one, text, typed, { countries: settledFor(one.field, typed, countries), now });
    if ('trouble' in read) troubles.set(one.field, read.trouble);
    else body = placed(body, one.field.split('.'), read.value);
  }
  const checked = kinds[kind].newest.safeParse(body);
  if (checked.success && troubles.size === 0) return { ok: true, body: body as Body<K> };
  if (!checked.success && Object.keys(body).length === 0 && troubles.size === 0) {
    return {
      ok: false,
      troubles: new Map(asked.slice(0, 1).map(({ field }) => [field, { sentence: words.nothingTold }])),
    };
  }
  if (!checked.success) {
    for (const { field, value, message, allowed } of problemsOf(checked.error.issues, body)) {
      const at = asked.find((one) => field === one.field || field.startsWith(`${one.field}.`))?.field ?? field;
      if (!troubles.has(at)) troubles.set(at, { sentence: words.problem(shown(value), message, allowed) });
    }
  }
  return { ok: false, troubles };
}

/** The texts of a form as a body has them. */
export function typedForm(asked: readonly Asked[], body: object): Record<string, string> {
  return Object.assign({}, ...asked.map((one) => typedOf(one, body)));
}

function typedOf(one: Asked, body: object): Record<string, string> {
  const value = at(body, one.field.split('.'));
  if (one.as === 'degrees') {
    const [, figure = '', unit = 'mg/L CaCO3'] = /^(\S+) (.+)$/.exec(stringAt(value, 'typed')) ?? [];
    return { [one.field]: figure, [unitField(one.field)]: unit };
  }
  if (value === undefined) return { [one.field]: '' };
  if (one.as === 'amount' && one.plain !== true) return { [one.field]: stringAt(value, 'typed') };
  if (one.as === 'amount')
    return {
      [one.field]: `${typeof value === 'number' ? plainFigure(value) : String(value)} ${UNITS_TO_OFFER[one.dimension][0]}`,
    };
  if (one.as === 'yes') return { [one.field]: value === true ? 'yes' : 'no' };
  if (one.as === 'many') return { [one.field]: (value as readonly string[]).join(' ') };
  return { [one.field]: typeof value === 'object' ? stringAt(value, 'typed') : String(value) };
}

function unitChanged(one: Asked, typed: Typed, base: object): boolean {
  const field = unitField(one.field);
  return one.as === 'degrees' && (typed[one.field] ?? '') !== '' && typed[field] !== typedOf(one, base)[field];
}

type Value = { readonly value: unknown } | { readonly trouble: FieldTrouble };

interface Around {
  readonly countries: Countries;
  readonly now: string | undefined;
}

function readOne(one: Asked, text: string, typed: Typed, { countries, now }: Around): Value {
  if (one.as === 'many') return { value: text === '' ? [] : text.split(' ') };
  if (text === '') return { value: undefined };
  switch (one.as) {
    case 'yes':
      return { value: text === 'yes' };
    case 'reading': {
      const read = figureOf(text, countries.style);
      return 'trouble' in read ? read : { value: { typed: text, ph: read.value, by: one.by } };
    }
    case 'figure':
      return figureOf(text, countries.style);
    case 'amount':
      return amountOf(text, one, countries);
    case 'degrees': {
      const unit = (typed[unitField(one.field)] || 'mg/L CaCO3') as AlkalinityUnit;
      const read = figureOf(text, countries.style);
      if ('trouble' in read) return read;
      const meqPerL = alkalinityMeqPerL({ value: read.value, unit });
      const si =
        one.field === 'hardness' ? { hardnessMgPerLCaCo3: meqPerL * MG_PER_MEQ } : { alkalinityMeqPerL: meqPerL };
      return { value: { typed: `${text} ${unit}`, ...si } };
    }
    case 'date': {
      const found = now !== undefined && isDate(text) ? dateTrouble({ on: text, now }) : undefined;
      return found === undefined ? { value: text } : { trouble: { sentence: found.sentence } };
    }
    default:
      return { value: text };
  }
}

function amountOf(text: string, one: Extract<Asked, { as: 'amount' }>, countries: Countries): Value {
  const { dimension } = one;
  const read = parseAmount(text, { dimension, ...countries });
  if (!read.ok) return { trouble: troubleOf(text, read, dimension) };
  return { value: one.plain === true ? read.value : KEPT[dimension](read) };
}

function troubleOf(text: string, read: Extract<ParsedAmount, { ok: false }>, dimension: Dimension): FieldTrouble {
  const said = sayAmountProblem(read);
  const sentence = words.problem(text, said.message, said.allowed);
  if (read.ask) return { sentence, ask: read.ask };
  return read.problem.message === 'unit-missing' ? { sentence, units: UNITS_TO_OFFER[dimension] } : { sentence };
}

/** A bare figure; one that two styles read differently is asked about. @arithmetic */
function figureOf(
  text: string,
  style: NumberStyle | undefined,
): { readonly value: number } | { readonly trouble: FieldTrouble } {
  const plain = plainText(text);
  const read = readFigure(plain.replace(/^-/, ''), style);
  if (!('rest' in read) || read.rest.trim() !== '') return { trouble: { sentence: words.noFigure(text) } };
  if (read.ok) return { value: plain.startsWith('-') ? -read.value : read.value };
  const ask = askStyle(read.readings, '');
  return { trouble: { sentence: words.twoReadings(text), ask } };
}

function at(body: unknown, path: readonly string[]): unknown {
  let here = body;
  for (const key of path) here = typeof here === 'object' && here !== null ? (here as Typed)[key] : undefined;
  return here;
}

function stringAt(value: unknown, key: string): string {
  const found = at(value, [key]);
  return typeof found === 'string' ? found : '';
}

/** A copy with one value put in its place; nothing put in takes the field out, and an object left empty too. */
function placed(body: unknown, [key = '', ...rest]: readonly string[], value: unknown): object {
  const inner = rest.length === 0 ? value : placed(at(body, [key]) ?? {}, rest, value);
  if (Array.isArray(body)) return body.map((item, i) => (String(i) === key ? inner : item));
  const { [key]: _, ...others } = body as Record<string, unknown>;
  const isEmpty =
    typeof inner === 'object' && inner !== null && !Array.isArray(inner) && Object.keys(inner).length === 0;
  return inner === undefined || isEmpty ? others : { ...others, [key]: inner };
}

function shown(value: unknown): string {
  const text = typeof value === 'object' && value !== null ? stringAt(value, 'typed') || JSON.stringify(value) : value;
  return text === undefined ? '' : String(text);
}
