// The size of one touch on minus or plus: near a hundredth to a tenth of what stands there, in the unit the
// figure is shown in. A step down never passes below one step.

/** How far one touch moves a weight or a volume, and how many digits it then shows. */
export interface Step {
  readonly size: number;
  readonly text: string;
}

/** Step for scraps, kg. */
export function massStep(massKg: number): Step {
  if (massKg < 0.1) return { size: 0.01, text: '10 g' };
  if (massKg < 1) return { size: 0.05, text: '50 g' };
  if (massKg < 10) return { size: 0.1, text: '0.1 kg' };
  if (massKg < 50) return { size: 0.5, text: '0.5 kg' };
  return { size: 2, text: '2 kg' };
}

/** Step for sugar, kg. */
export function sugarStep(massKg: number): Step {
  if (massKg < 0.5) return { size: 0.01, text: '10 g' };
  if (massKg < 2) return { size: 0.05, text: '50 g' };
  return { size: 0.1, text: '0.1 kg' };
}

/** Step for water, litres. */
export function volumeStep(volumeL: number): Step {
  if (volumeL < 2) return { size: 0.1, text: '0.1 L' };
  if (volumeL < 20) return { size: 0.5, text: '0.5 L' };
  if (volumeL < 60) return { size: 1, text: '1 L' };
  return { size: 5, text: '5 L' };
}

/** One step up or down; undefined where the step down would leave nothing. */
export function stepped(value: number, step: Step, way: 1 | -1): number | undefined {
  const next = Number((value + way * step.size).toFixed(6));
  return next > 0 ? next : undefined;
}
