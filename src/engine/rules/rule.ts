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
}

/** One caution: `when` answers false (silent) or the values of its sentence. NaN must make it speak. */
export interface Rule<Situation> {
  readonly id: string;
  readonly level: Level;
  readonly source: Origin;
  /** Section, table or page of the source. */
  readonly locator?: string;
  readonly when: (situation: Situation) => false | Values;
}

/** Every rule of a list that speaks, stops first, each list in its own order. @arithmetic sorting */
export function judge<Situation>(rules: readonly Rule<Situation>[], situation: Situation): readonly Finding[] {
  const found: Finding[] = [];
  for (const rule of rules) {
    const values = rule.when(situation);
    if (values !== false) found.push({ rule: rule.id, level: rule.level, values, source: rule.source });
  }
  return found.sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
}

const LEVELS: readonly Level[] = ['stop', 'hold', 'caution', 'note'];
