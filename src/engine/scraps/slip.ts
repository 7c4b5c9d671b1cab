// A source slip: where a lot of scraps came from, what it was treated with, what state it is in. Each answer
// gives a place at best; the worst answer wins, and an answer that is missing or not known counts with the
// careful ones. The table of materials joins in rules/slip.ts, and so do levels and sources.

import { type ExcludedRow, excludedRow, material } from '../tables/index.ts';
import { excludedIn } from './excluded.ts';
import type { Treated } from './part.ts';

/** in: may go into the pail · compost-only: a heap, never the pail · set-aside: neither until cleared · out: neither. */
export type SlipOutcome = 'in' | 'compost-only' | 'set-aside' | 'out';

/** Where a lot goes instead of the pail. */
export type SlipGoes =
  | 'bean-test'
  | 'heap'
  | 'hot-heap'
  | 'where-it-grew'
  | 'garden-waste-collection'
  | 'food-waste-collection'
  | 'household-bin'
  | 'plant-health-rules'
  | 'back-home'
  | 'pile-apart'
  | 'ask-the-site';

export interface SourceSlip {
  readonly whose: 'own' | 'household' | 'neighbour' | 'shared' | 'bought' | 'found' | 'unknown';
  readonly from: 'garden' | 'kitchen' | 'neighbour' | 'street' | 'shop' | 'unknown';
  /** Weedkiller there, or on what the animals ate; missing counts as 'unknown' except for kitchen food. */
  readonly treated?: Treated | undefined;
  /** lasting: of the clopyralid kind, by its label · other: another weedkiller, by its label. */
  readonly weedkiller?: 'lasting' | 'other' | 'unknown' | undefined;
  /** Whether the label of another weedkiller allows these clippings off the lawn. */
  readonly labelAllows?: 'yes' | 'no' | 'unknown' | undefined;
  readonly sinceTreatedDays?: number | undefined;
  readonly condition?: 'fresh' | 'wilted' | 'dry' | 'frozen' | 'slimy' | 'unknown' | undefined;
  readonly kitchen?: 'raw' | 'cooked' | 'plate' | 'unknown' | undefined;
  /** Id of the materials table. */
  readonly material?: string | undefined;
  /** What it is, as typed. */
  readonly species?: string | undefined;
  /** Ids of data/excluded.csv that the grower pointed at. */
  readonly excluded?: readonly string[] | undefined;
  /** What the site says; missing where no site was told of. */
  readonly site?: SiteRules | undefined;
  /** What a bean test of the lot showed; missing where none was read, or none that decides. */
  readonly beans?: 'clear' | 'harmed' | undefined;
}

export type SiteAnswer = 'allowed' | 'forbidden' | 'unknown';

/** What a site says of scraps that did not grow on it. */
export interface SiteRules {
  readonly outside: SiteAnswer;
  /** Of kitchen scraps, where it speaks of them by themselves. */
  readonly kitchen?: SiteAnswer | undefined;
  /** Of cooked food and what was on a plate. */
  readonly cooked?: SiteAnswer | undefined;
}

/** One answer of the slip that keeps a lot from the pail. */
export interface SlipReason {
  /** Id of the rule that says so. */
  readonly rule: string;
  readonly outcome: Exclude<SlipOutcome, 'in'>;
  readonly goes: SlipGoes;
}

export interface SlipAnswer {
  readonly outcome: SlipOutcome;
  /** Every reason, the worst first; none where the lot may go in. */
  readonly reasons: readonly SlipReason[];
}

const ORDER: readonly SlipOutcome[] = ['in', 'compost-only', 'set-aside', 'out'];
/** The row of the materials table for cooked food. */
const COOKED = 'cooked-food';
/** Groups of the materials table that weedkiller comes in with, wherever they were got. */
const FROM_FIELDS = ['clippings', 'hay-straw', 'manure', 'compost'];

/** The stricter of two places. @arithmetic */
export function stricterOutcome(a: SlipOutcome, b: SlipOutcome): SlipOutcome {
  return ORDER.indexOf(b) > ORDER.indexOf(a) ? b : a;
}

/**
 * What a slip says of its lot: the strictest place that any of its answers gives, with every reason.
 * A clear bean test answers the reasons that wait for one, and no other.
 * Limits: it judges what was written, not what lies in the bag; no test of beans answers for poison or disease.
 * @practice the order in is softer than heap only, than set aside, than out
 */
export function answerSlip(slip: SourceSlip): SlipAnswer {
  const reasons = [
    ...weedkiller(slip),
    ...place(slip),
    ...kitchen(slip),
    ...condition(slip),
    ...species(slip),
    ...excludedOf(slip).map(excludedReason),
    ...harmedBeans(slip),
  ]
    .filter(({ goes }) => !(slip.beans === 'clear' && goes === 'bean-test'))
    .sort((a, b) => ORDER.indexOf(b.outcome) - ORDER.indexOf(a.outcome));
  return { outcome: reasons[0]?.outcome ?? 'in', reasons };
}

/** Rows of data/excluded.csv that a slip speaks of, pointed at or typed. @arithmetic look-up */
export function excludedOf(slip: SourceSlip): readonly ExcludedRow[] {
  const pointedAt = (slip.excluded ?? []).flatMap((id) => excludedRow(id) ?? []);
  return [...new Set([...pointedAt, ...excludedIn(slip.species ?? '')])];
}

