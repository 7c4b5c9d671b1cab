// Every safety value at, just under and just over it, by the name it has in docs/rules.md.

import { describe, it } from 'vitest';
import { valueFiles } from './values.ts';

for (const { file, values } of valueFiles) {
  describe(`the safety values of ${file}`, () => {
    for (const { name, stated, holds } of values) it(`${name}: ${stated}`, holds);
  });
}
