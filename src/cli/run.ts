// One run of the command line from its arguments to what it writes and its exit code: 0 answered, 2 something
// wrong with the call or the input (nothing on stdout, one line for each problem on stderr), 1 a fault of ours.

import { task } from '#tasks/index.ts';
import { type Problem, problemLine } from '#tasks/problem.ts';
import { sayCaution, sayFault, sayWorking } from '#words/en/command.ts';
import { type Call, readCall } from './call.ts';
import { parseJson } from './json.ts';
import { readSource, type Surroundings } from './source.ts';

/** What a run writes, and how it ends. */
export interface Ended {
  readonly out: string;
  readonly err: string;
  readonly code: 0 | 2;
}

/** Answers one call. */
export async function run(args: readonly string[], surroundings: Surroundings): Promise<Ended> {
  const read = readCall(args);
  if (!read.ok) return refused(read.problems);
  if (read.call.kind === 'help') {
    const { help } = await import('./help.ts');
    return { out: await help(read.call.about, read.call.json), err: '', code: 0 };
  }
  return ask(read.call, surroundings);
}

async function ask(call: Call & { kind: 'ask' }, surroundings: Surroundings): Promise<Ended> {
  const [source, asked] = await Promise.all([readSource(call.file, surroundings), task(call.word)]);
  if (!source.ok) return refused([source.problem]);
  const parsed = parseJson(source.text);
  if (!parsed.ok) {
    return refused([
      { field: 'FILE', value: call.file, message: sayFault(parsed.fault), allowed: 'one whole JSON object' },
    ]);
  }
  const reply = asked.ask(parsed.value);
  if (!reply.ok) return refused(reply.problems);
  const workings = call.why ? reply.workings() : [];
  if (call.json) {
    return { out: asJson(call.why ? { ...reply.value, workings } : reply.value), err: '', code: 0 };
  }
  const lines = [...reply.sentences(), ...reply.value.cautions.map(sayCaution)];
  if (call.why) {
    const { cite } = await import('#tasks/lists.ts');
    for (const working of workings) lines.push('', ...sayWorking(working, cite));
  }
  return { out: `${lines.join('\n')}\n`, err: '', code: 0 };
}

function refused(problems: readonly Problem[]): Ended {
  return { out: '', err: problems.map((one) => `${oneLine(problemLine(one))}\n`).join(''), code: 2 };
}

/** Whatever a field name or a file name holds, a problem stays on its line. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ');
}

/**
 * The answer as one JSON object. Where no amount does, the engine says infinite; JSON has no word for that and
 * gets null, as it does for what is not known. A number that is none is a fault of ours.
 */
function asJson(value: object): string {
  const text = JSON.stringify(
    value,
    (key, one) => {
      if (Number.isNaN(one)) throw new Error(`"${key}" came out as no number`);
      return one === Number.POSITIVE_INFINITY || one === Number.NEGATIVE_INFINITY ? null : one;
    },
    2,
  );
  return `${text}\n`;
}
