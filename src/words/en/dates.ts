// What is said at a field whose date cannot be: still to come, or outside the time a batch was in its vessel.

import { sayDate, sayMoment } from './app.ts';

export const dateTroubles = {
  ahead: (today: string) => `This date is still to come. Please type a date up to ${sayDate(today)}.`,
  aheadToday: (now: string) => `This time is still to come. Please type a time up to ${now.slice(11)}.`,
  /** The name of a batch begins the sentence: "Batch 14". */
  beforeFilling: (batch: string, on: string, today: string) =>
    `${batch} was filled on ${sayMoment(on, today)}. Please type that day or a later one.`,
  afterEmptying: (batch: string, on: string, today: string) =>
    `${batch} was emptied on ${sayMoment(on, today)}. Please type that day or an earlier one.`,
  filledAfterCheck: (on: string, today: string) =>
    `You entered a check of this batch on ${sayMoment(on, today)}. Please type that day or an earlier one.`,
  emptiedBeforeCheck: (on: string, today: string) =>
    `You entered a check of this batch on ${sayMoment(on, today)}. Please type that day or a later one.`,
} as const;
