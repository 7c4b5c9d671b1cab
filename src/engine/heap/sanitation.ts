// What each published rule on heat says about a log, and what is still missing by it. The rules were written for farms
// and works; a garden heap is held against them as a yardstick. A probe in the core shows the core alone.

import { heapFigure, within } from './figures.ts';
import { daysOf, hotDaysOf, type LogDay, type LogEntry, type Run, runsOf, sinceFed } from './log.ts';

/** How air gets in: a closed vessel, a pile with air blown or led through, or a heap that is turned. */
export type Method = 'closed-vessel' | 'aerated-pile' | 'turned';

export interface HeapLog {
  readonly entries: readonly LogEntry[];
  readonly method?: Method | undefined;
  /** C:N at the start, likely. */
  readonly startCn?: number | undefined;
  /** Days it has cured since it cooled. */
  readonly curedDays?: number | undefined;
}

export type RuleId = 'cfr-7' | 'cfr-21' | 'cfr-40' | 'cfr-40-slight' | 'nosb';
/** 'still': closed vessel or aerated pile · 'turned': a heap that is turned · 'any': whichever. */
export type Way = 'still' | 'turned' | 'any';

/** One thing a rule still asks. */
export type Missing =
  | { readonly what: 'days'; readonly count: number; readonly inARow: boolean }
  | { readonly what: 'turnings'; readonly count: number }
  | { readonly what: 'start-cn-not-told' }
  | { readonly what: 'start-cn-outside'; readonly cn: number; readonly least: number; readonly most: number }
  | { readonly what: 'method'; readonly way: 'still' | 'turned' }
  | { readonly what: 'curing' }
  | { readonly what: 'hours'; readonly count: number; readonly leastC: number }
  | { readonly what: 'edge' };

export interface Verdict {
  readonly rule: RuleId;
  readonly way: Way;
  readonly source: string;
  readonly met: boolean;
  readonly missing: readonly Missing[];
  /** The days that count best; undefined where none was hot. */
  readonly span: Run | undefined;
  readonly needs: {
    readonly leastC: number;
    readonly mostC: number | undefined;
    readonly days: number;
    readonly turningsCount: number;
  };
}

const figure = (id: string, quantity: string) => heapFigure(id, quantity).likely;

/**
 * Every rule held against the log, counted from the last feeding.
 * @source cfr-7-205-203 (c)(2)
 * @source cfr-21-112-54 112.54(b)
 * @source cfr-40-503 appendix B
 * @source nosb-2006 page 6
 */
export function verdictsOf(log: HeapLog): readonly Verdict[] {
  const { days } = sinceFed(daysOf(log.entries));
  return [
    ...(['still', 'turned'] as const).map((way) => federal(log, days, 'cfr-7', way)),
    ...(['still', 'turned'] as const).map((way) => federal(log, days, 'cfr-21', way)),
    ...(['still', 'turned'] as const).map((way) => federal(log, days, 'cfr-40', way)),
    slight(days),
    allOfIt(days),
  ];
}

const SOURCES: Readonly<Record<RuleId, string>> = {
  'cfr-7': 'cfr-7-205-203',
  'cfr-21': 'cfr-21-112-54',
  'cfr-40': 'cfr-40-503',
  'cfr-40-slight': 'cfr-40-503',
  nosb: 'nosb-2006',
};

/** The three rules of one build: days of heat, in a row or not, with turnings where the heap is turned. */
function federal(
  log: HeapLog,
  days: readonly LogDay[],
  id: 'cfr-7' | 'cfr-21' | 'cfr-40',
  way: 'still' | 'turned',
): Verdict {
  const leastC = figure(id, 'leastC');
  const mostC = id === 'cfr-7' ? figure(id, 'mostC') : undefined;
  const hot = (coreC: number) => coreC >= leastC && (mostC === undefined || coreC <= mostC);
  const needDays = figure(id, way === 'still' ? 'stillDays' : 'turnedDays');
  const needTurningsCount = way === 'still' ? 0 : figure(id, 'turningsCount');
  const inARow = !(id === 'cfr-21' && way === 'turned');
  const span = inARow ? bestRun(runsOf(days, hot), needDays, needTurningsCount) : someDays(hotDaysOf(days, hot));
  const missing: Missing[] = [];
  if (id === 'cfr-7') missing.push(...startOf(log.startCn));
  missing.push(...short(span, needDays, needTurningsCount, inARow));
  const isStill = log.method === 'closed-vessel' || log.method === 'aerated-pile';
  if (way === 'still' ? !isStill : log.method !== undefined && log.method !== 'turned')
    missing.push({ what: 'method', way });
  if (id === 'cfr-21' && !((log.curedDays ?? 0) > 0)) missing.push({ what: 'curing' });
  return {
    rule: id,
    way,
    source: SOURCES[id],
    met: missing.length === 0,
    missing,
    span,
    needs: { leastC, mostC, days: needDays, turningsCount: needTurningsCount },
  };
}

