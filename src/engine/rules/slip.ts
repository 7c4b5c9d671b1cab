// What a source slip says of its lot, as rules: whose it was, from where, what it was treated with, the state it
// is in, and whether it is a plant that stays out. slip.ts of the scraps room finds the reasons; here they get
// level and source, and the table of materials joins in. The bean test's own rules are bioassay.ts.

import { resolvePart } from '../scraps/resolve.ts';
import {
  answerSlip,
  excludedOf,
  excludedRuleId,
  type SlipAnswer,
  type SlipGoes,
  type SlipOutcome,
  type SlipReason,
  type SourceSlip,
  stricterOutcome,
} from '../scraps/slip.ts';
import { type ExcludedRow, excluded, material } from '../tables/index.ts';
import { type Finding, judge, type Override, type Rule, type Values } from './rule.ts';
import { scrapsRules } from './scraps.ts';

/** A lot at the scale: its slip, and what the site's rule says where there is one. */
export interface SlipSituation {
  readonly slip: SourceSlip;
  /** Words and date of the site's rule, as typed. */
  readonly siteRule?: { readonly text: string; readonly on?: string | undefined } | undefined;
}

type About = Omit<Rule<SlipSituation>, 'level' | 'override' | 'when'>;

/** Finds the reason of one rule in the answer of a slip. */
function says(id: string, { slip }: SlipSituation): SlipReason | undefined {
  return answerSlip(slip).reasons.find(({ rule }) => rule === id);
}

function told(situation: SlipSituation, goes: SlipGoes): Values {
  const { slip, siteRule } = situation;
  const name = slip.species?.trim() || (slip.material === undefined ? undefined : material(slip.material)?.name);
  return {
    lot: name ?? 'this lot',
    goes,
    whose: slip.whose,
    from: slip.from,
    ...(slip.sinceTreatedDays === undefined ? {} : { sinceTreatedDays: slip.sinceTreatedDays }),
    ...(siteRule === undefined ? {} : { siteRule: siteRule.text, siteRuleOn: siteRule.on ?? '' }),
  };
}

function stop(override: Override, about: About): Rule<SlipSituation> {
  return { ...about, level: 'stop', override, when: (situation) => valuesOf(about.id, situation) };
}

function hold(about: About): Rule<SlipSituation> {
  return { ...about, level: 'hold', when: (situation) => valuesOf(about.id, situation) };
}

function valuesOf(id: string, situation: SlipSituation): false | Values {
  const reason = says(id, situation);
  return reason === undefined ? false : told(situation, reason.goes);
}

/** The source whose rows rest on the law of one country. */
const ENGLISH_LAW = 'uk-invasive-plants';

/** One rule for each row of data/excluded.csv, each on its row's own source. */
function ruleOf(row: ExcludedRow): Rule<SlipSituation> {
  const id = excludedRuleId(row);
  return {
    id,
    source: row.source,
    looksAt: `the plants named: ${row.names[0]}, ${row.part}`,
    speaksFor: row.source === ENGLISH_LAW ? ['gb'] : 'general',
    level: 'stop',
    // Poison, disease and burning sap in a liquid are no matter of judgement; a heap's speed is.
    override: row.into === 'out' || row.group === 'toxic' || row.group === 'irritant' ? 'none' : 'reason',
    when: (situation) => {
      const values = excludedOf(situation.slip).includes(row) && valuesOf(id, situation);
      return values && { ...values, plant: row.names[0] ?? '', part: row.part, why: row.why };
    },
  };
}

export const excludedRules: readonly Rule<SlipSituation>[] = excluded.map(ruleOf);

