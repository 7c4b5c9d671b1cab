// What a mix of rows comes to: wet mass, dry matter, carbon, nitrogen, C:N and moisture. Ratios are never averaged:
// carbon and nitrogen are summed by dry mass and divided last. Bands are carried by moving one input at a time.

import { point, type Range, sumTogether } from '../quantity/range.ts';
import { type Ingredient, volumeOfMass, type Weighed } from './ingredient.ts';

/** A row by its likely figures: what one kilogram of it, wet, brings. */
export interface PerKg {
  readonly dryFraction: number;
  readonly carbonFraction: number;
  readonly nitrogenFraction: number;
}

/** A mix with its bands. */
export interface Mix {
  readonly massKg: Range;
  readonly dryKg: Range;
  /** Undefined where no row has a C:N. */
  readonly cn: Range | undefined;
  readonly moisturePercent: Range;
  readonly carbonKg: number;
  readonly nitrogenKg: number;
  /** Loose volume; undefined where the bulk of a row is not known. */
  readonly volumeL: Range | undefined;
  /** Rows whose C:N nobody knows: they count for moisture alone. */
  readonly withoutCn: readonly string[];
}

/** What one kilogram of a row brings, likely. Without a C:N it brings neither carbon nor nitrogen to the sum. @arithmetic */
export function perKg({ dryMatter, cn, cPercentDm }: Ingredient): PerKg {
  return contents(dryMatter.likely, cPercentDm, cn?.likely);
}

function contents(dryFraction: number, cPercentDm: number | undefined, cn: number | undefined): PerKg {
  if (cPercentDm === undefined || cn === undefined) return { dryFraction, carbonFraction: 0, nitrogenFraction: 0 };
  const carbonFraction = (dryFraction * cPercentDm) / 100;
  return { dryFraction, carbonFraction, nitrogenFraction: carbonFraction / cn };
}

interface Row {
  readonly massKg: number;
  readonly contents: PerKg;
}

/**
 * C:N of a mix by dry mass.
 *
 *   R = Σ Q C (100 − M) / Σ Q N (100 − M)
 *
 * @returns NaN where the mix holds no nitrogen that is known
 * @source cornell-right-mix
 */
export function cnOf(rows: readonly Row[]): number {
  let carbonKg = 0;
  let nitrogenKg = 0;
  for (const { massKg, contents: c } of rows) {
    carbonKg += massKg * c.carbonFraction;
    nitrogenKg += massKg * c.nitrogenFraction;
  }
  return nitrogenKg > 0 ? carbonKg / nitrogenKg : Number.NaN;
}

/**
 * Moisture of a mix.
 *
 *   G = Σ Q M / Σ Q
 *
 * @returns percent; NaN for nothing at all
 * @source cornell-right-mix
 */
export function moistureOf(rows: readonly Row[], waterKg = 0): number {
  let massKg = waterKg;
  let dryKg = 0;
  for (const row of rows) {
    massKg += row.massKg;
    dryKg += row.massKg * row.contents.dryFraction;
  }
  return massKg > 0 ? 100 * (1 - dryKg / massKg) : Number.NaN;
}

/** Rows at their likely figures. @arithmetic */
export function likelyRows(rows: readonly Weighed[]): readonly Row[] {
  return rows.map(({ ingredient, massKg }) => ({ massKg: massKg.likely, contents: perKg(ingredient) }));
}

/**
 * A mix with its bands. Each mass, dry matter and C:N is moved to its ends by itself; the changes of the result add in
 * quadrature, each side by itself, and nothing passes the wettest, driest, richest or poorest row.
 * @range first order: rows are taken to err independently of each other
 * @source jcgm-100-2008 5.1.2
 */
