// A real Chromium killed in mid-save: entries that had been acknowledged and are missing at the next opening. Some kills tear
// a line of the log besides, over which the browser drops its database; some lose the first database whole.

import type { Found, Options } from '../../test/faults/piece.ts';
import { killedBrowser } from '../../test/screens/killed-browser.ts';
import { fillAndKill, loseDatabase, tearLog, whileMs } from '../../test/screens/kills.ts';

const KILLS = 100;
/** Of so many kills one tears the log, and one loses the database. */
const EACH = 10;

export async function run({ scale }: Options): Promise<Found> {
  const kills = Math.max(2, Math.round(KILLS * scale));
  const browser = await killedBrowser();
  let [missing, twice, half, torn, lost] = [0, 0, 0, 0, 0];
  try {
    for (let kill = 0; kill <= kills; kill++) {
      const opened = await fillAndKill(browser, whileMs(kill));
      missing += opened.missing.length;
      twice += opened.twice;
      half += opened.half.length;
      if (kill % EACH === 3) {
        tearLog(browser);
        torn++;
      }
      if (kill % EACH === 7) {
        loseDatabase(browser);
        lost++;
      }
    }
    return {
      title: 'Kills in mid-save',
      lines: [
        `Chromium killed ${kills} times in mid-save; after ${torn} kills the log of the first place was torn, after ${lost} its database removed.`,
        `Acknowledged entries missing at the next opening: ${missing}. Kept twice: ${twice}. Appends kept by half: ${half}.`,
      ],
      failed: missing + twice + half,
      aside: [`${browser.acknowledged.size} entries were acknowledged.`],
    };
  } finally {
    browser.end();
  }
}
