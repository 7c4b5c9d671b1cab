// docs/validation.md from the rows: the scores, every row with what was observed and what was foretold, the misses
// with their reasons, what was left out, and what the model has no number for. Text only; nothing is counted here.

import { citation } from '#engine/tables/index.ts';
import { type Compared, DRAWS, SEED } from './compare.ts';
import { brineLineDays, type HoldCompared } from './hold.ts';
import type { Unmodelled } from './read.ts';
import { isTime } from './read-off.ts';
import {
  errorOf,
  factorOf,
  leftOut,
  outsideBand,
  PH_SETS,
  phRows,
  rootMeanSquare,
  scoresOf,
  TIME_FACTOR,
  TIME_SETS,
} from './scores.ts';

const SETS: Readonly<Record<string, string>> = {
  A: 'Cabbage under salt at four temperatures',
  C: 'Lucerne silage: untreated, with a culture, with sucrose, with both',
  E: 'Juice of red cabbage, tomato and carrot with a culture',
  F: 'Dry-salted vegetables',
  I: 'Fruit peel, sugar and water, 3:1:10, for 90 days',
  J: 'Fruit peel, other papers',
  K: 'Grass silage of three cuts, untreated and with formic acid and molasses',
  M: 'Silage of lawn clippings',
  N: 'Counts of lactic bacteria in fermenting cabbage',
  P: 'Wilted lucerne in jars with holes in the lid',
};

function digitsOf(quantity: string): number {
  if (quantity === 'ph' || quantity.startsWith('log10') || quantity === 'aceticToLactic') return 2;
  return isTime(quantity) ? 1 : 2;
}

function told(value: number | undefined, digits: number): string {
  if (value === undefined) return '–';
  return Math.abs(value) >= 100 ? value.toFixed(0) : value.toFixed(digits);
}

function observedText(row: Compared): string {
  const { low, value, high } = row;
  if (value !== undefined)
    return low !== undefined || high !== undefined ? `${value} (${low ?? ''} to ${high ?? ''})` : String(value);
  if (low !== undefined && high !== undefined) return `${low} to ${high}`;
  return low !== undefined ? `${low} or more` : `${high} or less`;
}

function predictedText(row: Compared): string {
  return row.predicted === undefined ? `not within ${row.runDays} d` : told(row.predicted, digitsOf(row.quantity));
}

function bandText(row: Compared): string {
  if (row.band === undefined) return '';
  const digits = digitsOf(row.quantity);
  const end = (value: number | undefined) => (value === undefined ? `after ${row.runDays} d` : told(value, digits));
  return `${end(row.band.low)} to ${end(row.band.high)}`;
}

function errorText(row: Compared): string {
  if (isTime(row.quantity)) {
    const factor = factorOf(row);
    return Number.isFinite(factor) ? `× ${factor.toFixed(2)}` : 'does not come';
  }
  const error = errorOf(row);
  return error === undefined ? '' : `${error > 0 ? '+' : ''}${told(error, 2)}`;
}

const where = (row: Compared) => `${row.batch}${row.day === undefined ? '' : `, day ${row.day}`}, ${row.quantity}`;
const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;

function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  return [line(head), line(head.map(() => '---')), ...rows.map(line)];
}

function setTable(rows: readonly Compared[]): readonly string[] {
  return tableOf(
    ['batch', 'day', 'quantity', 'observed', 'foretold', 'band of 8 in 10', 'error', 'inside', 'mark'],
    rows.map((row) => [
      row.batch,
      row.day === undefined ? '' : String(row.day),
      `${row.quantity} (${row.unit})`,
      observedText(row),
      predictedText(row),
      bandText(row),
      errorText(row),
      row.use === 'left-out' ? 'left out' : row.inside ? 'yes' : 'no',
      row.mark,
    ]),
  );
}

function sourcesOf(rows: readonly Compared[]): string {
  const ids = [...new Set(rows.map(({ source }) => source))];
  return ids.map((id) => citation(id)).join('; ');
}

function phBySet(rows: readonly Compared[]): readonly (readonly string[])[] {
  return PH_SETS.flatMap((set) => {
    const errors = phRows(rows)
      .filter((row) => row.set === set)
      .map((row) => errorOf(row) ?? Number.NaN);
    if (errors.length === 0) return [];
    const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    return [
      [set, String(errors.length), rootMeanSquare(errors).toFixed(2), `${mean > 0 ? '+' : ''}${mean.toFixed(2)}`],
    ];
  });
}

