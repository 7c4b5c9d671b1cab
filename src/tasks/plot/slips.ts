// A lot at the scale and its source slip, on this plot: what the record holds of both is put before the rules, and
// the bean test of a lot set aside is laid out, read and written down. The rules and the verdict are the engine's.

import { bioassayRules } from '#engine/rules/bioassay.ts';
import { judge } from '#engine/rules/rule.ts';
import { judgeSlip, type SlipSituation } from '#engine/rules/slip.ts';
import { type BioassayReading, bioassayDays, bioassayVerdict, type PotsRead } from '#engine/scraps/bioassay.ts';
import type { SiteAnswer, SlipOutcome, SourceSlip } from '#engine/scraps/slip.ts';
import { material } from '#engine/tables/index.ts';
import { workBioassay } from '#engine/working/bioassay.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { bioassayCard, bioassayCautions, bioassaySays } from '#words/en/bioassay.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { slipCautions, slipSays } from '#words/en/slip.ts';
import { type Caution, spoken } from '../caution.ts';
import { onDay } from './dates.ts';

export interface SlipView {
  readonly outcome: SlipOutcome;
  /** What becomes of the lot and where it goes, as sentences. */
  readonly says: readonly string[];
  readonly cautions: readonly Caution[];
}

/** What the rules say of a lot as it is weighed in on this plot; `on` is the day, for the time since a treatment. */
export function slipView(ask: {
  readonly plot: Plot;
  readonly lot: Body<'scraps.weighed'>;
  readonly on: string;
}): SlipView {
  const judged = judgeSlip(situationOf(ask));
  return {
    outcome: judged.outcome,
    says: slipSays(judged),
    cautions: spoken(judged.findings, slipCautions, scrapsCautions),
  };
}

/** A lot of the record as the rules look at it. What the record does not hold stays missing, and counts as not known. */
export function situationOf(ask: {
  readonly plot: Plot;
  readonly lot: Body<'scraps.weighed'>;
  readonly on: string;
}): SlipSituation {
  const { facts } = ask.plot;
  const { lot } = ask;
  const { slip } = lot;
  const { outsideScraps, kitchenScraps } = facts;
  return {
    slip: {
      whose: slip?.whose ?? 'unknown',
      from: fromOf(lot),
      treated: slip?.treated,
      sinceTreatedDays:
        slip?.treatedOn === undefined ? undefined : momentOf(ask.on).dateDay - momentOf(slip.treatedOn).dateDay,
      condition: lot.condition,
      kitchen: kitchenOf(lot),
      material: lot.material,
      species: lot.name,
      // A plot that says nothing of scraps is no site with a rule.
      site:
        outsideScraps === undefined && kitchenScraps === undefined
          ? undefined
          : {
              outside: siteAnswer(outsideScraps),
              kitchen: kitchenScraps === undefined ? undefined : siteAnswer(kitchenScraps),
            },
    },
    siteRule: facts.siteRule,
  };
}

function siteAnswer(allowed: boolean | undefined): SiteAnswer {
  return allowed === undefined ? 'unknown' : allowed ? 'allowed' : 'forbidden';
}

/** Where a lot comes from: its origin where it was told, otherwise whose it is. */
function fromOf({ origin, slip, material: id }: Body<'scraps.weighed'>): SourceSlip['from'] {
  if (slip?.whose === 'neighbour') return 'neighbour';
  if (slip?.whose === 'found') return 'street';
  if (origin === 'kitchen' || origin === 'cooked' || origin === 'plate') return 'kitchen';
  if (slip?.whose === 'bought') return 'shop';
  if (origin === 'garden') return 'garden';
  const group = id === undefined ? undefined : material(id)?.group;
  return group === 'kitchen' ? 'kitchen' : slip?.whose === undefined || slip.whose === 'unknown' ? 'unknown' : 'garden';
}

/** Raw, cooked or off the plate; what the materials table names is raw, unless the lot says otherwise. */
function kitchenOf({ origin, material: id }: Body<'scraps.weighed'>): SourceSlip['kitchen'] {
  if (origin === 'cooked' || origin === 'plate') return origin;
  return id !== undefined && id !== 'cooked-food' && material(id) !== undefined ? 'raw' : undefined;
}

/** The card of a bean test sown on a day, with the days to read it between. */
export function beanTestCard(sownOn: string): {
  readonly readFrom: string;
  readonly readBy: string;
  readonly lines: readonly string[];
} {
  const { readFromDay, readByDay } = bioassayDays(momentOf(sownOn).dateDay);
  const days = { sownOn, readFrom: onDay(readFromDay), readBy: onDay(readByDay) };
  return { readFrom: days.readFrom, readBy: days.readBy, lines: bioassayCard(days) };
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
      testPots: test.potCount,
      controlPots: control.potCount,
      note: says.join(' '),
    },
  };
}
