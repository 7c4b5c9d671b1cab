// Where the server listens: the wished port or none. A browser keeps the record under the address it was opened at, so another
// port would show a grower an empty record; who listens there already is asked, and said.

import { request } from 'node:http';
import type { FastifyInstance } from 'fastify';
import { OURS } from './build.ts';

const USUAL_PORT = 4180;
const PATIENCE_MS = 3_000;

/** The wished port; nothing when the text is no port. Unset or empty means the usual one; 0 means any free one. */
export function readPort(text: string | undefined): number | undefined {
  if (text === undefined || text === '') return USUAL_PORT;
  if (!/^\d{1,5}$/.test(text)) return undefined;
  const port = Number(text);
  return port <= 65_535 ? port : undefined;
}

interface Place {
  readonly host: string;
  readonly port: number;
}

export type Listening = { readonly ok: true; readonly address: string } | { readonly ok: false; readonly says: string };

/** Listens on the wished port and on no other; answers the address to open, or why there is none. */
export async function listenAt(app: FastifyInstance, place: Place, build: string): Promise<Listening> {
  try {
    return { ok: true, address: await app.listen(place) };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE')
      return { ok: false, says: await sayTaken(place, build) };
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, says: `Tilthwright cannot listen on ${place.host}: ${reason}.` };
  }
}

async function sayTaken(place: Place, build: string): Promise<string> {
  const address = addressOf(place);
  const there = await buildAt(address);
  if (there === build) return `Tilthwright is already running: open ${address}. Nothing more was started.`;
  if (there !== undefined) {
    return [
      `Another version of Tilthwright is already running at ${address}.`,
      'Please close that one (Ctrl+C in its window), then start this one again.',
    ].join(' ');
  }
  const other = place.port < 65_535 ? place.port + 1 : USUAL_PORT;
  return [
    `Port ${place.port} is taken by another program.`,
    'Please close that program and start again.',
    `Or choose another port: PORT=${other} npm start.`,
    `A record kept under ${address} does not show there.`,
  ].join(' ');
}

/** The build that a server of ours gives out at an address; nothing when nobody, or somebody else, answers. */
function buildAt(address: string): Promise<string | undefined> {
  return new Promise((resolve) => {
    const asking = request(address, { method: 'HEAD', agent: false, timeout: PATIENCE_MS }, (reply) => {
      const build = reply.headers[OURS];
      reply.resume();
      resolve(typeof build === 'string' ? build : undefined);
    });
    // Whatever listens there does not speak as a page's server does, or does not speak at all.
    asking.on('error', () => resolve(undefined));
    asking.on('timeout', () => asking.destroy());
    asking.end();
  });
}

function addressOf({ host, port }: Place): string {
  const all = host === '0.0.0.0' || host === '::';
  return `http://${all ? '127.0.0.1' : host.includes(':') ? `[${host}]` : host}:${port}`;
}
