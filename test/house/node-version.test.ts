// Every program of the house stops with a sentence where Node is too old, whichever file is started.

import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sayTooOld } from '../../scripts/node-version.mjs';
import { root } from './code.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'node-version-'));
  writeFileSync(
    path.join(folder, 'old.mjs'),
    "Object.defineProperty(process, 'versions', { value: { ...process.versions, node: '18.20.4' } });\n",
  );
});
afterAll(() => rm(folder, { recursive: true }));

describe('an old Node', () => {
  it.each(['18.20.4', '20.18.9', '16.0.0', '0.12.18'])('%s is told what it needs', (version) => {
    expect(sayTooOld(version)).toBe(`Node ${version} is too old for Tilthwright. Please install Node 20.19 or newer.`);
  });

  it.each(['20.19.0', '20.20.2', '22.0.0', '100.1.0'])('%s is new enough', (version) => {
    expect(sayTooOld(version)).toBe('');
  });

  it.each([
    'src/server/main.ts',
    'src/cli/main.ts',
    'scripts/ensure.mjs',
    'scripts/test.mjs',
    'scripts/tables.mjs',
    'scripts/validate.ts',
    'bench/main.ts',
  ])('is stopped by %s before anything else', (file) => {
    const old = pathToFileURL(path.join(folder, 'old.mjs')).href;
    const tried = spawnSync(process.execPath, ['--import', 'tsx', '--import', old, file], {
      cwd: root,
      encoding: 'utf8',
    });
    expect([tried.status, tried.stdout]).toEqual([1, '']);
    expect(tried.stderr.trim()).toBe('Node 18.20.4 is too old for Tilthwright. Please install Node 20.19 or newer.');
  });
});
