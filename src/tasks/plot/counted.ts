// What counts at a moment. An entry that lies ahead of the reader's clock, as a phone whose clock is fast writes it, counts
// on the careful side at once: what was poured or laid on a bed was given now, a look counts against its batch alone, a
// planting may be there already and opens nothing, a venting was not done. Nothing of the record is changed, and where
// nothing lies ahead the plot is handed back as it is. The question that is asked of it is in clocks.ts.

import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import type { Kind } from '#journal/kinds/index.ts';
import { daysIn, type Moment, momentOf } from '#journal/moment.ts';
import type { Batch, BatchLook } from '#journal/parts/batch.ts';
import { type Bed, growing } from '#journal/parts/beds.ts';
import type { Bottle } from '#journal/parts/bottles.ts';

/** Phones that set themselves by a network differ by less; a look this little ahead is taken as made now. @practice */
export const CLOCKS_APART_MINUTES = 5;
const MINUTES_A_DAY = 1440;

/** Whether an act lies ahead of a moment by more than some minutes; a date alone does from the next day on. @arithmetic */
export function isAhead(when: Moment, now: Moment, byMinutes = 0): boolean {
  if (!when.timed) return when.dateDay > now.dateDay;
  return when.wallMinute > endOf(now) + byMinutes;
}

/** A moment without a time is the whole of its day. */
function endOf(now: Moment): number {
  return now.timed ? now.wallMinute : (now.dateDay + 1) * MINUTES_A_DAY - 1;
}

/** The latest date of each plot, and the plots made of it for the moments asked about last. */
const known = new WeakMap<Plot, { readonly latest: Moment | undefined; last?: { now: string; plot: Plot } }>();

/** Plots made because something lies ahead. */
const withAhead = new WeakSet<Plot>();

/** Whether a counted plot holds anything that lies ahead of its moment. */
export function liesAhead(plot: Plot): boolean {
  return withAhead.has(plot);
}

/** The plot as it counts at a moment, on the careful side. */
export function counted(plot: Plot, now: string): Plot {
  const at = momentOf(now);
  const about = known.get(plot) ?? { latest: latestOf(plot) };
  known.set(plot, about);
  if (about.latest === undefined || !isAhead(about.latest, at)) return plot;
  if (about.last?.now === now) return about.last.plot;
  const made = countedAt(plot, at);
  about.last = { now, plot: made };
  withAhead.add(made);
  return done(made);
}

/** A plot in which nothing lies ahead any more. */
function done(plot: Plot): Plot {
  known.set(plot, { latest: undefined });
  return plot;
}

function latestOf({ beds, batches, bottles, heapFed, heapLooked }: Plot): Moment | undefined {
  let latest: Moment | undefined;
  const see = (when: Moment | undefined) => {
    if (when !== undefined && (latest === undefined || when.wallMinute > latest.wallMinute)) latest = when;
  };
  for (const { feeds, dressings, plantings } of beds.values()) {
    see(feeds.at(-1)?.act.when);
    see(dressings.at(-1)?.when);
    see(plantings.at(-1)?.when);
  }
  for (const { made, ended, looks, doubtful, strainings } of batches.values()) {
    for (const when of [made, ended]) see(when);
    for (const one of [looks, doubtful, strainings]) for (const { when } of one) see(when);
  }
  for (const { act, lastVented } of bottles.values()) for (const when of [act.when, lastVented]) see(when);
  for (const { when } of [...heapFed, ...heapLooked]) see(when);
  return latest;
}

function countedAt(plot: Plot, now: Moment): Plot {
  const given = <A extends { readonly when: Moment }>(act: A): A =>
    isAhead(act.when, now) ? { ...act, when: now } : act;
  const days = daysIn(plot.facts.timeZone);
  return {
    ...plot,
    beds: mapped(plot.beds, (bed) => ({
      ...bed,
      feeds: bed.feeds.map((feed) => ({ ...feed, act: given(feed.act) })),
      dressings: bed.dressings.map(given),
      ...plantedAt(bed, now),
    })),
    batches: mapped(plot.batches, (batch) => batchAt(plot, batch, { now, days })),
    bottles: mapped(plot.bottles, (bottle) => bottleAt(bottle, now, given)),
    heapFed: plot.heapFed.map(given),
    heapLooked: plot.heapLooked.filter(({ when }) => !isAhead(when, now)),
  };
}

/** Whether an act of such a plot lies ahead and counts as given now. */
export function isGivenNow({ when, entry }: ActOf<Kind>): boolean {
  return when.on !== entry.on;
}

