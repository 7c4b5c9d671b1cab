// Every kind of entry this program knows, its newest version, and how older ones are lifted to it. A new kind is one
// schema in the file of its group, one line here, and its share of the fold. A changed kind is a new version: the old
// schema stays, and `lift` makes the new body from the old one. Stored entries are never changed.

import * as z from 'zod/mini';
import { says } from '../problem.ts';
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
/**
 * One version more, whose bodies may have some fields that none had before; a body without them says the same as before.
 * An older program seals what it could not read whole, and passes it on to the letter.
 */
const grown = <S extends z.ZodMiniType>(kind: KindOf<S>, names: readonly string[]): KindOf<S> => {
  const before = (schema: z.ZodMiniType) => schema.check(hasNone(names, kind.v + 1));
  const older = Object.entries(kind.older ?? {}).map(([v, schema]) => [v, before(schema)]);
  return {
    newest: kind.newest,
    v: kind.v + 1,
    older: { ...Object.fromEntries(older), [kind.v]: before(kind.newest) },
    lift: { ...kind.lift, [kind.v]: asItIs },
  };
};
/** One version more, whose amounts may keep what they were read with. */
const withReadings = <S extends z.ZodMiniType>(kind: KindOf<S>): KindOf<S> => grown(kind, ['readWith']);
/** A thing whose descriptions may keep that, and which tellings they were written over. */
const described = <S extends z.ZodMiniType>(newest: S): KindOf<S> => grown(first(newest), ['readWith', 'over']);

function hasNone(names: readonly string[], v: number) {
  const allowed = `nothing named ${names.join(' or ')}: that came with version ${v}`;
  return z.refine((body: unknown) => !mentions(body, names), says('has a field of a newer version', allowed));
}

function mentions(value: unknown, names: readonly string[]): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([key, inner]) => names.includes(key) || mentions(inner, names));
}

export const kinds = {
  // Version 2 may tell which mark a keyholder writes before decimals.
  'plot.described': grown(first(plotKinds.plotDescribed), ['decimals']),
  'bed.described': described(plotKinds.bedDescribed),
  // Version 3 may tell the kind of vessel it is drawn as.
  'vessel.described': grown(described(plotKinds.vesselDescribed), ['drawnAs']),
  'can.described': described(plotKinds.canDescribed),
  'water.reported': first(plotKinds.waterReported),
  'scraps.weighed': withReadings(first(scrapKinds.scrapsWeighed)),
  'lot.tested': first(scrapKinds.lotTested),
  'product.bought': withReadings(first(scrapKinds.productBought)),
  'peg.filled': withReadings(first(pegKinds.pegFilled)),
  'peg.toppedUp': withReadings(first(pegKinds.pegToppedUp)),
  'peg.split': withReadings(first(pegKinds.pegSplit)),
  'peg.moved': first(pegKinds.pegMoved),
  'peg.joined': withReadings(first(pegKinds.pegJoined)),
  'peg.spilled': withReadings(first(pegKinds.pegSpilled)),
  'peg.looked': first(pegKinds.pegLooked),
  'peg.strained': withReadings(withFigures(pegKinds.pegStrained, pegKinds.pegStrainedV1)),
  'peg.tipped': withReadings(first(pegKinds.pegTipped)),
  'bottle.filled': withReadings(withFigures(bottleKinds.bottleFilled, bottleKinds.bottleFilledV1)),
  'bottle.vented': first(bottleKinds.bottleVented),
  'bottle.emptied': withReadings(first(bottleKinds.bottleEmptied)),
  'bed.fed': withReadings(withFigures(bedKinds.bedFed, bedKinds.bedFedV1)),
  'bed.dressed': withReadings(first(bedKinds.bedDressed)),
  'bed.picked': withReadings(first(bedKinds.bedPicked)),
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
  'heap.fed': withReadings(first(besideKinds.heapFed)),
  'heap.looked': first(besideKinds.heapLooked),
  'weather.typed': first(besideKinds.weatherTyped),
  'feed.tested': first(besideKinds.feedTested),
  'heap.tested': first(besideKinds.heapTested),
  'photo.taken': first(besideKinds.photoTaken),
  'trial.laid': first(besideKinds.trialLaid),
  'trial.weighed': withReadings(first(besideKinds.trialWeighed)),
  'question.answered': first(besideKinds.questionAnswered),
  'lessons.reset': first(besideKinds.lessonsReset),
} as const;

export type Kind = keyof typeof kinds;
/** What an entry of a kind says, in its newest version. */
export type Body<K extends Kind> = z.infer<(typeof kinds)[K]['newest']>;

/** Kinds by name, as reading takes them. */
export type KindTable = Readonly<Record<string, KindOf>>;
