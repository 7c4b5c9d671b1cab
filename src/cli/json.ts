// JSON from a file or a pipe: read whole, or refused with the place where it went wrong and what was wanted
// there. Node's own reader tells no place for a cut file and keeps the last of two equal fields in silence;
// a field that stands twice is refused here, since nobody can know which of the two was meant.

/** A text read as JSON, or the places where it is not. */
export type Parsed = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly fault: Fault };

/** One fault of a text: where (counted from 1), whether the text ended there, and what was wanted. */
export interface Fault {
  readonly line: number;
  readonly column: number;
  readonly kind: 'cut' | 'unexpected' | 'twice' | 'deep';
  readonly found: string;
  readonly wanted: string;
}

const DEEPEST = 200;
const SPACE = /[ \t\n\r]*/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;

/** Reads one whole JSON text. */
export function parseJson(text: string): Parsed {
  const fault = firstFault(text);
  return fault === undefined ? { ok: true, value: JSON.parse(text) } : { ok: false, fault };
}

/** The first place where a text stops being JSON; nothing when it is JSON to its end. */
export function firstFault(text: string): Fault | undefined {
  let at = 0;
  try {
    value(1);
    space();
    if (at < text.length) throw wanted('the end of the text');
    return undefined;
  } catch (error) {
    if (error instanceof Stop) return faultAt(text, error);
    throw error;
  }

  function value(depth: number): void {
    if (depth > DEEPEST) throw new Stop(at, 'deep', '');
    space();
    if (text[at] === '{') members(depth);
    else if (text[at] === '[') items(depth);
    else if (!quoted() && !takes(NUMBER) && !takes(WORD)) throw wanted('a value');
  }

  function members(depth: number): void {
    const seen = new Set<string>();
    at++;
    space();
    if (skip('}')) return;
    do {
      space();
      const begin = at;
      if (!quoted()) throw wanted('a field name in double quotes');
      const name = JSON.parse(text.slice(begin, at)) as string;
      if (seen.has(name)) throw new Stop(begin, 'twice', name);
      seen.add(name);
      space();
      if (!skip(':')) throw wanted('a colon');
      value(depth + 1);
      space();
    } while (skip(','));
    if (!skip('}')) throw wanted('a comma or }');
  }

  function items(depth: number): void {
    at++;
    space();
    if (skip(']')) return;
    do {
      value(depth + 1);
      space();
    } while (skip(','));
    if (!skip(']')) throw wanted('a comma or ]');
  }

  function space(): void {
    takes(SPACE);
  }

  function skip(sign: string): boolean {
    if (text[at] !== sign) return false;
    at++;
    return true;
  }

  function takes(pattern: RegExp): boolean {
    pattern.lastIndex = at;
    if (!pattern.test(text)) return false;
    at = pattern.lastIndex;
    return true;
  }

  /** A text in double quotes; one that is begun and not ended well is a fault at the place it breaks. */
  function quoted(): boolean {
    if (text[at] !== '"') return false;
    for (let end = at + 1; end < text.length; end++) {
      if (text[end] === '"') {
        at = end + 1;
        return true;
      }
      if (text.charCodeAt(end) < 0x20) throw new Stop(end, 'unexpected', 'the closing double quote');
      if (text[end] === '\\') {
        ESCAPE.lastIndex = end;
        if (!ESCAPE.test(text))
          throw new Stop(
            end,
            /^\\(?:u[0-9a-fA-F]{0,3})?$/.test(text.slice(end)) ? 'cut' : 'unexpected',
            'a whole escape',
          );
        end = ESCAPE.lastIndex - 1;
      }
    }
    throw new Stop(text.length, 'cut', 'the closing double quote');
  }

  function wanted(what: string): Stop {
    return new Stop(at, isCut() ? 'cut' : 'unexpected', what);
  }

  /** The text ends here, or in the middle of a number or word that more letters would have made whole. */
  function isCut(): boolean {
    const rest = text.slice(at);
    return /^(?:-|\.|[eE][+-]?)?$/.test(rest) || ['true', 'false', 'null'].some((word) => word.startsWith(rest));
  }
}

class Stop extends Error {
  readonly at: number;
  readonly kind: Fault['kind'];
  readonly what: string;
  constructor(at: number, kind: Fault['kind'], what: string) {
    super(kind);
    this.at = at;
    this.kind = kind;
    this.what = what;
  }
}

function faultAt(text: string, { at, kind, what }: Stop): Fault {
  const before = text.slice(0, at).split(/\r\n|\r|\n/);
  const found = kind === 'twice' ? what : ([...text.slice(at, at + 2)][0] ?? '');
  return { line: before.length, column: (before.at(-1) ?? '').length + 1, kind, found, wanted: what };
}
