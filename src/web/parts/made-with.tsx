// The small print of whatever is printed: which tables and which formulas its figures came from. On the screen a print
// shows it where it will stand; a sheet shows it on paper alone.

import { version } from '#engine/tables/version.ts';
import { madeWith } from '#words/en/version.ts';

export function MadeWith() {
  return <p class="made-with">{madeWith(version)}</p>;
}
