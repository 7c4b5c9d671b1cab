// The open record, handed down to every sheet.

import { createContext, useContext } from 'solid-js';
import type { Record } from './record.ts';

export const RecordContext = createContext<Record>();

/** The open record; sheets are only shown when there is one. */
export function useRecord(): Record {
  const record = useContext(RecordContext);
  if (record === undefined) throw new Error('useRecord: no record is open above this sheet');
  return record;
}
