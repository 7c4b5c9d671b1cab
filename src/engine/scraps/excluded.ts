// Plants and plant diseases that stay out of the pail, found by what the grower typed. The list itself is
// data/excluded.csv; what is said of each stands in rules/slip.ts and in words.

import { type ExcludedRow, excluded } from '../tables/index.ts';

/** Lower case, one space between words, and no marks that people type in different ways. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^\p{Letter}\p{Number}]+/gu, ' ')
    .trim();
}

/** The words by which each row is known: every common name, and the Latin names without "spp.". */
const known = excluded.map((row) => ({
  row,
  patterns: [
    ...row.names,
    ...row.latin.split(';').map((name) => name.replace(/ (spp\.|on .*)$/, '')),
    // The genus alone names a row that speaks of the whole genus.
    ...(row.latin.endsWith(' spp.') ? [row.latin.split(' ')[0] ?? ''] : []),
  ]
    .map(plain)
    .filter((name) => name !== '')
    .map((name) => new RegExp(`(?<!\\p{Letter})${name}(s|es)?(?!\\p{Letter})`, 'u')),
}));

/**
 * Every row that a typed name speaks of, in whole words: "Foxglove leaves", "tomatoes with late blight".
 * A name that holds a shorter one of another row finds both, which errs on the careful side.
 * @arithmetic look-up
 */
export function excludedIn(typed: string): readonly ExcludedRow[] {
  const text = plain(typed);
  return known.filter(({ patterns }) => patterns.some((one) => one.test(text))).map(({ row }) => row);
}
