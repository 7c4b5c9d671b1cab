// Stops the server in good order: nothing new is taken, answers under way may end, and whoever is still at it after a while,
// half a request or a reader who does not read, is let go of.

import type { FastifyInstance } from 'fastify';

/** How long answers under way may take to end, ms. @practice */
const GRACE_MS = 2_000;

/** Resolves when every socket is closed, at the latest shortly after the grace. */
export async function stopInOrder(app: FastifyInstance, graceMs: number = GRACE_MS): Promise<void> {
  const letGo = setTimeout(() => app.server.closeAllConnections(), graceMs);
  try {
    await app.close();
  } finally {
    clearTimeout(letGo);
  }
}
