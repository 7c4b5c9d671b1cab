// What stands on the straining sheet, as typed, and what it reads as: problems at their fields, what is still to tell.

import type { Countries } from '#engine/quantity/ask.ts';
import { keptMass, keptVolume } from '#engine/quantity/kept.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { BottlePlan } from '#tasks/plot/straining.ts';
import { type BottlesTold, bottleNamed, type StrainingTold } from '#tasks/plot/straining-acts.ts';
import { unreadFigure } from '#words/en/fill.ts';
import type { strainSheet } from '#words/en/straining.ts';
import { NO_TEXT, readFigure, readTyped, type TypedReading } from '../parts/typed.ts';
import type { Field } from '../weigh-in/draft.ts';

export interface StrainDraft {
  readonly drained: Field;
  readonly solids: Field;
  readonly rest: Body<'peg.strained'>['rest'] | undefined;
  readonly ph: Field;
  readonly by: 'meter' | 'strip' | undefined;
  readonly ec: Field;
  readonly mesh: Field;
  readonly solidsTo: Body<'peg.strained'>['solidsTo'];
  readonly bottles: boolean;
  readonly kind: 'plastic' | 'other' | undefined;
  readonly kindTyped: Field;
  readonly size: Field;
  readonly filled: Field;
  readonly count: Field;
  readonly cap: Body<'bottle.filled'>['cap'] | undefined;
  readonly place: Field;
  readonly warmth: Field;
  readonly countries: Countries | undefined;
}

export const EMPTY_STRAIN: StrainDraft = {
  drained: NO_TEXT,
  solids: NO_TEXT,
  rest: undefined,
  ph: NO_TEXT,
  by: undefined,
  ec: NO_TEXT,
  mesh: NO_TEXT,
  solidsTo: undefined,
  bottles: true,
  kind: undefined,
  kindTyped: NO_TEXT,
  size: NO_TEXT,
  filled: NO_TEXT,
  count: NO_TEXT,
  cap: undefined,
  place: NO_TEXT,
  warmth: NO_TEXT,
  countries: undefined,
};

export type StrainField = 'drained' | 'solids' | 'ph' | 'ec' | 'mesh' | 'size' | 'filled' | 'count' | 'warmth';

export interface StrainReading {
  readonly fields: Readonly<Record<StrainField, TypedReading>>;
  readonly material: Body<'bottle.filled'>['material'] | 'unclear' | undefined;
  readonly plan: BottlePlan | undefined;
  readonly bottleNeeds: readonly (keyof typeof strainSheet.needs)[];
  readonly unread: boolean;
}

/** Reads the whole sheet. */
export function readStrain(draft: StrainDraft, countries: Countries): StrainReading {
  const figure = (field: Field, least: number, most: number, unit: string) =>
    readFigure(field, { least, most, say: (typed) => unreadFigure(typed, `${least} to ${most}${unit}`) });
  const fields = {
    drained: readTyped(draft.drained, 'volume', countries),
    solids: readTyped(draft.solids, 'mass', countries),
    ph: figure(draft.ph, 2, 12, ''),
    ec: figure(draft.ec, 0, 200, ' dS/m'),
    mesh: figure(draft.mesh, 0.01, 50, ' mm'),
    size: readTyped(draft.size, 'volume', countries),
    filled: readTyped(draft.filled, 'volume', countries),
    count: readTyped(draft.count, 'count', countries),
    warmth: readTyped(draft.warmth, 'temperature', countries),
  };
  const material = draft.kind === 'other' ? bottleNamed(draft.kindTyped.settled) : draft.kind;
  const sizeL = fields.size.value;
  const filledL = fields.filled.value;
  const count = fields.count.value;
  const bottleNeeds = [
    ...(material === undefined || material === 'unclear' ? (['kind'] as const) : []),
    ...(sizeL === undefined ? (['size'] as const) : []),
    ...(filledL === undefined ? (['filled'] as const) : []),
    ...(count === undefined || count > 500 ? (['count'] as const) : []),
    ...(draft.cap === undefined ? (['cap'] as const) : []),
  ];
  const whole =
    material !== undefined &&
    material !== 'unclear' &&
    sizeL !== undefined &&
    filledL !== undefined &&
    count !== undefined &&
    draft.cap !== undefined;
  return {
    fields,
    material,
    plan: whole
      ? {
          sizeL,
          filledL,
          count,
          cap: draft.cap,
          material,
          ...(fields.warmth.value === undefined ? {} : { temperatureC: fields.warmth.value }),
        }
      : undefined,
    bottleNeeds,
    unread: Object.values(fields).some(({ trouble }) => trouble !== undefined),
  };
}

/** What the sheet tells of the straining; undefined while something of it is still to tell. */
export function strainedTold(batch: string, draft: StrainDraft, { fields }: StrainReading): StrainingTold | undefined {
  const { rest, by, solidsTo } = draft;
  const drained = fields.drained.read;
  if (drained === undefined || rest === undefined) return undefined;
  const ph = fields.ph.value;
  return {
    batch,
    drained: keptVolume(drained),
    rest,
    ...(fields.solids.read && { solids: keptMass(fields.solids.read) }),
    ...(ph === undefined || by === undefined ? {} : { acidity: { typed: draft.ph.settled.trim(), ph, by } }),
    ...(fields.ec.value === undefined ? {} : { ecDsPerM: fields.ec.value }),
    ...(fields.mesh.value === undefined ? {} : { meshMm: fields.mesh.value }),
    ...(solidsTo === undefined ? {} : { solidsTo }),
  };
}

/** What it tells of the bottles. */
export function bottlesTold(
  batch: string,
  draft: StrainDraft,
  { fields, plan }: StrainReading,
): BottlesTold | undefined {
  const { filled, size } = fields;
  if (plan === undefined || filled.read === undefined || size.read === undefined) return undefined;
  return {
    batch,
    plan,
    filled: keptVolume(filled.read),
    size: keptVolume(size.read),
    place: draft.place.text.trim(),
  };
}
