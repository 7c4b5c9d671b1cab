// How a litre of souring liquid changes in an hour: sugar let out and eaten, four guilds that grow on it, the acids,
// alcohol, gas and ammonia they leave, the foul branch and the film. course.ts integrates this; what each pathway
// makes stands in stoichiometry.ts, how warmth and acid slow it in cardinal.ts.

import { ACETIC_G, KA_ACETIC, KA_LACTIC, LACTIC_G, sourOf } from './acidity.ts';
import { acidFactor, drynessFactor, sournessFactor, waterActivity } from './cardinal.ts';
import type { Mixture } from './mixture.ts';
import type { Parameters } from './parameters.ts';
import { AT, CARBON } from './state.ts';
import { ENTERO, FILM, foulRoute, HOMO, hetero, YEAST } from './stoichiometry.ts';

/** Share of full growth by warmth for each guild at one moment, and of plant enzymes against 25 °C. */
export interface Warmed {
  readonly earlyFraction: number;
  readonly lateFraction: number;
  readonly yeastFraction: number;
  readonly enteroFraction: number;
  readonly foulFraction: number;
  readonly enzymeFactor: number;
}

/** Fills `change` with the hourly change of the state `y`. */
export type Rates = (y: Float64Array, warmed: Warmed, change: Float64Array) => void;

/** Sugar drawn to build a gram of cells, by carbon; a gram of dead cells is as much `other`. @arithmetic */
const SUGAR_PER_CELL = CARBON.cells / CARBON.hexose;
/** Sugar that yeast and enterobacteria turn into products beside each gram they grow, g per g. @memory yields 0.10 and 0.12 */
const YEAST_PER_GROWTH = 9;
const ENTERO_PER_GROWTH = 7;
/** Lactic bacteria that cannot grow die at this share an hour; the acid-hardy ones slower. @memory */
const DEATH_PER_H = { early: 0.004, late: 0.0012 } as const;
/** Growth below this, per hour, counts as none in full measure: death sets in on the way down to it. @memory */
const NO_GROWTH_PER_H = 0.02;
/** pH at which plant enzymes stop letting nitrogen go, and the span up to full rate. @memory nearly stopped at 4.2 */
const ENZYMES = { stopPh: 4.2, spanPh: 2 } as const;
/** Foul bacteria work over half a pH above the critical one; film yeast below pH 6. @memory */
const GATE_PH = 0.5;
const FILM_BELOW_PH = 6;
/** Least water activity of the foul branch. @memory clostridia 0.94-0.97 */
const FOUL_WATER_ACTIVITY_MIN = 0.94;
/** No wetter mixture has a lower critical pH than this. @memory 4.0 ± 0.1 for a submerged mixture */
const LEAST_CRITICAL_PH = 3.95;

const G_N_PER_MOL = 14.007;

const ramp = (x: number) => (x <= 0 ? 0 : Math.min(x, 1));

/**
 * pH above which the foul branch works, by dry matter: 4.1 at 15 %, 4.6 at 35 %.
 * @returns pH, 3.95 at least
 * @memory critical pH of silage by dry matter; leaner mixtures by extension
 */
export function criticalPh(parameters: Parameters, dryMatterFraction: number): number {
  const { criticalPhAt15PercentDm, criticalPhRiseFactor } = parameters.foul;
  return Math.max(LEAST_CRITICAL_PH, criticalPhAt15PercentDm + criticalPhRiseFactor * (dryMatterFraction - 0.15));
}

/**
 * The rates of one batch; all that does not change from hour to hour is worked out once.
 *
 *   growth_i = µ_i · warmth · dryness · sourness · (1 − U/Umax)lactic · (1 − U/Umax)acetic · S/(Ks + S) · room
 *   acid_i   = (α growth_i + q · warmth · …) X_i      acid goes on after growth stops (Luedeking and Piret's form)
 *   release  = k · bound;   ammonia = k · (labile − N) · (pH − 4.2)/2 · 2^((T − 25)/10)
 *
 * @range opennessFraction 0 (airtight) to 1 (open); other limits in data/ferment.csv
 * @source passos-1994 form of acid production; rosso-1995 warmth and sourness multiply; presser-1998 undissociated acid
 * @checked test/validation, souring/model/course.test.ts
 */
