// Where the server listens: reading the wished port, and taking the next ones when it is taken.

import type { FastifyInstance } from 'fastify';

const FIRST_PORT = 4180;
const TRIES = 20;

/** The wished port; nothing when the text is no port. Unset or empty means the usual one; 0 means any free one. */
export function readPort(text: string | undefined): number | undefined {
  if (text === undefined || text === '') return FIRST_PORT;
  if (!/^\d{1,5}$/.test(text)) return undefined;
  const port = Number(text);
  return port <= 65_535 ? port : undefined;
}

/** Listens on the wished port, or on the first free one of those after it; answers the address to open. */
export async function listenNear(
  app: FastifyInstance,
  { host, port }: { readonly host: string; readonly port: number },
): Promise<string> {
  const last = Math.min(port + TRIES - 1, 65_535);
  for (let next = port; ; next++) {
    try {
      return await app.listen({ host, port: next });
    } catch (error) {
      const taken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!taken || next >= last) throw error;
    }
  }
}
