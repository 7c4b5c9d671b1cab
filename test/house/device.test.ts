// The browser's small storage throws where it is refused, and a throw at the wrong place leaves a page blank: one file asks it.

import { expect, it } from 'vitest';
import { codeUnder } from './code.ts';

it('is asked for by the facts of the device alone', () => {
  const files = codeUnder('src/web').filter(({ text }) => /\b(local|session)Storage\b/.test(text));
  expect(files.map(({ file }) => file)).toEqual(['src/web/app/device.ts']);
});
