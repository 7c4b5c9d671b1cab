// Every rule that can speak has a sentence, and a source that can be looked up.

import type { Rule } from '#engine/rules/rule.ts';
import { type Node, parse, type SourceFile, walk } from './code.ts';

export type AnyRule = Pick<Rule<never>, 'id' | 'level' | 'source'>;

const LEVELS = ['stop', 'hold', 'caution', 'note'];
const MARKS = ['practice', 'our-caution', 'memory'];

/** The rules among what a module exports: alone, in lists, or in records. */
export function rulesIn(exported: unknown, deep = 0): readonly AnyRule[] {
  if (typeof exported !== 'object' || exported === null || deep > 4) return [];
  if (isRule(exported)) return [exported];
  return Object.values(exported).flatMap((one) => rulesIn(one, deep + 1));
}

function isRule(value: object): value is AnyRule {
  const { id, level, when } = value as Record<string, unknown>;
  return typeof id === 'string' && LEVELS.includes(String(level)) && typeof when === 'function';
}

/** The rule ids that a text spells out, so that a rule which no list offers is found too. */
export function idsWritten(source: SourceFile): readonly string[] {
  const found: string[] = [];
  walk(parse(source).program, (node) => {
    if (node.type !== 'ObjectExpression') return;
    const fields = new Map(
      (node.properties as readonly Node[]).map((one) => [
        String((one.key as Node | undefined)?.name),
        one.value as Node,
      ]),
    );
    const id = fields.get('id')?.value;
    if (fields.has('level') && fields.has('when') && typeof id === 'string') found.push(id);
  });
  return found;
}

/**
 * One line for each rule without sentence or source, each sentence without rule, and each id whose rules differ
 * in level or source. A rule may have several arms under one id: they say one thing for one reason.
 */
export function ruleFaults({
  rules,
  sentences,
  sourceIds,
}: {
  readonly rules: readonly AnyRule[];
  readonly sentences: readonly string[];
  readonly sourceIds: readonly string[];
}): readonly string[] {
  const ids = [...new Set(rules.map(({ id }) => id))];
  const kinds = new Set(rules.map(({ id, level, source }) => `${id}\0${level}\0${source}`));
  const namedBy = [...kinds].map((kind) => kind.split('\0')[0]);
  return [
    ...ids
      .filter((id) => namedBy.filter((other) => other === id).length > 1)
      .map((id) => `rules called ${id} differ in level or source`),
    ...ids.filter((id) => !sentences.includes(id)).map((id) => `rule ${id} has no sentence`),
    ...rules
      .filter(({ source }) => !MARKS.includes(source) && !sourceIds.includes(source))
      .map(({ id, source }) => `rule ${id} rests on "${source}", which is no source and no mark`),
    ...sentences.filter((id) => !ids.includes(id)).map((id) => `the sentence ${id} belongs to no rule`),
  ];
}