function mapped<V>(of: ReadonlyMap<string, V>, to: (value: V) => V): ReadonlyMap<string, V> {
  return new Map([...of].map(([id, value]) => [id, to(value)]));
}

/** A planting that lies ahead may be there already: what grew before it and what grows after it both count. */
function plantedAt(bed: Bed, now: Moment): Partial<Bed> {
  const done = bed.plantings.filter(({ when }) => !isAhead(when, now));
  if (done.length === bed.plantings.length) return {};
  const ahead = bed.plantings.slice(done.length);
  const told = [bed.facts, ...(bed.mayBe ?? []).map(({ facts }) => facts)];
  const [as, ...mayBe] = [done, ...ahead.map((one) => [...done, one])].flatMap((plantings) =>
    told.map((facts) => growing(facts, plantings)),
  );
  return { ...as, mayBe };
}

/** A bed as it is, and as it may be already by plantings that lie ahead. */
export function bedsThatMayBe(bed: Bed): readonly Bed[] {
  const { mayBe = [], ...as } = bed;
  return [as, ...mayBe.map((grown) => ({ ...as, ...grown }))];
}

/** The same of a counted plot, one for each that a bed may be already. */
export function plotsThatMayBe(plot: Plot, bed: string): readonly Plot[] {
  const found = plot.beds.get(bed);
  if (found?.mayBe === undefined) return [plot];
  return bedsThatMayBe(found).map((one) => done({ ...plot, beds: new Map(plot.beds).set(bed, one) }));
}

interface At {
  readonly now: Moment;
  readonly days: (from: Moment, to: Moment) => number;
}

function batchAt(plot: Plot, batch: Batch, at: At): Batch {
  const { now, days } = at;
  const isNew = isAhead(batch.filled, now);
  const [filled, made] = [isNew ? now : batch.filled, isAhead(batch.made, now) ? now : batch.made];
  const day = days(filled, now);
  const [near, far] = [
    (when: Moment) => isAhead(when, now),
    (when: Moment) => isAhead(when, now, CLOCKS_APART_MINUTES),
  ];
  const against = { why: 'ahead', from: now } as const;
  const read = batch.strainings.flatMap(({ id, when, by, body }): BatchLook[] => {
    const { acidity } = body;
    if (acidity === undefined || !near(when)) return [];
    return [{ id, day, when, by, device: '', batch: batch.id, body: { batch: batch.id, acidity }, against }];
  });
  const ahead = [...inherited(plot, batch), ...batch.looks, ...batch.doubtful].filter(({ when }) => far(when));
  const doubtful = ahead.map((look) => ({ ...look, day: Math.max(0, day - behindLast(look, ahead)), against }));
  const looks = batch.looks.filter(({ when }) => !far(when));
  const seen = [...looks, ...batch.strainings.filter(({ when }) => !near(when))];
  return {
    ...batch,
    filled,
    made,
    looks: looks.map((look) => (near(look.when) ? { ...look, when: now, day } : look)),
    doubtful: [...batch.doubtful.filter(({ when }) => !far(when)), ...doubtful, ...read],
    ...(batch.ended !== undefined &&
      near(batch.ended) && { presentUntilDay: Math.max(0, ...seen.map((one) => one.day)) }),
  };
}

/** Days between a look and the last one of its device: one clock that is wrong still counts days as they pass. @arithmetic */
function behindLast({ when, device }: BatchLook, ahead: readonly BatchLook[]): number {
  const own = ahead.filter((one) => one.device === device).map((one) => one.when.wallMinute);
  return (Math.max(...own) - when.wallMinute) / MINUTES_A_DAY;
}

/** Looks at what it was split from may have been before the split, whatever their date says. */
function inherited(plot: Plot, { splitFrom }: Batch): readonly BatchLook[] {
  const from = splitFrom === undefined ? undefined : plot.batches.get(splitFrom);
  return from === undefined ? [] : [...inherited(plot, from), ...from.looks, ...from.doubtful];
}

/** Filled at the latest now, and not vented by a venting that lies ahead. */
function bottleAt(bottle: Bottle, now: Moment, given: <A extends { readonly when: Moment }>(act: A) => A): Bottle {
  const vents = bottle.vents.filter(({ when }) => !isAhead(when, now));
  const act: ActOf<'bottle.filled'> = given(bottle.act);
  return { ...bottle, act, vents, lastVented: vents.at(-1)?.when ?? act.when };
}
