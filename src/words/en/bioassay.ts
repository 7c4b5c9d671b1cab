// The bean test in plain English: the card that is printed, what the pots showed with the arithmetic, and one
// text for each verdict. The verdict itself is the engine's. A clear test is never called more than a good sign.

import type { Values } from '#engine/rules/rule.ts';
import { BIOASSAY, type BioassayReading, type BioassayReason, type BioassayVerdict } from '#engine/scraps/bioassay.ts';
import { figure, withUnit } from '../figures.ts';

const { leastPotCount: pots, seedsPerPotCount: seeds, leavesCount: leaves, leastDays, mostDays } = BIOASSAY;

/** The printed card: what to do, in order. Dates are written as the grower's own day names them. */
export function bioassayCard(days: {
  readonly sownOn: string;
  readonly readFrom: string;
  readonly readBy: string;
}): readonly string[] {
  return [
    'Take handfuls from ten places in the lot, chop and mix them. Keep the rest apart and dry.',
    `Fill ${pots} pots or more with half lot, half clean potting mix, by volume. Mark them T.`,
    `Fill ${pots} pots or more with clean potting mix alone. Mark them C.`,
    'Stand each pot in a saucer of its own, so that no water runs from one to another.',
    `Sow ${seeds} beans in each pot, all from one packet. Sown on: ${days.sownOn}.`,
    'Stand all pots in one warm, light place. Water alike, from above, with the same water.',
    `Read between ${days.readFrom} and ${days.readBy}, once the C pots have ${leaves} true leaves.`,
    'Count in T and in C: beans sown, beans up, and plants with cupped, fern-like or twisted leaves.',
    'Do not eat the beans of the T pots. When done, they go where the lot goes.',
  ];
}

/** What the published protocol leaves out: it was written for compost and manure, not for scraps that still rot. */
export const bioassayNotes: readonly string[] = [
  'Fresh scraps rot in the pot, and rot alone harms beans. Let the lot dry, or rot down in a pile of its own until it no longer heats or smells, then test it (our caution, no source: the protocol is for compost and manure).',
  'If you have scraps of the same kind that surely were not treated, rot them down beside it and put half of them in the C pots: then only the lot differs.',
];

const reasons: Readonly<Record<BioassayReason, string>> = {
  deformed: 'Cupped, fern-like or twisted leaves stand in the test pots, more than chance would bring.',
  'not-come-up': 'Far fewer beans came up in the test pots than chance would bring.',
  'counts-do-not-fit':
    'The counts do not fit each other: sown, up and deformed are whole numbers, each no larger than the one before.',
  'too-few-pots': `Fewer than ${pots} pots of each kind with ${seeds} beans each.`,
  'control-did-not-come-up': 'Fewer than 8 in 10 of the control came up: the beans or the place were at fault.',
  'control-deformed': 'More than 1 in 10 of the control is deformed: something other than the lot harms them.',
  'read-too-early': `Read before day ${leastDays}, or before the control had ${leaves} true leaves.`,
  'some-deformed': 'Some in the test pots are deformed, too few to tell from chance: sow again with twice the pots.',
  'fewer-came-up': 'Fewer came up than in the control, and a bean that stays away shows no leaf.',
};

/** What the pots showed: each reason, then the arithmetic behind it. */
export function bioassaySays({ test, control }: BioassayReading, verdict: BioassayVerdict): readonly string[] {
  const said = verdict.reasons.map((reason) => reasons[reason]);
  if (verdict.reasons.includes('counts-do-not-fit')) return said;
  return [
    ...said,
    `Deformed: ${test.deformedCount} of ${test.germinatedCount} in the test pots, ${control.deformedCount} of ${control.germinatedCount} in the control. ${byChance(verdict.deformed.chance)}`,
    `Up: ${test.germinatedCount} of ${test.sownCount} in the test pots, ${control.germinatedCount} of ${control.sownCount} in the control. ${byChance(verdict.missing.chance)}`,
    Number.isFinite(verdict.leastToShowCount)
      ? `With so many plants, ${verdict.leastToShowCount} deformed or more would have counted.`
      : 'With so few plants, no number of deformed ones would have counted.',
  ];
}

function byChance(chance: number): string {
  if (!Number.isFinite(chance)) return 'No chance can be worked out from that.';
  const percent = chance * 100;
  const shown = percent < 0.1 ? `less than ${withUnit(0.1, '%', 1)}` : withUnit(percent, '%', percent < 10 ? 1 : 0);
  return `Chance alone would bring as much or more in ${shown} of such tests; 5 or less counts as a difference.`;
}

const share = (value: Values[string] | undefined) =>
  typeof value === 'number' && Number.isFinite(value) ? withUnit(value * 100, '%', 0) : 'an unknown share';

/** One text for each rule about a bean test that was read. */
export const bioassayCautions: Readonly<Record<string, (values: Values) => string>> = {
  'bean-test-affected': (v) =>
    `The beans say no: ${share(v.deformedTestFraction)} deformed in the test pots against ${share(v.deformedControlFraction)} in the control, ${share(v.missingTestFraction)} not up against ${share(v.missingControlFraction)}. Keep the lot out of pail and heap and off every bed.`,
  'bean-test-repeat': () =>
    `The test shows neither harm nor its absence. The lot stays set aside; sow again with at least ${pots} pots of each kind, better ${2 * pots}, and read after ${figure(leastDays)} to ${withUnit(mostDays, 'days', 0)}.`,
  'bean-test-clear': () =>
    'No harm seen in the beans: the lot may leave the set-aside. That is a good sign and no proof: beans do not show every weedkiller, and nothing of poison, disease or weed seeds.',
};

/** What may be done in place of what the test stops. */
export const bioassayInstead: Readonly<Record<string, string>> = {
  'bean-test-affected':
    'Leave the lot where it grew, or keep it in a pile of its own away from beds; ask your waste authority before it goes into a collection that makes compost.',
};
