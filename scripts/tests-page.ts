// docs/tests.md: what the tests notice. Changes of the code and figures of the tables each write their own section of it, and
// leave the other as it is.

import { existsSync, readFileSync, writeFileSync } from 'node:fs';

/** From the root of the project. */
export const TESTS_PAGE = 'docs/tests.md';

/** A page with the section that begins with this heading made anew, at its end where it had none. */
export function withSection(page: string, heading: string, section: string): string {
  const start = page.indexOf(heading);
  if (start === -1)
    return `${page === '' ? '# What the tests notice\n' : page.trimEnd()}\n\n${section}`.replace(/\n{3,}/g, '\n\n');
  const rest = page.slice(start + heading.length);
  const next = rest.search(/\n## /);
  return page.slice(0, start) + section + (next === -1 ? '' : rest.slice(next));
}

/** Writes a section into the page. */
export function writeSection(heading: string, section: string): void {
  const standing = existsSync(TESTS_PAGE) ? readFileSync(TESTS_PAGE, 'utf8') : '';
  writeFileSync(TESTS_PAGE, withSection(standing, heading, section));
}
