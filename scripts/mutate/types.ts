// A change that the types refuse never reaches a test: it is no mutant. They are asked in a copy of the project, so that
// a run that is broken off leaves no change behind.

import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { copyProject } from '../project-copy.ts';

const COPY = 'build/mutate/typed';
/** Rules on what is unused refuse the look of a change, not its meaning. */
const LAX = ['--noUnusedLocals', 'false', '--noUnusedParameters', 'false', '--allowUnreachableCode', 'true'];

/** Makes the copy anew, with the types of every floor built. */
export function copyForTypes(): void {
  rmSync(COPY, { recursive: true, force: true });
  mkdirSync(COPY, { recursive: true });
  const projects = readdirSync('.').filter((file) => /^(tsconfig.*|package)\.json$/.test(file));
  copyProject('.', COPY, ['src', 'scripts', ...projects]);
  const { status, stdout } = compiler(['-b', 'src/tasks']);
  if (status !== 0) throw new Error(`mutate: the types refuse the code as it is: ${stdout}`);
}

/** Whether the types of a project refuse a file with this text. */
export function refusedByTypes(project: string, file: string, text: string): boolean {
  const copied = path.join(COPY, file);
  writeFileSync(copied, text);
  const { status, stdout } = compiler(['-p', project, '--noEmit', ...LAX]);
  writeFileSync(copied, readFileSync(file));
  if (status !== 0 && !stdout.includes('error TS')) throw new Error(`mutate: the types could not be asked: ${stdout}`);
  return status !== 0;
}

const compiler = (options: readonly string[]) =>
  spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', ...options, '--pretty', 'false'], {
    cwd: COPY,
    encoding: 'utf8',
  });
