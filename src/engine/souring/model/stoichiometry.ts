// What a gram of sugar or lactic acid becomes on each pathway. Named products are grams per gram; the carbon that no
// named product holds goes to the pool `other`, so that every route closes on carbon by construction.

import { CARBON } from './state.ts';

/** Products of a gram taken in, g per g. */
export interface Route {
  readonly lactic: number;
  readonly acetic: number;
  readonly butyric: number;
  readonly ethanol: number;
  readonly mannitol: number;
  readonly co2: number;
  readonly other: number;
}

type Named = Partial<Omit<Route, 'other'>>;

/** A route from its named products; `other` takes the carbon that is left. */
function route(carbonGPerG: number, named: Named): Route {
  const full = { lactic: 0, acetic: 0, butyric: 0, ethanol: 0, mannitol: 0, co2: 0, ...named };
  const held =
    CARBON.lactic * full.lactic +
    CARBON.acetic * full.acetic +
    CARBON.butyric * full.butyric +
    CARBON.ethanol * full.ethanol +
    CARBON.mannitol * full.mannitol +
    CARBON.co2 * full.co2;
  return { ...full, other: (carbonGPerG - held) / CARBON.other };
}

/** Blend of routes by the share of sugar that takes each. @arithmetic */
export function blend(parts: readonly (readonly [share: number, of: Route])[]): Route {
  const sum = (name: keyof Route) => parts.reduce((total, [share, of]) => total + share * of[name], 0);
  return {
    lactic: sum('lactic'),
    acetic: sum('acetic'),
    butyric: sum('butyric'),
    ethanol: sum('ethanol'),
    mannitol: sum('mannitol'),
    co2: sum('co2'),
    other: sum('other'),
  };
}

/** C6 → 2 lactic, with 2 % acetic and 5 % lost to other products. @memory */
export const HOMO = route(CARBON.hexose, { lactic: 0.93, acetic: 0.02 });
/** C6 → lactic + acetic + CO2, where the plant offers something to take the hydrogen. @arithmetic */
const HETERO_ACETIC = route(CARBON.hexose, { lactic: 0.5, acetic: 0.333, co2: 0.244 });
/** C6 → lactic + ethanol + CO2. @arithmetic */
const HETERO_ETHANOL = route(CARBON.hexose, { lactic: 0.5, ethanol: 0.256, co2: 0.244 });
/** 3 C6 → lactic + acetic + CO2 + 2 mannitol, fructose taking the hydrogen. @arithmetic */
const HETERO_MANNITOL = route(CARBON.hexose, { lactic: 0.1667, acetic: 0.1111, co2: 0.0814, mannitol: 0.674 });
/** C6 → 2 ethanol + 2 CO2, a little of it short. @arithmetic 0.511 and 0.489 at full yield; 0.50 and 0.478 taken */
export const YEAST = route(CARBON.hexose, { ethanol: 0.5, co2: 0.478 });
/** Mixed acids of enterobacteria: acetic above lactic, gas, some alcohol, the rest other (formic, succinic). @memory */
export const ENTERO = route(CARBON.hexose, { lactic: 0.15, acetic: 0.35, ethanol: 0.1, co2: 0.2 });
/** Film yeast burns lactic acid to CO2. @arithmetic */
export const FILM = route(CARBON.lactic, { co2: CARBON.lactic / CARBON.co2 });

/** The early guild: shares of its sugar by way of mannitol, acetic acid and alcohol. @arithmetic */
export function hetero(of: { readonly aceticFraction: number; readonly mannitolFraction: number }): Route {
  const direct = 1 - of.mannitolFraction;
  return blend([
    [of.mannitolFraction, HETERO_MANNITOL],
    [direct * of.aceticFraction, HETERO_ACETIC],
    [direct * (1 - of.aceticFraction), HETERO_ETHANOL],
  ]);
}

/** Lactic acid to butyric acid (2 → butyric + 2 CO2 + 2 H2) or, in a share, to acetic acid and CO2. @arithmetic */
export function foulRoute(aceticFraction: number): Route {
  const toButyric = route(CARBON.lactic, { butyric: 0.489, co2: 0.4886 });
  const toAcetic = route(CARBON.lactic, { acetic: 0.667, co2: 0.4886 });
  return blend([
    [1 - aceticFraction, toButyric],
    [aceticFraction, toAcetic],
  ]);
}
