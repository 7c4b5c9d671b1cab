// The page's side of taking a file in: a worker for each file, told to stop and waited for, since only it knows whether the
// file was kept before it heard.

import type { Watched } from '#store/file-in.ts';
import { StoreFailure } from '#store/store.ts';
import { MissingPart } from '../app/trouble.ts';
import type { FromTaker, ToTaker } from './messages.ts';
import type { TakeAsk, Taken } from './take-in.ts';

/**
 * Takes a file in, whole or not at all.
 * @throws StoreFailure; MissingPart where the worker does not start; what the signal was aborted with, where that was in time
 */
export function takenIn(ask: TakeAsk, { progress, signal }: Required<Watched>): Promise<Taken> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  const tell = (message: ToTaker) => worker.postMessage(message);
  const stop = () => tell({ kind: 'stop' });
  signal.addEventListener('abort', stop);
  return new Promise<Taken>((resolve, reject) => {
    worker.onerror = ({ message }) => reject(new MissingPart(message || 'the worker that takes files in'));
    worker.onmessage = ({ data }: MessageEvent<FromTaker>) => {
      if (data.kind === 'progress') progress(data.fraction);
      else if (data.kind === 'done') resolve(data.taken);
      else if (data.kind === 'stopped') reject(signal.reason);
      else reject(data.why === undefined ? new Error(data.message) : new StoreFailure(data.why, data.message));
    };
    tell({ kind: 'take', ask });
  }).finally(() => {
    signal.removeEventListener('abort', stop);
    worker.terminate();
  });
}
