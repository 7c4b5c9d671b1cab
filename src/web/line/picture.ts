// From the line as the task gives it to the picture that is drawn: each stretch gets its words, its litres and the
// sheet it leads to.

import type { Manner } from '#engine/quantity/format.ts';
import { concentrateFraction } from '#engine/quantity/ratio.ts';
import { material } from '#engine/tables/index.ts';
import type { LineView } from '#tasks/plot/line.ts';
import {
  bedsSaid,
  bottlesSaid,
  heapSaid,
  line,
  noPeg,
  pailName,
  pegSaid,
  roundSaid,
  scrapsSaid,
  takesSaid,
} from '#words/en/line.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import type { LinePicture } from '../drawings/line-picture.ts';

/** The picture of the line, in the units of whoever looks. */
export function pictureOf(view: LineView, manner: Manner): LinePicture {
  const asked = { manner, today: view.today };
  const row = view.scraps.material === undefined ? undefined : material(view.scraps.material);
  const takes = takesSaid(view.round, asked);
  return {
    title: line.drawing,
    pailName,
    scraps: {
      ...scrapsSaid(view.scraps, manner),
      to: '/weigh-in',
      inL: view.scraps.inL,
      asideL: view.scraps.asideL,
      hatch: (row && hatchOf(row)) ?? 'trimmings',
    },
    pegs: view.pegs.map((peg) => ({
      ...pegSaid(peg, view.today),
      to: `/peg/${peg.batch}`,
      state: peg.state,
      shape: peg.basin.shape,
      presentL: peg.presentL,
      usableL: peg.usableL,
    })),
    noPeg: { ...noPeg, to: '/fill' },
    bottles: {
      ...bottlesSaid(view.bottles, asked),
      to: '/shelf',
      each: view.bottles.groups.flatMap(({ eachL, sizeL }) => eachL.map((litres) => ({ litres, sizeL }))),
      takes:
        takes === undefined || view.round.dueConcentrateL === undefined
          ? undefined
          : { text: takes, litres: view.round.dueConcentrateL },
    },
    can: {
      ...roundSaid(view.round, asked),
      to: '/can',
      canL: view.canL ?? 0,
      concentrateFraction: view.round.ratio === undefined ? 0 : concentrateFraction(view.round.ratio),
    },
    beds: { ...bedsSaid(view.beds, manner), to: '/pick', strips: view.beds.strips },
    heap: heapSaid(view.heap, view.today),
    scale: {
      beds: line.bedScale,
      oneMetre: line.oneMetre,
      things: line.thingScale,
      halfMetre: line.halfMetre,
      fifthMetre: line.fifthMetre,
    },
    toHeap: line.toHeap,
    andMore: line.andMore,
  };
}
