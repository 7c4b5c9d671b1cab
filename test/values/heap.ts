// What a heap works in, when it is turned, and what the published rules on heat ask of its log.

import { daysOf, type LogEntry } from '#engine/heap/log.ts';
import { type HeapLog, type RuleId, verdictsOf, type Way } from '#engine/heap/sanitation.ts';
import { turningOf } from '#engine/heap/turning.ts';
import { type HeapLookSituation, heapLookRules, heapMixRules } from '#engine/rules/heap.ts';
import { answers, speaks, type Value, valuesOf } from './value.ts';

/** Days in a row at one temperature; turned on the first so many of them. */
const hot = (days: number, coreC: number, turnings = 0): readonly LogEntry[] =>
  Array.from({ length: days }, (_, day) => ({ day, coreC, edgeC: coreC, hotH: 24, turned: day < turnings }));
const meets = (rule: RuleId, way: Way, log: Partial<HeapLog>) =>
  verdictsOf({
    entries: [],
    method: way === 'turned' ? 'turned' : 'closed-vessel',
    startCn: 30,
    curedDays: 30,
    ...log,
  }).find((one) => one.rule === rule && one.way === way)?.met;

interface Published {
  readonly source: string;
  readonly locator: string;
}
const CFR_7: Published = { source: 'cfr-7-205-203', locator: '(c)(2)' };

/** The three builds of one federal rule: heat, days still, days turned, turnings. */
const federal = (rule: 'cfr-7' | 'cfr-21' | 'cfr-40', name: string, published: Published): readonly Value[] => [
  {
    name: `least heat by ${name}`,
    at: `data/heap.csv ${rule}.leastC`,
    stated: '55 °C (131 °F)',
    ...published,
    step: 0.5,
    holds: answers(
      (coreC: number) => meets(rule, 'turned', { entries: hot(15, coreC, 5) }),
      [54.9, false],
      [55, true],
      [55.1, true],
    ),
  },
  {
    name: `days of heat in a closed vessel or aerated pile by ${name}`,
    at: `data/heap.csv ${rule}.stillDays`,
    stated: '3 days',
    ...published,
    holds: answers(
      (days: number) => meets(rule, 'still', { entries: hot(days, 60) }),
      [2, false],
      [3, true],
      [4, true],
    ),
  },
  {
    name: `days of heat of a heap that is turned by ${name}`,
    at: `data/heap.csv ${rule}.turnedDays`,
    stated: '15 days',
    ...published,
    holds: answers(
      (days: number) => meets(rule, 'turned', { entries: hot(days, 60, 5) }),
      [14, false],
      [15, true],
      [16, true],
    ),
  },
  {
    name: `turnings by ${name}`,
    at: `data/heap.csv ${rule}.turningsCount`,
    stated: '5 times',
    ...published,
    holds: answers(
      (turnings: number) => meets(rule, 'turned', { entries: hot(15, 60, turnings) }),
      [4, false],
      [5, true],
      [6, true],
    ),
  },
];

/** Five days at a warmth, with so many hours of heat on the third. */
const warm = ({ days = 5, coreC = 42, hotH = 4 }) =>
  hot(days, coreC).map((one) => ({ ...one, hotH: one.day === 2 ? hotH : 0 }));
const slight = (log: Parameters<typeof warm>[0]) => meets('cfr-40-slight', 'any', { entries: warm(log) });
const SLUDGE: Published = { source: 'cfr-40-503', locator: 'appendix B' };
const BOARD: Published = { source: 'nosb-2006', locator: 'page 6' };

