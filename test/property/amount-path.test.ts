// The amount typed at the first touch is the amount in the record: from the weigh-in over the filling sheet to the entry and the
// fold, over random lots, bowls, units, countries, empty rows, edits and skipped steps. What was meant is reckoned here, with
// factors typed from the definitions (seasons/amounts.ts).

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Countries } from '#engine/quantity/ask.ts';
import { fillBody, fillOffers } from '#tasks/plot/fill.ts';
import { allAsPlanned, EMPTY_FILL, type FillDraft, fromPlan, readField, takenField } from '#web/fill/draft.ts';
import { readFill } from '#web/fill/reading.ts';
import { leftField } from '#web/parts/typed.ts';
import { type Draft, EMPTY, type Field, field } from '#web/weigh-in/draft.ts';
import { type Amount, between, type Draw, type Hand, mass, mostly, pick, volume } from '../seasons/amounts.ts';
import { Grower } from '../seasons/grower.ts';
import { handedOver } from '../seasons/vessel.ts';

const KINDS = ['grass-clippings-fresh', 'cabbage-leaves', 'kitchen-trimmings'] as const;
const VESSEL_L = 60;

interface Meant {
  readonly key: number;
  readonly material: string;
  /** Undefined for a row that was left empty. */
  readonly amount: Amount | undefined;
  readonly bowl: Amount | undefined;
}

/** A row as meant: nothing, a weight, or a weight in a bowl. */
function rowOf(draw: Draw, hand: Hand, key: number): Meant {
  const material = pick(draw, ...KINDS);
  if (between(draw, 0, 4) === 0) return { key, material, amount: undefined, bowl: undefined };
  const bowl = mostly(draw) ? undefined : mass(draw, hand, 0.2, 0.9);
  return { key, material, amount: mass(draw, hand, 0.3 + (bowl?.si ?? 0), 5), bowl };
}

/** Touches that change nothing: a field that is passed through, and the sheet laid down and taken up as a text. */
const passed = (from: Field): Field => leftField(from, from.text);
const reopened = (draft: FillDraft): FillDraft => ({
  ...EMPTY_FILL,
  ...(JSON.parse(JSON.stringify(draft)) as FillDraft),
});

const paths = fc.gen().map((draw) => {
  const units = pick(draw, 'metric', 'us', 'imperial');
  const hand: Hand = { units, decimals: pick(draw, 'point', 'comma'), language: 'en' };
  const grower = new Grower(hand, '2026-06-01');
  const vessel = grower.did('vessel.described', {
    name: 'tub',
    volume: { typed: '60 L', volumeL: VESSEL_L },
    lid: 'loose',
  });
  const rows = Array.from({ length: between(draw, 1, 6) }, (_, i) => rowOf(draw, hand, 3 * i + between(draw, 1, 3)));
  const water = volume(draw, hand, 4, 20);
  const sugar = mostly(draw) ? mass(draw, hand, 0.05, 0.6) : undefined;
  const gallon = units === 'imperial' ? 'imperial' : 'us';
  const draft: Draft = {
    ...EMPTY,
    ...{ gallon, style: hand.decimals },
    vessel: { ...EMPTY.vessel, volume: field('60 L'), lid: 'loose' },
    lots: rows.map(({ key, material, amount, bowl }) => ({
      ...{ key, material, treated: 'no' as const },
      weight: field(amount?.text ?? ''),
      bowl: bowl && field(bowl.text),
    })),
    water: { ...EMPTY.water, volume: field(water.text) },
    sugar: { product: sugar && 'white-sugar', weight: field(sugar?.text ?? '') },
  };
  return { draw, hand, grower, vessel, rows, water, sugar, draft };
});

describe('the path of an amount from the first touch to the record', () => {
  it('keeps it to a tenth of a gram, whatever lies between', () => {
    let seen = 0;
    fc.assert(
      fc.property(paths, ({ draw, hand, grower, vessel, rows, water, sugar, draft }) => {
        const weighed = rows.filter(({ amount }) => amount !== undefined);
        if (weighed.length === 0) return;
        const offers = fillOffers({ plot: grower.plot, now: grower.now });
        // Whoever fills may have other habits than whoever weighed.
        const others = pick<Countries>(
          draw,
          {},
          { gallon: 'us', style: 'point' },
          { gallon: 'imperial', style: 'comma' },
        );
        let sheet: FillDraft = {
          ...EMPTY_FILL,
          ...fromPlan(handedOver(draft), offers),
          vessel: vessel.id,
          lid: 'loose',
        };
        if (pick(draw, true, false)) sheet = reopened(sheet);
        const meant = new Map(weighed.map(({ key, amount, bowl }) => [key, (amount?.si ?? 0) - (bowl?.si ?? 0)]));
        // Some rows are weighed again, some taken out, some touched and left; the rest goes in as planned.
        sheet = {
          ...sheet,
          rows: sheet.rows.flatMap((row) => {
            const way = between(draw, 0, 5);
            if (way === 0 && sheet.rows.length > 1 && row !== sheet.rows[0]) {
              meant.delete(row.key);
              return [];
            }
            if (way === 1) {
              const again = mass(draw, { ...hand, units: 'metric' }, 0.2, 4);
              meant.set(row.key, again.si);
              return [{ ...row, amount: readField(again.text) }];
            }
            if (way === 2 && row.planned !== undefined) return [{ ...row, amount: passed(takenField(row.planned)) }];
            return [row];
          }),
        };
        sheet = { ...sheet, ...allAsPlanned(sheet) };
        if (pick(draw, true, false)) sheet = reopened(sheet);
        const { ask, peg } = readFill(sheet, offers, { ...others, ...sheet.countries });
        if (ask === undefined || peg === undefined) throw new Error('the sheet was not read');
        const { id } = grower.did('peg.filled', fillBody(ask, { peg }));
        const contents = grower.plot.batches.get(id)?.contents;
        const kept = contents?.parts.map(({ massKg }) => massKg) ?? [];
        expect(kept).toHaveLength(meant.size);
        [...meant.values()].forEach((massKg, i) => {
          expect(kept[i]).toBeCloseTo(massKg, 4);
        });
        expect(contents?.waterL).toBeCloseTo(water.si, 4);
        if (sugar) expect(contents?.sugar[0]?.massKg).toBeCloseTo(sugar.si, 4);
        seen++;
      }),
      { numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(200);
  });
});
