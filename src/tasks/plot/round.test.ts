// Who gets what, on the demo garden's own days, and on small plots made for one question each.
import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { sayDate } from '#words/en/app.ts';
import { canCard } from '#words/en/can-card.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { liquidsOf, usualLiquid } from './liquid.ts';
import { type RoundBed, roundOver, steppedLitres } from './round.ts';
import { matchedRatio, typedChoice } from './strength.ts';

const garden = (on: string) => {
  const plot = fold(gardenEntries(on));
  const now = `${on}T11:00`;
  const liquid = usualLiquid(liquidsOf(plot, now));
  return { plot, now, liquid: liquid?.id };
};
const byTag = (beds: readonly RoundBed[], tag: string) => {
  const found = beds.find((bed) => bed.tag === tag);
  if (found === undefined) throw new Error(`no bed ${tag}`);
  return found;
};

describe('a round with nothing to pour', () => {
  it('comes to no litres, though a bed may be fed', () => {
    const me = recorder();
    const bed = me.did('bed.described', '2026-05-01', {
      name: 'Gate',
      area: { typed: '5 m²', areaM2: 5 },
      eaten: 'cooked',
    });
    const round = roundOver({ plot: fold([bed]), now: '2026-06-01T08:00' });
    expect(round.beds).toMatchObject([{ verdict: 'yes', portion: { totalL: 10 } }]);
    expect([round.totalL, round.concentrateL]).toEqual([0, 0]);
  });
});

describe('a round over the demo garden from peg 14', () => {
  const round = roundOver(garden('2026-07-06'));

  it('walks G, M, S, F, T, R, P, X', () => {
    expect(round.beds.map(({ tag }) => tag).join('')).toBe('GMSFTRPX');
  });
  it('pours 1 to 40, matched to 9.1 g of plant in a litre: 3.2 kg in 8.1 L is 394 g/L, and 394 / 41 is 9.6', () => {
    expect(round.strength?.ratio).toEqual({ n: 40, reading: 'to' });
    expect(round.strength?.leafGPerL).toBeCloseTo(9.6, 1);
  });
  it('never offers the lettuce bed, and says why', () => {
    const shed = byTag(round.beds, 'S');
    expect(shed.verdict).toBe('never');
    expect(shed.reasons[0]).toMatchObject({ rule: 'bed-gets-none', level: 'stop' });
    expect(shed.concentrateMl).toBeUndefined();
  });
  it('never sprays raw leaf or raw fruit', () => {
    const sprayed = roundOver({ ...garden('2026-07-06'), way: 'leaf' });
    for (const tag of ['S', 'G', 'T', 'P', 'R']) {
      expect(byTag(sprayed.beds, tag).reasons.map(({ rule }) => rule)).toContain('leaf-eaten-raw');
      expect(byTag(sprayed.beds, tag).verdict).toBe('never');
    }
  });
  it('holds the tunnel, picked in 7 days, until picking is 14 days away', () => {
    const given = garden('2026-07-06');
    const tunnel = byTag(round.beds, 'T');
    expect(tunnel.verdict).toBe('hold');
    expect(tunnel.reasons).toContainEqual(
      expect.objectContaining({ rule: 'raw-bed-picked-soon', values: { days: 14, toPickDays: 7 } }),
    );
    const told = roundOver({ ...given, nextPick: { [tunnel.bed]: 'later' } });
    expect(byTag(told.beds, 'T').verdict).toBe('yes');
  });
  it('wants 2 L on a square metre and 1 L in a pot: 5.76 m² take 11.52 L, twelve pots 12 L', () => {
    expect(byTag(round.beds, 'G').portion?.totalL).toBe(11.52);
    expect(byTag(round.beds, 'P').portion?.totalL).toBe(12);
    // Litres by arithmetic: G and M 11.52, F 3.4 · 2 = 6.8, X 3.6 · 2 = 7.2; concentrate is a 41st of the sum.
    expect(round.totalL).toBeCloseTo(11.52 * 2 + 6.8 + 7.2, 9);
    expect(round.concentrateL).toBeCloseTo((11.52 * 2 + 6.8 + 7.2) / 41, 9);
  });
});

describe('a batch that is not held yet', () => {
  it('holds a bed eaten raw, with the date from which it will count as held', () => {
    const round = roundOver(garden('2026-06-20'));
    expect(round.liquid).toMatchObject({ held: false, heldOn: expect.stringMatching(/^2026-0[67]-\d\d/) });
    const why = byTag(round.beds, 'T').reasons.find(({ rule }) => rule === 'batch-not-held-raw-bed');
    expect(why?.values.heldOn).toBe(round.liquid?.heldOn);
    expect(canCard.cautions['batch-not-held-raw-bed']?.(why?.values ?? {})).toContain(
      sayDate(round.liquid?.heldOn ?? ''),
    );
  });
});

