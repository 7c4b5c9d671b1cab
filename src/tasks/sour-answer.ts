// From runs of a batch to the answer of `sour`: learn from the looks, foretell, judge, ask about odd entries. Nothing
// is computed here; the engine's souring room does it, and the sentences come from words.

import { assumedOfWater } from '#engine/scraps/usual.ts';
import { brakeOf } from '#engine/souring/brake.ts';
import { modelEvidence } from '#engine/souring/expected.ts';
import { reasonsBeside } from '#engine/souring/expected-reasons.ts';
import { lidMeaning } from '#engine/souring/gas/lid.ts';
import { judgeBatch } from '#engine/souring/judge.ts';
import { inOrder, type Look } from '#engine/souring/look.ts';
import { effectiveCount, evenly, heard, type Member } from '#engine/souring/model/ensemble.ts';
import { type Forecast, forecast } from '#engine/souring/model/forecast.ts';
import { type Belief, beliefOf, type Learned, learn, UNTAUGHT } from '#engine/souring/model/learn.ts';
import { type Odd, oddLooks, oddWarmth, toJudge, toLearnFrom } from '#engine/souring/odd.ts';
import { beliefsMoved, gasBands, phBand, readingsBeside } from '#engine/souring/read-off.ts';
import { rescues } from '#engine/souring/rescue.ts';
import { meanBetweenC, warmthByDay } from '#engine/souring/warmth-by-day.ts';
import { sayRescue } from '#words/en/rescue.ts';
import { askAbout, restsOnOddEntries } from '#words/en/sour-questions.ts';
import { changeSentences, reasonSentences } from '#words/en/souring.ts';
import { assumedOfPlants, assumedOfVessel } from './fit.ts';
import { cautionsOfSour } from './sour-cautions.ts';
import { type OpenedSour, todayOf } from './sour-open.ts';
import { type DayOfSour, dayRange, type SourResult } from './sour-result.ts';

/** Odd entries whose acidity the word itself rests on. */
const SHAKES_THE_WORD: readonly Odd['code'][] = ['jump-up', 'jump-down', 'ph-outside', 'same-minute'];

/**
 * The answer from runs of a batch and its looks.
 *
 * @param members draws from 0 on, as many as were run; `runSour` gives them
 * @param looks those of the input unless others are tried
 * @param prior what finished batches of the like have taught, if that is to count
 * @param how quick: the draws that are there are only weighed anew, and no rescue is tried; the whole answer follows it
 */
