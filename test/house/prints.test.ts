// Whatever is printed names the tables and formulas that its figures came from.

import { expect, it } from 'vitest';
import { codeUnder } from './code.ts';

/** The frame around a print prints nothing of its own. */
const FRAME = 'src/web/print/frame.tsx';

it('every print, and every sheet on paper, shows its small print', () => {
  const prints = codeUnder('src/web/print').filter(({ file }) => file.endsWith('.tsx') && file !== FRAME);
  const sheet = codeUnder('src/web/app').filter(({ file }) => file.endsWith('/sheet.tsx'));
  expect(prints.length).toBeGreaterThan(4);
  expect([...prints, ...sheet].filter(({ text }) => !text.includes('<MadeWith />')).map(({ file }) => file)).toEqual(
    [],
  );
});
