// The remark kept beside a straining, a bottling and a pour: the figures that were shown with it, by which tables and
// formulas, and a digest of what they were computed from. It is made here and computes nothing; only moved-figures.ts
// reads it again. Today's figures are figures-now.ts.

import type { Grams } from '#engine/ground/supply.ts';
import type { Range } from '#engine/quantity/range.ts';
import { version } from '#engine/tables/version.ts';
import type { Body } from '#journal/kinds/index.ts';
import { mixed } from '#journal/question.ts';
import { canonical } from '#journal/same.ts';
import type { StrainedEntered } from '#plot/batch/strained.ts';

export type FiguresShown = NonNullable<Body<'peg.strained'>['figuresShown']>;
export type FigureShown = FiguresShown['figures'][number];
export type WhatShown = FigureShown['what'];

/** Figures with a digest of what was entered for them. */
export interface Figures {
  readonly entered: string;
  readonly figures: readonly FigureShown[];
}

/** The nutrients that are told of a liquid and of a pour. */
export const NUTRIENTS = ['n', 'p', 'k'] as const;

/** What is kept; nothing where no figure was shown. */
export function remarkOf({ entered, figures }: Figures): FiguresShown | undefined {
  const known = figures.filter(({ low, likely, high }) => [low, likely, high].every(Number.isFinite));
  return known.length === 0 ? undefined : { ...version, entered, figures: known };
}

/** A body with what was shown of it. */
export function withRemark<T extends { figuresShown?: FiguresShown | undefined }>(body: T, shown: Figures): T {
  const figuresShown = remarkOf(shown);
  return figuresShown === undefined ? body : { ...body, figuresShown };
}

/** What the figures of a litre are computed from: all that was entered, before any table has spoken. */
export interface LiquidEntered extends Pick<StrainedEntered, 'plants' | 'sugar' | 'starterL' | 'days' | 'finalPh'> {
  readonly water: { readonly volumeL: number };
}

/** Digest of it; the hardness of the water and what was drained change no figure of a litre. */
export function liquidEntered({ plants, water, sugar, starterL, days, finalPh }: LiquidEntered): string {
  return digestOf([plants, water.volumeL, sugar, starterL, Number(days.toFixed(4)), finalPh]);
}

/** What the days to keep are computed from. */
export function keepEntered(of: { ph: number | undefined; temperatureC: number; state: string | undefined }): string {
  return digestOf([of.ph, of.temperatureC, of.state !== 'lost' && of.state !== 'unknown']);
}

/** Digest of anything entered, whatever the order of its fields. */
export function digestOf(entered: unknown): string {
  return mixed(canonical(entered));
}

/** One figure; nothing where it is not known. */
export function figureOf(what: WhatShown, range: Range | null | undefined): readonly FigureShown[] {
  return range == null ? [] : [{ what, low: range.low, likely: range.likely, high: range.high }];
}

/** Grams in a litre. */
export function litreFigures(gPerL: Readonly<Partial<Record<'n' | 'p' | 'k', Range | null>>>): readonly FigureShown[] {
  return NUTRIENTS.flatMap((nutrient) => figureOf(`${nutrient}GPerL`, gPerL[nutrient]));
}

/** Grams given. */
export function givenFigures(grams: Grams): readonly FigureShown[] {
  return NUTRIENTS.flatMap((nutrient) => figureOf(`${nutrient}G`, grams[nutrient]));
}