export function answerSour(
  opened: OpenedSour,
  members: readonly Member[],
  looks: readonly Look[] = opened.input.looks,
  prior?: Belief,
  how: { readonly quick?: boolean } = {},
): SourResult {
  const { input, known, recipe } = opened;
  const today = todayOf(input, looks);
  const untilDay = Math.min(today, opened.runDays);
  const { hourlyC, mixture } = known.batch;
  const odds = [...oddWarmth(input.temperatureC), ...oddLooks(looks, today)];
  const taught = toLearnFrom(looks, untilDay);

  const learned = learnFrom(opened, members, { looks: taught, prior, quick: how.quick === true });
  const ensemble = heard(learned.ensemble);
  const expected = forecast(ensemble, known, opened.runDays);
  const warmth = warmthByDay(hourlyC, opened.runDays);
  const soFarC = meanBetweenC(hourlyC, 0, today);
  const allDaysC = meanBetweenC(hourlyC, 0, input.days);
  const evidence = modelEvidence({ known, learned, looks: taught });
  const judged = judgeBatch({ looks: toJudge(looks), temperatureC: soFarC, hourlyC, evidence, today });
  const options =
    how.quick === true ? [] : rescues({ judgement: judged, looks: toJudge(looks), known, ensemble, today: untilDay });
  const gas = gasBands(ensemble, {
    days: input.days,
    liquidL: mixture.liquidL,
    meanC: (day) => warmth[day]?.meanC ?? allDaysC,
  });
  const shaken = odds.some(({ code }) => SHAKES_THE_WORD.includes(code));
  const range = (band: Parameters<typeof dayRange>[0]) => dayRange(band, opened.runDays);

  return {
    days: daysOf(expected, gas, input.days),
    reach: {
      '4.6': range(expected.reach['4.6']),
      '4.2': range(expected.reach['4.2']),
      '4.0': range(expected.reach['4.0']),
    },
    plateauPh: expected.plateauPh,
    readyDay: range(expected.ready),
    heldDay: range(expected.held),
    reachedFraction: {
      '4.6': share(expected.reach['4.6'].reachedFraction),
      '4.2': share(expected.reach['4.2'].reachedFraction),
      '4.0': share(expected.reach['4.0'].reachedFraction),
      ready: share(expected.ready.reachedFraction),
      held: share(expected.held.reachedFraction),
    },
    runDays: opened.runDays,
    state: judged.state,
    held: judged.held,
    ...(judged.heldFromDay !== undefined && { heldFromDay: judged.heldFromDay }),
    ...(judged.nextLookDay !== undefined && { nextLookDay: judged.nextLookDay }),
    reasons: [
      ...judged.reasons.map(({ code, values }) => reasonSentences[code](values)),
      ...(shaken ? [restsOnOddEntries] : []),
    ],
    wouldChange: judged.wouldChange.map(({ code, values }) => changeSentences[code](values)),
    beside: reasonsBeside(evidence, today).map(({ code, values }) => reasonSentences[code](values)),
    rescues: options.map((one) => ({ ...one, text: sayRescue(one).join(' ') })),
    questions: odds.map((odd) => ({ about: odd.about, value: odd.value, text: askAbout(odd) })),
    today,
    looks: inOrder(looks),
    band: phBand(ensemble, input.days),
    temperatureC: warmth.slice(0, Math.ceil(input.days) + 1),
    meanC: { soFar: soFarC, allDays: allDaysC },
    readings: readingsBeside(inOrder(looks), evidence).map((one) => ({
      ...one,
      inBand: one.expectedPh && one.ph >= one.expectedPh.low && one.ph <= one.expectedPh.high,
    })),
    beliefs: beliefsMoved(learned),
    belief: learned.belief,
    draws: learned.ensemble.members.length,
    effective: learned.effectiveDrawsCount,
    brake: brakeOf({ expected, meanC: allDaysC, dryMatterFraction: mixture.dryMatterFraction }),
    lid: opened.lid,
    liquidL: mixture.liquidL,
    assumed: [
      ...(opened.lidAssumed
        ? [{ field: 'lid', material: 'lid', value: lidMeaning(opened.lid).opennessFraction, source: 'our-caution' }]
        : []),
      ...assumedOfWater(input.water),
      ...assumedOfVessel(input.vessel),
      ...assumedOfPlants(recipe),
    ],
    cautions: cautionsOfSour({
      opened,
      expected,
      gas,
      warmth,
      hottestTypedC: hottestTypedC(opened),
      meanC: allDaysC,
      looks: inOrder(looks),
      judged,
      options,
    }),
  };
}

/** With neither looks nor finished batches to learn from, every draw counts the same. */
function learnFrom(
  { known, runDays }: OpenedSour,
  members: readonly Member[],
  {
    looks,
    prior,
    quick,
  }: { readonly looks: readonly Look[]; readonly prior: Belief | undefined; readonly quick: boolean },
): Learned {
  if (looks.length > 0 || prior !== undefined) {
    const mostStagesCount = quick ? 0 : undefined;
    return learn({ known, first: members, looks, days: runDays, prior, mostStagesCount });
  }
  const ensemble = evenly(members);
  return {
    ensemble,
    belief: beliefOf(ensemble),
    effectiveDrawsCount: effectiveCount(ensemble.weights),
    stages: [{ members, from: UNTAUGHT }],
    prior: UNTAUGHT,
  };
}

const share = (fraction: number) => Math.min(1, Math.max(0, fraction));

function daysOf(expected: Forecast, gas: ReturnType<typeof gasBands>, days: number): readonly DayOfSour[] {
  return expected.days.slice(0, Math.floor(days) + 1).map((one, i) => {
    const litres = gas[i]?.gasL ?? { low: Number.NaN, likely: Number.NaN, high: Number.NaN };
    return {
      day: one.day,
      ph: one.ph,
      sugarGPerL: one.sugarGPerL.likely,
      sugarRangeGPerL: one.sugarGPerL,
      lacticGPerL: one.lacticGPerL.likely,
      lacticRangeGPerL: one.lacticGPerL,
      aceticRangeGPerL: one.aceticGPerL,
      ethanolRangeGPerL: one.ethanolGPerL,
      ammoniaNRangeMgPerL: one.ammoniaNMgPerL,
      gasLPerDay: litres.likely,
      gasRangeLPerDay: litres,
    };
  });
}

/** The hottest number that was typed: a °F that was meant as °C still alarms until the question is answered. */
function hottestTypedC({ input }: OpenedSour): number {
  const { temperatureC } = input;
  return typeof temperatureC === 'number' ? temperatureC : Math.max(...temperatureC.map(([, , highC]) => highC));
}
