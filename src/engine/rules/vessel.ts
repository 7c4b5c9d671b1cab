// What to say about lids, bottles and lifting, where a batch is filled, stands or is bottled. The pressures
// come from souring/gas/pressure.ts. Whether the liquid is fit to bottle at all is rules/bottle.ts.

import { pailFigure } from '../pail/figures.ts';
import type { LidKind } from '../souring/gas/lid.ts';
import { forceKgf, pressureAtm } from '../souring/gas/pressure.ts';
import type { Rule, Values } from './rule.ts';

/** A vessel about to be closed, or standing. What is not told is taken from an example pail, and said to be. */
export interface LidSituation {
  /** Undefined: not asked here, so nothing is said. */
  readonly lid: LidKind | undefined;
  readonly vesselL?: number | undefined;
  /** What stands in it, litres. */
  readonly liquidL?: number | undefined;
  readonly temperatureC?: number | undefined;
  readonly lidDiameterM?: number | undefined;
}

/** The pail that stands in where the vessel is not told. @practice a common size */
const EXAMPLE = { vesselL: 12, liquidL: 9, temperatureC: 20, lidDiameterM: 0.2, sugarG: 4 } as const;

/** Pressure and push of a little sugar turned by yeast under a closed lid. */
function pushOf(told: LidSituation): Values {
  const vesselL = told.vesselL ?? EXAMPLE.vesselL;
  const liquidL = Math.min(vesselL, (told.vesselL && told.liquidL) ?? (EXAMPLE.liquidL / EXAMPLE.vesselL) * vesselL);
  const lidDiameterM = told.lidDiameterM ?? EXAMPLE.lidDiameterM;
  const atm = pressureAtm({
    gasRoomL: vesselL - liquidL,
    liquidL,
    hexoseG: EXAMPLE.sugarG,
    route: 'yeast',
    temperatureC: told.temperatureC ?? EXAMPLE.temperatureC,
  });
  return {
    example: told.vesselL === undefined,
    vesselL,
    liquidL,
    sugarG: EXAMPLE.sugarG,
    lidDiameterM,
    pressureAtm: atm,
    forceKgf: forceKgf({ pressureAtm: atm, lidDiameterM }),
  };
}

/** Lids: nothing is ever closed tight. */
export const lidRules: readonly Rule<LidSituation>[] = [
  {
    id: 'lid-tight-no-vent',
    level: 'stop',
    source: 'sander-2015',
    locator: 'carbon dioxide',
    looksAt: 'the lid at filling: tight',
    speaksFor: 'general',
    override: 'none',
    when: (told) => (told.lid === 'tight' ? pushOf(told) : false),
  },
];

/** Days from egg to flying mosquito in warm standing water. @memory */
const MOSQUITO_DAYS = { least: 7, most: 10 } as const;

/** Standing water without a lid. */
export const insectRules: readonly Rule<{ readonly lid: LidKind | undefined }>[] = [
  {
    id: 'vessel-open-to-insects',
    level: 'caution',
    source: 'memory',
    looksAt: 'the lid at filling: none',
    speaksFor: 'general',
    when: ({ lid }) => (lid === 'none' ? { leastDays: MOSQUITO_DAYS.least, mostDays: MOSQUITO_DAYS.most } : false),
  },
];

/** Most sugar left in a bottle that may have a cap which can hold pressure, g/L. Our caution, no source. */
export const MOST_SUGAR_LEFT_G_PER_L = 5;

/** A bottle, its cap and what is in it. */
export interface BottleUse {
  readonly volumeL: number;
  readonly filledL: number;
  readonly cap: 'vent' | 'screw' | 'loose';
  readonly material: 'plastic' | 'glass' | 'drink-bottle';
  /** NaN when not known: counted as too much. */
  readonly sugarLeftGPerL: number;
  readonly temperatureC: number;
  /** Above the air outside once all the sugar left has turned by yeast; NaN when not known. */
  readonly pressureAtm: number;
}

const told = (bottle: BottleUse) => ({
  volumeL: bottle.volumeL,
  filledL: bottle.filledL,
  sugarLeftGPerL: bottle.sugarLeftGPerL,
  temperatureC: bottle.temperatureC,
  pressureAtm: bottle.pressureAtm,
  mostGPerL: MOST_SUGAR_LEFT_G_PER_L,
});
const littleSugar = (bottle: BottleUse) => bottle.sugarLeftGPerL <= MOST_SUGAR_LEFT_G_PER_L;

/** Bottles: a sugar figure that is not known speaks as if it were too high. */
export const bottleUseRules: readonly Rule<BottleUse>[] = [
  {
    id: 'bottle-made-for-drink',
    level: 'stop',
    source: 'carpenter-2021',
    looksAt: 'what the bottle was made for',
    speaksFor: 'general',
    override: 'none',
    when: (bottle) => (bottle.material === 'drink-bottle' ? told(bottle) : false),
  },
  {
    id: 'bottle-of-glass',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'glass, and sugar left or not known',
    speaksFor: 'general',
    override: 'none',
    when: (bottle) => (bottle.material === 'glass' && !littleSugar(bottle) ? told(bottle) : false),
  },
  {
    id: 'bottle-cap-turned-down',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'a screw cap, and sugar left or not known',
    speaksFor: 'general',
    override: 'none',
    when: (bottle) => (bottle.cap === 'screw' && !littleSugar(bottle) ? told(bottle) : false),
  },
  {
    id: 'bottle-glass-or-tight-cap-later',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'glass or a screw cap, with little sugar left',
    speaksFor: 'general',
    when: (bottle) =>
      (bottle.cap === 'screw' || bottle.material === 'glass') && littleSugar(bottle) ? told(bottle) : false,
  },
  {
    id: 'bottle-still-gassing',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'plastic with a cap that vents, and sugar left or not known',
    speaksFor: 'general',
    when: (bottle) =>
      bottle.material === 'plastic' && bottle.cap !== 'screw' && !littleSugar(bottle) ? told(bottle) : false,
  },
];

/** Heaviest a person is asked to lift, kg. @practice data/pail.csv */
export const MOST_LIFT_KG = pailFigure('lifting', 'mostLiftKg').likely;

/** Lifting when a batch is strained; at filling it is said by rules/fit.ts. */
export const liftRules: readonly Rule<{ readonly massKg: number }>[] = [
  {
    id: 'empty-it-with-a-jug',
    level: 'caution',
    source: 'practice',
    looksAt: 'mass of the batch against what one person lifts',
    speaksFor: 'general',
    when: ({ massKg }) => (massKg <= MOST_LIFT_KG ? false : { massKg, mostKg: MOST_LIFT_KG }),
  },
];
