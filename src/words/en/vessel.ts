// Lids, bottles, caps and lifting in plain English. Each sentence says what to do first, then why.

import type { Values } from '#engine/rules/rule.ts';
import { besideLimit, figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);

/** What to do in place of a closed bottle; the same in every sentence about one. */
const INSTEAD =
  'Use a plastic bottle with a venting cap, or leave it in the pail under a loose lid until gas has stopped for 3 days.';

/** Why: the sugar left and what it could do. */
function because(v: Values): string {
  if (!Number.isFinite(n(v, 'sugarLeftGPerL'))) {
    return 'How much sugar is left is not known, so it counts as too much.';
  }
  const sugar = `${withUnit(n(v, 'sugarLeftGPerL'), 'g/L')} of sugar left`;
  return `${sugar} could push up to ${withUnit(n(v, 'pressureAtm'), 'atm', 1)} at ${withUnit(n(v, 'temperatureC'), '°C')} if yeast turns all of it, and more on a warmer day.`;
}

/** One sentence or two for each rule about vessels. */
export const vesselCautions: Readonly<Record<string, (values: Values) => string>> = {
  'lid-tight-no-vent': (v) =>
    `The fill cannot be finished under a tight lid with no vent. Lay the lid on loose or fit a vent. ${v.example ? 'For example, in' : 'In'} a ${withUnit(n(v, 'vesselL'), 'L')} vessel with ${withUnit(n(v, 'liquidL'), 'L')} in it, about ${withUnit(n(v, 'sugarG'), 'g')} of sugar turned by yeast makes ${withUnit(n(v, 'pressureAtm'), 'atm', 2)} and pushes with ${withUnit(n(v, 'forceKgf'), 'kg', 0)} on a ${withUnit(n(v, 'lidDiameterM') * 100, 'cm', 0)} lid.`,
  'bottle-made-for-drink': () =>
    'Never in a bottle made for drinks, washed or relabelled. People drink from them by mistake: that is why poison centres ask that nothing else be kept in them. Use a bottle that no one could take for a drink, and keep it away from children. If someone swallows any, call the local poison line.',
  'bottle-of-glass': (v) => `Never in glass while it can still gas. ${INSTEAD} ${because(v)}`,
  'bottle-cap-turned-down': (v) => `Never turn the cap down while it can still gas. ${INSTEAD} ${because(v)}`,
  'bottle-glass-or-tight-cap-later': (v) =>
    `Leave the cap loose or use one that vents, even with ${withUnit(n(v, 'sugarLeftGPerL'), 'g/L')} of sugar or less left, and plastic rather than glass. Even that could push up to ${withUnit(n(v, 'pressureAtm'), 'atm', 1)} in a closed bottle.`,
  'bottle-still-gassing': (v) =>
    `Check that the cap vents freely and stand the bottle upright, or leave the liquid in the pail under a loose lid until gas has stopped for 3 days. ${because(v)}`,
  'empty-it-with-a-jug': (v) =>
    `The batch weighs about ${besideLimit(n(v, 'massKg'), n(v, 'mostKg'), 'kg', 0)}. Empty it with a jug where it stands; do not lift more than ${besideLimit(n(v, 'mostKg'), n(v, 'massKg'), 'kg', 0)}.`,
};

/** What a closed bottle would come to, in one sentence. */
export function sayPressure(pressure: {
  readonly upToAtm: number | null;
  readonly heterolacticAtm: number | null;
  readonly temperatureC: number;
}): string {
  if (pressure.upToAtm === null || pressure.heterolacticAtm === null) {
    return 'Pressure in a closed bottle is not known, because the sugar left is not known.';
  }
  return `Closed, this bottle would reach up to ${withUnit(pressure.upToAtm, 'atm', 1)} above the air outside at ${withUnit(pressure.temperatureC, '°C')} if yeast turned all the sugar left, about ${figure(pressure.heterolacticAtm, 1)} if souring bacteria did.`;
}
