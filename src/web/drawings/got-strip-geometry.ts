// Where things lie on the strips of what the beds got, in pixels: one scale of metres for all beds; along each strip the
// fractions of its need, cut off where too much would run off the sheet.

/** A bed to be drawn. */
export interface StripOfNeed {
  readonly lengthM: number;
  readonly covered: { readonly low: number; readonly likely: number; readonly high: number } | undefined;
  readonly pieces: readonly { readonly kind: string; readonly fromFraction: number; readonly toFraction: number }[];
}

/** Drawn past the end at most, as a fraction of the strip; beyond it the strip is broken off. */
const MOST_PAST = 0.5;
/** A strip is no longer than this for a metre. */
const MOST_PX_PER_M = 90;
/** The liquid is never drawn thinner. */
const LEAST_LIQUID_PX = 4;
/** A shorter whisker is not drawn. */
const LEAST_WHISKER_PX = 4;

/** Farthest point that is drawn of a strip, as a fraction of its need. */
function reach({ covered, pieces }: StripOfNeed): number {
  const far = Math.max(1, covered?.high ?? 0, pieces.at(-1)?.toFraction ?? 0);
  return Math.min(1 + MOST_PAST, far);
}

/** Pixels for a metre, so that the longest strip fits with what lies past its end. */
export function pxPerMetre(strips: readonly StripOfNeed[], widthPx: number): number {
  const longestM = strips.reduce((most, strip) => Math.max(most, strip.lengthM * reach(strip)), 0);
  return longestM > 0 ? Math.min(MOST_PX_PER_M, widthPx / longestM) : MOST_PX_PER_M;
}

/** A stretch along a strip. */
export interface Stretch {
  readonly kind: string;
  readonly x: number;
  readonly wide: number;
}

/** One strip laid out from x = 0. */
export interface LaidStrip {
  readonly lengthPx: number;
  /** What was given, up to the end of the strip; the liquid by itself. */
  readonly stretches: readonly Stretch[];
  readonly liquid: (Stretch & { readonly widened: boolean }) | undefined;
  /** What lies past the end. */
  readonly past: { readonly x: number; readonly wide: number; readonly broken: boolean } | undefined;
  /** The range of all that was given; undefined where it is too short to be told from a line. */
  readonly whisker: { readonly fromX: number; readonly toX: number; readonly broken: boolean } | undefined;
}

/** Lays out one strip. */
export function laidStrip(strip: StripOfNeed, pxPerM: number): LaidStrip {
  const lengthPx = strip.lengthM * pxPerM;
  const within = (fraction: number) => Math.min(1, fraction) * lengthPx;
  const cut = (fraction: number) => Math.min(1 + MOST_PAST, Math.max(0, fraction)) * lengthPx;
  const all = strip.pieces.map(({ kind, fromFraction, toFraction }) => {
    const x = within(fromFraction);
    return { kind, x, wide: within(toFraction) - x };
  });
  const poured = all.find(({ kind }) => kind === 'pour');
  const far = strip.pieces.at(-1)?.toFraction ?? 0;
  const { low, high } = strip.covered ?? { low: 0, high: 0 };
  return {
    lengthPx,
    stretches: all.filter(({ kind, wide }) => kind !== 'pour' && wide > 0),
    liquid: poured && {
      ...poured,
      wide: Math.max(LEAST_LIQUID_PX, poured.wide),
      widened: poured.wide < LEAST_LIQUID_PX,
    },
    past: far > 1 ? { x: lengthPx, wide: cut(far) - lengthPx, broken: far > 1 + MOST_PAST } : undefined,
    whisker:
      cut(high) - cut(low) >= LEAST_WHISKER_PX
        ? { fromX: cut(low), toX: cut(high), broken: high > 1 + MOST_PAST }
        : undefined,
  };
}
