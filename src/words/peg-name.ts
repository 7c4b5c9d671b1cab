// The number on a peg as it is said: alone, or with what tells it apart from another batch that carries the same number.
// Which of the two, tasks/plot/batch-name.ts knows.

export type PegName = number | string;
