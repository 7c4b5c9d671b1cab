// Before a newer version is taken, a browser that keeps the record in one place asks for a file of what no file holds.

import { A } from '@solidjs/router';
import { Show } from 'solid-js';
import { unsavedElsewhere } from '#journal/unsaved.ts';
import { keptIn } from '#words/en/files.ts';
import { useLastFile } from '../record/last-file.ts';
import { useRecord } from './context.tsx';

export function FileBeforeUpdate() {
  const record = useRecord();
  const { lastFile } = useLastFile();
  const count = () =>
    record.isDemo || record.store.places() === 2
      ? 0
      : unsavedElsewhere(record.entries(), { file: lastFile(), nowMs: Date.now() }).count;
  return (
    <Show when={count() > 0}>
      <p class="wants" id="file-before-update">
        {keptIn.beforeUpdate(count())} <A href="/record">{keptIn.toFiles}</A>
      </p>
    </Show>
  );
}
