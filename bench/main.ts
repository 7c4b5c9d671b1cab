// npm run bench: the speed of the engine and of the page, with the machine it was measured on. What cannot be
// measured is said, and ends the run with exit code 1.

import '../scripts/node-version.mjs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { firstScreen, LIMIT_BYTES } from '../scripts/size.mjs';
import { coverTimes } from './cover.ts';
import { fermentTimes } from './ferment.ts';
import { journalTimes } from './journal.ts';
import { openingTimes } from './journal-page.ts';
import { ledgerTimes } from './ledger.ts';
import { stepTimes } from './page.ts';
import { rateOf } from './rate.ts';
import { recordPageTimes } from './record-page.ts';
import { sourTimes } from './sour-page.ts';
import { SLOWED, touchTimes } from './touch.ts';
import { pieces } from './work.ts';

const root = path.join(path.dirname(fileURLToPath(import.meta.url)), '..');
const whole = (value: number) => Math.round(value).toLocaleString('en-GB');

const [cpu] = os.cpus();
console.log(
  `Machine: ${cpu?.model.trim() ?? 'unknown CPU'}, ${os.cpus().length} cores; Node ${process.versions.node}; ${os.type()} ${os.release()}`,
);

console.log('\nEngine and tasks, one core, middle of seven rounds (slowest to fastest):');
for (const { name, aimPerSecond, work } of pieces()) {
  const { perSecond, slowest, fastest } = rateOf(work);
  const aim =
    aimPerSecond === undefined
      ? ''
      : `, ${(perSecond / aimPerSecond).toFixed(1)} times the aim of ${whole(aimPerSecond)}`;
  console.log(
    `  ${name.padEnd(26)} ${whole(perSecond).padStart(9)} a second (${whole(slowest)} to ${whole(fastest)})${aim}`,
  );
}

await part('The ferment model, 21 days, one core', () => {
  const { runMs, firstBandMs, drawsMs, looksMs, scipy } = fermentTimes();
  return [
    `  one run ${runMs.toFixed(2)} ms, ${(runMs / 2).toFixed(2)} of the aim of 2 ms`,
    `  first band after 200 draws ${whole(firstBandMs)} ms; 1,000 draws ${whole(drawsMs)} ms, ${(drawsMs / 2000).toFixed(2)} of the aim of 2 s`,
    `  five looks re-weighed over 1,000 draws already run ${whole(looksMs)} ms, ${(looksMs / 150).toFixed(2)} of the aim of 150 ms`,
    scipy
      ? `  the same equations by SciPy (LSODA, to 1e-6) ${whole(scipy.runMs)} ms a run, ${whole(scipy.runMs / runMs)} times ours; at most pH ${scipy.apartPh.toFixed(4)} apart over ${scipy.batches} batches`
      : '  SciPy is not installed (Debian package python3-scipy): not compared',
  ];
});

await part('The cover, 120 beds and 15 sources, stage by stage, middle of five', async () => {
  const { loadMs, columns, rows, stages, native } = await coverTimes();
  const wholeMs = stages.reduce((sum, { ms }) => sum + ms, 0);
  return [
    `  solver fetched in ${whole(loadMs)} ms; ${whole(columns)} columns, ${whole(rows)} rows`,
    ...stages.map(({ stage, ms, value }, at) => {
      const other = native?.stages[at];
      const beside =
        other === undefined ? '' : `; ${native?.name} ${whole(other.ms)} ms with its start, value ${other.value}`;
      return `  ${stage.padEnd(8)} ${ms.toFixed(1)} ms, value ${value.toPrecision(9)}${beside}`;
    }),
    `  together ${wholeMs.toFixed(1)} ms, ${(wholeMs / 50).toFixed(2)} of the aim of 50 ms`,
    ...(native ? [] : ['  neither glpsol nor cbc is installed (Debian packages glpk-utils, coinor-cbc): not compared']),
  ];
});

await part('First screen, script and style, gzip', () => {
  const { gzipBytes } = firstScreen(path.join(root, 'dist/web'));
  return [
    `  ${(gzipBytes / 1000).toFixed(1)} kB, ${(gzipBytes / LIMIT_BYTES).toFixed(2)} of the limit of ${LIMIT_BYTES / 1000} kB`,
  ];
});

