// What the model's evidence says beside the word of a batch: a reading outside the band it was expected in, and acid
// that goes missing look by look. Types and reasons only, so that a judgement without a model carries none of it.

import type { Range } from '../quantity/range.ts';
import { because, type Reason, type ReasonCode } from './reason.ts';

/** A reading and the band it was expected in, four times in five, by the looks before it. */
export interface ExpectedReading {
  readonly day: number;
  readonly ph: number;
  readonly by: 'meter' | 'strip';
  readonly band: Range;
  readonly side: 'within' | 'above' | 'below';
}

/** How much acid a unit of pH seems to take at a look, as times what the plants alone would take. */
export interface ApparentBuffer {
  readonly day: number;
  readonly ph: number;
  readonly timesFactor: Range;
}

/** What the model adds to the looks; expected.ts makes it. */
export interface ModelEvidence {
  readonly readings: readonly ExpectedReading[];
  readonly buffers: readonly ApparentBuffer[];
}

/**
 * Reasons that stand beside the word: where the last reading lies against its band, and whether acid goes missing.
 * @practice our caution, no source, apart from the buffer, which names its own
 */
export function reasonsBeside(evidence: ModelEvidence | undefined, today: number): readonly Reason<ReasonCode>[] {
  if (evidence === undefined) return [];
  const last = evidence.readings.findLast(({ day }) => !(day > today));
  const reasons: Reason<ReasonCode>[] = [];
  if (last && last.side !== 'within') {
    const { day, ph, band } = last;
    reasons.push(
      because(last.side === 'above' ? 'above-expected' : 'below-expected', {
        day,
        ph,
        lowPh: band.low,
        highPh: band.high,
      }),
    );
  }
  const rise = bufferRise(evidence.buffers.filter(({ day }) => !(day > today)));
  if (rise) {
    const { from, to } = rise;
    reasons.push({
      code: 'buffer-rises',
      values: { fromDay: from.day, toDay: to.day, ph: to.ph, timesFactor: to.timesFactor.likely },
      source: 'sci-rep-2020-17782',
    });
  }
  return reasons;
}

/** More than this many times the plants' own buffer: half way from sound to fouling. @source sci-rep-2020-17782 251 and 581 against 240 meq/kg DM/pH */
const MISSING_FACTOR = (251 + 581) / 2 / 240;

/**
 * The last apparent buffer, where its low end is more than 1.7 times what the plants take and it stands above all
 * earlier ones.
 *
 * A batch that is only slow, or short of sugar, is explained by the draws that fit its looks, and falls again.
 * @returns the lowest one before it, and itself
 * @source sci-rep-2020-17782 constant within 6 % in sound silage, more than doubled in fouling
 * @deviates the excess of the table is asked of the low end of our band, because a grower's readings are few and rough
 * @checked souring/expected.test.ts
 */
export function bufferRise(
  buffers: readonly ApparentBuffer[],
): { readonly from: ApparentBuffer; readonly to: ApparentBuffer } | undefined {
  const to = buffers.at(-1);
  const before = buffers.slice(0, -1);
  const [from] = [...before].sort((a, b) => a.timesFactor.likely - b.timesFactor.likely);
  if (from === undefined || to === undefined || !(to.timesFactor.low > MISSING_FACTOR)) return undefined;
  return before.every((one) => one.timesFactor.likely < to.timesFactor.likely) ? { from, to } : undefined;
}
