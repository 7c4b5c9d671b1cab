// The server over a small built page of its own, asked without a network port; and its choice of port.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp, isPagePath } from './app.ts';
import { listenNear, readPort } from './listen.ts';

let folder: string;
let app: FastifyInstance;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'page-'));
  mkdirSync(path.join(folder, 'web/assets'), { recursive: true });
  writeFileSync(path.join(folder, 'web/index.html'), '<!doctype html><title>page</title>');
  writeFileSync(path.join(folder, 'web/assets/a-1.js'), 'export {};');
  writeFileSync(path.join(folder, 'kept-back.txt'), 'not for the page');
  app = await createApp(path.join(folder, 'web'));
});

afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true });
});

describe('the server', () => {
  it.each(['/', '/pail', '/pail/weigh-in?example=1'])('gives the one page at %s', async (url) => {
    const reply = await app.inject({ url });
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['content-type']).toMatch(/^text\/html/);
    expect(reply.body).toContain('<title>page</title>');
    expect(reply.headers['cache-control']).toBe('no-cache');
  });

  it('lets browsers keep a file whose name carries its digest', async () => {
    const reply = await app.inject({ url: '/assets/a-1.js' });
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['cache-control']).toContain('immutable');
  });

  it.each(['/assets/gone-2.js', '/assets/gone', '/favicon.ico', '/gone.css'])('answers 404 for %s', async (url) => {
    const reply = await app.inject({ url });
    expect(reply.statusCode).toBe(404);
    expect(reply.body).not.toContain('<title>');
  });

  it('answers 404 to anything but reading', async () => {
    expect((await app.inject({ method: 'POST', url: '/', payload: {} })).statusCode).toBe(404);
  });

  it.each(['/../kept-back.txt', '/%2e%2e/kept-back.txt', '/assets/..%2f..%2fkept-back.txt', '/..%5ckept-back.txt'])(
    'gives out nothing above its folder: %s',
    async (url) => {
      const reply = await app.inject({ url });
      expect(reply.body).not.toContain('not for the page');
      expect(reply.statusCode).toBeGreaterThanOrEqual(400);
    },
  );

  it('allows scripts and styles of its own alone, and does not ask for https', async () => {
    const { headers } = await app.inject({ url: '/' });
    const policy = String(headers['content-security-policy']).split(';');
    expect(policy).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self'",
        "img-src 'self' data: blob:",
      ]),
    );
    // Compiled code of our own files may run, as the solver of the cover is; no text may.
    expect(policy.join().replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|upgrade-insecure-requests|https:/);
    expect(headers['strict-transport-security']).toBeUndefined();
    expect(headers['x-content-type-options']).toBe('nosniff');
  });
});

describe('a page path', () => {
  it('has no dot in its last part and is not in the folder of built files', () => {
    expect(isPagePath('/')).toBe(true);
    expect(isPagePath('/v1.2/pail')).toBe(true);
    expect(isPagePath('/pail?file=a.js')).toBe(true);
    expect(isPagePath('/pail.js')).toBe(false);
    expect(isPagePath('/assets/pail')).toBe(false);
  });
});

describe('the port', () => {
  it.each([
    [undefined, 4180],
    ['', 4180],
    ['0', 0],
    ['65535', 65_535],
    ['65536', undefined],
    ['-1', undefined],
    ['80x', undefined],
    ['4.5', undefined],
  ])('%o is read as %o', (text, port) => {
    expect(readPort(text)).toBe(port);
  });

  it('is the next one when the wished one is taken', async () => {
    const other = await occupied();
    const bound = other.address();
    const taken = bound && typeof bound === 'object' ? bound.port : 0;
    const second = await createApp(path.join(folder, 'web'));
    try {
      const address = await listenNear(second, { host: '127.0.0.1', port: taken });
      expect(Number(new URL(address).port)).toBeGreaterThan(taken);
      expect((await fetch(address)).status).toBe(200);
    } finally {
      await second.close();
      other.close();
    }
  });

  it('is refused with the reason when the host is not of this machine', async () => {
    const second = await createApp(path.join(folder, 'web'));
    await expect(listenNear(second, { host: '203.0.113.7', port: 4180 })).rejects.toThrow();
    await second.close();
  });
});

function occupied(): Promise<Server> {
  return new Promise((resolve) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => resolve(server));
  });
}
