// A version of the page: its files by address, each with the digest its bytes must have. The build writes the list into the
// worker (vite.config.ts), so that worker and list are one file and can only arrive together.

/** One file, as the build lists it. */
export interface ListedFile {
  /** Address from the root, without the first slash. */
  readonly url: string;
  /** "sha256-" and the digest of the bytes, in base64. */
  readonly integrity: string;
}

export const SHELL = '/index.html';

/** What the shell of this program carries and no page of a network portal does. */
export const SHELL_MARK = '<meta name="application-name" content="Tilthwright"';

export interface Version {
  /** Another list is another version. */
  readonly name: string;
  /** Digests by path. */
  readonly files: ReadonlyMap<string, string>;
}

export async function versionOf(listed: readonly ListedFile[]): Promise<Version> {
  const files = new Map(listed.map(({ url, integrity }) => [`/${url.replace(/^\//, '')}`, integrity]));
  const text = [...files].sort(([a], [b]) => (a < b ? -1 : 1)).join('\n');
  return { name: await digestOf(new TextEncoder().encode(text)), files };
}

/** "sha256-…" of some bytes. */
export async function digestOf(bytes: BufferSource): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return `sha256-${btoa(String.fromCharCode(...digest))}`;
}

/** Content types by what a name ends in; a file with another ending is taken with any. */
const TYPES: Readonly<Record<string, RegExp>> = {
  html: /^text\/html\b/,
  js: /^(text|application)\/javascript\b/,
  css: /^text\/css\b/,
  svg: /^image\/svg\+xml\b/,
  wasm: /^application\/wasm\b/,
};

/** Why an answer is not the file that was listed; nothing when it is. Reads the answer: hand in a copy. */
export async function whyNot(answer: Response, path: string, digest: string): Promise<string | undefined> {
  if (answer.status !== 200) return `status ${answer.status}`;
  if (answer.redirected || answer.type === 'opaque' || answer.type === 'opaqueredirect') return 'redirected';
  const type = answer.headers.get('content-type') ?? '';
  const wanted = TYPES[path.split('.').at(-1) ?? ''];
  if (wanted !== undefined && !wanted.test(type)) return `type ${type}`;
  const bytes = await answer.arrayBuffer();
  if (path === SHELL && !new TextDecoder().decode(bytes).includes(SHELL_MARK)) return 'no mark of ours';
  return (await digestOf(bytes)) === digest ? undefined : 'other bytes';
}
