// A site of its own for the tests of the time without a signal: a copy of the built page that can be built anew, behind a
// server that answers as a test says.

import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { createApp } from '../../src/server/app.ts';

const built = path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web');
const LIST = /\[\{"(?:url|integrity)":[^\]]*\}\]/;

/** What the server says to a path: as it is, another answer, no answer ever, or a line that breaks. */
export type Says = 'as-it-is' | 'never' | 'broken-line' | { status: number; type: string; body: string };

export interface OfflineSite {
  readonly address: string;
  /** From now on every path is answered so; what was asked is told by `asked`. */
  answer: (says: (path: string) => Says) => void;
  readonly asked: string[];
  /** Puts up another build: the shell changes, and a new part is listed under a hashed name. Gives the part's path. */
  readonly buildAnew: () => Promise<string>;
  readonly close: () => Promise<void>;
}

export async function offlineSite(): Promise<OfflineSite> {
  const copy = await mkdtemp(path.join(os.tmpdir(), 'tilthwright-offline-'));
  await cp(built, copy, { recursive: true });
  const app = await createApp(copy);
  let says: (path: string) => Says = () => 'as-it-is';
  const asked: string[] = [];
  app.addHook('onRequest', (request, reply, done) => {
    const [asks = '/'] = request.url.split('?');
    asked.push(asks);
    const told = says(asks);
    if (told === 'as-it-is') done();
    else if (told === 'never') reply.hijack();
    else if (told === 'broken-line') {
      reply.hijack();
      reply.raw.destroy();
    } else void reply.code(told.status).type(told.type).send(told.body);
  });
  let builds = 0;
  return {
    address: await app.listen({ host: '127.0.0.1', port: 0 }),
    asked,
    answer(next) {
      says = next;
    },
    async buildAnew() {
      builds++;
      const shell = path.join(copy, 'index.html');
      await writeFile(
        shell,
        (await readFile(shell, 'utf8')).replace('</head>', `<meta name="build" content="${builds}"></head>`),
      );
      const part = `assets/new-${builds}.js`;
      await writeFile(path.join(copy, part), `export const build = ${builds};\n`);
      const worker = path.join(copy, 'sw.js');
      const code = await readFile(worker, 'utf8');
      const [list = ''] = LIST.exec(code) ?? [];
      const files = (JSON.parse(list) as { url: string; integrity: string }[]).filter(
        ({ url }) => url !== 'index.html',
      );
      for (const url of ['index.html', part])
        files.push({ url, integrity: digestOf(await readFile(path.join(copy, url))) });
      await writeFile(
        worker,
        code.replace(list, () => JSON.stringify(files)),
      );
      return `/${part}`;
    },
    async close() {
      app.server.closeAllConnections();
      await app.close();
      await rm(copy, { recursive: true, force: true });
    },
  };
}

const digestOf = (bytes: Uint8Array) => `sha256-${createHash('sha256').update(bytes).digest('base64')}`;

/** Waits until the page is kept and opens from what is kept. */
export async function keptOffline(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** Asks for a newer version; tells what became of it. */
export function tryUpdate(page: Page): Promise<'installed' | 'refused' | 'no worker' | 'nothing newer'> {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const updated = await registration?.update().then(
      () => true,
      () => false,
    );
    if (!updated) return 'no worker';
    const worker = registration?.installing;
    if (!worker) return registration?.waiting ? 'installed' : 'nothing newer';
    return await new Promise((resolve) => {
      const look = () => {
        if (worker.state === 'installed') resolve('installed');
        if (worker.state === 'redundant') resolve('refused');
      };
      worker.addEventListener('statechange', look);
      look();
    });
  });
}
