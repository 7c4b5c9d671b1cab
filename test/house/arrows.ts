// The floors and rooms of the house, and which may see which. This table is the map; ARCHITECTURE.md draws it.
// `tsc -b` keeps the floors by itself; this keeps the rooms, the packages, and says the reason in one line.

import path from 'node:path';
import { type Node, parse, type SourceFile, walk } from './code.ts';

interface Floor {
  /** Floors it may use. */
  readonly sees: readonly string[];
  /** Floors of which it may use the types alone. */
  readonly seesTypesOf: readonly string[];
  /** Files and rooms of such a floor that it may use whole; each with its reason beside it. */
  readonly doors?: readonly string[];
  /** Packages it may use; a trailing * stands for anything. */
  readonly packages: readonly string[];
}

export const floors: Readonly<Record<string, Floor>> = {
  engine: { sees: [], seesTypesOf: [], packages: [] },
  journal: { sees: ['engine'], seesTypesOf: [], packages: ['zod/mini'] },
  plot: { sees: ['journal', 'engine'], seesTypesOf: [], packages: [] },
  words: { sees: ['engine'], seesTypesOf: [], packages: [] },
  tasks: {
    sees: ['words', 'plot', 'journal', 'engine'],
    seesTypesOf: [],
    // The sun's rising and setting, a forecast's file and a linear solver are general matters: a library has them.
    packages: ['zod/mini', 'astronomy-engine', 'csv-parse/browser/esm/sync', 'highs'],
  },
  store: { sees: ['journal'], seesTypesOf: ['engine'], packages: ['idb'] },
  cli: { sees: ['tasks', 'words'], seesTypesOf: ['engine'], packages: ['node:*', 'zod/v4/core'] },
  web: {
    sees: ['tasks', 'words', 'plot', 'journal', 'store'],
    seesTypesOf: ['engine'],
    doors: [
      // What a sheet needs to ask and to draw. Whatever answers, it asks of tasks.
      'src/engine/quantity/', // reads an amount as it is typed
      'src/engine/scraps/', // names a sugar and a water, with their units
      'src/engine/tables/', // lists the materials, cites a source
      'src/engine/pail/shape.ts', // puts litres through the vessel's shape
    ],
    packages: ['solid-js', 'solid-js/*', '@solidjs/router', 'uqr', 'highs/runtime?url'],
  },
  server: { sees: [], seesTypesOf: [], packages: ['node:*', 'fastify', '@fastify/*'] },
};

/** The rooms of the engine in the order of the flow: each sees the rooms before it, and `tables`. */
export const rooms = ['quantity', 'scraps', 'pail', 'souring', 'bottle', 'can', 'heap', 'ground'] as const;
/** Rooms beside the flow, which see every room; of them the flow sees these files' types alone. */
export const beside: Readonly<Record<string, string>> = { rules: 'rules/rule.ts', working: 'working/working.ts' };

interface Import {
  readonly from: string;
  readonly typeOnly: boolean;
  readonly at: number;
}

/** Everything a file takes in: imports, re-exports, loads, and types named in place. */
export function importsOf(source: SourceFile): readonly Import[] {
  const { module, program } = parse(source);
  const found: Import[] = module.staticImports.map((one) => ({
    from: one.moduleRequest.value,
    typeOnly: one.entries.length > 0 && one.entries.every((entry) => entry.isType),
    at: one.start,
  }));
  for (const { entries } of module.staticExports) {
    for (const { moduleRequest, isType, start } of entries) {
      if (moduleRequest) found.push({ from: moduleRequest.value, typeOnly: isType, at: start });
    }
  }
  for (const { moduleRequest, start } of module.dynamicImports) {
    const from = source.text.slice(moduleRequest.start, moduleRequest.end).replace(/^['"`]|['"`]$/g, '');
    found.push({ from, typeOnly: false, at: start });
  }
  walk(program, (node) => {
    if (node.type !== 'TSImportType') return;
    const from = (node.source ?? node.argument) as Node & { value?: string };
    found.push({ from: String(from.value), typeOnly: true, at: node.start });
  });
  return found;
}

/** What every program takes in first, whatever floor it is on: it stops where Node is too old. */
const FIRST = '#node-version';

/** One line for each import of a file that goes against the map. */
export function arrowFaults(source: SourceFile): readonly string[] {
  const [, floor = ''] = source.file.split('/');
  const rule = floors[floor];
  if (rule === undefined) return [`${source.file}: no floor of the house is called "${floor}"`];
  return importsOf(source).flatMap((one) => {
    if (one.from === FIRST) return [];
    const why = against(source.file, floor, rule, one);
    return why === undefined ? [] : [`${source.file} imports ${one.from}: ${why}`];
  });
}

function against(file: string, floor: string, rule: Floor, one: Import): string | undefined {
  const target = placeOf(file, one.from);
  if (target === undefined) {
    const known = rule.packages.some((name) =>
      name.endsWith('*') ? one.from.startsWith(name.slice(0, -1)) : one.from === name,
    );
    return known ? undefined : `${floor} uses no such package`;
  }
  const [, other = ''] = target.split('/');
  if (!target.startsWith('src/')) return 'it is outside src';
  if (other !== floor) {
    if (rule.sees.includes(other) || rule.doors?.some((door) => target.startsWith(door))) return undefined;
    if (rule.seesTypesOf.includes(other)) return one.typeOnly ? undefined : `${floor} sees only types of ${other}`;
    return `${floor} does not see ${other}`;
  }
  return floor === 'engine' ? againstRooms(file, target, one.typeOnly) : undefined;
}

/** Where an import of ours leads, from the root of the tree; nothing for a package. */
function placeOf(file: string, from: string): string | undefined {
  if (from.startsWith('#')) return path.posix.join('src', from.slice(1));
  if (from.startsWith('.')) return path.posix.join(path.posix.dirname(file), from);
  return undefined;
}

function againstRooms(file: string, target: string, typeOnly: boolean): string | undefined {
  const [, , room = ''] = file.split('/');
  const [, , other = ''] = target.split('/');
  if (room === other) return undefined;
  if (room === 'tables') return 'tables sees no room';
  if (other === 'tables' || room in beside) return undefined;
  const order: readonly string[] = rooms;
  if (!order.includes(room)) return `no room of the engine is called "${room}"`;
  if (other in beside) {
    const types = target === `src/engine/${beside[other]}` && typeOnly;
    return types ? undefined : `a room sees only the types of ${beside[other]}`;
  }
  if (!order.includes(other)) return `no room of the engine is called "${other}"`;
  return order.indexOf(other) < order.indexOf(room) ? undefined : `${other} comes after ${room} in the flow`;
}
