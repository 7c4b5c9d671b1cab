// The small forms of a peg's sheet: topped up, moved, split, joined, spilled, tipped. What is asked, what stands there
// at first, and how the typed texts become the body of an entry. Vessels, pegs and sugars are chosen by name.

import type { Countries } from '#engine/quantity/ask.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { sugarIds, sugarProduct } from '#engine/scraps/sugar.ts';
import type { Plot } from '#journal/fold.ts';
import { type Asked, type FormRead, readForm, settledFor, type Typed } from './form.ts';
import { type PegAct, type PegView, standingPegs } from './peg.ts';
import { whyNamedKept } from './scraps.ts';

export type FormAct = Exclude<PegAct, 'look' | 'strain' | 'feed'>;
type FormKind = 'peg.toppedUp' | 'peg.moved' | 'peg.split' | 'peg.joined' | 'peg.spilled' | 'peg.tipped';

/** One form, ready to be shown: what is asked, the texts to begin with, and the reading of what was typed. */
export interface PegForm<K extends FormKind = FormKind> {
  readonly act: FormAct;
  readonly kind: K;
  readonly asked: readonly Asked[];
  readonly start: Typed;
  readonly read: (typed: Typed, countries: Countries) => FormRead<K>;
}

const amount = (field: string, dimension: 'mass' | 'volume'): Asked => ({ field, as: 'amount', dimension });
const text = (field: string): Asked => ({ field, as: 'text' });

/** The forms that are open for a peg, in the order of its acts. */
export function pegForms(plot: Plot, view: PegView, now: string): readonly PegForm[] {
  return view.acts.flatMap((act): readonly PegForm[] => {
    switch (act) {
      case 'topUp':
        return [topUp(plot, view.id)];
      case 'move':
        return [move(plot, view)];
      case 'split':
        return [split(plot, view)];
      case 'join':
        return join(plot, view, now);
      case 'spill':
        return [spill(view.id)];
      case 'tip':
        return [tip(view)];
      default:
        return [];
    }
  });
}

/** The next number that no peg of the plot ever carried. */
export function nextPeg(plot: Plot): number {
  return Math.max(0, ...[...plot.batches.values()].map(({ peg }) => peg)) + 1;
}

function topUp(plot: Plot, batch: string): PegForm<'peg.toppedUp'> {
  const products = new Map(sugarIds.map((id) => [sugarProduct(id)?.name ?? id, id]));
  const groups = Object.entries({
    parts: (at: string): readonly Asked[] => [text(`${at}.name`), amount(`${at}.mass`, 'mass')],
    water: (at: string): readonly Asked[] => [amount(`${at}.volume`, 'volume')],
    sugar: (at: string): readonly Asked[] => [
      { field: `${at}.product`, as: 'one', words: [...products.keys()] },
      amount(`${at}.mass`, 'mass'),
    ],
    starter: (at: string): readonly Asked[] => [amount(`${at}.volume`, 'volume')],
  }).map(([name, asks]) => [name, asks(`${name}.0`)] as const);
  const nameField = groups[0]?.[1][0]?.field ?? '';
  return {
    act: 'topUp',
    kind: 'peg.toppedUp',
    asked: groups.flatMap(([, asked]) => asked),
    start: {},
    read(typed, countries) {
      // A group with nothing typed in it is no group; one begun must be whole.
      const begun = groups.filter(([, asked]) => asked.some(({ field }) => (typed[field] ?? '').trim() !== ''));
      const base = { batch, ...Object.fromEntries(begun.map(([name]) => [name, [{}]])) };
      const asked = begun.flatMap(([, list]) => list);
      const kept = whyNamedKept(plot, typed[nameField] ?? '');
      if (kept !== undefined) return { ok: false, troubles: new Map([[nameField, { sentence: kept }]]) };
      return atFields(readForm('peg.toppedUp', asked, byId(typed, 'sugar.0.product', products), { base, countries }));
    },
  };
}

function move(plot: Plot, view: PegView): PegForm<'peg.moved'> {
  const vessels = vesselsByName(plot);
  const asked: readonly Asked[] = [
    { field: 'vessel', as: 'one', words: [...vessels.keys()] },
    { field: 'lid', as: 'one', words: ['loose', 'vent', 'tight', 'none'] },
    text('place'),
    { field: 'temperatureC', as: 'figure' },
  ];
  return {
    act: 'move',
    kind: 'peg.moved',
    asked,
    start: {},
    read: (typed, countries) =>
      readForm('peg.moved', asked, byId(typed, 'vessel', vessels), { base: { batch: view.id }, countries }),
  };
}

