// The questions of a source slip, asked one lot at a time: as few as this lot needs on this plot. What the answers come
// to is the engine's; here they are only put in order, left out where they could change nothing, and written down.

import { outcomeOf } from '#engine/rules/slip.ts';
import { answerSlip } from '#engine/scraps/slip.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { siteOf, slipOfLot } from '#journal/parts/slip-of-lot.ts';

type Weighed = Body<'scraps.weighed'>;
type Slip = NonNullable<Weighed['slip']>;

/** Whose and from where, as one answer. */
export type SlipPlace =
  | 'this-plot'
  | 'shared-ground'
  | 'home-garden'
  | 'own-kitchen'
  | 'neighbour'
  | 'other-kitchen'
  | 'bought'
  | 'found'
  | 'unknown';

/** What was answered so far; the kind is an id of the materials table, or a name of its own. */
export interface SlipTold {
  readonly material: string;
  readonly name: string;
  readonly place?: SlipPlace | undefined;
  readonly kitchen?: 'raw' | 'cooked' | 'plate' | 'unknown' | undefined;
  readonly treated?: 'no' | 'unknown' | 'yes' | undefined;
  readonly weedkiller?: 'lasting' | 'other' | 'unknown' | undefined;
  readonly labelAllows?: 'yes' | 'no' | 'unknown' | undefined;
  readonly treatedOn?: string | undefined;
  readonly treatedWith?: string | undefined;
  readonly condition?: 'fresh' | 'wilted' | 'dry' | 'frozen' | 'slimy' | 'unknown' | undefined;
}

export type SlipQuestion =
  | 'name'
  | 'place'
  | 'kitchen'
  | 'treated'
  | 'weedkiller'
  | 'labelAllows'
  | 'when'
  | 'condition';

/** The kind of a lot that the materials table does not have. */
export const OTHER_KIND = 'other';

/** Groups that no kitchen gives, and groups that no garden does. */
const OUTDOORS: readonly string[] = ['clippings', 'soft-green', 'hay-straw', 'browns', 'compost', 'manure'];
const INDOORS: readonly string[] = ['kitchen', 'animal'];
/** Kinds whose name leaves open which plants are in them. */
const PLANTS_OPEN: readonly string[] = [
  'soft-weeds',
  'seeded-weeds',
  'blighted-haulm',
  'shrub-trimmings',
  'dry-leaves',
];
/** Kitchen kinds of which nobody asks whether they were cooked or on a plate. */
const NEVER_COOKED: readonly string[] = ['cooked-food', 'coffee-grounds', 'tea-leaves', 'eggshell'];
/** Answers that may stay open. */
const MAY_STAY_OPEN: readonly SlipQuestion[] = ['when'];

const PLACES: Readonly<Record<SlipPlace, Pick<Slip, 'whose' | 'cameFrom'> & Pick<Weighed, 'origin'>>> = {
  'this-plot': { whose: 'own', cameFrom: 'garden', origin: 'garden' },
  'shared-ground': { whose: 'shared', cameFrom: 'garden', origin: 'garden' },
  'home-garden': { whose: 'household', cameFrom: 'garden', origin: 'garden' },
  'own-kitchen': { whose: 'household', cameFrom: 'kitchen', origin: 'kitchen' },
  neighbour: { whose: 'neighbour', cameFrom: 'neighbour', origin: 'garden' },
  'other-kitchen': { whose: 'neighbour', cameFrom: 'kitchen', origin: 'kitchen' },
  bought: { whose: 'bought', cameFrom: 'shop' },
  found: { whose: 'found', cameFrom: 'street' },
  unknown: { whose: 'unknown', cameFrom: 'unknown' },
};

/** Answers under which nothing speaks against a lot: what is not answered yet is taken as one of these while asking. */
const BEST = { place: 'this-plot', kitchen: 'raw', treated: 'no', condition: 'fresh' } as const;

export interface SlipAsks {
  /** Places to choose from. */
  readonly places: readonly SlipPlace[];
  /** Questions to show, in order. */
  readonly asks: readonly SlipQuestion[];
  /** Those of them still to be answered; "not known" is an answer. */
  readonly open: readonly SlipQuestion[];
}

/** Which questions this lot needs. */
export function slipAsks({ told, plot }: { readonly told: SlipTold; readonly plot: Plot }): SlipAsks {
  const group = material(told.material)?.group;
  const places = placesFor(group, siteOf(plot.facts) !== undefined);
  const asks: SlipQuestion[] = [];
  const chosen = told.material === OTHER_KIND || group !== undefined;
  if (!chosen) return { places, asks, open: asks };
  if (told.material === OTHER_KIND || PLANTS_OPEN.includes(told.material)) asks.push('name');
  const outcome = () => outcomeOf(slipOfLot(lotOf({ ...BEST, ...given(told) }, NO_MASS), { site: siteOf(plot.facts) }));
  // Out already: no further answer would change that.
  const isOut = outcome() === 'out';
  if (!isOut || told.place !== undefined) asks.push('place');
  if (told.place !== undefined && !(isOut && told.kitchen === undefined) && asksKitchen(told, group))
    asks.push('kitchen');
  if (told.place !== undefined && asksTreated(told)) {
    if (!isOut || told.treated !== undefined) asks.push('treated');
    if (told.treated === 'yes') {
      asks.push('weedkiller');
      if (told.weedkiller === 'other') asks.push('labelAllows');
      asks.push('when');
    }
  }
  const goesOn = outcome() === 'in' || outcome() === 'set-aside' || told.condition !== undefined;
  if (told.place !== undefined && goesOn && group !== 'browns') asks.push('condition');
  return { places, asks, open: asks.filter((one) => !MAY_STAY_OPEN.includes(one) && !isAnswered(told, one)) };
}

