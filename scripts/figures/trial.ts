// Moves figures in a copy of the project and says which outside tests notice: those whose expected values come from
// a publication, a source's own file, a stated caution or a sum by hand. The checkout itself is never touched.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { createVitest, type TestModule, type TestSpecification, type Vitest } from 'vitest/node';
import { copyProject } from '../project-copy.ts';
import { makeTables } from '../tables.mjs';
import type { Moved } from './draw.ts';

/** What is copied, beside the packages, which are only pointed to. */
const COPIED = ['data', 'docs', 'src', 'test', 'scripts', 'package.json', 'vitest.config.ts', 'tsconfig.base.json'];
/** Shelves and tests whose expected values come from outside the tables. */
const OUTSIDE = ['test/published/**/*.test.ts', 'test/worked/**/*.test.ts', 'test/values/values.test.ts'];
/** Published batches, run whole: a minute for one figure, so that they are asked only where they are wanted. */
const BATCHES = ['test/validation/scores.test.ts'];
/** Tables that the batches could notice. */
const OF_BATCHES = ['ferment.csv', 'chop.csv'];
/** Holds units against another program and reads no table. */
const WITHOUT_TABLES = ['test/published/gnu-units.test.ts'];
/** A page that is held to what the program last said is a pin, wherever its test is. */
const PINS = ['docs/validation.md'];

export interface Noticed {
  /** Files with a test that failed, in their order. */
  readonly by: readonly string[];
  /** Tests that failed, by name. */
  readonly tests: readonly string[];
  /** Files that could not be run at all: they notice nothing. */
  readonly unread: readonly string[];
}

export interface Trial {
  readonly data: string;
  readonly run: (moved?: Moved) => Promise<Noticed>;
  readonly close: () => Promise<void>;
}

/** A copy of the project in which figures can be moved, one at a time; with the published batches or without. */
export async function trial(root: string, { batches }: { batches: boolean }): Promise<Trial> {
  const copy = mkdtempSync(join(tmpdir(), 'figures-'));
  copyProject(root, copy, COPIED);
  const data = join(copy, 'data');
  const vitest = await createVitest('test', {
    root: copy,
    config: false,
    watch: false,
    include: [...OUTSIDE, ...(batches ? BATCHES : [])],
    exclude: WITHOUT_TABLES,
    reporters: [{}],
    isolate: false,
    fileParallelism: false,
    maxWorkers: 1,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  });
  await vitest.standalone();
  const place = { copy, data, sooner: new Map<string, Set<string>>() };
  return {
    data,
    run: (moved) => runWith(vitest, place, moved),
    close: async () => {
      await vitest.close();
      rmSync(copy, { recursive: true });
    },
  };
}

interface Place {
  readonly copy: string;
  readonly data: string;
  /** Files that noticed something of a table before: they are asked first. */
  readonly sooner: Map<string, Set<string>>;
}

async function runWith(vitest: Vitest, { copy, data, sooner }: Place, moved?: Moved): Promise<Noticed> {
  const put = (name: string, text: string) => {
    writeFileSync(join(copy, name), text);
    vitest.invalidateFile(join(copy, name));
  };
  const before = moved === undefined ? undefined : readFileSync(join(data, moved.figure.table), 'utf8');
  try {
    if (moved !== undefined) put(`data/${moved.figure.table}`, moved.text);
    regenerate(data, put);
    const all = await vitest.globTestSpecifications();
    const found: Noticed[] = [];
    for (const part of inTurn(all, { copy, sooner }, moved)) {
      const one = noticedBy((await vitest.runTestSpecifications([...part])).testModules, copy);
      found.push(one);
      if (moved === undefined || one.by.length === 0) continue;
      const known = sooner.get(moved.figure.table) ?? new Set();
      sooner.set(moved.figure.table, new Set([...known, ...one.by]));
      break;
    }
    return {
      by: found.flatMap(({ by }) => by),
      tests: found.flatMap(({ tests }) => tests),
      unread: found.flatMap(({ unread }) => unread),
    };
  } finally {
    if (moved !== undefined && before !== undefined) put(`data/${moved.figure.table}`, before);
  }
}

/** Files in the turn they are asked: those that noticed this table before, the others, and the slow ones. */
function inTurn(
  all: readonly TestSpecification[],
  { copy, sooner }: Pick<Place, 'copy' | 'sooner'>,
  moved: Moved | undefined,
): readonly (readonly TestSpecification[])[] {
  const name = ({ moduleId }: TestSpecification) => relative(copy, moduleId);
  const table = moved?.figure.table;
  const known = table === undefined ? undefined : sooner.get(table);
  const slow = all.filter((one) => BATCHES.includes(name(one)));
  const first = all.filter((one) => known?.has(name(one)) === true && !slow.includes(one));
  const others = all.filter((one) => !first.includes(one) && !slow.includes(one));
  const asked = table === undefined || OF_BATCHES.includes(table) ? slow : [];
  return [first, others, asked].filter(({ length }) => length > 0);
}

/** What is made of data/, made anew. */
function regenerate(data: string, put: (name: string, text: string) => void): void {
  const { faults, text, versionText } = makeTables(data);
  if (faults.length > 0) throw new Error(faults.join('\n'));
  put('src/engine/tables/generated.ts', text);
  put('src/engine/tables/made-version.ts', versionText);
}

function noticedBy(modules: readonly TestModule[], copy: string): Noticed {
  const at = (module: TestModule) => relative(copy, module.moduleId);
  const failed = modules.flatMap((module) =>
    [...module.children.allTests('failed')]
      .filter(({ fullName }) => !PINS.some((pin) => fullName.startsWith(pin)))
      .map(({ fullName }) => ({ file: at(module), fullName })),
  );
  const unread = modules.filter(
    (module) => module.state() === 'failed' && [...module.children.allTests()].length === 0,
  );
  return {
    by: [...new Set(failed.map(({ file }) => file))].sort(),
    tests: failed.map(({ fullName }) => fullName),
    unread: unread.map(at).sort(),
  };
}
