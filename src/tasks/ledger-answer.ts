// The answer of `ledger` out of beds with their supplies: the same for a question typed in and for the plot's own record.
// Sums are the engine's; rules speak, words tell.

import { type NamedCrop, readCrops } from '#engine/ground/crop-names.ts';
import { type Crop, cropOf } from '#engine/ground/crops.ts';
import {
  type BedLedger,
  bedLedger,
  type Period,
  type PlotLedger,
  plotLedger,
  type Warmth,
} from '#engine/ground/ledger.ts';
import type { Nutrient } from '#engine/ground/need.ts';
import {
  readMethod,
  readSoilTest,
  readSoilUnit,
  type SoilReadAs,
  type TestedElement,
} from '#engine/ground/soil-test.ts';
import type { Grams, Supply } from '#engine/ground/supply.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import { groundAnswerRules, groundRules, soilTestRules } from '#engine/rules/ground.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { groundCautions } from '#words/en/ledger.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import type { CoverResult } from './ledger-cover.ts';
import { onDay } from './plot/dates.ts';

/** One line of a soil report as typed. */
export interface SoilLine {
  readonly value: number;
  readonly unit: string;
  readonly method?: string | undefined;
}

/** A bed ready to be summed. */
export interface AskedBed {
  readonly name: string;
  readonly areaM2: number;
  readonly crop?: string | undefined;
  readonly yieldGoalKgPerM2?: number | undefined;
  /** Goals of single crops by their ids; these come first. */
  readonly yieldGoalsKgPerM2?: Readonly<Record<string, number>> | undefined;
  readonly plantedDay?: number | undefined;
  readonly soilPh?: number | undefined;
  readonly organicMatterPercent?: number | undefined;
  readonly nitrateNGPerM2?: number | undefined;
  readonly residueNGPerM2?: Range | undefined;
  readonly yearBeforeNGPerM2?: Range | undefined;
  readonly p?: SoilLine | undefined;
  readonly k?: SoilLine | undefined;
  readonly supplies: readonly Supply[];
  /** The season of this bed alone; that of the question without it. */
  readonly period?: Period | undefined;
}

export interface AskedLedger {
  readonly beds: readonly AskedBed[];
  readonly period: Period;
  readonly warmth: Warmth;
  readonly warmthTold: boolean;
  /** Soil taken for the days of which nothing was told. */
  readonly usualC: Range;
  /** Crops of the grower's own, by every form of their names. */
  readonly own: ReadonlyMap<string, Crop>;
  readonly unread: readonly string[];
}

type Elements = Readonly<Record<Nutrient, Range | null>>;

/** A share of a need; where the low end of the need is nothing there is no upper end, and high is null. */
export interface SharePercent {
  readonly low: number;
  readonly likely: number;
  readonly high: number | null;
}
type Shares = Readonly<Record<Nutrient, SharePercent | null>>;

/** One bed of the answer; null stands for "not known". */
export interface LedgerBedResult {
  readonly name: string;
  readonly areaM2: number;
  readonly crops: readonly string[];
  /** What the crops take up (N) or carry away (P, K), before the soil's share. */
  readonly cropNeedG: Elements;
  readonly needG: Elements;
  readonly givenG: Elements;
  /** The part of it that was given before the first day and had not come free by then. */
  readonly carriedG: Elements;
  readonly missingG: Elements;
  readonly excessG: Elements;
  readonly liquidG: Elements;
  readonly liquidSharePercent: Shares;
  /** No share of the liquid passes this. */
  readonly liquidCeilingPercent: Readonly<Record<Nutrient, number | null>>;
  readonly byKind: readonly { readonly kind: string; readonly givenG: Elements }[];
  /** Calcium and magnesium where they are known, and dry plant matter. */
  readonly alsoG: { readonly ca: Range | null; readonly mg: Range | null };
  readonly dryMatterKg: Range;
  readonly credits: readonly { readonly kind: string; readonly nG: Range }[];
  readonly soil: { readonly p: string | null; readonly k: string | null };
  readonly weeks: readonly { readonly from: string; readonly needNG: Range | null; readonly givenNG: Range }[];
}

/** The contract's answer; the cover where sources were told. */
export interface LedgerResult {
  readonly beds: readonly LedgerBedResult[];
  readonly plot: {
    readonly needG: Elements;
    readonly givenG: Elements;
    readonly missingG: Elements;
    readonly excessG: Elements;
    readonly liquidG: Elements;
    readonly liquidSharePercent: Shares;
    /** Beds whose need of an element is not known: the sums of need are of the others. */
    readonly without: Readonly<Record<Nutrient, readonly string[]>>;
  };
  readonly cover?: CoverResult;
  readonly cautions: readonly Caution[];
}

