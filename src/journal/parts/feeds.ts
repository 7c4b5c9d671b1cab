// Pours on beds, and which of them may be one act told twice. Two devices that fed one bed within a day raise a
// question; until it is answered the smaller telling counts only at the high end, so that every sum of pours is a range.
// Both entries stay. What the pours brought is the ledger's work, elsewhere.

import type { Range } from '#engine/quantity/range.ts';
import type { ActOf } from '../act.ts';
import { maybeWithinADay } from '../moment.ts';
import { type Answers, type Question, settle } from '../question.ts';

/** Whether a pour counts: yes · maybe (perhaps told twice) · no (answered: it was). */
export type Counts = 'yes' | 'maybe' | 'no';

export interface Feed {
  readonly id: string;
  readonly act: ActOf<'bed.fed'>;
  readonly pouredL: number;
  /** Litres of concentrate in it. */
  readonly concentrateL: number;
  readonly counts: Counts;
}

/** Pours of one device on one bed on one date: what one person tells of a round. */
interface Telling {
  readonly device: string;
  readonly acts: ActOf<'bed.fed'>[];
}

/** Every pour with whether it counts. */
export function feedsOf(acts: readonly ActOf<'bed.fed'>[], answers: Answers, questions: Question[]): readonly Feed[] {
  const doubt = new Map<string, Counts>();
  for (const tellings of tellingsByBed(acts).values()) {
    for (const [one, other] of twins(tellings)) weigh(one, other, answers, questions, doubt);
  }
  return acts.map((act) => {
    const concentrateL = act.body.from.reduce((sum, { volume }) => sum + volume.volumeL, 0);
    return { id: act.id, act, pouredL: act.body.poured.volumeL, concentrateL, counts: doubt.get(act.id) ?? 'yes' };
  });
}

/** A sum over pours: the least if every doubtful one was told twice, the most if none was, midway between as likely. @arithmetic */
export function sumOfFeeds(feeds: readonly Feed[], of: (feed: Feed) => number): Range {
  let low = 0;
  let maybe = 0;
  for (const feed of feeds) {
    if (feed.counts === 'yes') low += of(feed);
    else if (feed.counts === 'maybe') maybe += of(feed);
  }
  return { low, likely: low + maybe / 2, high: low + maybe };
}

function tellingsByBed(acts: readonly ActOf<'bed.fed'>[]): ReadonlyMap<string, readonly Telling[]> {
  const beds = new Map<string, Map<string, Telling>>();
  for (const act of acts) {
    const bed = beds.get(act.body.bed) ?? new Map<string, Telling>();
    beds.set(act.body.bed, bed);
    const key = `${act.when.dateDay} ${act.device}`;
    const telling = bed.get(key);
    if (telling === undefined) bed.set(key, { device: act.device, acts: [act] });
    else telling.acts.push(act);
  }
  return new Map([...beds].map(([bed, tellings]) => [bed, [...tellings.values()]]));
}

/** Tellings compared with each; a bed that more devices fed within two dates is no bed but somebody's mischief. */
const MOST_NEIGHBOURS = 20;

/** Pairs of tellings by different devices that may lie within a day; tellings come in order of their dates. */
function* twins(tellings: readonly Telling[]): Generator<readonly [Telling, Telling]> {
  for (let i = 0; i < tellings.length; i++) {
    for (let j = i + 1; j < tellings.length && j <= i + MOST_NEIGHBOURS; j++) {
      const [one, other] = [tellings[i], tellings[j]];
      const [a, b] = [one?.acts[0], other?.acts[0]];
      if (one === undefined || other === undefined || a === undefined || b === undefined) continue;
      if (b.when.dateDay - a.when.dateDay > 1) break;
      if (one.device === other.device) continue;
      if (one.acts.some((x) => other.acts.some((y) => maybeWithinADay(x.when, y.when)))) yield [one, other];
    }
  }
}

function weigh(
  one: Telling,
  other: Telling,
  answers: Answers,
  questions: Question[],
  doubt: Map<string, Counts>,
): void {
  const about = [...one.acts, ...other.acts].map(({ id }) => id);
  const [a, b] = [litres(one), litres(other)];
  const bed = one.acts[0]?.body.bed ?? '';
  const settled = settle({ kind: 'twin-feeds', about, values: { bed, oneL: a, otherL: b } }, answers);
  if ('open' in settled) {
    questions.push(settled.open);
    const smaller = a < b || (a === b && (one.acts[0]?.id ?? '') > (other.acts[0]?.id ?? '')) ? one : other;
    for (const { id } of smaller.acts) if (!doubt.has(id)) doubt.set(id, 'maybe');
    return;
  }
  for (const id of about) if (!settled.stands.includes(id)) doubt.set(id, 'no');
}

function litres({ acts }: Telling): number {
  return acts.reduce((sum, { body }) => sum + body.poured.volumeL, 0);
}
