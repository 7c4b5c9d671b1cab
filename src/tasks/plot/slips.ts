// A lot at the scale and its source slip, on this plot: what the record holds of both is put before the rules, and
// the bean test of a lot set aside is laid out, read and written down. The rules and the verdict are the engine's.

import { bioassayRules } from '#engine/rules/bioassay.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { judgeSlip, outcomeOf, type SlipSituation } from '#engine/rules/slip.ts';
import {
  BIOASSAY,
  type BioassayReading,
  bioassayDays,
  bioassayVerdict,
  type PotsRead,
} from '#engine/scraps/bioassay.ts';
import type { SlipOutcome, SourceSlip } from '#engine/scraps/slip.ts';
import { citation } from '#engine/tables/index.ts';
import { workBioassay } from '#engine/working/bioassay.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { siteOf, slipOfLot } from '#journal/parts/slip-of-lot.ts';
import { sayDate } from '#words/en/app.ts';
import { bioassayCard, bioassayCautions, bioassayNotes, bioassaySays } from '#words/en/bioassay.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { slipCautions, slipSays } from '#words/en/slip.ts';
import { type Caution, spoken } from '../caution.ts';
import { onDay } from './dates.ts';

export interface SlipView {
  readonly outcome: SlipOutcome;
  /** What becomes of the lot and where it goes, as sentences. */
  readonly says: readonly string[];
  readonly cautions: readonly Caution[];
  /** A clear bean test would open the pail to it: nothing else holds it. */
  readonly bean: boolean;
}

/** A lot, the plot it is on, and the day, for the time since a treatment. */
export interface LotAsk {
  readonly plot: Plot;
  readonly lot: Body<'scraps.weighed'>;
  readonly on: string;
  /** What its bean tests came to; left out at the scale. */
  readonly beans?: SourceSlip['beans'];
}

/** What the rules say of a lot as it is weighed in on this plot. */
export function slipView(ask: LotAsk): SlipView {
  const situation = situationOf(ask);
  const judged = judgeSlip(situation);
  const { outcome } = judged;
  return {
    outcome,
    says: slipSays(judged),
    cautions: spoken(telling(outcome, judged.findings), slipCautions, scrapsCautions),
    bean: outcome === 'set-aside' && outcomeOf({ ...situation.slip, beans: 'clear' }) !== 'set-aside',
  };
}

/** What still needs an answer is left unsaid of a lot that a stop keeps out whatever the answer. */
function telling(outcome: SlipOutcome, findings: readonly Finding[]): readonly Finding[] {
  if (outcome === 'out') return findings.filter(({ level }) => level === 'stop');
  const isStopped = findings.some(({ level }) => level === 'stop');
  return isStopped ? findings.filter(({ rule }) => rule !== 'slip-condition-not-told') : findings;
}

/** A lot of the record as the rules look at it. What the record does not hold stays missing, and counts as not known. */
export function situationOf({ plot, lot, on, beans }: LotAsk): SlipSituation {
  const { facts } = plot;
  const treatedOn = lot.slip?.treatedOn;
  return {
    slip: {
      ...slipOfLot(lot, { site: siteOf(facts), beans }),
      sinceTreatedDays: treatedOn === undefined ? undefined : momentOf(on).dateDay - momentOf(treatedOn).dateDay,
    },
    siteRule: siteRuleSaid(facts),
  };
}

/** The site's rule with its date as a person says it. */
export function siteRuleSaid({ siteRule }: Plot['facts']): SlipSituation['siteRule'] {
  if (siteRule === undefined) return undefined;
  return { text: siteRule.text, ...(siteRule.on !== undefined && { on: sayDate(siteRule.on, '') }) };
}

/** The card of a bean test sown on a day, with the days to read it between. */
export function beanTestCard(sownOn: string): {
  readonly readFrom: string;
  readonly readBy: string;
  readonly lines: readonly string[];
  readonly notes: readonly string[];
  /** A row of the table for each pot. */
  readonly pots: readonly string[];
  readonly source: string;
} {
  const { readFromDay, readByDay } = bioassayDays(momentOf(sownOn).dateDay);
  const [readFrom, readBy] = [onDay(readFromDay), onDay(readByDay)];
  const days = { sownOn: sayDate(sownOn), readFrom: sayDate(readFrom), readBy: sayDate(readBy) };
  const marked = (letter: string) => Array.from({ length: BIOASSAY.leastPotCount }, (_, i) => `${letter}${i + 1}`);
  return {
    readFrom,
    readBy,
    lines: bioassayCard(days),
    notes: bioassayNotes,
    pots: [...marked('T'), ...marked('C')],
    source: citation('wsu-bioassay'),
  };
}

const OUTCOMES = { clear: 'clear', affected: 'harmed', repeat: 'unclear' } as const;

export interface BeanTestRead {
  readonly verdict: 'clear' | 'affected' | 'repeat';
  readonly says: readonly string[];
  readonly cautions: readonly Caution[];
  readonly workings: readonly Working[];
  /** What goes into the record. */
  readonly act: Body<'lot.tested'>;
}

/** What the pots of a bean test showed, and the act that writes it down. */
export function readBeanTest(ask: {
  readonly lot: string;
  readonly sownOn: string;
  readonly readOn: string;
  readonly leavesCount: number;
  readonly test: PotsRead;
  readonly control: PotsRead;
}): BeanTestRead {
  const { test, control, leavesCount } = ask;
  const sinceSownDays = momentOf(ask.readOn).dateDay - momentOf(ask.sownOn).dateDay;
  const reading: BioassayReading = { test, control, leavesCount, sinceSownDays };
  const verdict = bioassayVerdict(reading);
  const says = bioassaySays(reading, verdict);
  return {
    verdict: verdict.verdict,
    says,
    cautions: spoken(judge(bioassayRules, verdict), bioassayCautions),
    workings: workBioassay(reading, verdict),
    act: {
      lot: ask.lot,
      test: 'bean',
      outcome: OUTCOMES[verdict.verdict],
      sownOn: ask.sownOn,
      leaves: leavesCount,
      testPots: test.potCount,
      testSown: test.sownCount,
      testUp: test.germinatedCount,
      testDeformed: test.deformedCount,
      controlPots: control.potCount,
      controlSown: control.sownCount,
      controlUp: control.germinatedCount,
      controlDeformed: control.deformedCount,
      note: says.join(' '),
    },
  };
}
