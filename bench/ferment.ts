// The speed of the ferment model: one run, a thousand draws, what looks cost; and the same equations solved by SciPy's
// solve_ivp (ferment.py) in the same run, where Python with SciPy is installed, with how far the two are apart.

import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Batch, course } from '#engine/souring/model/course.ts';
import { drawOf, type Known, USUAL_SPREAD } from '#engine/souring/model/draws.ts';
import { evenly, runDraws } from '#engine/souring/model/ensemble.ts';
import { forecast } from '#engine/souring/model/forecast.ts';
import { learn } from '#engine/souring/model/learn.ts';
import type { Mixture } from '#engine/souring/model/mixture.ts';
import { startOf } from '#engine/souring/model/state.ts';
import { foulRoute, hetero } from '#engine/souring/model/stoichiometry.ts';
import { hourlyC } from '#engine/souring/model/temperature.ts';
import { middle } from './rate.ts';

const DAYS = 21;

/** A pail of clippings and trimmings with some sugar, per litre. */
const mixture: Mixture = {
  liquidL: 12.5,
  dryMatterFraction: 0.042,
  plantKgPerL: 0.24,
  dryMatterKgPerL: 0.043,
  boundSugarGPerL: 5.6,
  freeSugarGPerL: 8,
  bufferEqPerLPerPh: 0.0115,
  startPh: 6.2,
  alkalinityEqPerL: 0.002,
  waterPh: 7.6,
  nitrogenMolPerL: 0.11,
  saltGPerL: 0,
  starterGPerL: 0,
};

const TEMPERATURE_C = 17;
const batch: Batch = {
  mixture,
  hourlyC: hourlyC({ warmth: TEMPERATURE_C, days: DAYS, vesselL: 12 }),
  opennessFraction: 0.1,
};
const known: Known = { batch, spread: USUAL_SPREAD, seed: 1 };

export interface FermentTimes {
  readonly runMs: number;
  readonly firstBandMs: number;
  readonly drawsMs: number;
  readonly looksMs: number;
  /** SciPy's milliseconds a run and the farthest the two are apart in pH; absent where SciPy is not installed. */
  readonly scipy?: { readonly runMs: number; readonly apartPh: number; readonly batches: number };
}

function timed<T>(work: () => T): { readonly value: T; readonly ms: number } {
  const begun = performance.now();
  const value = work();
  return { value, ms: performance.now() - begun };
}

/** All times, middle of five where one is short. */
export function fermentTimes(): FermentTimes {
  for (let index = 0; index < 200; index++) course(drawOf(known, index).batch, drawOf(known, index).parameters, DAYS);
  const runs = Array.from(
    { length: 5 },
    () => timed(() => runDraws(known, { from: 0, count: 100, days: DAYS })).ms / 100,
  );
  const first = timed(() => forecast(evenly(runDraws(known, { from: 0, count: 200, days: DAYS })), known, DAYS));
  const draws = timed(() => runDraws(known, { from: 0, count: 1000, days: DAYS }));
  const looks = [
    { day: 0, ph: 6.3, by: 'meter' as const },
    { day: 1, ph: 5.9, by: 'meter' as const },
    { day: 2, ph: 4.8, by: 'meter' as const },
    { day: 4, ph: 4.2, by: 'meter' as const, smell: 'sour' as const },
    { day: 7, ph: 3.9, by: 'meter' as const },
  ];
  const weighed = Array.from(
    { length: 5 },
    () => timed(() => learn({ known, first: draws.value, looks, days: DAYS, mostStagesCount: 0 })).ms,
  );
  const scipy = apart();
  return {
    runMs: middle(runs),
    firstBandMs: first.ms,
    drawsMs: draws.ms,
    looksMs: middle(weighed),
    ...(scipy && { scipy }),
  };
}

/** The same draws by SciPy, or undefined where it is not installed. */
function apart(): FermentTimes['scipy'] {
  const drawn = Array.from({ length: 12 }, (_, index) => drawOf(known, index));
  const steady = drawn.map((draw) => {
    const temperatureC = draw.batch.hourlyC[0] as number;
    return {
      mixture: draw.batch.mixture,
      parameters: draw.parameters,
      temperatureC,
      opennessFraction: draw.batch.opennessFraction,
      start: Array.from(startOf(draw.batch.mixture, draw.parameters)),
      heteroRoute: hetero(draw.parameters.early),
      foulRoute: foulRoute(draw.parameters.foul.aceticFraction),
    };
  });
  const script = path.join(path.dirname(fileURLToPath(import.meta.url)), 'ferment.py');
  const asked = JSON.stringify({ batches: steady, days: DAYS, relative: 1e-6, absolute: 1e-9 });
  const done = spawnSync('python3', [script], { input: asked, encoding: 'utf8', maxBuffer: 1e8 });
  if (done.status !== 0) {
    if (/No module named|ENOENT/.test(`${done.stderr}${done.error}`)) return undefined;
    throw new Error(`ferment.py: ${done.stderr.trim().split('\n').at(-1)}`);
  }
  const { ph, msPerBatch } = JSON.parse(done.stdout) as { ph: number[][]; msPerBatch: number };
  let apartPh = 0;
  drawn.forEach((draw, i) => {
    const run = course(draw.batch, draw.parameters, DAYS);
    ph[i]?.forEach((value, point) => {
      apartPh = Math.max(apartPh, Math.abs(value - (run.ph[point] as number)));
    });
  });
  return { runMs: msPerBatch, apartPh, batches: drawn.length };
}
