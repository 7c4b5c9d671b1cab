// Four ways for a kilogram of scraps, by how much of its nitrogen reaches a bed this season: as mulch, fermented,
// through the heap, left on the lawn. Whether a lot may go a way at all is the affair of its slip, not of this file.

import { releasedFraction, type StrainedAt } from '../../bottle/extraction.ts';
import { capAt, difference, floorAt, point, product, type Range, scale, shift, sum } from '../../quantity/range.ts';
import { figures } from '../../tables/index.ts';
import type { Figure } from '../../tables/types.ts';

export type Way = 'mulch' | 'ferment' | 'heap' | 'lawn';

/** A lot of scraps as it lies there. */
export interface ScrapLot {
  readonly name: string;
  readonly massKg: number;
  readonly nGPerKg: number;
  readonly nPercentDm: number;
  /** Ways that are open to it: no seeding weed as mulch, nothing but clippings on a lawn. */
  readonly open: readonly Way[];
  /** How the ferment would go: days, its pH, and the share of the liquid that drains off. */
  readonly ferment: StrainedAt & { readonly drainedFraction: Range };
}

/** Why a way stands where it stands. */
export type WayReason =
  /** Mulch frees its nitrogen on the bed itself. */
  | 'nothing-lost-on-the-way'
  /** Below about 1 % nitrogen in dry matter it ties nitrogen up while it rots. */
  | 'ties-up'
  /** Most stays in the solids, and goes through the heap. */
  | 'most-stays-in-solids'
  /** Nitrogen is lost to the air, and what is left comes over years. */
  | 'lost-and-slow'
  /** It feeds the lawn and no bed. */
  | 'stays-on-the-lawn';

/** One way of a lot. */
export interface WayShare {
  readonly way: Way;
  /** Share of the lot's nitrogen that plants of a bed can take this season; below 0 where it ties some up. */
  readonly seasonFraction: Range;
  /** The same in grams of the whole lot. */
  readonly seasonG: Range;
  /** Nitrogen that stays in the bed's soil for later years. */
  readonly laterG: Range;
  readonly reasons: readonly WayReason[];
}

/** The ways open to a lot, best first for this season's nitrogen. */
export interface WaysOfLot {
  readonly lot: ScrapLot;
  readonly holdsG: number;
  readonly ways: readonly WayShare[];
  /** The best way; none where nothing is open, or where no way brings a bed any nitrogen. */
  readonly best: Way | undefined;
  /** The second way may be as good: their bands overlap. */
  readonly isClose: boolean;
}

const table = figures('ways');

/** A figure of the table of ways. @arithmetic look-up */
export function wayFigure(id: string, quantity: string): Figure {
  const found = table.get(id)?.[quantity];
  if (found === undefined) throw new RangeError(`wayFigure: data/ways.csv has no ${quantity} of ${id}`);
  return found;
}

/**
 * Share of nitrogen that a fresh mulch frees in a season.
 *
 *   PAN % = 15 · (N % − 1) ± 15, from −15 to 75
 *
 * For fresh plants, not for compost.
 * @range nitrogen in dry matter, 0.3-8 %
 * @memory data/ways.csv
 */
export function mulchFraction(nPercentDm: number): Range {
  const of = (quantity: string) => wayFigure('mulch', quantity).likely;
  const percent = of('panPercentPerNPercent') * (nPercentDm - of('panNoneAtNPercent'));
  const spread = of('panSpreadPercent');
  const band = shift({ low: -spread, likely: 0, high: spread }, percent);
  return scale(floorAt(capAt(band, of('panMostPercent')), of('panLeastPercent')), 0.01);
}

/** Share of nitrogen that is still there when compost is finished. @source rynk-1992 from memory */
export function heapKeepsFraction(): Range {
  return difference(point(1), wayFigure('heap', 'nLostFraction'));
}

/** Share of nitrogen that plants can take in the first year, by way of the heap. @memory data/ways.csv */
export function heapFraction(): Range {
  return product([heapKeepsFraction(), wayFigure('compost', 'nFirstYearFraction')]);
}

/**
 * Share of nitrogen that drains off with the liquid of a ferment.
 *
 *   released by the day × drained
 *
 * @memory data/extraction.csv
 */
export function liquidFraction(ferment: ScrapLot['ferment']): Range {
  return product([releasedFraction('n', ferment), ferment.drainedFraction]);
}

/**
 * Every open way of a lot and the best of them for this season's nitrogen. Fermented solids are counted through the heap.
 * @memory data/ways.csv and data/extraction.csv
 */
export function waysOf(lot: ScrapLot): WaysOfLot {
  const holdsG = lot.massKg * lot.nGPerKg;
  const ways = lot.open.map((way) => shareOf(way, lot, holdsG));
  const sorted = ways.toSorted((a, b) => b.seasonFraction.likely - a.seasonFraction.likely);
  const [first, second] = sorted;
  const helps = first !== undefined && first.seasonFraction.likely > 0;
  return {
    lot,
    holdsG,
    ways: sorted,
    best: helps ? first.way : undefined,
    isClose: helps && second !== undefined && second.seasonFraction.high > first.seasonFraction.low,
  };
}

function shareOf(way: Way, lot: ScrapLot, holdsG: number): WayShare {
  const { seasonFraction, laterFraction, reasons } = fractionsOf(way, lot);
  const grams = (lotFraction: Range) => scale(lotFraction, holdsG);
  return { way, seasonFraction, seasonG: grams(seasonFraction), laterG: grams(laterFraction), reasons };
}

function fractionsOf(
  way: Way,
  lot: ScrapLot,
): { readonly seasonFraction: Range; readonly laterFraction: Range; readonly reasons: readonly WayReason[] } {
  const later = (keptFraction: Range, takenFraction: Range) => floorAt(difference(keptFraction, takenFraction), 0);
  switch (way) {
    case 'mulch': {
      const season = mulchFraction(lot.nPercentDm);
      const reasons: readonly WayReason[] = season.likely > 0 ? ['nothing-lost-on-the-way'] : ['ties-up'];
      return { seasonFraction: season, laterFraction: later(point(1), season), reasons };
    }
    case 'ferment': {
      const liquid = liquidFraction(lot.ferment);
      const solids = difference(point(1), liquid);
      const season = sum([liquid, product([solids, heapFraction()])]);
      const left = product([solids, heapKeepsFraction()]);
      return { seasonFraction: season, laterFraction: left, reasons: ['most-stays-in-solids'] };
    }
    case 'heap': {
      const season = heapFraction();
      return { seasonFraction: season, laterFraction: later(heapKeepsFraction(), season), reasons: ['lost-and-slow'] };
    }
    case 'lawn':
      return { seasonFraction: point(0), laterFraction: point(0), reasons: ['stays-on-the-lawn'] };
  }
}
