// Findings of the engine's rules as the contract gives them: rule, level, text, source; a stop with whether a reason may
// pass it and what may be done instead. How many of them stand open on a sheet is decided here too.

import type { Finding, Level, Override, Values } from '#engine/rules/rule.ts';
import { citation } from '#engine/tables/index.ts';
import { bioassayInstead } from '#words/en/bioassay.ts';
import { eatingInstead } from '#words/en/eating.ts';
import { heapInstead } from '#words/en/heap.ts';
import { instead as plainInstead } from '#words/en/instead.ts';
import { slipInstead } from '#words/en/slip.ts';
import { cut } from './problem.ts';

export interface Caution {
  readonly rule: string;
  readonly level: Level;
  readonly text: string;
  readonly source: string;
  /** Of a stop: whether a recorded reason may pass it. */
  readonly override?: Override;
  /** Of a stop: what may be done in its place. */
  readonly instead?: string;
}

export type Sentences = Readonly<Record<string, (values: Values) => string>>;

/** What may be done in place of every stop, by the id of its rule. */
export const instead: Readonly<Record<string, string>> = {
  ...plainInstead,
  ...slipInstead,
  ...bioassayInstead,
  ...eatingInstead,
  ...heapInstead,
};

const ORDER: readonly Level[] = ['stop', 'hold', 'caution', 'note'];

/**
 * Every finding with its sentence and the citation of its source, stops first.
 * @throws Error for a rule without a sentence: our own fault, caught by a house test
 */
export function spoken(findings: readonly Finding[], ...languages: readonly Sentences[]): readonly Caution[] {
  return spokenWith(findings, Object.assign({}, ...languages), instead);
}

/** The same in the words of one language. */
export function spokenWith(
  findings: readonly Finding[],
  sentences: Sentences,
  alternatives: Readonly<Record<string, string>>,
): readonly Caution[] {
  return findings
    .map((found) => {
      const say = sentences[found.rule];
      if (say === undefined) throw new Error(`rule ${found.rule} has no sentence`);
      const alternative = alternatives[found.rule];
      return {
        rule: found.rule,
        level: found.level,
        text: say(found.values),
        source: citation(found.source),
        ...(found.override !== undefined && { override: found.override }),
        ...(found.level === 'stop' && alternative !== undefined && { instead: alternative }),
      };
    })
    .sort((a, b) => ORDER.indexOf(a.level) - ORDER.indexOf(b.level));
}

/** Fewest words and letters of a reason that another keyholder could judge. @practice */
const REASON = { words: 3, letters: 12 } as const;

/** Whether a reason says something: words, not one letter. */
export function isReason(text: string | undefined): text is string {
  const words = (text ?? '').match(/\p{L}{2,}/gu) ?? [];
  return words.length >= REASON.words && words.join('').length >= REASON.letters;
}

/** Cautions that are no stops and stand open on one sheet at once. */
export const OPEN_BESIDE_STOPS = 2;

/**
 * The cautions of one place of a sheet: those that stand open and those that are folded. Every stop is open; of all
 * others of the sheet at most two, holds before cautions before notes. What another place of the sheet says already,
 * or the same place twice, is said once. @arithmetic sorting and counting
 */
export function onSheet(
  here: number,
  places: readonly (readonly Caution[])[],
): { readonly open: readonly Caution[]; readonly folded: readonly Caution[] } {
  const said = new Set<string>();
  const once = places.map((place) =>
    place.filter(({ rule, text }) => {
      const key = `${rule} ${text}`;
      return said.has(key) ? false : said.add(key);
    }),
  );
  const byLevel = (of: readonly Caution[]) => [...of].sort((a, b) => ORDER.indexOf(a.level) - ORDER.indexOf(b.level));
  const mild = byLevel(once.flat().filter(({ level }) => level !== 'stop'));
  const open = new Set(mild.slice(0, OPEN_BESIDE_STOPS));
  const mine = byLevel(once[here] ?? []);
  const isOpen = (one: Caution) => one.level === 'stop' || open.has(one);
  return { open: mine.filter(isOpen), folded: mine.filter((one) => !isOpen(one)) };
}

/** Names of fields that are listed one by one; the rest are counted. */
const MOST_NAMES = 12;
const MOST_OF_A_NAME = 60;

/** Fields of the input that no word of the contract has: said, never passed over in silence. */
export function unreadCaution(unread: readonly string[]): readonly Caution[] {
  if (unread.length === 0) return [];
  const named = unread.slice(0, MOST_NAMES).map((one) => cut(one, MOST_OF_A_NAME));
  const more = unread.length - named.length;
  const text = `Not read, because this word has no such field: ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
  return [{ rule: 'field-not-read', level: 'note', text, source: citation('our-caution') }];
}
