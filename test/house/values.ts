// Which numbers of the code are safety values: all that are written out in the files of rules, limits, waits and lines,
// but for those that only count, convert or show.

import type { SourceFile } from './code.ts';
import { literalsOf } from './literals.ts';

/** Files in which a number is a limit, a wait, a hold, a line or a threshold. */
export const VALUE_FILES: readonly RegExp[] = [
  /^rules\/[\w-]+\.ts$/,
  /^can\/(limits|eating)\.ts$/,
  /^souring\/(lines|findings|trend|look|nose|outlook|brake)\.ts$/,
  /^bottle\/(keep|balance)\.ts$/,
  /^heap\/(sanitation|turning)\.ts$/,
  /^scraps\/bioassay\.ts$/,
  /^ground\/excess\.ts$/,
];

/** Tables in which every row is a limit of this kind, apart from the rows of other matters in them. */
export const VALUE_TABLES: readonly (readonly [table: string, rows: RegExp])[] = [
  ['salt-tolerance', /./],
  ['spray', /./],
  ['heap', /^(acceptable|cfr-|nosb)/],
];

/** Numbers of those files that are no values, each with the reason. */
export const NO_VALUES: Readonly<Record<string, string>> = {
  'bottle/balance.ts WATER_KG_PER_L': 'the mass of a litre of water',
  'bottle/balance.ts balance.unexplainedPercent': 'percent',
  'heap/turning.ts turningOf.lastDay': 'the last one',
  'rules/fit.ts fitRules.more-sugar-than-the-acid-uses.when.overG': 'grams in a kilogram',
  'rules/scraps.ts WEEK_DAYS': 'days of a week',
  'rules/vessel.ts EXAMPLE.vesselL': 'a pail for the sentence, said to be an example',
  'rules/vessel.ts EXAMPLE.liquidL': 'a pail for the sentence, said to be an example',
  'rules/vessel.ts EXAMPLE.temperatureC': 'a pail for the sentence, said to be an example',
  'rules/vessel.ts EXAMPLE.lidDiameterM': 'a pail for the sentence, said to be an example',
  'rules/vessel.ts EXAMPLE.sugarG': 'a pail for the sentence, said to be an example',
  'souring/findings.ts EPSILON_PH': 'what sums of floating figures stray by',
  'souring/lines.ts doneOn.hour': 'hours of a day',
  'souring/lines.ts doneOn.untilDay#2': 'hours of a day',
  'souring/lines.ts lastMeanC.some#2': 'hours of a day',
  'souring/look.ts VISIT_DAYS#1': 'an hour; its share of a day is the value',
  'souring/trend.ts lastTwo': 'the last two visits',
  'souring/trend.ts rounded#1': 'thousandths',
  'souring/trend.ts rounded#2': 'thousandths',
};

/** Numbers of a file that are neither held nor said to be no value. Nought, and one outside a constant, only count. */
export function unheldIn(source: SourceFile, held: ReadonlySet<string>): readonly string[] {
  const file = source.file.replace('src/engine/', '');
  return literalsOf(source)
    .filter(({ name, value }) => value !== 0 && (value !== 1 || /^[A-Z][A-Z_0-9]+\b/.test(name)))
    .map(({ name }) => `${file} ${name}`)
    .filter((at) => !held.has(at) && !(at in NO_VALUES));
}
