// One run of the server: reads where to listen, says in a sentence what came of it, and stops in good order when it is told to.

import { existsSync } from 'node:fs';
import path from 'node:path';
import { createApp } from './app.ts';
import { buildOf } from './build.ts';
import { listenAt, readPort } from './listen.ts';
import { stopInOrder } from './stop.ts';

/** Starts the server over a built page with the environment's PORT and HOST (this machine alone). */
export async function start(webRoot: string): Promise<void> {
  const port = readPort(process.env.PORT);
  if (port === undefined) {
    fail(`PORT is "${process.env.PORT}", which is not a port; allowed: a whole number, 0 to 65535.`);
    return;
  }
  if (!existsSync(path.join(webRoot, 'index.html'))) {
    fail('The page is not built yet: start with "npm start", or run "node scripts/ensure.mjs web" first.');
    return;
  }
  const app = await createApp(webRoot);
  const listening = await listenAt(app, { host: process.env.HOST || '127.0.0.1', port }, buildOf(webRoot));
  if (!listening.ok) {
    fail(listening.says);
    return;
  }
  console.log(`Tilthwright is open at ${listening.address} (Ctrl+C closes it).`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      void stopInOrder(app).then(() => process.exit(0));
    });
  }
}

function fail(sentence: string): void {
  console.error(sentence);
  process.exitCode = 1;
}
