// The hour to spray or pour in, and the cress test, in plain English: one text for each rule, the answer of the hour,
// the printed card of the test with its arithmetic, and the strength that follows. Nothing is computed here.

import {
  type Dishes,
  GERMINATION,
  type GerminationFault,
  type GerminationReading,
  type StrengthAdvice,
} from '#engine/can/germination.ts';
import { type PourWindow, SPRAY_LIMITS, type SprayInput, type SprayWindow } from '#engine/can/spray-window.ts';
import type { Values } from '#engine/rules/rule.ts';
import { besideLimit, counted, figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const KM_H = 'km/h';
const hours = (value: number) => withUnit(value, value === 1 ? 'hour' : 'hours', Number.isInteger(value) ? 0 : 1);

const inputs: Readonly<Record<SprayInput | 'soil', string>> = {
  wind: 'the wind',
  temperature: 'the temperature',
  rain: 'the next rain',
  sun: 'sunrise and sunset',
  humidity: 'the humidity',
  soil: 'how the soil feels',
};

const isInput = (word: string): word is keyof typeof inputs => word in inputs;

/** "the wind and the next rain", from what a rule lists. */
function listed(words: Values[string] | undefined): string {
  const names = String(words ?? '')
    .split(' ')
    .filter(isInput)
    .map((word) => inputs[word]);
  const last = names.pop();
  if (last === undefined) return 'the weather';
  return names.length === 0 ? last : `${names.join(', ')} and ${last}`;
}

const windSeen = (v: Values, seen: string) =>
  v.windKmPerH === undefined ? seen : `The wind is ${besideLimit(n(v, 'windKmPerH'), n(v, 'limitKmPerH'), KM_H)}.`;

/** Delta-T where it could be worked out; in fog and in the driest air it cannot. */
const deltaTSaid = (v: Values, limit: string) =>
  Number.isFinite(n(v, 'deltaTC')) ? `, at a delta-T of ${besideLimit(n(v, 'deltaTC'), n(v, limit), '°C', 1)}` : '';

/** One text for each rule about the hour of a spray. */
export const sprayCautions: Readonly<Record<string, (values: Values) => string>> = {
  'spray-windy': (v) =>
    `${windSeen(v, 'Twigs or branches move: that may be too much wind.')} Over ${besideLimit(n(v, 'limitKmPerH'), n(v, 'windKmPerH'), KM_H)} a spray drifts onto other beds and neighbours. Wait for less, or pour on the soil.`,
  'spray-still-air': (v) =>
    `${windSeen(v, 'The air seems still.')} Under ${besideLimit(n(v, 'limitKmPerH'), n(v, 'windKmPerH'), KM_H)} fine drops hang in the air and wander. Wait until leaves rustle.`,
  'spray-inversion': (v) =>
    `Cold air may lie under warmer air now, and fine drops travel far in it. Wait until ${hours(n(v, 'afterSunriseH'))} after sunrise, and stop ${hours(n(v, 'beforeSunsetH'))} before sunset.`,
  'spray-hot': (v) =>
    `Too warm for a spray: ${besideLimit(n(v, 'temperatureC'), n(v, 'belowC'), '°C')}, where leaves are sprayed under ${besideLimit(n(v, 'belowC'), n(v, 'temperatureC'), '°C')}. Wait for a cooler hour.`,
  'spray-frost': (v) =>
    `Not in frost: it is ${withUnit(n(v, 'temperatureC'), '°C')}. Wait until it is warmer and the leaves have thawed.`,
  'spray-past-the-cool-morning': (v) =>
    `No temperature was told, so only the first ${hours(n(v, 'mostAfterSunriseH'))} after sunrise count as cool. Read a thermometer in the shade: a spray needs less than ${withUnit(n(v, 'belowC'), '°C')}.`,
  'spray-rain-soon': (v) =>
    `${n(v, 'untilRainH') > 0 ? `Rain in ${hours(n(v, 'untilRainH'))}` : 'Rain now'} would wash it off. Spray when ${hours(n(v, 'dryH'))} stay dry.`,
  'spray-dries-too-slowly': (v) =>
    `The air is too damp${deltaTSaid(v, 'leastC')}; with delta-T under ${withUnit(n(v, 'leastC'), '°C')} drops hang and drift. Wait until it is drier.`,
  'spray-dries-too-fast': (v) =>
    `The air is too dry${deltaTSaid(v, 'cautionMostC')}; with delta-T over ${withUnit(n(v, 'cautionMostC'), '°C')} drops dry before the leaf takes them up. Wait for a damper hour.`,
  'spray-hour-not-known': (v) =>
    `Not yet: nobody told ${listed(v.notTold)}. Look outside or type the forecast; until then this hour does not count as fit for a spray.`,
  'spray-drying-near-limit': (v) =>
    `Delta-T is about ${withUnit(n(v, 'deltaTC'), '°C', 1)}, near or past the ${figure(n(v, 'leastC'), 0)} to ${withUnit(n(v, 'mostC'), '°C', 0)} that suits a spray, and the sum is good to 1 °C. Spray little, with coarse drops, or wait.`,
  'spray-humidity-not-told': () =>
    'The humidity or the temperature was not told, so how fast drops dry was not looked at. Stop if they dry within a minute or so.',
  'spray-by-rule-of-thumb': (v) =>
    `Judged by eye and by the hour, as no weather was told: ${listed(v.byThumb)}. A forecast or an instrument tells it better.`,
  'spray-forecast-old': (v) =>
    `This forecast is ${Number.isFinite(n(v, 'ageH')) ? `${hours(n(v, 'ageH'))} old` : 'of unknown age'}. Look at the sky and feel the wind before you start.`,
  'spray-window-open': () =>
    'Nothing told speaks against a spray now. Leave wilted plants and open flowers alone, keep away from the neighbour’s side, cover eyes and mouth, and try three plants two days before the rest.',
};

/** One text for each rule about the hour of a pour. */
export const pourHourCautions: Readonly<Record<string, (values: Values) => string>> = {
  'pour-soil-dry': (v) =>
    `${v.cracked ? 'The soil is cracked: the feed would run down the cracks, past the roots.' : 'The soil is dry: feed on dry roots can scorch them.'} Water it plain first, let it soak in, then pour.`,
  'pour-soil-soaked': () => 'The soil is soaked: the feed would run off. Wait until no water stands on it.',
  'pour-heavy-rain-soon': (v) =>
    `Heavy rain is told within ${hours(n(v, 'withinH'))} (${withUnit(n(v, 'rainMm'), 'mm')}): it would wash the feed away. Pour after the rain.`,
  'pour-hot': (v) =>
    `Hot, ${besideLimit(n(v, 'temperatureC'), n(v, 'belowC'), '°C', 0)}: wait for the evening or the early morning, under ${besideLimit(n(v, 'belowC'), n(v, 'temperatureC'), '°C')}.`,
  'pour-windy': (v) =>
    `Windy, ${withUnit(n(v, 'windKmPerH'), KM_H, 0)}: pour low and without the rose, and not over leaves.`,
  'pour-hour-not-known': (v) =>
    `Nobody told ${listed(v.notTold)}. Feel the soil a finger deep, and look whether heavy rain is coming within ${hours(n(v, 'withinH'))}, before you pour.`,
};

const faults: Readonly<Record<GerminationFault, string>> = {
  'counts-do-not-fit': 'The counts do not fit: seeds with a root are no more than seeds laid, and roots are measured.',
  'too-few-seeds': `Fewer than ${GERMINATION.dishCount * GERMINATION.seedsPerDishCount} seeds for the strength or for the water.`,
  'control-did-not-germinate': `In the water alone fewer than ${withUnit(GERMINATION.controlGerminatedPercent, '%')} of the seeds grew: old seeds, or a cold place.`,
  'control-roots-short': `In the water alone the mean root is under ${withUnit(GERMINATION.controlRootMm, 'mm')}: wait a day, or use a warmer place.`,
};

const index = (v: Values) => `The germination index is ${withUnit(n(v, 'indexPercent'), '%', 0)}`;

/** One text for each rule about a cress test that was read. */
/** The same rules where what was tested is compost. */
export const compostTestSays: Readonly<Record<string, (values: Values) => string>> = {
  'germination-not-valid': (v) => germinationCautions['germination-not-valid']?.(v) ?? '',
  'germination-harmful': (v) =>
    `${index(v)}, under ${figure(n(v, 'harmPercent'), 0)}: it harms seedlings. Keep it off seed beds and out of pots, let it cure on, and test again before it goes there.`,
  'germination-doubtful': (v) =>
    `${index(v)}, between ${figure(n(v, 'harmPercent'), 0)} and ${figure(n(v, 'passPercent'), 0)}: for grown plants, not yet for seeds. Let it cure on, and test again.`,
  'germination-no-harm': (v) =>
    `${index(v)}, over ${figure(n(v, 'passPercent'), 0)}: no harm seen in cress. That is a good sign and no proof, and it says nothing of germs or weedkiller.`,
  'germination-not-told-apart': (v) =>
    `${index(v)}. A home test cannot tell apart what differs by ${figure(n(v, 'apartPercent'), 0)} points or less, so it did no better and no worse than water.`,
};

export const germinationCautions: Readonly<Record<string, (values: Values) => string>> = {
  'germination-not-valid': (v) =>
    `This test does not count. ${String(v.faults)
      .split(' ')
      .map((fault) => (fault in faults ? faults[fault as GerminationFault] : 'It cannot be read.'))
      .join(' ')} Sow it again.`,
  'germination-harmful': (v) =>
    `${index(v)}, under ${figure(n(v, 'harmPercent'), 0)}: this strength harms seedlings. Do not use it; dilute it further and test again.`,
  'germination-doubtful': (v) =>
    `${index(v)}, between ${figure(n(v, 'harmPercent'), 0)} and ${figure(n(v, 'passPercent'), 0)}: dilute it further before it goes near seedlings.`,
  'germination-no-harm': (v) =>
    `${index(v)}, over ${figure(n(v, 'passPercent'), 0)}: no harm seen in cress. That is a good sign and no proof, and it says nothing of germs or weedkiller.`,
  'germination-not-told-apart': (v) =>
    `${index(v)}. A home test cannot tell apart what differs by ${figure(n(v, 'apartPercent'), 0)} points or less, so this strength did no better and no worse than water.`,
};

/** The answer for an hour, in one sentence. */
export function sprayAnswer({ answer }: SprayWindow): string {
  if (answer === 'open') return 'The spray window is open.';
  return answer === 'closed' ? 'The spray window is closed.' : 'Whether the spray window is open is not known.';
}

/** The answer for a pour, in one sentence. */
export function pourAnswer({ answer }: PourWindow): string {
  if (answer === 'open') return 'A good hour to pour on the soil.';
  return answer === 'closed' ? 'Not an hour to pour.' : 'Whether this is an hour to pour is not known.';
}

/** When the window opens next, as the grower's day names the hour; or what to look for where no hour is known. */
export function nextSprayHourSays(on: string | undefined): string {
  if (on !== undefined) return `Next hour to spray: ${on}.`;
  return `No hour told is fit. Look again from ${hours(SPRAY_LIMITS.afterSunriseH)} after sunrise, when leaves rustle, it is under ${withUnit(SPRAY_LIMITS.belowC, '°C')} and ${hours(SPRAY_LIMITS.dryH)} stay dry.`;
}

/** The printed card of the cress test: what to do, in order. */
export function germinationCard(): readonly string[] {
  const { dishCount, seedsPerDishCount, waterMl, controlRootMm } = GERMINATION;
  return [
    'Mix the feed at 1 in 10, 1 in 50, 1 in 100 and 1 in 200 with the water that will be used. Keep some water alone.',
    `For each of the five take ${counted(dishCount, 'dish', 'dishes')}. Lay paper in each and wet it with ${withUnit(waterMl, 'mL')}.`,
    `Lay ${seedsPerDishCount} cress seeds in each dish, all from one packet. Cover and mark the dishes.`,
    'Stand them in the dark: 2 to 3 days at 25 °C, 3 to 4 days at 20 °C. All come out on the same day.',
    'Count the seeds with a root, and measure each root in millimetres.',
    `In the water alone at least 8 of 10 must have a root, ${withUnit(controlRootMm, 'mm')} long or more on average; else sow again.`,
    'Index = 100 × (seeds with a root ÷ those in water) × (mean root ÷ that in water).',
  ];
}

/** How the index came about, with the numbers that were counted. */
export function germinationSum(sample: Dishes, control: Dishes, { indexPercent }: GerminationReading): string {
  if (!Number.isFinite(indexPercent)) return 'No index can be worked out from these counts.';
  return `100 × (${sample.germinatedCount}/${sample.sownCount} ÷ ${control.germinatedCount}/${control.sownCount}) × (${withUnit(sample.germinatedCount === 0 ? 0 : sample.meanRootMm, 'mm')} ÷ ${withUnit(control.meanRootMm, 'mm')}) = ${withUnit(indexPercent, '%', 0)}`;
}

/** The strength that follows from all strengths tried. */
export function strengthAdviceSays(advice: StrengthAdvice): string {
  if (advice.found) {
    return `Use 1 in ${figure(advice.n, 0)} or weaker: 1 in ${figure(advice.strongestPassedN, 0)} passed, and a margin of ${GERMINATION.marginFactor} is ours, no source.`;
  }
  return advice.why === 'none-passed'
    ? 'No strength tried passed. Test weaker ones, or put this batch on the heap.'
    : 'No strength follows from a test that does not count. Sow it again.';
}
