// What to say beside the ways to rescue a batch, and how to tip one that is lost. The options and what the model
// expects of them come from souring/rescue.ts; the gas under a foul lid is gas.ts.

import type { Rescue, RescueKind } from '../souring/rescue.ts';
import { type FoulGas, foulGasRules } from './gas.ts';
import { type Finding, judge, type Rule } from './rule.ts';

/** The options of one batch and what bears on them. */
export interface RescueSituation {
  readonly options: readonly Rescue[];
  readonly state: string;
  /** A foul word, a climb, or acid that goes missing. */
  readonly mayBeFoul: boolean;
  /** Hexose that may still be added, g per litre; NaN when not known. */
  readonly sugarRoomGPerL: number;
  readonly mostHexoseGPerL: number;
}

const offers = ({ options }: RescueSituation, kind: RescueKind) => options.find((one) => one.kind === kind);
const offered = (kind: RescueKind) => (situation: RescueSituation) => offers(situation, kind)?.values ?? false;
const canBeRescued = ({ state }: RescueSituation) => state === 'slow' || state === 'doubtful';

export const rescueRules: readonly Rule<RescueSituation>[] = [
  {
    // Feeding a batch that is not sour feeds whatever is in it.
    id: 'rescue-no-sugar-to-a-foul-one',
    level: 'stop',
    source: 'ingram-millner-2007',
    locator: 'growth of E. coli and Salmonella with supplements',
    looksAt: 'a slow or doubtful batch that may be foul',
    speaksFor: 'general',
    override: 'reason',
    when: (situation) => (canBeRescued(situation) && situation.mayBeFoul ? {} : false),
  },
  {
    id: 'rescue-sugar-is-at-its-most',
    level: 'hold',
    source: 'utar-fermentation-2025',
    locator: 'alcohol at day 90',
    looksAt: 'room left for sugar in a slow or doubtful batch',
    speaksFor: 'general',
    when: (situation) => {
      const { mayBeFoul, sugarRoomGPerL, mostHexoseGPerL } = situation;
      if (!canBeRescued(situation) || mayBeFoul || sugarRoomGPerL > 0) return false;
      return { mostHexoseGPerL };
    },
  },
  {
    id: 'rescue-sugar-not-past-the-most',
    level: 'caution',
    source: 'utar-fermentation-2025',
    locator: 'alcohol at day 90',
    looksAt: 'sugar offered as a rescue',
    speaksFor: 'general',
    when: (situation) => {
      const values = offered('sugar')(situation);
      return values === false ? false : { ...values, mostHexoseGPerL: situation.mostHexoseGPerL };
    },
  },
  {
    id: 'rescue-starter-from-a-good-batch',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'starter offered as a rescue',
    speaksFor: 'general',
    when: offered('starter'),
  },
  {
    id: 'rescue-warm-not-hot',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a warmer place offered as a rescue',
    speaksFor: 'general',
    when: offered('warmth'),
  },
  {
    id: 'rescue-skim-gently',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'skimming offered as a rescue',
    speaksFor: 'general',
    when: offered('skim'),
  },
  {
    id: 'rescue-never-seal',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'closing the vessel offered as a rescue',
    speaksFor: 'general',
    override: 'none',
    when: offered('close'),
  },
  {
    id: 'rescue-is-an-estimate',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether the model expects anything of a rescue',
    speaksFor: 'general',
    when: ({ options }) => (options.some(({ expects }) => expects !== undefined) ? {} : false),
  },
];

/** A batch that is to be tipped, and what went into it. */
export interface Tipping {
  readonly state: string;
  /** Manure, meat, fish, dairy or bedding went in; not told counts as perhaps. */
  readonly animalMatter?: boolean | undefined;
  /** Clippings whose treatment nobody knows, or that no bean test has cleared; not told counts as perhaps. */
  readonly untestedClippings?: boolean | undefined;
  /** What there is to tip; NaN when not known. */
  readonly volumeL: number;
}

/** How a lost batch is tipped; for any other it is a respectable choice with no more to say than where. */
export const tipRules: readonly Rule<Tipping>[] = [
  {
    id: 'tip-nothing-of-it-on-a-bed',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'a lost batch that is to be tipped',
    speaksFor: 'general',
    override: 'none',
    when: ({ state }) => (state === 'lost' ? {} : false),
  },
  {
    id: 'tip-animal-matter-not-into-a-food-heap',
    level: 'stop',
    source: 'apha-home-compost',
    looksAt: 'manure, meat, fish, dairy or bedding in what is tipped; not told counts as perhaps',
    speaksFor: ['gb'],
    override: 'reason',
    when: ({ animalMatter }) => (animalMatter !== false ? { known: animalMatter === true } : false),
  },
  {
    id: 'tip-untested-clippings-not-into-a-food-heap',
    level: 'stop',
    source: 'npic-herbicides-in-compost',
    looksAt: 'clippings not cleared by a bean test in what is tipped; not told counts as perhaps',
    speaksFor: 'general',
    override: 'none',
    when: ({ untestedClippings }) => (untestedClippings !== false ? { known: untestedClippings === true } : false),
  },
  {
    id: 'tip-under-dry-leaves',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'every tipping: its volume',
    speaksFor: 'general',
    when: ({ volumeL }) => ({ ...(Number.isFinite(volumeL) && { volumeL, leavesL: LEAVES_TIMES * volumeL }) }),
  },
];

/** Dry leaves by volume. @practice our caution, no source */
const LEAVES_TIMES = 2;

/** All that is to be said before a batch is tipped: the gas under its lid first, then where it goes. @arithmetic both lists, in order */
export function beforeTipping(batch: Tipping & FoulGas): readonly Finding[] {
  return [...judge(foulGasRules, batch), ...judge(tipRules, batch)];
}
