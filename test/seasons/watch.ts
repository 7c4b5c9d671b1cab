// A batch watched, strained and bottled, in the forms of the look and of the straining.

import { pegView } from '#tasks/plot/peg.ts';
import { pegForms } from '#tasks/plot/peg-forms.ts';
import { straining } from '#tasks/plot/straining.ts';
import { strainingActs } from '#tasks/plot/straining-acts.ts';
import { lookBody } from '#web/look/answers.ts';
import { bottlesTold, EMPTY_STRAIN, readStrain, type StrainDraft, strainedTold } from '#web/strain/draft.ts';
import { between, type Draw, figure, mass, mostly, pick, volume, warmth } from './amounts.ts';
import type { BookBatch } from './book.ts';
import { type Grower, TAG, taken } from './grower.ts';
import { typedKeys } from './scraps.ts';
import { fitOf } from './shown/batches.ts';

const field = (text: string) => ({ text, settled: text });

/** A batch and what it is watched with. */
export interface Watched {
  readonly batch: BookBatch;
  readonly thermometer: boolean;
}

/** One look; what is not answered is left out. */
export function look(draw: Draw, grower: Grower, { batch, thermometer }: Watched, ph: number): void {
  const by = pick(draw, 'meter', 'meter', 'strip');
  const read = by === 'meter' ? Math.round(ph * 10) / 10 : Math.min(7, Math.max(3.5, Math.round(ph * 2) / 2));
  const sour = { ph: read, by, typed: read.toFixed(1) } as const;
  const isSour = ph < 4.6;
  const nose = mostly(draw) ? pick(draw, ...(isSour ? (['sour', 'yeasty'] as const) : (['grassy'] as const))) : null;
  const top = mostly(draw) ? pick(draw, 'clear' as const, 'bubbles' as const) : null;
  const warm = thermometer && mostly(draw) ? between(draw, 14, 26) : null;
  const answers = { sour: mostly(draw) || ph < 4 ? sour : null, nose, top, warmth: warm };
  if (Object.values(answers).every((one) => one === null)) return;
  const entry = grower.did('peg.looked', lookBody(answers, { batch: batch.id, readBy: '', noseNote: undefined }));
  const kept = entry.body as { readonly acidity?: { readonly ph: number }; readonly temperatureC?: number };
  if (answers.sour) grower.meant('pH of a look', kept.acidity?.ph, { text: sour.typed, si: read });
  if (warm !== null) grower.meant('warmth of a look', kept.temperatureC, { text: `${warm}`, si: warm });
  batch.looks.push({
    day: (grower.minute - batch.filledMinute) / 1440,
    ph: answers.sour?.ph,
    by,
    smell: nose ?? undefined,
    surface: top ?? undefined,
    temperatureC: warm ?? undefined,
  });
}

/** Some water more, or a spill of all of it alike, in the small forms of the peg's sheet. */
export function changes(draw: Draw, grower: Grower, batch: BookBatch): void {
  const { plot, now, hand, countries } = grower;
  const found = plot.batches.get(batch.id);
  if (found === undefined) return;
  const act = pick(draw, 'topUp', 'spill');
  const form = pegForms(plot, pegView({ plot, batch: found, now }), now).find((one) => one.act === act);
  if (form === undefined) return;
  const field = act === 'topUp' ? 'water.0.volume' : 'lost';
  const amount = volume(draw, hand, 0.3, 1.5);
  const typed = { ...form.start, [field]: amount.text };
  const { body } = taken(act, form.read(typed, countries), typed);
  grower.did(form.kind, body);
  const after = grower.plot.batches.get(batch.id)?.contents.waterL;
  const { volumeL } = fitOf(batch).fill;
  const share = act === 'topUp' ? 1 : 1 - amount.si / volumeL.likely;
  const { parts, sugar, waterL } = batch;
  batch.parts = parts.map((part) => ({ ...part, massKg: part.massKg * share }));
  batch.sugar = sugar && { ...sugar, massKg: sugar.massKg * share };
  batch.waterL = act === 'topUp' ? waterL + amount.si : waterL * share;
  // Water of which nobody said where it is from.
  if (act === 'topUp') batch.fromTap = false;
  grower.meant(`${act}, water in the vessel`, after, { text: amount.text, si: batch.waterL });
}

