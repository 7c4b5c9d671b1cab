// Air that people breathe beside a batch: carbon dioxide in a room, hydrogen sulphide under a lid.

import { fillAirRules } from '#engine/rules/care.ts';
import { type FoulGas, foulGasRules, roomGasRules } from '#engine/rules/gas.ts';
import { JAR_BEARS_ATM } from '#engine/souring/gas/sealed.ts';
import { answers, speaks, type Value, valuesOf } from './value.ts';

/** One change of air an hour in 1 m3: 24 mL of gas a day are 1 ppm above the air outside. */
const room = (risePpm: number) => ({ gasLPerDay: 0.024 * risePpm, roomM3: 1, airChangesPerH: 1, totalGasL: 1000 });
const dayLimit = speaks(roomGasRules, 'room-gas-past-day-limit');
const shortLimit = speaks(roomGasRules, 'room-gas-past-short-limit');

const foul: FoulGas = { state: 'lost', foulSmell: false, lid: 'loose', likelyPpm: 1, highPpm: 60 };
const under = (id: string, key: string) => {
  return valuesOf(foulGasRules, id)(foul)?.[key];
};
const shown = (id: string, key: string, figure: number) => answers((one: string) => under(id, one), [key, figure]);

export const gasValues: readonly Value[] = [
  {
    name: 'carbon dioxide over a working day',
    at: 'data/gas.csv co2.dayLimitPpm',
    stated: '5,000 ppm',
    source: 'niosh-1994',
    locator: 'NIOSH REL and OSHA PEL',
    step: 1,
    // the air outside has 430 ppm
    holds: answers((rise: number) => dayLimit(room(rise)), [4569.9, false], [4570.1, true]),
  },
  {
    name: 'carbon dioxide over 15 minutes',
    at: 'data/gas.csv co2.shortLimitPpm',
    stated: '30,000 ppm',
    source: 'niosh-1994',
    locator: 'NIOSH REL',
    holds: answers((rise: number) => shortLimit(room(rise)), [29_569.9, false], [29_570.1, true]),
  },
  {
    name: 'carbon dioxide of the air outside',
    at: 'data/gas.csv co2.outsidePpm',
    stated: '430 ppm',
    source: 'memory',
    holds: answers((rise: number) => dayLimit(room(rise)), [4569.9, false], [4570.1, true]),
  },
  {
    name: 'hydrogen sulphide for ten minutes',
    at: 'data/gas.csv hydrogen-sulphide.tenMinuteLimitPpm',
    stated: '10 ppm',
    source: 'malone-rubright-2017',
    locator: 'table 3, NIOSH REL',
    holds: answers(
      (highPpm: number) => speaks(foulGasRules, 'foul-gas-under-the-lid')({ ...foul, highPpm }),
      [9.9, false],
      [10, true],
      [10.1, true],
      [Number.NaN, true],
    ),
  },
  {
    name: 'hydrogen sulphide is judged by its high end',
    at: 'rules/gas.ts foul-gas-under-the-lid',
    stated: 'by the high end of what may be under the lid, not by the likely',
    source: 'our-caution',
    turned: ['batch.highPpm < H2S_LIMITS_PPM.tenMinutes', 'batch.likelyPpm < H2S_LIMITS_PPM.tenMinutes'],
    holds: answers(
      ([likelyPpm, highPpm]: readonly [number, number]) =>
        speaks(foulGasRules, 'foul-gas-under-the-lid')({ ...foul, likelyPpm, highPpm }),
      [[1, 9.9], false],
      [[1, 10], true],
      [[9.9, 10.1], true],
    ),
  },
  {
    name: 'hydrogen sulphide never passed at work',
    at: 'data/gas.csv hydrogen-sulphide.ceilingPpm',
    stated: '20 ppm',
    source: 'osha-hydrogen-sulfide',
    locator: '29 CFR 1910.1000 table Z-2',
    holds: shown('foul-gas-under-the-lid', 'ceilingPpm', 20),
  },
  {
    name: 'hydrogen sulphide that is dangerous at once',
    at: 'data/gas.csv hydrogen-sulphide.dangerPpm',
    stated: '100 ppm',
    source: 'malone-rubright-2017',
    locator: 'table 3, NIOSH IDLH',
    holds: shown('foul-gas-under-the-lid', 'dangerPpm', 100),
  },
  {
    name: 'hydrogen sulphide that the nose no longer tells',
    at: 'data/gas.csv hydrogen-sulphide.smellFailsPpm low',
    stated: '100 ppm',
    source: 'nrc-2009',
    locator: 'chapter 5',
    holds: shown('foul-gas-nose-fails', 'smellFailsPpm', 100),
  },
  {
    name: 'pressure that a closed jar bears',
    at: 'data/gas.csv closed-jar.mostBar low',
    stated: '1 bar above the air outside',
    source: 'memory',
    // 1 atm is 1.01325 bar
    holds: answers((_: string) => Number(JAR_BEARS_ATM.toFixed(5)), ['in atm', 0.98692]),
  },
  ...(
    [
      ['room', 'roomM3', '2 m³', 0.05],
      ['warmth', 'temperatureC', '20 °C', 1],
    ] as const
  ).map(
    ([what, key, stated, step]): Value => ({
      name: `${what} of the cupboard that the gas of a batch is held against`,
      at: `rules/care.ts CUPBOARD.${key}`,
      stated,
      source: 'practice',
      step,
      // 34.226 g of hexose make 0.37996 mol of gas, 9.14 L at 20 °C, 4,570 ppm of 2 m³; with the air outside 5,000 ppm
      holds: answers(
        (hexoseG: number) => speaks(fillAirRules, 'fill-air-the-room')({ hexoseG }),
        [34.15, false],
        [34.3, true],
      ),
    }),
  ),
];
