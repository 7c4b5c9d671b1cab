// Random histories of a page that is kept for the time without a signal: new versions are put up, their files are answered
// rightly, wrongly or not at all, the worker is killed or finds its disk full, versions are taken. After each step the page
// is opened without a network, and must be the last version that was taken, whole.

import fc from 'fast-check';
import { answerFile, answerPage, clearAway, install, type World } from '#web/offline/keep.ts';
import { digestOf, type ListedFile, SHELL, SHELL_MARK, type Version, versionOf } from '#web/offline/version.ts';

export const ANSWERS = [
  ...(['right', 'error-500', 'gone-404', 'portal-page', 'other-bytes', 'cut-short', 'redirected'] as const),
  ...(['other-type', 'no-answer', 'killed', 'disk-full'] as const),
] as const;
export type Answer = (typeof ANSWERS)[number];

type Step =
  | { readonly act: 'put-up'; readonly changed: readonly number[] }
  | { readonly act: 'update'; readonly answers: readonly Answer[] }
  | { readonly act: 'take' }
  | { readonly act: 'lose'; readonly file: number };

const FILES = 4;
const wrong = fc.constantFrom(...ANSWERS);
const answers = fc.oneof(
  { weight: 2, arbitrary: fc.constant<readonly Answer[]>([]) },
  {
    weight: 5,
    arbitrary: fc.array(
      fc.oneof({ weight: 3, arbitrary: fc.constant<Answer>('right') }, { weight: 2, arbitrary: wrong }),
      { minLength: 1, maxLength: FILES + 1 },
    ),
  },
  // A portal answers everything alike.
  { weight: 1, arbitrary: wrong.map((one): readonly Answer[] => Array(FILES + 1).fill(one)) },
);

/** What happens to a page in a season. */
export const season: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.oneof(
    { weight: 3, arbitrary: fc.record({ act: fc.constant('put-up' as const), changed: fc.subarray([1, 2, 3, 4]) }) },
    { weight: 6, arbitrary: fc.record({ act: fc.constant('update' as const), answers }) },
    { weight: 3, arbitrary: fc.constant({ act: 'take' as const }) },
    { weight: 1, arbitrary: fc.record({ act: fc.constant('lose' as const), file: fc.nat(FILES) }) },
  ),
  { minLength: 3, maxLength: 20 },
);

/** What came of it. */
export interface Told {
  /** Answers that a worker was given, by what was wrong with them. */
  readonly answers: Map<Answer, number>;
  updates: number;
  refused: number;
  taken: number;
  openings: number;
}

interface Site {
  readonly version: Version;
  readonly bodies: ReadonlyMap<string, string>;
}

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  svg: 'image/svg+xml',
};
const PORTAL = '<!doctype html><title>Please sign in</title>';

/** Lives through a season. @throws Error where the page does not open, or opens as anything but the version taken last */
export async function live(steps: readonly Step[]): Promise<Told> {
  const told: Told = { answers: new Map(), updates: 0, refused: 0, taken: 0, openings: 0 };
  const kept = new FakeCaches();
  let build = 0;
  let site = await siteOf([0, 0, 0, 0, 0]);
  await install(site.version, { caches: kept, ask: (path) => Promise.resolve(reply(site, path, 'right')) });
  let active = site;
  let waiting: Site | undefined;
  for (const step of steps) {
    if (step.act === 'put-up') {
      build++;
      site = await siteOf([build, ...[1, 2, 3, 4].map((i) => (step.changed.includes(i) ? build : 0))]);
    } else if (step.act === 'update') {
      told.updates++;
      if (await update(site, step.answers)) waiting = site;
      else told.refused++;
    } else if (step.act === 'take' && waiting !== undefined) {
      told.taken++;
      [active, waiting] = [waiting, undefined];
      await clearAway(active.version, { caches: kept, ask: noSignal });
    } else if (step.act === 'lose') {
      await lose(active, step.file);
    }
    await opens();
  }
  return told;

  /** One try at an update; whether the version is whole afterwards. */
  async function update(to: Site, given: readonly Answer[]): Promise<boolean> {
    let asked = 0;
    const world: World = {
      caches: kept,
      async ask(path) {
        const answer = given[asked++] ?? 'right';
        told.answers.set(answer, (told.answers.get(answer) ?? 0) + 1);
        if (answer === 'disk-full') kept.full = true;
        return reply(to, path, answer);
      },
    };
    try {
      await install(to.version, world);
      return true;
    } catch {
      return false;
    } finally {
      kept.full = false;
    }
  }

  /** The browser loses one file of a version; with a signal it is there again, and no other bytes for it. */
  async function lose(of: Site, file: number): Promise<void> {
    const path = [...of.version.files.keys()][file] ?? SHELL;
    kept.lose(of.version, path);
    for (const answer of ['portal-page', 'other-bytes'] as const) {
      const world = { caches: kept, ask: (one: string) => Promise.resolve(reply(of, one, answer)) };
      const got = await answerFile(of.version, path, world).catch(() => undefined);
      if (got !== undefined) await sameBytes(of, path, got);
    }
    const got = await answerFile(of.version, path, {
      caches: kept,
      ask: (one) => Promise.resolve(reply(of, one, 'right')),
    });
    await sameBytes(of, path, got);
  }

  /** Opens the page with no network: the shell at any address, and each file of it. */
  async function opens(): Promise<void> {
    told.openings++;
    const world = { caches: kept, ask: noSignal };
    for (const address of ['/', '/peg/14', SHELL]) {
      await sameBytes(active, SHELL, await answerPage(active.version, address, world));
    }
    for (const path of active.version.files.keys())
      await sameBytes(active, path, await answerFile(active.version, path, world));
  }
}

