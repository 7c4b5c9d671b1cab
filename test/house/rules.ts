// What an auditor asks of every rule: what it looks at, whom it speaks for, whether it gives way, and what may be
// done in place of what it stops.

import type { Rule } from '#engine/rules/rule.ts';

export type AuditedRule = Pick<Rule<never>, 'id' | 'level' | 'source' | 'looksAt' | 'speaksFor'> & {
  readonly override?: string | undefined;
};

const PLACES = ['us', 'gb', 'eu'];
const OVERRIDES = ['none', 'reason'];

/** Whose codes a source is: its figures have force there and nowhere else. */
const CODES: readonly (readonly [source: RegExp, place: 'us' | 'gb' | 'eu'])[] = [
  [/^cfr-/, 'us'],
  [/^nosb-/, 'us'],
  [/^niosh-/, 'us'],
  [/^apha-/, 'gb'],
];

/** Stops that no reason may ever override: people would eat, drink, breathe it, or be hit by it. There may be more. */
export const NEVER_OVERRIDDEN: readonly string[] = [
  // eaten raw and sprayed
  'leaf-eaten-raw',
  // manure or meat on leaves
  'eating-animal-on-leaves',
  // lost, unknown or unnamed
  ...['batch-lost', 'batch-unknown', 'batch-no-peg', 'strained-batch-lost', 'tip-nothing-of-it-on-a-bed'],
  // a sealed vessel
  ...['lid-tight-no-vent', 'gas-behind-a-tight-lid', 'rescue-never-seal', 'bottle-of-glass', 'bottle-cap-turned-down'],
  // poison, disease, and what nobody knows
  ...['rhubarb-leaves', 'diseased-haulm', 'not-in-the-liquid'],
  // a bottle made for drinks
  'bottle-made-for-drink',
  // manure, meat, plates and what animals leave
  ...['raw-manure', 'meat-fish-dairy', 'cooked-food', 'pet-waste', 'strained-lot-not-for-liquid'],
  // gas that a person breathes
  ...['room-gas-past-short-limit', 'foul-closed-open-it-outdoors'],
  // weedkiller, which a bean test alone clears
  ...['weedkiller-treated', 'tip-untested-clippings-not-into-a-food-heap'],
  // sums that have no answer: there is no such dose
  ...['aim-too-weak', 'aim-water-too-salty'],
  // what a slip says of the plate, of weedkiller and of the site's own rule
  ...['slip-off-the-plate', 'slip-weedkiller', 'slip-site-forbids', 'bean-test-affected'],
];

/** One line for each thing that is missing or does not fit together. */
export function auditFaults({
  rules,
  instead,
}: {
  readonly rules: readonly AuditedRule[];
  readonly instead: Readonly<Record<string, string>>;
}): readonly string[] {
  const stops = new Set(rules.filter(({ level }) => level === 'stop').map(({ id }) => id));
  return [
    ...rules.flatMap(faultsOf),
    ...[...stops]
      .filter((id) => !/\w.*\.$/.test(instead[id] ?? ''))
      .map((id) => `stop ${id} says nothing to do instead`),
    ...Object.keys(instead)
      .filter((id) => !stops.has(id))
      .map((id) => `"instead" for ${id}, which is no stop`),
    ...NEVER_OVERRIDDEN.filter((id) => rules.some((rule) => rule.id === id && rule.override !== 'none')).map(
      (id) => `${id} may be overridden`,
    ),
  ];
}

function faultsOf({ id, level, source, looksAt, speaksFor, override }: AuditedRule): readonly string[] {
  const faults: string[] = [];
  if (!/\w{2}/.test(looksAt)) faults.push(`${id} does not say what it looks at`);
  if (level === 'stop' && !OVERRIDES.includes(override ?? ''))
    faults.push(`stop ${id} does not say whether it gives way`);
  if (level !== 'stop' && override !== undefined) faults.push(`${id} is no stop and has an override`);
  if (speaksFor !== 'general' && (speaksFor.length === 0 || !speaksFor.every((place) => PLACES.includes(place)))) {
    faults.push(`${id} speaks for no place`);
  }
  const code = CODES.find(([pattern]) => pattern.test(source));
  if (code !== undefined && (speaksFor === 'general' || !speaksFor.includes(code[1]))) {
    faults.push(`${id} rests on a code of ${code[1]} and does not speak for it`);
  }
  return faults;
}
