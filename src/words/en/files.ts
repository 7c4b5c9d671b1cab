// What is said while a file of the record is made, read, checked and taken in, and what no file holds. What a file is for, and
// what the browser keeps, is said in record.ts.

const NBSP = '\u00a0';

/** Work on a file that may last. */
export const fileWork = {
  making: {
    doing: 'Making the file',
    stop: 'Stop making the file',
    stopped: 'You stopped. No file was made.',
  },
  taking: {
    doing: 'Reading the file',
    stop: 'Stop reading the file',
    stopped: 'You stopped. Nothing here changed.',
  },
  checking: {
    doing: 'Reading the file',
    stop: 'Stop reading the file',
    stopped: 'You stopped. The file was not checked.',
  },
  unread: 'The browser could not read this file. Please choose the file again.',
  unmade: 'The browser could not make the file. Please try again.',
  handed: (name: string) =>
    `${name} went to the browser. We cannot see whether it was saved. Please choose the saved file below, so that we can check it.`,
} as const;

/** A saved file held against the record. */
export const fileCheck = {
  heading: 'Check a saved file',
  note: 'We read the file and count what is in it. Nothing here changes.',
  choose: 'Choose the file you saved',
  whole: (entries: number, photos: number) =>
    `This file holds everything: ${counted(entries, 'entry', 'entries')} and ${counted(photos, 'photo', 'photos')}.`,
  lacks: (entries: number, photos: number) => {
    if (photos === 0) return `This file lacks ${counted(entries, 'entry', 'entries')} of this record.`;
    if (entries === 0) return `This file lacks ${counted(photos, 'photo', 'photos')} of this record.`;
    return `This file lacks ${counted(entries, 'entry', 'entries')} and ${counted(photos, 'photo', 'photos')} of this record.`;
  },
  missing: (date: string, sentence: string) => `${date}: ${sentence}`,
  more: (count: number) => `and ${counted(count, 'more entry', 'more entries')}`,
  others: (count: number) =>
    count === 1
      ? `The file also holds 1${NBSP}entry that is not here. Take in the file to add it.`
      : `The file also holds ${count}${NBSP}entries that are not here. Take in the file to add them.`,
  refused: (lines: number) => `This file is not a full copy: ${counted(lines, 'line', 'lines')} cannot be read.`,
} as const;

/** In how many places the browser keeps the record. */
export const keptIn = {
  two: (days: number) =>
    `This browser keeps the record in two places. Please make a file every ${days}${NBSP}days, since both are on this device.`,
  one: (days: number) =>
    `This browser keeps the record in one place only. Please make a file every ${days}${NBSP}days, and before each update.`,
  differing: (count: number) =>
    `The two places held ${counted(count, 'entry', 'entries')} differently. We use the first. The second was:`,
  beforeUpdate: (count: number) =>
    `This browser keeps the record in one place only. ${counted(count, 'entry is', 'entries are')} in no checked file. Please make a file before the update.`,
  toFiles: 'Go to the files',
} as const;

/** What no file holds that was read back. */
export const unsaved = {
  since: (count: number, days: number) =>
    `${counted(count, 'entry is', 'entries are')} in no checked file; the oldest is ${counted(days, 'day', 'days')} old. ${MAKE_ONE}`,
  unknown: (count: number) =>
    `${counted(count, 'entry is', 'entries are')} in no checked file. The clock was wrong at some time, so we do not know for how long. ${MAKE_ONE}`,
} as const;
const MAKE_ONE = 'Browsers sometimes clear what a page keeps. Please make a file and check it.';

/** What forgetting everything asks for first. */
export const forgetting = {
  ask: 'First choose a file that holds everything. Without one, nothing is forgotten.',
  open: 'The file you chose holds everything. You can now forget it all here.',
  grown: (count: number) =>
    `${counted(count, 'entry or photo was', 'entries or photos were')} added since you chose the file. Please make a new file and choose that one.`,
} as const;

function counted(count: number, one: string, several: string): string {
  if (count === 0) return `no ${several}`;
  return `${count}${NBSP}${count === 1 ? one : several}`;
}

/** What can be known when the files of two phones meet. */
export const filesMet = {
  ahead: (minutes: number) =>
    `Entries from the other phone lie at least ${sayAhead(minutes)} ahead of this phone’s clock. One of the clocks is wrong.`,
  lacks: (count: number) =>
    `This phone holds ${count}\u00a0${count === 1 ? 'entry' : 'entries'} that the file does not. The other phone probably lacks ${count === 1 ? 'it' : 'them'}.`,
  makeFor: 'Make a file for the other phone',
} as const;

/** "5 min", "3 h 5 min", "2 days 3 h": how far something lies ahead. */
export function sayAhead(minutes: number): string {
  const [days, hours, rest] = [Math.floor(minutes / 1440), Math.floor((minutes % 1440) / 60), minutes % 60];
  const said = (count: number, unit: string) => (count > 0 ? [`${count}\u00a0${unit}`] : []);
  if (days > 0) return [...said(days, days === 1 ? 'day' : 'days'), ...said(hours, 'h')].join(' ');
  return [...said(hours, 'h'), ...said(rest, 'min')].join(' ') || `0\u00a0min`;
}
