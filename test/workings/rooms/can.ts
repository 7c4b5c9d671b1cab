// The can's workings by hand.

import type { Working } from '#engine/working/working.ts';
import { all, type Band, each, likely, one, plus, type Redo, times } from '../by-hand.ts';

const share = (working: Working) => likely(working, 'share of concentrate');

/** The share of the mixture by whichever strength is listed. */
function concentrateMl(working: Working): number {
  const canMl = 1000 * likely(working, 'can');
  const [parts] = all(working, /^parts, read as/);
  if (parts !== undefined) {
    const reading = working.inputs.some(({ label }) => label === 'parts, read as "1 in n"') ? 'in' : 'to';
    return canMl / (reading === 'in' ? parts.likely : parts.likely + 1);
  }
  if (all(working, 'wanted on a square metre').length > 0) {
    const most = likely(working, 'in a litre of the batch') * likely(working, 'depth poured');
    return (canMl * likely(working, 'wanted on a square metre')) / most;
  }
  const [limit, batch, water] = ['limit of the can', 'batch', 'water'].map((label) => likely(working, label)) as [
    number,
    number,
    number,
  ];
  return batch <= limit ? canMl : (canMl * (limit - water)) / (batch - water);
}

/** Where charges balance in the can, by halving; the range is the widest of four: either pH of the batch, each at either strength. */
function canPh(working: Working): Band {
  const x = share(working);
  const meterPh = all(working, 'a pH meter errs by')[0]?.likely ?? 0;
  const batch = one(working, 'pH of the batch');
  const spread = one(working, 'acids and buffer against the usual');
  const waterPh = likely(working, 'pH of the water');
  const startPh = likely(working, 'pH of the plants before souring');
  const lactic = likely(working, 'lactic acid') / likely(working, 'molar mass of lactic acid');
  const acetic = likely(working, 'acetic acid') / likely(working, 'molar mass of acetic acid');
  const buffer = likely(working, 'buffer');
  const alkalinity = likely(working, 'alkalinity of the water') / 1000;
  const given = (ph: number, pka: number) => 1 / (1 + 10 ** (pka - ph));
  const pka = (acid: string) => likely(working, `pKa of ${acid} acid`);
  const [lacticPka, aceticPka, carbonicPka] = [pka('lactic'), pka('acetic'), pka('carbonic')];
  const acidsOf = (ph: number, factor: number) =>
    factor * (lactic * given(ph, lacticPka) + acetic * given(ph, aceticPka) - buffer * (startPh - ph));
  const free = (ph: number) => 10 ** -ph - 10 ** -startPh;
  const lost = (ph: number) => 1 / (1 + 10 ** (ph - carbonicPka));
  const phOf = (batchPh: number, factor: number) => {
    const base = acidsOf(batchPh, factor) - free(batchPh);
    const surplus = (ph: number) =>
      x * (acidsOf(ph, factor) - base) - (1 - x) * alkalinity * (lost(ph) - lost(waterPh)) - free(ph);
    let [low, high] = [2.2, 9];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (surplus(middle) < 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const middle = phOf(batch.likely, spread.likely);
  const ends = [
    phOf(batch.low - meterPh, spread.low),
    phOf(batch.low - meterPh, spread.high),
    phOf(batch.high + meterPh, spread.low),
    phOf(batch.high + meterPh, spread.high),
  ];
  return { low: Math.min(...ends), likely: middle, high: Math.max(...ends) };
}

const PEN = { low: 0.95, likely: 1, high: 1.05 };
const JUG = PEN;

function salt(working: Working): Band {
  const x = share(working);
  const thinned = { low: 1, likely: 1, high: 1 + 0.15 * (1 - x) };
  const brought = each(times(one(working, 'batch'), PEN, thinned), (ec) => x * ec);
  return plus(
    brought,
    each(times(one(working, 'water'), PEN), (ec) => (1 - x) * ec),
  );
}

export const canRoom: readonly Redo[] = [
  { figure: /^perCan\.concentrateMl$/, redo: concentrateMl },
  { figure: /^perCan\.waterMl$/, redo: (w) => 1000 * likely(w, 'can') - likely(w, 'concentrate') },
  { figure: /^totalL$/, redo: (w) => likely(w, 'area') * likely(w, 'depth poured') },
  { figure: /^concentrateL$/, redo: (w) => likely(w, 'litres for the bed') * share(w) },
  { figure: /^cans\[\d+\]\.concentrateMl$/, redo: (w) => 1000 * likely(w, 'litres in the last can') * share(w) },
  {
    figure: /^twoStep\.thenMl$/,
    redo: (w) =>
      (likely(w, 'dose') * (likely(w, 'first concentrate') + likely(w, 'first water'))) /
      likely(w, 'first concentrate'),
  },
  { figure: /^diluted\.ph$/, redo: canPh },
  { figure: /^diluted\.ecDsPerM$/, redo: salt },
  {
    figure: /^given\.[nk]GPerM2$/,
    redo: (w) => each(times(one(w, / in the batch$/), JUG), (g) => g * share(w) * likely(w, 'depth poured')),
  },
];
