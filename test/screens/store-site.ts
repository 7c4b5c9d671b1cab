// A small site for the tests of the browser's store: one page, its bundled script, and an ear for what that page tells.

import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = path.join(path.dirname(fileURLToPath(import.meta.url)), '../..');

export interface StoreSite {
  readonly address: string;
  readonly close: () => void;
}

/** Bundles the page's script and serves it; `told` hears every POST by its path, a name a line. */
export async function storeSite(told: (what: string, names: readonly string[]) => void = () => {}): Promise<StoreSite> {
  const script = await bundle();
  const server: Server = createServer((request, response) => {
    if (request.method === 'POST') {
      let body = '';
      request.setEncoding('utf8');
      request.on('data', (part: string) => {
        body += part;
      });
      request.on('end', () => {
        told(request.url?.slice(1) ?? '', body.split('\n').filter(Boolean));
        response.writeHead(204).end();
      });
      return;
    }
    if (request.url === '/page.js') response.writeHead(200, { 'content-type': 'text/javascript' }).end(script);
    else if (request.url === '/favicon.ico') response.writeHead(204).end();
    else {
      const page = '<!doctype html><title>store</title><script type="module" src="/page.js"></script>';
      response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(page);
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

async function bundle(): Promise<string> {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      target: 'es2022',
      lib: { entry: path.join(root, 'test/screens/store-page.ts'), formats: ['es'], fileName: 'page' },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  const chunk = first !== undefined && 'output' in first ? first.output[0] : undefined;
  if (chunk === undefined) throw new Error('the page of the store tests was not built');
  return chunk.code;
}
