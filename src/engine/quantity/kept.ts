// An amount as the record keeps it: what was typed beside what it was read as, and all that the reader was given at that
// moment, so that the text can be read again on any device and means the same.

import type { Countries } from './ask.ts';
import { plainFigure } from './number.ts';
import { type ParsedAmount, parseAmount } from './parse.ts';
import type { Range } from './range.ts';
import { READ_ALIKE, type ReadWith } from './read-with.ts';
import { type Dimension, type GallonCountry, type SpoonCountry, UNITS } from './units.ts';

interface Kept {
  readonly typed: string;
  readonly readWith?: ReadWith | undefined;
}
export interface KeptMass extends Kept {
  readonly massKg: number;
  readonly bandKg?: Range | undefined;
}
export interface KeptVolume extends Kept {
  readonly volumeL: number;
}
export interface KeptArea extends Kept {
  readonly areaM2: number;
}
export type KeptAmount = KeptMass | KeptVolume | KeptArea;
export type AmountRead = Extract<ParsedAmount, { readonly ok: true }>;

/** A mass as it is kept. @returns kg @arithmetic none */
export function keptMass({ asTyped, value, band, readWith }: AmountRead): KeptMass {
  return { typed: asTyped.trim(), massKg: value, ...(band !== undefined && { bandKg: band }), readWith };
}

/** A volume as it is kept. @returns L @arithmetic none */
export function keptVolume({ asTyped, value, readWith }: AmountRead): KeptVolume {
  return { typed: asTyped.trim(), volumeL: value, readWith };
}

/** An area as it is kept. @returns m² @arithmetic none */
export function keptArea({ asTyped, value, readWith }: AmountRead): KeptArea {
  return { typed: asTyped.trim(), areaM2: value, readWith };
}

/** Digits of a net mass as a text: it reads as the same mass to less than `ROUNDING`. @arithmetic */
const NET_DIGITS = 7;

/**
 * What is in the bowl: the mass on the scale less that of the bowl, written in the unit of the scale so that the text
 * reads as the same mass. @arithmetic difference
 */
export function lessBowl(onScale: AmountRead, bowlKg: number): AmountRead {
  const { symbol, factor } =
    Object.values(UNITS).find(
      (unit) => unit.dimension === 'mass' && onScale.reading.split(' + ')[0]?.endsWith(` ${unit.symbol}`),
    ) ?? UNITS.kg;
  const value = onScale.value - bowlKg;
  const asTyped = `${plainFigure(Number((value / factor).toPrecision(NET_DIGITS)))} ${symbol}`;
  return { ok: true, value, asTyped, reading: asTyped, readWith: onScale.readWith };
}

/** Rounding that a program may do between reading and keeping. @practice six digits */
const ROUNDING = 1e-6;

/** A kept amount whose text, read again as it was then, gives another figure, or none. */
export interface Differing {
  readonly typed: string;
  readonly dimension: Extract<Dimension, 'mass' | 'volume' | 'area'>;
  /** As it was kept, in kg, L or m². */
  readonly value: number;
  readonly again: { readonly value: number } | undefined;
}

/**
 * Reads the text of a kept amount again with what it was read with; undefined where both agree, and where the amount was
 * never read here or by another edition of the reader.
 * @arithmetic a difference is more than a millionth
 */
export function readAgain(amount: KeptAmount): Differing | undefined {
  const { typed, readWith } = amount;
  if (readWith === undefined || !READ_ALIKE.includes(readWith.reader)) return undefined;
  const [dimension, value] = dimensionOf(amount);
  const { unitShown, reader: _, ...settled } = readWith;
  const read = parseAmount(typed, { dimension, bareUnit: unitShown, ...settled });
  if (read.ok && Math.abs(read.value - value) <= ROUNDING * value) return undefined;
  return { typed, dimension, value, again: read.ok ? read : undefined };
}

/** The amount with the figure that its text gives, read again as it was then. @arithmetic none */
export function asRead<A extends KeptAmount>(amount: A): A {
  const again = readAgain(amount)?.again;
  if (again === undefined) return amount;
  if ('massKg' in amount) {
    const { bandKg: _, ...rest } = amount;
    return { ...rest, massKg: again.value } as unknown as A;
  }
  return 'volumeL' in amount ? { ...amount, volumeL: again.value } : { ...amount, areaM2: again.value };
}

/** Whose gallon or spoon a text means that does not say so itself. @arithmetic none */
export function countryMeant(amount: KeptAmount): GallonCountry | SpoonCountry | undefined {
  const { gallon, spoon, bulkKgPerL, style }: Countries & Pick<ReadWith, 'bulkKgPerL'> = amount.readWith ?? {};
  if (gallon === undefined && spoon === undefined) return undefined;
  const read = parseAmount(amount.typed, { dimension: dimensionOf(amount)[0], style, bulkKgPerL });
  if (read.ok) return undefined;
  return read.ask?.kind === 'gallon' ? gallon : read.ask?.kind === 'spoon' ? spoon : undefined;
}

function dimensionOf(amount: KeptAmount): readonly [Differing['dimension'], number] {
  if ('massKg' in amount) return ['mass', amount.massKg];
  return 'volumeL' in amount ? ['volume', amount.volumeL] : ['area', amount.areaM2];
}
