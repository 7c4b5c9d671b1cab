// What an entry of the record says, field by field, as it was typed: amounts in the grower's own writing, ids as the
// thing they stand for. The record's sentences, search and corrections are in record.ts.

import type { KeptAmount } from '#engine/quantity/kept.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { material } from '#engine/tables/index.ts';
import { isId } from '#journal/bounds.ts';
import type { Plot } from '#journal/fold.ts';
import { answerNames } from '#words/en/plot.ts';
import { record as words } from '#words/en/record.ts';
import { sayTyped } from '#words/quantity.ts';
import { pegNameOf } from './batch-name.ts';

/** One field of an entry as it was typed; the path has dots and counts lists from 0. */
export interface FieldSaid {
  readonly path: string;
  readonly text: string;
}

/** The figures shown beside an act: what the program said, never a field that anybody typed. */
export const REMARK = 'figuresShown';

/** Every field of a body as typed. */
export function fieldsSaid(body: unknown, plot: Plot): readonly FieldSaid[] {
  const found: FieldSaid[] = [];
  walk(body, '', '');
  return found;

  function walk(value: unknown, path: string, key: string): void {
    if (key === REMARK) return;
    const text = said(value, key, plot);
    if (text !== undefined) found.push({ path, text });
    else if (typeof value === 'object' && value !== null) {
      for (const [inner, one] of Object.entries(value)) {
        walk(one, path === '' ? inner : `${path}.${inner}`, /^\d+$/.test(inner) ? key : inner);
      }
    }
  }
}

/** The top fields of a body as texts, lists on one line each. */
export function valuesSaid(body: unknown, plot: Plot): Readonly<Record<string, string | undefined>> {
  if (typeof body !== 'object' || body === null) return {};
  return Object.fromEntries(Object.entries(body).map(([key, value]) => [key, oneLine(value, key, plot)]));
}

function oneLine(value: unknown, key: string, plot: Plot): string {
  const text = said(value, key, plot);
  if (text !== undefined) return text;
  if (Array.isArray(value)) return value.map((one) => oneLine(one, key, plot)).join(', ');
  if (typeof value !== 'object' || value === null) return '';
  const inner = Object.entries(value).map(([name, one]) => [name, oneLine(one, name, plot)] as const);
  // The amount first, then what it is of.
  const amount = inner
    .filter(([name]) => AMOUNTS.includes(name))
    .map(([, one]) => one)
    .join(' ');
  const of = NAMES.flatMap((name) => inner.filter(([key]) => key === name)).at(0)?.[1] ?? '';
  if (amount !== '' || of !== '') return amount !== '' && of !== '' ? words.of(amount, of) : amount + of;
  return inner
    .map(([, one]) => one)
    .filter(Boolean)
    .join(' ');
}

const AMOUNTS = ['mass', 'volume', 'amount', 'count', 'value', 'unit'];
const NAMES = ['name', 'lot', 'material', 'product', 'bottle', 'batch', 'from', 'what'];

/** One value as a text; undefined for a list or an object of several fields. */
function said(value: unknown, key: string, plot: Plot): string | undefined {
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (typeof value === 'number')
    return key === 'gasRoomFraction' ? String(value) : String(Number(value.toPrecision(6)));
  if (typeof value === 'string') return sayText(value, key, plot);
  if (typeof value !== 'object' || value === null) return '';
  if (Array.isArray(value)) {
    return value.every((one) => typeof one === 'string')
      ? value.map((one) => sayText(one, key, plot)).join(', ')
      : undefined;
  }
  const { typed, by, what, unit, method } = value as Readonly<Record<string, unknown>>;
  if (typeof typed !== 'string') return undefined;
  if (typeof what === 'string' && typeof unit === 'string') {
    return words.soilLine(what, typed, unit, typeof method === 'string' ? method : undefined);
  }
  if (typeof by === 'string') return words.readBy(typed, by);
  return 'readWith' in value ? sayTyped(value as KeptAmount) : typed;
}

function sayText(value: string, key: string, plot: Plot): string {
  if (isId(value)) return nameOf(value, plot);
  if (key === 'material') return material(value)?.name ?? value;
  if (key === 'product' || key === 'sugar') return sugarProduct(value)?.name ?? value;
  return FREE.includes(key) ? value : (answerNames[value] ?? words.answers[value] ?? value);
}

/** Fields that hold what a person wrote, never one of the known answers. */
const FREE = [
  'name',
  'note',
  'why',
  'text',
  'crop',
  'tag',
  'place',
  'label',
  'heap',
  'source',
  'block',
  'poisonLine',
  'timeZone',
];

/** What an id stands for on the plot. */
export function nameOf(id: string, plot: Plot): string {
  const peg = pegNameOf(plot, plot.bottles.get(id)?.batch ?? id);
  if (peg !== undefined) return words.peg(peg);
  const bed = plot.beds.get(id)?.facts;
  if (bed !== undefined) return words.bed(bed.name ?? '', bed.tag);
  const lot = plot.lots.get(id)?.act.body;
  if (lot !== undefined) return lot.name ?? material(lot.material ?? '')?.name ?? words.aLot;
  const thing = plot.vessels.get(id) ?? plot.cans.get(id);
  if (thing !== undefined) return thing.name ?? '';
  const water = plot.waters.find((one) => one.id === id)?.body;
  if (water !== undefined) return water.name ?? answerNames[water.source] ?? water.source;
  const product = plot.products.find((one) => one.id === id)?.body.name;
  const trial = plot.trialsLaid.find((one) => one.id === id)?.body.name;
  return product ?? trial ?? words.notHere;
}
