// The cautions of a souring batch: what goes in, whether it fits, its lid, its warmth, its gas, a batch gone foul.
// The rules and the sums stand in the engine; here each is handed its situation.

import type { Range } from '#engine/quantity/range.ts';
import { fitRules } from '#engine/rules/fit.ts';
import { foulGasRules, lidGasRules, roomGasRules } from '#engine/rules/gas.ts';
import { beforeTipping, rescueRules } from '#engine/rules/rescue.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { scrapsRules } from '#engine/rules/scraps.ts';
import { lidRules } from '#engine/rules/vessel.ts';
import { warmthRules } from '#engine/rules/warmth.ts';
import { foulGasPpm } from '#engine/souring/gas/hydrogen-sulphide.ts';
import { gasByDay } from '#engine/souring/gas/output.ts';
import { dayPast, JAR_BEARS_ATM, mostPressureAtm, pressureByDay } from '#engine/souring/gas/sealed.ts';
import type { Judgement } from '#engine/souring/judge.ts';
import type { Look } from '#engine/souring/look.ts';
import type { Forecast } from '#engine/souring/model/forecast.ts';
import { mostHexoseGPerL, sugarRoomGPerL } from '#engine/souring/rescue/dose.ts';
import { mayBeFoul, type Rescue } from '#engine/souring/rescue.ts';
import type { DayOfWarmth } from '#engine/souring/warmth-by-day.ts';
import { fitCautions } from '#words/en/fit.ts';
import { gasCautions } from '#words/en/gas.ts';
import { rescueCautions } from '#words/en/rescue.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { sourCautions } from '#words/en/sour.ts';
import { vesselCautions } from '#words/en/vessel.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import type { OpenedSour } from './sour-open.ts';

/** What the rules look at. */
export interface SourSituation {
  readonly opened: OpenedSour;
  readonly expected: Forecast;
  readonly gas: readonly { readonly day: number; readonly gasL: Range }[];
  readonly warmth: readonly DayOfWarmth[];
  /** Warmest that was typed, before a °F was read as such. */
  readonly hottestTypedC: number;
  readonly meanC: number;
  readonly looks: readonly Look[];
  readonly judged: Judgement;
  readonly options: readonly Rescue[];
}

/** Every caution, stops first. */
export function cautionsOfSour(of: SourSituation): readonly Caution[] {
  const { opened } = of;
  const { recipe, filled, input } = opened;
  const scraps = recipe.plants.flatMap((part, i) => judge(scrapsRules, { part, treated: input.plants[i]?.treated }));
  const findings = [
    ...scraps,
    ...judge(fitRules, {
      fit: filled,
      vessel: recipe.vessel,
      sugarProduct: recipe.sugar.product.name,
      addedKg: recipe.sugar.massKg,
    }),
    ...judge(lidRules, {
      lid: opened.lid,
      vesselL: recipe.vessel.volumeL,
      liquidL: filled.fill.volumeL.likely,
      temperatureC: of.meanC,
    }),
    ...judge(lidGasRules, { lid: opened.lid, ...(opened.lid === 'tight' ? behindLid(of) : { mostPressureAtm: 0 }) }),
    ...judge(warmthRules, {
      hottestC: Math.max(of.hottestTypedC, ...of.warmth.map(({ highC }) => highC)),
      meanC: of.meanC,
    }),
    ...inRoom(of),
    ...judge(rescueRules, {
      options: of.options,
      state: of.judged.state,
      mayBeFoul: mayBeFoul(of.judged, of.looks),
      sugarRoomGPerL: sugarRoomGPerL(opened.known.batch),
      mostHexoseGPerL: mostHexoseGPerL(),
    }),
    ...tipping(of, scraps),
  ];
  return [
    ...spoken(findings, scrapsCautions, fitCautions, vesselCautions, gasCautions, rescueCautions, sourCautions),
    ...unreadCaution(opened.unread),
  ];
}

function gasRoomL({ opened }: SourSituation): number {
  return Math.max(0, opened.recipe.vessel.volumeL - opened.filled.fill.volumeL.likely);
}

/** Pressure if nothing could get out, from the high end of the gas foretold. */
function behindLid(of: SourSituation): { readonly mostPressureAtm: number; readonly pastDay?: number } {
  const { days } = of.expected;
  const byDay = pressureByDay({
    curve: { days: days.map(({ day }) => day), co2GPerL: days.map(({ co2GPerL }) => co2GPerL.high) },
    gasRoomL: gasRoomL(of),
    liquidL: of.opened.known.batch.mixture.liquidL,
    closedOnDay: 0,
    temperatureC: days.map(({ day }) => of.warmth[day]?.meanC ?? of.meanC),
  });
  const pastDay = dayPast(byDay, JAR_BEARS_ATM);
  return { mostPressureAtm: mostPressureAtm(byDay), ...(pastDay !== undefined && { pastDay }) };
}

/** Said only where a room was told: the high end of the day of the most gas, and all gas of the days foretold. */
function inRoom(of: SourSituation) {
  const { room } = of.opened.input;
  if (room === undefined) return [];
  const last = of.expected.days.at(-1);
  const [all] = gasByDay({
    curve: { days: [0, 1], co2GPerL: [0, last?.co2GPerL.high ?? Number.NaN] },
    liquidL: of.opened.known.batch.mixture.liquidL,
    temperatureC: of.meanC,
  });
  return judge(roomGasRules, {
    ...room,
    gasLPerDay: Math.max(...of.gas.map(({ gasL }) => gasL.high)),
    totalGasL: all?.gasL ?? Number.NaN,
  });
}

function foul(of: SourSituation) {
  const { mixture } = of.opened.known.batch;
  const ppm = foulGasPpm({
    gasRoomL: gasRoomL(of),
    liquidL: mixture.liquidL,
    temperatureC: of.meanC,
    dryMatterKg: mixture.dryMatterKgPerL * mixture.liquidL,
    ph: of.looks.findLast(({ ph }) => ph !== undefined)?.ph ?? Number.NaN,
  });
  return {
    state: of.judged.state,
    foulSmell: of.looks.some(({ smell }) => smell === 'egg' || smell === 'sewage'),
    lid: of.opened.lid,
    likelyPpm: ppm.likely,
    highPpm: ppm.high,
  };
}

/** Scraps of animal origin, by what the rules said of them. */
const OF_ANIMALS = ['raw-manure', 'meat-fish-dairy', 'cooked-food', 'pet-waste'];

/** A lost batch is told how it is tipped; of any other, only the gas of a foul smell is said. */
function tipping(of: SourSituation, scraps: readonly Finding[]): readonly Finding[] {
  if (of.judged.state !== 'lost') return judge(foulGasRules, foul(of));
  const lots = of.opened.input.plants;
  const animal = scraps.some(({ rule }) => OF_ANIMALS.includes(rule));
  const named = lots.every(({ material }) => material !== undefined);
  const untested = lots.some(({ treated }) => treated === 'unknown' || treated === 'yes');
  // Kitchen leaves need no answer about weedkiller; a lot without a kind may be clippings.
  const toldOf = named && !scraps.some(({ rule }) => rule === 'weedkiller-not-answered');
  return beforeTipping({
    ...foul(of),
    ...((animal || named) && { animalMatter: animal }),
    ...((untested || toldOf) && { untestedClippings: untested }),
    volumeL: of.opened.filled.fill.volumeL.likely,
  });
}
