// The command line: npm run -s tilthwright -- WORD [FILE|-] [--json] [--why]
// This file only ties a run to the real process; what a run does stands in run.ts.

import '#node-version';
import { sayOwnFault } from '#words/en/command.ts';
import { run } from './run.ts';
import { visibleJson } from './visible.ts';

// npm starts its scripts in the folder of the package; a file name is meant from where the person stands.
const startedByNpm = process.env.npm_lifecycle_event === 'tilthwright';
const folder = (startedByNpm && process.env.INIT_CWD) || process.cwd();

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // A reader that has seen enough (`| head`) closes the pipe: no fault of anybody.
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { out, err, code } = await run(process.argv.slice(2), { stdin: process.stdin, folder });
  process.stdout.write(out);
  process.stderr.write(err);
  process.exitCode = code;
} catch (error) {
  const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`${visibleJson(sayOwnFault(what))}\n`);
  process.exitCode = 1;
}
