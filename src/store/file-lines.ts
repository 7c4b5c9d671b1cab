// The lines of a file, one by one, however large it is: bytes are cut at line ends and only one line is held. A line that is
// longer than any line may be, or no UTF-8, is told as a problem in its place, and the reading goes on behind it.

import { MOST_FILE_LINE_SIGNS } from '#journal/lines.ts';
import type { Problem } from '#journal/problem.ts';
import { joined } from './bytes.ts';

const LINE_END = 0x0a;

export interface FileLine {
  /** The line without its end, or why it could not be had. */
  readonly line: string | Problem;
  /** Bytes of the file up to here. */
  readonly readBytes: number;
}

/** Lines of a file, in order; a byte order mark and carriage returns are no part of them. */
export async function* fileLines(file: Blob): AsyncGenerator<FileLine> {
  const reader = file.stream().getReader();
  const gathered = gathering();
  let readBytes = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      let from = 0;
      for (let end = value.indexOf(LINE_END); end >= 0; end = value.indexOf(LINE_END, from)) {
        gathered.add(value.subarray(from, end));
        from = end + 1;
        yield { line: gathered.line(), readBytes: readBytes + from };
      }
      gathered.add(value.subarray(from));
      readBytes += value.length;
    }
    if (gathered.size() > 0) yield { line: gathered.line(), readBytes };
  } finally {
    // Where the reading ends early nobody wants the rest.
    await reader.cancel().catch(() => undefined);
  }
}

/** Parts of one line until it is whole; what passes the longest line is counted and let go of. */
function gathering() {
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  let parts: Uint8Array[] = [];
  let size = 0;
  let isFirst = true;
  return {
    size: () => size,
    add(part: Uint8Array) {
      size += part.length;
      if (size > MOST_FILE_LINE_SIGNS) parts = [];
      else if (part.length > 0) parts.push(part);
    },
    line(): string | Problem {
      const whole = size > MOST_FILE_LINE_SIGNS ? tooLong() : decoded();
      const line = typeof whole === 'string' && isFirst ? whole.replace(/^\uFEFF/, '') : whole;
      [parts, size, isFirst] = [[], 0, false];
      return typeof line === 'string' && line.endsWith('\r') ? line.slice(0, -1) : line;
    },
  };

  function decoded(): string | Problem {
    try {
      const [only] = parts;
      return decoder.decode(parts.length === 1 && only ? only : joined(parts));
    } catch {
      return { field: 'line', value: undefined, message: 'is no text in UTF-8', allowed: 'a file as it was made here' };
    }
  }
}

function tooLong(): Problem {
  const allowed = `a line of at most ${MOST_FILE_LINE_SIGNS} bytes`;
  return { field: 'line', value: undefined, message: 'is too long', allowed };
}
