// Every function that a room of the engine offers says where its arithmetic comes from.

import { type Node, parse, type SourceFile } from './code.ts';

const TAGS = ['@source', '@arithmetic', '@practice', '@memory'];

/** One line for each exported function without a docstring that names its source or one of the honest marks. */
export function docFaults(source: SourceFile): readonly string[] {
  const { program, comments } = parse(source);
  const faults: string[] = [];
  for (const statement of program.body as unknown as readonly Node[]) {
    const name = offered(statement);
    if (name === undefined) continue;
    const doc = comments.findLast(({ end }) => end <= statement.start);
    const near = doc !== undefined && source.text.slice(doc.end, statement.start).trim() === '';
    const text = near && doc.type === 'Block' && doc.value.startsWith('*') ? doc.value : '';
    if (!TAGS.some((tag) => new RegExp(`${tag}\\b`).test(text))) {
      faults.push(`${source.file} ${name}: its docstring names none of ${TAGS.join(', ')}`);
    }
  }
  return faults;
}

/** The name of a function that a statement exports; nothing for any other statement. */
function offered(statement: Node): string | undefined {
  if (statement.type !== 'ExportNamedDeclaration') return undefined;
  const declared = statement.declaration as Node | null;
  if (declared?.type === 'FunctionDeclaration') return String((declared.id as Node).name);
  if (declared?.type !== 'VariableDeclaration') return undefined;
  const [first] = declared.declarations as readonly [Node];
  const made = (first.init as Node | null)?.type;
  return made === 'ArrowFunctionExpression' || made === 'FunctionExpression'
    ? String((first.id as Node).name)
    : undefined;
}
