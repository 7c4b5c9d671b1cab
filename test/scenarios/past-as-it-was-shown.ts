// A small season written as the sheets write it: a batch strained and bottled, a bed fed; each act keeps what was shown.
// The program is taken in whole by its caller, so that a test can run a second one with other tables.

import type { Entry } from '#journal/entry.ts';
import type { Body } from '#journal/kinds/index.ts';
import { kg, litres, meter, recorder } from './recorder.ts';

/** The parts of the program that the season needs. */
export async function program() {
  const [{ fold }, { straining }, { strainingActs }, { pourNow }, { withRemark }, moved, { recordIndex }] =
    await Promise.all([
      import('#journal/fold.ts'),
      import('#tasks/plot/straining.ts'),
      import('#tasks/plot/straining-acts.ts'),
      import('#tasks/plot/figures-now.ts'),
      import('#tasks/plot/figures-shown.ts'),
      import('#tasks/plot/moved-figures.ts'),
      import('#tasks/plot/record-search.ts'),
    ]);
  return { fold, straining, strainingActs, pourNow, withRemark, ...moved, recordIndex };
}

export type Program = Awaited<ReturnType<typeof program>>;

export const PEG = 14;
const STRAINED_ON = '2026-06-20T10:00';

/** The entries of it, and what was shown at the straining. */
export function season({ fold, straining, strainingActs, pourNow, withRemark }: Program) {
  const me = recorder();
  const bed = me.did('bed.described', '2026-06-01', {
    name: 'Gate',
    eaten: 'cooked',
    area: { typed: '4 m²', areaM2: 4 },
  });
  const filled = me.did('peg.filled', '2026-06-10T09:30', {
    peg: PEG,
    parts: [{ material: 'nettle', mass: kg(2) }],
    water: [{ volume: litres(8) }],
    sugar: [{ product: 'white-sugar', mass: kg(0.2) }],
    temperatureC: 20,
  });
  const looked = ['2026-06-16T09:30', '2026-06-19T09:30'].map((on) =>
    me.did('peg.looked', on, { batch: filled.id, acidity: meter(3.8), smell: 'sour', surface: 'clear' }),
  );
  const before = [bed, filled, ...looked];
  const plot = fold(before);
  const batch = plot.batches.get(filled.id);
  if (batch === undefined) throw new Error('no batch');
  const plan = { sizeL: 1, filledL: 0.9, count: 7, cap: 'vent', material: 'plastic', temperatureC: 18 } as const;
  const answer = straining({
    plot,
    batch,
    now: STRAINED_ON,
    drainedL: 6.3,
    solidsKg: 1.8,
    acidity: { ph: 3.8, by: 'meter' },
    bottle: plan,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  const acts = strainingActs({
    on: STRAINED_ON,
    shown: answer.value.shown,
    strained: {
      batch: filled.id,
      drained: litres(6.3),
      solids: kg(1.8),
      rest: 'nothing',
      acidity: meter(3.8),
    },
    bottled: {
      batch: filled.id,
      plan,
      filled: litres(0.9),
      size: litres(1),
    },
  }).map(({ kind, body, on }) => me.did(kind, on, body));
  const [strained, bottled] = acts as [Entry, Entry];
  const withBottles = fold([...before, ...acts]);
  const pour = (on: string, concentrateL: number) => {
    const body: Body<'bed.fed'> = {
      bed: bed.id,
      from: [{ bottle: bottled.id, volume: litres(concentrateL) }],
      poured: litres(10),
      way: 'soil',
    };
    return me.did('bed.fed', on, withRemark(body, pourNow(withBottles, body.from)));
  };
  const pours = [pour('2026-06-28T08:00', 0.25), pour('2026-07-05T08:00', 0.5)];
  return { me, bed, filled, strained, bottled, pours, answer: answer.value, entries: [...before, ...acts, ...pours] };
}