export function mixOf(rows: readonly Weighed[]): Mix {
  const likely = likelyRows(rows);
  const cn = cnOf(likely);
  const massKg = sumTogether(rows.map((row) => row.massKg));
  const counted = rows.filter(({ ingredient, massKg: m }) => ingredient.cn !== undefined && m.likely > 0);
  const cnEnds = ends(counted.flatMap(({ ingredient }) => (ingredient.cn ? [ingredient.cn] : [])));
  const wetEnds = ends(
    rows
      .filter((row) => row.massKg.likely > 0)
      .map(({ ingredient: { dryMatter: d } }) => ({ low: 100 * (1 - d.high), likely: 0, high: 100 * (1 - d.low) })),
  );
  const dry = (some: readonly Row[]) => some.reduce((sum, row) => sum + row.massKg * row.contents.dryFraction, 0);
  return {
    massKg,
    dryKg: banded(rows, likely, dry, { low: 0, likely: 0, high: massKg.high }),
    cn: Number.isFinite(cn) ? banded(rows, likely, cnOf, cnEnds) : undefined,
    moisturePercent: banded(rows, likely, (some) => moistureOf(some), wetEnds),
    carbonKg: likely.reduce((sum, row) => sum + row.massKg * row.contents.carbonFraction, 0),
    nitrogenKg: likely.reduce((sum, row) => sum + row.massKg * row.contents.nitrogenFraction, 0),
    volumeL: volumeOf(rows),
    withoutCn: rows.filter(({ ingredient }) => ingredient.cn === undefined).map(({ ingredient }) => ingredient.name),
  };
}

function ends(bands: readonly Range[]): Range {
  return {
    low: Math.min(...bands.map(({ low }) => low)),
    likely: 0,
    high: Math.max(...bands.map(({ high }) => high)),
  };
}

function volumeOf(rows: readonly Weighed[]): Range | undefined {
  const volumes = rows.map(({ ingredient, massKg }) => volumeOfMass(ingredient, massKg));
  return volumes.every((one) => one !== undefined) ? sumTogether(volumes) : undefined;
}

/** The band of a result: every uncertain input moved to its ends by itself. */
function banded(
  rows: readonly Weighed[],
  likely: readonly Row[],
  result: (rows: readonly Row[]) => number,
  band: Range,
): Range {
  const middle = result(likely);
  if (!Number.isFinite(middle)) return point(middle);
  let down = 0;
  let up = 0;
  const moved = (low: number, high: number) => {
    const changes = [low, high].filter(Number.isFinite).map((value) => value - middle);
    down += Math.min(0, ...changes) ** 2;
    up += Math.max(0, ...changes) ** 2;
  };
  rows.forEach(({ ingredient, massKg }, i) => {
    const { dryMatter, cn, cPercentDm } = ingredient;
    const at = likely[i] as Row;
    const put = (row: Row) => result(likely.map((one, j) => (i === j ? row : one)));
    const withDry = (dryFraction: number) => put({ ...at, contents: contents(dryFraction, cPercentDm, cn?.likely) });
    moved(put({ ...at, massKg: massKg.low }), put({ ...at, massKg: massKg.high }));
    moved(withDry(dryMatter.low), withDry(dryMatter.high));
    if (cn === undefined) return;
    const withCn = (value: number) => put({ ...at, contents: contents(dryMatter.likely, cPercentDm, value) });
    moved(withCn(cn.low), withCn(cn.high));
  });
  const low = Math.max(middle - Math.sqrt(down), Math.min(band.low, middle));
  const high = Math.min(middle + Math.sqrt(up), Math.max(band.high, middle));
  return { low, likely: middle, high };
}

/**
 * Water that brings a mix to a moisture.
 *
 *   W = (G ΣQ − ΣQM) / (100 − G)
 *
 * @returns kg, the same as litres; 0 for a mix that is wet enough
 * @source cornell-right-mix
 */
export function waterToAddKg(rows: readonly Row[], moisturePercent: number): number {
  const massKg = rows.reduce((sum, row) => sum + row.massKg, 0);
  const dryKg = rows.reduce((sum, row) => sum + row.massKg * row.contents.dryFraction, 0);
  const held = massKg - dryKg;
  return Math.max(0, ((moisturePercent / 100) * massKg - held) / (1 - moisturePercent / 100));
}

/**
 * Dry matter of one kind that brings a mix down to a moisture.
 *
 *   Q2 = Q1 (G − M1) / (M2 − G)
 *
 * @returns kg; undefined where this kind is itself wetter than the goal, or the mix is dry enough
 * @source cornell-right-mix
 */
export function dryingKg(rows: readonly Row[], moisturePercent: number, kind: PerKg): number | undefined {
  const massKg = rows.reduce((sum, row) => sum + row.massKg, 0);
  const over = moistureOf(rows) - moisturePercent;
  const under = moisturePercent - 100 * (1 - kind.dryFraction);
  return over > 0 && under > 0 ? (massKg * over) / under : undefined;
}