/** The weaker class of the sludge rule: five days of 40 °C with four hours over 55 °C in them. */
function slight(days: readonly LogDay[]): Verdict {
  const leastC = figure('cfr-40', 'slightLeastC');
  const needDays = figure('cfr-40', 'slightDays');
  const peakH = figure('cfr-40', 'slightPeakH');
  const runs = runsOf(days, (coreC) => coreC >= leastC);
  const peak = ({ fromDay, toDay }: Run) =>
    Math.max(0, ...days.filter(({ day }) => day >= fromDay && day <= toDay).map(({ hotH }) => hotH ?? 0));
  const span = runs.find((run) => run.hotDays >= needDays && peak(run) >= peakH) ?? bestRun(runs, needDays, 0);
  const missing: Missing[] = [...short(span, needDays, 0, true)];
  if (!(span !== undefined && peak(span) >= peakH))
    missing.push({ what: 'hours', count: peakH, leastC: figure('cfr-40', 'slightPeakC') });
  return {
    rule: 'cfr-40-slight',
    way: 'any',
    source: SOURCES['cfr-40-slight'],
    met: missing.length === 0,
    missing,
    span,
    needs: { leastC, mostC: undefined, days: needDays, turningsCount: 0 },
  };
}

/** Three days of all the material: the edge has to be as hot as the core. */
function allOfIt(days: readonly LogDay[]): Verdict {
  const leastC = figure('nosb', 'leastC');
  const needDays = figure('nosb', 'days');
  const hot = (coreC: number) => coreC >= leastC;
  const span = bestRun(runsOf(days, hot), needDays, 0);
  const edges = days.map((one) => ({ ...one, coreC: one.edgeC }));
  const edge = bestRun(runsOf(edges, hot), needDays, 0);
  const missing: Missing[] = [...short(span, needDays, 0, true)];
  if (!((edge?.hotDays ?? 0) >= needDays)) missing.push({ what: 'edge' });
  return {
    rule: 'nosb',
    way: 'any',
    source: SOURCES.nosb,
    met: missing.length === 0,
    missing,
    span,
    needs: { leastC, mostC: undefined, days: needDays, turningsCount: 0 },
  };
}

function startOf(startCn: number | undefined): readonly Missing[] {
  if (startCn === undefined || Number.isNaN(startCn)) return [{ what: 'start-cn-not-told' }];
  const limits = { least: figure('cfr-7', 'leastCn'), most: figure('cfr-7', 'mostCn') };
  return within(startCn, limits) ? [] : [{ what: 'start-cn-outside', cn: startCn, ...limits }];
}

function short(
  span: Run | undefined,
  needDays: number,
  needTurningsCount: number,
  inARow: boolean,
): readonly Missing[] {
  const lackDays = needDays - (span?.hotDays ?? 0);
  const lackTurnings = needTurningsCount - (span?.turningsCount ?? 0);
  return [
    ...(lackDays > 0 ? [{ what: 'days', count: lackDays, inARow } as const] : []),
    ...(lackTurnings > 0 ? [{ what: 'turnings', count: lackTurnings } as const] : []),
  ];
}

function someDays(run: Run): Run | undefined {
  return run.hotDays > 0 ? run : undefined;
}

/** The run that meets the rule, or the longest, of equal ones the one turned most. */
function bestRun(runs: readonly Run[], needDays: number, needTurningsCount: number): Run | undefined {
  const met = runs.find((run) => run.hotDays >= needDays && run.turningsCount >= needTurningsCount);
  if (met) return met;
  return runs.toSorted((a, b) => b.hotDays - a.hotDays || b.turningsCount - a.turningsCount)[0];
}
