// The line lying, for a wide screen: words above, drawings on one bench beneath them, the heap's dotted branch along
// the bottom. More than two pegs stand in rows of two on further bench lines under the first.

import { flowPath, walked, wrapped } from './line-geometry.ts';
import { type Box, type LineLayout, type LinePicture, type PegPlace, type Words, wordsHeight } from './line-picture.ts';
import {
  axesIn,
  bottlesAt,
  CAN_REACH,
  LEAST_SPAN_PX,
  pairs,
  scrapsAt,
  sizesFor,
  standAt,
  takesWidth,
} from './line-sizes.ts';
import { rimY } from './vessel-geometry.ts';

const LETTER_PX = 9.6;
const HIGH_PX = 150;
/** Where each stretch begins, as a share of the width. */
const AT = { scraps: 0, pail: 0.178, bottle: 0.49, can: 0.665, bed: 0.792 } as const;
const BETWEEN_PX = 22;
const DROP_PX = 28;
const ARROW_PX = 44;

export function lyingLine(picture: LinePicture, width: number): LineLayout {
  const x = {
    scraps: 0,
    pail: Math.round(AT.pail * width),
    bottle: Math.round(AT.bottle * width),
    can: Math.round(AT.can * width),
    bed: Math.round(AT.bed * width),
  };
  const wide = {
    scraps: x.pail - BETWEEN_PX,
    pail: x.bottle - x.pail - BETWEEN_PX,
    bottle: x.can - x.bottle - BETWEEN_PX,
    can: x.bed - x.can - BETWEEN_PX,
    bed: width - x.bed - 4,
  };
  const words = (
    at: { readonly x: number; readonly y: number; readonly wide: number },
    said: { name?: string; figure?: string; notes: readonly string[]; hand?: string | undefined },
  ): Words => ({
    x: at.x,
    y: at.y,
    name: said.name,
    figure: said.figure,
    notes: said.notes.flatMap((note) => wrapped(note, Math.floor(at.wide / LETTER_PX))),
    hand: said.hand,
  });
  const manyRows = picture.pegs.length > 2;
  const lanes = manyRows ? 18 : 0;
  const sizes = sizesFor(picture, {
    scrapsPx: wide.scraps - 10,
    pegsPx: wide.pail - 2 * lanes - 20,
    bottlesPx: wide.bottle - 6,
    canPx: wide.can - 10,
    highPx: HIGH_PX,
  });
  const { scale } = sizes;
  const rows = pairs(picture.pegs);
  const half = (wide.pail - lanes) / 2;
  const pegWords = (y: number, i: number, peg: LinePicture['pegs'][number]): Words =>
    words(
      { x: x.pail + lanes + i * half, y, wide: picture.pegs.length === 1 ? wide.pail : half - 14 },
      { notes: [peg.note], hand: peg.hand },
    );
  const pegWordsHigh = (block: Words) => 32 + block.notes.length * 23 + (block.hand === undefined ? 0 : 25);

  const blocks = {
    scraps: words({ x: 0, y: 0, wide: wide.scraps }, picture.scraps),
    bottle: words({ x: x.bottle, y: 0, wide: wide.bottle }, picture.bottles),
    can: words({ x: x.can, y: 0, wide: wide.can }, picture.can),
    bed: words({ x: x.bed, y: 0, wide: wide.bed }, picture.beds),
  };
  const pail: Words = words(
    { x: x.pail, y: 0, wide: wide.pail },
    { name: picture.pailName, notes: picture.pegs.length > 0 ? [] : picture.noPeg.notes },
  );
  const firstPegs = (rows[0] ?? []).map((peg, i) => pegWordsHigh(pegWords(46, i, peg)) + 46);
  const wordsBottom = Math.max(...Object.values(blocks).map(wordsHeight), ...firstPegs, 130);
  const laneY = wordsBottom + 18;
  const shelf = bottlesAt(picture, scale, { x: x.bottle + 2, width: wide.bottle - 4 });
  const shelfHigh = shelf.rows[0]?.length ? shelf.rows.length * (shelf.rowHeight + 8) : 40;
  const firstHigh = Math.max(
    ...(rows[0] ?? []).map(({ shape }) => shape.heightM * scale.pxPerM),
    sizes.heap?.height ?? 0,
    sizes.sack?.height ?? 0,
    sizes.can.height * CAN_REACH.high,
    shelfHigh,
    90,
  );
  const benchY = laneY + ARROW_PX + firstHigh;
  const flows: string[] = [];
  const waitingFlows: string[] = [];
  const tips: { x: number; y: number; way: 'down' | 'left' | 'right' }[] = [];
  const benches = [`M0 ${benchY}H${x.bed - 16}`];
  const lots = scrapsAt(sizes, 4, benchY);
  const heapTop = benchY - (sizes.heap?.height ?? sizes.sack?.height ?? 0);

  // pegs, row beneath row
  const pegs: PegPlace[] = [];
  let floorY = benchY;
  let rowTop = 46;
  const outLane = x.bottle - BETWEEN_PX / 2 - 4;
  const inLane = x.pail + 4;
  rows.forEach((pair, row) => {
    const blocksHere = pair.map((peg, i) => pegWords(rowTop, i, peg));
    if (row > 0) {
      const high = Math.max(...pair.map(({ shape }) => shape.heightM * scale.pxPerM));
      floorY = rowTop + Math.max(...blocksHere.map(pegWordsHigh)) + ARROW_PX + high;
      benches.push(`M${x.pail} ${floorY}H${outLane + 8}`);
    }
    const axes = axesIn(pair, scale, { x: x.pail + lanes, width: wide.pail - 2 * lanes });
    pair.forEach((peg, i) => {
      const axisX = axes[i] ?? x.pail + half;
      const stand = standAt(peg, scale, { axisX, floorY });
      const block = blocksHere[i] as Words;
      pegs.push({
        peg,
        stand,
        words: block,
        hit: { x: block.x - 6, y: rowTop - 4, width: half - 12, height: Math.max(68, pegWordsHigh(block)) },
      });
      const tipY = rimY(stand) - 5;
      tips.push({ x: axisX, y: tipY, way: 'down' });
      const inY = row === 0 ? laneY : tipY - ARROW_PX / 2;
      const over: [number, number][] =
        row === 0
          ? []
          : [
              [inLane, laneY],
              [inLane, inY],
            ];
      flows.push(flowPath([[lots.middleX, heapTop], [lots.middleX, laneY], ...over, [axisX, inY], [axisX, tipY - 10]]));
      flows.push(
        flowPath([
          [axisX, floorY],
          [axisX, floorY + DROP_PX],
          [outLane, floorY + DROP_PX],
          [outLane, laneY],
        ]),
      );
    });
    rowTop = floorY + DROP_PX + 18;
  });
  const pegsBottom = rows.length > 0 ? floorY + DROP_PX : benchY;

  // bottles
  const each = shelf.rows.flatMap((row, i) =>
    row.map((bottle) => ({ ...bottle, y: benchY - (shelf.rows.length - 1 - i) * (shelf.rowHeight + 8) })),
  );
  const firstRow = shelf.rows[0] ?? [];
  const shelfWide = firstRow.length > 0 ? (firstRow.at(-1)?.x ?? 0) + (firstRow.at(-1)?.width ?? 0) - x.bottle : 80;
  const bottleAxis = x.bottle + Math.max(24, shelfWide / 2);
  const bottleTip = benchY - shelfHigh + 2;
  if (rows.length > 0)
    flows.push(
      flowPath([
        [outLane, laneY + 12],
        [outLane, laneY],
        [bottleAxis, laneY],
        [bottleAxis, bottleTip - 10],
      ]),
    );
  else
    waitingFlows.push(
      flowPath([
        [lots.middleX, heapTop],
        [lots.middleX, laneY],
        [bottleAxis, laneY],
        [bottleAxis, bottleTip - 10],
      ]),
    );
  tips.push({ x: bottleAxis, y: bottleTip, way: 'down' });
  const { takes } = picture.bottles;
  const takesPx =
    takes === undefined ? 0 : Math.max(LEAST_SPAN_PX, takesWidth(firstRow, picture.bottles.each, takes.litres));
  const takesAt =
    takes !== undefined && firstRow.length > 0 ? { x: x.bottle + 2, y: benchY + 22, width: takesPx } : undefined;

  // can
  const canX = x.can + 4;
  const canAxis = canX + sizes.can.width / 2;
  const handleY = benchY - sizes.can.height * CAN_REACH.high - 2;
  const canLane = x.can - BETWEEN_PX / 2 - 2;
  const fromX = takesAt === undefined ? bottleAxis : takesAt.x + takesAt.width / 2;
  const downY = benchY + (takesAt === undefined ? DROP_PX : 54);
  flows.push(
    flowPath([
      [fromX, takesAt === undefined ? benchY : benchY + 32],
      [fromX, downY],
      [canLane, downY],
      [canLane, laneY],
      [canAxis, laneY],
      [canAxis, handleY - 10],
    ]),
  );
  tips.push({ x: canAxis, y: handleY, way: 'down' });

  // beds
  const stripsTop = wordsBottom + 4;
  const plan = walked(picture.beds.strips, { x: x.bed + 1, y: stripsTop, widthPx: wide.bed });
  const roseX = canX + sizes.can.width * 1.8;
  const roseY = benchY - sizes.can.height * 1.02;
  const pourY = Math.min(Math.max(roseY + 34, stripsTop + 12), Math.max(stripsTop + 12, plan.bottom - 10));
  const pours = [
    `M${roseX} ${roseY}C${roseX + 3} ${roseY + 18} ${roseX + 10} ${pourY} ${Math.max(roseX + 14, x.bed - 18)} ${pourY}`,
  ];
  tips.push({ x: Math.max(roseX + 26, x.bed - 5), y: pourY, way: 'right' });
  const scaleY = plan.bottom + 26;

  // heap
  const heapFloor = Math.max(scaleY + 30 + 56, pegsBottom + 92, downY + 92, benchY + 130);
  const heapBox = { x: x.bed + 4, y: heapFloor, width: 104, height: 50 };
  const heapWords = words({ x: x.bed + 124, y: 0, wide: wide.bed - 120 }, picture.heap);
  const solidY = heapFloor - 18;
  const solids = [
    flowPath([
      [60, benchY],
      [60, solidY],
      [heapBox.x - 6, solidY],
    ]),
    `M${x.pail - 9} ${benchY}V${solidY}`,
  ];
  tips.push({ x: heapBox.x + 4, y: solidY, way: 'right' });
  benches.push(`M${x.bed - 16} ${heapFloor}H${width}`);
  const column = (left: number, columnWide: number, bottom = benchY): Box => ({
    x: left,
    y: 0,
    width: columnWide,
    height: bottom,
  });
  return {
    width,
    height: heapFloor + 46,
    scale,
    scraps: {
      hit: column(0, wide.scraps),
      words: blocks.scraps,
      heap: lots.heap,
      sack: lots.sack,
      brokenOff: sizes.brokenOff,
    },
    pail,
    noPegHit: rows.length === 0 ? column(x.pail, wide.pail) : undefined,
    pegs,
    bottles: {
      hit: column(x.bottle, wide.bottle),
      words: blocks.bottle,
      each,
      more: shelf.more > 0 ? { x: x.bottle, y: benchY - shelfHigh - 4, count: shelf.more } : undefined,
      takes: takesAt,
    },
    can: { hit: column(x.can, wide.can), words: blocks.can, body: { x: canX, y: benchY, ...sizes.can } },
    beds: {
      hit: { x: x.bed, y: 0, width: wide.bed, height: plan.bottom + 4 },
      words: blocks.bed,
      strips: plan.at,
      pxPerM: plan.pxPerM,
      scaleAt: { x: x.bed + 1, y: scaleY },
    },
    heap: { body: heapBox, words: { ...heapWords, y: heapFloor - wordsHeight(heapWords) - 4 } },
    scaleAt: { x: 6, y: heapFloor + 26 },
    benches,
    flows,
    waitingFlows,
    pours,
    solids,
    solidsAt: { x: x.pail + 4, y: solidY - 10 },
    tips,
  };
}
