// What is poured, and what may be picked: the can card, the round, the wall card, the tags and pick day, beside the engine's own
// dilution, cans and waits, asked of the grower's own book.

import { type AnimalOrigin, countsAs, eatingWait } from '#engine/can/eating.ts';
import { pour } from '#engine/can/pour.ts';
import { NOTHING_TOLD, type Profile } from '#engine/scraps/profile.ts';
import { material } from '#engine/tables/index.ts';
import { momentOf } from '#journal/moment.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { canWallCard, shedSheet, tagsOf } from '#tasks/plot/prints.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { matchedRatio } from '#tasks/plot/strength.ts';
import { canCard as german } from '#words/de/can-card.ts';
import { canCard as english } from '#words/en/can-card.ts';
import type { Book, BookBatch, BookBed } from '../book.ts';
import { cardAt } from '../feed.ts';
import type { Day } from '../season.ts';
import { sum } from './batches.ts';
import type { Differences } from './difference.ts';

/** Litres that a square metre and a pot get, as the sheets say them. */
const L_PER_M2 = 2;
const L_PER_POT = 1;

/** Plants in a litre of the liquid: over water and what water the plants bring. */
function plantsGPerL({ parts, waterL }: BookBatch): number {
  const dry = ({ material: id }: BookBatch['parts'][number]) => material(id)?.figures.dryMatter?.likely ?? 1;
  return (
    (1000 * sum(parts.map(({ massKg }) => massKg))) / (waterL + sum(parts.map((part) => part.massKg * (1 - dry(part)))))
  );
}

const ratioOf = (batch: BookBatch) => matchedRatio(plantsGPerL(batch)) ?? { n: Number.NaN, reading: 'to' as const };

function sizeOf({ areaM2, fedM2, pots }: BookBed) {
  return pots === undefined
    ? { count: fedM2 ?? areaM2 ?? Number.NaN, litresPer: L_PER_M2 }
    : { count: pots, litresPer: L_PER_POT };
}

/** Every card of the can, the round they make up, and the card for the wall. */
export function cards({ plot, now, book }: Day, differ: Differences): void {
  const canL = Math.max(...book.cans.map((can) => can.volumeL));
  let roundL = 0;
  let roundConcentrateL = 0;
  let liquid: string | undefined;
  for (const bed of book.beds) {
    const card = cardAt({ plot, now }, bed.id);
    liquid = card.liquid?.id;
    const batch = book.batches.find(({ id }) => id === card.liquid?.batch);
    const at = `can for ${bed.name}`;
    if (card.bed?.verdict === 'yes' && batch !== undefined) {
      const { count, litresPer } = sizeOf(bed);
      roundL += count * litresPer;
      roundConcentrateL += (count * litresPer) / (ratioOf(batch).n + (ratioOf(batch).reading === 'to' ? 1 : 0));
    }
    if (card.missing !== undefined || batch === undefined) continue;
    const size = sizeOf(bed);
    const { dose } = pour({
      strength: { kind: 'ratio', ratio: ratioOf(batch) },
      canL,
      areaM2: size.count,
      depthLPerM2: size.litresPer,
      way: 'soil',
      spoon: null,
    });
    differ.same(`${at}, parts of water`, card.strength?.ratio.n, ratioOf(batch).n);
    differ.same(`${at}, litres`, card.totalL, dose?.bed?.totalL);
    differ.same(`${at}, concentrate, L`, card.concentrateL, dose?.bed?.concentrateL);
    differ.list(
      `${at}, litres of can`,
      card.cans.map((can) => can.volumeL),
      dose?.bed?.cans.map((can) => can.volumeL) ?? [],
    );
    const doses = dose?.bed?.cans.map((can) => can.concentrateMl) ?? [];
    differ.list(
      `${at}, mL in can`,
      card.cans.map((can) => can.concentrateMl),
      doses,
    );
    for (const [words, mark] of [
      [english, '.'],
      [german, ','],
    ] as const)
      for (const ml of doses) differ.same(`${at}, mL as said`, isSaid(words.ml(ml), ml, mark), true);
  }
  const round = roundOver({ plot, now, ...(liquid === undefined ? {} : { liquid }) });
  differ.same('round, litres', round.totalL, roundL);
  differ.same('round, concentrate, L', round.concentrateL, roundConcentrateL);
  wall({ plot, now, book }, differ);
}

