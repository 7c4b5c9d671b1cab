// Solids of revolution by their closed formulas, each with a rim radius of 10 cm so that the litres are round pieces of π.
import { describe, expect, it } from 'vitest';
import { levelM, radiusM, type ShapeKind, type VesselShape, vesselShape } from './shape.ts';

const PI = Math.PI;

// Drum π r² h, 26 cm high. Pail π h (a² + ab + b²)/3, 19.4 cm high, 8.4 cm at the floor. Barrel: four such pieces of
// 7.25 cm each, 10, 11.1, 11.5, 11.1 and 10 cm: 2 × π × 0.725 × (3.3421 + 3.8311)/3.
const RIM_OF_10_CM: readonly [ShapeKind, number, number][] = [
  ['drum', 2.6 * PI, 0.26],
  ['pail', (1.94 * PI * 2.5456) / 3, 0.194],
  ['barrel', (1.45 * PI * 7.1732) / 3, 0.29],
];
const of = (kind: ShapeKind) => {
  const volumeL = RIM_OF_10_CM.find(([name]) => name === kind)?.[1] ?? Number.NaN;
  return vesselShape({ volumeL, shape: kind });
};

describe('the shape of a vessel', () => {
  it.each(RIM_OF_10_CM)('of a %s of %d L is 20 cm wide at the rim', (shape, volumeL, heightM) => {
    const made = vesselShape({ volumeL, shape });
    expect([made.kind, made.volumeL]).toEqual([shape, volumeL]);
    expect(made.heightM).toBeCloseTo(heightM, 9);
    expect(made.rings.at(-1)?.radiusM).toBeCloseTo(0.1, 9);
    expect(made.rings.at(-1)?.heightM).toBeCloseTo(heightM, 9);
    expect(made.rings[0]?.heightM).toBe(0);
  });
  it('grows in every length alike: eight times the litres are twice the height and twice the width', () => {
    const made = vesselShape({ volumeL: 8 * 2.6 * PI, shape: 'drum' });
    expect(made.heightM).toBeCloseTo(0.52, 9);
    expect(made.rings.map(({ radiusM: r }) => r.toFixed(6))).toEqual(['0.200000', '0.200000']);
  });
  it("of a barrel holds what the cooper's rule gives, πh (2 D² + d²)/12, less the little that a curve bulges further", () => {
    // 0.29 m high, 23 cm at the belly, 20 cm at the ends: 11.07 L.
    const ruleL = (1000 * PI * 0.29 * (2 * 0.23 ** 2 + 0.2 ** 2)) / 12;
    expect(ruleL).toBeCloseTo(11.07, 2);
    const belly = of('barrel');
    expect(belly.volumeL / ruleL).toBeGreaterThan(0.98);
    expect(belly.volumeL / ruleL).toBeLessThan(1);
    expect(radiusM(belly, 0.145)).toBeCloseTo(0.115, 9);
  });
});

describe('the radius of the wall', () => {
  it.each([
    ['drum', 0, 0.1],
    ['drum', 0.13, 0.1],
    ['pail', 0, 0.084],
    ['pail', 0.0485, 0.088],
    ['pail', 0.097, 0.092],
    ['pail', 0.194, 0.1],
    ['barrel', 0, 0.1],
    ['barrel', 0.03625, 0.1055],
    ['barrel', 0.0725, 0.111],
    ['barrel', 0.10875, 0.113],
    ['barrel', 0.18125, 0.113],
    ['barrel', 0.2175, 0.111],
    ['barrel', 0.25375, 0.1055],
    ['barrel', 0.29, 0.1],
  ] as const)('of a %s, %d m above the floor, is %d m', (kind, heightM, expected) => {
    expect(radiusM(of(kind), heightM)).toBeCloseTo(expected, 9);
  });
  it("is the rim's above the rim and the floor's below the floor", () => {
    expect(radiusM(of('pail'), 0.5)).toBeCloseTo(0.1, 9);
    expect(radiusM(of('pail'), -0.1)).toBeCloseTo(0.084, 9);
  });
});

describe('the level of so many litres', () => {
  it.each(['drum', 'pail', 'barrel'] as const)('in a %s is the floor for nothing and the rim for all of it', (kind) => {
    const shape = of(kind);
    expect([levelM(shape, 0), levelM(shape, -1), levelM(shape, Number.NaN)]).toEqual([0, 0, 0]);
    expect(levelM(shape, shape.volumeL)).toBeCloseTo(shape.heightM, 9);
  });
  it('in a drum goes with the litres', () => {
    for (const share of [0.1, 0.25, 0.5, 0.9]) {
      expect(levelM(of('drum'), share * 2.6 * PI)).toBeCloseTo(share * 0.26, 9);
    }
  });
  it('in a pail goes with the cube of the width: the rest of a cone whose tip lies under the floor', () => {
    // r³ between 0.84³ and 1: half is 0.796352, r = 0.926905; a quarter is 0.694528, r = 0.885584; 16 % taper on 19.4 cm.
    const pail = of('pail');
    expect(levelM(pail, pail.volumeL / 2)).toBeCloseTo(0.1053718, 6);
    expect(levelM(pail, pail.volumeL / 4)).toBeCloseTo(0.055271, 6);
  });
  it('in a cone that stands on its tip is half its height at an eighth of its litres', () => {
    const rings = [
      { heightM: 0, radiusM: 0 },
      { heightM: 0.3, radiusM: 0.1 },
    ];
    const cone: VesselShape = { kind: 'pail', volumeL: PI, heightM: 0.3, rings };
    expect(levelM(cone, PI / 8)).toBeCloseTo(0.15, 9);
    expect(levelM(cone, (PI * 8) / 27)).toBeCloseTo(0.2, 9);
  });
  it('in a barrel stands at each ring for the litres of the pieces below it', () => {
    const barrel = of('barrel');
    const [outerL, innerL] = [(0.725 * PI * 3.3421) / 3, (0.725 * PI * 3.8311) / 3];
    expect(levelM(barrel, outerL)).toBeCloseTo(0.0725, 9);
    expect(levelM(barrel, outerL + innerL)).toBeCloseTo(0.145, 9);
    expect(levelM(barrel, outerL + 2 * innerL)).toBeCloseTo(0.2175, 9);
    // Alike from above and from below, since it is alike above and below its belly.
    expect(levelM(barrel, 1) + levelM(barrel, barrel.volumeL - 1)).toBeCloseTo(0.29, 9);
  });
  it('goes on straight up above the rim: a litre more is 1/(10 π) m on a rim of 10 cm', () => {
    expect(levelM(of('pail'), of('pail').volumeL + 1)).toBeCloseTo(0.194 + 0.0318309886, 9);
    expect(levelM(of('barrel'), of('barrel').volumeL + 2)).toBeCloseTo(0.29 + 0.0636619772, 9);
  });
});