async function noSignal(): Promise<Response> {
  throw new TypeError('no signal');
}

async function sameBytes(of: Site, path: string, got: Response | undefined): Promise<void> {
  const text = await got?.text();
  if (text !== of.bodies.get(path))
    throw new Error(`${path} opened as ${text === undefined ? 'nothing' : JSON.stringify(text)}`);
}

/** A page of five files in the builds given; the shell changes with every build. */
async function siteOf(builds: readonly number[]): Promise<Site> {
  const bodies = new Map([[SHELL, `<!doctype html>${SHELL_MARK} /><title>build ${builds.join(' ')}</title>`]]);
  for (const [i, ending] of ['js', 'js', 'css', 'svg'].entries()) {
    const text = `file ${i} of build ${builds[i + 1]}`;
    bodies.set(`/assets/${i}-${builds[i + 1]}.${ending}`, text);
  }
  const listed: ListedFile[] = [];
  for (const [path, body] of bodies)
    listed.push({ url: path.slice(1), integrity: await digestOf(new TextEncoder().encode(body)) });
  return { version: await versionOf(listed), bodies };
}

function reply(site: Site, path: string, answer: Answer): Response {
  const right = site.bodies.get(path) ?? '';
  const type = TYPES[path.split('.').at(-1) ?? ''] ?? '';
  const as = (body: string, status = 200, contentType = type) =>
    new Response(body, { status, headers: { 'content-type': contentType } });
  if (answer === 'error-500') return as('The server failed.', 500, 'text/plain');
  if (answer === 'gone-404') return as('Nothing is kept here under that name.', 404, 'text/plain');
  if (answer === 'portal-page') return as(PORTAL, 200, 'text/html');
  if (answer === 'other-bytes') return as(`${right} of another build`);
  if (answer === 'cut-short') return as(right.slice(0, -5));
  if (answer === 'other-type') return as(right, 200, 'application/octet-stream');
  if (answer === 'redirected') return Object.defineProperty(as(right), 'redirected', { value: true });
  if (answer === 'no-answer' || answer === 'killed') throw new TypeError(answer);
  return as(right);
}

/** Caches in memory, in the order they were made, as far as keep.ts uses them. */
class FakeCaches {
  full = false;
  readonly #all = new Map<string, Map<string, { readonly body: string; readonly type: string }>>();

  lose(of: Version, path: string): void {
    for (const [name, cache] of this.#all) if (name.endsWith(of.name)) cache.delete(path);
  }

  async keys(): Promise<string[]> {
    return [...this.#all.keys()];
  }

  async delete(name: string): Promise<boolean> {
    return this.#all.delete(name);
  }

  async open(name: string): Promise<Cache> {
    const files = this.#all.get(name) ?? new Map<string, { readonly body: string; readonly type: string }>();
    this.#all.set(name, files);
    const cache: Pick<Cache, 'match' | 'put'> = {
      match: async (path) => {
        const kept = files.get(String(path));
        return kept && new Response(kept.body, { headers: { 'content-type': kept.type } });
      },
      put: async (path, response) => {
        if (this.full) throw new DOMException('no room', 'QuotaExceededError');
        files.set(String(path), { body: await response.text(), type: response.headers.get('content-type') ?? '' });
      },
    };
    return cache as Cache;
  }
}
