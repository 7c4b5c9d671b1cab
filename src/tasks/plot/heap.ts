// The heaps of a plot, each as its sheet shows it: what is in it, C:N and moisture now, the curve of its temperature
// with the lines of the rules, what each rule on heat says, and the next act. Figures are the engine's.

import { type Cooling, coolingOf } from '#engine/heap/cooling.ts';
import { ACCEPTABLE, PREFERRED } from '#engine/heap/figures.ts';
import { coffeePercentOf, finishedDryMatter } from '#engine/heap/heap.ts';
import { type Weighed, weighed } from '#engine/heap/ingredient.ts';
import { type Left, leftOf } from '#engine/heap/left.ts';
import { daysOf, type LogDay, type LogEntry, sinceFed } from '#engine/heap/log.ts';
import { type Mix, mixOf } from '#engine/heap/mix.ts';
import { type Verdict, verdictsOf } from '#engine/heap/sanitation.ts';
import { type TurningAdvice, turningOf } from '#engine/heap/turning.ts';
import { point, type Range, sum } from '#engine/quantity/range.ts';
import { heapLookRules, heapMixRules } from '#engine/rules/heap.ts';
import { judge } from '#engine/rules/rule.ts';
import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import { heapCautions, sayVerdict } from '#words/en/heap.ts';
import { type NextAct, sayNext } from '#words/en/heap-sheet.ts';
import { type Caution, spoken } from '../caution.ts';
import { onDay } from './dates.ts';
import { type HeapRowView, heapRows } from './heap-rows.ts';

export interface HeapAsk {
  readonly plot: Plot;
  readonly heap: string;
  /** Local date. */
  readonly today: string;
}

/** One row as the sheet shows it. */
export interface HeapRowShown {
  readonly name: string;
  /** Id and group of the materials table, for its texture. */
  readonly material: { readonly id: string; readonly group: string } | undefined;
  readonly typed: readonly string[];
  /** Undefined where it cannot be counted. */
  readonly massKg: Range | undefined;
  readonly volumeL: Range | undefined;
}

/** One point of the curve. */
export interface HeapPoint {
  readonly on: string;
  readonly day: number;
  readonly coreC: number;
}

export interface HeapView {
  readonly heap: string;
  readonly builtOn: string;
  readonly ageDays: number;
  readonly rows: readonly HeapRowShown[];
  readonly notCounted: readonly string[];
  readonly waterL: number;
  readonly massKg: Range | undefined;
  readonly volumeL: Range | undefined;
  readonly cn: Range | undefined;
  readonly moisturePercent: Range | undefined;
  /** At the end, of the rows that count. */
  readonly left: Left | undefined;
  readonly curve: {
    readonly points: readonly HeapPoint[];
    readonly turnedDays: readonly number[];
    readonly fedDays: readonly number[];
    readonly works: { readonly leastC: number; readonly mostC: number };
    readonly preferred: { readonly leastC: number; readonly mostC: number };
    /** The days that count best for each rule. */
    readonly spans: readonly Pick<Verdict, 'rule' | 'way' | 'span' | 'needs'>[];
  };
  readonly verdicts: readonly (Verdict & { readonly text: string })[];
  readonly cooling: Cooling | undefined;
  readonly turning: TurningAdvice;
  readonly next: { readonly act: NextAct; readonly text: string };
  readonly cautions: readonly Caution[];
}

/** Names of all heaps, the one fed or looked at last first. */
export function heapsOf(plot: Plot): readonly string[] {
  const last = new Map<string, number>();
  for (const { body, when } of [...plot.heapFed, ...plot.heapLooked]) {
    last.set(body.heap, Math.max(last.get(body.heap) ?? Number.NEGATIVE_INFINITY, when.wallMinute));
  }
  return [...last.entries()].sort((a, b) => b[1] - a[1]).map(([heap]) => heap);
}

