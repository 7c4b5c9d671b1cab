// What stands on the sheet of two cases: the weigh-in's draft as it is, and what is changed in the second case, as typed.
// What is not changed follows the first case.

import { type Draft, type Field, field, type Lid } from '../weigh-in/draft.ts';

export type Chop = 'coarse' | 'chopped' | 'fine';
export type Place = 'open' | 'shed' | 'cupboard';
export type Airing = 'shut' | 'draughty' | 'open';

/** What the second case has of its own. */
export interface Changed {
  readonly warmth?: Field | undefined;
  readonly chop?: Chop | undefined;
  readonly lid?: Lid | undefined;
  readonly water?: Field | undefined;
  readonly product?: string | undefined;
  readonly sugar?: Field | undefined;
  /** Net weights by the key of the lot; an empty one leaves the lot out. */
  readonly lots?: Readonly<Record<string, Field>> | undefined;
}

export interface CasesDraft {
  /** The weigh-in as it was handed over; undefined where none was. */
  readonly base: Draft | undefined;
  readonly warmth: Field;
  readonly warmthTold: boolean;
  readonly chop: Chop;
  readonly changed: Changed;
  readonly place: Place;
  readonly roomM3: Field;
  readonly airing: Airing;
}

/** Counted where nobody told how warm it stands. Our caution, no source; the sheet says so. */
export const UNTOLD_WARMTH = '18 °C';
/** A room to begin with, m³, to be stepped to what it is. */
export const ROOMS: Readonly<Record<Exclude<Place, 'open'>, string>> = { shed: '9 m³', cupboard: '0.5 m³' };

export const NO_CASES: CasesDraft = {
  base: undefined,
  warmth: field(UNTOLD_WARMTH),
  warmthTold: false,
  chop: 'chopped',
  changed: {},
  place: 'open',
  roomM3: field(ROOMS.shed),
  airing: 'draughty',
};

/** Two cases of a weigh-in, nothing changed yet. */
export function casesOf(base: Draft, last: CasesDraft): CasesDraft {
  const { standing } = base;
  return {
    ...last,
    base,
    changed: {},
    ...(standing && { warmth: field(standing.warmth), warmthTold: true, chop: standing.chop }),
  };
}

/** The weigh-in's draft with the changes in it. */
export function withChanges(base: Draft, { lid, water, product, sugar, lots = {} }: Changed): Draft {
  return {
    ...base,
    vessel: { ...base.vessel, lid: lid ?? base.vessel.lid },
    lots: base.lots.flatMap((lot) => {
      const weight = lots[lot.key];
      if (weight === undefined) return [lot];
      // What is typed here is net: the bowl has been taken off already.
      return weight.settled.trim() === '' ? [] : [{ ...lot, weight, bowl: undefined }];
    }),
    water: { ...base.water, volume: water ?? base.water.volume },
    sugar: { product: product ?? base.sugar.product, weight: sugar ?? base.sugar.weight },
  };
}

/** A case as the weigh-in takes it back: its amounts, and where and how it was thought to stand. */
export function takenDraft({ base, warmth, chop, changed }: CasesDraft, which: 'before' | 'after'): Draft | undefined {
  if (base === undefined) return undefined;
  const isAfter = which === 'after';
  return {
    ...(isAfter ? withChanges(base, changed) : base),
    standing: {
      warmth: ((isAfter && changed.warmth) || warmth).settled,
      chop: (isAfter && changed.chop) || chop,
    },
  };
}
