// The server of one machine: gives out the built page and nothing else. Every page path is the one page; whatever is not
// there, not allowed or not readable gets a line of text. What is kept or shared between devices is not its work yet.

import type { Socket } from 'node:net';
import path from 'node:path';
import helmet from '@fastify/helmet';
import files from '@fastify/static';
import Fastify, { type FastifyInstance, type FastifyReply } from 'fastify';
import { buildOf, OURS } from './build.ts';
import { BARE, PERMISSIONS, POLICY } from './headers.ts';

/** Folder of the built files with their digest in the name: they never change under one name. */
const HASHED = 'assets';
const READS = ['GET', 'HEAD'];

/** How long a browser may take, ms: nobody holds a socket by saying nothing. @practice */
const TIMES = { requestTimeout: 30_000, connectionTimeout: 60_000, keepAliveTimeout: 5_000 };
const HEADERS_TIMEOUT_MS = 10_000;

/**
 * The server over one built page, not yet listening.
 * @param webRoot absolute folder that holds index.html
 */
export async function createApp(webRoot: string): Promise<FastifyInstance> {
  const app = Fastify({
    logger: false,
    ...TIMES,
    http: { headersTimeout: HEADERS_TIMEOUT_MS },
    // Addresses that cannot be read never reach the hooks below.
    frameworkErrors: (error, _, reply) => {
      refuse(reply.headers(BARE), error.statusCode ?? 400);
    },
    clientErrorHandler: refuseUnreadable,
  });

  await app.register(helmet, {
    // Without the defaults: they ask browsers to upgrade to https, which breaks plain http on a home network.
    contentSecurityPolicy: { useDefaults: false, directives: POLICY },
    crossOriginOpenerPolicy: { policy: 'same-origin' },
    // Both hold only over https; over plain http browsers ignore them and complain.
    strictTransportSecurity: false,
    originAgentCluster: false,
  });

  const build = buildOf(webRoot);
  app.addHook('onRequest', (request, reply, done) => {
    reply.headers({ 'permissions-policy': PERMISSIONS, [OURS]: build });
    if (READS.includes(request.method)) done();
    else refuse(reply.headers({ allow: READS.join(', '), connection: 'close' }), 405);
  });

  await app.register(files, {
    root: webRoot,
    cacheControl: false,
    setHeaders: (reply, file) => {
      const hashed = path.relative(webRoot, file).startsWith(HASHED + path.sep);
      reply.header('cache-control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });

  app.setNotFoundHandler((request, reply) => {
    if (isPagePath(request.url)) return reply.sendFile('index.html');
    return refuse(reply, 404);
  });
  app.setErrorHandler<Error & { statusCode?: number }>((error, _, reply) => refuse(reply, error.statusCode ?? 500));

  return app;
}

const REFUSALS: Readonly<Record<number, string>> = {
  400: 'This address cannot be read.',
  404: 'Nothing is kept here under that name.',
  405: 'Here things are read and nothing else.',
};

function refuse(reply: FastifyReply, status: number): FastifyReply {
  const text = REFUSALS[status] ?? (status < 500 ? 'This cannot be answered.' : 'The server failed to answer.');
  return reply.code(status).type('text/plain; charset=utf-8').header('cache-control', 'no-store').send(`${text}\n`);
}

/** What came over a socket is no request, or not one in time: answered as far as there is somebody to answer. */
function refuseUnreadable(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const status = UNREADABLE[error.code ?? ''] ?? '400 Bad Request';
  const text = 'This request cannot be read.\n';
  const headers = Object.entries({ ...BARE, 'content-type': 'text/plain; charset=utf-8', connection: 'close' });
  const lines = headers.map(([name, value]) => `${name}: ${value}\r\n`).join('');
  socket.end(`HTTP/1.1 ${status}\r\n${lines}content-length: ${text.length}\r\n\r\n${text}`);
}

const UNREADABLE: Readonly<Record<string, string>> = {
  HPE_HEADER_OVERFLOW: '431 Request Header Fields Too Large',
  ERR_HTTP_REQUEST_TIMEOUT: '408 Request Timeout',
};

/** Whether an address names a page, not a file: no dot in its last part, and not in the folder of built files. */
export function isPagePath(url: string): boolean {
  const [address = '/'] = url.split(/[?#]/);
  const parts = address.split('/').filter(Boolean);
  return parts[0] !== HASHED && !(parts.at(-1) ?? '').includes('.');
}
