// What a file may put before a reader's eyes: its texts, found by the parser, and the words kept off screens.

import { lineOf, type Node, parse, type SourceFile, walk } from './code.ts';

/** Words and phrases that no screen, label or answer holds, by the reason they stay off. Whole words, any case. */
export const keptOff: Readonly<Record<string, readonly string[]>> = {
  'it talks like a product': [
    ...['dashboard', 'smart', 'coach', 'assistant', 'wizard', 'hub', 'studio', 'pro', 'premium', 'streak', 'badge'],
    ...['level', 'score', 'health score', 'insights', 'journey', 'community feed', 'my garden', 'plant care'],
    ...['planner', 'builder', 'optimiser', 'optimizer', 'tracker'],
  ],
  'it promises more than is known': [
    ...['liquid gold', 'black gold', 'miracle', 'magic', 'boost', 'boosts', 'supercharge', 'power', 'secret'],
    ...['probiotic', 'inoculant', 'activator', 'natural', 'chemical-free', 'hack', 'game changer', 'super-\\w*'],
    ...['bio-\\w*', 'tonic'],
  ],
  'it is false precision or false comfort': [
    ...[
      'guaranteed',
      'guarantee',
      'proven',
      'safe',
      'safely',
      'perfect',
      'optimal',
      'exact N-P-K',
      '100[\\s\\u00a0]?%',
    ],
    ...['kills', 'cures', 'immune', 'sterile', 'pathogen-free', 'pet-safe', 'replaces'],
  ],
  'it is loose': [
    ...['parts', 'a capful', 'a splash', 'cool place', 'a few weeks', 'good bacteria', 'bad bacteria'],
    ...['weak-tea colour', 'brew', 'brewing'],
  ],
  'it is a name of the code, not of the grower': ['journal', 'ledger', 'stream'],
};

/** One text of a file that a reader may come to see. */
export interface Shown {
  readonly text: string;
  readonly at: number;
}

/** Attributes of the page that are read by eye or ear; every other attribute is for the machine. */
const SPOKEN = [
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'aria-valuetext',
  'title',
  'alt',
  'placeholder',
  'label',
];

/** The texts of a file: strings, templates and the words between tags; names of imports and fields apart. */
export function shownIn(source: SourceFile): readonly Shown[] {
  const found: Shown[] = [];
  walk(parse(source).program, (node, above) => {
    // A value stays a value inside `as const` and the like; what stands behind the `as` is a type, and no text.
    const wraps = /^TS(As|Satisfies|NonNull)Expression$/.test(node.type);
    if (!wraps && /^(Import|ExportAll|TS)/.test(node.type)) return false;
    if (node.type === 'JSXAttribute' && !SPOKEN.includes(String((node.name as Node).name))) return false;
    const text = textOf(node);
    if (text !== undefined && !isKey(node, above.at(-1))) found.push({ text, at: node.start });
    return true;
  });
  return found;
}

function textOf(node: Node): string | undefined {
  if (node.type === 'JSXText') return String(node.value);
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type === 'TemplateElement') return String((node.value as { cooked?: string }).cooked ?? '');
  return undefined;
}

/** A string that names a field: `a['b']`, `{ 'b': 1 }`, or that is compared: `case 'b'`, `a === 'b'`. */
function isKey(node: Node, parent: Node | undefined): boolean {
  if (parent === undefined) return false;
  if (parent.type === 'Property') return parent.key === node;
  if (parent.type === 'ExportNamedDeclaration') return parent.source === node;
  if (parent.type === 'MemberExpression') return parent.property === node;
  if (parent.type === 'SwitchCase') return parent.test === node;
  return parent.type === 'BinaryExpression' && /^[!=]==?$/.test(String(parent.operator));
}

/** One whole text of one file that may hold a kept-off word, and why. */
export interface Exception {
  readonly file: string;
  readonly text: string;
  readonly reason: string;
}

/** One line for each kept-off word that a reader may come to see. */
export function wordFaults(source: SourceFile, exceptions: readonly Exception[] = []): readonly string[] {
  return shownIn(source).flatMap(({ text, at }) =>
    keptOffIn(text)
      .filter(() => !exceptions.some((one) => one.file === source.file && one.text === text))
      .map(({ word, reason }) => `${source.file}:${lineOf(source.text, at)} says "${word}": ${reason}`),
  );
}

/** The kept-off words that a text holds. */
export function keptOffIn(text: string): readonly { readonly word: string; readonly reason: string }[] {
  return patterns.flatMap(({ pattern, reason }) => {
    const [word] = pattern.exec(text) ?? [];
    return word === undefined ? [] : [{ word: word.toLowerCase(), reason }];
  });
}

const patterns = Object.entries(keptOff).flatMap(([reason, words]) =>
  words.map((word) => ({ reason, pattern: new RegExp(`(?<![\\w-])${word.replaceAll(' ', '\\s+')}(?![\\w-])`, 'i') })),
);

/** What nobody here can claim of a feed, a bed or a harvest, in the languages of the screens. Whole words, any case. */
export const claims: Readonly<Record<string, readonly string[]>> = {
  en: ['safe', 'safely', 'safer', 'safest', 'sterile', 'sterilized', 'sterilised', 'proven', 'organic', 'organically'],
  de: [
    ...[
      'sicher',
      'sichere',
      'sicherer',
      'sicheren',
      'sicheres',
      'sicherem',
      'steril',
      'sterile',
      'sterilen',
      'steriler',
    ],
    ...['steriles', 'keimfrei', 'keimfreie', 'bewiesen', 'bewiesene', 'bewiesenen', 'erwiesen', 'nachweislich'],
    ...['bio', 'biologisch', 'biologische', 'biologischen', 'biologischer', 'ökologisch', 'unbedenklich', 'garantiert'],
  ],
};

/** One passage that may hold such a word, and why it claims nothing. */
export interface Unclaimed {
  /** A file of the code or of the data. */
  readonly file: string;
  /** Enough of the passage to know it by. */
  readonly passage: string;
  readonly reason: string;
}

/** The claiming words of a text, in any language. */
export function claimsIn(text: string): readonly string[] {
  return claimPatterns.flatMap((pattern) => pattern.exec(text)?.[0].toLowerCase() ?? []);
}

// Letters of every language count as letters, so that no word is found inside a longer one.
const claimPatterns = [...new Set(Object.values(claims).flat())].map(
  (word) => new RegExp(`(?<![\\p{L}\\p{N}_-])${word}(?![\\p{L}\\p{N}_-])`, 'iu'),
);

/** One line for each text of a file that claims what nobody here can; the texts themselves are found elsewhere. */
export function claimFaults(
  file: string,
  texts: readonly string[],
  allowed: readonly Unclaimed[] = [],
): readonly string[] {
  return texts.flatMap((text) =>
    claimsIn(text)
      .filter(() => !allowed.some((one) => one.file === file && text.includes(one.passage)))
      .map((word) => `${file} says "${word}" in: ${text.replace(/\s+/g, ' ').trim().slice(0, 160)}`),
  );
}
