// The sheet of scraps in stock: what is on the shelf, where it may go, and the slip each lot is weighed in with.

import type { Destination } from '#engine/scraps/part.ts';
import { withUnit } from '../figures.ts';

export const stock = {
  title: 'Scraps',
  empty: 'Every lot of scraps will stand here with its weight and where it may go. Weigh the first one in.',
  weigh: 'Weigh a lot',
  name: 'Kind of scraps',
  amount: 'It weighs',
  hint: 'such as 2.4 kg or 5 lb 4 oz',
  whose: 'Whose',
  treated: 'Weedkiller there in the last two years?',
  condition: 'As it is',
  put: 'Write it down',
  list: 'In stock, oldest first',
  toPail: 'Weigh some into a pail',
  nothingChosen: 'Choose a kind and type its weight; allowed: more than 0, up to 1000 kg.',
} as const;

export const whose = { own: 'own', neighbour: 'neighbour', shared: 'shared', unknown: 'not known' } as const;
export const treated = { no: 'no', unknown: 'not known', yes: 'yes' } as const;
export const condition = { fresh: 'fresh', wilted: 'wilted', frozen: 'frozen', slimy: 'slimy' } as const;

/** Where a lot may go, as a heading over its group. */
export const places: Readonly<Record<Destination, string>> = {
  liquid: 'May go in a pail',
  'set-aside': 'Set aside: ask, or do the bean test',
  'compost-only': 'Heap only',
  out: 'Out: neither pail nor heap',
};

/** "2.4 kg, 3 days old, spoils in 1 to 2 days". */
export function lotLine(lot: {
  readonly leftKg: number;
  readonly ageDays: number;
  readonly spoilsInDays: { readonly low: number; readonly high: number } | undefined;
}): string {
  const age = lot.ageDays <= 0 ? 'today' : lot.ageDays === 1 ? '1 day old' : `${lot.ageDays} days old`;
  const { spoilsInDays: spoils } = lot;
  const left =
    spoils === undefined
      ? ''
      : spoils.high <= 0
        ? ', past its days: look and smell before it goes in'
        : `, spoils in ${Math.max(0, spoils.low)} to ${withUnit(spoils.high, 'days', 0)}`;
  return `${withUnit(lot.leftKg, 'kg')}, ${age}${left}`;
}
