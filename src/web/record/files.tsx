// The file that carries the whole record: made here, taken in there. All of it or nothing; refused lines are told by
// their numbers.

import { createSignal, For, Show } from 'solid-js';
import { type Import, importLines, type RefusedLine } from '#journal/lines.ts';
import { savedElsewhere } from '#tasks/plot/record.ts';
import { sayDate } from '#words/en/app.ts';
import { files as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';
import { Keeping } from './keeping.tsx';
import { useLastFile } from './last-file.ts';
import { makeFile } from './make-file.ts';
import { photoOf } from './photo-text.ts';

const MOST_LINES_TOLD = 20;

export function Files() {
  const record = useRecord();
  const { lastFile, note } = useLastFile();
  const [said, setSaid] = createSignal('');
  const [refused, setRefused] = createSignal<readonly RefusedLine[]>([]);
  const saved = () => savedElsewhere(record.entries(), { lastFileAt: lastFile()?.at, nowAt: new Date().toISOString() });

  async function make() {
    const photos = await record.store.allPhotos();
    const name = words.fileName(record.plot().facts.name ?? '', record.today());
    makeFile({ entries: record.entries(), photos, name });
    await note({ on: record.today(), at: new Date().toISOString() });
    setSaid(words.made(name));
  }

  async function take(file: File) {
    setRefused([]);
    setSaid('');
    const here = new Map(record.entries().map((kept) => [kept.id, kept]));
    const read = importLines(await file.text(), (id) => here.get(id));
    if (!read.ok) {
      setRefused(read.refused);
      setSaid(words.refused(read.refused.length));
      return;
    }
    const plots = [...new Set([...read.header.plots, ...read.fresh.map(({ plot }) => plot)])];
    const isEmpty = record.entries().length === 0;
    // A device without entries becomes one of the plot in the file.
    if (plots.length === 0 || plots.includes(record.plotId()) || (isEmpty && plots.length === 1)) await keep(read);
    else setSaid(isEmpty ? words.severalPlots : words.otherPlot);
  }

  async function keep(read: Extract<Import, { ok: true }>) {
    for (const line of read.photos) await record.store.putPhoto(photoOf(line));
    await record.take(read.fresh);
    setSaid(words.taken(read.fresh.length, read.alreadyCount, read.sealedCount));
  }

  const failed = (failure: unknown) => setSaid(sayFailure(failure));
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
      <button type="button" class="block" id="make-file" onClick={() => make().catch(failed)}>
        {words.make}
      </button>
      <h3>{words.take}</h3>
      <p class="note">{words.takeNote}</p>
      <label class="block">
        {words.choose}
        <input
          type="file"
          id="take-file"
          class="unseen"
          accept=".jsonl,.json,.txt,application/jsonl"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            if (file) take(file).catch(failed);
            event.currentTarget.value = '';
          }}
        />
      </label>
      <p role="status" class="said" id="file-said">
        {said()}
      </p>
      <ul class="plain">
        <For each={refused().slice(0, MOST_LINES_TOLD)}>
          {({ line, problems }) => (
            <For each={problems}>
              {({ field, message, allowed }) => <li>{words.refusedLine(line, field, message, allowed)}</li>}
            </For>
          )}
        </For>
      </ul>
      <Show when={refused().length > MOST_LINES_TOLD}>
        <p>{words.moreLines(refused().length - MOST_LINES_TOLD)}</p>
      </Show>
      <Keeping lastFile={lastFile()} newerCount={saved().count} />
    </section>
  );
}
