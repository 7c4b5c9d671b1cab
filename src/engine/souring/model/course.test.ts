// The run of a batch against an independent adaptive solver, its carbon, and what a grower would call common sense.

import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { balancePh } from '../../scraps/acid.ts';
import { sourOf } from './acidity.ts';
import { at, type Batch, course, dayBelow, warmedAt } from './course.ts';
import { drawOf, USUAL_SPREAD, uniforms } from './draws.ts';
import type { Mixture } from './mixture.ts';
import { likelyParameters, type Parameters } from './parameters.ts';
import { ratesOf } from './rates.ts';
import { AT, CARBON, STATES, startOf } from './state.ts';
import { hourlyC } from './temperature.ts';

const DAYS = 21;

const plain: Mixture = {
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

function batchOf(mixture: Mixture, temperatureC: number, opennessFraction = 0.1): Batch {
  return { mixture, hourlyC: hourlyC({ warmth: temperatureC, days: DAYS, vesselL: 12 }), opennessFraction };
}

/** A batch of any kind, from a seed: lean to thick, sweet or not, 8 to 32 °C. */
function anyBatch(index: number): { batch: Batch; parameters: Parameters } {
  const next = uniforms(20, index);
  const between = (low: number, high: number) => low + next() * (high - low);
  const dry = between(0.02, 0.2);
  const mixture: Mixture = {
    ...plain,
    dryMatterFraction: dry,
    dryMatterKgPerL: dry,
    plantKgPerL: between(0.1, 1),
    boundSugarGPerL: dry * between(40, 400),
    freeSugarGPerL: between(0, 20),
    bufferEqPerLPerPh: dry * between(0.12, 0.32),
    startPh: between(5, 6.6),
    alkalinityEqPerL: between(0, 0.006),
    nitrogenMolPerL: dry * between(0.7, 2.9),
  };
  const known = { batch: batchOf(mixture, between(8, 32), next()), spread: USUAL_SPREAD, seed: 5 };
  const drawn = drawOf(known, index);
  return { batch: drawn.batch, parameters: drawn.parameters };
}

/** The same rates solved by Hairer's extrapolation code (package odex) to 1e-8, daily pH. */
function solvedApart(batch: Batch, parameters: Parameters): readonly number[] {
  const rates = ratesOf(batch.mixture, parameters, batch.opennessFraction);
  const sour = sourOf(batch.mixture);
  const state = new Float64Array(STATES);
  const change = new Float64Array(STATES);
  const solver = new Solver(STATES);
  solver.absoluteTolerance = 1e-9;
  solver.relativeTolerance = 1e-7;
  solver.maxSteps = 100000;
  const warmed = warmedAt(parameters, batch.hourlyC[0] as number);
  const daily: number[] = [];
  let y = Array.from(startOf(batch.mixture, parameters));
  daily.push(sour(Float64Array.from(y)));
  for (let day = 1; day <= DAYS; day++) {
    const solved = solver.solve(
      (_hour: number, now: readonly number[]) => {
        state.set(now);
        rates(state, warmed, change);
        return Array.from(change);
      },
      0,
      y,
      24,
    );
    y = solved.y.map((value: number) => Math.max(0, value));
    daily.push(sour(Float64Array.from(y)));
  }
  return daily;
}

describe('a run of the model', () => {
  it('keeps within pH 0.005 of an adaptive solver over 21 days on 50 batches of every kind', () => {
    for (let index = 0; index < 50; index++) {
      const { batch, parameters } = anyBatch(index);
      const run = course(batch, parameters, DAYS);
      const apart = solvedApart(batch, parameters);
      const worst = apart.reduce((most, ph, day) => Math.max(most, Math.abs(ph - at(run, day, 'ph'))), 0);
      expect(worst, `batch ${index}`).toBeLessThan(0.005);
    }
  });

  it('loses and makes no carbon: within 1 % over 21 days, with every pathway at work', () => {
    for (let index = 0; index < 50; index++) {
      const { batch, parameters } = anyBatch(index);
      const run = course(batch, parameters, DAYS);
      const cells = (point: number) =>
        (run.lacticCellsGPerL[point] as number) +
        (run.yeastCellsGPerL[point] as number) +
        (run.enteroCellsGPerL[point] as number);
      const carbon = (point: number) =>
        CARBON.hexose *
          ((run.boundGPerL[point] as number) + (run.sugarGPerL[point] as number) + (run.slowGPerL[point] as number)) +
        CARBON.lactic * (run.lacticGPerL[point] as number) +
        CARBON.acetic * (run.aceticGPerL[point] as number) +
        CARBON.butyric * (run.butyricGPerL[point] as number) +
        CARBON.ethanol * (run.ethanolGPerL[point] as number) +
        CARBON.mannitol * (run.mannitolGPerL[point] as number) +
        CARBON.co2 * (run.co2GPerL[point] as number) +
        CARBON.other * (run.otherGPerL[point] as number) +
        CARBON.cells * cells(point);
      expect(Math.abs(carbon(run.points - 1) / carbon(0) - 1), `batch ${index}`).toBeLessThan(0.01);
    }
  });

  it('finds the pH that the charge balance finds by bisection', () => {
    const y = new Float64Array(STATES);
    y[AT.lactic] = 0.051 * 90.08;
    y[AT.acetic] = 0.013 * 60.05;
    const mixture = { ...plain, bufferEqPerLPerPh: 0.01146, startPh: 6.2, alkalinityEqPerL: 0.002, waterPh: 7.6 };
    const liquid = { lacticMolPerL: 0.051, aceticMolPerL: 0.013, baseEqPerL: 0, ...mixture };
    expect(sourOf(mixture)(y)).toBeCloseTo(balancePh(liquid), 5);
  });

  it('is never slower to pH 4.6 in the warm, up to 26 °C, where sugar does not run short', () => {
    const mixture = { ...plain, freeSugarGPerL: 14 };
    const days = [8, 11, 14, 17, 20, 23, 26].map(
      (temperatureC) => dayBelow(course(batchOf(mixture, temperatureC), likelyParameters, DAYS), 4.6) ?? 99,
    );
    for (let i = 1; i < days.length; i++) expect(days[i]).toBeLessThanOrEqual(days[i - 1] as number);
  });

  it.each([12, 18, 24])('never has a higher plateau from more sugar, below the most, at %i °C', (temperatureC) => {
    const plateaus = [0, 2, 4, 8, 12, 16, 20].map((freeSugarGPerL) =>
      course(batchOf({ ...plain, freeSugarGPerL }, temperatureC), likelyParameters, DAYS).ph.reduce(
        (a, b) => Math.min(a, b),
        14,
      ),
    );
    for (let i = 1; i < plateaus.length; i++)
      expect(plateaus[i]).toBeLessThanOrEqual((plateaus[i - 1] as number) + 1e-6);
  });

  it('stands still, and says nothing false, where the temperature is not known', () => {
    const run = course(batchOf(plain, Number.NaN), likelyParameters, 5);
    expect(Number.isFinite(at(run, 5, 'ph'))).toBe(true);
    expect(at(run, 5, 'lacticGPerL')).toBe(0);
  });
});
