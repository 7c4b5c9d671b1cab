// From what is typed to the input of the word `fit`: amounts read by the quantity room, every problem at its
// field, all at once. What is empty is missing, never nothing; what cannot be read holds the answer back.

import type { ShapeKind } from '#engine/pail/shape.ts';
import { type AmountRead, lessBowl } from '#engine/quantity/kept.ts';
import { figureAlone } from '#engine/quantity/number.ts';
import { type ParsedAmount, parseAmount, type Wanted } from '#engine/quantity/parse.ts';
import type { Treated } from '#engine/scraps/part.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import type { AlkalinityUnit } from '#engine/scraps/water.ts';
import { kindOf } from '#plot/place/basin.ts';
import type { FieldTrouble } from '#tasks/plot/form.ts';
import type { Problem } from '#tasks/problem.ts';
import { troubles } from '#words/en/weigh-in-labels.ts';
import { sayAmountProblem } from '#words/quantity.ts';
import type { Draft, Lid, Lot } from './draft.ts';

/** Something at a field that cannot be read: its sentence, and the question that would settle it. */
export type Trouble = FieldTrouble;

export type Missing = 'vessel' | 'scraps' | 'water';

/** The input of `fit`, in the contract's names. */
export interface FitQuestion {
  readonly vessel: { readonly volumeL: number; readonly gasRoom: number; readonly lid?: Lid };
  readonly plants: readonly { readonly material: string; readonly massKg: number; readonly treated?: Treated }[];
  readonly water: { readonly volumeL: number; readonly alkalinityMeqPerL?: number };
  readonly sugar?: { readonly product: string; readonly massKg: number };
}

/** The amounts of the sheet as they were read; lots by their keys. */
export interface AmountsRead {
  readonly vessel: AmountRead | undefined;
  readonly lots: ReadonlyMap<number, AmountRead>;
  readonly water: AmountRead | undefined;
  readonly sugar: AmountRead | undefined;
}

export interface Reading {
  readonly troubles: ReadonlyMap<string, Trouble>;
  readonly missing: readonly Missing[];
  /** Amounts as they were read, to be handed over; a lot's is what is in its bowl. */
  readonly amounts: AmountsRead;
  readonly vesselL: number | undefined;
  readonly shape: ShapeKind;
  /** Net weight of each lot by its key, where it can be read. */
  readonly lotKg: ReadonlyMap<number, number>;
  /** Weight of the bowl of a lot that has one. */
  readonly bowlKg: ReadonlyMap<number, number>;
  readonly waterL: number | undefined;
  readonly sugarKg: number | undefined;
  /** Lots in the question, in its order. */
  readonly weighedLots: readonly Lot[];
  readonly question: FitQuestion | undefined;
}

const UNITS_TO_OFFER = { mass: ['kg', 'g', 'lb'], volume: ['L', 'gal'] } as const;

/** Name of a lot's field in the list of troubles. */
export function lotField(key: number, part: 'weight' | 'bowl'): string {
  return `lot.${key}.${part}`;
}

