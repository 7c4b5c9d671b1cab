// A saved file held against the record: it is chosen, read and counted, and what it lacks is named. Only a file that was read
// back counts as saved; what it holds is kept as the last file.

import { createSignal, For, Show } from 'solid-js';
import type { Kept } from '#journal/entry.ts';
import type { RefusedFile } from '#journal/file-reader.ts';
import type { LastFile } from '#journal/unsaved.ts';
import { type Checked, checkFile, type Watched } from '#store/file-in.ts';
import { type MissingSaid, sayMissing } from '#tasks/plot/missing.ts';
import { fileCheck, fileWork } from '#words/en/files.ts';
import { useRecord } from '../app/context.tsx';
import { LongWorkView, longWork } from '../parts/long-work.tsx';
import { ChooseFile } from './choose-file.tsx';
import { sayFileFailure } from './file-failure.ts';
import { RefusedLines } from './refused-lines.tsx';

/** What a file that was read back holds. */
export interface CheckedFile {
  readonly held: ReadonlySet<string>;
  readonly photos: ReadonlySet<string>;
  readonly isWhole: boolean;
}

export function CheckFile(props: {
  readonly id: string;
  /** Keeps what a file holds that was read back. */
  readonly onNote: (file: LastFile) => Promise<void>;
  readonly onChecked?: (checked: CheckedFile | undefined) => void;
}) {
  const record = useRecord();
  const work = longWork();
  const [said, setSaid] = createSignal<readonly string[]>([]);
  const [missing, setMissing] = createSignal<MissingSaid>();
  const [refused, setRefused] = createSignal<RefusedFile>();

  const check = (file: File) => {
    setSaid([]);
    setMissing(undefined);
    setRefused(undefined);
    props.onChecked?.(undefined);
    return work.run(fileWork.checking, (watched) => checked(file, record.entries(), watched), {
      stopped: (sentence) => setSaid([sentence]),
      failed: (failure) => setSaid([sayFileFailure(failure)]),
    });
  };

  async function checked(file: File, entries: readonly Kept[], watched: Watched) {
    const found = await checkFile(record.store, { file, entries, ...watched });
    if (!found.ok) {
      setRefused(found);
      setSaid([fileCheck.refused(found.refusedCount)]);
      return;
    }
    const isWhole = found.missing.length + found.missingPhotos.length === 0;
    // A file that holds nothing of this record is a file of something else.
    if (found.held.length > 0 || isWhole)
      await props.onNote({ on: record.today(), at: new Date().toISOString(), held: found.held.join('\n') });
    setMissing(sayMissing(found.missing, { plot: record.plot(), today: record.today() }));
    setSaid(sayChecked(found, isWhole));
    props.onChecked?.({ held: new Set(found.held), photos: new Set(found.photos), isWhole });
  }

  return (
    <>
      <ChooseFile id={props.id} onFile={(file) => void check(file)}>
        {fileCheck.choose}
      </ChooseFile>
      <LongWorkView work={work} id={`${props.id}-work`} />
      <div role="status" class="said" id={`${props.id}-said`}>
        <For each={said()}>{(sentence) => <p>{sentence}</p>}</For>
        <Show when={missing()?.sentences.length}>
          <ul class="plain">
            <For each={missing()?.sentences}>{(sentence) => <li>{sentence}</li>}</For>
            <Show when={missing()?.moreCount}>{(count) => <li>{fileCheck.more(count())}</li>}</Show>
          </ul>
        </Show>
      </div>
      <RefusedLines file={refused()} />
    </>
  );
}

function sayChecked(found: Extract<Checked, { ok: true }>, isWhole: boolean): readonly string[] {
  return [
    isWhole
      ? fileCheck.whole(found.held.length, found.photos.length)
      : fileCheck.lacks(found.missing.length, found.missingPhotos.length),
    ...(found.moreCount > 0 ? [fileCheck.others(found.moreCount)] : []),
  ];
}
