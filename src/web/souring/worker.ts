// The worker that runs draws of a batch, off the page's own thread: in slices, so that a newer question stops an older
// one; a first band after 200 draws, the whole after 1,000. Runs are kept by the key of the opened batch, so that a new
// look only weighs them anew.

import { readTaught, taughtByOne } from '#tasks/plot/lessons.ts';
import { answerSour, DRAWS, explainAnswer, type OpenedSour, openSour, runSour, type SourResult } from '#tasks/sour.ts';
import type { FromWorker, SourJob, ToWorker } from './messages.ts';

type Members = ReturnType<typeof runSour>;
type Belief = ReturnType<typeof taughtByOne>;

const FIRST_DRAWS = 200;
const SLICE_DRAWS = 50;
/** Batches whose runs are kept: one of 1,000 draws takes some 30 MB. */
const KEPT_BATCHES = 2;

const page = globalThis as unknown as {
  postMessage: (message: FromWorker) => void;
  onmessage: ((event: { readonly data: ToWorker }) => void) | null;
};

/** Newest job of each place. */
const newest = new Map<string, number>();
/** Runs by key, the one used last at the end. */
const runs = new Map<string, Members[number][]>();
/** What finished batches taught, by the questions that led there. */
const beliefs = new Map<string, Belief>();
/** Last whole answer of each place, for its workings. */
const answers = new Map<string, { readonly opened: OpenedSour; readonly result: SourResult }>();

page.onmessage = ({ data }) => {
  if (data.kind === 'explain') {
    const answer = answers.get(data.place);
    const workings = answer === undefined ? [] : explainAnswer(answer.opened, answer.result);
    page.postMessage({ kind: 'workings', place: data.place, number: data.number, workings });
    return;
  }
  const { place, job, number } = data;
  newest.set(place, number);
  answers.delete(place);
  if (job !== undefined) {
    work(place, number, job).catch((error: unknown) => {
      page.postMessage({ kind: 'failed', place, number, why: String(error) });
    });
  }
};

async function work(place: string, number: number, job: SourJob): Promise<void> {
  const isStale = () => newest.get(place) !== number;
  const asked = openSour(job.ask);
  if (!asked.ok) {
    const why = asked.problems.map(({ field, message }) => `${field} ${message}`).join('; ');
    page.postMessage({ kind: 'failed', place, number, why });
    return;
  }
  const { opened } = asked;
  const members = runsOf(opened.key);
  let drawnMs = 0;
  const answer = (isWhole: boolean, prior: Belief) => {
    const begun = performance.now();
    const result = answerSour(opened, members.slice(), opened.input.looks, prior, { quick: !isWhole });
    const spent = { drawnMs, weighedMs: performance.now() - begun };
    if (isWhole) answers.set(place, { opened, result });
    const learned = prior === undefined ? undefined : readTaught(prior);
    const draws = members.length;
    page.postMessage({ kind: 'answer', place, number, draws, isWhole, result, taught: learned, spent });
  };
  const runTo = async (goal: number) => {
    while (members.length < goal && !isStale()) {
      const begun = performance.now();
      members.push(...runSour(opened, members.length, Math.min(SLICE_DRAWS, goal - members.length)));
      drawnMs += performance.now() - begun;
      await breath();
    }
  };
  // Runs that are there already are weighed anew at once; what is quick stands until the whole is there. The first
  // band does not wait for the finished batches, unless what they taught is known.
  await runTo(FIRST_DRAWS);
  if (isStale()) return;
  answer(false, beliefs.get(keyOf(job.lessons)));
  await breath();
  const prior = await taught(job.lessons, isStale);
  await runTo(DRAWS);
  if (!isStale()) answer(true, prior);
}

/** The runs kept under a key, made the newest; the oldest others are let go. */
function runsOf(key: string): Members[number][] {
  const members = runs.get(key) ?? [];
  runs.delete(key);
  runs.set(key, members);
  for (const old of runs.keys()) if (runs.size > KEPT_BATCHES) runs.delete(old);
  return members;
}

/** What the finished batches taught, each step kept. */
async function taught(lessons: readonly unknown[], isStale: () => boolean): Promise<Belief> {
  let belief: Belief;
  for (const [i, ask] of lessons.entries()) {
    if (isStale()) return belief;
    const key = keyOf(lessons.slice(0, i + 1));
    if (!beliefs.has(key)) {
      beliefs.set(key, taughtByOne(ask, belief) ?? belief);
      await breath();
    }
    belief = beliefs.get(key);
  }
  return belief;
}

const keyOf = (lessons: readonly unknown[]) => JSON.stringify(lessons);

/** Lets messages in between two slices. */
function breath(): Promise<void> {
  return new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      channel.port1.close();
      resolve();
    };
    channel.port2.postMessage(undefined);
  });
}
