// What is said while a file of the record is made, read, checked and taken in. What a file is for, and what the browser
// keeps, is said in record.ts.

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
} as const;
