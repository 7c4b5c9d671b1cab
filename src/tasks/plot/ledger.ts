// The ledger of a plot out of its record: every bed or row of pots that has an area, each over its own season, its crops as
// told, its soil tests, pours by the balance of the batch they came from, dressings and products. The answer is that of the
// word `ledger`; which days a season has is plot/ground/season.ts.

import { yearBeforeNGPerM2 } from '#engine/ground/credits.ts';
import { readCrops } from '#engine/ground/crop-names.ts';
import type { Period } from '#engine/ground/ledger.ts';
import { nitrateNGPerM2, readNitrateUnit } from '#engine/ground/soil-test.ts';
import { type LiquidGrams, pourSupply, type Supply } from '#engine/ground/supply.ts';
import { workLedger } from '#engine/working/ledger.ts';
import type { Working } from '#engine/working/working.ts';
import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { strainedFrom } from '#plot/batch/strained.ts';
import { type BedSeason, seasonOf } from '#plot/ground/season.ts';
import { areaOf } from '#plot/place/bed-area.ts';
import { hemisphereOf } from '#plot/place/hemisphere.ts';
import { meanUsualC, usualWarmthOf, warmDaysOf, warmthOf } from '#plot/place/warmth.ts';
import { type AskedBed, type AskedLedger, type LedgerResult, ledgerResult } from '../ledger-answer.ts';
import { liquidOf } from '../ledger-supply.ts';
import { cropBefore, cropsYearBefore, residuesOf, yearsApartOn } from '../residues.ts';
import { pegNameOf } from './batch-name.ts';
import { compostsOf, dressingsOn } from './ledger-dressings.ts';
import { goalsOf, ownCropsOf } from './own-crops.ts';

/** What the ledger of a plot is asked for: local dates, both counted. */
export interface PlotLedgerAsk {
  readonly plot: Plot;
  /** The same first day for all beds; each bed's own season without it. */
  readonly from?: string | undefined;
  readonly to: string;
  /** One bed alone; all without it. */
  readonly bed?: string | undefined;
}

/** The answer, which bed of the record each row of it is, and the beds left out because nobody told their size. */
export interface PlotLedgerAnswer {
  readonly value: LedgerResult;
  readonly ids: readonly string[];
  /** What each row is counted from. */
  readonly seasons: readonly Pick<BedSeason, 'fromDay' | 'start'>[];
  readonly unsized: readonly string[];
}

/** What the ground of the plot got between two dates. */
export function plotLedger(ask: PlotLedgerAsk): PlotLedgerAnswer {
  const beds = countedBeds(ask);
  return {
    value: ledgerResult(askedOf(ask)).value,
    ids: beds.map(({ id }) => id),
    seasons: beds.map((bed) => periodOf(ask, bed)),
    unsized: [...ask.plot.beds.values()]
      .filter(({ facts }) => facts.gone !== true && areaOf(facts) === undefined)
      .map(nameOf),
  };
}

/** The workings of the answer. */
export function explainPlotLedger(ask: PlotLedgerAsk): readonly Working[] {
  return workLedger(ledgerResult(askedOf(ask)).trace);
}

/** Beds that have an area, in walking order. */
function countedBeds({ plot, bed: only }: PlotLedgerAsk): readonly Bed[] {
  return [...plot.beds.values()]
    .filter(({ id, facts }) => areaOf(facts) !== undefined && (only === undefined || id === only))
    .sort((a, b) => (a.facts.walkingOrder ?? 1000) - (b.facts.walkingOrder ?? 1000));
}

function nameOf({ facts }: Bed): string {
  return facts.name ?? facts.tag ?? facts.id;
}

/** The days of a bed and what stands on it: as asked, else its own season. */
function periodOf({ plot, from, to }: PlotLedgerAsk, bed: Bed): BedSeason & Period {
  const todayDay = momentOf(to).dateDay;
  const toDay = todayDay + 1;
  if (from === undefined) {
    return { ...seasonOf({ bed, hemisphere: hemisphereOf(plot.facts), todayDay }), toDay };
  }
  const fromDay = momentOf(from).dateDay;
  const planted = bed.plantings.findLast(
    ({ body, when }) => body.act !== 'cleared' && when.dateDay >= fromDay && when.dateDay < toDay,
  );
  return { fromDay, toDay, start: 'asked', planted };
}

/** What was given longer ago counts for nothing: all of it came free. @practice our own, no source */
const LONGEST_RELEASE_DAYS = 3 * 365;

