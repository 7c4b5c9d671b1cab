// The engine knows no clock, no chance, no place and no outside world: what it needs is handed to it.

import { lineOf, type Node, parse, type SourceFile, walk } from './code.ts';

const NAMES = [
  ...['Date', 'Intl', 'performance', 'setTimeout', 'setInterval', 'queueMicrotask'],
  ...['process', 'console', 'globalThis', 'window', 'document', 'navigator', 'self', 'global'],
  ...['fetch', 'crypto', 'localStorage', 'indexedDB', 'XMLHttpRequest', 'WebSocket', 'Worker', 'require', 'eval'],
];
const MEMBERS = ['random', 'toLocaleString', 'localeCompare', 'toLocaleUpperCase', 'toLocaleLowerCase'];

/** One line for each use of the outside world in a file. */
export function purityFaults(source: SourceFile): readonly string[] {
  const faults: string[] = [];
  walk(parse(source).program, (node, above) => {
    const used = outside(node, above.at(-1));
    if (used !== undefined) faults.push(`${source.file}:${lineOf(source.text, node.start)} uses ${used}`);
  });
  return faults;
}

function outside(node: Node, parent: Node | undefined): string | undefined {
  if (node.type === 'MemberExpression') {
    const { property } = node as unknown as { property: Node };
    const name = String(property.name ?? property.value);
    return MEMBERS.includes(name) ? `.${name}` : undefined;
  }
  if (node.type !== 'Identifier' || !NAMES.includes(String(node.name))) return undefined;
  const isMember = parent?.type === 'MemberExpression' && parent.property === node && parent.computed !== true;
  const isKey = (parent?.type === 'Property' || parent?.type === 'TSPropertySignature') && parent.key === node;
  return isMember || isKey ? undefined : String(node.name);
}