describe('a batch that may not be poured', () => {
  it('gives nothing where it is lost: peg 16 is never among what is poured', () => {
    const { plot, now } = garden('2026-07-06');
    expect(liquidsOf(plot, now).map(({ peg }) => peg)).not.toContain(16);
  });

  const rake = recorder();
  const raw = rake.did('bed.described', '2026-05-01', {
    name: 'Raw',
    tag: 'A',
    area: { typed: '4 m2', areaM2: 4 },
    crop: 'tomatoes',
    eaten: 'raw-fruit',
  });
  const cooked = rake.did('bed.described', '2026-05-01', {
    name: 'Cooked',
    tag: 'B',
    area: { typed: '4 m2', areaM2: 4 },
    crop: 'kale',
    eaten: 'cooked',
  });
  const untold = rake.did('bed.described', '2026-05-01', {
    name: 'Untold',
    tag: 'C',
    area: { typed: '4 m2', areaM2: 4 },
  });
  const planted = rake.did('bed.planted', '2026-05-02', { bed: raw.id, act: 'planted', firstPickOn: '2026-12-01' });
  const filled = rake.did('peg.filled', '2026-06-01', {
    peg: 7,
    lid: 'loose',
    temperatureC: 20,
    parts: [{ material: 'grass-clippings-fresh', treated: 'no', mass: kg(3) }],
    water: [{ volume: litres(6) }],
  });
  const looks = (...phs: readonly (readonly [day: number, ph: number])[]) =>
    phs.map(([day, ph]) =>
      rake.did('peg.looked', `2026-06-${String(1 + day).padStart(2, '0')}`, {
        batch: filled.id,
        acidity: meter(ph),
        smell: 'sour',
        temperatureC: 20,
      }),
    );
  const strained = rake.did('peg.strained', '2026-06-12', { batch: filled.id, drained: litres(5), rest: 'nothing' });
  const ground = [raw, cooked, untold, filled, strained];
  const over = (
    entries: readonly Parameters<typeof fold>[0][number][],
    strength?: Parameters<typeof roundOver>[0]['strength'],
  ) => {
    const plot = fold([...ground, ...entries]);
    const now = '2026-06-13T09:00';
    return roundOver({ plot, now, liquid: liquidsOf(plot, now)[0]?.id, strength });
  };

  it('goes on the cooked bed alone while it is ready but not held', () => {
    // Two readings of 4.1 and 4.1, 48 hours apart: ready; never at 4.0: not held.
    const round = over(looks([4, 4.4], [7, 4.1], [9, 4.1]));
    expect(round.liquid).toMatchObject({ state: 'ready', held: false });
    expect(byTag(round.beds, 'B').verdict).toBe('yes');
    expect(byTag(round.beds, 'A').verdict).toBe('hold');
    expect(byTag(round.beds, 'A').reasons.map(({ rule }) => rule)).toContain('batch-not-held-raw-bed');
  });
  it('goes on a raw bed before it is held only where picking is more than 120 days off', () => {
    // 13 June to 1 December is 171 days.
    const round = over([...looks([4, 4.4], [7, 4.1], [9, 4.1]), planted]);
    expect(byTag(round.beds, 'A').verdict).toBe('yes');
  });
  it('counts a bed of which nobody told as eaten raw, and asks', () => {
    const round = over(looks([4, 4.4], [7, 4.1], [9, 4.1]));
    const rules = byTag(round.beds, 'C').reasons.map(({ rule }) => rule);
    expect(rules).toContain('bed-eaten-not-told');
    expect(rules).toContain('batch-not-held-raw-bed');
  });
  it('finds the crop that bears least salt in a bed however its crops are parted', () => {
    const both = rake.did('bed.described', '2026-05-01', {
      name: 'Both',
      tag: 'D',
      area: { typed: '4 m2', areaM2: 4 },
      crop: 'chard & strawberries',
      eaten: 'cooked',
    });
    const round = over([...looks([4, 4.4], [7, 4.1], [9, 4.1]), both]);
    const notes = (tag: string) => byTag(round.beds, tag).reasons.map(({ rule }) => rule);
    // kale stands in no table of salt, strawberries do
    expect(notes('B')).toContain('crop-salt-not-known');
    expect(notes('D')).not.toContain('crop-salt-not-known');
  });
  it('stops every bed where its acidity was never read: unknown never counts as good', () => {
    const round = over([]);
    expect(round.liquid?.state).toBe('unknown');
    expect(round.beds.map(({ verdict }) => verdict)).toEqual(['never', 'never', 'never']);
    expect(round.totalL).toBe(0);
  });
  it('stops every bed where it is lost', () => {
    const foul = ['2026-06-09', '2026-06-11'].map((on) =>
      rake.did('peg.looked', on, { batch: filled.id, acidity: meter(6.2), smell: 'egg' }),
    );
    const round = over(foul);
    expect(round.liquid?.state).toBe('lost');
    for (const { verdict, reasons } of round.beds) {
      expect(verdict).toBe('never');
      expect(reasons.map(({ rule }) => rule)).toContain('batch-lost');
    }
  });
});

describe('a strength', () => {
  it('is the handy ratio next to the published leaf strength', () => {
    // 400 / 9.1 − 1 = 43; 200 / 9.1 − 1 = 21; as 1 to 40 and 1 to 20.
    expect(matchedRatio(400)).toEqual({ n: 40, reading: 'to' });
    expect(matchedRatio(200)).toEqual({ n: 20, reading: 'to' });
  });
  it('is undiluted where a litre holds no more plants than are wanted, and unknown where plants were not told', () => {
    expect(matchedRatio(9)).toEqual({ n: 1, reading: 'in' });
    expect(matchedRatio(undefined)).toBeUndefined();
    expect(matchedRatio(Number.NaN)).toBeUndefined();
  });
  it('is kept as volumes where it was typed: 1 in 10 is 100 mL in a litre, 1 to 10 is 90.9', () => {
    expect(typedChoice({ n: 10, reading: 'in' })).toMatchObject({ concentrateMlPerL: 100 });
    const to = typedChoice({ n: 10, reading: 'to' });
    expect(to.kind === 'typed' && to.concentrateMlPerL).toBeCloseTo(1000 / 11, 9);
  });
  it('steps by half a litre between 0.5 and 10', () => {
    expect([steppedLitres(2, 1), steppedLitres(0.5, -1), steppedLitres(10, 1)]).toEqual([2.5, 0.5, 10]);
  });
});
