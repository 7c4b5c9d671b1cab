// Findings of the engine's rules as the contract gives them: rule, level, text, source.

import type { Finding, Level, Values } from '#engine/rules/rule.ts';
import { citation } from '#engine/tables/index.ts';

export interface Caution {
  readonly rule: string;
  readonly level: Level;
  readonly text: string;
  readonly source: string;
}

type Sentences = Readonly<Record<string, (values: Values) => string>>;

const ORDER: readonly Level[] = ['stop', 'hold', 'caution', 'note'];

/**
 * Every finding with its sentence and the citation of its source, stops first.
 * @throws Error for a rule without a sentence: our own fault, caught by a house test
 */
export function spoken(findings: readonly Finding[], ...languages: readonly Sentences[]): readonly Caution[] {
  const sentences: Sentences = Object.assign({}, ...languages);
  return findings
    .map((found) => {
      const say = sentences[found.rule];
      if (say === undefined) throw new Error(`rule ${found.rule} has no sentence`);
      return { rule: found.rule, level: found.level, text: say(found.values), source: citation(found.source) };
    })
    .sort((a, b) => ORDER.indexOf(a.level) - ORDER.indexOf(b.level));
}

/** Fields of the input that no word of the contract has: said, never passed over in silence. */
export function unreadCaution(unread: readonly string[]): readonly Caution[] {
  if (unread.length === 0) return [];
  const text = `Not read, because this word has no such field: ${unread.join(', ')}.`;
  return [{ rule: 'field-not-read', level: 'note', text, source: citation('our-caution') }];
}
