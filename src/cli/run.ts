// One run of the command line from its arguments to what it writes and its exit code: 0 answered, 2 something
// wrong with the call or the input (nothing on stdout, one line for each problem on stderr), 1 a fault of ours.

import { type Task, task } from '#tasks/index.ts';
import { type Problem, problemLine } from '#tasks/problem.ts';
import { sayCaution, sayFault, sayWorking } from '#words/en/command.ts';
import { type Call, readCall } from './call.ts';
import { parseJson } from './json.ts';
import { readSource, type Surroundings } from './source.ts';
import { visible, visibleJson } from './visible.ts';

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

async function ask(call: Asked, surroundings: Surroundings): Promise<Ended> {
  const [source, asked] = await Promise.all([readSource(call.file, surroundings), task(call.word)]);
  if (!source.ok) return refused([source.problem]);
  const cite = call.why ? (await import('#tasks/lists.ts')).cite : undefined;
  return answer(asked, source.text, { ...call, cite });
}

type Asked = Call & { readonly kind: 'ask' };

/** The answer to one text: what is written, and how the run ends. Citing a source is asked for with the workings alone. */
export function answer(
  asked: Task,
  text: string,
  call: Pick<Asked, 'file' | 'json'> & { readonly cite: ((origin: string) => string) | undefined },
): Ended {
  const parsed = parseJson(text);
  if (!parsed.ok) {
    return refused([
      { field: 'FILE', value: call.file, message: sayFault(parsed.fault), allowed: 'one whole JSON object' },
    ]);
  }
  const reply = asked.ask(parsed.value);
  if (!reply.ok) return refused(reply.problems);
  const { cite } = call;
  const workings = cite === undefined ? [] : reply.workings();
  if (call.json) {
    return { out: asJson(cite === undefined ? reply.value : { ...reply.value, workings }), err: '', code: 0 };
  }
  const lines = [...reply.sentences(), ...reply.value.cautions.map(sayCaution)];
  if (cite !== undefined) for (const working of workings) lines.push('', ...sayWorking(working, cite));
  return { out: lines.map((line) => `${visible(line)}\n`).join(''), err: '', code: 0 };
}

function refused(problems: readonly Problem[]): Ended {
  return { out: '', err: problems.map((one) => `${visible(problemLine(one))}\n`).join(''), code: 2 };
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
  return `${visibleJson(text)}\n`;
}
