// A batch as it stands: its peg, what is in it, the sum of what went in and out, where it stands, every look since it
// was filled. State and verdict are the engine's (souring/judge.ts); `looksForJudge` hands it what it needs.

import type { Look, Smell, Surface } from '#engine/souring/look.ts';
import type { Body } from '../kinds/index.ts';
import type { Moment } from '../moment.ts';
import type { Contents } from './contents.ts';

/** Mass in and out, kg: filled + toppedUp + joinedIn − splitOff − joinedAway − spilled − strained − tipped = left. */
export interface MassSum {
  readonly filledKg: number;
  readonly toppedUpKg: number;
  readonly joinedInKg: number;
  readonly splitOffKg: number;
  readonly joinedAwayKg: number;
  readonly spilledKg: number;
  readonly strainedKg: number;
  readonly tippedKg: number;
  /** Below 0 where more was taken than was there: a question then says so. */
  readonly leftKg: number;
}

/** One look, with the day since the batch was filled. */
export interface BatchLook {
  readonly id: string;
  readonly day: number;
  readonly when: Moment;
  readonly by: string;
  readonly device: string;
  /** The batch it was taken on: an ancestor where the batch was split off later. */
  readonly batch: string;
  readonly body: Body<'peg.looked'>;
  /** Set where its date cannot be: it counts against the batch alone, and from when. */
  readonly against?: { readonly why: LookDoubt; readonly from: Moment };
}

/** Why a look counts against its batch alone: dated outside its time in the vessel, or ahead of whoever reads. */
export type LookDoubt = 'before-filling' | 'after-emptying' | 'ahead';

/** One straining: what came off, and what is not accounted for where the vessel was emptied. */
export interface Straining {
  readonly id: string;
  readonly day: number;
  readonly when: Moment;
  readonly by: string;
  readonly drainedL: number;
  readonly solidsKg: number;
  /** What was in the vessel less what came off; undefined where the rest stays. */
  readonly unexplainedKg: number | undefined;
  readonly body: Body<'peg.strained'>;
}

/** Something that changed the batch on a day, for whoever reads its sour line. */
export interface Change {
  readonly id: string;
  readonly day: number;
  readonly kind: 'toppedUp' | 'split' | 'moved' | 'joined' | 'spilled' | 'tipped' | 'poured-away';
}

/** Drained liquid that is not in the vessel any more, litres. */
export interface LiquidSum {
  readonly drainedL: number;
  readonly bottledL: number;
  readonly pouredL: number;
  readonly starterL: number;
  readonly leftL: number;
}

/** A stop that was passed over, and why. */
export type Overrode = NonNullable<Body<'peg.filled'>['overrode']>[number];

export interface Batch {
  /** Id of the act that made it. */
  readonly id: string;
  readonly peg: number;
  /** When the oldest of it was filled: days count from here. */
  readonly filled: Moment;
  readonly filledBy: string;
  /** When this batch came to be: the filling, or the split. */
  readonly made: Moment;
  readonly splitFrom: string | undefined;
  readonly joinedFrom: readonly string[];
  readonly vessel: string | undefined;
  readonly vesselName: string | undefined;
  readonly lid: Body<'peg.filled'>['lid'];
  readonly place: string | undefined;
  /** As last told, and every telling with its day. */
  readonly temperatureC: number | undefined;
  readonly temperatures: readonly { readonly day: number; readonly temperatureC: number }[];
  /** What was put in and was not split off, spilled or tipped since; straining takes nothing from it. */
  readonly contents: Contents;
  /** What was tipped out of it, all together: a heap may have got it. */
  readonly tipped: Contents;
  readonly mass: MassSum;
  /** Litres in the vessel now. */
  readonly presentL: number;
  readonly looks: readonly BatchLook[];
  /** Looks whose date cannot be: what is bad in them counts, what is good does not. */
  readonly doubtful: readonly BatchLook[];
  readonly strainings: readonly Straining[];
  readonly changes: readonly Change[];
  readonly liquid: LiquidSum;
  readonly plan: Body<'peg.filled'>['plan'];
  /** Stops passed over with a reason when anything in it was put in. */
  readonly overrode: readonly Overrode[];
  /** When nothing was left in the vessel; undefined while it stands. */
  readonly ended: Moment | undefined;
  /** Id of the act that left nothing in it. */
  readonly endedBy: string | undefined;
  /** The last day it was surely in its vessel, where its emptying lies ahead of whoever reads; never set by the fold. */
  readonly presentUntilDay?: number;
}

/** The looks of a batch as the judgement of its state takes them. */
export function looksForJudge(batch: Batch): readonly Look[] {
  return batch.looks.map(({ day, by, body: { acidity, smell, surface } }) => ({
    day,
    ...(acidity !== undefined && { ph: acidity.ph, by: acidity.by }),
    ...(smell !== undefined && { smell: smell satisfies Smell }),
    ...(surface !== undefined && { surface: surface satisfies Surface }),
    who: by,
  }));
}
