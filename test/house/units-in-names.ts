// Names carry units: whatever is a number or a band in the engine says in its name what it is counted in.
// A unit is one of the list below, or such units joined by Per; a basis (dry matter, fresh) may close it.

import { isNode, lineOf, type Node, parse, type SourceFile, walk } from './code.ts';

/** Units as they close a name: mass, amount, volume, length, area, time, warmth, share, pressure, force, salts, pure numbers. */
const UNITS = [
  ...['Kg', 'G', 'Mg', 'Ug', 'Mol', 'Mmol', 'Eq', 'Meq'],
  ...['L', 'Ml', 'M3', 'Cm3', 'M', 'Cm', 'Mm', 'M2', 'Cm2'],
  ...[
    'Litres',
    'Grams',
    'Days',
    'Day',
    'H',
    'S',
    'Weeks',
    'C',
    'Deg',
    'F',
    'K',
    'Percent',
    'Fraction',
    'Atm',
    'Bar',
    'Ppm',
    'Pa',
    'N',
    'KgForce',
    'DsPerM',
  ],
  ...['Ph', 'Pka', 'Cn', 'Factor', 'Count'],
];
/** What may stand under a Per, beside any unit. */
const BASES = ['Dm', 'Fresh', 'CaCo3'];

const unit = `(?:${UNITS.join('|')})`;
const CLOSES = new RegExp(`${unit}(?:Per${unit})*(?:${BASES.join('|')})?(?:Per${unit})*$`);

/** Whether a name closes with a unit: `massKg`, `bufferEqPerKgDmPerPh`, `days`. */
export function carriesUnit(name: string): boolean {
  const [whole] = CLOSES.exec(name) ?? [];
  if (whole !== undefined) return true;
  const alone = name.charAt(0).toUpperCase() + name.slice(1);
  return new RegExp(`^(?:${CLOSES.source})`).test(alone);
}

/** A name that is counted in nothing, or in whatever it is handed; with its reason. */
export type Allowed = Readonly<Record<string, string>>;

/** One line for each number or band of a file whose name tells no unit. */
export function nameFaults(source: SourceFile, allowed: Allowed): readonly string[] {
  return numberNames(source)
    .filter(({ name }) => !carriesUnit(name) && !(name in allowed))
    .map(({ name, at }) => `${source.file}:${lineOf(source.text, at)} ${name} tells no unit`);
}

/** Every parameter and property of a file that is a number or a band. */
export function numberNames(source: SourceFile): readonly { readonly name: string; readonly at: number }[] {
  const found: { name: string; at: number }[] = [];
  walk(parse(source).program, (node) => {
    if (node.type === 'TSPropertySignature' && isNode(node.key) && isQuantity(node.typeAnnotation)) {
      found.push({ name: String(node.key.name ?? node.key.value), at: node.start });
    }
    if (!Array.isArray(node.params)) return;
    for (const param of node.params as readonly Node[]) {
      const plain = param.type === 'AssignmentPattern' ? (param.left as Node) : param;
      if (plain.type === 'Identifier' && isQuantity(plain.typeAnnotation)) {
        found.push({ name: String(plain.name), at: plain.start });
      }
    }
  });
  return found;
}

/** A number or Range, also where it may be missing. */
function isQuantity(annotation: unknown): boolean {
  if (!isNode(annotation)) return false;
  switch (annotation.type) {
    case 'TSTypeAnnotation':
      return isQuantity(annotation.typeAnnotation);
    case 'TSNumberKeyword':
      return true;
    case 'TSTypeReference':
      return (annotation.typeName as Node).name === 'Range';
    case 'TSUnionType': {
      const types = (annotation.types as readonly Node[]).filter(
        ({ type }) => type !== 'TSUndefinedKeyword' && type !== 'TSNullKeyword',
      );
      return types.length > 0 && types.every(isQuantity);
    }
    default:
      return false;
  }
}
