// The question that the word `sour` is asked about one peg, made from the plot's record: what stands in it, its vessel
// and lid, how warm it was told to stand, its looks. Where too little is known for a forecast, which fact is missing.

import type * as z from 'zod/mini';
import { upToFillLineL } from '#engine/pail/volume.ts';
import { litresOf } from '#journal/parts/contents.ts';
import { DROP_L, enteredOf } from '#plot/batch/recipe.ts';
import type { sourSchema } from '../sour-input.ts';
import type { PegAsk, PegView } from './peg.ts';
import { type WarmthOfBatch, warmthOf } from './peg-warmth.ts';

/** What `sour` takes. */
export type SourAsk = z.input<typeof sourSchema>;

/** Days foretold at least, and beyond today. */
const LEAST_DAYS = 21;
const AHEAD_DAYS = 7;
const MOST_DAYS = 120;
/** Today moves in steps of six hours, as the runs do: no new question every minute. */
const TODAY_STEPS = 4;
const GRAM_KG = 0.001;

/** Why nothing can be foretold: nothing was weighed in or it stands empty, no plants, no temperature. */
export type NoForecast = 'nothing-in-it' | 'no-plants' | 'no-warmth';

export type PegSour =
  | {
      readonly ok: true;
      readonly ask: SourAsk;
      readonly warmthFrom: WarmthOfBatch['from'];
      readonly vesselTold: boolean;
      /** Topped up, or another peg poured in: the forecast takes all of it as there from the start. */
      readonly changedMix: boolean;
    }
  | { readonly ok: false; readonly why: NoForecast };

/** The question about a peg as its sheet shows it. */
export function pegSour({ plot, batch, view }: Pick<PegAsk, 'plot' | 'batch'> & { readonly view: PegView }): PegSour {
  const { contents } = batch;
  const { water, sugar, starterL, plants: all } = enteredOf(plot, batch);
  const plants = all.filter(({ massKg }) => massKg >= GRAM_KG);
  const wholeL = litresOf(contents);
  if (!(wholeL > DROP_L)) return { ok: false, why: 'nothing-in-it' };
  if (plants.length === 0) return { ok: false, why: 'no-plants' };
  const warmth = warmthOf(plot, batch, view.temperature?.told ?? []);
  if (warmth === undefined) return { ok: false, why: 'no-warmth' };
  const facts = batch.vessel === undefined ? undefined : plot.vessels.get(batch.vessel);
  const { volumeL, lid } = view.vessel;
  const ahead = view.endedOn === undefined ? AHEAD_DAYS : 1;
  return {
    ok: true,
    ask: {
      vessel: {
        volumeL: volumeL ?? wholeL / upToFillLineL({ volumeL: 1, gasRoomFraction: undefined }),
        ...(facts?.gasRoomFraction !== undefined && { gasRoom: facts.gasRoomFraction }),
      },
      plants,
      water: { ...water, volumeL: Math.max(water.volumeL, DROP_L) },
      sugar,
      starterL,
      temperatureC: warmth.days.map((day) => [...day]),
      days: Math.min(MOST_DAYS, Math.max(LEAST_DAYS, Math.ceil(view.judgedDay) + ahead)),
      ...(lid !== undefined && { lid }),
      looks: view.judged.map((look) => ({ ...look })),
      today: Math.max(Math.floor(view.judgedDay * TODAY_STEPS) / TODAY_STEPS, ...view.judged.map(({ day }) => day)),
    },
    warmthFrom: warmth.from,
    vesselTold: volumeL !== undefined,
    changedMix: batch.changes.some(({ kind }) => kind === 'toppedUp' || kind === 'joined'),
  };
}
