// Starts the server: finds a free port from PORT (4180) upward on HOST (this machine alone), says the address
// in a sentence, and closes in good order when it is stopped.

import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { createApp } from './app.ts';
import { listenNear, readPort } from './listen.ts';

const webRoot = path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web');
const port = readPort(process.env.PORT);

if (port === undefined) {
  stop(`PORT is "${process.env.PORT}", which is not a port; allowed: a whole number, 0 to 65535.`);
} else if (!existsSync(path.join(webRoot, 'index.html'))) {
  stop('The page is not built yet: start with "npm start", or run "node scripts/ensure.mjs web" first.');
} else {
  const app = await createApp(webRoot);
  const host = process.env.HOST || '127.0.0.1';
  try {
    const address = await listenNear(app, { host, port });
    console.log(`Tilthwright is open at ${address} (Ctrl+C closes it).`);
    for (const signal of ['SIGINT', 'SIGTERM'] as const) {
      process.once(signal, () => {
        void app.close().then(() => process.exit(0));
      });
    }
  } catch (error) {
    stop(`Tilthwright cannot listen on ${host}: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

function stop(sentence: string): void {
  console.error(sentence);
  process.exitCode = 1;
}
