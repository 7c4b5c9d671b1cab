// Every safety value at, just under and just over it, by the name it has in docs/rules.md.

import { describe, it } from 'vitest';
import { valueFiles } from './values.ts';

describe.each(valueFiles)('the safety values of $file', ({ values }) => {
  it.each(values)('$name: $stated', ({ holds }) => {
    holds();
  });
});
