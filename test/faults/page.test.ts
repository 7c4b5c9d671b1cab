// The page of the counts: a section anew leaves the others as they were measured, and a broken piece has failed.

import { describe, expect, it } from 'vitest';
import { pageWith, sectionsOf } from './page.ts';
import { type Found, loadPiece, pieceNames, runPiece } from './piece.ts';

const kills: Found = { title: 'Kills', lines: ['100 kills: 0 entries missing.'], failed: 0, aside: ['took 3 s'] };
const files: Found = { title: 'Odd files', lines: ['44 files: 1 taken in half.'], failed: 1 };

describe('docs/reliability.md', () => {
  const page = pageWith('', new Map(Object.entries({ kills, files })), ['files', 'kills']);

  it('holds the lines of each piece and what failed, and nothing that was said aside', () => {
    expect(sectionsOf(page).get('files')).toBe('## Odd files\n\n- 44 files: 1 taken in half.\n\n**Failed: 1.**');
    expect(sectionsOf(page).get('kills')).toBe('## Kills\n\n- 100 kills: 0 entries missing.\n\nFailed: 0.');
    expect(page).not.toContain('took 3 s');
  });

  it('keeps a section that was not run, takes in a new one, and drops one whose piece is gone', () => {
    const mended = { ...files, lines: ['44 files: 0 taken in half.'], failed: 0 };
    const again = pageWith(page, new Map([['files', mended]]), ['files', 'kills']);
    expect(sectionsOf(again).get('kills')).toBe(sectionsOf(page).get('kills'));
    expect(again).toContain('0 taken in half');
    expect(again).not.toContain('1 taken in half');
    expect([...sectionsOf(pageWith(again, new Map(), ['kills'])).keys()]).toEqual(['kills']);
    expect(pageWith(again, new Map(), ['files', 'kills'])).toBe(again);
  });
});

describe('a piece', () => {
  it('that throws has failed', async () => {
    const run = () => Promise.reject(new Error('no such port'));
    expect(await runPiece({ name: 'worker', run }, { scale: 1 })).toMatchObject({ title: 'worker', failed: 1 });
  });

  it('is every file of the folder', async () => {
    const pieces = await Promise.all(pieceNames().map(loadPiece));
    for (const { run } of pieces) expect(run).toBeTypeOf('function');
  });
});
