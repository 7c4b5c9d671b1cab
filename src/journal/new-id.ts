// Ids of entries: version 7 UUIDs, made on the device without asking anyone. They begin with the instant of
// making, so that entries sorted by id are nearly sorted by recording. Clock and chance come in from outside.

/** What an id is made of. */
export interface IdSeed {
  /** Milliseconds since 1970, UTC. */
  readonly nowMs: number;
  /** Ten random bytes or more; only the first ten are used, less six bits of them. */
  readonly random: Uint8Array;
}

/**
 * A new id: 48 bits of time, version 7, 12 random bits, variant, 62 random bits.
 * @throws RangeError for a clock outside 48 bits or fewer than ten random bytes
 * @source rfc-9562 section 5.7
 * @checked new-id.test.ts, the test vector of RFC 9562 appendix A.6
 */
export function newId({ nowMs, random }: IdSeed): string {
  if (!(Number.isInteger(nowMs) && nowMs >= 0 && nowMs < 2 ** 48)) {
    throw new RangeError(`newId: nowMs ${nowMs} is not a whole number of milliseconds within 48 bits`);
  }
  if (!(random.length >= 10))
    throw new RangeError(`newId: ${random.length} random bytes are too few; allowed: 10 or more`);
  const time = nowMs.toString(16).padStart(12, '0');
  const [a = 0, b = 0, c = 0, ...rest] = random.slice(0, 10);
  const tail = [(c & 0x3f) | 0x80, ...rest].map(hex).join('');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(a).slice(1)}${hex(b)}-${tail.slice(0, 4)}-${tail.slice(4)}`;
}

function hex(byte: number): string {
  return byte.toString(16).padStart(2, '0');
}