/** Whether a written figure is the one meant, to its last digit. */
export function isSaid(text: string, value: number, mark: '.' | ','): boolean {
  const [, whole = '', part = ''] =
    (mark === '.' ? /^([\d\u202f]+)(?:\.(\d+))?/ : /^([\d\u202f]+)(?:,(\d+))?/).exec(text) ?? [];
  const read = Number(`${whole.replaceAll('\u202f', '')}.${part || 0}`);
  return whole !== '' && Math.abs(read - value) <= 0.5001 * 10 ** -part.length;
}

/** The card for the wall and the tags give the same share as the can. */
function wall({ plot, now, book }: Day, differ: Differences): void {
  const card = canWallCard({ plot, now });
  const batch = book.batches.find(({ id }) => id === card.liquid?.batch);
  for (const tag of tagsOf({ plot, now })) {
    const own = book.batches.find(({ id }) => id === tag.batch);
    if (tag.ratio && own) differ.same(`tag of peg ${own.peg}, parts of water`, tag.ratio.n, ratioOf(own).n);
  }
  if (batch === undefined) return;
  for (const can of card.cans) {
    const meant = book.cans.find(({ id }) => id === can.id)?.volumeL ?? Number.NaN;
    const { dose } = pour({
      strength: { kind: 'ratio', ratio: ratioOf(batch) },
      canL: meant,
      way: 'soil',
      spoon: null,
    });
    differ.same(`wall card, mL in ${can.name}`, can.concentrateMl, dose?.perCan.concentrateMl);
    differ.same(`wall card, fills of ${can.name}`, can.fills.full * card.jugMl + can.fills.restMl, can.concentrateMl);
  }
}

/** What animals may have left: only tap water counts as clean, and all of these scraps are plants. */
const originOf = ({ fromTap }: BookBatch): AnimalOrigin => (fromTap ? 'no' : 'possible');

/** Each bed on pick day, and on the sheet for the shed. */
export function picks({ plot, now, book }: Day, differ: Differences): void {
  const shown = pickList({ plot, now });
  const door = shedSheet({ plot, now }).picks;
  const eaten = book.beds.filter((bed) => bed.eaten !== 'not-eaten');
  differ.same('pick day, beds', shown.length, eaten.length);
  for (const bed of eaten) {
    const one = shown.find((row) => row.bed === bed.id);
    const till = tillOf(book, bed);
    const today = momentOf(now).dateDay;
    const isCooked = countsAs({ ...bed, profile: profileOf(book) }) === 'cooked';
    differ.same(`pick day, ${bed.name}`, one?.answer, till > today ? 'wait' : isCooked ? 'cook' : 'pick');
    differ.same(`pick day, ${bed.name}, till`, one?.tillOn, till > today ? onDay(till) : undefined);
    const onDoor = door.find((row) => row.bed === bed.id);
    differ.same(`shed sheet, ${bed.name}, till`, onDoor?.tillOn, one?.tillOn);
    const last = book.pours.filter((told) => told.bed === bed.id).at(-1);
    differ.same(`pick day, ${bed.name}, last fed`, one?.last?.on, last && onDay(last.day));
    const ofDay = book.pours.filter((told) => told.bed === bed.id && told.day === last?.day);
    if (last)
      differ.same(`pick day, ${bed.name}, litres`, one?.lastL?.likely, sum(ofDay.map(({ pouredL }) => pouredL)));
  }
}

const profileOf = ({ sells }: Book): Profile => ({ ...NOTHING_TOLD, sells });

/** The first day on which a bed may be picked raw: the longest of all its pours. */
function tillOf(book: Book, { id, crop, eaten }: BookBed): number {
  const profile = profileOf(book);
  const days = book.pours
    .filter(({ bed }) => bed === id)
    .map(({ day, batch, held }) => {
      const own = book.batches.find((one) => one.id === batch);
      const animalOrigin = own && originOf(own);
      return day + eatingWait({ crop, eaten, profile, way: 'soil', animalOrigin, held }).days;
    });
  return Math.max(Number.NEGATIVE_INFINITY, ...days);
}
