// Every import in src follows the map of arrows.ts.

import { describe, expect, it } from 'vitest';
import { arrowFaults } from './arrows.ts';
import { codeUnder } from './code.ts';

describe('the floors and rooms', () => {
  const files = codeUnder('src');

  it('are found', () => {
    const found = [...new Set(files.map(({ file }) => file.split('/')[1]))];
    expect(found).toEqual(expect.arrayContaining(['engine', 'plot', 'words', 'tasks', 'cli', 'web', 'server']));
  });

  it('are kept by every import', () => {
    expect(files.flatMap(arrowFaults)).toEqual([]);
  });
});

describe('the map of arrows', () => {
  it.each([
    ['a room that sees a later one', 'src/engine/pail/a.ts', "import { b } from '../can/b.ts';"],
    ['a room that sees a later one by subpath', 'src/engine/pail/a.ts', "import { b } from '#engine/can/b.ts';"],
    ['a room that re-exports a later one', 'src/engine/quantity/a.ts', "export * from '../pail/b.ts';"],
    ['a room that uses a rule', 'src/engine/pail/a.ts', "import { judge } from '../rules/rule.ts';"],
    ['a type of another rules file', 'src/engine/pail/a.ts', "import type { b } from '../rules/fit.ts';"],
    ['tables that see a room', 'src/engine/tables/a.ts', "import type { b } from '../quantity/range.ts';"],
    ['an engine that sees words', 'src/engine/pail/a.ts', "import type { b } from '#words/figures.ts';"],
    ['an engine that uses a package', 'src/engine/pail/a.ts', "import * as z from 'zod/mini';"],
    ['an engine that loads Node', 'src/engine/pail/a.ts', "const fs = await import('node:fs');"],
    ['a plot that sees tasks', 'src/plot/batch/a.ts', "import type { b } from '#tasks/b.ts';"],
    ['a plot that speaks', 'src/plot/batch/a.ts', "import { b } from '#words/en/b.ts';"],
    ['words that see tasks', 'src/words/en/a.ts', "import { b } from '../../tasks/b.ts';"],
    ['words that name a type of tasks in place', 'src/words/en/a.ts', "let a: import('#tasks/b.ts').B;"],
    ['a face that computes with the engine', 'src/cli/a.ts', "import { type A, b } from '#engine/can/b.ts';"],
    ['a screen that answers for itself', 'src/web/a.ts', "import { b } from '#engine/pail/fit.ts';"],
    ['a face that sees another', 'src/web/a.tsx', "import { b } from '#cli/b.ts';"],
    ['the whole of a package where a part is allowed', 'src/tasks/a.ts', "import * as z from 'zod';"],
    ['a face that sees a test', 'src/cli/a.ts', "import { b } from '../../test/house/code.ts';"],
    ['a floor that is none', 'src/helpers/a.ts', ''],
    ['a room that is none', 'src/engine/helpers/a.ts', "import { b } from '../pail/b.ts';"],
  ])('refuses %s', (_, file, text) => {
    expect(arrowFaults({ file, text })).toHaveLength(1);
  });

  it.each([
    ['a room and one before it', 'src/engine/can/a.ts', "import { b } from '../scraps/b.ts';"],
    ['a room and the tables', 'src/engine/scraps/a.ts', "import { b } from '../tables/index.ts';"],
    ['a room and the type of a rule', 'src/engine/pail/a.ts', "import type { Finding } from '../rules/rule.ts';"],
    ['rules and any room', 'src/engine/rules/a.ts', "import { b } from '../can/b.ts';"],
    ['a face and a type of the engine', 'src/web/a.tsx', "import type { Range } from '#engine/quantity/range.ts';"],
    ['a drawing and the shape of a vessel', 'src/web/a.ts', "import { b } from '#engine/pail/shape.ts';"],
    ['a form and the reading of amounts', 'src/web/a.ts', "import { b } from '#engine/quantity/parse.ts';"],
    ['a plot and the record', 'src/plot/batch/a.ts', "import { b } from '#journal/b.ts';"],
    ['a sheet and the plot', 'src/web/a.ts', "import { b } from '#plot/batch/b.ts';"],
    ['tasks and the schema package', 'src/tasks/a.ts', "import * as z from 'zod/mini';"],
  ])('allows %s', (_, file, text) => {
    expect(arrowFaults({ file, text })).toEqual([]);
  });
});
