// The plot's answers as the rules ask for them: who eats, who is about, what the site allows.

import type { Profile } from '#engine/scraps/profile.ts';
import type { Plot } from '#journal/fold.ts';

/** The profile as the record has it. */
export function profileOf({ facts }: Plot): Profile {
  const about = (who: string) => facts.present?.some((one) => one === who) === true;
  return {
    sells: facts.sells === true,
    school: facts.school === true,
    immuneWeak: about('immune-weak'),
    pregnant: about('pregnant'),
    children: about('children'),
    pets: about('dog') || about('cat'),
    hens: about('hens'),
    kitchenScraps: facts.kitchenScraps,
    cookedFood: facts.cookedFood,
    outsideScraps: facts.outsideScraps,
    siteRule: facts.siteRule,
  };
}