/** A heap as it stands on a day; undefined where nothing went into it yet. */
export function heapView({ plot, heap, today }: HeapAsk): HeapView | undefined {
  const todayDay = momentOf(today).dateDay;
  const of = <A extends ActOf<'heap.fed'> | ActOf<'heap.looked'>>(acts: readonly A[]) =>
    acts.filter(({ body, when }) => body.heap === heap && when.dateDay <= todayDay);
  const feedings = of(plot.heapFed);
  const looks = of(plot.heapLooked);
  const built = feedings[0]?.when.dateDay;
  if (built === undefined) return undefined;
  const rows = heapRows(plot, feedings);
  const counted = rows.flatMap((row) => (row.weighed ? [row.weighed] : []));
  const waterL = feedings.reduce((total, { body }) => total + (body.water?.volumeL ?? 0), 0);
  const mix = counted.length > 0 ? mixOf([...counted, ...(waterL > 0 ? [waterRow(waterL)] : [])]) : undefined;
  const dry = counted.length > 0 ? mixOf(counted) : undefined;
  const entries = entriesOf({ built, feedings, looks });
  const days = daysOf(entries);
  const last = looks.at(-1)?.body;
  const turning = turningOf({ days, feel: last?.moisture, smell: last?.smell });
  const method = days.some(({ turned }) => turned) ? 'turned' : undefined;
  const verdicts = verdictsOf({ entries, method, startCn: mix?.cn?.likely });
  const logged = days.some(({ coreC }) => coreC !== undefined);
  const air = airOf(plot, built, todayDay);
  const volumes = rows.map((row) => row.volumeL);
  const volumeL = volumes.every((one) => one !== undefined) ? sum(volumes) : undefined;
  const next = nextOf({ turning, mix, days, ageDays: todayDay - built });
  return {
    heap,
    builtOn: onDay(built),
    ageDays: todayDay - built,
    rows: rows.map(shown),
    notCounted: rows.filter((row) => row.weighed === undefined).map(({ name }) => name),
    waterL,
    massKg: mix?.massKg,
    volumeL,
    cn: mix?.cn,
    moisturePercent: mix?.moisturePercent,
    left: dry && leftOf(counted, dry, finishedDryMatter()),
    curve: {
      points: days.flatMap(({ day, coreC }) => (coreC === undefined ? [] : [{ on: onDay(built + day), day, coreC }])),
      turnedDays: days.filter(({ turned }) => turned).map(({ day }) => day),
      fedDays: days.filter(({ fed }) => fed).map(({ day }) => day),
      works: { leastC: ACCEPTABLE.temperatureC.least, mostC: ACCEPTABLE.temperatureC.most },
      preferred: { leastC: PREFERRED.temperatureC.least, mostC: PREFERRED.temperatureC.most },
      spans: verdicts.map(({ rule, way, span, needs }) => ({ rule, way, span, needs })),
    },
    verdicts: logged ? verdicts.map((one) => ({ ...one, text: sayVerdict(one) })) : [],
    cooling: air === undefined ? undefined : coolingOf(days, air),
    turning,
    next: { act: next, text: sayNext(next) },
    cautions: cautionsOf({ counted, dry, mix, days, turning, smell: last?.smell, logged, rows, volumeL }),
  };
}

function shown({ name, typed, weighed: row, volumeL }: HeapRowView): HeapRowShown {
  const { id, group } = row?.ingredient ?? {};
  return {
    name,
    typed,
    material: id === undefined || group === undefined ? undefined : { id, group },
    massKg: row?.massKg,
    volumeL,
  };
}

/** Water that was poured on: wet mass without dry matter. */
function waterRow(waterL: number): Weighed {
  const water = {
    id: undefined,
    name: 'water',
    group: undefined,
    into: 'compost-only',
    treated: undefined,
    dryMatter: point(0),
    carbonTaken: false,
  } as const;
  return weighed(water, waterL);
}

