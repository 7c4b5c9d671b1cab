// The server over a small built page of its own, asked without a network port.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp, isPagePath } from './app.ts';
import { readPort } from './listen.ts';

let folder: string;
let app: FastifyInstance;

/** On every answer, whatever it says. */
const PROTECTED = {
  'content-security-policy': expect.stringContaining("default-src '"),
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': expect.stringContaining('camera=()'),
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
};

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

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'] as const)('answers 405 to %s, anywhere', async (method) => {
    for (const url of ['/', '/assets/a-1.js', '/gone.css']) {
      const reply = await app.inject({ method, url });
      expect([reply.statusCode, reply.headers.allow]).toEqual([405, 'GET, HEAD']);
    }
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

  it.each([
    ['the page', 200, { url: '/' }],
    ['a file', 200, { url: '/assets/a-1.js' }],
    ['what is not there', 404, { url: '/gone.css' }],
    ['what is not read', 405, { url: '/', method: 'POST' as const, payload: '{' }],
    ['an address that is none', 400, { url: '/%' }],
    ['an address out of the folder', 404, { url: '/../../kept-back.txt' }],
  ])('bears the same protection on %s, %i', async (_, status, asked) => {
    const reply = await app.inject(asked);
    expect(reply.statusCode).toBe(status);
    expect(reply.headers).toMatchObject(PROTECTED);
    if (status >= 400) expect(reply.headers).toMatchObject({ 'cache-control': 'no-store' });
  });

  it('bears it on its own fault too, and tells nothing of the fault', async () => {
    const faulty = await createApp(path.join(folder, 'web'));
    faulty.get('/fault', () => {
      throw new Error('a secret of the machine');
    });
    const reply = await faulty.inject('/fault');
    expect([reply.statusCode, reply.body]).toEqual([500, 'The server failed to answer.\n']);
    expect(reply.headers).toMatchObject(PROTECTED);
    await faulty.close();
  });

  it('lets the page keep the screen awake and lets it use no camera, place or microphone', async () => {
    const allowed = String((await app.inject('/')).headers['permissions-policy']);
    expect(allowed).toMatch(/\bcamera=\(\).*\bgeolocation=\(\).*\bmicrophone=\(\)/);
    expect(allowed).not.toContain('screen-wake-lock');
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
});
