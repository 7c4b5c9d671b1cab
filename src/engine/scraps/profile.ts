// Who eats from the plot, who is about on it and what its site allows: the answers that make rules stricter. Every room
// after this one may ask; what each answer changes stands with the rule that asks. An answer nobody gave is no answer,
// not a no: a rule that needs one says so itself.

/** The answers of a plot. True only where it was told. */
export interface Profile {
  /** Food is sold or handed on to others than the household. */
  readonly sells: boolean;
  /** A school or a class works or eats here. */
  readonly school: boolean;
  /** Someone who eats from the plot has weak immunity. */
  readonly immuneWeak: boolean;
  readonly pregnant: boolean;
  readonly children: boolean;
  /** A dog or a cat is about. */
  readonly pets: boolean;
  readonly hens: boolean;
  /** What the site says of kitchen scraps, cooked food and scraps from outside; undefined where nobody told. */
  readonly kitchenScraps: boolean | undefined;
  readonly cookedFood: boolean | undefined;
  readonly outsideScraps: boolean | undefined;
  /** The site's rule in its own words, and its date as told. */
  readonly siteRule: { readonly text: string; readonly on?: string | undefined } | undefined;
}

/** A plot that told nothing of itself. */
export const NOTHING_TOLD: Profile = {
  sells: false,
  school: false,
  immuneWeak: false,
  pregnant: false,
  children: false,
  pets: false,
  hens: false,
  kitchenScraps: undefined,
  cookedFood: undefined,
  outsideScraps: undefined,
  siteRule: undefined,
};
