// What a browser throws, by the names a store gives it: no room, not allowed, a newer program, anything else. Browsers
// differ in how they refuse a private window; what is not known here is `broken`, with its cause kept.

import { StoreFailure, type Why } from './store.ts';

const BY_NAME: Readonly<Record<string, Why>> = {
  QuotaExceededError: 'full',
  SecurityError: 'refused',
  NotAllowedError: 'refused',
  // A database made by a newer program.
  VersionError: 'outdated',
  // A connection that was closed under the work: the tab lost its store.
  InvalidStateError: 'closed',
};

/** A failure with a name, from whatever was thrown. */
export function failureOf(cause: unknown): StoreFailure {
  if (cause instanceof StoreFailure) return cause;
  const name = errorName(cause);
  const inner = cause instanceof Error && cause.cause !== undefined ? errorName(cause.cause) : '';
  const why = BY_NAME[name] ?? BY_NAME[inner] ?? 'broken';
  return new StoreFailure(why, `the browser's store failed: ${name || 'unknown'}`, { cause });
}

function errorName(cause: unknown): string {
  return typeof cause === 'object' && cause !== null && 'name' in cause ? String(cause.name) : '';
}
