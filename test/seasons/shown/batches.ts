// What stands and stood in vessels: the peg's sheet, the overview, the drawing of a vessel and the sheet for the shed, beside the
// word `fit` and the judgement of the engine, asked of the grower's own book.

import { judgeBatch } from '#engine/souring/judge.ts';
import type { Look } from '#engine/souring/look.ts';
import { momentOf } from '#journal/moment.ts';
import { fit } from '#tasks/fit.ts';
import { vesselsDrawn } from '#tasks/plot/facts.ts';
import { lineView } from '#tasks/plot/line.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { shedSheet, tagsOf } from '#tasks/plot/prints.ts';
import { stockView } from '#tasks/plot/scraps.ts';
import type { BookBatch } from '../book.ts';
import { TAG } from '../grower.ts';
import { leftKg } from '../scraps.ts';
import type { Day } from '../season.ts';
import type { Differences } from './difference.ts';

/** Scraps in stock: overview and stock sheet against what was weighed less what was used. */
export function stock({ plot, now, book }: Day, differ: Differences): void {
  const view = stockView({ plot, today: now.slice(0, 10) });
  const line = lineView({ plot, now });
  const kept = book.lots.filter((lot) => leftKg(lot) > 1e-9);
  differ.same('overview, scraps in stock, kg', line.scraps.inKg, sum(kept.map(leftKg)));
  const listed = book.lots.filter((lot) => leftKg(lot) >= 0.01);
  differ.same('stock, kg that may go in', view.usableKg, sum(listed.map(leftKg)));
  for (const lot of listed)
    differ.same(`stock, kg left of ${lot.material}`, view.lots.find(({ id }) => id === lot.id)?.leftKg, leftKg(lot));
}

export function sum(of: readonly number[]): number {
  return of.reduce((total, one) => total + one, 0);
}

/** The mean of what was told of a batch's temperature until a day: each stands until the next one, the first from the filling. */
export function meanC({ temperatureC, looks, strained, bottles }: BookBatch, untilDay: number): number {
  const told = [
    { day: 0, temperatureC },
    ...looks,
    ...(strained && bottles ? [{ ...strained, ...bottles }] : []),
  ].flatMap((one) =>
    one.temperatureC === undefined || one.day > untilDay ? [] : [{ day: one.day, c: one.temperatureC }],
  );
  if (untilDay <= 0 || told.length === 0) return told.at(-1)?.c ?? Number.NaN;
  return sum(told.map(({ day, c }, i) => c * ((told[i + 1]?.day ?? untilDay) - (i === 0 ? 0 : day)))) / untilDay;
}

/** The judgement of the engine over the looks of the book. */
export function judged(batch: BookBatch, now: string) {
  const today = (momentOf(now).wallMinute - batch.filledMinute) / 1440;
  const looks: readonly Look[] = batch.looks.map(({ day, ph, by, smell, surface }) => ({
    day,
    who: TAG,
    ...(ph !== undefined && { ph, by }),
    ...(smell && { smell }),
    ...(surface && { surface }),
  }));
  const { strained } = batch;
  const read = strained ? [{ day: strained.day, who: TAG, ph: strained.ph, by: strained.by }] : [];
  const endsDay = strained === undefined ? today : Math.min(today, strained.day);
  const judgement = judgeBatch({ looks: [...looks, ...read], temperatureC: meanC(batch, today), today: endsDay });
  const { state, heldFromDay } = judgement;
  // On the shelf, in bottles that let gas out, the time goes on.
  const shelved = strained !== undefined && batch.bottles !== undefined && state === 'ready';
  const held = judgement.held || (shelved && today >= (heldFromDay ?? Number.POSITIVE_INFINITY));
  return { state, held };
}

/** What the engine's `fit` says of what was put in. */
export function fitOf({ parts, waterL, alkalinityMeqPerL, sugar, vesselL, gasRoom, lid }: BookBatch) {
  const asked = fit({
    vessel: { volumeL: vesselL, gasRoom, lid },
    plants: parts,
    water: { volumeL: waterL, ...(alkalinityMeqPerL === undefined ? {} : { alkalinityMeqPerL }) },
    ...(sugar === undefined ? {} : { sugar }),
  });
  if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
  return asked.value;
}

/** Every batch, standing or strained. */
export function batches({ plot, now, book }: Day, differ: Differences): void {
  const line = lineView({ plot, now });
  const shed = shedSheet({ plot, now });
  const tags = tagsOf({ plot, now });
  for (const told of book.batches) {
    const batch = plot.batches.get(told.id);
    if (batch === undefined) throw new Error(`no batch ${told.id}`);
    const view = pegView({ plot, batch, now });
    const { state, held } = judged(told, now);
    const at = `peg ${told.peg}`;
    differ.same(`${at}, state`, view.state, state);
    differ.same(`${at}, sour long enough`, view.held, held);
    const meanSoFarC = meanC(told, (momentOf(now).wallMinute - told.filledMinute) / 1440);
    differ.same(`${at}, mean temperature`, view.temperature?.meanC ?? Number.NaN, meanSoFarC);
    differ.same(`${at}, day`, view.day, momentOf(now).dateDay - told.filledDay);
    differ.list(
      `${at}, readings`,
      view.readings.map(({ ph }) => ph),
      phOf(told),
    );
    for (const tag of tags.filter((one) => one.batch === told.id)) {
      differ.same(`${at}, state on its tag`, tag.state, state);
      differ.same(`${at}, sour long enough on its tag`, tag.held, held);
    }
    const layersL = sum(view.layers.map((layer) => layer.litres));
    differ.same(`${at}, litres drawn in layers`, layersL, batch.presentL);
    if (told.strained) continue;
    const { fill } = fitOf(told);
    const litres = fill.volumeL.likely;
    const onLine = line.pegs.find((one) => one.batch === told.id);
    differ.same(`${at}, litres in it`, batch.presentL, litres);
    differ.same(`${at}, litres on the overview`, onLine?.presentL, litres);
    differ.same(`${at}, litres on its tag`, tags.find((one) => one.batch === told.id)?.litres, litres);
    differ.same(`${at}, litres up to its line`, view.vessel.usableL, fill.usableL);
    differ.same(`${at}, litres up to its line, overview`, onLine?.usableL, fill.usableL);
    const drawn = vesselsDrawn(plot).find(({ id }) => id === batch.vessel);
    differ.same(`${at}, litres up to its line, facts`, drawn?.usableL, fill.usableL);
    differ.same(`${at}, state on the overview`, onLine?.state, state);
    differ.same(`${at}, sour long enough on the overview`, onLine?.held, held);
    const onDoor = shed.pegs.find(({ id }) => id === told.id);
    differ.same(`${at}, state on the shed sheet`, onDoor?.state, state);
    differ.same(`${at}, next look on the shed sheet`, onDoor?.nextLookOn, onLine?.nextLookOn);
  }
}

function phOf({ looks, strained }: BookBatch): readonly number[] {
  return [...looks.flatMap(({ ph }) => ph ?? []), ...(strained ? [strained.ph] : [])];
}
