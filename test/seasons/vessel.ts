// From the weigh-in to the peg: the plan in its form, handed over as the screen hands it, filled with what the scale said.

import type { Plot } from '#journal/fold.ts';
import { fillAnswer, fillBody, fillOffers } from '#tasks/plot/fill.ts';
import { lasting } from '#web/app/device.ts';
import { draftPrefix } from '#web/app/draft.ts';
import { allAsPlanned, EMPTY_FILL, type FillDraft, fromPlan, PLAN_KEY, type WeighInPlan } from '#web/fill/draft.ts';
import { readFill } from '#web/fill/reading.ts';
import { readAlkalinity } from '#web/weigh-in/alkalinity.ts';
import { type Draft, EMPTY, field } from '#web/weigh-in/draft.ts';
import { handOver } from '#web/weigh-in/hand-over.ts';
import { readDraft } from '#web/weigh-in/reading.ts';
import { type Amount, between, type Draw, mass, mostly, pick, volume, warmth } from './amounts.ts';
import type { Book, BookBatch } from './book.ts';
import type { Grower } from './grower.ts';
import { leftKg, typedKeys } from './scraps.ts';

/** What goes into a vessel, as it is meant; with a bowl the text is what the scale says, the amount what is in it. */
export interface Recipe {
  readonly vessel: Book['vessels'][number];
  readonly lid: 'loose' | 'vent';
  readonly plants: readonly {
    readonly lot: Book['lots'][number];
    readonly amount: Amount;
    readonly bowl: Amount | undefined;
  }[];
  readonly water: Amount;
  readonly sugar: { readonly product: string; readonly amount: Amount } | undefined;
}

/** A recipe that more or less fits a vessel: two fifths plants, two fifths water, some sugar. */
export function recipeFor(draw: Draw, grower: Grower, book: Book, vessel: Book['vessels'][number]): Recipe {
  const usableL = vessel.volumeL * (1 - vessel.gasRoom);
  const lots = book.lots.filter((lot) => leftKg(lot) > 0.1).slice(-between(draw, 1, 3));
  let roomKg = usableL * 0.4;
  const plants = lots.map((lot) => {
    const most = Math.min(leftKg(lot) * 0.95, Math.max(0.1, roomKg));
    const bowl = between(draw, 1, 4) === 1 ? mass(draw, grower.hand, 0.2, 0.8) : undefined;
    const bowlKg = bowl?.si ?? 0;
    const gross = mass(draw, grower.hand, most * 0.5 + bowlKg, most * 0.9 + bowlKg);
    roomKg -= gross.si - bowlKg;
    return { lot, amount: { text: gross.text, si: gross.si - bowlKg }, bowl };
  });
  const plantsKg = plants.reduce((sum, { amount }) => sum + amount.si, 0);
  return {
    vessel,
    lid: vessel.lid ?? pick(draw, 'loose', 'vent'),
    plants,
    water: volume(draw, grower.hand, usableL * 0.35, Math.max(usableL * 0.36, usableL * 0.9 - plantsKg)),
    sugar: mostly(draw)
      ? {
          product: pick(draw, 'white-sugar', 'cane-molasses'),
          amount: mass(draw, grower.hand, plantsKg * 0.03, plantsKg * 0.12),
        }
      : undefined,
  };
}

/** The weigh-in's sheet with a recipe typed into it. */
export function planned(grower: Grower, { vessel, lid, plants, water, sugar }: Recipe, alkalinity: string): Draft {
  const { gallon, spoon, style } = grower.countries;
  return {
    ...EMPTY,
    gallon,
    spoon,
    style,
    vessel: { ...EMPTY.vessel, volume: field(grower.plot.vessels.get(vessel.id)?.volume?.typed ?? ''), lid },
    lots: plants.map(({ lot, amount, bowl }, i) => ({
      key: i + 1,
      material: lot.material,
      weight: typedKeys(amount.text, 'mass', grower.countries),
      bowl: bowl && field(bowl.text),
      treated: 'no',
    })),
    water: { ...EMPTY.water, volume: typedKeys(water.text, 'volume', grower.countries), alkalinity: field(alkalinity) },
    sugar: { product: sugar?.product, weight: field(sugar?.amount.text ?? '') },
  };
}

/** The plan as the weigh-in hands it over. */
export function handedOver(draft: Draft): WeighInPlan {
  const reading = readDraft(draft, readAlkalinity);
  const { question, troubles, missing } = reading;
  if (question === undefined) throw new Error(`no plan: ${JSON.stringify([...troubles])} ${missing.join(', ')}`);
  handOver(question, reading, draft);
  return JSON.parse(lasting.read(`${draftPrefix()}${PLAN_KEY}`) ?? '{}') as WeighInPlan;
}

