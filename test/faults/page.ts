// docs/reliability.md: one section for each piece, under a mark with the piece's name, so that one piece can be
// measured anew while the sections of the others stay as they were measured.

import type { Found } from './piece.ts';

const HEAD = `# Reliability

Written by \`npm run faults\`: what was tried on purpose to lose a record, rewrite it, or make the program throw, how
often, and what failed. The counts are the same on every machine. \`npm run faults -- NAME\` runs one section anew;
\`--scale 0.01\` tries a hundredth of it and writes nothing. A short run of each is in \`npm test\`.
`;

const mark = (name: string) => `<!-- ${name} -->`;
const MARK = /^<!-- ([a-z0-9-]+) -->$/;

/** The sections of a page, by the name of their piece. */
export function sectionsOf(page: string): ReadonlyMap<string, string> {
  const sections = new Map<string, string[]>();
  let here: string[] = [];
  for (const line of page.split('\n')) {
    const name = MARK.exec(line)?.[1];
    if (name === undefined) here.push(line);
    else {
      here = [];
      sections.set(name, here);
    }
  }
  return new Map([...sections].map(([name, lines]) => [name, lines.join('\n').trim()]));
}

/** What one piece found, as a section. */
export function sectionOf({ title, lines, failed }: Found): string {
  const verdict = failed === 0 ? 'Failed: 0.' : `**Failed: ${failed}.**`;
  return [`## ${title}`, '', ...lines.map((line) => `- ${line}`), '', verdict].join('\n');
}

/** The page before, with the sections that were measured anew; a section whose piece is gone goes with it. */
export function pageWith(page: string, found: ReadonlyMap<string, Found>, names: readonly string[]): string {
  const before = sectionsOf(page);
  const sections = names.flatMap((name) => {
    const one = found.get(name);
    const section = one === undefined ? before.get(name) : sectionOf(one);
    return section === undefined ? [] : [`${mark(name)}\n${section}\n`];
  });
  return [HEAD, ...sections].join('\n');
}
