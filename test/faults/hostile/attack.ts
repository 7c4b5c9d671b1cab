// Asks a word whatever the maker makes, the whole way from text to what is written, and counts what must not be.

import { answer, type Ended } from '#cli/run.ts';
import { course } from '#engine/souring/model/course.ts';
import { likelyParameters } from '#engine/souring/model/parameters.ts';
import { type Answer, type Reply, type Task, task, type Word } from '#tasks/index.ts';
import { cite } from '#tasks/lists.ts';
import { explainSour, openSour, type SourOptions, type SourResult, sour, sourSchema } from '#tasks/sour.ts';
import { saySour } from '#words/en/sour.ts';
import { figureFaults } from '../../contract/figures.ts';
import { makerOf } from './input.ts';
import { type Counted, counting } from './reads.ts';

/** What came of the inputs of one word. */
export interface Attacked {
  readonly word: Word;
  readonly quick: boolean;
  readonly inputs: number;
  readonly answered: number;
  readonly refused: number;
  /** The most reads of the input for each value in it and field of the word. */
  readonly mostReads: number;
  /** The most draws of an answer, and the most steps for each day of a draw. */
  readonly mostDraws: number;
  readonly mostStepsPerDay: number;
  readonly faults: readonly Fault[];
  readonly slowest: readonly Slow[];
}

export interface Fault {
  readonly kind: 'throws' | 'figure' | 'message' | 'written' | 'work';
  readonly index: number;
  readonly what: string;
}

export interface Slow {
  readonly word: Word;
  readonly index: number;
  readonly cpuMs: number;
  readonly bytes: number;
}

const SLOWEST = 10;
/** Every so many inputs the reads of the input are counted. */
const COUNTED_EVERY = 10;

/** Which inputs are tried. Quick: a forecast with few draws, and no new ones for its looks. */
export interface Range {
  readonly word: Word;
  readonly from: number;
  readonly to: number;
  readonly quick: boolean;
  /** Asked in place of the word's own task, to see that a fault would be seen. */
  readonly planted?: (asked: Task) => Task;
}

