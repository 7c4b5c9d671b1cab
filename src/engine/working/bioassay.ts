// How the verdict of a bean test came about: the two shares, and the chance of such a difference. The numbers are
// those of scraps/bioassay.ts, handed over; nothing is computed here.

import type { BioassayReading, BioassayVerdict, PotsRead, Sign } from '../scraps/bioassay.ts';
import type { Input, Working } from './working.ts';

const DOUBTS = [
  'small pots see only large harm',
  'beans do not show every weedkiller, and nothing of poison, disease or seeds',
] as const;

/** The workings of a bean test: deformed plants first, then beans that stayed away. @arithmetic handing over */
export function workBioassay(reading: BioassayReading, verdict: BioassayVerdict): readonly Working[] {
  return [
    working('deformed', 'deformed plants', verdict.deformed, [
      ...counts('test pots', reading.test, 'deformedCount', 'germinatedCount'),
      ...counts('control', reading.control, 'deformedCount', 'germinatedCount'),
    ]),
    working('missing', 'beans not come up', verdict.missing, [
      ...counts('test pots', reading.test, 'germinatedCount', 'sownCount'),
      ...counts('control', reading.control, 'germinatedCount', 'sownCount'),
    ]),
  ];
}

const LABELS = { deformedCount: 'deformed', germinatedCount: 'come up', sownCount: 'sown' } as const;

function counts(of: string, pots: PotsRead, some: keyof typeof LABELS, all: keyof typeof LABELS): readonly Input[] {
  return [some, all].map((one) => ({ label: `${of}, ${LABELS[one]}`, value: pots[one], unit: '' }));
}

function working(figure: 'deformed' | 'missing', label: string, sign: Sign, inputs: readonly Input[]): Working {
  return {
    figure: `${figure}.chance`,
    label: `chance of so many ${label} in the test pots, were the lot harmless`,
    unit: '',
    formula:
      'ways to share the marked ones out with as many or more in the test pots ÷ all ways to share them out (exact test, one-sided); 0.05 or less counts as a difference',
    value: sign.chance,
    inputs,
    sources: ['memory', 'wsu-bioassay'],
    doubts: DOUBTS,
  };
}
