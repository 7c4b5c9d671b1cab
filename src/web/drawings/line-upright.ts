// The line upright, for a phone: stretch beneath stretch, drawings at the left on their bench lines, words at the
// right, the heap's dotted branch down the right edge. More than two pegs stand in rows of two.

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

/** Width of a letter of text on the widest usual sans, px. */
const LETTER_PX = 9.3;
const DRAWN_SHARE = 0.475;
const MOST_DRAWN_PX = 178;
const HIGH_PX = 128;
const LANE_PX = 26;
const TARGET_PX = 64;
const GAP_PX = 12;
/** Room above a vessel for its arrow. */
const ARROW_PX = 46;

export function uprightLine(picture: LinePicture, width: number): LineLayout {
  const left = Math.min(MOST_DRAWN_PX, Math.round(width * DRAWN_SHARE));
  const wordsX = left + GAP_PX;
  const rightLane = width - 3;
  const letters = Math.max(8, Math.floor((rightLane - 10 - wordsX) / LETTER_PX));
  const words = (
    x: number,
    y: number,
    said: { name?: string; figure?: string; notes: readonly string[]; hand?: string | undefined },
  ): Words => ({
    x,
    y,
    name: said.name,
    figure: said.figure,
    notes: said.notes.flatMap((note) => wrapped(note, letters)),
    hand: said.hand,
  });
  const manyRows = picture.pegs.length > 2;
  const lanes = manyRows ? 16 : 0;
  const sizes = sizesFor(picture, {
    scrapsPx: left - 6,
    pegsPx: left - 2 * lanes,
    bottlesPx: left - 4,
    canPx: left - 20,
    highPx: HIGH_PX,
  });
  const { scale } = sizes;
  const hit = (y: number, bottom: number, x = 0, wide = width - 12): Box => ({ x, y, width: wide, height: bottom - y });
  const flows: string[] = [];
  const waitingFlows: string[] = [];
  const benches: string[] = [];
  const solids: string[] = [];
  const tips: { x: number; y: number; way: 'down' | 'left' | 'right' }[] = [];
  const bench = (y: number, toHeap = true) => {
    benches.push(`M0 ${y}H${left}`);
    if (toHeap) solids.push(`M${left} ${y}H${rightLane}`);
  };

  // scraps
  const scrapWords = words(wordsX, 0, picture.scraps);
  const tallest = Math.max(sizes.heap?.height ?? 0, sizes.sack?.height ?? 0);
  const scrapBench = Math.max(wordsHeight(scrapWords) + 4, tallest + 12, TARGET_PX + 20);
  const lots = scrapsAt(sizes, 3, scrapBench);
  bench(scrapBench);

  // pegs
  let y = scrapBench + GAP_PX;
  const pail: Words = words(wordsX, y, {
    name: picture.pailName,
    notes: picture.pegs.length > 0 ? [] : picture.noPeg.notes,
  });
  const pegs: PegPlace[] = [];
  const joinX = picture.pegs.length === 1 ? Math.max(48, Math.min(left - 48, lots.middleX)) : left / 2;
  const laneY = scrapBench + LANE_PX;
  let outY = scrapBench;
  let noPegHit: Box | undefined;
  if (picture.pegs.length === 0) {
    const bottom = y + Math.max(TARGET_PX, wordsHeight(pail));
    noPegHit = hit(y, bottom);
    outY = bottom + 6;
    waitingFlows.push(
      flowPath([
        [lots.middleX, scrapBench],
        [lots.middleX, laneY],
        [joinX, laneY],
        [joinX, outY],
      ]),
    );
  }
  pairs(picture.pegs).forEach((pair, row) => {
    const top = y + (row === 0 ? 30 : 0);
    let wordsY = top;
    const places = pair.map((peg) => {
      const block = words(wordsX, wordsY, { notes: [peg.note], hand: peg.hand });
      const high = Math.max(TARGET_PX, 32 + block.notes.length * 23 + (peg.hand === undefined ? 0 : 25));
      const place = { peg, words: block, hit: hit(wordsY, wordsY + high, wordsX - 6, rightLane - 6 - wordsX) };
      wordsY += high + GAP_PX;
      return place;
    });
    const high = pair.reduce((most, { shape }) => Math.max(most, shape.heightM * scale.pxPerM), 0);
    const floorY = Math.max(wordsY + 2, top + high + (row === 0 ? 26 : ARROW_PX));
    const axes = picture.pegs.length === 1 ? [joinX] : axesIn(pair, scale, { x: lanes, width: left - 2 * lanes });
    const inY = row === 0 ? laneY : y + 12;
    places.forEach((place, i) => {
      const axisX = axes[i] ?? joinX;
      const stand = standAt(place.peg, scale, { axisX, floorY });
      pegs.push({ ...place, stand });
      const tipY = rimY(stand) - 5;
      tips.push({ x: axisX, y: tipY, way: 'down' });
      const start: [number, number][] = manyRows
        ? [
            [lots.middleX, scrapBench],
            [lots.middleX, laneY],
            [3, laneY],
            ...(row === 0 ? [] : ([[3, inY]] as [number, number][])),
          ]
        : [
            [lots.middleX, scrapBench],
            [lots.middleX, laneY],
          ];
      flows.push(flowPath([...start, [axisX, inY], [axisX, tipY - 10]]));
    });
    bench(floorY);
    outY = floorY;
    const isLast = row === pairs(picture.pegs).length - 1;
    for (const axisX of axes)
      flows.push(
        isLast
          ? flowPath([
              [axisX, floorY],
              [axisX, floorY + LANE_PX],
              [joinX, floorY + LANE_PX],
            ])
          : flowPath([
              [axisX, floorY],
              [axisX, floorY + 8],
              [left - 3, floorY + 8],
              [left - 3, floorY + 20],
            ]),
      );
    if (!isLast) y = floorY + 22;
  });
  const lastBench = outY;
  if (manyRows) {
    const first = pegs[0]?.stand.floorY ?? lastBench;
    flows.push(
      flowPath([
        [left - 3, first + 8],
        [left - 3, lastBench + LANE_PX],
        [joinX, lastBench + LANE_PX],
      ]),
    );
  }

  // bottles
  const bottleTop = lastBench + GAP_PX;
  const bottleWords = words(wordsX, bottleTop, picture.bottles);
  const shelf = bottlesAt(picture, scale, { x: 4, width: left - 6 });
  const shelfHigh = shelf.rows[0]?.length ? shelf.rows.length * (shelf.rowHeight + 8) : 40;
  const bottleBench = Math.max(bottleTop + wordsHeight(bottleWords) + 4, lastBench + LANE_PX + 34 + shelfHigh);
  const each = shelf.rows.flatMap((row, i) =>
    row.map((bottle) => ({ ...bottle, y: bottleBench - (shelf.rows.length - 1 - i) * (shelf.rowHeight + 8) })),
  );
  const firstRow = shelf.rows[0] ?? [];
  const tipX = firstRow.length > 0 ? Math.min(joinX, (firstRow.at(-1)?.x ?? 0) + 8) : joinX;
  const bottleTip = bottleBench - shelfHigh + 2;
  (picture.pegs.length === 0 ? waitingFlows : flows).push(
    flowPath(
      picture.pegs.length === 0
        ? [
            [joinX, lastBench],
            [tipX, lastBench + 8],
            [tipX, bottleTip - 10],
          ]
        : [
            [joinX, lastBench + LANE_PX],
            [tipX, lastBench + LANE_PX],
            [tipX, bottleTip - 10],
          ],
    ),
  );
  tips.push({ x: tipX, y: bottleTip, way: 'down' });
  bench(bottleBench);
  const { takes } = picture.bottles;
  const takesPx =
    takes === undefined ? 0 : Math.max(LEAST_SPAN_PX, takesWidth(firstRow, picture.bottles.each, takes.litres));
  const takesAt =
    takes !== undefined && firstRow.length > 0 ? { x: 4, y: bottleBench + 22, width: takesPx } : undefined;
  const underBottles = bottleBench + (takesAt === undefined ? 0 : 40);

  // can
  const canTop = underBottles + GAP_PX;
  const canWords = words(wordsX, canTop, picture.can);
  const canFloor = Math.max(
    canTop + wordsHeight(canWords) + 4,
    underBottles + LANE_PX + 28 + sizes.can.height * CAN_REACH.high,
  );
  const canX = Math.max(26, (left - sizes.can.width * CAN_REACH.wide) / 2);
  const canAxis = canX + sizes.can.width / 2;
  const handleY = canFloor - sizes.can.height * CAN_REACH.high - 4;
  const fromX = takesAt === undefined ? joinX : takesAt.x + takesAt.width / 2;
  const fromY = takesAt === undefined ? bottleBench : bottleBench + 32;
  flows.push(
    flowPath([
      [fromX, fromY],
      [fromX, underBottles + LANE_PX - 8],
      [canAxis, underBottles + LANE_PX - 8],
      [canAxis, handleY - 10],
    ]),
  );
  tips.push({ x: canAxis, y: handleY, way: 'down' });
  bench(canFloor, false);

  // beds
  const bedTop = canFloor + GAP_PX;
  const bedNotes = picture.beds.notes.flatMap((note) => wrapped(note, letters));
  const bedWords: Words = { ...words(0, bedTop, picture.beds), notes: bedNotes, notesX: wordsX + 12 };
  const stripsTop = bedTop + Math.max(wordsHeight(bedWords), TARGET_PX + 14) + 10;
  const plan = walked(picture.beds.strips, { x: 1, y: stripsTop, widthPx: rightLane - 20 });
  const roseX = canX + sizes.can.width * 1.8;
  const roseY = canFloor - sizes.can.height * 1.02;
  const pourX = left + 2;
  const pours = [
    `M${roseX} ${roseY}C${pourX} ${roseY + 10} ${pourX} ${roseY + 30} ${pourX} ${roseY + 56}V${stripsTop - 14}`,
  ];
  tips.push({ x: pourX, y: stripsTop - 4, way: 'down' });
  const scaleY = plan.bottom + 26;

  // heap
  const heapFloor = scaleY + 30 + 56;
  const heapBox = { x: width - 118, y: heapFloor, width: 92, height: 44 };
  solids.push(
    flowPath([
      [rightLane, scrapBench],
      [rightLane, heapFloor - 16],
      [heapBox.x + heapBox.width + 6, heapFloor - 16],
    ]),
  );
  tips.push({ x: heapBox.x + heapBox.width - 3, y: heapFloor - 16, way: 'left' });
  benches.push(`M${heapBox.x - 12} ${heapFloor}H${width - 8}`);
  return {
    width,
    height: heapFloor + 44,
    scale,
    scraps: {
      hit: hit(0, scrapBench - 2),
      words: scrapWords,
      heap: lots.heap,
      sack: lots.sack,
      brokenOff: sizes.brokenOff,
    },
    pail,
    noPegHit,
    pegs,
    bottles: {
      hit: hit(bottleTop, bottleBench - 2),
      words: bottleWords,
      each,
      more: shelf.more > 0 ? { x: 4, y: bottleBench - shelfHigh - 4, count: shelf.more } : undefined,
      takes: takesAt,
    },
    can: { hit: hit(canTop, canFloor - 2), words: canWords, body: { x: canX, y: canFloor, ...sizes.can } },
    beds: {
      hit: hit(bedTop, plan.bottom + 6),
      words: bedWords,
      strips: plan.at,
      pxPerM: plan.pxPerM,
      scaleAt: { x: 1, y: scaleY },
    },
    heap: {
      body: heapBox,
      words: {
        ...words(0, heapFloor - 62, picture.heap),
        notes: picture.heap.notes.flatMap((note) => wrapped(note, 24)),
      },
    },
    scaleAt: { x: 1, y: heapFloor + 28 },
    benches,
    flows,
    waitingFlows,
    pours,
    solids,
    tips,
  };
}
