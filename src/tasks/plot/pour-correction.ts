// A pour corrected: litres, concentrate and strength hang together, so whoever tells the litres anew is asked about the
// concentrate, and the strength follows from what both are then. What was told first stays readable in its own entry.

import { formatIn } from '#engine/quantity/format.ts';
import { concentrateFraction } from '#engine/quantity/ratio.ts';
import type { Body } from '#journal/kinds/index.ts';
import { canonical } from '#journal/same.ts';
import { pourCorrection as words } from '#words/en/pour-correction.ts';
import type { FieldTrouble, Typed } from './form.ts';

type Pour = Body<'bed.fed'>;

/** In the form of a correction: the litres, as typed, for which the concentrate was settled. */
export const CONCENTRATE_FOR = 'poured.concentrateFor';

/** Rounding of amounts as they are shown; a strength within it still says what the amounts do. @practice three digits */
const ROUNDING = 0.02;

const concentrateL = ({ from }: Pour) => from.reduce((sum, { volume }) => sum + volume.volumeL, 0);
const strengthOf = (pour: Pour) => concentrateL(pour) / pour.poured.volumeL;
const text = (volumeL: number) => formatIn(volumeL, volumeL < 1 ? 'mL' : 'L').text;

/**
 * The question about the concentrate where the litres alone were told anew: as much weaker or stronger, or as it stands.
 * @param typed the form; an answer counts for the litres it was given for
 */
export function concentrateTrouble(pour: Pour, before: Pour, typed: Typed): FieldTrouble | undefined {
  const litres = (typed.poured ?? '').trim();
  const isTold = canonical(pour.from) !== canonical(before.from);
  const answered = typed[CONCENTRATE_FOR];
  if (pour.poured.volumeL === before.poured.volumeL || pour.from.length === 0) return undefined;
  if (answered === litres || (answered === undefined && isTold)) return undefined;
  const times = pour.poured.volumeL / before.poured.volumeL;
  const scaled = before.from.map(({ volume }, i) => [`from.${i}.volume`, text(volume.volumeL * times)] as const);
  const scaledL = concentrateL(before) * times;
  return {
    sentence: words.howMuch(text(pour.poured.volumeL)),
    offers: [
      { text: words.sameStrength(text(scaledL)), put: { ...Object.fromEntries(scaled), [CONCENTRATE_FOR]: litres } },
      {
        text: words.asItIs(text(concentrateL(pour)), sayStrength(withStrengthAnew(pour, before))),
        put: { [CONCENTRATE_FOR]: litres },
      },
    ],
  };
}

function sayStrength({ ratio }: Pour): string | undefined {
  return ratio && words.strength(ratio.reading, ratio.n);
}

/**
 * The pour with the strength that its amounts have, where they were told anew; without one where that cannot be known,
 * as after a can half poured whose concentrate was changed.
 * @arithmetic 1 in n: n = V / C; 1 to n: n = V / C - 1
 */
export function withStrengthAnew(pour: Pour, before: Pour): Pour {
  const { ratio, ...rest } = pour;
  if (ratio === undefined || canonical([pour.poured, pour.from]) === canonical([before.poured, before.from]))
    return pour;
  const same = (a: number, b: number) => Math.abs(a - b) <= ROUNDING * b;
  if (same(strengthOf(pour), strengthOf(before))) return pour;
  const was = before.ratio && concentrateFraction(before.ratio);
  const isWhole = was !== undefined && same(strengthOf(before), was);
  const litresMoved = pour.poured.volumeL !== before.poured.volumeL;
  const n = 1 / strengthOf(pour) - (ratio.reading === 'to' ? 1 : 0);
  if (!(isWhole || litresMoved) || !(n > 0) || !Number.isFinite(n)) return rest;
  return { ...pour, ratio: { n: Number(n.toPrecision(3)), reading: ratio.reading } };
}
