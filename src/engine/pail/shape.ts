// The vessel's shape: heights and widths from litres, so that a drawing shows levels where they would stand.
// A profile is a stack of frusta between a floor and a rim. Units: metres and litres.

/** A pail narrows downwards, a drum is straight, a barrel is widest in the middle. */
export type ShapeKind = 'pail' | 'drum' | 'barrel';

/** A ring of the wall: height above the floor and radius there. */
export interface Ring {
  readonly heightM: number;
  readonly radiusM: number;
}

export interface VesselShape {
  readonly kind: ShapeKind;
  readonly volumeL: number;
  readonly heightM: number;
  readonly rings: readonly Ring[];
}

/** Proportions: height as a multiple of the rim diameter (heightPerRimFraction), and (share of height, share of rim radius) from floor to rim. @practice */
const PROPORTIONS: Readonly<
  Record<ShapeKind, { readonly heightPerRimFraction: number; readonly profile: readonly [number, number][] }>
> = {
  pail: {
    heightPerRimFraction: 0.97,
    profile: [
      [0, 0.84],
      [1, 1],
    ],
  },
  drum: {
    heightPerRimFraction: 1.3,
    profile: [
      [0, 1],
      [1, 1],
    ],
  },
  barrel: {
    heightPerRimFraction: 1.45,
    profile: [
      [0, 1],
      [0.25, 1.11],
      [0.5, 1.15],
      [0.75, 1.11],
      [1, 1],
    ],
  },
};

/** Litres of a frustum, π h (a² + ab + b²) / 3. @arithmetic solid of revolution */
function frustumL(lower: Ring, upper: Ring): number {
  const a = lower.radiusM;
  const b = upper.radiusM;
  return (1000 * Math.PI * (upper.heightM - lower.heightM) * (a * a + a * b + b * b)) / 3;
}

/**
 * The shape of a vessel of this kind that holds exactly this volume to the rim.
 * @range volumeL above 0
 * @arithmetic volume grows with the cube of the rim radius
 */
export function vesselShape(vessel: { readonly volumeL: number; readonly shape: ShapeKind }): VesselShape {
  const { heightPerRimFraction, profile } = PROPORTIONS[vessel.shape];
  const unit = profile.map(([height, radius]) => ({ heightM: height * 2 * heightPerRimFraction, radiusM: radius }));
  let unitL = 0;
  for (let i = 1; i < unit.length; i++) unitL += frustumL(unit[i - 1] as Ring, unit[i] as Ring);
  const grow = Math.cbrt(vessel.volumeL / unitL);
  const rings = unit.map((ring) => ({ heightM: ring.heightM * grow, radiusM: ring.radiusM * grow }));
  return { kind: vessel.shape, volumeL: vessel.volumeL, heightM: 2 * heightPerRimFraction * grow, rings };
}

/** Up to this it is drawn as a pail, up to the next as a drum, above as a barrel. @practice */
const PAIL_UP_TO_L = 20;
const DRUM_UP_TO_L = 45;

/** The usual kind of vessel for its litres. @practice */
export function usualKind(volumeL: number): ShapeKind {
  return volumeL <= PAIL_UP_TO_L ? 'pail' : volumeL <= DRUM_UP_TO_L ? 'drum' : 'barrel';
}

/** The shape of a vessel whose rim, floor and height were measured. @arithmetic one frustum */
export function shapeOfSizes(
  sizes: { readonly topDiameterM: number; readonly bottomDiameterM: number; readonly heightM: number },
  volumeL: number,
): VesselShape {
  const rings = [
    { heightM: 0, radiusM: sizes.bottomDiameterM / 2 },
    { heightM: sizes.heightM, radiusM: sizes.topDiameterM / 2 },
  ];
  return { kind: 'pail', volumeL, heightM: sizes.heightM, rings };
}

/** Radius of the wall at a height; above the rim the rim's. @arithmetic linear between rings */
export function radiusM(shape: VesselShape, heightM: number): number {
  const rings = shape.rings;
  for (let i = 1; i < rings.length; i++) {
    const lower = rings[i - 1] as Ring;
    const upper = rings[i] as Ring;
    if (heightM <= upper.heightM) {
      const share = Math.max(0, (heightM - lower.heightM) / (upper.heightM - lower.heightM));
      return lower.radiusM + share * (upper.radiusM - lower.radiusM);
    }
  }
  return (rings.at(-1) as Ring).radiusM;
}

/**
 * Height at which so many litres stand. More than the vessel holds is drawn on above the rim, straight up,
 * so that an overflow has a height too.
 * @arithmetic the frustum as part of a cone
 */
export function levelM(shape: VesselShape, litres: number): number {
  if (!(litres > 0)) return 0;
  const rings = shape.rings;
  let left = litres;
  for (let i = 1; i < rings.length; i++) {
    const lower = rings[i - 1] as Ring;
    const upper = rings[i] as Ring;
    const room = frustumL(lower, upper);
    if (left <= room) return heightWithin(lower, upper, left / room);
    left -= room;
  }
  const rim = rings.at(-1) as Ring;
  return rim.heightM + left / (1000 * Math.PI * rim.radiusM * rim.radiusM);
}

/** Height within one piece: litres go with the cube of the radius, as in the cone that it is cut from. */
function heightWithin(lower: Ring, upper: Ring, litresFraction: number): number {
  const [a, b] = [lower.radiusM, upper.radiusM];
  const up = a === b ? litresFraction : (Math.cbrt(a ** 3 + litresFraction * (b ** 3 - a ** 3)) - a) / (b - a);
  return lower.heightM + up * (upper.heightM - lower.heightM);
}
