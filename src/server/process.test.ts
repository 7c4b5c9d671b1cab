// The server as a process of its own: a port that is taken, a stop in the middle of a request, and what cannot be read.

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';

const here = path.dirname(fileURLToPath(import.meta.url));
let folder: string;
const running = new Set<ChildProcess>();

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'server-'));
  for (const build of ['one', 'two']) {
    mkdirSync(path.join(folder, build));
    writeFileSync(path.join(folder, build, 'index.html'), `<!doctype html><title>${build}</title>`);
    writeFileSync(path.join(folder, build, 'large.svg'), 'x'.repeat(20_000_000));
  }
});
afterEach(() => {
  for (const child of running) child.kill('SIGKILL');
  running.clear();
});
afterAll(() => rmSync(folder, { recursive: true }));

interface Run {
  readonly child: ChildProcess;
  /** Everything it said, once it has said something. */
  readonly says: Promise<string>;
  /** Exit code, or the signal that ended it. */
  readonly ended: Promise<number | string>;
}

/** Starts a server over one of the builds. */
function run(build: string, port: number): Run {
  const start = pathToFileURL(path.join(here, 'start.ts')).href;
  const code = `const { start } = await import(${JSON.stringify(start)}); await start(${JSON.stringify(path.join(folder, build))});`;
  const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', code], {
    cwd: path.join(here, '../..'),
    env: { ...process.env, PORT: String(port), HOST: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running.add(child);
  const says = new Promise<string>((resolve) => {
    for (const stream of [child.stdout, child.stderr]) stream?.once('data', (text) => resolve(String(text).trim()));
  });
  const ended = once(child, 'exit').then(([status, signal]) => status ?? signal);
  return { child, says, ended };
}

async function opened(build = 'one'): Promise<Run & { readonly port: number }> {
  const started = run(build, 0);
  const said = await started.says;
  return { ...started, port: Number(/:(\d+)/.exec(said)?.[1]) };
}

/** A socket that has sent so much, with all it gets back. */
async function sent(port: number, text: string): Promise<{ readonly socket: Socket; readonly got: Promise<string> }> {
  const socket = connect(port, '127.0.0.1');
  await once(socket, 'connect');
  socket.write(text);
  const got = new Promise<string>((resolve) => {
    let all = '';
    socket.on('data', (part) => {
      all += String(part);
    });
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(all));
  });
  return { socket, got };
}

describe('a port that is taken', () => {
  it.each([
    ['that hangs up', (socket: Socket) => socket.destroy()],
    ['that never answers', () => undefined],
  ])('by another program %s is refused: the record would be out of sight under the next one', async (_, meets) => {
    const met = new Set<Socket>();
    const other = createServer((socket) => {
      met.add(socket.on('error', () => undefined));
      meets(socket);
    });
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as AddressInfo;
    const { says, ended } = run('one', port);
    expect(await says).toBe(
      [
        `Port ${port} is taken by another program. Please close that program and start again.`,
        `Or choose another port: PORT=${port + 1} npm start.`,
        `A record kept under http://127.0.0.1:${port} does not show there.`,
      ].join(' '),
    );
    expect(await ended).toBe(1);
    for (const socket of met) socket.destroy();
    other.close();
  });

  it('by this program is said, with the address to open', async () => {
    const { port, child } = await opened();
    const second = run('one', port);
    expect(await second.says).toBe(
      `Tilthwright is already running: open http://127.0.0.1:${port}. Nothing more was started.`,
    );
    expect(await second.ended).toBe(1);
    expect(child.exitCode).toBeNull();
    expect((await fetch(`http://127.0.0.1:${port}/`)).status).toBe(200);
  });

  it('by another build of this program is said as such', async () => {
    const { port } = await opened('two');
    const second = run('one', port);
    expect(await second.says).toContain(
      `Another version of Tilthwright is already running at http://127.0.0.1:${port}.`,
    );
    expect(await second.ended).toBe(1);
  });
});

describe('a stop', () => {
  it.each([
    ['nothing is open', undefined],
    ['a socket has said nothing', ''],
    ['half a head has arrived', 'GET / HTTP/1.1\r\nHost: here\r\nX-Half'],
    ['half a body has arrived', 'POST / HTTP/1.1\r\nHost: here\r\nContent-Length: 100\r\n\r\nhalf'],
    ['a reader does not read', 'GET /large.svg HTTP/1.1\r\nHost: here\r\n\r\n'],
    ['a reader keeps the socket for later', 'GET / HTTP/1.1\r\nHost: here\r\n\r\n'],
  ] as const)('ends in good order while %s', async (_, text) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) {
      const { port, child, ended } = await opened();
      const open = text === undefined ? undefined : await sent(port, text);
      if (text?.includes('large')) open?.socket.pause();
      // Once the server answers another request it has seen what was sent before.
      expect((await fetch(`http://127.0.0.1:${port}/`)).status).toBe(200);
      child.kill(signal);
      expect(await ended).toBe(0);
      open?.socket.destroy();
    }
  });
});

describe('what cannot be read', () => {
  it.each([
    ['no request at all', 'hello\r\n\r\n', '400'],
    ['a method nobody knows', 'FETCH / HTTP/1.1\r\nHost: here\r\n\r\n', '400'],
    ['a head without end', `GET / HTTP/1.1\r\nHost: here\r\nX: ${'y'.repeat(40_000)}\r\n\r\n`, '431'],
    ['two lengths', 'POST / HTTP/1.1\r\nHost: here\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab', '400'],
  ])('%s is answered with its status and the same protection', async (_, text, status) => {
    const { port } = await opened();
    const { got } = await sent(port, text);
    const answer = await got;
    expect(answer).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    for (const header of ['content-security-policy', 'x-content-type-options', 'cross-origin-opener-policy'])
      expect(answer.toLowerCase()).toContain(`${header}: `);
    // And the next one is served.
    expect((await fetch(`http://127.0.0.1:${port}/`)).status).toBe(200);
  });
});