export async function attack({ word, from, to, quick, planted = (asked) => asked }: Range): Promise<Attacked> {
  const asked = planted(word === 'sour' && quick ? quickSour : await task(word));
  const maker = makerOf(word, asked);
  const faults: Fault[] = [];
  const slow: Slow[] = [];
  let answered = 0;
  let mostReads = 0;
  let mostDraws = 0;
  let mostStepsPerDay = 0;
  for (let index = from; index < to; index++) {
    const text = maker.text(index);
    const begun = process.cpuUsage();
    const seen = watched(asked, index % COUNTED_EVERY === 0);
    const fault = (kind: Fault['kind'], what: string) => faults.push({ kind, index, what });
    try {
      const mode = { file: 'input.json', json: index % 2 === 0, cite: index % 8 < 2 ? cite : undefined };
      const ended = answer(seen.task, text, mode);
      if (seen.reply()?.ok === true) answered += 1;
      for (const what of writtenFaults(ended, mode.json, text)) fault('written', what);
      for (const what of messageFaults(ended)) fault('message', what);
      for (const what of figuresOf(seen.reply(), mode.cite !== undefined)) fault('figure', what);
    } catch (error) {
      fault('throws', error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
    const { user, system } = process.cpuUsage(begun);
    keepSlowest(slow, { word, index, cpuMs: (user + system) / 1000, bytes: text.length });
    const reads = seen.counted()?.readsForEach ?? 0;
    if (reads > mostReads) mostReads = reads;
    if (reads > MOST_READS) fault('work', `${reads} reads for each value and field`);
    if (word === 'sour' && index % COUNTED_EVERY === 0) {
      const { draws, stepsPerDay } = forecastWork(text, seen.reply());
      mostDraws = Math.max(mostDraws, draws);
      mostStepsPerDay = Math.max(mostStepsPerDay, stepsPerDay);
      if (draws > MOST_DRAWS || stepsPerDay > MOST_STEPS_A_DAY)
        fault('work', `${draws} draws, ${stepsPerDay} steps a day`);
    }
  }
  const inputs = to - from;
  const counts = { inputs, answered, refused: inputs - answered };
  return { word, quick, ...counts, mostReads, mostDraws, mostStepsPerDay, faults, slowest: slow };
}

/** As many as may be asked, and three stages of 300 that the looks may make. */
const MOST_DRAWS = 5900;
/** No step is shorter than 0.2 hours but the last before a point that is kept, of which there are four a day. */
const MOST_STEPS_A_DAY = 24 / 0.2 + 4;

/** Draws of an answer, and steps of the likely run for each of its days. */
function forecastWork(
  text: string,
  reply: Reply | undefined,
): { readonly draws: number; readonly stepsPerDay: number } {
  if (reply?.ok !== true) return { draws: 0, stepsPerDay: 0 };
  const opened = openSour(JSON.parse(text));
  if (!opened.ok) return { draws: 0, stepsPerDay: 0 };
  const { known, runDays } = opened.opened;
  const { stepsCount } = course(known.batch, likelyParameters, runDays);
  return { draws: (reply.value as SourResult).draws, stepsPerDay: stepsCount / runDays };
}

const FEW: SourOptions = { draws: 2, quick: true };

/** The word `sour` with few draws: the same reading, sentences and workings. */
const quickSour: Task = {
  schema: sourSchema,
  ask(input) {
    const ran = sour(input, FEW);
    if (!ran.ok) return ran;
    const { value } = ran;
    return { ok: true, value, sentences: () => saySour(value), workings: () => explainSour(input, FEW) };
  },
};

/** Reads of the input for each value in it and each field of the word: two readings of all, and each choice of a union. */
const MOST_READS = 40;

function watched(asked: Task, isCounted: boolean) {
  let reply: Reply | undefined;
  let counted: Counted | undefined;
  const ask = (input: unknown): Reply => {
    if (isCounted) counted = counting(input, asked.schema);
    reply = asked.ask(counted === undefined ? input : counted.input);
    return reply;
  };
  return { task: { schema: asked.schema, ask }, reply: () => reply, counted: () => counted };
}

function figuresOf(reply: Reply | undefined, withWorkings: boolean): readonly string[] {
  if (reply?.ok !== true) return [];
  return figureFaults(reply as Answer, withWorkings ? (reply as Answer).workings() : []);
}

const HOLES = /undefined|NaN|Infinity|\[object/;
const RAW = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u;

/** An answer on stdout alone or refusals on stderr alone, without a hidden sign, and JSON that is JSON. */
function writtenFaults({ out, err, code }: Ended, json: boolean, text: string): readonly string[] {
  const found: string[] = [];
  if ((code === 0) !== (out !== '' && err === ''))
    found.push(`code ${code} with ${out.length} and ${err.length} signs`);
  if (RAW.test(out.replaceAll('\n', '')) || RAW.test(err.replaceAll('\n', ''))) found.push('a hidden sign');
  if (json && code === 0) JSON.parse(out);
  // A name in the input may hold such a word itself.
  else if (HOLES.test(out) && !HOLES.test(text)) found.push(`a hole: ${HOLES.exec(out)?.[0]}`);
  return found;
}

const LINE = /^.+: .+; allowed: .+$/;
const VALUE = /\(got .+\); allowed: |: is missing/;
const EMPTY = /Invalid|see help for this word/;

/** Refusals that lack field, value or what is allowed. */
function messageFaults({ err, code }: Ended): readonly string[] {
  if (code === 0) return [];
  const lines = err.split('\n').slice(0, -1);
  if (lines.length === 0) return ['a refusal without a line'];
  return lines.filter((line) => !LINE.test(line) || !VALUE.test(line) || EMPTY.test(line.replace(/\(got .+?\);/, '')));
}

function keepSlowest(slow: Slow[], one: Slow): void {
  const last = slow.at(-1);
  if (slow.length === SLOWEST && last !== undefined && last.cpuMs >= one.cpuMs) return;
  slow.push(one);
  slow.sort((a, b) => b.cpuMs - a.cpuMs);
  if (slow.length > SLOWEST) slow.pop();
}
