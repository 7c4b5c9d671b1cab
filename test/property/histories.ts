// Records of a small plot drawn at random, for whatever must hold of any record: three phones, acts on few things so that they
// meet, corrections and withdrawals of any entry, now and then an answer to a question.

import fc from 'fast-check';
import type { Entry, Kept } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { kg, litres, meter, type Recorder, recorder } from '../scenarios/recorder.ts';

/** A small plot's record drawn at random: three phones, acts on few things so that they meet, corrections of any entry. */
function history(draw: fc.GeneratorValue): readonly Kept[] {
  const who = [1, 2, 3].map((n) => recorder({ by: `K${n}`, device: `phone-${n}`, seed: n * 50 }));
  const first = who[0] as Recorder;
  const entries: Entry[] = [
    first.did('plot.described', '2026-01-01', { name: 'P', timeZone: 'Europe/Berlin', hemisphere: 'north' }),
  ];
  const of = (kind: string) => entries.filter((entry) => entry.kind === kind && entry.replaces === undefined);
  const makers = () => [...of('peg.filled'), ...of('peg.split')];
  const steps = draw(fc.integer, { min: 3, max: 24 });
  for (let step = 0; step < steps; step++) {
    const me = draw(fc.constantFrom, ...who);
    const day = String(draw(fc.integer, { min: 1, max: 9 })).padStart(2, '0');
    const on = draw(fc.constantFrom, `2026-06-${day}`, `2026-06-${day}T08:30`, `2026-06-${day}T19:00`);
    const amount = kg(draw(fc.integer, { min: 1, max: 40 }) / 8);
    const batch = makers().length > 0 ? draw(fc.constantFrom, ...makers()).id : undefined;
    const bed = of('bed.described').length > 0 ? draw(fc.constantFrom, ...of('bed.described')).id : undefined;
    const lot = of('scraps.weighed').length > 0 ? draw(fc.constantFrom, ...of('scraps.weighed')).id : undefined;
    const act = draw(fc.integer, { min: 0, max: 15 });
    if (act === 0) entries.push(me.did('scraps.weighed', on, { name: `lot ${step}`, mass: amount }));
    else if (act === 1) entries.push(me.did('bed.described', on, { name: `bed ${step}` }));
    else if (act <= 3) {
      const parts = [{ ...(lot === undefined ? { name: 'leaves' } : { lot }), mass: amount }];
      const peg = draw(fc.integer, { min: 1, max: 3 });
      entries.push(me.did('peg.filled', on, { peg, parts, water: [{ volume: litres(6) }] }));
    } else if (act === 4 && bed !== undefined) {
      const from = batch === undefined ? [] : [{ batch, volume: litres(0.2) }];
      entries.push(me.did('bed.fed', on, { bed, from, poured: litres(10 + step), way: 'soil' }));
    } else if (act === 5) {
      const target = draw(fc.constantFrom, ...entries);
      entries.push(me.withdrew(target));
    } else if (act === 6) {
      const weighed = entries.filter(({ kind, replaces }) => kind === 'scraps.weighed' || replaces !== undefined);
      const target = weighed.length > 0 ? draw(fc.constantFrom, ...weighed) : undefined;
      if (target?.kind === 'scraps.weighed') {
        entries.push(me.corrected(target as Entry & { kind: 'scraps.weighed' }, on, { name: 'again', mass: amount }));
      }
    } else if (batch !== undefined)
      entries.push(onBatch(act, me, on, batch, draw(fc.constantFrom, ...makers()).id, amount));
  }
  const question = fold(entries).questions[0];
  if (question !== undefined && draw(fc.boolean)) {
    const stands = [draw(fc.constantFrom, ...question.about)];
    entries.push(first.did('question.answered', '2026-06-10', { question: question.key, stands }));
  }
  return entries;
}

function onBatch(
  act: number,
  me: Recorder,
  on: string,
  batch: string,
  other: string,
  amount: ReturnType<typeof kg>,
): Entry {
  if (act === 7) return me.did('peg.split', on, { batch, peg: 9, taken: amount });
  if (act === 8 && other !== batch) return me.did('peg.joined', on, { batch, from: other });
  if (act === 9) return me.did('peg.spilled', on, { batch, lost: litres(amount.massKg) });
  if (act === 10) return me.did('peg.toppedUp', on, { batch, parts: [{ name: 'more', mass: amount }] });
  if (act === 11) return me.did('peg.strained', on, { batch, drained: litres(1), solids: amount, rest: 'stays' });
  if (act === 12) return me.did('peg.strained', on, { batch, drained: litres(4), solids: amount, rest: 'nothing' });
  if (act === 13) return me.did('peg.tipped', on, { batch, to: 'heap' });
  if (act === 14) return me.did('bottle.filled', on, { batch, filled: litres(1), cap: 'vent', material: 'plastic' });
  return me.did('peg.looked', on, { batch, acidity: meter(4.5) });
}

/** Histories of a small plot. */
export const histories = fc.gen().map(history);
