// What stands answered of a look while it is taken: kept as a draft, and made into the body of its entry. A strip that
// was left out is left out of the entry too.

import type { Smell, Surface } from '#engine/souring/look.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { Strip } from '#words/en/look.ts';

export interface SourAnswer {
  readonly ph: number;
  readonly by: 'meter' | 'strip';
  readonly typed: string;
}

export interface Answers {
  readonly sour: SourAnswer | null;
  readonly nose: Smell | null;
  readonly top: Surface | null;
  readonly warmth: number | null;
}

export const UNANSWERED: Answers = { sour: null, nose: null, top: null, warmth: null };
export const STRIPS: readonly Strip[] = ['sour', 'nose', 'top', 'warmth'];

/** The pads of a paper strip, half a pH apart. */
export const PADS: readonly number[] = [3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7];
/** Whole figures of a meter; its tenths follow with a second touch. */
export const WHOLES: readonly number[] = [3, 4, 5, 6, 7];
export const TENTHS: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
/** Degrees to choose from where nothing near was told yet, five apart. */
export const ABOUT_C: readonly number[] = [5, 10, 15, 20, 25, 30, 35, 40];
/** Degrees on either side of the last one. */
export const NEAR_C: readonly number[] = [-2, -1, 0, 1, 2];

/** The strips without an answer. */
export function skipped(answers: Answers): readonly Strip[] {
  return STRIPS.filter((strip) => answers[strip] === null);
}

/** Who looked, beside the answers. */
export interface Eyes {
  readonly batch: string;
  /** Tag of whoever reads the acidity; empty where the signer does. */
  readonly readBy: string;
  /** Said of a nose that is not the signer's. */
  readonly noseNote: string | undefined;
}

/** The body of the look's entry. */
export function lookBody(answers: Answers, { batch, readBy, noseNote }: Eyes): Body<'peg.looked'> {
  const { sour, nose, top, warmth } = answers;
  const another = nose !== null && nose !== 'cannot-smell' ? noseNote : undefined;
  return {
    batch,
    ...(sour && { acidity: sour }),
    ...(sour && readBy !== '' && { readBy }),
    ...(nose && { smell: nose }),
    ...(top && { surface: top }),
    ...(warmth !== null && { temperatureC: warmth }),
    ...(another !== undefined && { note: another }),
  };
}
