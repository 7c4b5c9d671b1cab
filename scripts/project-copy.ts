// A copy of parts of the project, in which code or figures are changed on purpose: a run that is broken off leaves nothing
// behind in the checkout.

import { cpSync, symlinkSync } from 'node:fs';
import path from 'node:path';

/** Copies these files and folders into a folder; the packages are only pointed to. */
export function copyProject(root: string, into: string, names: readonly string[]): void {
  for (const name of names) cpSync(path.join(root, name), path.join(into, name), { recursive: true });
  symlinkSync(path.resolve(root, 'node_modules'), path.join(into, 'node_modules'), 'junction');
}
