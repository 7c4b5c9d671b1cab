// The workings of a strained batch by hand.

import type { Working } from '#engine/working/working.ts';
import {
  all,
  atLeast,
  atMost,
  type Band,
  each,
  likely,
  one,
  over,
  plus,
  point,
  type Redo,
  times,
  word,
} from '../by-hand.ts';

const share = (of: Band, drained: number) => each(of, (released) => 1 - released * drained);
const inSugar = (working: Working) => all(working, /^potassium in the sugar/)[0] ?? point(0);

/** Share given up by a day: the listed one must be the one that rate and days lead to. */
function givenUp(working: Working): Band {
  const days = likely(working, 'days');
  return times(
    one(working, 'final share'),
    each(one(working, 'rate'), (perDay) => -Math.expm1(-perDay * days)),
  );
}

function inALitre(working: Working): Band {
  const dissolved = plus(times(atLeast(one(working, / in the plants$/), 0), givenUp(working)), inSugar(working));
  const gPerL = each(
    atLeast(dissolved, 0),
    (grams) => grams / likely(working, 'water, starter and the plants’ own water'),
  );
  return atMost(gPerL, likely(working, 'no more than'));
}

function inSolids(working: Working): Band {
  const drained = likely(working, 'share of the liquid drained');
  const kept = times(one(working, / in the plants$/), share(one(working, 'share given up by then'), drained));
  const left = plus(
    kept,
    each(inSugar(working), (grams) => grams * (1 - drained)),
  );
  return atMost(atLeast(left, 0), one(working, / put in$/).high);
}

const IONS = { potassium: 39, nitrogen: 14, calcium: 20, magnesium: 12.2 } as const;

function conductivity(working: Working): Band {
  const terms = Object.entries(IONS).flatMap(([name, equivalentG]) => {
    const found = all(working, `${name} in a litre`);
    const charged = name === 'nitrogen' ? found.map((g) => times(g, one(working, /^ammonium and nitrate/))) : found;
    return charged.map((gPerL) => each(gPerL, (g) => (1000 * g) / equivalentG));
  });
  return times(
    each(plus(...terms), (meqPerL) => meqPerL / 10),
    one(working, 'the rule may be wrong by'),
  );
}

function useFirstDays(working: Working): Band {
  const ph = likely(working, 'pH at straining');
  const fall = likely(working, 'tenfold fall of the living bacteria');
  const longest = likely(working, 'longest any source goes');
  const sound = !['lost', 'unknown'].includes(word(working, 'state') ?? '');
  if (sound && ph <= 4) return { low: 2 * fall, likely: Math.sqrt(2 * fall * longest), high: longest };
  return sound && ph <= 4.6 ? { low: 0, likely: fall, high: 2 * fall } : point(0);
}

function pressureAtm(working: Working): number {
  const kelvin = likely(working, 'temperature') + 273.15;
  const solubility =
    likely(working, 'solubility at 25 °C') *
    Math.exp(likely(working, 'its change with temperature') * (1 / kelvin - 1 / 298.15));
  const mol = (likely(working, 'sugar left') / 180.16) * likely(working, 'gas from a mole of sugar');
  const room = likely(working, 'gas room') / (0.0820574 * kelvin);
  return mol / (room + solubility * likely(working, 'liquid'));
}

/** Masses put in, whatever the lots are called: every kilogram as it is, water as a kilogram a litre. */
function massIn(working: Working): number {
  const heavy = likely(working, 'mass of a litre drained');
  const turned = working.inputs.slice(0, -2).map(({ value }) => Number(value));
  const starter = Number(working.inputs.at(-2)?.value);
  return turned.reduce((sum, kg) => sum + kg, 0) + starter * heavy;
}

export const strainRoom: readonly Redo[] = [
  { figure: /^balance\.inKg$/, redo: massIn },
  {
    figure: /^balance\.outKg$/,
    redo: (w) => likely(w, 'drained') * likely(w, 'mass of a litre drained') + likely(w, 'wet solids'),
  },
  {
    figure: /^balance\.unexplainedPercent$/,
    redo: (w) => (100 * (likely(w, 'put in') - likely(w, 'came out'))) / likely(w, 'put in'),
  },
  { figure: /^liquid\.[npk]GPerL$/, redo: inALitre },
  {
    figure: /^ceiling\.[npk]GPerL$/,
    redo: (w) => one(w, / put in$/).high / likely(w, 'water, starter and the plants’ own water'),
  },
  { figure: /^solids\.[nk]G$/, redo: inSolids },
  { figure: /^liquid\.ecDsPerM$/, redo: conductivity },
  {
    figure: /^solids\.cn$/,
    redo: (w) => {
      const lost = one(w, 'carbon lost to acid, gas and liquid');
      const nitrogen = share(one(w, 'nitrogen given up'), likely(w, 'share of the liquid drained'));
      return over(
        times(
          one(w, 'C:N put in, weighted by nitrogen'),
          each(lost, (part) => 1 - part),
        ),
        nitrogen,
      );
    },
  },
  { figure: /^useFirst\.days$/, redo: useFirstDays },
  { figure: /^pressure\.upToAtm$/, redo: pressureAtm },
];