export const sanitationValues: readonly Value[] = [
  ...federal('cfr-7', '7 CFR 205.203', CFR_7),
  {
    name: 'most heat by 7 CFR 205.203',
    at: 'data/heap.csv cfr-7.mostC',
    stated: '77 °C (170 °F)',
    ...CFR_7,
    step: 0.5,
    holds: answers(
      (coreC: number) => meets('cfr-7', 'turned', { entries: hot(15, coreC, 5) }),
      [76.9, true],
      [77, true],
      [77.1, false],
    ),
  },
  {
    name: 'least carbon to nitrogen at the start by 7 CFR 205.203',
    at: 'data/heap.csv cfr-7.leastCn',
    stated: '25 to 1',
    ...CFR_7,
    holds: answers(
      (startCn: number) => meets('cfr-7', 'turned', { startCn, entries: hot(15, 60, 5) }),
      [24.9, false],
      [25, true],
      [25.1, true],
    ),
  },
  {
    name: 'most carbon to nitrogen at the start by 7 CFR 205.203',
    at: 'data/heap.csv cfr-7.mostCn',
    stated: '40 to 1',
    ...CFR_7,
    holds: answers(
      (startCn: number) => meets('cfr-7', 'turned', { startCn, entries: hot(15, 60, 5) }),
      [39.9, true],
      [40, true],
      [40.1, false],
    ),
  },
  ...federal('cfr-21', '21 CFR 112.54', { source: 'cfr-21-112-54', locator: '112.54(b)' }),
  ...federal('cfr-40', '40 CFR 503', SLUDGE),
  {
    name: 'least heat of the weaker class of 40 CFR 503',
    at: 'data/heap.csv cfr-40.slightLeastC',
    stated: '40 °C',
    ...SLUDGE,
    holds: answers((coreC: number) => slight({ coreC }), [39.9, false], [40, true], [40.1, true]),
  },
  {
    name: 'days of the weaker class of 40 CFR 503',
    at: 'data/heap.csv cfr-40.slightDays',
    stated: '5 days',
    ...SLUDGE,
    holds: answers((days: number) => slight({ days }), [4, false], [5, true], [6, true]),
  },
  {
    name: 'hours of heat in the weaker class of 40 CFR 503',
    at: 'data/heap.csv cfr-40.slightPeakH',
    stated: '4 hours',
    ...SLUDGE,
    step: 0.5,
    holds: answers((hotH: number) => slight({ hotH }), [3.9, false], [4, true], [4.1, true]),
  },
  {
    name: 'heat of those hours',
    at: 'data/heap.csv cfr-40.slightPeakC',
    stated: '55 °C',
    ...SLUDGE,
    holds: answers(
      (_: string) =>
        verdictsOf({ entries: [] })
          .find(({ rule }) => rule === 'cfr-40-slight')
          ?.missing.filter(({ what }) => what === 'hours'),
      ['missing', [{ what: 'hours', count: 4, leastC: 55 }]],
    ),
  },
  {
    name: 'least heat by the organic board of 2006',
    at: 'data/heap.csv nosb.leastC',
    stated: '55 °C (131 °F)',
    ...BOARD,
    step: 0.5,
    holds: answers(
      (coreC: number) => meets('nosb', 'any', { entries: hot(3, coreC) }),
      [54.9, false],
      [55, true],
      [55.1, true],
    ),
  },
  {
    name: 'days of heat by the organic board of 2006',
    at: 'data/heap.csv nosb.days',
    stated: '3 days',
    ...BOARD,
    holds: answers(
      (days: number) => meets('nosb', 'any', { entries: hot(days, 60) }),
      [2, false],
      [3, true],
      [4, true],
    ),
  },
];

const HANDBOOK: Published = { source: 'composting-handbook', locator: 'chapter 4 table 4.2' };
const mix = (change: object) => ({
  ingredients: [],
  cn: 30,
  moisturePercent: 55,
  coffeePercent: 0,
  withoutCn: [],
  ...change,
});
const look = (entries: readonly LogEntry[], change: Partial<HeapLookSituation> = {}): HeapLookSituation => ({
  advice: turningOf({ days: daysOf(entries) }),
  smell: undefined,
  logged: true,
  fedDay: undefined,
  manure: undefined,
  volumeM3: undefined,
  ...change,
});
const fromMix = (id: string, of: object, key: string) => {
  return valuesOf(heapMixRules, id)(mix(of))?.[key];
};
const cooled = (coreC: number, day: number) =>
  speaks(
    heapLookRules,
    'heap-cooled',
  )(
    look([
      { day: 0, coreC: 58, turned: true },
      { day, coreC },
    ]),
  );

