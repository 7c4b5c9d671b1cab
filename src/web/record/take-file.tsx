// A file taken in: all of it or nothing. A worker reads it part by part, so that no file is too large and the page answers;
// refused lines are told by their numbers.

import { createSignal, Show } from 'solid-js';
import type { RefusedFile } from '#journal/file-reader.ts';
import type { FilesMet } from '#tasks/plot/clocks.ts';
import { filesMet, fileWork } from '#words/en/files.ts';
import { files as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { hearFailure } from '../app/trouble.ts';
import { LongWorkView, longWork } from '../parts/long-work.tsx';
import { takenIn } from '../taking-in/client.ts';
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
    return work.run(fileWork.taking, (watched) => taken(file, watched), {
      stopped: setSaid,
      failed: (failure) => setSaid(sayFileFailure(failure)),
    });
  };

  async function taken(file: File, watched: Parameters<Parameters<typeof work.run>[1]>[0]) {
    const { store, device } = record;
    // A store that was taken from this page says so here: the worker would open it anew.
    await store.getFact('device');
    const found = await takenIn({ file, plotId: record.plotId(), device, nowMs: Date.now() }, watched);
    if (found.what === 'refused') {
      setRefused(found.file);
      setSaid(words.refused(found.file.refusedCount));
    } else if (found.what === 'taken') {
      // It is kept, whatever becomes of showing it.
      await record.readOn().catch(hearFailure);
      setMet(found.met);
      setSaid(words.taken(found.freshCount, found.alreadyCount, found.sealedCount));
    } else setSaid(found.what === 'several-plots' ? words.severalPlots : words.otherPlot);
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
