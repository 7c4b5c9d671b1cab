// The words of the wet-hand places in a keyholder's language. English is everywhere; a second language has the same
// keys, checked by the compiler. A place is added with one line in each language.

import { lookDe } from './de/look.ts';
import { type LookWords, look } from './en/look.ts';

/** Languages that have words for the wet-hand places, with their own names. */
export const languages = { en: 'English', de: 'Deutsch' } as const;
export type Language = keyof typeof languages;

/** What is said at the places where hands are wet. */
export interface WetHandWords {
  readonly look: LookWords;
}

const WORDS: Readonly<Record<Language, WetHandWords>> = {
  en: { look },
  de: { look: lookDe },
};

/** The language a keyholder is kept with; English where it was not told or is not known here. */
export function languageOf(told: string | undefined): Language {
  const tag = told?.trim().toLowerCase().slice(0, 2);
  return tag !== undefined && tag in languages ? (tag as Language) : 'en';
}

/** Words for the wet-hand places in a language. */
export function wordsFor(language: string | undefined): WetHandWords {
  return WORDS[languageOf(language)];
}
