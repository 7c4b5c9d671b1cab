// Acts of a question turned into supplies: a pour by the balance of its batch or by figures of its own, a dressing by the
// materials table or an analysis, a product by its label. Every figure is the engine's.

import { elementFate, type StrainedBatch } from '#engine/bottle/liquid.ts';
import {
  ELEMENTS,
  type LiquidGrams,
  liquidGrams,
  matterSupply,
  pourSupply,
  productSupply,
  type Supply,
} from '#engine/ground/supply.ts';
import { asRange, inverse, point, product, type Range, scale, sum } from '#engine/quantity/range.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { usual, usualBand } from '#engine/scraps/usual.ts';
import { material } from '#engine/tables/index.ts';
import { momentOf } from '#journal/moment.ts';
import { strainedOf } from '#plot/batch/strained.ts';
import type { ActIn, LedgerInput } from './ledger-input.ts';
import type { PortionIn } from './portion.ts';

type Pour = Extract<ActIn, { readonly kind: 'pour' }>;
type Dressing = Exclude<ActIn, { readonly kind: 'pour' | 'product' }>;

/** What a dressing is where it names nothing. */
const USUAL: Readonly<Partial<Record<Dressing['kind'], string>>> = {
  compost: 'finished-compost',
  'cover-crop': 'legume-tops',
};

/** Grams in a litre of a strained batch. */
export function liquidOf(batch: StrainedBatch): LiquidGrams {
  return liquidGrams(ELEMENTS.map((element) => elementFate(element, batch)));
}

/**
 * Strained solids of a batch as a portion: what is left in them over the dry matter put in.
 * @arithmetic dry matter that went into the liquid is not taken off, so percentages are a little low
 */
export function solidsPortion(batch: StrainedBatch, massKg: number): PortionIn | undefined {
  const dryKg = sum(batch.plants.map((part) => scale(part.dryMatter, part.massKg)));
  if (!(batch.solidsKg > 0) || !(dryKg.low > 0)) return undefined;
  const percent = (element: 'n' | 'p' | 'k', most: number) => {
    const fate = elementFate(element, batch);
    if (!fate.known) return undefined;
    const { low, likely, high } = scale(product([fate.solidsG, inverse(dryKg)]), 0.1);
    return { low: Math.min(most, low), likely: Math.min(most, likely), high: Math.min(most, high) };
  };
  const [n, p, k] = [percent('n', 15), percent('p', 5), percent('k', 15)];
  return {
    name: 'strained solids',
    massKg,
    dryMatter: held(scale(dryKg, 1 / batch.solidsKg)),
    ...(n && { nPercentDm: n }),
    ...(p && { pPercentDm: p }),
    ...(k && { kPercentDm: k }),
  };
}

function held({ low, likely, high }: Range): Range {
  const within = (value: number) => Math.min(1, Math.max(0.01, value));
  return { low: within(low), likely: within(likely), high: within(high) };
}

/** Litres of concentrate in a pour: as told, or out of the can by its ratio. @arithmetic 1 in n: litres / n; 1 to n: litres / (n + 1) */
export function concentrateL(pour: Pick<Pour, 'concentrateL' | 'concentrateMl' | 'pouredL' | 'ratio'>): number {
  if (pour.concentrateL !== undefined) return pour.concentrateL;
  if (pour.concentrateMl !== undefined) return pour.concentrateMl / 1000;
  if (pour.pouredL === undefined || pour.ratio === undefined) return Number.NaN;
  return pour.pouredL / (pour.ratio.reading === 'in' ? Math.max(1, pour.ratio.n) : pour.ratio.n + 1);
}

/** Every act of a bed as a supply. */
export function suppliesOf(input: LedgerInput): (bed: string) => readonly Supply[] {
  const batches = new Map((input.batches ?? []).map((batch) => [batch.name, strainedOf(batch)]));
  const liquids = new Map([...batches].map(([name, batch]) => [name, liquidOf(batch)]));
  const byBed = new Map<string, Supply[]>();
  for (const act of input.acts) {
    const day = momentOf(act.on ?? input.from).dateDay;
    const supply = supplyOf(act, day, batches, liquids);
    const list = byBed.get(act.bed);
    if (list === undefined) byBed.set(act.bed, [supply]);
    else list.push(supply);
  }
  return (bed) => byBed.get(bed) ?? [];
}

function supplyOf(
  act: ActIn,
  day: number,
  batches: ReadonlyMap<string, StrainedBatch>,
  liquids: ReadonlyMap<string, LiquidGrams>,
): Supply {
  if (act.kind === 'pour') {
    const own = ownLiquid(act);
    const batch = act.batch === undefined ? undefined : liquids.get(act.batch);
    const liquid: LiquidGrams = {
      gPerL: { ...batch?.gPerL, ...own.gPerL },
      ceilingGPerL: { ...batch?.ceilingGPerL, ...own.ceilingGPerL },
    };
    return pourSupply({ what: act.batch ?? 'the liquid', day, concentrateL: point(concentrateL(act)), liquid });
  }
  if (act.kind === 'product') return productSupply({ ...act, name: act.name ?? 'bought feed', day });
  return dressingSupply(act, day, act.batch === undefined ? undefined : batches.get(act.batch));
}

/** Figures of a pour's own: an analysis, or what `strain` answered. Its high ends are its ceiling. */
function ownLiquid({ nGPerL, pGPerL, kGPerL }: Pour): LiquidGrams {
  const told = Object.entries({ n: nGPerL, p: pGPerL, k: kGPerL }).flatMap(([element, value]) =>
    value === undefined ? [] : [[element, asRange(value)] as const],
  );
  return {
    gPerL: Object.fromEntries(told),
    ceilingGPerL: Object.fromEntries(told.map(([element, value]) => [element, value.high])),
  };
}

/** What of a dressing makes it a supply; the plot's own dressings come in the same way. */
export type DressingGiven = Omit<Dressing, 'bed' | 'on'>;

/** A dressing as a supply. Solids that name their batch take what is left in it; what is told itself comes first. */
export function dressingSupply(act: DressingGiven, day: number, batch: StrainedBatch | undefined): Supply {
  const id = act.material ?? (act.nPercentDm === undefined && batch === undefined ? USUAL[act.kind] : undefined);
  const row = id === undefined ? undefined : material(id);
  const bulkKgPerL = (row?.figures.bulkKgPerM3 ?? usual('dressing.bulkKgPerM3')).likely / 1000;
  const massKg = act.massKg ?? (act.volumeL ?? 0) * bulkKgPerL;
  const solids = batch === undefined ? undefined : solidsPortion(batch, massKg);
  const { dryMatter, nPercentDm, pPercentDm, kPercentDm, caPercentDm, mgPercentDm, cn } = act;
  const told = Object.fromEntries(
    Object.entries({ dryMatter, nPercentDm, pPercentDm, kPercentDm, caPercentDm, mgPercentDm, cn }).filter(
      ([, value]) => value !== undefined,
    ),
  );
  const base = solids ?? (row === undefined ? { dryMatter: usualBand('dressing.dryMatter') } : { material: row.id });
  const part = resolvePart({ ...base, ...told, ...(act.name === undefined ? {} : { name: act.name }), massKg });
  const named = part.name === 'material without a name' ? { ...part, name: act.kind } : part;
  return matterSupply({ kind: act.kind, day, part: named, dugIn: act.dugIn ?? act.kind !== 'mulch' });
}
