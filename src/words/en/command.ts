// The sentences of the command line itself: usage, what was wrong with how it was called, how an answer's
// cautions and workings are written down. What an answer says stands with its own word.

import type { Level } from '#engine/rules/rule.ts';
import type { Working } from '#engine/working/working.ts';
import { figure } from '../figures.ts';
import { written } from './working.ts';

const RUN = 'npm run -s tilthwright --';

/** What each word of the command line answers. */
export const about = {
  fit: 'does it fit the vessel, will it turn sour, how much sugar',
  can: 'how much concentrate and water to pour on a bed',
  water: 'what to do about chlorine and hardness before filling',
  strain: 'what came out: the balance, and what the liquid and the solids carry',
  sour: 'when it is likely to be sour and held, and what the looks say',
  heap: 'a mix that composts: masses, C:N, water, and what a log of heat shows',
  beds: 'what each bed needed, what it was given, what is missing; the share of the liquid',
  help: 'this page; help WORD says what a word takes; help materials and help sugars list what it knows',
} as const;

/** The page of `help`. */
export function sayHelp(): readonly string[] {
  return [
    'Tilthwright: a soured liquid feed and compost from garden clippings and kitchen scraps, in figures.',
    '',
    `${RUN} WORD [FILE|-] [--json] [--why]`,
    '',
    ...Object.entries(about).map(([word, text]) => `  ${word.padEnd(8)}${text}`),
    '',
    'FILE is a JSON file; without it, or with -, the JSON is read from standard input.',
    '--json gives the answer as one JSON object; null in it means not known, or that no amount does.',
    '--why adds how each figure came about.',
    'What is wrong with an input is told on standard error, one line for each field, with exit code 2.',
  ];
}

/** The page of `help WORD`: one line for each field. */
export function sayFields(word: keyof typeof about, fields: readonly string[]): readonly string[] {
  return [
    `${word}: ${about[word]}.`,
    `${RUN} ${word} [FILE|-] [--json] [--why]`,
    '',
    'It takes one JSON object with these fields (a question mark: may be left out):',
    ...fields.map((line) => `  ${line}`),
    '',
    `The whole schema: ${RUN} help ${word} --json`,
  ];
}

/** Where a material may go, in the words of `help materials`. */
export const placeWords: Readonly<Record<'liquid' | 'compost-only' | 'set-aside' | 'out', string>> = {
  liquid: 'liquid feed or compost',
  'compost-only': 'compost alone',
  'set-aside': 'set aside until its bean test clears it',
  out: 'out',
};

const levelWords: Readonly<Record<Level, string>> = { stop: 'Stop', hold: 'Hold', caution: 'Take care', note: 'Note' };

/** One caution as one line, its source behind it. */
export function sayCaution(caution: { readonly level: Level; readonly text: string; readonly source: string }): string {
  return `${levelWords[caution.level]}: ${caution.text} [${caution.source}]`;
}

/** The working of one figure: its formula, what went in, what is doubtful, where it comes from. */
export function sayWorking(working: Working, cite: (origin: string) => string): readonly string[] {
  const inputs = working.inputs.map((one) => {
    const origin = one.source === undefined ? '' : ` [${cite(one.source)}]`;
    return `  ${one.label}: ${written(one.value, one.unit)}${origin}`;
  });
  return [
    `${working.label} (${working.figure}): ${written(working.value, working.unit)}`,
    `  ${working.formula}`,
    ...inputs,
    ...working.doubts.map((doubt) => `  Doubt: ${doubt}`),
    ...(working.sources.length > 0 ? [`  Source: ${working.sources.map(cite).join('; ')}`] : []),
  ];
}

/** What was wrong with a text that should have been JSON. */
export function sayFault(fault: {
  readonly line: number;
  readonly column: number;
  readonly kind: 'cut' | 'unexpected' | 'twice' | 'deep';
  readonly found: string;
  readonly wanted: string;
}): string {
  const place = `at line ${figure(fault.line, 0)}, column ${figure(fault.column, 0)}`;
  switch (fault.kind) {
    case 'cut':
      return `ends too early ${place}, where ${fault.wanted} is missing`;
    case 'unexpected':
      return `is not JSON ${place}, where ${fault.wanted} should stand`;
    case 'twice':
      return `has the field ${JSON.stringify(fault.found)} twice in one object, again ${place}`;
    case 'deep':
      return `is nested too deep ${place}`;
  }
}

/** Our own fault, not the grower's. */
export function sayOwnFault(message: string): string {
  return `A fault of Tilthwright, not of your input: ${message}`;
}
