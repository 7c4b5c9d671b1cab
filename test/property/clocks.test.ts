// The clock of another phone, anywhere from two days behind to 400 days ahead. A fast one never opens a bed that is eaten
// raw and that a right one would not; a slow one, which nothing here can show, opens it sooner by at most as much as it
// is slow.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { pourCard } from '#tasks/plot/pour.ts';
import { heldBottle } from '../scenarios/held-bottle.ts';
import { litres, meter, recorder } from '../scenarios/recorder.ts';

const SEED = 20260707;
const runs = { seed: SEED, numRuns: 150 };
const MINUTES_A_DAY = 1440;
const start = momentOf('2026-07-02T00:00').wallMinute;
/** The vessel of batch 14 emptied, and some of it left in it. */
const EMPTIED = heldBottle();
const STANDING = heldBottle('stays');
const { bed, batch, bottle } = EMPTIED;

/** Of which nothing was read: it is not known to be sour. */
const other = recorder({ seed: 7 }).did('peg.filled', '2026-06-20T18:00', {
  peg: 15,
  water: [{ volume: litres(6), source: 'butt' }],
});

const on = (minute: number) => {
  const inDay = ((minute % MINUTES_A_DAY) + MINUTES_A_DAY) % MINUTES_A_DAY;
  const [hour, rest] = [Math.floor(inDay / 60), inDay % 60].map((one) => String(one).padStart(2, '0'));
  return `${onDay(Math.floor(minute / MINUTES_A_DAY))}T${hour}:${rest}`;
};

const onBed = fc.constantFrom('held', 'not held', 'water', 'solids', 'manure') satisfies fc.Arbitrary<string>;
const seen = fc.constantFrom('sour', 'egg', 'mould', 'higher', 'lower', 'fuzz') satisfies fc.Arbitrary<string>;
type Done = { readonly minute: number; readonly what: string };
const at = <T extends string>(what: fc.Arbitrary<T>): fc.Arbitrary<Done> =>
  fc.record({ minute: fc.integer({ min: 0, max: 20 * MINUTES_A_DAY }), what });

/** The acts of the second phone, dated by its own clock. */
function written(acts: readonly Done[], fastMinutes: number): readonly Entry[] {
  const phone = recorder({ by: 'Rake', device: 'phone-rake', seed: 5 });
  return acts
    .toSorted((a, b) => a.minute - b.minute)
    .map(({ minute, what }): Entry => {
      const when = on(start + minute + fastMinutes);
      const feed = (from: object) =>
        phone.did('bed.fed', when, {
          bed: bed.id,
          from: [{ ...from, volume: litres(0.1) }] as never,
          poured: litres(4),
          way: 'soil',
        });
      const look = (more: object) => phone.did('peg.looked', when, { batch: batch.id, ...more });
      switch (what) {
        case 'held':
          return feed({ bottle: bottle.id });
        case 'not held':
          return feed({ batch: other.id });
        case 'water':
          return phone.did('bed.fed', when, { bed: bed.id, from: [], poured: litres(4), way: 'soil' });
        case 'solids':
          return phone.did('bed.dressed', when, { bed: bed.id, what: 'solids', batch: other.id });
        case 'manure':
          return phone.did('bed.dressed', when, { bed: bed.id, what: 'mulch', material: 'horse-manure' });
        case 'sour':
        case 'egg':
          return look({ smell: what });
        case 'mould':
          return look({ surface: 'coloured-fuzz' });
        case 'fuzz':
          return look({ surface: 'fuzzy-white' });
        default:
          return look({ acidity: meter(what === 'higher' ? 4.3 : 3.5) });
      }
    });
}

interface World {
  readonly acts: readonly Done[];
  readonly fastMinutes: number;
  readonly nowMinute: number;
  readonly ground?: readonly Entry[];
}

/** What the first phone opens: the bed for picking, and a dose at its can. */
function opens({ acts, fastMinutes, nowMinute, ground = EMPTIED.ground }: World) {
  const plot = fold([...ground, other, ...written(acts, fastMinutes)]);
  const now = on(start + nowMinute);
  const card = pourCard({ plot, now, bed: bed.id, liquid: bottle.id, canL: 10, nextPick: { [bed.id]: 'far' } });
  return {
    pick: pickList({ plot, now }).some((one) => one.bed === bed.id && one.answer === 'pick'),
    dose: card.bed?.verdict === 'yes',
  };
}

const pastAll = (acts: readonly Done[], laterMinutes: number) =>
  Math.max(0, ...acts.map(({ minute }) => minute)) + laterMinutes;
const fast = fc.integer({ min: 0, max: 400 * MINUTES_A_DAY });

describe(`the clock of another phone (seed ${SEED})`, () => {
  it('where it is fast, what was poured or laid on a bed opens nothing, however long after', () => {
    let opened = 0;
    fc.assert(
      fc.property(
        fc.array(at(onBed), { minLength: 1, maxLength: 4 }),
        fast,
        fc.integer({ min: 0, max: 200 * MINUTES_A_DAY }),
        (acts, fastMinutes, later) => {
          const nowMinute = pastAll(acts, later);
          const right = opens({ acts, fastMinutes: 0, nowMinute });
          const wrong = opens({ acts, fastMinutes, nowMinute });
          if (right.pick || right.dose) opened++;
          expect([wrong.dose && !right.dose, wrong.pick && !right.pick]).toEqual([false, false]);
        },
      ),
      runs,
    );
    expect(opened).toBeGreaterThan(5);
  });

  it('where it is fast, a look that still lies ahead opens nothing', () => {
    let opened = 0;
    fc.assert(
      fc.property(
        fc.array(at(seen), { minLength: 1, maxLength: 4 }),
        fast,
        fc.integer({ min: 0, max: 3 * MINUTES_A_DAY }),
        fc.constantFrom(EMPTIED.ground, STANDING.ground),
        (acts, fastMinutes, later, ground) => {
          const nowMinute = pastAll(acts, later);
          const first = Math.min(...acts.map(({ minute }) => minute));
          fc.pre(first + fastMinutes > nowMinute);
          const right = opens({ acts, fastMinutes: 0, nowMinute, ground });
          const wrong = opens({ acts, fastMinutes, nowMinute, ground });
          if (right.dose) opened++;
          expect([wrong.dose && !right.dose, wrong.pick && !right.pick]).toEqual([false, false]);
        },
      ),
      runs,
    );
    expect(opened).toBeGreaterThan(5);
  });

  it('where it is slow, a bed opens sooner by no more days than it is slow', () => {
    fc.assert(
      fc.property(
        fc.array(at(onBed), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 2 * MINUTES_A_DAY }),
        fc.integer({ min: 0, max: 200 * MINUTES_A_DAY }),
        (acts, slowMinutes, later) => {
          const nowMinute = pastAll(acts, later);
          const wrong = opens({ acts, fastMinutes: -slowMinutes, nowMinute });
          const right = opens({ acts, fastMinutes: 0, nowMinute: nowMinute + slowMinutes + MINUTES_A_DAY });
          expect(wrong.pick && !right.pick).toBe(false);
        },
      ),
      runs,
    );
  });
});
