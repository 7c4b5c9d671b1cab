// An amount of loose stuff as a grower tells it: by barrows or buckets with the litres one holds, by weight or by volume.

import type { Countries } from '#engine/quantity/ask.ts';
import { keptMass, keptVolume } from '#engine/quantity/kept.ts';
import { readFigure } from '#engine/quantity/number.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import type { Body } from '#journal/kinds/index.ts';
import { heapForms } from '#words/en/heap-sheet.ts';
import { form as words } from '#words/en/plot.ts';
import { sayAmountProblem } from '#words/quantity.ts';
import type { FieldTrouble } from './form.ts';

export type BulkAmount = Body<'heap.fed'>['ingredients'][number]['amount'];
export type Read<T> = { readonly value: T } | { readonly trouble: FieldTrouble };

export interface BulkHabits {
  /** Litres that one of each holds, as the grower told; without it barrows and buckets are asked about. */
  readonly litresOf?: { readonly barrow?: number | undefined; readonly bucket?: number | undefined } | undefined;
  readonly countries?: Countries | undefined;
}

const CONTAINER = /^(barrow|bucket)(?:load|ful)?s?$/i;

/**
 * Litres that a barrow or a bucket holds, as typed; a bare number is litres, the unit shown beside the field. NaN where it cannot
 * be read, undefined where nothing was typed.
 */
export function litresHeld(text: string | undefined, countries: Countries): number | undefined {
  if (text === undefined || text.trim() === '') return undefined;
  const read = parseAmount(text, { dimension: 'volume', bareUnit: 'L', ...countries });
  return read.ok ? read.value : Number.NaN;
}

/** Which container an amount counts in, where it does. */
export function containerIn(text: string): 'barrow' | 'bucket' | undefined {
  const read = readFigure(text.trim());
  const named = read.ok ? CONTAINER.exec(read.rest.trim())?.[1]?.toLowerCase() : undefined;
  return named === 'barrow' || named === 'bucket' ? named : undefined;
}

/** "2 barrows", "3 buckets", "4.5 kg", "20 L". */
export function readBulk(text: string, { litresOf, countries }: BulkHabits): Read<BulkAmount> {
  if (text === '') return { trouble: { sentence: heapForms.noAmount } };
  const unit = containerIn(text);
  const figure = readFigure(text);
  if (figure.ok && unit !== undefined) {
    const litres = litresOf?.[unit];
    if (litres === undefined || !(litres > 0)) return { trouble: { sentence: heapForms.noLitres(heapForms[unit]) } };
    if (!(figure.value > 0)) return { trouble: { sentence: heapForms.noAmount } };
    return { value: { typed: text, volumeL: figure.value * litres } };
  }
  const mass = parseAmount(text, { dimension: 'mass', ...countries });
  if (mass.ok) return { value: keptMass(mass) };
  const volume = parseAmount(text, { dimension: 'volume', ...countries });
  if (volume.ok) return { value: keptVolume(volume) };
  const found = mass.problem.message === 'wrong-dimension' ? volume : mass;
  const said = sayAmountProblem(found);
  return {
    trouble: { sentence: words.problem(text, said.message, said.allowed), ...(found.ask && { ask: found.ask }) },
  };
}
