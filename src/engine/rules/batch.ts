// What a batch's own state says about pouring it: no dose for an unknown jar, a lost or an unknown batch; not
// yet for one that is not ready or not held. Salt, acidity, leaves and nozzles are can.ts.

import { NOT_HELD_DAYS, RAW_SOIL_DAYS } from '../can/limits.ts';
import type { PourOrder } from '../can/pour.ts';
import type { Rule, Values } from './rule.ts';

/** A jar with an empty tag is a jar without one. */
function hasPeg(order: PourOrder): boolean {
  const peg = order.batch?.peg;
  return typeof peg === 'number' ? Number.isFinite(peg) : typeof peg === 'string' && peg.trim() !== '';
}

function pegOf(order: PourOrder): Values {
  return { peg: hasPeg(order) ? String(order.batch?.peg).trim() : '' };
}

/** A rule for a batch in one state. */
function inState(state: string, level: 'stop' | 'hold'): Rule<PourOrder> {
  return {
    id: `batch-${state}`,
    level,
    source: 'our-caution',
    when: (order) => (order.batch?.state === state ? pegOf(order) : false),
  };
}

export const batchRules: readonly Rule<PourOrder>[] = [
  {
    id: 'batch-none',
    level: 'note',
    source: 'our-caution',
    when: ({ batch }) => (batch === undefined ? {} : false),
  },
  {
    id: 'batch-no-peg',
    level: 'stop',
    source: 'our-caution',
    when: (order) => (order.batch !== undefined && !hasPeg(order) ? {} : false),
  },
  inState('lost', 'stop'),
  {
    // A state that was not told is not known, and "not known" never reads as good.
    id: 'batch-unknown',
    level: 'stop',
    source: 'our-caution',
    when: (order) => {
      const { batch } = order;
      if (batch === undefined) return false;
      return batch.state === undefined || batch.state === 'unknown' ? pegOf(order) : false;
    },
  },
  inState('souring', 'hold'),
  inState('slow', 'hold'),
  inState('doubtful', 'hold'),
  {
    id: 'batch-not-held',
    level: 'hold',
    source: 'nosb-2004',
    locator: '90 and 120 days before harvest',
    when: (order) => {
      if (order.batch?.state !== 'ready' || order.batch.held === true) return false;
      return { ...pegOf(order), days: NOT_HELD_DAYS };
    },
  },
  {
    id: 'batch-not-held-raw-bed',
    level: 'hold',
    source: 'nosb-2004',
    locator: '90 and 120 days before harvest',
    when: (order) => {
      const { batch, eaten, toPickDays } = order;
      if (batch === undefined || eaten !== 'raw' || (batch.state === 'ready' && batch.held === true)) return false;
      if (toPickDays !== undefined && toPickDays > NOT_HELD_DAYS) return false;
      return { ...pegOf(order), days: NOT_HELD_DAYS };
    },
  },
  {
    id: 'raw-bed-picked-soon',
    level: 'hold',
    source: 'our-caution',
    when: ({ way, eaten, toPickDays }) => {
      if (way !== 'soil' || eaten !== 'raw') return false;
      if (toPickDays !== undefined && toPickDays >= RAW_SOIL_DAYS) return false;
      return {
        days: RAW_SOIL_DAYS,
        ...(toPickDays !== undefined && Number.isFinite(toPickDays) && { toPickDays }),
      };
    },
  },
];