/** What the workings are made from. */
export interface LedgerTrace {
  readonly beds: readonly Pick<Summed, 'ledger' | 'crops' | 'asked' | 'read'>[];
  readonly plot: PlotLedger;
}

interface Summed {
  readonly asked: AskedBed;
  readonly ledger: BedLedger;
  readonly crops: readonly Crop[];
  readonly unknownCrops: readonly string[];
  readonly read: Readonly<Record<TestedElement, SoilReadAs | undefined>>;
}

/** The sums of all beds. */
export function sumUp(asked: AskedLedger): { readonly beds: readonly Summed[]; readonly plot: PlotLedger } {
  const beds = asked.beds.map((bed) => summed(bed, asked));
  return { beds, plot: plotLedger(beds.map(({ ledger }) => ledger)) };
}

function summed(bed: AskedBed, { own, period, warmth }: AskedLedger): Summed {
  const named = readCrops(bed.crop ?? '').map((one) => ({ typed: one.typed, crop: cropNamed(one, own) }));
  const crops = named.flatMap(({ crop }) => (crop === undefined ? [] : [crop]));
  const unknownCrops = named.flatMap(({ typed, crop }) => (crop === undefined ? [typed] : []));
  const read = { p: soilRead('p', bed), k: soilRead('k', bed) };
  const classOf = (one: SoilReadAs | undefined) => (one?.kind === 'class' ? one.class : undefined);
  const ledger = bedLedger(
    {
      name: bed.name,
      areaM2: bed.areaM2,
      // A bed with one unknown crop has no known need: half a need would make the liquid's share look larger.
      crops: unknownCrops.length > 0 ? [] : crops,
      yieldGoalKgPerM2: bed.yieldGoalKgPerM2,
      yieldGoalsKgPerM2: bed.yieldGoalsKgPerM2,
      soil: {
        organicMatterPercent: bed.organicMatterPercent,
        nitrateNGPerM2: bed.nitrateNGPerM2,
        residueNGPerM2: bed.residueNGPerM2,
        yearBeforeNGPerM2: bed.yearBeforeNGPerM2,
        p: classOf(read.p),
        k: classOf(read.k),
      },
      supplies: bed.supplies,
      plantedDay: bed.plantedDay,
    },
    bed.period ?? period,
    warmth,
  );
  return { asked: bed, ledger, crops, unknownCrops, read };
}

/** The grower's own figures come before those of the table. */
export function cropNamed({ names, id }: NamedCrop, own: AskedLedger['own']): Crop | undefined {
  const key = names.find((name) => own.has(name));
  return (key === undefined ? undefined : own.get(key)) ?? (id === undefined ? undefined : cropOf(id));
}

function soilRead(element: TestedElement, bed: AskedBed): SoilReadAs | undefined {
  const line = bed[element];
  if (line === undefined) return undefined;
  const unit = readSoilUnit(line.unit);
  const method = line.method === undefined ? undefined : readMethod(line.method);
  if (method !== undefined && unit === undefined) return { kind: 'question', why: 'unit-not-for-method' };
  return readSoilTest({ element, value: line.value, unit: unit ?? 'ppm', method, soilPh: bed.soilPh });
}

/** The answer with all its cautions. */
export function ledgerResult(asked: AskedLedger): { readonly value: LedgerResult; readonly trace: LedgerTrace } {
  const { beds, plot } = sumUp(asked);
  return {
    trace: { beds, plot },
    value: {
      beds: beds.map(bedResult),
      plot: {
        needG: elements(plot.needG),
        givenG: elements(plot.givenG, point(0)),
        missingG: elements(plot.missingG),
        excessG: elements(plot.excessG),
        liquidG: elements(plot.liquidG, point(0)),
        liquidSharePercent: shares(plot.liquidSharePercent),
        without: plot.without,
      },
      cautions: [...spoken(findingsOf(beds, asked), groundCautions), ...unreadCaution(asked.unread)],
    },
  };
}

