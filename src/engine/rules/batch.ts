// What a batch's own state says about pouring it: no dose for an unknown jar, a lost or an unknown batch; not
// yet for one that is not ready or not held. Salt, acidity, leaves and nozzles are can.ts.

import { NOT_HELD_DAYS, RAW_SOIL_DAYS } from '../can/limits.ts';
import type { PourOrder } from '../can/pour.ts';
import type { State } from '../souring/reason.ts';
import type { Rule, Values } from './rule.ts';

/** A jar with an empty tag is a jar without one. */
function hasPeg(order: PourOrder): boolean {
  const peg = order.batch?.peg;
  return typeof peg === 'number' ? Number.isFinite(peg) : typeof peg === 'string' && peg.trim() !== '';
}

function pegOf(order: PourOrder): Values {
  return { peg: hasPeg(order) ? String(order.batch?.peg).trim() : '' };
}

/** The batch of a wait, its days, and the date from which it counts as held, where one is known. */
function notHeld(order: PourOrder): Values {
  const { heldOn } = order.batch ?? {};
  return { ...pegOf(order), days: NOT_HELD_DAYS, ...(heldOn !== undefined && { heldOn }) };
}

function inState(state: State) {
  return (order: PourOrder) => (order.batch?.state === state ? pegOf(order) : false);
}

/** A rule that waits for a batch to leave one state. */
function holdWhile(state: State): Rule<PourOrder> {
  return {
    id: `batch-${state}`,
    level: 'hold',
    source: 'our-caution',
    looksAt: `the state of the batch: ${state}`,
    speaksFor: 'general',
    when: inState(state),
  };
}

export const batchRules: readonly Rule<PourOrder>[] = [
  {
    id: 'batch-none',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether the pour names a batch at all',
    speaksFor: 'general',
    when: ({ batch }) => (batch === undefined ? {} : false),
  },
  {
    id: 'batch-no-peg',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'a batch named without its peg: an empty or unreadable tag',
    speaksFor: 'general',
    override: 'none',
    when: (order) => (order.batch !== undefined && !hasPeg(order) ? {} : false),
  },
  {
    id: 'batch-lost',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'the state of the batch: lost',
    speaksFor: 'general',
    override: 'none',
    when: inState('lost'),
  },
  {
    // A state that was not told is not known, and "not known" never reads as good.
    id: 'batch-unknown',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'the state of the batch: unknown, or not told',
    speaksFor: 'general',
    override: 'none',
    when: (order) => {
      const { batch } = order;
      if (batch === undefined) return false;
      return batch.state === undefined || batch.state === 'unknown' ? pegOf(order) : false;
    },
  },
  holdWhile('souring'),
  holdWhile('slow'),
  holdWhile('doubtful'),
  {
    id: 'batch-not-held',
    level: 'hold',
    source: 'nosb-2004',
    locator: '90 and 120 days before harvest',
    looksAt: 'a ready batch: whether its acid hold is over',
    speaksFor: ['us'],
    when: (order) => {
      if (order.batch?.state !== 'ready' || order.batch.held === true) return false;
      return notHeld(order);
    },
  },
  {
    id: 'batch-not-held-raw-bed',
    level: 'hold',
    source: 'nosb-2004',
    locator: '90 and 120 days before harvest',
    looksAt: 'a batch not ready or not held, on a bed eaten raw, and the days to its picking',
    speaksFor: ['us'],
    when: (order) => {
      const { batch, eaten, toPickDays } = order;
      if (batch === undefined || eaten !== 'raw' || (batch.state === 'ready' && batch.held === true)) return false;
      if (toPickDays !== undefined && toPickDays > NOT_HELD_DAYS) return false;
      return notHeld(order);
    },
  },
  {
    id: 'raw-bed-picked-soon',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'a pour on the soil of a bed eaten raw: days to picking',
    speaksFor: 'general',
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