function split(plot: Plot, view: PegView): PegForm<'peg.split'> {
  const vessels = vesselsByName(plot);
  const rest: readonly Asked[] = [
    { field: 'peg', as: 'figure' },
    { field: 'vessel', as: 'one', words: [...vessels.keys()] },
    { field: 'lid', as: 'one', words: ['loose', 'vent', 'none'] },
    text('place'),
  ];
  return {
    act: 'split',
    kind: 'peg.split',
    asked: [amount('taken', 'volume'), ...rest],
    start: { peg: String(nextPeg(plot)) },
    read: (typed, countries) =>
      readForm('peg.split', [massOrVolume('taken', typed, countries), ...rest], byId(typed, 'vessel', vessels), {
        base: { batch: view.id },
        countries,
      }),
  };
}

/** Nothing is poured in from a peg that is lost, unknown or in doubt: what it does to the other nobody knows. */
function join(plot: Plot, view: PegView, now: string): readonly PegForm<'peg.joined'>[] {
  const sound = standingPegs(plot, now).filter(
    ({ id, state }) => id !== view.id && (state === 'ready' || state === 'souring' || state === 'slow'),
  );
  if (sound.length === 0) return [];
  const pegs = new Map(sound.map(({ id, peg }) => [String(peg), id]));
  const from: Asked = { field: 'from', as: 'one', words: [...pegs.keys()] };
  return [
    {
      act: 'join',
      kind: 'peg.joined',
      asked: [from, amount('taken', 'volume')],
      start: {},
      read: (typed, countries) =>
        readForm('peg.joined', [from, massOrVolume('taken', typed, countries)], byId(typed, 'from', pegs), {
          base: { batch: view.id },
          countries,
        }),
    },
  ];
}

function spill(batch: string): PegForm<'peg.spilled'> {
  return {
    act: 'spill',
    kind: 'peg.spilled',
    asked: [amount('lost', 'volume'), text('onto')],
    start: {},
    read: (typed, countries) =>
      readForm('peg.spilled', [massOrVolume('lost', typed, countries), text('onto')], typed, {
        base: { batch },
        countries,
      }),
  };
}

function tip(view: PegView): PegForm<'peg.tipped'> {
  // A lost batch goes to the heap or away, never onto soil that may be a bed.
  const places = view.state === 'lost' ? ['heap', 'out'] : ['heap', 'soil', 'out'];
  const to: Asked = { field: 'to', as: 'one', words: places };
  return {
    act: 'tip',
    kind: 'peg.tipped',
    asked: [amount('lost', 'volume'), to, text('why')],
    start: {},
    read: (typed, countries) =>
      readForm('peg.tipped', [massOrVolume('lost', typed, countries), to, text('why')], typed, {
        base: { batch: view.id },
        countries,
      }),
  };
}

/** Troubles inside a list stand at the field of their item: `water[0].volume` at `water.0.volume`. */
function atFields<K extends FormKind>(read: FormRead<K>): FormRead<K> {
  if (read.ok) return read;
  const moved = [...read.troubles].map(([field, trouble]) => [field.replaceAll(/\[(\d+)\]/g, '.$1'), trouble] as const);
  return { ok: false, troubles: new Map(moved) };
}

/** Litres or kilograms, as it was typed; a text that is neither is told as no volume. */
function massOrVolume(field: string, typed: Typed, countries: Countries): Asked {
  const settled = settledFor(field, typed, countries);
  const isMass = parseAmount((typed[field] ?? '').trim(), { dimension: 'mass', ...settled }).ok;
  return amount(field, isMass ? 'mass' : 'volume');
}

function vesselsByName(plot: Plot): ReadonlyMap<string, string> {
  const standing = [...plot.vessels.values()].filter(({ gone }) => gone !== true);
  return new Map(standing.map(({ id, name }) => [name ?? id, id]));
}

/** The typed texts with a name in one field turned into the id it stands for. */
function byId(typed: Typed, field: string, ids: ReadonlyMap<string, string>): Typed {
  const id = ids.get(typed[field] ?? '');
  return id === undefined ? typed : { ...typed, [field]: id };
}
