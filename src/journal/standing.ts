// What stands of the record once corrections and withdrawals are followed. Every entry stays readable in its line; the
// line says which version is shown. Two different corrections of one entry are both kept: the entry they correct is
// shown and a question raised. Nothing here depends on the order in which entries arrive.

import { type Entry, isSealed, isWithdrawal, type Kept, type Sealed } from './entry.ts';
import { type Body, type KindTable, kinds } from './kinds/index.ts';
import { type Answers, answersOf, type Question, settle } from './question.ts';
import { unsealed } from './read.ts';
import { canonical, contentOf } from './same.ts';
import { newestBody } from './upgrade.ts';

/** One act through its corrections. */
export interface Line {
  /** Id of the first entry, by which everything refers to the act. */
  readonly id: string;
  readonly original: Entry;
  /** The version that counts; undefined where it was withdrawn. */
  readonly shown: Entry | undefined;
  /** Every version, the original first, then as they were recorded. */
  readonly versions: readonly Entry[];
}

/** An entry without effect, kept, and why. */
export interface Waiting {
  readonly id: string;
  readonly why:
    | 'original-not-here'
    | 'corrects-in-a-circle'
    | 'other-kind'
    | 'same-id-other-content'
    | 'batch-not-here'
    | 'bed-not-here'
    | 'bottle-not-here'
    | 'lot-not-here'
    | 'thing-not-here';
  /** Id of what it waits for. */
  readonly of: string;
}

export interface Standing {
  /** Entries that nobody corrected: nearly all, and each a line of its own. */
  readonly plain: readonly Entry[];
  /** Acts that were corrected or withdrawn. */
  readonly lines: readonly Line[];
  /** From the id of any version to the id of its line. */
  readonly lineOf: ReadonlyMap<string, string>;
  readonly sealed: readonly Sealed[];
  readonly waiting: readonly Waiting[];
  readonly questions: readonly Question[];
  readonly answers: Answers;
}

/** Follows every correction of a list of entries. */
export function standing(entries: readonly Kept[], table: KindTable = kinds): Standing {
  const waiting: Waiting[] = [];
  const byId = once(entries, table, waiting);
  const sealed: Sealed[] = [];
  const originals: Entry[] = [];
  const corrections = new Map<string, Kept[]>();
  for (const kept of byId.values()) {
    if (isSealed(kept)) sealed.push(kept);
    if (kept.replaces !== undefined) push(corrections, kept.replaces, kept);
    else if (!isSealed(kept)) originals.push(kept);
  }
  for (const list of corrections.values()) list.sort(byRecording);
  const reached = new Set<string>();
  const lineOf = new Map<string, string>();
  const questions: Question[] = [];
  const follow = (original: Entry, answers: Answers): Line => {
    const tree = treeOf(original, corrections, reached, waiting);
    for (const { id } of tree) lineOf.set(id, original.id);
    const shown = resolve(tree, corrections, answers, questions);
    return {
      id: original.id,
      original,
      shown: isWithdrawal(shown) ? undefined : shown,
      versions: ordered(original, tree),
    };
  };
  const none: Answers = new Map();
  const plain: Entry[] = [];
  const corrected: Entry[] = [];
  for (const one of originals) (corrections.has(one.id) ? corrected : plain).push(one);
  const isAnswer = ({ kind }: Entry) => kind === 'question.answered';
  const answerLines = corrected.filter(isAnswer).map((one) => follow(one, none));
  const given = [...plain.filter(isAnswer), ...answerLines.flatMap(({ shown }) => shown ?? [])];
  const answers = answersOf(given.map((entry) => newestBody(entry, table) as Body<'question.answered'>));
  const lines = corrected.filter((one) => !isAnswer(one)).map((one) => follow(one, answers));
  const circles = new Map<string, boolean>();
  for (const [target, list] of corrections) {
    for (const { id } of list) {
      if (reached.has(id)) continue;
      const why = inCircle(target, byId, circles) ? 'corrects-in-a-circle' : 'original-not-here';
      waiting.push({ id, why, of: target });
    }
  }
  waiting.sort((a, b) => (a.id < b.id ? -1 : 1));
  questions.sort((a, b) => (a.key < b.key ? -1 : 1));
  sealed.sort((a, b) => (a.id < b.id ? -1 : 1));
  return { plain, lines: [...answerLines, ...lines], lineOf, sealed, waiting, questions, answers };
}

