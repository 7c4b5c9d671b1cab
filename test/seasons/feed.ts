// A round over the beds at the tap, bed by bed as the can card gives it, and what goes onto the heap.

import { pourNow } from '#tasks/plot/figures-now.ts';
import { withRemark } from '#tasks/plot/figures-shown.ts';
import { readFeeding } from '#tasks/plot/heap-forms.ts';
import { heapOffers } from '#tasks/plot/heap-offers.ts';
import { liquidsOf, usualLiquid } from '#tasks/plot/liquid.ts';
import { cansOf, fedBody, type PourCard, pourCard, usualCan } from '#tasks/plot/pour.ts';
import { MATCHED, type NextPick } from '#tasks/plot/round.ts';
import { between, type Draw, mass, mostly, pick, volume } from './amounts.ts';
import type { Book } from './book.ts';
import { type Grower, taken } from './grower.ts';
import { leftKg } from './scraps.ts';

/** What is chosen and said at the tap: another liquid than the usual one, and when the bed is picked next. */
export interface SaidAtTap {
  readonly liquid?: string | undefined;
  readonly nextPick?: NextPick | undefined;
}

/** The card of a bed as the can's sheet asks for it, with what one would take without being asked. */
export function cardAt({ plot, now }: Pick<Grower, 'plot' | 'now'>, bed: string, said: SaidAtTap = {}): PourCard {
  const can = usualCan(cansOf(plot));
  const liquid = said.liquid ?? usualLiquid(liquidsOf(plot, now))?.id;
  const nextPick = said.nextPick === undefined ? {} : { nextPick: { [bed]: said.nextPick } };
  return pourCard({ plot, now, bed, liquid, ...nextPick, can: can?.id, canL: can?.volumeL, strength: MATCHED });
}

/** Every bed whose card gives a dose is fed, most of them whole; the others are left. */
export function goRound(draw: Draw, grower: Grower, book: Book): void {
  const ready = liquidsOf(grower.plot, grower.now).filter(({ state }) => state === 'ready');
  for (const { id } of book.beds) {
    const liquid = mostly(draw) || ready.length === 0 ? undefined : pick(draw, ...ready).id;
    const nextPick = pick(draw, undefined, 'later' as const, 'after-90' as const, 'far' as const);
    const card = cardAt(grower, id, { liquid, nextPick });
    if (card.missing !== undefined || !card.enough || !mostly(draw)) continue;
    const last = mostly(draw) ? 1 : 0.5;
    const poured = card.cans.map((_, i) => (i === card.cans.length - 1 ? last : 1));
    const told = fedBody(card, poured, nextPick);
    if (told === undefined) continue;
    const { id: entry } = grower.did('bed.fed', withRemark(told, pourNow(grower.plot, told.from)));
    const batch = book.batches.find((one) => one.id === card.liquid?.batch);
    if (batch === undefined) throw new Error('a dose from no batch');
    const concentrateL = card.cans.reduce((sum, { concentrateMl }) => sum + concentrateMl / 1000, 0);
    const pouredL = card.cans.reduce((sum, { volumeL }, i) => sum + volumeL * (poured[i] ?? 0), 0);
    if (card.liquid?.kind === 'bottle' && batch.bottles) batch.bottles.pouredL += concentrateL;
    book.pours.push({
      id: entry,
      bed: id,
      batch: batch.id,
      day: grower.day,
      pouredL,
      concentrateL,
      held: card.liquid?.held === true,
    });
    grower.after(12);
  }
}

/** The rest of a lot or something of the list onto the heap, by weight or by barrows. */
export function feedHeap(draw: Draw, grower: Grower, book: Book): void {
  const { hand, plot, today, countries } = grower;
  const lot = book.lots.find((one) => leftKg(one) > 0.3);
  const weight = lot && mass(draw, hand, leftKg(lot) * 0.3, leftKg(lot) * 0.9);
  const barrows = between(draw, 1, 3);
  const barrowL = pick(draw, 60, 85);
  const wetting = mostly(draw) ? volume(draw, hand, 2, 8) : undefined;
  const rows = [
    ...(lot && weight ? [{ lot: lot.id, amount: weight.text }] : []),
    { material: 'dry-leaves', amount: `${barrows} barrow${barrows === 1 ? '' : 's'}` },
  ];
  const typed = {
    heap: 'the heap',
    rows,
    offers: heapOffers({ plot, today }),
    water: wetting?.text,
    litresOf: { barrow: barrowL },
    countries,
  };
  const { body } = taken('a feeding of the heap', readFeeding(typed), {});
  const { id } = grower.did('heap.fed', body);
  const kept = grower.plot.heapFed.find((one) => one.id === id)?.body;
  if (lot && weight) {
    const amount = kept?.ingredients[0]?.amount;
    grower.meant('mass on the heap', amount && 'massKg' in amount ? amount.massKg : undefined, weight);
    lot.usedKg += weight.si;
    book.heap.push({ material: lot.material, lot: lot.id, massKg: weight.si, volumeL: undefined });
  }
  const leaves = kept?.ingredients.at(-1)?.amount;
  const litres = { text: `${barrows} barrows of ${barrowL} L`, si: barrows * barrowL };
  grower.meant('litres on the heap', leaves && 'volumeL' in leaves ? leaves.volumeL : undefined, litres);
  if (wetting) grower.meant('water on the heap', kept?.water?.volumeL, wetting);
  book.heap.push({ material: 'dry-leaves', lot: undefined, massKg: undefined, volumeL: litres.si });
  book.heapWaterL += wetting?.si ?? 0;
}
