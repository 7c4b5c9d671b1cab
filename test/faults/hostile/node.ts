// A JSON text as a tree that can hold what JavaScript values cannot: a field that stands twice, a number no double
// holds, a piece that is no JSON at all.

export type Node = null | boolean | number | string | Node[] | Members | Raw;

/** An object as its fields stand in the text. */
export class Members {
  readonly list: [string, Node][];
  constructor(list: [string, Node][]) {
    this.list = list;
  }
}

/** A piece of text that stands as it is. */
export class Raw {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** A plain value as a tree of its own. */
export function nodeOf(value: unknown): Node {
  if (Array.isArray(value)) return value.map(nodeOf);
  if (typeof value === 'object' && value !== null) {
    const given = Object.entries(value).filter(([, one]) => one !== undefined);
    return new Members(given.map(([key, one]) => [key, nodeOf(one)]));
  }
  return value as null | boolean | number | string;
}

/** The same tree once more, so that a tree can be put into itself. */
export function copyOf(node: Node): Node {
  if (Array.isArray(node)) return node.map(copyOf);
  return node instanceof Members ? new Members(node.list.map(([key, one]) => [key, copyOf(one)])) : node;
}

/** The tree as text. */
export function textOf(node: Node): string {
  if (node instanceof Raw) return node.text;
  if (node instanceof Members)
    return `{${node.list.map(([key, one]) => `${JSON.stringify(key)}:${textOf(one)}`).join()}}`;
  if (Array.isArray(node)) return `[${node.map(textOf).join()}]`;
  return Object.is(node, -0) ? '-0' : JSON.stringify(node);
}

/** A place in a tree: what is there, and how to put something else there or take it away. */
export interface Place {
  readonly node: Node;
  readonly key: string | number;
  readonly put: (node: Node) => void;
  readonly remove: () => void;
}

/** Every place of a tree but its top. */
export function placesOf(top: Node): readonly Place[] {
  const places: Place[] = [];
  visit(top);
  return places;

  function visit(node: Node): void {
    if (node instanceof Members) {
      for (const entry of node.list) {
        places.push({
          node: entry[1],
          key: entry[0],
          put: (one) => {
            entry[1] = one;
          },
          remove: () => take(node.list, entry),
        });
        visit(entry[1]);
      }
    } else if (Array.isArray(node)) {
      for (const [i, item] of node.entries()) {
        places.push({
          node: item,
          key: i,
          put: (one) => {
            node[i] = one;
          },
          remove: () => take(node, item),
        });
        visit(item);
      }
    }
  }
}

function take<T>(list: T[], item: T): void {
  const at = list.indexOf(item);
  if (at >= 0) list.splice(at, 1);
}
