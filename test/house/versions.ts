// What the list of versions must hold: whatever moved has a new number, and nothing has a new number that did not move.

/** One row of data/versions.json: a state of tables and formulas that figures were computed with. */
export interface Row {
  readonly tables: number;
  /** Date of the row. */
  readonly on: string;
  readonly digest: string;
  readonly model: number;
  /** Digest of the answers to fixed questions, test/scenarios/answers.ts. */
  readonly answers: string;
  readonly why: string;
}

/** One sentence for each row that breaks the rule. */
export function rowFaults(rows: readonly Row[]): readonly string[] {
  return rows.flatMap((row, i) => {
    const before = rows[i - 1];
    const fault = before === undefined ? undefined : stepFault(before, row);
    const lacking = row.why.trim() === '' ? 'says nothing in why' : fault;
    return lacking === undefined ? [] : [`data/versions.json, row ${i + 1}: ${lacking}`];
  });
}

function stepFault(before: Row, row: Row): string | undefined {
  const [tablesBy, modelBy] = [row.tables - before.tables, row.model - before.model];
  const [tablesMoved, answersMoved] = [row.digest !== before.digest, row.answers !== before.answers];
  if (row.on < before.on) return 'is older than the row before it';
  if (tablesBy !== (tablesMoved ? 1 : 0)) return 'raises tables by one where the digest moved, and only there';
  if (tablesMoved) return modelBy === 0 || modelBy === 1 ? undefined : 'raises model by at most one';
  if (!answersMoved || modelBy !== 1) return 'raises model by one where the answers moved under the same tables';
  return undefined;
}
