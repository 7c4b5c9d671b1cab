// Starts the server over the page that was built.

import '#node-version';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { start } from './start.ts';

await start(path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web'));
