// Gas in plain English: what a lid means, litres a day, pressure behind a lid, the air of a room, and how to open a
// batch that has gone foul. Numbers come from the engine; nothing is computed here but units.

import type { Range } from '#engine/quantity/range.ts';
import type { Values } from '#engine/rules/rule.ts';
import type { LidKind } from '#engine/souring/gas/lid.ts';
import type { DayOfGas } from '#engine/souring/gas/output.ts';
import { barOfAtm } from '#engine/souring/gas/pressure.ts';
import type { PressureOn } from '#engine/souring/gas/sealed.ts';
import { figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const bar = (atm: number) => withUnit(barOfAtm(atm), 'bar', Math.abs(barOfAtm(atm)) < 0.1 ? 2 : 1);
const whole = (value: number) => figure(value, 0).replace(/\B(?=(\d{3})+$)/g, ',');

/** Share of the air: ppm to two digits, since more would say too much, or to those that tell it from its limit; and per cent. */
function ppm(value: number, limit = value): string {
  if (!Number.isFinite(value)) return 'an unknown share';
  const digits = [2, 3, 4, 5, 6].find((count) => value.toPrecision(count) !== limit.toPrecision(count)) ?? 2;
  const rounded = value >= 100 ? Number(value.toPrecision(digits)) : Math.round(value);
  return `${whole(rounded)}\u00a0ppm (${figure(rounded / 10000)}\u00a0%)`;
}

const FRESH_AIR =
  'If anyone feels ill, get into fresh air at once and call the emergency number. Never go back in after someone who has fallen: call for help.';

/** What each lid means, in a sentence. */
export const lidSentences: Readonly<Record<LidKind, string>> = {
  tight: 'Tight: no gas gets out and pressure builds. Not to be used.',
  vent: 'Vented, by a valve or a water trap: gas gets out, hardly any air or insect gets in. Check that it is not clogged.',
  loose: 'Laid on loose: gas gets out, a little air gets in, and small flies may. A cloth under it keeps them out.',
  cloth: 'A cloth tied over: gas gets out and air gets in, so a film may grow; insects stay out while it is whole.',
  none: 'Open: gas gets out, air gets in, so a film may grow, and so do insects. Tie a cloth over it.',
};

/** One sentence or two for each rule about gas. */
export const gasCautions: Readonly<Record<string, (values: Values) => string>> = {
  'gas-behind-a-tight-lid': (v) => {
    const most = n(v, 'mostPressureAtm');
    const push = v.forceKgf === undefined || !Number.isFinite(n(v, 'forceKgf'));
    const on = push
      ? ''
      : `, a push of ${withUnit(n(v, 'forceKgf'), 'kg', 0)} on a ${withUnit(n(v, 'lidDiameterM') * 100, 'cm', 0)} lid`;
    const why = Number.isFinite(most)
      ? `Nothing could get out, and pressure would come to ${bar(most)} above the air outside${on}.`
      : 'Nothing could get out, and how far pressure would climb is not known.';
    const when =
      v.pastDay === undefined ? '' : ` From day ${figure(n(v, 'pastDay'), 0)} it passes what an ordinary jar may bear.`;
    return `Not under a tight lid. Lay the lid on loose or fit a vent. ${why}${when}`;
  },
  'room-gas-past-short-limit': (v) =>
    `Not in this room: carbon dioxide could come to ${ppm(n(v, 'mostPpm'), n(v, 'limitPpm'))}, more than the ${ppm(n(v, 'limitPpm'), n(v, 'mostPpm'))} that workplaces allow for 15 minutes. Stand it outdoors or in an airy place. Before you go in, open the door wide and wait. ${FRESH_AIR}`,
  'room-gas-past-day-limit': (v) => {
    const room = Number.isFinite(n(v, 'leastRoomM3'))
      ? `, or a room of ${withUnit(n(v, 'leastRoomM3'), 'm³', 1)} aired as now`
      : '';
    return `Air the room or move the batch: carbon dioxide could come to ${ppm(n(v, 'mostPpm'), n(v, 'limitPpm'))}, more than the ${ppm(n(v, 'limitPpm'), n(v, 'mostPpm'))} that workplaces allow over a day. It takes ${figure(n(v, 'leastAirChangesPerH'))} changes of air an hour here${room}. Nobody sleeps in that room.`;
  },
  'room-gas-not-known': () =>
    'How much carbon dioxide gathers in this room is not known. Keep a window or door open, or stand the batch outdoors.',
  'foul-closed-open-it-outdoors': (v) =>
    `Do not open it indoors, and not alone. Take it outdoors still closed, keep children and the dog away, stand upwind and work at arm’s length. Never lean over it. ${v.bulged ? 'The lid bulges: stand aside and ease one clip until it stops hissing. ' : 'If the lid is clipped, stand aside and ease one clip first. '}Leave it open for an hour before you tip it. ${FRESH_AIR}`,
  'foul-open-keep-off': () =>
    `Do not lean over it, and do not stir it indoors. Tip it outdoors, upwind, not alone, with children and the dog away. ${FRESH_AIR}`,
  'foul-gas-under-the-lid': (v) =>
    Number.isFinite(n(v, 'highPpm'))
      ? `The gas under the lid could hold about ${ppm(n(v, 'likelyPpm'))} of hydrogen sulphide, up to ${ppm(n(v, 'highPpm'))}: an estimate, not a measurement. The ceiling for workplaces is ${whole(n(v, 'ceilingPpm'))}\u00a0ppm, and ${whole(n(v, 'dangerPpm'))}\u00a0ppm counts as dangerous to life at once.`
      : `How much hydrogen sulphide stands under the lid is not known. Act as if it were more than the ${whole(n(v, 'dangerPpm'))}\u00a0ppm that counts as dangerous to life at once.`,
  'foul-gas-nose-fails': (v) =>
    `Do not trust your nose: from about ${whole(n(v, 'smellFailsPpm'))}\u00a0ppm it stops smelling hydrogen sulphide. A smell that goes away is no sign that the gas has.`,
};

/** Gas of the busiest day, in sentences. */
export function sayGas(most: DayOfGas | undefined): readonly string[] {
  const quiet = 'Bacteria that make acid alone make no gas: silence does not mean failure.';
  if (most === undefined) return [quiet];
  if (!Number.isFinite(most.gasL)) return ['How much gas it makes is not known.', quiet];
  return [
    `Most gas: about ${withUnit(most.gasL, 'L', 1)} from day ${figure(most.day, 0)} to day ${figure(most.day + 1, 0)}.`,
    quiet,
  ];
}

/** What closing it would come to, at the end and on a hot day, in sentences. */
export function sayClosed(closed: {
  readonly last: PressureOn;
  readonly hot: { readonly temperatureC: number; readonly pressureAtm: number };
}): readonly string[] {
  const { last, hot } = closed;
  if (!Number.isFinite(last.pressureAtm)) return ['Pressure behind a closed lid is not known.'];
  return [
    `Closed, it would stand at ${bar(last.pressureAtm)} above the air outside on day ${figure(last.day, 0)}.`,
    `The same vessel at ${withUnit(hot.temperatureC, '°C', 0)}, with no more souring: ${bar(hot.pressureAtm)}. Warmth alone drives gas out of the liquid.`,
  ];
}

/** The air of the room, in sentences. */
export function sayRoom(air: {
  readonly mostPpm: number;
  readonly dayLimitPpm: number;
  readonly leastAirChangesPerH: number;
}): readonly string[] {
  if (!Number.isFinite(air.mostPpm)) return ['Carbon dioxide in this room is not known.'];
  return [
    `Carbon dioxide in this room, at most: about ${ppm(air.mostPpm, air.dayLimitPpm)}. Workplaces allow ${ppm(air.dayLimitPpm, air.mostPpm)} over a day; for children and the sick no limit is set here.`,
    `To keep to that limit: ${figure(air.leastAirChangesPerH)} changes of air an hour. It is heavier than air and lies low.`,
  ];
}

/** What may stand in the gas room of a foul batch, in one sentence. */
export function sayFoulGas(foulPpm: Range): string {
  return `Hydrogen sulphide in the gas room, if it has gone foul under a lid: about ${ppm(foulPpm.likely)}, from ${ppm(foulPpm.low)} to ${ppm(foulPpm.high)}. An estimate, not a measurement.`;
}