/** Looks over some days while it sours; gives the last acidity. */
export function sours(draw: Draw, grower: Grower, watched: Watched): number {
  const endsAt = pick(draw, 3.6, 3.7, 3.8, 3.8, 3.9, 4.1, 4.8);
  const looks = between(draw, 3, 6);
  for (let i = 0; i < looks; i++) {
    look(draw, grower, watched, Math.max(endsAt, 6.3 - (i * (6.3 - endsAt)) / (looks - 1.5)));
    if (i === 1 && between(draw, 1, 3) === 1) {
      grower.after(10);
      changes(draw, grower, watched.batch);
    }
    grower.wait(between(draw, 1, 3), pick(draw, '09:00', '18:30', '07:15'));
  }
  for (let again = between(draw, 1, 2); again > 0; again--) {
    grower.wait(between(draw, 1, 6));
    look(draw, grower, watched, endsAt);
  }
  return endsAt;
}

/** Strained and, where no stop forbids it, bottled at once. */
export function strainAndBottle(draw: Draw, grower: Grower, { batch, thermometer }: Watched, endsAt: number): void {
  const { hand, countries } = grower;
  const wetL = batch.waterL + 0.7 * batch.parts.reduce((sum, { massKg }) => sum + massKg, 0);
  const drained = volume(draw, hand, wetL * 0.6, wetL * 0.85);
  const solids = mostly(draw) ? mass(draw, hand, wetL * 0.08, wetL * 0.15) : undefined;
  const ph = figure(draw, hand, endsAt, 1);
  const filled = volume(draw, hand, 0.8, Math.min(2, drained.si * 0.9));
  const size = volume(draw, hand, filled.si * 1.1, filled.si * 1.5);
  const count = Math.max(1, Math.floor(drained.si / filled.si) - between(draw, 0, 1));
  const shelf = thermometer && mostly(draw) ? warmth(draw, hand, 8, 24) : undefined;
  const draft: StrainDraft = {
    ...EMPTY_STRAIN,
    drained: typedKeys(drained.text, 'volume', countries),
    solids: typedKeys(solids?.text ?? '', 'mass', countries),
    rest: 'nothing',
    ph: field(ph.text),
    by: 'meter',
    solidsTo: 'heap',
    kind: 'plastic',
    size: typedKeys(size.text, 'volume', countries),
    filled: typedKeys(filled.text, 'volume', countries),
    count: field(String(count)),
    cap: 'vent',
    warmth: typedKeys(shelf?.text ?? '', 'temperature', countries),
  };
  const reading = readStrain(draft, countries);
  const { fields, plan } = reading;
  const now = grower.plot.batches.get(batch.id);
  if (reading.unread || now === undefined || reading.bottleNeeds.length > 0)
    throw new Error(`straining: ${JSON.stringify([...Object.entries(fields)])} ${reading.bottleNeeds.join(', ')}`);
  const answer = straining({
    plot: grower.plot,
    batch: now,
    now: grower.now,
    by: TAG,
    drainedL: fields.drained.value,
    solidsKg: fields.solids.value,
    acidity: fields.ph.value === undefined ? undefined : { ph: fields.ph.value, by: 'meter' },
    bottle: plan,
  });
  if (!answer.ok) throw new Error(`straining: ${JSON.stringify(answer)}`);
  const isStopped = answer.value.stops.length > 0;
  const acts = strainingActs({
    on: grower.now,
    shown: answer.value.shown,
    strained: strainedTold(batch.id, draft, reading),
    bottled: isStopped ? undefined : bottlesTold(batch.id, draft, reading),
  });
  const written = acts.map(({ kind, body, on }) => grower.did(kind, body, on));
  batch.drainedL = drained.si;
  batch.solidsKg = solids?.si ?? 0;
  batch.strained = {
    day: (grower.minute - batch.filledMinute) / 1440,
    dateDay: grower.day,
    ph: ph.si,
    by: 'meter',
  };
  const stood = grower.plot.batches.get(batch.id)?.strainings[0];
  grower.meant('litres drained', stood?.drainedL, drained);
  if (solids) grower.meant('solids', stood?.solidsKg, solids);
  grower.meant('pH at straining', stood?.body.acidity?.ph, ph);
  const bottled = written[1];
  if (bottled === undefined) return;
  const { act } = grower.plot.bottles.get(bottled.id) ?? {};
  grower.meant('litres in a bottle', act?.body.filled.volumeL, filled);
  grower.meant('size of a bottle', act?.body.size?.volumeL, size);
  if (shelf) grower.meant('warmth of the shelf', act?.body.temperatureC, shelf);
  batch.bottles = {
    id: bottled.id,
    filledEachL: filled.si,
    sizeL: size.si,
    count,
    temperatureC: shelf?.si,
    pouredL: 0,
  };
}