function entriesOf(of: {
  readonly built: number;
  readonly feedings: readonly ActOf<'heap.fed'>[];
  readonly looks: readonly ActOf<'heap.looked'>[];
}): readonly LogEntry[] {
  const { built, feedings, looks } = of;
  return [
    ...feedings.map(({ when }) => ({ day: when.dateDay - built, fed: true })),
    ...looks
      .filter(({ when }) => when.dateDay >= built)
      .map(({ when, body }) => ({ day: when.dateDay - built, coreC: body.temperatureC, turned: body.turned })),
  ];
}

/** Mean of the air as it was typed, over the life of the heap. */
function airOf({ weather }: Plot, fromDay: number, toDay: number): number | undefined {
  const means = weather
    .filter(({ body }) => body.what === 'seen')
    .flatMap(({ body }) => body.days)
    .filter(({ on }) => momentOf(on).dateDay >= fromDay && momentOf(on).dateDay <= toDay)
    .flatMap(({ lowC, highC }) => (lowC === undefined || highC === undefined ? [] : [(lowC + highC) / 2]));
  return means.length === 0 ? undefined : means.reduce((total, one) => total + one, 0) / means.length;
}

/** Days without a reading after which a young heap had better be probed. @practice */
const PROBE_AFTER_DAYS = 3;
/** A heap older than this that stays cool is curing. @practice */
const YOUNG_DAYS = 60;

function nextOf(ask: {
  readonly turning: TurningAdvice;
  readonly mix: Mix | undefined;
  readonly days: readonly LogDay[];
  readonly ageDays: number;
}): NextAct {
  const { turning, mix, days, ageDays } = ask;
  const [reason] = turning.reasons;
  if (reason !== undefined) return reason === 'dry' ? 'water' : reason === 'ammonia' ? 'browns' : 'turn';
  if (mix !== undefined && mix.moisturePercent.likely > ACCEPTABLE.moisturePercent.most) return 'browns';
  if (mix?.cn !== undefined && mix.cn.likely < ACCEPTABLE.cn.least) return 'browns';
  if (mix !== undefined && mix.moisturePercent.likely < ACCEPTABLE.moisturePercent.least) return 'water';
  if (mix?.cn !== undefined && mix.cn.likely > ACCEPTABLE.cn.most) return 'greens';
  if (ageDays > YOUNG_DAYS) return 'cure';
  const lastRead = days.findLast(({ coreC }) => coreC !== undefined)?.day;
  return lastRead === undefined || ageDays - lastRead >= PROBE_AFTER_DAYS ? 'probe' : 'leave';
}

function cautionsOf(ask: {
  readonly counted: readonly Weighed[];
  readonly dry: Mix | undefined;
  readonly mix: Mix | undefined;
  readonly days: readonly LogDay[];
  readonly turning: TurningAdvice;
  readonly smell: Parameters<typeof turningOf>[0]['smell'];
  readonly logged: boolean;
  readonly rows: readonly HeapRowView[];
  readonly volumeL: Range | undefined;
}): readonly Caution[] {
  const { counted, dry, mix, days, turning, smell, logged, rows, volumeL } = ask;
  const ingredients = counted.map(({ ingredient }) => ingredient);
  const litres = (row: Weighed) => rows.find((one) => one.weighed === row)?.volumeL?.likely;
  const allKnown = rows.every(({ weighed: row }) => row?.ingredient.id !== undefined);
  return spoken(
    [
      ...(mix === undefined
        ? []
        : judge(heapMixRules, {
            ingredients,
            cn: mix.cn?.likely,
            moisturePercent: mix.moisturePercent.likely,
            coffeePercent: coffeePercentOf(counted, litres),
            withoutCn: dry?.withoutCn ?? [],
          })),
      ...judge(heapLookRules, {
        advice: turning,
        smell,
        logged,
        fedDay: sinceFed(days).fedDay,
        manure:
          ingredients.some(({ group }) => group === 'manure' || group === 'animal') || (allKnown ? false : undefined),
        volumeM3: volumeL && volumeL.likely / 1000,
      }),
    ],
    heapCautions,
  );
}