/** Every rule about a source slip. */
export const slipRules: readonly Rule<SlipSituation>[] = [
  stop('none', {
    id: 'slip-weedkiller',
    source: 'npic-herbicides-in-compost',
    looksAt: 'weedkiller on the slip, its kind and its label',
    speaksFor: 'general',
  }),
  hold({
    id: 'slip-label-allows',
    source: 'our-caution',
    looksAt: 'another weedkiller, whose label lets the clippings go',
    speaksFor: 'general',
  }),
  stop('none', {
    id: 'slip-beans-harmed',
    source: 'wsu-bioassay',
    locator: 'general procedures',
    looksAt: 'the bean test of the lot: harm in the test pots',
    speaksFor: 'general',
  }),
  hold({
    id: 'slip-treatment-unknown',
    source: 'wsu-bioassay',
    locator: 'general procedures',
    looksAt: 'weedkiller on the slip: not known, or not answered',
    speaksFor: 'general',
  }),
  stop('none', {
    id: 'slip-site-forbids',
    source: 'our-caution',
    looksAt: 'the rule of the site, and whether the lot comes from outside it',
    speaksFor: 'general',
  }),
  hold({
    id: 'slip-site-not-known',
    source: 'our-caution',
    looksAt: 'the rule of the site: not known',
    speaksFor: 'general',
  }),
  hold({
    id: 'slip-source-unknown',
    source: 'our-caution',
    looksAt: 'whose it is and where it comes from: not known',
    speaksFor: 'general',
  }),
  stop('none', {
    id: 'slip-from-the-street',
    source: 'our-caution',
    looksAt: 'where it comes from: the street, or found',
    speaksFor: 'general',
  }),
  stop('none', {
    id: 'slip-off-the-plate',
    source: 'cfr-21-112',
    locator: '112.3, table waste',
    looksAt: 'kitchen scraps: off the plate',
    speaksFor: ['us'],
  }),
  stop('none', {
    id: 'slip-cooked',
    source: 'our-caution',
    looksAt: 'kitchen scraps: cooked',
    speaksFor: 'general',
  }),
  stop('none', {
    id: 'slip-kitchen-not-told',
    source: 'our-caution',
    looksAt: 'kitchen scraps: raw, cooked or off the plate is not known',
    speaksFor: 'general',
  }),
  stop('reason', {
    id: 'slip-slimy',
    source: 'our-caution',
    looksAt: 'the state of the lot: slimy',
    speaksFor: 'general',
  }),
  hold({
    id: 'slip-condition-not-told',
    source: 'our-caution',
    looksAt: 'the state of the lot: not known',
    speaksFor: 'general',
  }),
  hold({
    id: 'slip-plant-not-named',
    source: 'our-caution',
    looksAt: 'the plants: none named',
    speaksFor: 'general',
  }),
];

/** What is to become of a lot: the strictest place of slip and table, where else it goes, and every rule that spoke. */
export interface SlipJudgement {
  readonly outcome: SlipOutcome;
  /** Where it goes instead of the pail, by the worst reason; none where it may go in. */
  readonly goes?: SlipGoes;
  /** Id of the rule that decides the outcome. */
  readonly by?: string;
  readonly findings: readonly Finding[];
}

/** Where a destination of the materials table stands among the outcomes of a slip. */
const TABLE: Readonly<Record<string, SlipOutcome>> = {
  liquid: 'in',
  'compost-only': 'compost-only',
  'set-aside': 'set-aside',
  out: 'out',
};

/**
 * Judges a lot by its slip and by the table of materials: the worst answer wins.
 * Limits: an id that the table does not have is not told apart from a lot without one, and must be named.
 * @practice the strictest of all answers
 */
export function judgeSlip(situation: SlipSituation): SlipJudgement {
  const answer = answerSlip(situation.slip);
  const fromTable = tableFindings(situation.slip);
  const outcome = stricterOutcome(answer.outcome, tableOutcome(situation.slip));
  // Only rules with a reason are asked: each of them reads the whole slip again.
  const due = new Set(answer.reasons.map(({ rule }) => rule));
  const asked = [...slipRules, ...excludedRules].filter(({ id }) => due.has(id));
  const findings = [...judge(asked, situation), ...fromTable];
  const decides = deciding(answer, outcome, situation.slip, fromTable);
  return { outcome, ...decides, findings };
}

/**
 * The outcome of `judgeSlip` without its findings, for whoever folds thousands of lots.
 * @practice the strictest of all answers
 */
export function outcomeOf(slip: SourceSlip): SlipOutcome {
  return stricterOutcome(answerSlip(slip).outcome, tableOutcome(slip));
}

function deciding(
  answer: SlipAnswer,
  outcome: SlipOutcome,
  slip: SourceSlip,
  fromTable: readonly Finding[],
): { readonly goes?: SlipGoes; readonly by?: string } {
  if (outcome === 'in') return {};
  const [worst] = answer.reasons;
  if (worst?.outcome === outcome) return { goes: worst.goes, by: worst.rule };
  const by = fromTable.find(({ level }) => level === 'stop')?.rule;
  return { goes: tableGoes(slip, outcome), ...(by === undefined ? {} : { by }) };
}

function tableOutcome({ material: id }: SourceSlip): SlipOutcome {
  const row = id === undefined ? undefined : material(id);
  return row === undefined ? 'in' : (TABLE[row.into] ?? 'set-aside');
}

/** Where a lot goes that only the table keeps out. */
function tableGoes({ material: id }: SourceSlip, outcome: SlipOutcome): SlipGoes {
  if (outcome !== 'out') return id === 'seeded-weeds' ? 'hot-heap' : 'heap';
  if (id === 'pet-waste') return 'household-bin';
  return id === 'blighted-haulm' ? 'plant-health-rules' : 'food-waste-collection';
}

/** What the rules about materials say; weedkiller is the slip's own question and left to it. */
function tableFindings({ material: id }: SourceSlip): readonly Finding[] {
  if (id === undefined || material(id) === undefined) return [];
  return judge(scrapsRules, { part: resolvePart({ material: id, massKg: 1 }), treated: 'no' });
}
