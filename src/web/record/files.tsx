// The file that carries the whole record: made here, taken in on the other phone; and how the browser keeps the record.

import { createSignal, Show } from 'solid-js';
import { savedElsewhere } from '#tasks/plot/record.ts';
import { sayDate } from '#words/en/app.ts';
import { fileWork } from '#words/en/files.ts';
import { files as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';
import { LongWorkView, longWork } from '../parts/long-work.tsx';
import { Keeping } from './keeping.tsx';
import { useLastFile } from './last-file.ts';
import { makeFile } from './make-file.ts';
import { TakeFile } from './take-file.tsx';

export function Files() {
  const record = useRecord();
  const { lastFile, note } = useLastFile();
  const work = longWork();
  const [said, setSaid] = createSignal('');
  const saved = () => savedElsewhere(record.entries(), { lastFileAt: lastFile()?.at, nowAt: new Date().toISOString() });

  const make = () =>
    work.run(
      fileWork.making,
      async (watched) => {
        const name = words.fileName(record.plot().facts.name ?? '', record.today());
        await makeFile({ store: record.store, entries: record.entries(), name, ...watched });
        await note({ on: record.today(), at: new Date().toISOString() });
        setSaid(words.made(name));
      },
      { stopped: setSaid, failed: (failure) => setSaid(sayFailure(failure)) },
    );

  return (
    <section aria-labelledby="record-files" class="files">
      <h2 id="record-files">{words.heading}</h2>
      <Show when={saved().isDue}>
        <p class="wants" id="unsaved">
          {words.unsaved(saved().days)}
        </p>
      </Show>
      <h3>{words.move}</h3>
      <p class="note">{words.moveNote}</p>
      <p>{lastFile() ? words.lastFile(sayDate(lastFile()?.on ?? '', record.today())) : words.noFile}</p>
      <button type="button" class="block" id="make-file" onClick={() => void make()}>
        {words.make}
      </button>
      <LongWorkView work={work} id="making" />
      <p role="status" class="said">
        {said()}
      </p>
      <TakeFile />
      <Keeping lastFile={lastFile()} newerCount={saved().count} />
    </section>
  );
}