function askedOf(ask: PlotLedgerAsk): AskedLedger {
  const { plot, to } = ask;
  const toDay = momentOf(to).dateDay + 1;
  const liquids = lazily(plot, (batch) => liquidOf(strainedFrom(plot, batch)));
  const composts = compostsOf(plot);
  const beds = countedBeds(ask).map((bed) => ({ bed, season: periodOf(ask, bed) }));
  const fromDay = Math.min(toDay, ...beds.map(({ season }) => season.fromDay));
  const earliestDay = fromDay - LONGEST_RELEASE_DAYS;
  const days = warmDaysOf(plot, { fromDay: earliestDay, toDay });
  const usual = usualWarmthOf(plot.facts);
  const own = ownCropsOf(plot);
  const names = unique(beds.map(({ bed }) => bed));
  const yearsApart = yearsApartOn(hemisphereOf(plot.facts));
  return {
    beds: beds.map(({ bed, season }, i): AskedBed => {
      const { planted, fromDay: firstDay } = season;
      const within = (day: number) => day >= firstDay && day < toDay;
      // Pours come free at once: those of an earlier season are spent.
      const stillCounts = (day: number) => day >= firstDay - LONGEST_RELEASE_DAYS && day < toDay;
      const crop = planted?.body.crop ?? bed.crop;
      return {
        name: names[i] ?? bed.id,
        areaM2: areaOf(bed.facts)?.areaM2 ?? Number.NaN,
        crop,
        yieldGoalsKgPerM2: goalsOf({ bed, crop, own, beforeDay: toDay }),
        plantedDay: planted?.when.dateDay,
        residueNGPerM2: residuesOf(cropBefore(bed, planted, yearsApart)),
        yearBeforeNGPerM2: yearBeforeNGPerM2(readCrops(cropsYearBefore(bed, planted, yearsApart) ?? '')),
        ...soilOf(plot, bed, toDay),
        supplies: [...poursOn(plot, bed, within, liquids), ...dressingsOn(plot, bed, stillCounts, composts)],
        period: season,
      };
    }),
    period: { fromDay, toDay },
    warmth: warmthOf({ fromDay: earliestDay, toDay }, days, usual),
    warmthTold: days.some(({ day }) => day >= fromDay),
    usualC: meanUsualC(usual, { fromDay, toDay }),
    own,
    unread: [],
  };
}

/** Beds that share a name take their tag with it, so that no two rows of the answer look alike. */
function unique(beds: readonly Bed[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const bed of beds) counts.set(nameOf(bed), (counts.get(nameOf(bed)) ?? 0) + 1);
  return beds.map((bed) => {
    const name = nameOf(bed);
    return (counts.get(name) ?? 0) > 1 ? `${name} ${bed.facts.tag ?? bed.id.slice(-4)}` : name;
  });
}

/** The newest line of each kind from soil tests of the bed, else of the whole plot. */
function soilOf(plot: Plot, bed: Bed, beforeDay: number): Partial<AskedBed> {
  const tests = [...plot.soilTests.filter(({ body }) => body.bed === undefined), ...bed.soilTests].filter(
    ({ when }) => when.dateDay < beforeDay,
  );
  const newest = (what: ActOf<'soil.tested'>['body']['figures'][number]['what']) =>
    tests.flatMap(({ body }) => body.figures).findLast((line) => line.what === what);
  const [p, k, acid, humus, nitrate] = [
    newest('p'),
    newest('k'),
    newest('ph'),
    newest('organic-matter'),
    newest('nitrate'),
  ];
  const unit = nitrate === undefined ? undefined : readNitrateUnit(nitrate.unit);
  return {
    ...(p && { p }),
    ...(k && { k }),
    ...(acid && { soilPh: acid.value }),
    ...(humus && humus.unit.trim() === '%' && { organicMatterPercent: humus.value }),
    ...(nitrate &&
      unit && { nitrateNGPerM2: nitrateNGPerM2({ value: nitrate.value, unit, depthCm: nitrate.depthCm }) }),
  };
}

/** Asks for each batch once, when a pour of it turns up. */
function lazily<T>(plot: Plot, make: (batch: Batch) => T): (id: string) => T | undefined {
  const made = new Map<string, T | undefined>();
  return (id) => {
    if (!made.has(id)) {
      const batch = plot.batches.get(id);
      made.set(id, batch === undefined || batch.contents.parts.length === 0 ? undefined : make(batch));
    }
    return made.get(id);
  };
}

const WEEK_DAYS = 7;

/** Litres of one batch on one bed in one week: surely, and perhaps. */
interface WeekOfPours {
  readonly day: number;
  sureL: number;
  maybeL: number;
}

/** Pours of one batch on one bed, a week's as one: what matters is litres. Doubtful twins make the litres a band. */
function poursOn(
  plot: Plot,
  bed: Bed,
  within: (day: number) => boolean,
  liquids: (id: string) => LiquidGrams | undefined,
): readonly Supply[] {
  const byBatch = new Map<string, Map<number, WeekOfPours>>();
  for (const { act, counts } of bed.feeds) {
    const day = act.when.dateDay;
    if (counts === 'no' || !within(day)) continue;
    for (const { bottle, batch, volume } of act.body.from) {
      const id = (bottle === undefined ? undefined : plot.bottles.get(bottle)?.batch) ?? batch ?? '';
      let weeks = byBatch.get(id);
      if (weeks === undefined) {
        weeks = new Map();
        byBatch.set(id, weeks);
      }
      const week = Math.floor(day / WEEK_DAYS);
      const sum = weeks.get(week) ?? { day, sureL: 0, maybeL: 0 };
      if (counts === 'yes') sum.sureL += volume.volumeL;
      else sum.maybeL += volume.volumeL;
      weeks.set(week, sum);
    }
  }
  return [...byBatch].flatMap(([id, weeks]) => {
    const peg = pegNameOf(plot, id);
    const what = peg === undefined ? 'a liquid nobody knows' : `peg ${peg}`;
    const liquid = liquids(id) ?? { gPerL: {}, ceilingGPerL: {} };
    return [...weeks.values()].map(({ day, sureL, maybeL }) => {
      const concentrateL = { low: sureL, likely: sureL + maybeL / 2, high: sureL + maybeL };
      return pourSupply({ what, day, concentrateL, liquid });
    });
  });
}