/** Each id once, sealed entries opened where that is possible now; of two contents the smaller text is taken, and it is told. */
function once(given: readonly Kept[], table: KindTable, waiting: Waiting[]): ReadonlyMap<string, Kept> {
  const byId = new Map<string, Kept>();
  const told = new Set<string>();
  for (const one of given) {
    const before = byId.get(one.id);
    if (before === one) continue;
    const kept = isSealed(one) ? unsealed(one, table) : one;
    if (before === undefined) {
      byId.set(kept.id, kept);
      continue;
    }
    const [a, b] = [contentOf(before), contentOf(kept)];
    if (a === b) continue;
    if (b < a) byId.set(kept.id, kept);
    if (!told.has(kept.id)) waiting.push({ id: kept.id, why: 'same-id-other-content', of: kept.id });
    told.add(kept.id);
  }
  return byId;
}

/** The original and every correction below it, parents first. */
function treeOf(
  original: Entry,
  corrections: ReadonlyMap<string, readonly Kept[]>,
  reached: Set<string>,
  waiting: Waiting[],
): readonly Entry[] {
  const tree: Entry[] = [original];
  for (let i = 0; i < tree.length; i++) {
    for (const kept of corrections.get(tree[i]?.id ?? '') ?? []) {
      reached.add(kept.id);
      if (isSealed(kept)) continue;
      if (kept.kind === original.kind) tree.push(kept);
      else waiting.push({ id: kept.id, why: 'other-kind', of: original.id });
    }
  }
  return tree;
}

/** The version that counts, from the last corrections up to the original. */
function resolve(
  tree: readonly Entry[],
  corrections: ReadonlyMap<string, readonly Kept[]>,
  answers: Answers,
  questions: Question[],
): Entry {
  const shownFor = new Map<string, Entry>();
  for (const entry of tree.toReversed()) {
    const below = (corrections.get(entry.id) ?? []).filter((kept) => isSealed(kept) || shownFor.has(kept.id));
    shownFor.set(entry.id, choose(entry, below, shownFor, answers, questions));
  }
  return shownFor.get(tree[0]?.id ?? '') as Entry;
}

function choose(
  entry: Entry,
  below: readonly Kept[],
  shownFor: ReadonlyMap<string, Entry>,
  answers: Answers,
  questions: Question[],
): Entry {
  const ends = below.map((kept) => shownFor.get(kept.id));
  const [first] = ends;
  if (ends.length === 0) return entry;
  const unread = ends.includes(undefined);
  if (!unread && first !== undefined && ends.every((end) => end !== undefined && saysSame(end, first))) return first;
  const kind = unread ? 'correction-not-readable' : 'two-corrections';
  const settled = settle(
    { kind, about: [entry.id, ...below.map(({ id }) => id)], values: { kind: entry.kind } },
    answers,
  );
  if ('open' in settled) {
    questions.push(settled.open);
    return entry;
  }
  const [only, ...more] = settled.stands;
  return (more.length === 0 && only !== undefined && shownFor.get(only)) || entry;
}

/** Whether two corrections come to the same act, whoever recorded them. */
function saysSame(a: Entry, b: Entry): boolean {
  return a === b || (a.on === b.on && a.v === b.v && canonical(a.body) === canonical(b.body));
}

/** Whether following what an entry replaces never ends; every entry is walked once. */
function inCircle(start: string, byId: ReadonlyMap<string, Kept>, known: Map<string, boolean>): boolean {
  const passed = new Set<string>();
  let here: string | undefined = start;
  while (here !== undefined && !passed.has(here) && !known.has(here)) {
    passed.add(here);
    here = byId.get(here)?.replaces;
  }
  const circle = here !== undefined && (known.get(here) ?? true);
  for (const id of passed) known.set(id, circle);
  return circle;
}

function ordered(original: Entry, tree: readonly Entry[]): readonly Entry[] {
  return [original, ...tree.slice(1).sort(byRecording)];
}

function byRecording(a: Kept, b: Kept): number {
  if (a.at !== b.at) return a.at < b.at ? -1 : 1;
  return a.id < b.id ? -1 : a.id === b.id ? 0 : 1;
}

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
