// From what stands on the sheet of two cases to the two questions that are answered. A case whose entries cannot be read
// has no question; the sentence stands at its field.

import type { CaseInput } from '#tasks/two-cases.ts';
import { caseRoom } from '#words/en/two-cases-labels.ts';
import { readFigure, readTyped, type TypedReading } from '../parts/typed.ts';
import { readAlkalinity } from '../weigh-in/alkalinity.ts';
import type { Draft } from '../weigh-in/draft.ts';
import { lotField, type Reading, readDraft, type Trouble } from '../weigh-in/reading.ts';
import { type CasesDraft, withChanges } from './draft.ts';

export interface CaseReading {
  readonly draft: Draft;
  readonly amounts: Reading;
  readonly warmthC: number | undefined;
  readonly troubles: ReadonlyMap<string, Trouble>;
  readonly input: CaseInput | undefined;
}

const LEAST_ROOM_M3 = 0.1;
const MOST_ROOM_M3 = 1000;

/** The room's size; only asked where it stands in one. */
export function readRoom({ roomM3 }: Pick<CasesDraft, 'roomM3'>): TypedReading {
  const text = roomM3.settled.replace(/\s*m(?:³|3)$/u, '');
  return readFigure(
    { text, settled: text },
    { least: LEAST_ROOM_M3, most: MOST_ROOM_M3, say: () => caseRoom.badSize(roomM3.settled.trim()) },
  );
}

/** Reads one of the cases. */
export function readCase(cases: CasesDraft, which: 'before' | 'after'): CaseReading | undefined {
  if (cases.base === undefined) return undefined;
  const changed = which === 'after' ? cases.changed : {};
  const draft = withChanges(cases.base, changed);
  const amounts = readDraft(draft, readAlkalinity);
  const warmth = readTyped(changed.warmth ?? cases.warmth, 'temperature', { style: draft.style });
  const troubles = new Map(amounts.troubles);
  if (warmth.trouble) troubles.set('warmth', warmth.trouble);
  const { question } = amounts;
  const input =
    question === undefined || warmth.value === undefined
      ? undefined
      : {
          ...question,
          temperatureC: warmth.value,
          chop: changed.chop ?? cases.chop,
        };
  return { draft, amounts, warmthC: warmth.value, troubles, input };
}

/** Net weight of a lot in a case, kg; undefined where it is left out or cannot be read. */
export function netKg(reading: CaseReading | undefined, key: number): number | undefined {
  return reading?.amounts.lotKg.get(key);
}

/** Whether a lot's weight cannot be read. */
export function lotTrouble(reading: CaseReading | undefined, key: number): Trouble | undefined {
  return reading?.troubles.get(lotField(key, 'weight'));
}
