// What was strained and bottled: the straining sheet, the shelf, the overview and the tags, beside the word `strain` and the
// engine's keeping time, asked of the grower's own book.

import { useFirst } from '#engine/bottle/keep.ts';
import { momentOf } from '#journal/moment.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { bottleNow, liquidNow } from '#tasks/plot/figures-now.ts';
import { lineView } from '#tasks/plot/line.ts';
import { shedSheet, tagsOf } from '#tasks/plot/prints.ts';
import { shelf } from '#tasks/plot/shelf.ts';
import { straining } from '#tasks/plot/straining.ts';
import { strain } from '#tasks/strain.ts';
import type { Book, BookBatch, BookBottles } from '../book.ts';
import type { Day } from '../season.ts';
import { judged, meanC, sum } from './batches.ts';
import type { Differences } from './difference.ts';

/** Where no report of the water was told, the sheets count a hard one; where no temperature was, a hot shed. */
const HARD_WATER_MEQ = 4;
const HOT_SHED_C = 30;
const warmOr = (meanC: number) => (Number.isFinite(meanC) ? meanC : HOT_SHED_C);

type Strained = BookBatch & { readonly strained: NonNullable<BookBatch['strained']> };

function strainedOf(batch: BookBatch): batch is Strained {
  return batch.strained !== undefined;
}

/** What the word `strain` says of a batch of the book, as on the day it was strained. */
export function strainOf(batch: Strained) {
  const { parts, waterL, alkalinityMeqPerL, sugar, strained, drainedL, solidsKg } = batch;
  const asked = strain({
    plants: parts,
    water: { volumeL: waterL, alkalinityMeqPerL: alkalinityMeqPerL ?? HARD_WATER_MEQ },
    ...(sugar === undefined ? {} : { sugar }),
    days: strained.day,
    temperatureC: warmOr(meanC(batch, strained.day)),
    finalPh: strained.ph,
    drainedL,
    solidsKg,
    state: judged(batch, `${onDay(strained.dateDay)}T23:00`).state,
  });
  if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
  return asked.value;
}

/** Balance and nutrients of every straining. */
export function strainings({ plot, now, book }: Day, differ: Differences): void {
  for (const told of book.batches.filter(strainedOf)) {
    const at = `peg ${told.peg}`;
    const batch = plot.batches.get(told.id);
    const sheet = batch && straining({ plot, batch, now });
    if (!sheet?.ok) throw new Error(`${at}: no straining`);
    const { balance, liquid, ceiling } = strainOf(told);
    const shown = sheet.value.strain;
    differ.same(`${at}, kg in`, shown.balance.inKg, balance.inKg);
    differ.same(`${at}, kg out`, shown.balance.outKg, balance.outKg);
    differ.same(`${at}, kg not accounted for`, sheet.value.missingKg, balance.inKg - balance.outKg);
    const bars = (parts: typeof sheet.value.inParts) => sum(parts.map(({ massKg }) => massKg));
    differ.same(`${at}, bars of in and out`, bars(sheet.value.inParts), bars(sheet.value.outParts));
    const kept = new Map(liquidNow(plot, batch).figures.map((one) => [one.what, one]));
    for (const element of ['n', 'p', 'k'] as const) {
      differ.range(`${at}, g/L of ${element}`, shown.liquid[`${element}GPerL`], liquid[`${element}GPerL`]);
      differ.same(`${at}, most g/L of ${element}`, shown.ceiling[`${element}GPerL`], ceiling[`${element}GPerL`]);
      const beside = kept.get(`${element}GPerL`);
      if (beside !== undefined) differ.range(`${at}, g/L of ${element} kept`, beside, liquid[`${element}GPerL`]);
    }
  }
}

/** Litres and dates of every bottle. */
export function bottles({ plot, now, book }: Day, differ: Differences): void {
  const shelved = shelf({ plot, now });
  const line = lineView({ plot, now });
  const tags = tagsOf({ plot, now });
  const door = shedSheet({ plot, now });
  const told = book.batches
    .filter(strainedOf)
    .flatMap((batch) => (batch.bottles ? [{ batch, own: batch.bottles }] : []));
  differ.same('shelf, litres left', shelved.leftL.likely, sum(told.map(({ own }) => leftL(own))));
  differ.same('overview, litres left', line.bottles.leftL.likely, shelved.leftL.likely);
  for (const { batch, own } of told) {
    const at = `bottles of peg ${batch.peg}`;
    const shown = shelved.bottles.find(({ id }) => id === own.id);
    const onDoor = door.bottles.find(({ id }) => id === own.id);
    const onLine = line.bottles.groups.find(({ id }) => id === own.id);
    differ.same(`${at}, litres left`, shown?.leftL.likely, leftL(own));
    differ.same(`${at}, litres left on the overview`, onLine?.leftL, leftL(own));
    differ.same(`${at}, litres bottle by bottle`, sum(shown?.eachL ?? []), leftL(own));
    const tagL = sum(tags.flatMap((tag) => (tag.of === 'bottle' && tag.batch === batch.id ? [tag.litres] : [])));
    differ.same(`${at}, litres on their tags`, tagL, leftL(own));
    const { days, keeping } = keeps(batch, own);
    differ.range(`${at}, days to keep`, shown?.useFirst.days, days);
    const by = onDay(batch.strained.dateDay + Math.floor(days.likely));
    differ.same(`${at}, use first by`, shown?.useFirst.likely, by);
    differ.same(`${at}, use first by, shed sheet`, onDoor?.useFirst.likely, by);
    differ.same(`${at}, use first by, overview`, onLine?.useFirstOn, keeping === 'none' ? undefined : by);
    const isReady = judged(batch, now).state === 'ready';
    for (const tag of tags.filter((one) => one.of === 'bottle' && one.batch === batch.id))
      differ.same(`${at}, use first by, tag`, tag.useFirstOn, isReady && keeping !== 'none' ? by : undefined);
    const bottle = plot.bottles.get(own.id);
    const kept = bottle && bottleNow(plot, bottle).figures.find(({ what }) => what === 'useFirstDays');
    if (kept !== undefined) differ.range(`${at}, days to keep, kept`, kept, days);
    const past = momentOf(now).dateDay > batch.strained.dateDay + Math.floor(days.likely);
    differ.same(`${at}, past`, onLine?.past, keeping !== 'none' && past);
  }
}

/** The last days on which the bottles of a book are in date. */
export function lastDaysOf(book: Book): readonly number[] {
  return book.batches.filter(strainedOf).flatMap((batch) => {
    const { bottles: own, strained } = batch;
    return own === undefined ? [] : [strained.dateDay + Math.floor(keeps(batch, own).days.likely)];
  });
}

const leftL = ({ filledEachL, count, pouredL }: BookBottles): number => filledEachL * count - pouredL;

function keeps(batch: Strained, { temperatureC }: BookBottles) {
  const { state } = judged(batch, `${onDay(batch.strained.dateDay)}T23:59`);
  return useFirst({
    finalPh: batch.strained.ph,
    temperatureC: temperatureC ?? warmOr(meanC(batch, batch.strained.day)),
    sound: state !== 'lost' && state !== 'unknown',
  });
}
