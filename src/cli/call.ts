// How the command line was called: one word, at most one file, and flags. Everything wrong with it is told
// at once, in the same wording as a wrong field of an input.

import { type Word, wordNamed, words } from '#tasks/index.ts';
import type { Problem } from '#tasks/problem.ts';

/** One call, read. */
export type Call =
  | { readonly kind: 'ask'; readonly word: Word; readonly file: string; readonly json: boolean; readonly why: boolean }
  | { readonly kind: 'help'; readonly about?: Word | List; readonly json: boolean };

/** Lists that `help` can print. */
export const lists = ['materials', 'sugars'] as const;
export type List = (typeof lists)[number];

const FLAGS = ['--json', '--why'] as const;
/** Standard input, as a file name. */
export const STDIN = '-';

/** Reads the words after `tilthwright`. */
export function readCall(
  args: readonly string[],
): { readonly ok: true; readonly call: Call } | { readonly ok: false; readonly problems: readonly Problem[] } {
  if (args.includes('--help') || args.includes('-h')) {
    return readCall(['help', ...args.filter((one) => one !== '--help' && one !== '-h' && one !== 'help')]);
  }
  const flags = args.filter((one) => one.startsWith('-') && one !== STDIN);
  const [word, ...rest] = args.filter((one) => !flags.includes(one));
  const allowed = word === 'help' ? ['--json'] : FLAGS;
  const problems: Problem[] = flags
    .filter((flag) => !(allowed as readonly string[]).includes(flag))
    .map((flag) => problem('flag', flag, 'is not known here', allowed.join(', ')));
  const most = 1;
  if (rest.length > most) {
    problems.push(
      problem('arguments', rest.slice(most).join(' '), 'are too many', word === 'help' ? 'one word' : 'one file'),
    );
  }
  const json = flags.includes('--json');
  const [first] = rest;

  if (word === 'help') {
    const about = first === undefined ? undefined : isList(first) ? first : wordNamed(first);
    if (first !== undefined && about === undefined) {
      problems.push(problem('word', first, 'has no help page', [...words, ...lists].join(', ')));
    }
    if (problems.length > 0) return { ok: false, problems };
    return { ok: true, call: { kind: 'help', json, ...(about === undefined ? {} : { about }) } };
  }
  const asked = word === undefined ? undefined : wordNamed(word);
  if (asked === undefined) {
    problems.push(problem('word', word, 'is not a word known here', [...words, 'help'].join(', ')));
    return { ok: false, problems };
  }
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, call: { kind: 'ask', word: asked, file: first ?? STDIN, json, why: flags.includes('--why') } };
}

function isList(text: string): text is List {
  return (lists as readonly string[]).includes(text);
}

function problem(field: string, value: string | undefined, message: string, allowed: string): Problem {
  return { field, value, message: value === undefined ? 'is missing' : message, allowed };
}