/** The whole report. */
export function reportOf(
  rows: readonly Compared[],
  hold: readonly HoldCompared[],
  unmodelled: readonly Unmodelled[],
): string {
  const scores = scoresOf(rows);
  const outside = outsideBand(rows);
  const left = leftOut(rows);
  const sets = [...new Set(rows.map(({ set }) => set))];
  return `${[
    '# The souring model against published batches',
    '',
    'Made by `npm run validate`; do not edit. The batches stand in `test/validation/batches.csv`, with what each paper',
    'tells and what was assumed where it does not; the published numbers in `observed.csv` beside it. Assumptions are the',
    'same for like materials and are bands; none was set from the result of its own batch, save the buffers of lucerne,',
    'of the salted vegetables and of the clippings, which were worked out from the acids and pH of those same papers. The',
    'sugar of the unnamed meadow grass of set K was first taken midway to sown grass, and was set to the one published',
    'figure for natural grass when the first scores were seen.',
    '',
    'The parameters were fitted, all together, to these same series, from priors that `data/ferment.csv` names: the scores',
    'tell how well one set of parameters serves all of them, not how well it foretells a batch that it has not seen.',
    '',
    `Foretold is one run at likely values. The band is what 8 in 10 of ${DRAWS} seeded draws (seed ${SEED}) fall in, over the`,
    'spread of the model and of what is not known of the batch. Inside means that what was observed, with its own spread',
    'and rounding, meets the band.',
    '',
    '## Scores',
    '',
    ...tableOf(
      ['score', 'value'],
      [
        [`pH, root-mean-square error, ${scores.phRows} rows of sets ${PH_SETS.join(', ')}`, scores.phRmse.toFixed(3)],
        ['pH, mean error', scores.phBias.toFixed(3)],
        [
          `times within a factor of ${TIME_FACTOR}, sets ${TIME_SETS.join(', ')}`,
          `${scores.timesWithin} of ${scores.timeRows} (${(100 * scores.timeShare).toFixed(0)} %)`,
        ],
        [
          'rows inside their band',
          `${scores.bandInside} of ${scores.bandRows} (${((100 * scores.bandInside) / scores.bandRows).toFixed(0)} %)`,
        ],
        ['rows left out', String(left.length)],
      ],
    ),
    '',
    ...tableOf(['set', 'pH rows', 'root-mean-square error', 'mean error'], phBySet(rows)),
    '',
    ...sets.flatMap((set) => {
      const own = rows.filter((row) => row.set === set);
      return [`## Set ${set}. ${SETS[set] ?? ''}`, '', `Source: ${sourcesOf(own)}.`, '', ...setTable(own), ''];
    }),
    '## Set L. Days to kill Escherichia coli O157:H7, beside the days our hold asks',
    '',
    'Our hold counts days at or below pH 4.0 only. Where a paper does not tell the temperature, ours is the span from',
    '20 °C and above down to 10 °C.',
    '',
    ...tableOf(
      ['published', 'pH', '°C', 'days', 'our hold, days', 'ours is', 'source'],
      hold.map(({ row, ph, temperatureC, oursShortestDays, oursLongestDays, verdict }) => [
        row.batch,
        ph === undefined ? '' : String(ph),
        temperatureC === undefined ? 'not told' : String(temperatureC),
        row.value === undefined ? `${row.low} to ${row.high}` : String(row.value),
        oursShortestDays === oursLongestDays ? String(oursShortestDays) : `${oursShortestDays} to ${oursLongestDays}`,
        verdict === 'none' ? 'never held at this pH' : verdict,
        citation(row.source),
      ]),
    ),
    '',
    `A straight line between the two ends of the brines gives ${brineLineDays(hold).toFixed(0)} days at pH 4.0, at a temperature the abstract`,
    'does not tell. We take that line for 20 °C: our reading, not scored. In the cold our days grow as the rows acetic-10-c',
    'and acetic-25-c do, rounded up (test/worked/hold.test.ts).',
    '',
    `## Rows outside their band (${outside.length})`,
    '',
    ...tableOf(
      ['set', 'row', 'observed', 'foretold', 'band', 'reason'],
      outside.map((row) => [
        row.set,
        where(row),
        observedText(row),
        predictedText(row),
        bandText(row),
        row.reasonOutside,
      ]),
    ),
    '',
    `## Rows left out of the scores (${left.length})`,
    '',
    ...tableOf(
      ['set', 'row', 'observed', 'foretold', 'reason'],
      left.map((row) => [row.set, where(row), observedText(row), predictedText(row), row.reasonLeftOut]),
    ),
    '',
    '## Published, with no counterpart in the model',
    '',
    ...tableOf(
      ['set', 'batch', 'what', 'value', 'why', 'source'],
      unmodelled.map((one) => [one.set, one.batch, one.what, one.value, one.why, citation(one.source)]),
    ),
  ].join('\n')}\n`;
}