export const heapValues: readonly Value[] = [
  {
    name: 'moisture above which a heap is too wet',
    at: 'data/heap.csv acceptable.mostMoisturePercent',
    stated: '65 %',
    ...HANDBOOK,
    holds: answers(
      (moisturePercent: number) => speaks(heapMixRules, 'heap-too-wet')(mix({ moisturePercent })),
      [64.9, false],
      [65, false],
      [65.1, true],
    ),
  },
  {
    name: 'moisture below which a heap is too dry',
    at: 'data/heap.csv acceptable.leastMoisturePercent',
    stated: '40 %',
    ...HANDBOOK,
    holds: answers(
      (moisturePercent: number) => speaks(heapMixRules, 'heap-too-dry')(mix({ moisturePercent })),
      [39.9, true],
      [40, false],
      [40.1, false],
    ),
  },
  {
    name: 'moisture at which a heap stops',
    at: 'data/heap.csv stalls.moisturePercent low',
    stated: '30 %',
    source: 'cornell-right-mix',
    locator: 'moisture',
    holds: answers((key: string) => fromMix('heap-too-dry', { moisturePercent: 20 }, key), ['stopsPercent', 30]),
  },
  {
    name: 'carbon to nitrogen below which a heap is too rich',
    at: 'data/heap.csv acceptable.leastCn',
    stated: '20 to 1',
    ...HANDBOOK,
    holds: answers(
      (cn: number) => speaks(heapMixRules, 'heap-too-rich')(mix({ cn })),
      [19.9, true],
      [20, false],
      [20.1, false],
    ),
  },
  {
    name: 'carbon to nitrogen above which a heap is too poor',
    at: 'data/heap.csv acceptable.mostCn',
    stated: '60 to 1',
    ...HANDBOOK,
    holds: answers(
      (cn: number) => speaks(heapMixRules, 'heap-too-poor')(mix({ cn })),
      [59.9, false],
      [60, false],
      [60.1, true],
    ),
  },
  {
    name: 'core above which a heap is too hot',
    at: 'data/heap.csv acceptable.mostC',
    stated: '66 °C',
    ...HANDBOOK,
    holds: answers(
      (coreC: number) => speaks(heapLookRules, 'heap-core-too-hot')(look([{ day: 0, coreC }])),
      [65.9, false],
      [66, false],
      [66.1, true],
    ),
  },
  {
    name: 'core below which a heap has cooled',
    at: 'data/heap.csv acceptable.leastC',
    stated: '43 °C',
    ...HANDBOOK,
    holds: answers((coreC: number) => cooled(coreC, 5), [42.9, true], [43, false], [43.1, false]),
  },
  {
    name: 'days between turnings of a heap that cools',
    at: 'heap/turning.ts TURNING_REST_DAYS',
    stated: '3 days',
    source: 'practice',
    holds: answers((day: number) => cooled(40, day), [2, false], [3, true], [4, true]),
  },
  {
    name: 'coffee grounds in a heap, from which they are spoken of',
    at: 'data/heap.csv coffee-grounds.mostVolumePercent low',
    stated: '10 % of the loose volume',
    source: 'our-caution',
    holds: answers(
      (coffeePercent: number) => speaks(heapMixRules, 'heap-coffee-grounds')(mix({ coffeePercent })),
      [9.9, false],
      [10, false],
      [10.1, true],
    ),
  },
  {
    name: 'coffee grounds in a heap, the most',
    at: 'data/heap.csv coffee-grounds.mostVolumePercent high',
    stated: '15 % of the loose volume',
    source: 'our-caution',
    holds: answers((key: string) => fromMix('heap-coffee-grounds', { coffeePercent: 20 }, key), ['mostPercent', 15]),
  },
  {
    name: 'volume of a heap that heats by itself',
    at: 'data/heap.csv heap.selfHeatsM3',
    stated: '1 m³',
    source: 'practice',
    step: 0.05,
    holds: answers(
      (volumeM3: number) => speaks(heapLookRules, 'heap-too-small-to-heat')(look([], { volumeM3 })),
      [0.99, true],
      [1, false],
      [1.01, false],
    ),
  },
];