export function ratesOf(mixture: Mixture, parameters: Parameters, opennessFraction: number): Rates {
  const { plant, early, late, yeast, entero, foul, film } = parameters;
  const sour = sourOf(mixture);
  const activity = waterActivity({
    dryMatterFraction: mixture.dryMatterFraction,
    slopeFraction: plant.waterActivitySlopeFraction,
    saltGPerL: mixture.saltGPerL,
  });
  const dryEarly = drynessFactor(activity, early.waterActivityMinFraction);
  const dryLate = drynessFactor(activity, late.waterActivityMinFraction);
  const dryYeast = drynessFactor(activity, yeast.waterActivityMinFraction);
  const dryEntero = drynessFactor(activity, entero.waterActivityMinFraction);
  const dryFoul = drynessFactor(activity, FOUL_WATER_ACTIVITY_MIN);
  const critical = criticalPh(parameters, mixture.dryMatterFraction);
  const byHetero = hetero(early);
  const byFoul = foulRoute(foul.aceticFraction);
  const heteroYield = byHetero.lactic + byHetero.acetic;
  const homoYield = HOMO.lactic + HOMO.acetic;
  const labile = plant.labileNFraction * mixture.nitrogenMolPerL;
  const foulLabile = plant.foulNFraction * mixture.nitrogenMolPerL;
  const mostCells = Math.min(plant.mostCellsGPerL, plant.cellsPerNitrogenGPerG * G_N_PER_MOL * mixture.nitrogenMolPerL);
  const mostYeast = Math.min(yeast.mostGPerL, yeast.cellsPerNitrogenGPerG * G_N_PER_MOL * mixture.nitrogenMolPerL);
  const filmMost = (film.lacticMostGPerLPerDay / 24) * opennessFraction;
  const releasePerH = plant.releasePerH * (mixture.chop?.releaseFactor ?? 1);
  const place = (y: Float64Array, index: number) => Math.max(0, y[index] as number);

  // A copy of the places within this closure: read thousands of times a run.
  const PLACE = { ...AT };
  return (y, warmed, change) => {
    const ph = sour(y);
    const sugar = place(y, PLACE.sugar);
    const xEarly = place(y, PLACE.early);
    const xLate = place(y, PLACE.late);
    const xYeast = place(y, PLACE.yeast);
    const xEntero = place(y, PLACE.entero);
    const lactic = place(y, PLACE.lactic);
    const mannitol = place(y, PLACE.mannitol);
    const foulNow = place(y, PLACE.foul);
    const filmNow = place(y, PLACE.film);
    const h = Math.exp(-Math.LN10 * ph);
    const uLactic = ((lactic / LACTIC_G) * h) / (KA_LACTIC + h);
    const uAcetic = ((place(y, PLACE.acetic) / ACETIC_G) * h) / (KA_ACETIC + h);
    const fed = sugar / (plant.halfSugarGPerL + sugar);
    const fedByMannitol = (late.mannitolPaceFraction * (1 - fed) * mannitol) / (plant.halfSugarGPerL + mannitol);
    const fedLate = fed + fedByMannitol;
    const room = ramp(1 - (xEarly + xLate + xEntero) / mostCells - xYeast / mostYeast);

    const bearsEarly = acidFactor(uLactic, early.lacticMostMolPerL) * acidFactor(uAcetic, early.aceticMostMolPerL);
    const bearsLate = acidFactor(uLactic, late.lacticMostMolPerL) * acidFactor(uAcetic, late.aceticMostMolPerL);
    const bearsYeast = acidFactor(uLactic, yeast.lacticMostMolPerL) * acidFactor(uAcetic, yeast.aceticMostMolPerL);
    const bearsEntero =
      acidFactor(uLactic, entero.lacticMostMolPerL) *
      acidFactor(uAcetic, entero.aceticMostMolPerL) *
      sournessFactor(entero, ph);
    const restsEarly =
      acidFactor(uLactic, early.lacticMostMolPerL * early.restBearsFactor) *
      acidFactor(uAcetic, early.aceticMostMolPerL * early.restBearsFactor);
    const restsLate =
      acidFactor(uLactic, late.lacticMostMolPerL * late.restBearsFactor) *
      acidFactor(uAcetic, late.aceticMostMolPerL * late.restBearsFactor);

    const muEarly = early.muPerH * dryEarly * warmed.earlyFraction * sournessFactor(early, ph) * bearsEarly * fed;
    const muLate = late.muPerH * dryLate * warmed.lateFraction * sournessFactor(late, ph) * bearsLate * fedLate;
    const muYeast = yeast.muPerH * dryYeast * warmed.yeastFraction * sournessFactor(yeast, ph) * bearsYeast * fed;
    const muEntero = entero.muPerH * dryEntero * warmed.enteroFraction * bearsEntero * fed;
    const growEarly = muEarly * room * xEarly;
    const growLate = muLate * room * xLate;
    const growYeast = muYeast * ramp(1 - xYeast / mostYeast) * xYeast;
    const growEntero = muEntero * room * ramp(1 - xEntero / entero.mostGPerL) * xEntero;

    const restEarly = early.acidAtRestGPerGPerH * dryEarly * warmed.earlyFraction * restsEarly * fed * xEarly;
    const restLate = late.acidAtRestGPerGPerH * dryLate * warmed.lateFraction * restsLate * fedLate * xLate;
    const byEarlySugar = (early.acidPerGrowthGPerG * growEarly + restEarly) / heteroYield;
    const lateEats = (late.acidPerGrowthGPerG * growLate + restLate) / homoYield + SUGAR_PER_CELL * growLate;
    const fromMannitol = fedLate > 0 ? fedByMannitol / fedLate : 0;
    const byYeastSugar =
      YEAST_PER_GROWTH * growYeast + yeast.atRestGPerGPerH * warmed.yeastFraction * bearsYeast * fed * xYeast;
    const byEnteroSugar =
      ENTERO_PER_GROWTH * growEntero + entero.atRestGPerGPerH * warmed.enteroFraction * bearsEntero * fed * xEntero;

    const dieEarly = DEATH_PER_H.early * ramp(1 - muEarly / NO_GROWTH_PER_H) * xEarly;
    const dieLate = DEATH_PER_H.late * ramp(1 - muLate / NO_GROWTH_PER_H) * xLate;
    const dieEntero = entero.deathPerH * ramp(1 - muEntero / NO_GROWTH_PER_H) * xEntero;

    const homoSugar = lateEats - SUGAR_PER_CELL * growLate;
    const bound = releasePerH * place(y, PLACE.bound);
    const slow = plant.slowReleasePerH * warmed.enzymeFactor * place(y, PLACE.slow);
    const foulGate = warmed.foulFraction * dryFoul * ramp((ph - critical) / GATE_PH);
    const turned = foul.lacticTurnedPerH * foulGate * foulNow * lactic;
    const filmGate = warmed.yeastFraction * ramp((FILM_BELOW_PH - ph) / GATE_PH);
    const burnt = (filmMost * filmGate * filmNow * lactic) / (1 + lactic);

    change[PLACE.bound] = -bound;
    change[PLACE.slow] = -slow;
    change[PLACE.sugar] =
      bound +
      slow -
      (byEarlySugar + (1 - fromMannitol) * lateEats + byYeastSugar + byEnteroSugar) -
      SUGAR_PER_CELL * (growEarly + growYeast + growEntero);
    change[PLACE.early] = growEarly - dieEarly;
    change[PLACE.late] = growLate - dieLate;
    change[PLACE.yeast] = growYeast;
    change[PLACE.entero] = growEntero - dieEntero;
    change[PLACE.lactic] =
      byHetero.lactic * byEarlySugar + HOMO.lactic * homoSugar + ENTERO.lactic * byEnteroSugar - turned - burnt;
    change[PLACE.acetic] =
      byHetero.acetic * byEarlySugar + HOMO.acetic * homoSugar + ENTERO.acetic * byEnteroSugar + byFoul.acetic * turned;
    change[PLACE.butyric] = byFoul.butyric * turned;
    change[PLACE.ethanol] =
      byHetero.ethanol * byEarlySugar + YEAST.ethanol * byYeastSugar + ENTERO.ethanol * byEnteroSugar;
    change[PLACE.mannitol] =
      byHetero.mannitol * byEarlySugar - (CARBON.hexose / CARBON.mannitol) * fromMannitol * lateEats;
    change[PLACE.co2] =
      byHetero.co2 * byEarlySugar +
      YEAST.co2 * byYeastSugar +
      ENTERO.co2 * byEnteroSugar +
      byFoul.co2 * turned +
      FILM.co2 * burnt;
    change[PLACE.other] =
      byHetero.other * byEarlySugar +
      HOMO.other * homoSugar +
      YEAST.other * byYeastSugar +
      ENTERO.other * byEnteroSugar +
      byFoul.other * turned +
      SUGAR_PER_CELL * (dieEarly + dieLate + dieEntero);
    change[PLACE.ammonia] =
      warmed.enzymeFactor *
      (plant.ammoniaPerH +
        (plant.ammoniaByEnteroPerH * xEntero) / entero.mostGPerL +
        plant.ammoniaByFoulPerH * foulNow) *
      Math.max(0, (ph - ENZYMES.stopPh) / ENZYMES.spanPh) *
      Math.max(0, labile + foulLabile * foulNow - place(y, PLACE.ammonia));
    change[PLACE.foul] = foul.growthPerH * foulGate * foulNow * (1 - foulNow);
    change[PLACE.film] = film.growthPerH * filmGate * opennessFraction * filmNow * (1 - filmNow);
  };
}
