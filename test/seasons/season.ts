// Seasons drawn at random, lived from the first visit to the last round through the forms' own models: texts in, entries out.
// A season is the grower with the record, and the book of what was meant.

import fc from 'fast-check';
import { between, type Draw, type Hand, mostly, pick } from './amounts.ts';
import { Book } from './book.ts';
import { feedHeap, goRound } from './feed.ts';
import { Grower } from './grower.ts';
import { firstVisit } from './place.ts';
import { weigh } from './scraps.ts';
import { lastDaysOf } from './shown/bottles.ts';
import { fillVessel } from './vessel.ts';
import { sours, strainAndBottle } from './watch.ts';

export interface Season {
  readonly grower: Grower;
  readonly book: Book;
  /** Local moments of the season, with the plot as it stood then. */
  readonly days: readonly Day[];
}

/** The plot at a moment, as a sheet would be asked for it, and the book as it stood then. */
export interface Day {
  readonly now: string;
  readonly plot: Grower['plot'];
  readonly book: Book;
}

function handOf(draw: Draw): Hand {
  const language = pick(draw, 'en', 'en', 'de');
  const units = language === 'de' ? 'metric' : pick(draw, 'metric', 'us', 'imperial');
  return { units, language, decimals: language === 'de' ? 'comma' : 'point' };
}

function lived(draw: Draw): Season {
  const grower = new Grower(handOf(draw), `2026-0${between(draw, 4, 8)}-${between(draw, 10, 28)}`);
  const book = new Book();
  const days: Day[] = [];
  const seen = () => days.push({ now: grower.now, plot: grower.plot, book: structuredClone(book) });
  book.thermometer = between(draw, 1, 5) > 1;
  firstVisit(draw, grower, book);
  grower.wait(1);
  for (let i = between(draw, 2, 4); i > 0; i--) weigh(draw, grower, book);
  grower.after(20);
  for (const vessel of book.vessels) {
    const batch = fillVessel(draw, grower, book, vessel);
    if (batch === undefined) continue;
    grower.wait(1);
    const watched = { batch, thermometer: book.thermometer };
    const endsAt = sours(draw, grower, watched);
    seen();
    if (mostly(draw)) {
      grower.after(30);
      strainAndBottle(draw, grower, watched, endsAt);
      seen();
    }
    grower.wait(between(draw, 1, 9));
  }
  if (mostly(draw)) feedHeap(draw, grower, book);
  for (let rounds = between(draw, 1, 3); rounds > 0; rounds--) {
    grower.wait(pick(draw, 1, 5, 10, 14, 20), '07:30');
    goRound(draw, grower, book);
    grower.wait(between(draw, 0, 5), '19:00');
    seen();
  }
  // The last day of a date and the day after it, and long after all that was waited for.
  for (const due of [...lastDaysOf(book), grower.day + between(draw, 60, 400)].sort((a, b) => a - b)) {
    for (const day of [due, due + 1]) {
      if (day <= grower.day) continue;
      grower.wait(day - grower.day);
      seen();
    }
  }
  return { grower, book, days };
}

/** Plausible seasons. */
export const seasons = fc.gen().map(lived);