function bedResult({ asked, ledger, crops, unknownCrops, read }: Summed): LedgerBedResult {
  const unknown = (element: Nutrient) => ledger.unknownIn.some((one) => one.element === element);
  const given = (grams: Grams): Elements => {
    const each = (element: Nutrient) => grams[element] ?? (unknown(element) ? null : point(0));
    return { n: each('n'), p: each('p'), k: each('k') };
  };
  const soilClass = (one: SoilReadAs | undefined) => (one?.kind === 'class' ? one.class : null);
  const { ceilingSharePercent: ceiling } = ledger;
  return {
    name: asked.name,
    areaM2: asked.areaM2,
    crops: [...crops.map(({ name }) => name), ...unknownCrops],
    cropNeedG: elements(ledger.need.cropG),
    needG: elements(ledger.need.needG),
    givenG: given(ledger.givenG),
    carriedG: elements(ledger.carriedG, point(0)),
    missingG: elements(ledger.missingG),
    excessG: elements(ledger.excessG),
    liquidG: given(ledger.liquidG),
    liquidSharePercent: shares(ledger.liquidSharePercent),
    liquidCeilingPercent: { n: finite(ceiling.n), p: finite(ceiling.p), k: finite(ceiling.k) },
    byKind: ledger.byKind.map(({ kind, givenG }) => ({ kind, givenG: elements(givenG) })),
    alsoG: { ca: ledger.givenG.ca ?? null, mg: ledger.givenG.mg ?? null },
    dryMatterKg: ledger.dryKg,
    credits: ledger.need.credits,
    soil: { p: soilClass(read.p), k: soilClass(read.k) },
    weeks: ledger.weeks.map(({ fromDay, needNG, givenNG }) => ({
      from: onDay(fromDay),
      needNG: needNG ?? null,
      givenNG,
    })),
  };
}

function elements(grams: Grams | Readonly<Partial<Record<Nutrient, Range>>>, otherwise: Range | null = null): Elements {
  return { n: grams.n ?? otherwise, p: grams.p ?? otherwise, k: grams.k ?? otherwise };
}

function shares(percent: Readonly<Partial<Record<Nutrient, Range>>>): Shares {
  const one = (share: Range | undefined) => share && { ...share, high: finite(share.high) };
  return { n: one(percent.n) ?? null, p: one(percent.p) ?? null, k: one(percent.k) ?? null };
}

function finite(value: number | undefined): number | null {
  return value !== undefined && Number.isFinite(value) ? value : null;
}

function findingsOf(beds: readonly Summed[], asked: AskedLedger): readonly Finding[] {
  const classOf = (one: SoilReadAs | undefined) => (one?.kind === 'class' ? one.class : undefined);
  return [
    ...beds.flatMap(({ asked: bed, read }) =>
      (['p', 'k'] as const).flatMap((element) => {
        const [line, found] = [bed[element], read[element]];
        if (line === undefined || found === undefined) return [];
        return judge(soilTestRules, {
          bed: bed.name,
          element,
          method: line.method === undefined ? undefined : readMethod(line.method),
          soilPh: bed.soilPh,
          typed: [`${line.value} ${line.unit}`, ...(line.method === undefined ? [] : [line.method])].join(', '),
          ...(found.kind === 'question'
            ? { question: found.why, others: [] }
            : { class: found.class, others: found.others.map((other) => other.class) }),
        });
      }),
    ),
    ...beds.flatMap(({ asked: bed, ledger, unknownCrops, read }) =>
      judge(groundRules, {
        ledger,
        unknownCrops,
        cropTold: bed.crop !== undefined,
        p: classOf(read.p),
        k: classOf(read.k),
        releaseUntold: ofSeason(bed, asked)
          .filter(({ pace }) => pace === 'untold')
          .map(({ what }) => what),
        coffee: ofSeason(bed, asked).some(({ what }) => /coffee/.test(what)),
      }),
    ),
    ...judge(groundAnswerRules, {
      untestedBeds: beds
        .filter(({ read }) => classOf(read.p) === undefined && classOf(read.k) === undefined)
        .map(({ asked: { name } }) => name),
      withoutGoal: beds
        .filter(({ asked: bed, crops }) => crops.some(({ id }) => goalOf(bed, id) === undefined))
        .map(({ asked: { name } }) => name),
      warmthTold: asked.warmthTold,
      usualC: asked.usualC,
      rots: beds.some(({ asked: { supplies } }) => supplies.some(({ pace }) => pace !== 'at-once')),
    }),
  ];
}

/** What was given from the first day of the bed's season on. */
function ofSeason(bed: AskedBed, { period }: AskedLedger): readonly Supply[] {
  return bed.supplies.filter(({ day }) => day >= (bed.period ?? period).fromDay);
}

function goalOf(bed: AskedBed, crop: string): number | undefined {
  return bed.yieldGoalsKgPerM2?.[crop] ?? bed.yieldGoalKgPerM2;
}
