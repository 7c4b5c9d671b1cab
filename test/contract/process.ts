// The command line as a person meets it: a process of its own, with an input, an output and an exit code.

import { spawn } from 'node:child_process';
import { root } from '../house/code.ts';

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line to its end, with a text on its standard input. */
export function tilthwright(args: readonly string[], input = ''): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...args], { cwd: root });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (piece: string) => {
      out += piece;
    });
    child.stderr.setEncoding('utf8').on('data', (piece: string) => {
      err += piece;
    });
    child.stdin.on('error', () => {
      // A run that refuses its call does not read its input: the pipe closes early, as it may.
    });
    child.once('error', reject);
    child.once('close', (code) => resolve({ code, out, err }));
    child.stdin.end(input);
  });
}