await part('From a weight step to the redrawn pail, middle of 30', async () => {
  const { browser, times } = await stepTimes(root);
  return [
    `  Chromium ${browser}, 390 px wide, the example of the weigh-in sheet; one frame lasts 16.7 ms`,
    ...times.map(
      ({ slowed, scriptMs, paintedMs, worstPaintedMs }) =>
        `  ${(slowed === 1 ? 'CPU as it is' : `CPU slowed ${slowed} times`).padEnd(20)} script ${scriptMs.toFixed(1)} ms, painted after ${paintedMs.toFixed(1)} ms (worst ${worstPaintedMs.toFixed(1)} ms), ${(paintedMs / (1000 / 60)).toFixed(1)} frames`,
    ),
  ];
});

await part(`Touch to drawn answer, slowed ${SLOWED} times, middle of seven`, async () =>
  (await touchTimes(root)).map(
    ({ touch, scriptMs, paintedMs }) =>
      `  ${touch.padEnd(28)} script ${scriptMs.toFixed(1)} ms, drawn after ${paintedMs.toFixed(1)} ms, ${(paintedMs / (1000 / 60)).toFixed(1)} frames`,
  ),
);

await part('The sour line of a peg in the browser, middle of five', async () =>
  (await sourTimes(root)).map(
    ({ what, ms, aimMs }) =>
      `  ${what.padEnd(36)} ${ms.toFixed(0).padStart(5)} ms${aimMs === undefined ? '' : `, ${(ms / aimMs).toFixed(1)} of the aim of ${aimMs} ms`}`,
  ),
);

await part('The record, middle of five', async () => {
  const journal = journalTimes();
  const opening = await openingTimes();
  return [
    ...journal.folds.map(
      ({ entries, ms, longestStepMs }) =>
        `  fold of ${whole(entries)} entries: ${whole(ms)} ms, ${whole((entries / ms) * 1000)} a second; its longest step ${whole(longestStepMs)} ms`,
    ),
    `  reading a file of ${whole(journal.openedEntries)} entries, each checked: ${whole(journal.importMs)} ms`,
    ...journal.further.map(
      ({ entries, kind, ms }) => `  one more entry (${kind}) to ${whole(entries)}: ${ms.toFixed(1)} ms`,
    ),
    `  opening ${whole(opening.entries)} entries in Chromium: ${whole(opening.wholeMs)} ms (store ${whole(opening.readMs)}, fold ${whole(opening.foldMs)}), ${(opening.wholeMs / 300).toFixed(1)} of the aim of 300 ms`,
  ];
});

for (const count of [5000, 50_000]) {
  await part(`A record of ${whole(count)} entries on the built page`, async () => {
    const { takeInMs, longestMs, openMs, sheets, letterMs, actMs } = await recordPageTimes(root, count);
    return [
      `  taken in from a file in ${whole(takeInMs)} ms, ${whole(count / (takeInMs / 1000))} a second, ${(takeInMs / (count / 10)).toFixed(1)} of the aim of 50,000 in 5 s; the page stood still for ${whole(longestMs)} ms at most`,
      `  the page opened anew on it in ${whole(openMs)} ms; one more act kept and shown in ${whole(actMs)} ms`,
      ...sheets.map(
        ({ sheet, ms }) =>
          `  ${sheet.padEnd(10)} opened in ${whole(ms)} ms, ${(ms / 300).toFixed(1)} of the aim of 300 ms`,
      ),
      `  a letter of a search answered in ${whole(letterMs)} ms, ${(letterMs / 50).toFixed(1)} of the aim of 50 ms`,
    ];
  });
}

await part('The ledger of a plot, middle of seven', () => {
  const { entries, beds, seasonMs, allYearsMs } = ledgerTimes();
  return [
    `  ${whole(beds)} beds, ${whole(entries)} entries: one season ${whole(seasonMs)} ms, ${(seasonMs / 100).toFixed(2)} of the aim of 100 ms; all the years ${whole(allYearsMs)} ms`,
  ];
});

async function part(title: string, measure: () => readonly string[] | Promise<readonly string[]>): Promise<void> {
  console.log(`\n${title}:`);
  try {
    for (const line of await measure()) console.log(line);
  } catch (error) {
    console.log(`  Not measured: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  }
}
