// A walk through the demo garden's season, act by act, and every caution its sheets say at the decision. Notes are left
// out: nothing is decided by them. A plain list, so that a change of any rule shows as a line.

import type { Level } from '#engine/rules/rule.ts';
import type { Entry } from '#journal/entry.ts';
import { fold, type Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { fillAnswer } from '#tasks/plot/fill.ts';
import { heapView } from '#tasks/plot/heap.ts';
import { afterLook, beforeLook } from '#tasks/plot/look-cautions.ts';
import { pegView } from '#tasks/plot/peg.ts';
import { pourCard } from '#tasks/plot/pour.ts';
import { slipView } from '#tasks/plot/slips.ts';
import { straining, strainingCare } from '#tasks/plot/straining.ts';

interface Spoken {
  readonly rule: string;
  readonly level: Level;
}

/** Plot before and after an act, and the act. */
interface Step<K extends Kind> {
  readonly before: Plot;
  readonly after: Plot;
  readonly entry: Entry;
  readonly body: Body<K>;
}

/** What the sheet of one act says, and what the act is about. */
type Saying<K extends Kind> = (step: Step<K>) => { readonly about: string; readonly said: readonly Spoken[] };

const batchOf = (plot: Plot, id: string) => {
  const batch = plot.batches.get(id);
  if (batch === undefined) throw new Error(`no batch ${id}`);
  return batch;
};

const scale: Saying<'scraps.weighed'> = ({ before, entry, body }) => ({
  about: body.name ?? body.material ?? '',
  said: slipView({ plot: before, lot: body, on: entry.on }).cautions,
});

const filling: Saying<'peg.filled'> = ({ before, body }) => {
  const vessel = before.vessels.get(body.vessel ?? '');
  const [water] = body.water ?? [];
  const [sugar] = body.sugar ?? [];
  const answer = fillAnswer(before, {
    vessel: {
      // The kitchen jar of the rehearsal is no vessel of the plot.
      volumeL: vessel?.volume?.volumeL ?? 1,
      gasRoomFraction: vessel?.gasRoomFraction ?? 0.25,
    },
    lid: body.lid,
    parts: (body.parts ?? []).map(({ mass, ...part }) => ({ ...part, actual: mass })),
    water: { report: water?.water, source: water?.source, actual: water?.volume },
    sugar: sugar && { product: sugar.product, actual: sugar.mass },
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return { about: `peg ${body.peg}`, said: answer.value.cautions };
};

const looking: Saying<'peg.looked'> = ({ before, after, entry, body }) => {
  const batch = batchOf(after, body.batch);
  const looked = batch.looks.find(({ id }) => id === entry.id);
  if (looked === undefined) throw new Error(`no look ${entry.id}`);
  const then = pegView({ plot: before, batch: batchOf(before, body.batch), now: entry.on });
  const now = pegView({ plot: after, batch, now: entry.on });
  return { about: `peg ${batch.peg}`, said: [...beforeLook(before, then), ...afterLook(now, looked)] };
};

const draining: Saying<'peg.strained'> = ({ before, entry, body }) => {
  const batch = batchOf(before, body.batch);
  const answer = straining({
    plot: before,
    batch,
    now: entry.on,
    drainedL: body.drained.volumeL,
    solidsKg: body.solids?.massKg,
    acidity: body.acidity,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return { about: `peg ${batch.peg}`, said: [...strainingCare(before), ...answer.value.cautions] };
};

const pouring: Saying<'bed.fed'> = ({ before, entry, body }) => {
  const [from] = body.from;
  const card = pourCard({
    plot: before,
    now: entry.on,
    bed: body.bed,
    liquid: from?.bottle ?? from?.batch,
    canL: body.cans?.[0]?.volumeL,
    soil: 'moist',
  });
  return { about: `bed ${before.beds.get(body.bed)?.facts.tag}`, said: [...card.barred, ...card.beware] };
};

const heaping: Saying<'heap.fed' | 'heap.looked'> = ({ after, entry, body }) => ({
  about: body.heap,
  said: heapView({ plot: after, heap: body.heap, today: entry.on.slice(0, 10) })?.cautions ?? [],
});

const sheets: { readonly [K in Kind]?: Saying<K> } = {
  'scraps.weighed': scale,
  'peg.filled': filling,
  'peg.looked': looking,
  'peg.strained': draining,
  'bed.fed': pouring,
  'heap.fed': heaping,
  'heap.looked': heaping,
};

/** A line for each act with something to say: date, act, what it is about, and the rules, by level. */
export function cautionsOfTheDemo(): readonly string[] {
  const entries = gardenEntries();
  return entries.flatMap((entry, i) => {
    const saying = sheets[entry.kind] as Saying<Kind> | undefined;
    if (saying === undefined) return [];
    const [before, after] = [fold(entries.slice(0, i)), fold(entries.slice(0, i + 1))];
    const { about, said } = saying({ before, after, entry, body: entry.body as Body<Kind> });
    const rules = [...new Set(said.flatMap(({ rule, level }) => (level === 'note' ? [] : [`${level} ${rule}`])))];
    return rules.length === 0 ? [] : [`${entry.on.slice(0, 10)} ${entry.kind} ${about}: ${rules.sort().join(', ')}`];
  });
}
