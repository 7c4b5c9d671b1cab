// Names under which the browser keeps small facts of this device.

/** Session storage: the day at which the demo garden stands; absent while the own plot is shown. */
export const DEMO_DAY = 'tilthwright.demo-day';

/** Local storage: tag of the keyholder who signs on this device. */
export const KEYHOLDER = 'tilthwright.keyholder';

/** Local storage: present once it was said that tabs do not hear of each other, and that note was hidden. */
export const TABS_UNHEARD = 'tilthwright.tabs-unheard';

/** Local storage: 'day' or 'night' once the paper was chosen. */
export const PAPER = 'tilthwright.paper';

/** Local storage: presses that were not acknowledged yet. */
export const TRIES = 'tilthwright.tries';
