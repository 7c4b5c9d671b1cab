// The server of one machine: gives out the built page and nothing else. Every page path is the one page;
// a file that is not there is a plain 404. What is kept or shared between devices is not its work yet.

import path from 'node:path';
import helmet from '@fastify/helmet';
import files from '@fastify/static';
import Fastify, { type FastifyInstance } from 'fastify';

/** Folder of the built files with their digest in the name: they never change under one name. */
const HASHED = 'assets';

/**
 * The server over one built page, not yet listening.
 * @param webRoot absolute folder that holds index.html
 */
export async function createApp(webRoot: string): Promise<FastifyInstance> {
  const app = Fastify({ logger: false });

  await app.register(helmet, {
    contentSecurityPolicy: {
      // Without the defaults: they ask browsers to upgrade to https, which breaks plain http on a home network.
      useDefaults: false,
      directives: {
        'default-src': ["'self'"],
        // The solver of the cover is compiled code of our own files: it may be run, text may not.
        'script-src': ["'self'", "'wasm-unsafe-eval'"],
        'style-src': ["'self'"],
        'img-src': ["'self'", 'data:', 'blob:'],
        'object-src': ["'none'"],
        'base-uri': ["'none'"],
        'form-action': ["'self'"],
        'frame-ancestors': ["'none'"],
      },
    },
    // Both hold only over https; over plain http browsers ignore them and complain.
    strictTransportSecurity: false,
    crossOriginOpenerPolicy: false,
    originAgentCluster: false,
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
    const asks = request.method === 'GET' || request.method === 'HEAD';
    if (asks && isPagePath(request.url)) return reply.sendFile('index.html');
    return reply.code(404).type('text/plain; charset=utf-8').send('Nothing is kept here under that name.\n');
  });

  return app;
}

/** Whether an address names a page, not a file: no dot in its last part, and not in the folder of built files. */
export function isPagePath(url: string): boolean {
  const [address = '/'] = url.split(/[?#]/);
  const parts = address.split('/').filter(Boolean);
  return parts[0] !== HASHED && !(parts.at(-1) ?? '').includes('.');
}
