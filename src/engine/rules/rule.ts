// What every caution is made of. A rule looks at one situation and, when it speaks, gives a finding:
// its id, level, the values its sentence needs, and its source. The sentences stand in words, one per
// rule id and language; the rules themselves stand beside this file, one file per place of decision.

/** stop: not to be done · hold: not yet · caution: do it with care · note: worth knowing. */
export type Level = 'stop' | 'hold' | 'caution' | 'note';

/**
 * Where a rule or figure comes from: an id of data/sources.csv, or one of three honest marks.
 * 'practice' = common practice, no source · 'our-caution' = our caution, no source · 'memory' = from memory, unverified.
 */
export type Origin = string;

/** What the sentence of a rule may mention: numbers in SI, names as the grower gave them. */
export type Values = Readonly<Record<string, number | string | boolean>>;

/** A rule that spoke. */
export interface Finding {
  readonly rule: string;
  readonly level: Level;
  readonly values: Values;
  readonly source: Origin;
  /** Of a stop: whether a recorded reason may pass it. */
  readonly override?: Override;
}

/** Where a source has the force of law or official advice. */
export type Place = 'us' | 'gb' | 'eu';

/**
 * 'general', or the places whose own codes the figures of a rule come from. A rule speaks everywhere; outside its
 * places it is a yardstick that defers to the local codes.
 */
export type SpeaksFor = 'general' | readonly [Place, ...Place[]];

/** Whether a stop gives way to a recorded reason, which marks the beds, or to nothing. */
export type Override = 'none' | 'reason';

interface AnyRule<Situation> {
  readonly id: string;
  /** What of the situation it looks at, in a few words for whoever audits the rules. */
  readonly looksAt: string;
  readonly speaksFor: SpeaksFor;
  readonly source: Origin;
  /** Section, table or page of the source. */
  readonly locator?: string;
  /** False (silent) or the values of the sentence. NaN must make it speak. */
  readonly when: (situation: Situation) => false | Values;
}

/** Says no. What may be done in its place stands in words, one sentence for each stop. */
export interface StopRule<Situation> extends AnyRule<Situation> {
  readonly level: 'stop';
  readonly override: Override;
}

/** Asks for a wait, for care, or for a thought: there is nothing to override. */
export interface MildRule<Situation> extends AnyRule<Situation> {
  readonly level: Exclude<Level, 'stop'>;
  readonly override?: never;
}

/** One caution. */
export type Rule<Situation> = StopRule<Situation> | MildRule<Situation>;

/** Every rule of a list that speaks, stops first, each list in its own order. @arithmetic sorting */
export function judge<Situation>(rules: readonly Rule<Situation>[], situation: Situation): readonly Finding[] {
  const found: Finding[] = [];
  for (const rule of rules) {
    const values = rule.when(situation);
    if (values === false) continue;
    const { id, level, source, override } = rule;
    found.push({ rule: id, level, values, source, ...(override !== undefined && { override }) });
  }
  return found.sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
}

const LEVELS: readonly Level[] = ['stop', 'hold', 'caution', 'note'];