/** Reads the whole sheet. */
export function readDraft(
  draft: Draft,
  alkalinity: (typed: string, unit: AlkalinityUnit) => number | undefined,
): Reading {
  const found = new Map<string, Trouble>();
  const amount = (name: string, text: string, dimension: 'mass' | 'volume', more?: Partial<Wanted>) => {
    if (text.trim() === '') return undefined;
    const { gallon, spoon, style } = draft;
    const read = parseAmount(text, { dimension, gallon, spoon, style, ...more });
    if (read.ok) return read;
    found.set(name, troubleOf(text, read, dimension));
    return undefined;
  };

  const vessel = amount('vessel.volume', draft.vessel.volume.settled, 'volume');
  const vesselL = vessel?.value;
  const gasRoom = share(draft.vessel.gasRoom.settled);
  if (gasRoom === undefined) {
    found.set('vessel.gasRoom', { sentence: troubles.gasRoom(draft.vessel.gasRoom.settled) });
  }
  const water = amount('water.volume', draft.water.volume.settled, 'volume');
  const waterL = water?.value;
  const hardness = draft.water.alkalinity.settled.trim();
  const told = hardness === '' ? undefined : alkalinity(hardness, draft.water.alkalinityUnit);
  const untold = hardness === '';
  if (told === undefined && !untold) found.set('water.alkalinity', { sentence: troubles.alkalinity(hardness) });

  const lots = new Map<number, AmountRead>();
  const bowls = new Map<number, number>();
  for (const lot of draft.lots) {
    const gross = amount(lotField(lot.key, 'weight'), lot.weight.settled, 'mass');
    const bowlKg = lot.bowl && amount(lotField(lot.key, 'bowl'), lot.bowl.settled, 'mass')?.value;
    if (bowlKg !== undefined) bowls.set(lot.key, bowlKg);
    if (gross === undefined) continue;
    if (bowlKg === undefined) {
      if (!found.has(lotField(lot.key, 'bowl'))) lots.set(lot.key, gross);
    } else if (bowlKg < gross.value) lots.set(lot.key, lessBowl(gross, bowlKg));
    else {
      const sentence = troubles.bowl(lot.bowl?.settled ?? '', lot.weight.settled);
      found.set(lotField(lot.key, 'bowl'), { sentence });
    }
  }

  const product = draft.sugar.product;
  const bulkKgPerL = (product && sugarProduct(product)?.bulkKgPerL) || ('ask' as const);
  const sugar = amount('sugar.weight', draft.sugar.weight.settled, 'mass', { bulkKgPerL });
  const sugarKg = sugar?.value;

  const weighedLots = draft.lots.filter((lot) => lots.has(lot.key));
  const missing: Missing[] = [];
  if (draft.vessel.volume.settled.trim() === '') missing.push('vessel');
  if (!draft.lots.some((lot) => lot.weight.settled.trim() !== '')) missing.push('scraps');
  if (draft.water.volume.settled.trim() === '') missing.push('water');

  const stands = missing.length === 0 && found.size === 0 && vesselL !== undefined && waterL !== undefined;
  const { lid } = draft.vessel;
  const question: FitQuestion | undefined =
    stands && gasRoom !== undefined && (untold || told !== undefined)
      ? {
          vessel: { volumeL: vesselL, gasRoom, ...(lid ? { lid } : {}) },
          plants: weighedLots.map((lot) => ({
            material: lot.material,
            massKg: lots.get(lot.key)?.value ?? Number.NaN,
            ...(lot.treated ? { treated: lot.treated } : {}),
          })),
          water: { volumeL: waterL, ...(told === undefined ? {} : { alkalinityMeqPerL: told }) },
          ...(product ? { sugar: { product, massKg: sugarKg ?? 0 } } : {}),
        }
      : undefined;
  return {
    troubles: found,
    missing,
    amounts: { vessel, lots, water, sugar },
    vesselL,
    shape: kindOf(vesselL ?? 0, draft.vessel.shape),
    lotKg: new Map([...lots].map(([key, { value }]) => [key, value])),
    bowlKg: bowls,
    waterL,
    sugarKg,
    weighedLots,
    question,
  };
}

function troubleOf(text: string, read: Extract<ParsedAmount, { ok: false }>, dimension: 'mass' | 'volume'): Trouble {
  const said = sayAmountProblem(read);
  const sentence = troubles.field(text, said.message, said.allowed);
  if (read.ask) return { sentence, ask: read.ask };
  return read.problem.message === 'unit-missing' ? { sentence, units: UNITS_TO_OFFER[dimension] } : { sentence };
}

/** Only per cent is asked, so 25 and 25 % are the same; outside 0 to 90 it is a problem. */
function share(typed: string): number | undefined {
  const percent = figureAlone(typed.replace(/\s*(?:%|per cent|percent)\s*$/, ''), { least: 0, most: 90 });
  return percent === undefined ? undefined : percent / 100;
}

/** Problems that the task itself names, at the fields of this sheet; what has no field stands at the top. */
export function troublesOf(problems: readonly Problem[], lots: readonly Lot[]): ReadonlyMap<string, Trouble> {
  const found = new Map<string, Trouble>();
  for (const problem of problems) {
    const at = /^plants\[(\d+)\]/.exec(problem.field)?.[1];
    const lot = at === undefined ? undefined : lots[Number(at)];
    const field =
      lot !== undefined
        ? lotField(lot.key, 'weight')
        : problem.field.startsWith('vessel.gasRoom')
          ? 'vessel.gasRoom'
          : problem.field.startsWith('vessel')
            ? 'vessel.volume'
            : problem.field.startsWith('water.alkalinity')
              ? 'water.alkalinity'
              : problem.field.startsWith('water')
                ? 'water.volume'
                : problem.field.startsWith('sugar')
                  ? 'sugar.weight'
                  : 'sheet';
    found.set(field, { sentence: troubles.field(String(problem.value), problem.message, problem.allowed) });
  }
  return found;
}
