// What the plot says of whoever signs on this device: language, units, nose, and who else there is.

import { formatAmount } from '#engine/quantity/format.ts';
import { wordsFor } from '#words/language.ts';
import type { Record } from '../app/record.ts';

/** The signing keyholder, as far as the plot was told. */
export function signer(record: Record) {
  const all = () => record.plot().facts.keyholders ?? [];
  const own = () => all().find(({ tag }) => tag === record.keyholder());
  return {
    words: () => wordsFor(own()?.language),
    cannotSmell: () => own()?.cannotSmell === true,
    others: () => all().flatMap(({ tag }) => (tag === record.keyholder() ? [] : [tag])),
    temperature: (temperatureC: number) =>
      formatAmount({ value: temperatureC, dimension: 'temperature' }, own()?.units ?? 'metric').text,
    mass: (massKg: number) => formatAmount({ value: massKg, dimension: 'mass' }, own()?.units ?? 'metric').text,
    volume: (volumeL: number) => formatAmount({ value: volumeL, dimension: 'volume' }, own()?.units ?? 'metric').text,
    gallon: () => own()?.gallon,
    spoon: () => own()?.spoon,
  };
}
