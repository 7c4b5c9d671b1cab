// What the beds got and what the heap is made of: the beds' account, each bed's own sheet, the question for the cover and the heap's
// sheet, beside the word `ledger` and the engine's mix, asked of the grower's own book.

import { massOfVolume, resolveIngredient } from '#engine/heap/ingredient.ts';
import { mixOf } from '#engine/heap/mix.ts';
import { point } from '#engine/quantity/range.ts';
import { ledger } from '#tasks/ledger.ts';
import { coverInput } from '#tasks/plot/cover.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { gotSums, gotView } from '#tasks/plot/got.ts';
import { gotBed } from '#tasks/plot/got-bed.ts';
import { heapView } from '#tasks/plot/heap.ts';
import type { Book, BookBed } from '../book.ts';
import { leftKg } from '../scraps.ts';
import type { Day } from '../season.ts';
import type { Differences } from './difference.ts';

const NUTRIENTS = ['n', 'p', 'k'] as const;
/** The word `ledger` takes no smaller bed; a pot or two are. */
const LEAST_M2 = 0.1;

/** Square metres of a bed; of pots as wide as they are tall. */
function areaM2Of({ areaM2, pots, potL = 0 }: BookBed): number {
  const diameterM = Math.cbrt((4 * potL) / 1000 / Math.PI);
  return areaM2 ?? ((pots ?? 0) * Math.PI * diameterM ** 2) / 4;
}

/** The beds' account of the year by the word `ledger`. */
function ledgerOf({ beds, pours, batches }: Book, from: string, to: string) {
  const poured = batches.filter(({ id, strained }) => strained && pours.some((pour) => pour.batch === id));
  const asked = ledger({
    from,
    to,
    beds: beds.map((bed) => ({ name: bed.id, areaM2: areaM2Of(bed), ...(bed.crop && { crop: bed.crop }) })),
    acts: pours
      .filter(({ day }) => onDay(day) >= from && onDay(day) <= to)
      .map(({ bed, batch, day, concentrateL }) => ({ kind: 'pour', bed, batch, on: onDay(day), concentrateL })),
    batches: poured.map(({ id, parts, waterL, sugar, strained, drainedL, solidsKg }) => ({
      name: id,
      plants: parts,
      water: { volumeL: waterL, alkalinityMeqPerL: 0, ph: 7 },
      ...(sugar === undefined ? {} : { sugar }),
      days: strained?.day,
      finalPh: strained?.ph,
      drainedL,
      solidsKg,
    })),
  });
  if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
  return asked.value;
}

/** Need, given and missing of every bed and nutrient. */
export function ground({ plot, now, book }: Day, differ: Differences): void {
  const today = now.slice(0, 10);
  const sums = gotSums({ plot, today });
  const large = book.beds.filter((bed) => areaM2Of(bed) >= LEAST_M2);
  if (large.length === 0) return;
  const cover = coverInput({ plot, to: sums.to });
  for (const bed of large) {
    const own = gotBed({ plot, bed: bed.id, today });
    // Each bed has a season of its own.
    const { beds } = ledgerOf(
      { ...book, beds: [bed], pours: book.pours.filter(isOn([bed])) },
      own?.from ?? '',
      sums.to,
    );
    const [engine] = beds;
    const at = sums.beds.findIndex(({ id }) => id === bed.id);
    for (const nutrient of NUTRIENTS) {
      const what = `${bed.name}, ${nutrient}`;
      const shown = gotView(sums, nutrient).beds[at];
      const row = own?.rows.find((one) => one.nutrient === nutrient);
      for (const figure of ['needG', 'givenG', 'missingG', 'excessG'] as const) {
        differ.range(`${what}, ${figure}`, shown?.[figure], engine?.[figure][nutrient]);
        differ.range(`${what}, ${figure} on its own sheet`, row?.[figure], engine?.[figure][nutrient]);
      }
      differ.range(`${what}, from the liquid`, shown?.liquidG, engine?.liquidG[nutrient]);
      differ.range(`${what}, missing in the cover`, cover.beds[at]?.missingG[nutrient], engine?.missingG[nutrient]);
    }
  }
  for (const source of cover.sources) {
    const lot = book.lots.find(({ id }) => id === source.id);
    if (lot) differ.same(`cover, kg of ${source.name}`, source.haveKg, leftKg(lot));
  }
}

const isOn = (beds: readonly BookBed[]) => (pour: { readonly bed: string }) => beds.some(({ id }) => id === pour.bed);

/** What the heap is made of. */
export function heap({ plot, now, book }: Day, differ: Differences): void {
  if (book.heap.length === 0) return;
  const view = heapView({ plot, heap: 'the heap', today: now.slice(0, 10) });
  if (view === undefined) {
    differ.same('heap', undefined, 'fed');
    return;
  }
  const rows = book.heap.map(({ material, massKg, volumeL }) => {
    const ingredient = resolveIngredient({ material });
    const bulk = ingredient.bulkKgPerM3;
    if (massKg === undefined && bulk === undefined) throw new Error(`no bulk of ${material}`);
    const mass =
      massKg === undefined ? massOfVolume({ volumeL: volumeL ?? 0, bulkKgPerM3: bulk ?? point(0) }) : point(massKg);
    return { ingredient, massKg: mass };
  });
  const dry = mixOf(rows);
  const wetKg = dry.massKg.likely + book.heapWaterL;
  differ.same('heap, kg', view.massKg?.likely, wetKg);
  differ.same('heap, litres of water', view.waterL, book.heapWaterL);
  differ.same('heap, C:N', view.cn?.likely, dry.cn?.likely);
  differ.same('heap, water %', view.moisturePercent?.likely, 100 * (1 - dry.dryKg.likely / wetKg));
  differ.list(
    'heap, kg of',
    view.rows.map((row) => row.massKg?.likely),
    rows.map(({ massKg }) => massKg.likely),
  );
}