/** The filling sheet as the plan leaves it, with the lots of the stock and the vessel that were meant. */
export function fillSheet(grower: Grower, recipe: Recipe, plan: WeighInPlan): FillDraft {
  const offers = fillOffers({ plot: grower.plot, now: grower.now });
  const draft: FillDraft = { ...EMPTY_FILL, ...fromPlan(plan, offers) };
  return {
    ...draft,
    vessel: recipe.vessel.id,
    rows: draft.rows.map((row, i) => ({ ...row, lot: recipe.plants[i]?.lot.id })),
  };
}

/** What stands on the filling sheet, read as the screen reads it. */
export function readSheet(plot: Plot, draft: FillDraft, grower: Grower) {
  return readFill(draft, fillOffers({ plot, now: grower.now }), draft.countries ?? grower.countries);
}

/** A vessel weighed in, filled and pegged; undefined where a stop keeps it from being finished. */
export function fillVessel(
  draw: Draw,
  grower: Grower,
  book: Book,
  vessel: Book['vessels'][number],
): BookBatch | undefined {
  const recipe = recipeFor(draw, grower, book, vessel);
  if (recipe.plants.length === 0) return undefined;
  const plan = handedOver(planned(grower, recipe, ''));
  grower.meant('water of the plan', plan.water?.value, recipe.water);
  recipe.plants.forEach(({ amount }, i) => {
    grower.meant('mass of the plan', plan.plants?.[i]?.amount?.value, amount);
  });
  const warm = book.thermometer && mostly(draw) ? warmth(draw, grower.hand, 14, 26) : undefined;
  const fromTap = book.tap !== undefined && mostly(draw);
  const open = fillSheet(grower, recipe, plan);
  // All as planned, or what the scale says on the day.
  const isAsPlanned = mostly(draw);
  const went = recipe.plants.map(({ lot, amount }) =>
    isAsPlanned ? amount : mass(draw, grower.hand, amount.si * 0.8, Math.min(amount.si * 1.1, leftKg(lot))),
  );
  const weighedRows = isAsPlanned
    ? {}
    : {
        rows: open.rows.map((row, i) => ({
          ...row,
          amount: typedKeys(went[i]?.text ?? '', 'mass', grower.countries),
        })),
      };
  const begun: FillDraft = {
    ...open,
    ...weighedRows,
    lid: recipe.lid,
    warmth: typedKeys(warm?.text ?? '', 'temperature', grower.countries),
    waterFrom: fromTap ? book.tap?.id : undefined,
  };
  const draft: FillDraft = { ...begun, ...allAsPlanned(begun) };
  const { ask, peg, needs, warmth: read } = readSheet(grower.plot, draft, grower);
  if (ask === undefined || peg === undefined || needs.length > 0) throw new Error(`filling: ${needs.join(', ')}`);
  const answered = fillAnswer(grower.plot, ask);
  if (!answered.ok) throw new Error(`filling: ${JSON.stringify(answered.problems)}`);
  if (answered.value.stops.length > 0 || answered.value.barred.length > 0) return undefined;
  const { id } = grower.did('peg.filled', fillBody(ask, { peg, temperatureC: read.value }));
  const batch = grower.plot.batches.get(id);
  went.forEach((amount, i) => {
    grower.meant('mass in the vessel', batch?.contents.parts[i]?.massKg, amount);
  });
  grower.meant('water in the vessel', batch?.contents.waterL, recipe.water);
  if (warm) grower.meant('warmth at filling', batch?.temperatures[0]?.temperatureC, warm);
  if (recipe.sugar) grower.meant('sugar in the vessel', batch?.contents.sugar[0]?.massKg, recipe.sugar.amount);
  recipe.plants.forEach(({ lot }, i) => {
    lot.usedKg += went[i]?.si ?? 0;
  });
  const filled: BookBatch = {
    id,
    peg,
    vesselL: vessel.volumeL,
    gasRoom: vessel.gasRoom,
    lid: recipe.lid,
    filledDay: grower.day,
    filledMinute: grower.minute,
    parts: recipe.plants.map(({ lot }, i) => ({ material: lot.material, massKg: went[i]?.si ?? Number.NaN })),
    waterL: recipe.water.si,
    alkalinityMeqPerL: fromTap ? book.tap?.alkalinityMeqPerL : undefined,
    fromTap,
    sugar: recipe.sugar && { product: recipe.sugar.product, massKg: recipe.sugar.amount.si },
    temperatureC: warm?.si,
    looks: [],
    drainedL: 0,
    solidsKg: 0,
    strained: undefined,
    bottles: undefined,
  };
  book.batches.push(filled);
  return filled;
}
