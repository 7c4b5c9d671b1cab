// A file taken in: all of it or nothing. Read part by part, so that no file is too large; refused lines are told by their
// numbers.

import { createSignal, Show } from 'solid-js';
import type { RefusedFile, WholeFile } from '#journal/file-reader.ts';
import { takeInFile } from '#store/file-in.ts';
import { type FilesMet, filesThatMet } from '#tasks/plot/clocks.ts';
import { filesMet, fileWork } from '#words/en/files.ts';
import { files as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';

import { LongWorkView, longWork } from '../parts/long-work.tsx';
import { ChooseFile } from './choose-file.tsx';
import { sayFileFailure } from './file-failure.ts';
import { RefusedLines } from './refused-lines.tsx';

export function TakeFile(props: { readonly onMake: () => void }) {
  const record = useRecord();
  const work = longWork();
  const [said, setSaid] = createSignal('');
  const [met, setMet] = createSignal<FilesMet>();
  const [refused, setRefused] = createSignal<RefusedFile>();

  const take = (file: File) => {
    setRefused(undefined);
    setSaid('');
    setMet(undefined);
    return work.run(fileWork.taking, (watched) => takenIn(file, watched), {
      stopped: setSaid,
      failed: (failure) => setSaid(sayFileFailure(failure)),
    });
  };

  async function takenIn(file: File, watched: Parameters<Parameters<typeof work.run>[1]>[0]) {
    const here = new Map(record.entries().map((kept) => [kept.id, kept]));
    const read = await takeInFile(record.store, { file, here: (id) => here.get(id), ...watched });
    if (!read.ok) {
      setRefused(read);
      setSaid(words.refused(read.refusedCount));
      return;
    }
    const trouble = ofAnotherPlot(read);
    if (trouble !== undefined) {
      await read.drop();
      setSaid(trouble);
      return;
    }
    await read.keep();
    await record.hear(read.fresh);
    setMet(filesThatMet({ entries: record.entries(), file: read, device: record.device, nowMs: Date.now() }));
    setSaid(words.taken(read.fresh.length, read.alreadyCount, read.sealedCount));
  }

  /** A device keeps one plot; one without entries takes over the plot of the file. */
  function ofAnotherPlot({ header, fresh }: WholeFile): string | undefined {
    const plots = [...new Set([...header.plots, ...fresh.map(({ plot }) => plot)])];
    const isEmpty = record.entries().length === 0;
    if (plots.length === 0 || plots.includes(record.plotId()) || (isEmpty && plots.length === 1)) return undefined;
    return isEmpty ? words.severalPlots : words.otherPlot;
  }

  return (
    <>
      <h3>{words.take}</h3>
      <p class="note">{words.takeNote}</p>
      <ChooseFile id="take-file" onFile={(file) => void take(file)}>
        {words.choose}
      </ChooseFile>
      <LongWorkView work={work} id="taking" />
      <p role="status" class="said" id="file-said">
        {said()}
      </p>
      <Show when={met()?.aheadMinutes}>{(minutes) => <p class="wants">{filesMet.ahead(minutes())}</p>}</Show>
      <Show when={met()?.lacksCount}>
        {(count) => (
          <>
            <p>{filesMet.lacks(count())}</p>
            <button type="button" class="block" onClick={props.onMake}>
              {filesMet.makeFor}
            </button>
          </>
        )}
      </Show>
      <RefusedLines file={refused()} />
    </>
  );
}
