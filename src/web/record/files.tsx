// The file that carries the whole record: made here, chosen again to be checked, taken in on the other phone; how the browser
// keeps the record, and how it is forgotten.

import { createMemo, createSignal, Show } from 'solid-js';
import { fileDueDays, unsavedElsewhere } from '#journal/unsaved.ts';
import { sayDate } from '#words/en/app.ts';
import { fileCheck, fileWork, unsaved } from '#words/en/files.ts';
import { files as words } from '#words/en/record.ts';
import { fileName } from '#words/file-name.ts';
import { useRecord } from '../app/context.tsx';
import { LongWorkView, longWork } from '../parts/long-work.tsx';
import { CheckFile } from './check-file.tsx';
import { sayFileFailure } from './file-failure.ts';
import { Forget } from './forget.tsx';
import { Keeping } from './keeping.tsx';
import { useLastFile } from './last-file.ts';
import { makeFile } from './make-file.ts';
import { TakeFile } from './take-file.tsx';

export function Files() {
  const record = useRecord();
  const { lastFile, note } = useLastFile();
  const work = longWork();
  const [said, setSaid] = createSignal('');
  const alone = createMemo(() => {
    // The instant moves on with the minute that the record shows.
    record.now();
    const dueDays = fileDueDays(record.store.places());
    return unsavedElsewhere(record.entries(), { file: lastFile(), nowMs: Date.now(), dueDays });
  });

  const make = () =>
    work.run(
      fileWork.making,
      async (watched) => {
        const name = fileName({ plot: record.plot().facts.name ?? '', device: record.device, now: record.now() });
        setSaid('');
        await makeFile({ store: record.store, entries: record.entries(), name, device: record.device, ...watched });
        setSaid(fileWork.handed(name));
      },
      { stopped: setSaid, failed: (failure) => setSaid(sayFileFailure(failure, fileWork.unmade)) },
    );

  return (
    <section aria-labelledby="record-files" class="files">
      <h2 id="record-files">{words.heading}</h2>
      <Show when={alone().isDue}>
        <p class="wants" id="unsaved">
          {sayUnsaved(alone())}
        </p>
      </Show>
      <h3>{words.move}</h3>
      <p class="note">{words.moveNote}</p>
      <button type="button" class="block" id="make-file" onClick={() => void make()}>
        {words.make}
      </button>
      <LongWorkView work={work} id="making" />
      <p role="status" class="said" id="made-said">
        {said()}
      </p>
      <h3>{fileCheck.heading}</h3>
      <p class="note">{fileCheck.note}</p>
      <p id="last-file">{lastFile() ? words.lastFile(sayDate(lastFile()?.on ?? '', record.today())) : words.noFile}</p>
      <CheckFile id="check-file" onNote={note} />
      <TakeFile onMake={() => void make()} />
      <Keeping />
      <Forget onNote={note} />
    </section>
  );
}

function sayUnsaved({ count, days }: ReturnType<typeof unsavedElsewhere>): string {
  return days === undefined ? unsaved.unknown(count) : unsaved.since(count, days);
}
