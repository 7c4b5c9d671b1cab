// Odd files: chosen for taking in, each beside a record that holds something. Each is refused with its line and a reason and
// leaves nothing, or is taken in whole; so is the good file cut at every place, and with bytes changed by chance.

import fc from 'fast-check';
import { takeInFile } from '#store/file-in.ts';
import { memoryStore } from '#store/memory.ts';
import type { Store } from '#store/store.ts';
import { goodFile, here, type OddFile, oddFiles } from '../../test/faults/odd-files.ts';
import type { Found, Options } from '../../test/faults/piece.ts';

const CHANGED = 5000;
/** The same files each time, so that the counts can be compared. */
const SEED = 20_261_130;

type Answer = 'refused' | 'whole' | 'wrong';

export async function run({ scale }: Options): Promise<Found> {
  const aside: string[] = [];
  const odd = { refused: 0, whole: 0, wrong: 0 };
  for (const one of oddFiles) odd[await answerTo(one, aside)]++;
  const cuts = { refused: 0, whole: 0, wrong: 0 };
  const step = Math.max(1, Math.round(1 / scale));
  // Without its last line end the file is whole.
  for (let size = 0; size < goodFile.length - 1; size += step)
    cuts[await answerTo({ name: `cut at ${size}`, file: goodFile.slice(0, size), refused: [0, /./] }, aside)]++;
  const changed = { refused: 0, whole: 0, wrong: 0 };
  const numRuns = Math.max(1, Math.round(CHANGED * scale));
  for (const file of fc.sample(changedFile, { seed: SEED, numRuns }))
    changed[await answerTo({ name: 'changed', file }, aside)]++;
  return {
    title: 'Odd files',
    lines: [
      `${oddFiles.length} odd files: ${odd.refused} refused as a whole with the line and the reason, ${odd.whole} taken in whole, ${odd.wrong} answered otherwise.`,
      `${sum(cuts)} files cut short: ${cuts.refused} refused, ${cuts.whole + cuts.wrong} not.`,
      `${sum(changed)} files with bytes changed by chance: ${changed.refused} refused, ${changed.whole} still whole and taken in, ${changed.wrong} taken in half or thrown over.`,
    ],
    failed: odd.wrong + cuts.whole + cuts.wrong + changed.wrong,
    ...(aside.length > 0 && { aside }),
  };
}

const sum = (of: Readonly<Record<Answer, number>>) => of.refused + of.whole + of.wrong;

/** The good file with up to three bytes put in the place of others. */
const changedFile = fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 3 }).map((changes) => {
  const bytes = new TextEncoder().encode(goodFile);
  for (const [place, byte] of changes) bytes[place % bytes.length] = byte;
  return bytes;
});

/** What becomes of a file; what is wrong is told. Without a word on refusing, both answers are right where they are clean. */
async function answerTo(asked: OddFile, aside: string[]): Promise<Answer> {
  const store = memoryStore();
  await store.append([here.entry]);
  await store.putPhoto(here.photo);
  const before = await heldBy(store);
  const wrong = (what: string): Answer => {
    aside.push(`${asked.name}: ${what}`);
    return 'wrong';
  };
  try {
    const file = asked.file instanceof Blob ? asked.file : new Blob([asked.file]);
    const read = await takeInFile(store, { file, here: (id) => (id === here.entry.id ? here.entry : undefined) });
    if (read.ok) {
      const added = await read.keep();
      if (added !== read.header.count || (await store.photoIds()).length !== 1 + read.header.photos)
        return wrong(`taken in, but ${added} entries of ${read.header.count}`);
      return asked.refused === undefined ? 'whole' : wrong('taken in');
    }
    if ((await heldBy(store)) !== before) return wrong('refused, and something stays');
    const [first] = read.refused;
    const said =
      first?.problems.map(({ field, message, allowed }) => `${field} ${message}; ${allowed}`).join('\n') ?? '';
    if (first === undefined || said === '') return wrong('refused without a line or a reason');
    const [line, reason] = asked.refused ?? [0, /./];
    if ((line > 0 && first.line !== line) || !reason.test(said)) return wrong(`refused at ${first.line}: ${said}`);
    if (asked.refused === undefined && asked.name !== 'changed') return wrong(`refused at ${first.line}: ${said}`);
    return 'refused';
  } catch (fault) {
    return wrong(String(fault));
  }
}

async function heldBy(store: Store): Promise<string> {
  return JSON.stringify([await store.all(), await store.photoIds()]);
}