/** Id of the rule that speaks for a row of data/excluded.csv. @arithmetic joining */
export function excludedRuleId(row: ExcludedRow): string {
  return `excluded-${row.id}`;
}

function weedkiller(slip: SourceSlip): readonly SlipReason[] {
  const { treated, weedkiller: kind, labelAllows } = slip;
  if (treated === 'no') return [];
  if (treated === 'yes') {
    return kind === 'other' && labelAllows === 'yes'
      ? [{ rule: 'slip-label-allows', outcome: 'set-aside', goes: 'bean-test' }]
      : [{ rule: 'slip-weedkiller', outcome: 'out', goes: 'where-it-grew' }];
  }
  return treated === undefined && grownToEat(slip)
    ? []
    : [{ rule: 'slip-treatment-unknown', outcome: 'set-aside', goes: 'bean-test' }];
}

/**
 * Food of kitchen or shop: nobody can say of a carrot what grew beside it, and it was grown to be eaten. A shop sells
 * bales too: what it sold under a name of the grower's own may be one.
 */
function grownToEat({ from, material: id }: SourceSlip): boolean {
  const group = id === undefined ? undefined : material(id)?.group;
  if (group === undefined) return from === 'kitchen';
  return (from === 'kitchen' || from === 'shop') && !FROM_FIELDS.includes(group);
}

/** What the site says of this lot: of what grew on it, always allowed. */
function siteAnswer(slip: SourceSlip): SiteAnswer {
  const { whose, from, site } = slip;
  const ownGround = from === 'garden' && (whose === 'own' || whose === 'shared');
  if (site === undefined || ownGround) return 'allowed';
  const kitchen = site.kitchen ?? site.outside;
  if (from === 'kitchen') return isCooked(slip) && site.cooked === 'forbidden' ? 'forbidden' : kitchen;
  if (from !== 'unknown') return site.outside;
  const both = [site.outside, kitchen];
  return both.includes('forbidden') ? 'forbidden' : both.includes('unknown') ? 'unknown' : 'allowed';
}

function isCooked({ kitchen: state, material: id }: SourceSlip): boolean {
  return state === 'cooked' || state === 'plate' || id === COOKED;
}

function harmedBeans({ beans }: SourceSlip): readonly SlipReason[] {
  return beans === 'harmed' ? [{ rule: 'slip-beans-harmed', outcome: 'out', goes: 'pile-apart' }] : [];
}

function place(slip: SourceSlip): readonly SlipReason[] {
  const { whose, from } = slip;
  const found: SlipReason[] = [];
  const answer = siteAnswer(slip);
  if (answer === 'forbidden') found.push({ rule: 'slip-site-forbids', outcome: 'out', goes: 'back-home' });
  if (answer === 'unknown') found.push({ rule: 'slip-site-not-known', outcome: 'set-aside', goes: 'ask-the-site' });
  if (whose === 'unknown' || from === 'unknown') {
    found.push({ rule: 'slip-source-unknown', outcome: 'set-aside', goes: 'bean-test' });
  }
  if (from === 'street' || whose === 'found') {
    found.push({ rule: 'slip-from-the-street', outcome: 'compost-only', goes: 'hot-heap' });
  }
  return found;
}

function kitchen({ from, kitchen: state, material: id }: SourceSlip): readonly SlipReason[] {
  // The table itself says of this one that it is cooked, and keeps it out.
  if (id === COOKED && state !== 'plate') return [];
  if (state === 'plate') return [{ rule: 'slip-off-the-plate', outcome: 'out', goes: 'food-waste-collection' }];
  if (state === 'cooked') return [{ rule: 'slip-cooked', outcome: 'out', goes: 'food-waste-collection' }];
  const asked = from === 'kitchen' || from === 'shop' || from === 'unknown' || state === 'unknown';
  return asked && state !== 'raw'
    ? [{ rule: 'slip-kitchen-not-told', outcome: 'out', goes: 'food-waste-collection' }]
    : [];
}

function condition({ condition: as }: SourceSlip): readonly SlipReason[] {
  if (as === 'slimy') return [{ rule: 'slip-slimy', outcome: 'compost-only', goes: 'heap' }];
  return as === undefined || as === 'unknown'
    ? [{ rule: 'slip-condition-not-told', outcome: 'compost-only', goes: 'heap' }]
    : [];
}

function species({ material: id, species: typed, excluded: ids }: SourceSlip): readonly SlipReason[] {
  if (id !== undefined && material(id) !== undefined) return [];
  const named = (typed ?? '').trim() !== '' && !/^(unknown|not known|mixed|\?+)$/i.test((typed ?? '').trim());
  return named || (ids ?? []).length > 0
    ? []
    : [{ rule: 'slip-plant-not-named', outcome: 'compost-only', goes: 'hot-heap' }];
}

function excludedReason(row: ExcludedRow): SlipReason {
  const rule = excludedRuleId(row);
  if (row.into === 'compost-only') return { rule, outcome: 'compost-only', goes: 'heap' };
  if (row.into === 'hot-heap-only') return { rule, outcome: 'compost-only', goes: 'hot-heap' };
  if (row.group === 'diseased') return { rule, outcome: 'out', goes: 'plant-health-rules' };
  if (row.group === 'spreading') return { rule, outcome: 'out', goes: 'garden-waste-collection' };
  return { rule, outcome: 'out', goes: 'household-bin' };
}
