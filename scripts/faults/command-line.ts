// Hostile inputs for every word of the command line, the whole way from text to what is written: what throws, which
// figure is none, which refusal lacks its field, value or allowed range, and whether the work stays bounded in the input.
// A forecast is asked with few draws and no new ones for its looks; some are asked whole.

import { words } from '#tasks/index.ts';
import { type Attacked, attack, type Fault } from '../../test/faults/hostile/attack.ts';
import type { Found, Options } from '../../test/faults/piece.ts';

/** Inputs for each word. */
const INPUTS = 100_000;
/** Forecasts that are asked as the command line asks them, with all that looks teach. */
const WHOLE_FORECASTS = 200;
const SLOWEST = 10;
/** What is counted: its short name, and what it is. */
const KINDS: Readonly<Record<Fault['kind'], readonly [string, string]>> = {
  throws: ['throws', 'nothing answered, a fault of ours'],
  figure: ['figures', 'no finite number, or a band out of order'],
  message: ['refusals', 'without field, value or allowed range'],
  written: ['written', 'a hidden sign, a hole in a sentence, or broken JSON'],
  work: ['work', 'more looks, draws or steps than the bound'],
};

export async function run({ scale }: Options): Promise<Found> {
  const count = Math.ceil(INPUTS * scale);
  const all: Attacked[] = [];
  for (const word of words) all.push(await attack({ word, from: 0, to: count, quick: true }));
  const whole = Math.ceil(WHOLE_FORECASTS * scale);
  all.push(await attack({ word: 'sour', from: count, to: count + whole, quick: false }));
  return foundIn(all);
}

/** What the attacks on all words come to. */
export function foundIn(all: readonly Attacked[]): Found {
  const faults = all.flatMap((one) => one.faults.map((fault) => ({ ...fault, word: one.word })));
  const slowest = all.flatMap((one) => one.slowest).sort((a, b) => b.cpuMs - a.cpuMs);
  return {
    title: 'Hostile inputs on the command line',
    lines: [
      `Counted for each word: ${Object.values(KINDS)
        .map(([name, what]) => `${name} (${what})`)
        .join('; ')}.`,
      ...all.map(lineOf),
      ...boundLines(all),
    ],
    failed: faults.length,
    aside: [
      'The slowest ten, by processor time:',
      ...slowest.slice(0, SLOWEST).map(slowLine),
      ...faults.slice(0, 50).map(({ word, kind, index, what }) => `${word} ${index}: ${kind}: ${what}`),
    ],
  };
}

function lineOf({ word, quick, inputs, answered, refused, faults }: Attacked): string {
  const asked = word === 'sour' ? (quick ? 'sour, with few draws' : 'sour, whole') : word;
  const counts = Object.entries(KINDS).map(
    ([kind, [name]]) => `${name} ${faults.filter((one) => one.kind === kind).length}`,
  );
  return `${asked}: ${figure(inputs)} inputs, ${figure(answered)} answered, ${figure(refused)} refused; ${counts.join(', ')}.`;
}

function boundLines(all: readonly Attacked[]): readonly string[] {
  const most = (of: (one: Attacked) => number) => Math.max(...all.map(of));
  return [
    `Work in the input: at most ${most((one) => one.mostReads).toFixed(1)} looks into the input for each value in it and each field of the word.`,
    `Work in a forecast: at most ${figure(most((one) => one.mostDraws))} draws, and at most ${most((one) => one.mostStepsPerDay).toFixed(0)} steps for each day of a draw.`,
  ];
}

const figure = (count: number) => String(count).replace(/\B(?=(\d{3})+$)/g, ' ');

function slowLine({ word, index, cpuMs, bytes }: Attacked['slowest'][number]): string {
  return `  ${word} ${index}: ${cpuMs.toFixed(0)} ms for ${figure(bytes)} characters`;
}
