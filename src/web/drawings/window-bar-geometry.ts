// Where everything of the sugar bar stands: a round end for its scale, places of the marks, and labels that
// keep clear of the weighed figure above the bar.

import { sugarBar } from '#words/en/weigh-in.ts';

/** Round ends for the scale, times a power of ten. */
const ENDS = [1, 1.2, 1.6, 2, 2.4, 3, 4, 5, 6, 8, 10];
/** Half the width the weighed figure may take, and the width of a label, px. */
const FIGURE = 40;
const LABEL = 138;

/** The next round figure at or above a value. */
export function roundEnd(value: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(value, 1)));
  return Math.round((ENDS.find((end) => end * power >= value) ?? 10) * power);
}

export interface Bar {
  readonly endG: number;
  readonly leastG: number;
  readonly mostG: number;
  readonly weighedG: number;
  readonly leastX: number;
  readonly mostX: number;
  readonly weighedX: number;
  readonly weighedTextX: number;
  readonly ticksX: readonly number[];
}

/** The bar's scale: the window takes its room, a weight far beyond stands at the end. A least without bound stands there too. */
export function barScale(
  grams: { readonly leastG: number; readonly mostG: number; readonly weighedG: number },
  width: number,
): Bar {
  const bounded = Number.isFinite(grams.leastG) ? grams.leastG : 0;
  const window = Math.max(bounded, grams.mostG, 8);
  const endG = roundEnd(1.2 * Math.max(window, Math.min(grams.weighedG, 3 * window)));
  const leastG = Number.isFinite(grams.leastG) ? grams.leastG : endG;
  const x = (value: number) => 1 + ((width - 2) * Math.max(0, Math.min(endG, value))) / endG;
  const weighedX = Math.max(11, Math.min(width - 11, x(grams.weighedG)));
  return {
    endG,
    leastG,
    mostG: grams.mostG,
    weighedG: grams.weighedG,
    leastX: x(leastG),
    mostX: x(grams.mostG),
    weighedX,
    weighedTextX: Math.max(FIGURE, Math.min(width - FIGURE, weighedX)),
    ticksX: [0, 1, 2, 3, 4].map((quarter) => x((endG * quarter) / 4)),
  };
}

export interface BarLabel {
  readonly text: string;
  readonly x: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly figure: boolean;
  /** Under the bar, where the scale's figures stand. */
  readonly low: boolean;
}

/** Figures of the bar: the window above and the scale below; closed, its two ends below instead of the scale. */
export function barLabels(bar: Bar, width: number, closed: boolean): readonly BarLabel[] {
  if (closed) {
    const most = sugarBar.most(bar.mostG, bar.leastG);
    const least = sugarBar.least(bar.leastG, bar.mostG);
    const middle = Math.max(LABEL, Math.min(width - LABEL, (bar.mostX + bar.leastX) / 2));
    return [
      { text: most, x: middle - 12, anchor: 'end', figure: true, low: true },
      { text: least, x: middle + 12, anchor: 'start', figure: true, low: true },
    ];
  }
  const scale: BarLabel[] = [
    { text: '0', x: 0, anchor: 'start', figure: false, low: true },
    { text: String(bar.endG / 2), x: bar.ticksX[2] ?? 0, anchor: 'middle', figure: false, low: true },
    { text: sugarBar.weighed(bar.endG), x: width, anchor: 'end', figure: false, low: true },
  ];
  const text = sugarBar.range(bar.leastG, bar.mostG);
  const centre = Math.max(LABEL / 2, Math.min(width - LABEL / 2, (bar.leastX + bar.mostX) / 2));
  const clear = bar.weighedG <= 0 || Math.abs(centre - bar.weighedTextX) >= LABEL / 2 + FIGURE;
  if (clear) return [...scale, { text, x: centre, anchor: 'middle', figure: true, low: false }];
  // Side by side they would read as one figure: the window's is set lighter.
  const before = bar.weighedTextX - FIGURE - 4;
  const fitsBefore = before - LABEL >= 0 && (centre <= bar.weighedTextX || bar.weighedTextX + FIGURE + LABEL > width);
  return fitsBefore
    ? [...scale, { text, x: before, anchor: 'end', figure: false, low: false }]
    : [...scale, { text, x: bar.weighedTextX + FIGURE + 4, anchor: 'start', figure: false, low: false }];
}
