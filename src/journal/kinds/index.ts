// Every kind of entry this program knows, its newest version, and how older ones are lifted to it. A new kind is one
// schema in the file of its group, one line here, and its share of the fold. A changed kind is a new version: the old
// schema stays, and `lift` makes the new body from the old one. Stored entries are never changed.

import type * as z from 'zod/mini';
import * as bedKinds from './beds.ts';
import * as besideKinds from './beside.ts';
import * as bottleKinds from './bottles.ts';
import * as groundKinds from './ground.ts';
import * as pegKinds from './pegs.ts';
import * as plotKinds from './plot.ts';
import * as scrapKinds from './scraps.ts';

/** The schemas of one kind, by version from 1 up; `lift[n]` makes a body of version n + 1 from one of version n. */
export interface KindOf<S extends z.ZodMiniType = z.ZodMiniType> {
  readonly newest: S;
  readonly v: number;
  readonly older?: Readonly<Record<number, z.ZodMiniType>>;
  readonly lift?: Readonly<Record<number, (body: unknown) => unknown>>;
}

const first = <S extends z.ZodMiniType>(newest: S): KindOf<S> => ({ newest, v: 1 });
const asItIs = (body: unknown) => body;
/** Version 2 keeps the figures that were shown with the act; a body without them says the same as before. */
const withFigures = <S extends z.ZodMiniType>(newest: S, v1: z.ZodMiniType): KindOf<S> => ({
  newest,
  v: 2,
  older: { 1: v1 },
  lift: { 1: asItIs },
});

export const kinds = {
  'plot.described': first(plotKinds.plotDescribed),
  'bed.described': first(plotKinds.bedDescribed),
  'vessel.described': first(plotKinds.vesselDescribed),
  'can.described': first(plotKinds.canDescribed),
  'water.reported': first(plotKinds.waterReported),
  'scraps.weighed': first(scrapKinds.scrapsWeighed),
  'lot.tested': first(scrapKinds.lotTested),
  'product.bought': first(scrapKinds.productBought),
  'peg.filled': first(pegKinds.pegFilled),
  'peg.toppedUp': first(pegKinds.pegToppedUp),
  'peg.split': first(pegKinds.pegSplit),
  'peg.moved': first(pegKinds.pegMoved),
  'peg.joined': first(pegKinds.pegJoined),
  'peg.spilled': first(pegKinds.pegSpilled),
  'peg.looked': first(pegKinds.pegLooked),
  'peg.strained': withFigures(pegKinds.pegStrained, pegKinds.pegStrainedV1),
  'peg.tipped': first(pegKinds.pegTipped),
  'bottle.filled': withFigures(bottleKinds.bottleFilled, bottleKinds.bottleFilledV1),
  'bottle.vented': first(bottleKinds.bottleVented),
  'bottle.emptied': first(bottleKinds.bottleEmptied),
  'bed.fed': withFigures(bedKinds.bedFed, bedKinds.bedFedV1),
  'bed.dressed': first(bedKinds.bedDressed),
  'bed.picked': first(bedKinds.bedPicked),
  'bed.planted': first(bedKinds.bedPlanted),
  'soil.tested': {
    newest: groundKinds.soilTested,
    v: 2,
    older: { 1: groundKinds.soilTestedV1 },
    // Version 2 may tell the depth of a sample; a body without one says the same as before.
    lift: { 1: asItIs },
  },
  'product.labelled': first(groundKinds.productLabelled),
  'goal.told': first(groundKinds.goalTold),
  'crop.described': first(groundKinds.cropDescribed),
  'heap.fed': first(besideKinds.heapFed),
  'heap.looked': first(besideKinds.heapLooked),
  'weather.typed': first(besideKinds.weatherTyped),
  'feed.tested': first(besideKinds.feedTested),
  'heap.tested': first(besideKinds.heapTested),
  'photo.taken': first(besideKinds.photoTaken),
  'trial.laid': first(besideKinds.trialLaid),
  'trial.weighed': first(besideKinds.trialWeighed),
  'question.answered': first(besideKinds.questionAnswered),
  'lessons.reset': first(besideKinds.lessonsReset),
} as const;

export type Kind = keyof typeof kinds;
/** What an entry of a kind says, in its newest version. */
export type Body<K extends Kind> = z.infer<(typeof kinds)[K]['newest']>;

/** Kinds by name, as reading takes them. */
export type KindTable = Readonly<Record<string, KindOf>>;