function placesFor(group: string | undefined, isSite: boolean): readonly SlipPlace[] {
  const indoors = INDOORS.includes(group ?? '');
  const outdoors = OUTDOORS.includes(group ?? '');
  return (Object.keys(PLACES) as SlipPlace[]).filter((place) => {
    if (place === 'home-garden') return isSite && !indoors;
    if (place === 'own-kitchen' || place === 'other-kitchen') return !outdoors;
    return !indoors || place === 'bought' || place === 'unknown';
  });
}

function asksKitchen({ place, material: id }: SlipTold, group: string | undefined): boolean {
  if (OUTDOORS.includes(group ?? '') || NEVER_COOKED.includes(id) || group === 'animal') return false;
  const { cameFrom } = PLACES[place ?? 'unknown'];
  return cameFrom === 'kitchen' || cameFrom === 'shop' || cameFrom === 'unknown';
}

/** Asked where a lot without the answer would be held for it. */
function asksTreated(told: SlipTold): boolean {
  const slip = slipOfLot(lotOf({ ...BEST, ...given(told), treated: undefined }, NO_MASS));
  return answerSlip(slip).reasons.some(({ rule }) => rule === 'slip-treatment-unknown');
}

function isAnswered(told: SlipTold, question: SlipQuestion): boolean {
  if (question === 'when') return true;
  if (question === 'name') return told.material !== OTHER_KIND || told.name.trim() !== '';
  return told[question] !== undefined;
}

/** The answers without those that are missing. */
function given(told: SlipTold): SlipTold {
  return Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined)) as unknown as SlipTold;
}

const NO_MASS: Weighed['mass'] = { typed: '', massKg: 0 };

/** The lot with its slip, as it is written down. Answers that were not asked are not made up. */
export function weighedBody({
  told,
  plot,
  mass,
}: {
  readonly told: SlipTold;
  readonly plot: Plot;
  readonly mass: Weighed['mass'];
}): Weighed {
  const { asks } = slipAsks({ told, plot });
  const asked = (question: SlipQuestion) => asks.includes(question);
  return lotOf(
    {
      ...told,
      place: asked('place') ? told.place : undefined,
      kitchen: asked('kitchen') ? told.kitchen : undefined,
      treated: asked('treated') ? told.treated : undefined,
      weedkiller: asked('weedkiller') ? told.weedkiller : undefined,
      labelAllows: asked('labelAllows') ? told.labelAllows : undefined,
      treatedOn: asked('when') ? told.treatedOn : undefined,
      treatedWith: asked('when') ? told.treatedWith : undefined,
      condition: asked('condition') ? told.condition : undefined,
    },
    mass,
  );
}

function lotOf(told: SlipTold, mass: Weighed['mass']): Weighed {
  const { place, kitchen, treated, weedkiller, labelAllows, condition } = told;
  const at = place && PLACES[place];
  const origin = kitchen === 'cooked' || kitchen === 'plate' ? kitchen : at?.origin;
  const name = told.name.trim();
  const treatedWith = told.treatedWith?.trim();
  return {
    ...(told.material !== OTHER_KIND && told.material !== '' && { material: told.material }),
    ...(name !== '' && { name }),
    mass,
    ...(at !== undefined && {
      slip: {
        whose: at.whose,
        ...(at.cameFrom !== undefined && { cameFrom: at.cameFrom }),
        ...(treated !== undefined && { treated }),
        ...(treatedWith && { treatedWith }),
        ...(weedkiller !== undefined && { weedkiller }),
        ...(labelAllows !== undefined && { labelAllows }),
        ...(told.treatedOn && { treatedOn: told.treatedOn }),
      },
    }),
    ...(condition !== undefined && condition !== 'unknown' && { condition }),
    ...(origin !== undefined && { origin }),
    ...((kitchen === 'raw' || kitchen === 'unknown') && { kitchen }),
  };
}

/** The slip of a lot of the record, to be answered further. */
export function toldOf(lot: Weighed): SlipTold {
  const { slip, origin } = lot;
  const seen = slipOfLot(lot);
  const place = (Object.keys(PLACES) as SlipPlace[]).find(
    (one) => slip !== undefined && PLACES[one].whose === slip.whose && PLACES[one].cameFrom === seen.from,
  );
  return {
    material: lot.material ?? OTHER_KIND,
    name: lot.name ?? '',
    place,
    kitchen: origin === 'cooked' || origin === 'plate' ? origin : lot.kitchen,
    treated: slip?.treated,
    weedkiller: slip?.weedkiller,
    labelAllows: slip?.labelAllows,
    treatedOn: slip?.treatedOn,
    treatedWith: slip?.treatedWith,
    condition: lot.condition,
  };
}
