// What to say about gas: a lid that lets none out, a closed room where a batch gasses, and the gas room of a batch
// that has gone foul. The figures come from souring/gas; bottles and the lid at filling are vessel.ts.

import { H2S_LIMITS_PPM } from '../souring/gas/hydrogen-sulphide.ts';
import type { LidKind } from '../souring/gas/lid.ts';
import { forceKgf } from '../souring/gas/pressure.ts';
import { CO2_LIMITS_PPM, type GasInRoom, leastAirChangesPerH, leastRoomM3, mostPpm } from '../souring/gas/room.ts';
import type { Rule, Values } from './rule.ts';

/** A vessel as the course foretells it behind its lid. */
export interface LidGas {
  /** Undefined: not asked here, so nothing is said. */
  readonly lid: LidKind | undefined;
  /** Most pressure above the air outside, if nothing gets out; NaN when not known. */
  readonly mostPressureAtm: number;
  /** Day it passes what a jar may bear; undefined when it does not in the days foretold. */
  readonly pastDay?: number | undefined;
  readonly lidDiameterM?: number | undefined;
}

/** A lid that lets no gas out is never right, however little is foretold. */
export const lidGasRules: readonly Rule<LidGas>[] = [
  {
    id: 'gas-behind-a-tight-lid',
    level: 'stop',
    source: 'sander-2015',
    locator: 'carbon dioxide',
    looksAt: 'the lid of a batch whose course is foretold: tight',
    speaksFor: 'general',
    override: 'none',
    when: ({ lid, mostPressureAtm, pastDay, lidDiameterM }) => {
      if (lid !== 'tight') return false;
      return {
        mostPressureAtm,
        ...(pastDay !== undefined && { pastDay }),
        ...(lidDiameterM !== undefined && {
          lidDiameterM,
          forceKgf: forceKgf({ pressureAtm: mostPressureAtm, lidDiameterM }),
        }),
      };
    },
  },
];

/** A room on the day of the most gas, and all the gas of the batch. */
export interface RoomGas extends GasInRoom {
  readonly totalGasL: number;
}

function roomValues(room: RoomGas, limitPpm: number): Values {
  return {
    gasLPerDay: room.gasLPerDay,
    roomM3: room.roomM3,
    airChangesPerH: room.airChangesPerH,
    mostPpm: mostPpm(room),
    limitPpm,
    leastAirChangesPerH: leastAirChangesPerH(room, CO2_LIMITS_PPM.day),
    leastRoomM3: leastRoomM3(room, CO2_LIMITS_PPM.day),
  };
}

/** CO2 in a cupboard or shed on the day of the most gas. What is not known speaks by itself. */
export const roomGasRules: readonly Rule<RoomGas>[] = [
  {
    id: 'room-gas-past-short-limit',
    level: 'stop',
    source: 'niosh-1994',
    locator: 'NIOSH REL, 15 minutes',
    looksAt: 'carbon dioxide in the room against the 15-minute limit of workplaces',
    speaksFor: ['us'],
    override: 'none',
    when: (room) => (mostPpm(room) > CO2_LIMITS_PPM.short ? roomValues(room, CO2_LIMITS_PPM.short) : false),
  },
  {
    id: 'room-gas-past-day-limit',
    level: 'hold',
    source: 'niosh-1994',
    locator: 'NIOSH REL and OSHA PEL',
    looksAt: 'carbon dioxide in the room against the day limit of workplaces',
    speaksFor: ['us'],
    when: (room) => {
      const ppm = mostPpm(room);
      return ppm > CO2_LIMITS_PPM.day && ppm <= CO2_LIMITS_PPM.short ? roomValues(room, CO2_LIMITS_PPM.day) : false;
    },
  },
  {
    id: 'room-gas-not-known',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a room or its airing that was not told',
    speaksFor: 'general',
    when: (room) => (Number.isNaN(mostPpm(room)) ? {} : false),
  },
];

/** A batch that has, or may have, gone foul, before its lid comes off. */
export interface FoulGas {
  readonly state?: string | undefined;
  /** An egg or sewage smell was noted. */
  readonly foulSmell: boolean;
  /** Not told counts as closed. */
  readonly lid?: LidKind | undefined;
  /** The lid bulges or is clipped down. */
  readonly lidBulged?: boolean | undefined;
  /** High end of what may stand in the gas room; NaN when not known. */
  readonly highPpm: number;
  readonly likelyPpm: number;
}

/** Lids under which the gas room is not the open air. */
const CLOSES: readonly LidKind[] = ['tight', 'vent', 'loose'];
const isFoul = ({ state, foulSmell }: FoulGas) => state === 'lost' || foulSmell;
const isClosed = ({ lid }: FoulGas) => lid === undefined || CLOSES.includes(lid);

/** Hydrogen sulphide: open a foul batch as if it were there. */
export const foulGasRules: readonly Rule<FoulGas>[] = [
  {
    id: 'foul-closed-open-it-outdoors',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'a lost or foul batch under a lid that closes, or that was not told',
    speaksFor: 'general',
    override: 'none',
    when: (batch) => (isFoul(batch) && isClosed(batch) ? { bulged: batch.lidBulged === true } : false),
  },
  {
    id: 'foul-open-keep-off',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a lost or foul batch under a cloth or no lid',
    speaksFor: 'general',
    when: (batch) => (isFoul(batch) && !isClosed(batch) ? {} : false),
  },
  {
    id: 'foul-gas-under-the-lid',
    level: 'caution',
    source: 'malone-rubright-2017',
    locator: 'table 3',
    looksAt: 'hydrogen sulphide reckoned under the lid of a lost or foul batch',
    speaksFor: ['us'],
    when: (batch) => {
      if (!isFoul(batch) || !isClosed(batch) || batch.highPpm < H2S_LIMITS_PPM.tenMinutes) return false;
      const { likelyPpm, highPpm } = batch;
      return { likelyPpm, highPpm, dangerPpm: H2S_LIMITS_PPM.danger, ceilingPpm: H2S_LIMITS_PPM.ceiling };
    },
  },
  {
    id: 'foul-gas-nose-fails',
    level: 'caution',
    source: 'nrc-2009',
    locator: 'chapter 5, hydrogen sulfide',
    looksAt: 'a lost or foul batch under a lid: what a nose can tell',
    speaksFor: 'general',
    when: (batch) => (isFoul(batch) && isClosed(batch) ? { smellFailsPpm: H2S_LIMITS_PPM.smellFails } : false),
  },
];
