// Browsers beside Chromium, driven by their own protocols: Firefox by Marionette, a line of JSON with its length on a socket;
// WebKit by its WebDriver over HTTP. Both do two things here: go to an address, and run a script in the page.

import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer, type Socket } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import type { Browser } from '../../scripts/other-browsers.mjs';
import { onPath } from '../../scripts/programs.mjs';

const START_MS = 60_000;
const SCRIPT_MS = 120_000;

export interface DrivenBrowser {
  readonly goTo: (address: string) => Promise<void>;
  /** The value of an expression in the page, awaited where it is a promise. */
  readonly evaluate: (expression: string) => Promise<unknown>;
  /** Waits until an expression is true in the page. */
  readonly until: (expression: string) => Promise<void>;
  readonly end: () => Promise<void>;
}

type Call = (name: string, args: object) => Promise<unknown>;

export const drivenBrowser = (browser: Browser): Promise<DrivenBrowser> =>
  browser.name === 'Firefox' ? drivenFirefox(browser) : drivenWebKit(browser);

/** The value of a script, or its failure, as both protocols hand it back. */
const asScript = (expression: string) =>
  `const done = arguments[arguments.length - 1];
   Promise.resolve().then(() => (${expression})).then((value) => done({ value: value ?? null }), (error) => done({ failed: String(error) }));`;

function driven(run: (script: string) => Promise<unknown>, rest: Pick<DrivenBrowser, 'goTo' | 'end'>): DrivenBrowser {
  const evaluate = async (expression: string) => {
    const told = (await run(asScript(expression))) as { readonly value: unknown } | { readonly failed: string };
    if ('failed' in told) throw new Error(told.failed);
    return told.value;
  };
  return {
    ...rest,
    evaluate,
    async until(expression) {
      await within(
        START_MS,
        `"${expression}" did not come true`,
        async () => (await evaluate(`Boolean(${expression})`)) === true,
      );
    },
  };
}

async function drivenFirefox({ program }: Browser): Promise<DrivenBrowser> {
  const profile = mkdtempSync(path.join(os.tmpdir(), 'driven-firefox-'));
  // Port 0: any that is free; it is written into the profile.
  const prefs = { 'marionette.port': 0, 'app.update.auto': false, 'datareporting.policy.dataSubmissionEnabled': false };
  writeFileSync(
    path.join(profile, 'user.js'),
    Object.entries(prefs)
      .map(([name, value]) => `user_pref("${name}", ${value});`)
      .join('\n'),
  );
  const firefox = spawn(program, ['--headless', '--no-remote', '--profile', profile, '--marionette'], {
    ...{ detached: true, stdio: 'ignore' },
  });
  const end = async () => {
    await killed(firefox);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  };
  try {
    let port = 0;
    await within(START_MS, 'Firefox does not listen', async () => {
      port = Number(readFileSync(path.join(profile, 'MarionetteActivePort'), 'utf8'));
      return port > 0;
    });
    const call = marionette(connect(port, '127.0.0.1'));
    await call('WebDriver:NewSession', {});
    await call('WebDriver:SetTimeouts', { script: SCRIPT_MS });
    const run = async (script: string) =>
      ((await call('WebDriver:ExecuteAsyncScript', { script, args: [] })) as { readonly value: unknown }).value;
    return driven(run, { goTo: async (url) => void (await call('WebDriver:Navigate', { url })), end });
  } catch (cause) {
    await end();
    throw cause;
  }
}

/** Calls over a socket: `length:[0, id, name, args]` goes out, `length:[1, id, error, result]` comes back. */
function marionette(socket: Socket): Call {
  const waiting = new Map<number, (told: readonly [unknown, unknown]) => void>();
  let [buffer, calls] = [Buffer.alloc(0), 0];
  socket.on('error', (error) => {
    for (const told of waiting.values()) told([String(error), undefined]);
  });
  socket.on('data', (part) => {
    buffer = Buffer.concat([buffer, part as Buffer]);
    for (;;) {
      const colon = buffer.indexOf(':');
      const length = Number(buffer.subarray(0, Math.max(0, colon)).toString());
      if (colon < 1 || buffer.length < colon + 1 + length) return;
      const told = JSON.parse(buffer.subarray(colon + 1, colon + 1 + length).toString()) as unknown;
      buffer = buffer.subarray(colon + 1 + length);
      if (Array.isArray(told)) waiting.get(told[1])?.([told[2], told[3]]);
    }
  });
  return (name, args) =>
    new Promise((resolve, reject) => {
      const id = ++calls;
      waiting.set(id, ([error, result]) => {
        waiting.delete(id);
        if (error === null) resolve(result);
        else reject(new Error(`${name}: ${JSON.stringify(error).slice(0, 500)}`));
      });
      const text = JSON.stringify([0, id, name, args]);
      socket.write(`${Buffer.byteLength(text)}:${text}`);
    });
}

async function drivenWebKit({ program, display }: Browser): Promise<DrivenBrowser> {
  const started: ChildProcess[] = [];
  const end = async () => {
    for (const one of started.reverse()) await killed(one);
  };
  try {
    const number = process.env.DISPLAY === undefined ? `:${90 + (process.pid % 900)}` : process.env.DISPLAY;
    if (process.env.DISPLAY === undefined) {
      started.push(spawn(display ?? 'Xvfb', [number, '-nolisten', 'tcp'], { detached: true, stdio: 'ignore' }));
    }
    const port = await freePort();
    const driver = onPath(['WebKitWebDriver']) ?? 'WebKitWebDriver';
    const env = { ...process.env, DISPLAY: number };
    started.push(spawn(driver, [`--port=${port}`], { detached: true, stdio: 'ignore', env }));
    const call: Call = async (at, args) => {
      const answer = await fetch(`http://127.0.0.1:${port}${at}`, { method: 'POST', body: JSON.stringify(args) });
      const { value } = (await answer.json()) as { readonly value: unknown };
      if (!answer.ok) throw new Error(`${at}: ${JSON.stringify(value).slice(0, 500)}`);
      return value;
    };
    const options = { binary: program, args: ['--automation'] };
    let session = '';
    await within(START_MS, 'WebKit does not open', async () => {
      const made = await call('/session', { capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options } } });
      session = `/session/${(made as { readonly sessionId: string }).sessionId}`;
      return true;
    });
    await call(`${session}/timeouts`, { script: SCRIPT_MS });
    const run = (script: string) => call(`${session}/execute/async`, { script, args: [] });
    return driven(run, { goTo: async (url) => void (await call(`${session}/url`, { url })), end });
  } catch (cause) {
    await end();
    throw cause;
  }
}

/** Tries until it is so; what is thrown on the way counts as not yet. */
async function within(longestMs: number, otherwise: string, isSo: () => Promise<boolean>): Promise<void> {
  const until = Date.now() + longestMs;
  let last: unknown;
  while (Date.now() < until) {
    try {
      if (await isSo()) return;
    } catch (cause) {
      last = cause;
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(otherwise, { cause: last });
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const bound = probe.address();
      probe.close(() =>
        bound !== null && typeof bound === 'object' ? resolve(bound.port) : reject(new Error('no port')),
      );
    });
  });
}

/** Ends a process with all that it started, and nothing else: it has a group of its own. */
async function killed(one: ChildProcess): Promise<void> {
  if (one.pid === undefined || one.exitCode !== null) return;
  const ended = new Promise((resolve) => one.once('exit', resolve));
  process.kill(-one.pid, 'SIGKILL');
  await ended;
}
