// Where the marks of the can card's jug and each can's dose stand on paper, mm. The jug is straight: a millilitre is as
// high everywhere. Broken off above the highest dose.

/** Height of the paper; floor and the highest mark keep so far from its edges. */
const HIGH_MM = 39;
const UNDER_FLOOR_MM = 3;
const OVER_TOP_MM = 12;
const STEP_ML = 50;
/** Names stand at least so far under each other. */
const NAME_HIGH_MM = 6.5;

export interface TagDose {
  /** What goes to the mark, at most the jug; full jugs before it are told in words. */
  readonly volumeMl: number;
  readonly text: string;
}

export interface TagJugOnPaper {
  readonly highMm: number;
  readonly floorMm: number;
  readonly marks: readonly { readonly volumeMl: number; readonly atMm: number }[];
  /** From the smallest dose up; names keep apart, their leaders lead back to the mark. */
  readonly doses: readonly (TagDose & { readonly atMm: number; readonly nameMm: number })[];
}

/** The jug with its own marks and the doses of all cans. */
export function tagJugOnPaper(jug: { readonly jugMl: number; readonly doses: readonly TagDose[] }): TagJugOnPaper {
  const most = Math.max(...jug.doses.map(({ volumeMl }) => volumeMl), STEP_ML);
  const topMl = Math.min(jug.jugMl, Math.ceil(most / STEP_ML + 1) * STEP_ML);
  const floorMm = HIGH_MM - UNDER_FLOOR_MM;
  const at = (volumeMl: number) => floorMm - (volumeMl / topMl) * (floorMm - OVER_TOP_MM);
  let lastMm = Number.POSITIVE_INFINITY;
  const doses = [...jug.doses]
    .sort((a, b) => a.volumeMl - b.volumeMl)
    .map((dose) => {
      const atMm = at(dose.volumeMl);
      lastMm = Math.min(atMm, lastMm - NAME_HIGH_MM);
      return { ...dose, atMm, nameMm: lastMm };
    });
  const marks = Array.from({ length: Math.floor(topMl / STEP_ML) }, (_, i) => (i + 1) * STEP_ML);
  return { highMm: HIGH_MM, floorMm, marks: marks.map((volumeMl) => ({ volumeMl, atMm: at(volumeMl) })), doses };
}
