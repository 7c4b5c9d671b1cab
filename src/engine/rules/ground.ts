// What the sum of a bed says: a crop the table lacks, a soil test that cannot be read, soil that is full, what builds up,
// what ties nitrogen up, what was not known. The sums are ground/; what closes a gap is not judged here.

import { doubles } from '../ground/excess.ts';
import type { BedLedger } from '../ground/ledger.ts';
import type { SoilClass, SoilMethod, SoilQuestion, TestedElement } from '../ground/soil-test.ts';
import type { Range } from '../quantity/range.ts';
import type { Rule } from './rule.ts';

/** One line of a soil report as it was typed and what was made of it. */
export interface SoilSituation {
  readonly bed: string;
  readonly element: TestedElement;
  readonly typed: string;
  readonly question?: SoilQuestion | undefined;
  readonly method?: SoilMethod | undefined;
  readonly soilPh?: number | undefined;
  readonly class?: SoilClass | undefined;
  /** Classes by scales of other places, where they differ. */
  readonly others: readonly SoilClass[];
}

/** A bed with its sum and what was not told. */
export interface GroundSituation {
  readonly ledger: BedLedger;
  /** Crops as typed that no table and no grower knows. */
  readonly unknownCrops: readonly string[];
  readonly cropTold: boolean;
  readonly p?: SoilClass | undefined;
  readonly k?: SoilClass | undefined;
  /** Products given of which nobody told whether they dissolve or rot. */
  readonly releaseUntold: readonly string[];
  /** Coffee grounds among what was given. */
  readonly coffee: boolean;
}

/** How a question about a soil test is put. */
const asks = (why: SoilQuestion) => (situation: SoilSituation) =>
  situation.question === why
    ? {
        bed: situation.bed,
        element: situation.element,
        typed: situation.typed,
        ...(situation.method && { method: situation.method }),
        ...(situation.soilPh !== undefined && { soilPh: situation.soilPh }),
      }
    : (false as const);

export const soilTestRules: readonly Rule<SoilSituation>[] = [
  {
    id: 'soil-method-missing',
    level: 'hold',
    source: 'osu-agbmps-phosphorus',
    looksAt: 'the method of a soil test',
    speaksFor: 'general',
    when: asks('method-missing'),
  },
  {
    id: 'soil-method-not-for-element',
    level: 'hold',
    source: 'memory',
    looksAt: 'whether the method tests that element',
    speaksFor: 'general',
    when: asks('method-not-for-element'),
  },
  {
    id: 'soil-unit-not-for-method',
    level: 'hold',
    source: 'osu-agbmps-phosphorus',
    looksAt: 'whether unit and method go together',
    speaksFor: 'general',
    when: asks('unit-not-for-method'),
  },
  {
    id: 'soil-method-against-ph',
    level: 'hold',
    source: 'memory',
    looksAt: 'the pH of the soil and the method',
    speaksFor: 'general',
    when: asks('method-against-ph'),
  },
  {
    id: 'soil-scales-differ',
    level: 'note',
    source: 'sare-building-soils',
    looksAt: 'what scales of other places call the same value',
    speaksFor: 'general',
    when: ({ bed, element, class: found, others }) =>
      found === undefined || others.length === 0
        ? false
        : { bed, element, class: found, others: [...new Set(others)].join(', ') },
  },
];

const full = (found: SoilClass | undefined) => found === 'high' || found === 'excessive';
const grams = (ledger: BedLedger, element: 'n' | 'p' | 'k') => ledger.givenG[element]?.likely ?? 0;
const sources = (ledger: BedLedger, element: 'n' | 'p' | 'k') =>
  ledger.byKind
    .filter(({ givenG }) => (givenG[element]?.likely ?? 0) > 0)
    .toSorted((a, b) => (b.givenG[element]?.likely ?? 0) - (a.givenG[element]?.likely ?? 0))
    .map(({ kind }) => kind)
    .join(', ');

