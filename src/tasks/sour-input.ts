// What the word `sour` takes in: a filling as `fit` takes it, how warm it stands, its lid, and the looks. A look or a
// temperature that is odd is no problem here: it is kept as typed and asked about (engine/souring/odd.ts).

import * as z from 'zod/mini';
import { LIDS } from '#engine/souring/gas/lid.ts';
import { SMELLS, SURFACES } from '#engine/souring/look.ts';
import { CHOPS } from '#engine/souring/model/chop.ts';
import { listOf, number, object, ofLength, oneOf, positive, text } from './fields.ts';
import { fitSchema } from './fit.ts';
import { says } from './problem.ts';

/** Far past any entry a person could mean; what lies within is kept and, where odd, asked about. */
const MOST_DAYS_APART = 3650;
const MOST_PH_TYPED = 1000;
const LEAST_C = -60;
const MOST_C = 150;
const MOST_TOLD_DAYS = 400;

const WARMTH = `a number of °C, or a list of [day, low, high], each ${LEAST_C} to ${MOST_C} °C`;
const readC = number(LEAST_C, MOST_C, '°C');

const warmth = z.union(
  [
    readC,
    z
      .array(z.tuple([number(-MOST_TOLD_DAYS, MOST_TOLD_DAYS, 'days'), readC, readC]))
      .check(
        ofLength(z.minLength(1, says('is an empty list', WARMTH))),
        ofLength(z.maxLength(MOST_TOLD_DAYS, says('is too long a list', `${WARMTH}; up to ${MOST_TOLD_DAYS} days`))),
      ),
  ],
  { error: () => says('is not a temperature', WARMTH) },
);

const PH = 'a number as read; a batch lies between 2 and 10';

const look = z.strictObject(
  {
    day: number(-MOST_DAYS_APART, MOST_DAYS_APART, 'days since the filling'),
    ph: z.optional(
      z
        .number({ error: () => says('is not a number', PH) })
        .check(z.gte(-MOST_PH_TYPED, says('is too small', PH)), z.lte(MOST_PH_TYPED, says('is too large', PH))),
    ),
    by: z.optional(oneOf(['meter', 'strip'])),
    smell: z.optional(oneOf(SMELLS)),
    surface: z.optional(oneOf(SURFACES)),
    who: z.optional(text(60)),
  },
  {
    error: () => says('is not a look', 'an object with day, and ph and by, smell or surface as far as they were noted'),
  },
);

export const sourSchema = object(
  {
    ...fitSchema.shape,
    temperatureC: warmth,
    days: z._default(number(1, 120, 'days'), 21),
    lid: z.optional(oneOf(LIDS)),
    looks: z._default(listOf(look, 0, 400), []),
    today: z.optional(number(0, MOST_TOLD_DAYS, 'days since the filling')),
    starterL: z._default(number(0, 500, 'L'), 0),
    saltKg: z._default(number(0, 50, 'kg'), 0),
    chop: z._default(oneOf(CHOPS), 'chopped'),
    room: z.optional(
      z.strictObject(
        { roomM3: positive(100_000, 'm³'), airChangesPerH: z._default(number(0, 100, 'changes of air an hour'), 0) },
        { error: () => says('is not a room', 'an object with roomM3 and, where known, airChangesPerH') },
      ),
    ),
    draws: z.optional(number(20, 5000, 'draws')),
  },
  'an object',
);

export type SourInput = z.infer<typeof sourSchema>;
