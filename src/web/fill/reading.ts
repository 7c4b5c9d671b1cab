// From what is typed on the filling sheet to what the task is asked, and what is still to tell before it can be pegged.

import type { Countries } from '#engine/quantity/ask.ts';
import { keptMass, keptVolume } from '#engine/quantity/kept.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import type { Body } from '#journal/kinds/index.ts';
import { kindOf } from '#plot/place/basin.ts';
import type { FillAsk, FillOffers, FillPart, VesselOffer } from '#tasks/plot/fill.ts';
import { type FillNeed, unreadFigure } from '#words/en/fill.ts';
import { shapeNames } from '#words/en/weigh-in-labels.ts';
import { readFigure, readTyped, type TypedReading } from '../parts/typed.ts';
import type { Trouble } from '../weigh-in/reading.ts';
import type { FillDraft } from './draft.ts';

const MOST_PEG = 99_999;

export interface FillReading {
  readonly rows: ReadonlyMap<number, TypedReading>;
  readonly volume: TypedReading;
  readonly gasRoom: TypedReading;
  readonly warmth: TypedReading;
  readonly water: TypedReading;
  readonly sugar: TypedReading;
  readonly starter: TypedReading;
  readonly pegTrouble: Trouble | undefined;
  readonly peg: number | undefined;
  readonly offer: VesselOffer | undefined;
  readonly vesselL: number | undefined;
  readonly ask: FillAsk | undefined;
  readonly needs: readonly FillNeed[];
}

/** Reads the whole sheet. */
export function readFill(draft: FillDraft, offers: FillOffers, countries: Countries): FillReading {
  const rows = new Map(draft.rows.map((row) => [row.key, readTyped(row.amount, 'mass', countries)]));
  const volume = readTyped(draft.newVolume, 'volume', countries);
  const typedShare = { ...draft.gasRoom, settled: draft.gasRoom.settled.replace(/\s*%\s*$/, '') };
  const gasRoom = readFigure(typedShare, { least: 0, most: 90, say: (typed) => unreadFigure(typed, '0 to 90\u00a0%') });
  const warmth = readTyped(draft.warmth, 'temperature', countries);
  const water = readTyped(draft.water, 'volume', countries);
  const bulkKgPerL = sugarProduct(draft.sugarProduct)?.bulkKgPerL ?? 'ask';
  const sugar = readTyped(draft.sugar, 'mass', countries, { bulkKgPerL });
  const starter = readTyped(draft.starter, 'volume', countries);
  const typedPeg = draft.peg.settled.trim();
  const peg = typedPeg === '' ? offers.nextPeg : /^\d+$/.test(typedPeg) ? Number(typedPeg) : Number.NaN;
  const pegRead = peg >= 1 && peg <= MOST_PEG ? peg : undefined;
  const offer = offers.vessels.find(({ id }) => id === draft.vessel);
  const vesselL = draft.vessel === 'new' ? volume.value : offer?.volumeL;
  const typedGasRoom = gasRoom.value === undefined ? undefined : gasRoom.value / 100;
  const gasRoomFraction = draft.vessel === 'new' ? typedGasRoom : offer?.gasRoomFraction;
  const isVesselRead = vesselL !== undefined && (draft.vessel !== 'new' || typedGasRoom !== undefined);
  const report = offers.waters.find(({ id }) => id === draft.waterFrom);
  const parts: FillPart[] = draft.rows.map((row) => {
    const read = rows.get(row.key)?.read;
    return {
      lot: row.lot,
      material: row.material,
      name: row.name,
      treated: row.treated,
      plannedKg: row.planned?.value,
      actual: read && keptMass(read),
    };
  });
  const hasSugar = draft.sugarProduct !== 'none';
  const hasStarter = draft.starterFrom !== 'none';
  const anything = parts.some(({ actual, plannedKg }) => (actual?.massKg ?? plannedKg) !== undefined);
  const waterL = water.value ?? draft.waterPlanned?.value;
  const all = [...rows.values(), volume, gasRoom, warmth, water, sugar, starter];
  const needs: FillNeed[] = [];
  if (!isVesselRead || offer?.peg !== undefined) needs.push('vessel');
  if (draft.lid === undefined) needs.push('lid');
  if (draft.rows.length === 0) needs.push('scraps');
  else if (parts.some(({ actual }) => actual === undefined)) needs.push('weights');
  if (water.value === undefined) needs.push('water');
  if (hasSugar && sugar.value === undefined) needs.push('sugar');
  if (hasStarter && starter.value === undefined) needs.push('starter');
  if (pegRead === undefined || offers.pegsInUse.includes(pegRead)) needs.push('peg');
  if (all.some(({ trouble }) => trouble !== undefined)) needs.push('unread');
  const ask: FillAsk | undefined =
    !isVesselRead || !anything || waterL === undefined
      ? undefined
      : {
          vessel: { id: draft.vessel === 'new' ? undefined : draft.vessel, volumeL: vesselL, gasRoomFraction },
          lid: draft.lid,
          parts,
          passed: draft.passed,
          water: {
            report: report?.id,
            source: report?.source,
            alkalinityMeqPerL: report?.alkalinityMeqPerL ?? draft.alkalinityMeqPerL,
            plannedL: draft.waterPlanned?.value,
            actual: water.read && keptVolume(water.read),
          },
          sugar: hasSugar
            ? {
                product: draft.sugarProduct,
                plannedKg: draft.sugarPlanned?.value,
                actual: sugar.read && keptMass(sugar.read),
              }
            : undefined,
          starter:
            hasStarter && starter.read !== undefined
              ? {
                  from: draft.starterFrom === 'elsewhere' ? undefined : draft.starterFrom,
                  volume: keptVolume(starter.read),
                }
              : undefined,
        };
  const pegTrouble = pegRead === undefined ? { sentence: unreadFigure(typedPeg, `1 to ${MOST_PEG}`) } : undefined;
  return { rows, volume, gasRoom, warmth, water, sugar, starter, pegTrouble, peg: pegRead, offer, vesselL, ask, needs };
}

/** A vessel told on the filling sheet, as it is described; undefined without its size. */
export function newVessel(
  { newName, newShape, lid }: FillDraft,
  { volume: { read }, gasRoom }: FillReading,
): Body<'vessel.described'> | undefined {
  if (read === undefined) return undefined;
  const volume = keptVolume(read);
  return {
    name: newName.text.trim() || `${volume.typed} ${shapeNames[kindOf(volume.volumeL, newShape)]}`,
    volume,
    gasRoomFraction: (gasRoom.value ?? 0) / 100,
    ...(lid === undefined ? {} : { lid }),
    ...(newShape === undefined ? {} : { drawnAs: newShape }),
  };
}