export const groundRules: readonly Rule<GroundSituation>[] = [
  {
    id: 'ground-crop-not-told',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether a crop was told for the bed',
    speaksFor: 'general',
    when: ({ ledger, cropTold }) => (cropTold ? false : { bed: ledger.name }),
  },
  {
    id: 'ground-crop-unknown',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'crops that stand in no table',
    speaksFor: 'general',
    when: ({ ledger, unknownCrops }) =>
      unknownCrops.length > 0 ? { bed: ledger.name, crops: unknownCrops.join(', ') } : false,
  },
  {
    id: 'ground-figure-unknown',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'figures of a known crop that nobody gave',
    speaksFor: 'general',
    when: ({ ledger }) =>
      ledger.need.unknown.length > 0 ? { bed: ledger.name, figures: ledger.need.unknown.join(', ') } : false,
  },
  {
    id: 'ground-p-full',
    level: 'caution',
    source: 'nevmg-nutrients',
    looksAt: 'the class of the soil test for phosphorus, and what was given',
    speaksFor: 'general',
    when: ({ ledger, p }) =>
      full(p) && grams(ledger, 'p') > 0
        ? { bed: ledger.name, class: p ?? '', givenG: grams(ledger, 'p'), from: sources(ledger, 'p') }
        : false,
  },
  {
    id: 'ground-k-full',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'the class of the soil test for potassium, and what was given',
    speaksFor: 'general',
    when: ({ ledger, k }) =>
      full(k) && grams(ledger, 'k') > 0
        ? { bed: ledger.name, class: k ?? '', givenG: grams(ledger, 'k'), from: sources(ledger, 'k') }
        : false,
  },
  {
    id: 'ground-p-builds-up',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'phosphorus given against what the harvest carries away',
    speaksFor: 'general',
    when: ({ ledger, p }) =>
      !full(p) && doubles(ledger, 'p')
        ? {
            bed: ledger.name,
            givenG: grams(ledger, 'p'),
            needG: ledger.need.needG.p?.likely ?? 0,
            from: sources(ledger, 'p'),
          }
        : false,
  },
  {
    id: 'ground-k-builds-up',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'potassium given against what the harvest carries away',
    speaksFor: 'general',
    when: ({ ledger, k }) =>
      !full(k) && doubles(ledger, 'k')
        ? {
            bed: ledger.name,
            givenG: grams(ledger, 'k'),
            needG: ledger.need.needG.k?.likely ?? 0,
            from: sources(ledger, 'k'),
          }
        : false,
  },
  {
    id: 'ground-n-over',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'nitrogen that comes free against the need',
    speaksFor: 'general',
    when: ({ ledger }) =>
      (ledger.givenG.n?.low ?? 0) > (ledger.need.needG.n?.high ?? Number.POSITIVE_INFINITY)
        ? {
            bed: ledger.name,
            givenG: grams(ledger, 'n'),
            needG: ledger.need.needG.n?.likely ?? 0,
            from: sources(ledger, 'n'),
          }
        : false,
  },
  {
    id: 'ground-ties-up',
    level: 'caution',
    source: 'pnw-636',
    looksAt: 'whether what was given takes nitrogen out of the soil',
    speaksFor: 'general',
    when: ({ ledger }) => {
      const tying = ledger.byKind.filter(({ givenG }) => (givenG.n?.likely ?? 0) < 0);
      const tiedG = tying.reduce((total, { givenG }) => total - (givenG.n?.likely ?? 0), 0);
      return tying.length > 0 ? { bed: ledger.name, tiedG, from: tying.map(({ kind }) => kind).join(', ') } : false;
    },
  },
  {
    id: 'ground-coffee-no-credit',
    level: 'note',
    source: 'hardgrove-livesley-2016',
    looksAt: 'coffee grounds among what was given',
    speaksFor: 'general',
    when: ({ ledger, coffee }) => (coffee ? { bed: ledger.name } : false),
  },
  {
    id: 'ground-release-untold',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether a bought product dissolves or has to rot',
    speaksFor: 'general',
    when: ({ ledger, releaseUntold }) =>
      releaseUntold.length > 0 ? { bed: ledger.name, what: [...new Set(releaseUntold)].join(', ') } : false,
  },
  {
    id: 'ground-low-soil',
    level: 'note',
    source: 'our-caution',
    looksAt: 'a soil test that is low',
    speaksFor: 'general',
    when: ({ ledger, p, k }) => {
      const low = [...(p === 'low' ? ['P'] : []), ...(k === 'low' ? ['K'] : [])];
      return low.length > 0 ? { bed: ledger.name, elements: low.join(', ') } : false;
    },
  },
  {
    id: 'ground-content-unknown',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'what was given without a known content',
    speaksFor: 'general',
    when: ({ ledger }) =>
      ledger.unknownIn.length > 0
        ? {
            bed: ledger.name,
            what: ledger.unknownIn.map(({ element, what }) => `${what} (${element.toUpperCase()})`).join(', '),
          }
        : false,
  },
];

/** What holds for all beds of an answer. */
export interface GroundAnswerSituation {
  readonly untestedBeds: readonly string[];
  readonly withoutGoal: readonly string[];
  /** Whether any temperature of the period was told. */
  readonly warmthTold: boolean;
  /** What was taken for the soil instead. */
  readonly usualC: Range;
  /** Whether anything given needs warmth to come free. */
  readonly rots: boolean;
}

export const groundAnswerRules: readonly Rule<GroundAnswerSituation>[] = [
  {
    id: 'ground-no-soil-test',
    level: 'note',
    source: 'our-caution',
    looksAt: 'beds without a soil test that could be read',
    speaksFor: 'general',
    when: ({ untestedBeds }) => (untestedBeds.length > 0 ? { beds: untestedBeds.join(', ') } : false),
  },
  {
    id: 'ground-no-yield-goal',
    level: 'note',
    source: 'duev-2017',
    looksAt: 'whether a yield goal was told',
    speaksFor: ['eu'],
    when: ({ withoutGoal }) => (withoutGoal.length > 0 ? { beds: withoutGoal.join(', ') } : false),
  },
  {
    id: 'ground-warmth-assumed',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether temperatures were told',
    speaksFor: 'general',
    when: ({ warmthTold, rots, usualC }) =>
      warmthTold || !rots ? false : { likelyC: usualC.likely, lowC: usualC.low, highC: usualC.high },
  },
];
