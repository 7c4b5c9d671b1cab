// A file taken into a store, from the first line to the last write: read against what the store holds, refused where it is
// of another plot, kept in one act. It runs in a worker, with a store of its own on the same places, so that the page
// answers; the page's store hears of it as of another tab.

import type { RefusedFile, WholeFile } from '#journal/file-reader.ts';
import { takeInFile, type Watched } from '#store/file-in.ts';
import type { Store } from '#store/store.ts';
import { type FilesMet, filesThatMet } from '#tasks/plot/clocks.ts';

/** Of the whole bar: what is read, and what is written then; the rest is the page's, which shows it. @practice about as long each */
const READ_SHARE = 0.4;
const KEPT_SHARE = 0.8;

/** What is to be taken in, and by whom. */
export interface TakeAsk {
  readonly file: Blob;
  /** The plot this phone shows, the phone, and the instant of its clock. */
  readonly plotId: string;
  readonly device: string;
  readonly nowMs: number;
}

/** What became of a file: all of it is kept, or nothing. */
export type Taken =
  | { readonly what: 'refused'; readonly file: RefusedFile }
  | { readonly what: 'other-plot' | 'several-plots' }
  | {
      readonly what: 'taken';
      readonly freshCount: number;
      readonly alreadyCount: number;
      readonly sealedCount: number;
      readonly met: FilesMet;
    };

/** @throws StoreFailure; what the signal was aborted with; what reading the file throws. Nothing stays of the file then */
export async function takeIn(store: Store, ask: TakeAsk, { progress, signal }: Required<Watched>): Promise<Taken> {
  const entries = await store.all();
  const here = new Map(entries.map((kept) => [kept.id, kept]));
  const read = await takeInFile(store, {
    file: ask.file,
    here: (id) => here.get(id),
    progress: (fraction) => progress(fraction * READ_SHARE),
    signal,
  });
  if (!read.ok) return { what: 'refused', file: plain(read) };
  // Asked again: the page answers meanwhile, and the first act of an empty record may have been kept.
  const isEmpty = entries.length === 0 && (await store.all()).length === 0;
  const what = ofAnotherPlot(read, { plotId: ask.plotId, isEmpty });
  if (what !== undefined) {
    await read.drop();
    return { what };
  }
  await read.keep();
  progress(KEPT_SHARE);
  const { fresh, alreadyCount, sealedCount } = read;
  const met = filesThatMet({ ...ask, entries: [...entries, ...fresh], file: read });
  return { what: 'taken', freshCount: fresh.length, alreadyCount, sealedCount, met };
}

/** A device keeps one plot; one without entries takes over the plot of the file. */
function ofAnotherPlot(
  { header, fresh }: WholeFile,
  { plotId, isEmpty }: { readonly plotId: string; readonly isEmpty: boolean },
): 'other-plot' | 'several-plots' | undefined {
  const plots = [...new Set([...header.plots, ...fresh.map(({ plot }) => plot)])];
  if (plots.length === 0 || plots.includes(plotId) || (isEmpty && plots.length === 1)) return undefined;
  return isEmpty ? 'several-plots' : 'other-plot';
}

/** Without the values that were refused: nobody shows them, and one may be nested deeper than can be copied. */
function plain({ ok, refused, refusedCount }: RefusedFile): RefusedFile {
  const bare = refused.map(({ line, problems }) => ({
    line,
    problems: problems.map((problem) => ({ ...problem, value: undefined })),
  }));
  return { ok, refused: bare, refusedCount };
}
