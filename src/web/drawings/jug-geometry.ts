// Where a dose and the marks of a jug or a syringe stand on paper. Both are straight, so that a millilitre is as high
// everywhere; how high in millimetres is the task's to say. Full size only where the screen was set.

/** Marks of a jug, mL apart. */
const STEPS_ML = [5, 10, 20, 25, 50, 100, 200, 250, 500, 1000];
/** Height of the drawn part while it is not full size, px. */
const DRAWN_PX = 236;
/** A jug is never drawn higher than this: a phone has no more room. */
const MOST_PX = 420;
/** How far above the dose the drawing goes on. */
const ROOM_ABOVE = 1.35;
const MOST_MARKS = 7;

export interface JugMark {
  readonly volumeMl: number;
  readonly y: number;
  readonly named: boolean;
}

export interface JugOnPaper {
  readonly floorY: number;
  readonly topY: number;
  readonly doseY: number;
  /** The jug goes on above: it is broken off with a zigzag. */
  readonly broken: boolean;
  readonly marks: readonly JugMark[];
  /** Whether it is at full size: the screen was set and there is room for it. */
  readonly fullSize: boolean;
}

/** A jug on paper from its floor to a little above the dose. `pxPerMl` stands only where the screen was set. */
export function jugOnPaper(jug: {
  readonly doseMl: number;
  readonly jugMl: number;
  readonly topY: number;
  readonly pxPerMl?: number | undefined;
}): JugOnPaper {
  const shownMl = Math.min(jug.jugMl, jug.doseMl * ROOM_ABOVE);
  const stepMl = STEPS_ML.find((step) => shownMl / step <= MOST_MARKS) ?? shownMl;
  const truePx = jug.pxPerMl === undefined ? undefined : jug.pxPerMl * shownMl;
  const fullSize = truePx !== undefined && truePx <= MOST_PX && truePx >= 24;
  const heightPx = fullSize ? truePx : DRAWN_PX;
  const floorY = jug.topY + heightPx;
  const yOf = (volumeMl: number) => floorY - (volumeMl / shownMl) * heightPx;
  const marks: JugMark[] = [];
  for (let i = 1; (i * stepMl) / 2 <= shownMl; i++) {
    const volumeMl = (i * stepMl) / 2;
    // A name close to the dose's own line would be struck through.
    const clear = Math.abs(yOf(volumeMl) - yOf(jug.doseMl)) > 13;
    marks.push({ volumeMl, y: yOf(volumeMl), named: i % 2 === 0 && clear });
  }
  return { floorY, topY: jug.topY, doseY: yOf(jug.doseMl), broken: shownMl < jug.jugMl, marks, fullSize };
}

/** What a syringe holds, and the marks it has. */
const SYRINGE_ML = 20;
const SYRINGE_MARKS_ML = [5, 10, 15, 20] as const;
/** Room for the finger rest at the left and the plunger at the right. */
const SYRINGE_LEFT = 26;
const SYRINGE_RIGHT = 60;

/** A syringe lying down: nothing at the left, its marks, and the plunger at the dose. More than it holds stands at its end. */
export function syringeOnPaper(syringe: { readonly doseMl: number; readonly width: number }) {
  const pxPerMl = (syringe.width - SYRINGE_LEFT - SYRINGE_RIGHT) / SYRINGE_ML;
  const at = (volumeMl: number) => SYRINGE_LEFT + volumeMl * pxPerMl;
  return {
    emptyX: SYRINGE_LEFT,
    fullX: at(SYRINGE_ML),
    doseX: at(Math.min(SYRINGE_ML, syringe.doseMl)),
    marks: SYRINGE_MARKS_ML.map((volumeMl) => ({ volumeMl, x: at(volumeMl) })),
  };
}
