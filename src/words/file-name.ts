// The name of a file of the record: what it is, of which plot, made on which phone, and when by its clock. Only letters,
// digits and hyphens, so that any device keeps it as it is.

import { deviceTag } from './device-tag.ts';

/** Letters of a plot's name that are kept; a longer one ends with its last whole word. */
const MOST_LETTERS = 30;

/** "tilthwright-sedge-corner-early-fork-2026-07-07-1835.jsonl". */
export function fileName(of: { readonly plot: string; readonly device?: string; readonly now: string }): string {
  const at = of.now.replace('T', '-').replace(':', '');
  return `tilthwright-${plainName(of.plot)}-${of.device === undefined ? 'phone' : deviceTag(of.device)}-${at}.jsonl`;
}

function plainName(plot: string): string {
  const plain = plot
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  if (plain.length <= MOST_LETTERS) return plain || 'plot';
  const cut = plain.slice(0, MOST_LETTERS + 1);
  const word = cut.lastIndexOf('-');
  return word > 0 ? cut.slice(0, word) : plain.slice(0, MOST_LETTERS);
}
