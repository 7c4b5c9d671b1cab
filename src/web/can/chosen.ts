// What is poured from, with which can and how strong, as chosen last on this device; the words of the keyholder's
// language; and the card that follows from it all. The tasks answer; nothing is worked out here.

import { type Accessor, createMemo } from 'solid-js';
import { type Liquid, liquidsOf, usualLiquid } from '#tasks/plot/liquid.ts';
import { type CanChoice, cansOf, keyholderOf, type PourCard, pourCard, usualCan } from '#tasks/plot/pour.ts';
import { MATCHED, type NextPick, type Round, roundOver } from '#tasks/plot/round.ts';
import type { StrengthChoice } from '#tasks/plot/strength.ts';
import { canCard as german } from '#words/de/can-card.ts';
import { type CanCardWords, canCard as english } from '#words/en/can-card.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import type { Record } from '../app/record.ts';

export interface Chosen {
  readonly liquid: string | undefined;
  readonly can: string | undefined;
  readonly strength: StrengthChoice;
  /** Litres for a square metre or a pot, by the bed's id. */
  readonly litresPer: { readonly [bed: string]: number };
}

const NOTHING_CHOSEN: Chosen = { liquid: undefined, can: undefined, strength: MATCHED, litresPer: {} };

/** What was said at the tap, on one date. */
export interface Said {
  readonly soil?: 'dry' | 'moist' | undefined;
  readonly nextPick?: NextPick | undefined;
  /** Reasons for passing over stops that are a matter of judgement, by the id of the rule. */
  readonly passed?: { readonly [rule: string]: string } | undefined;
}

/** The can of this device: choices that stay, and what follows from them. */
export interface Can {
  readonly record: Record;
  readonly chosen: Accessor<Chosen>;
  readonly change: (next: Partial<Chosen>) => void;
  readonly keyholder: Accessor<ReturnType<typeof keyholderOf>>;
  readonly words: Accessor<CanCardWords>;
  readonly liquids: Accessor<readonly Liquid[]>;
  readonly liquid: Accessor<Liquid | undefined>;
  readonly cans: Accessor<readonly CanChoice[]>;
  readonly can: Accessor<CanChoice | undefined>;
  /** Worked out on asking, bed by bed. */
  readonly round: () => Round;
  /** What a pour on a bed would begin with now. */
  readonly setupFor: (bed: string) => Setup;
  readonly cardFor: (bed: string, said: Said, setup: Setup) => PourCard;
}

export function useCan(): Can {
  const record = useRecord();
  const { draft, change } = useDraft<Chosen>('can', NOTHING_CHOSEN);
  const keyholder = createMemo(() => keyholderOf(record.plot(), record.keyholder()));
  const words = createMemo<CanCardWords>(() => (keyholder().language?.startsWith('de') ? german : english));
  const liquids = createMemo(() => liquidsOf(record.plot(), record.now()));
  const liquid = createMemo(() => liquids().find(({ id }) => id === draft().liquid) ?? usualLiquid(liquids()));
  const cans = createMemo(() => cansOf(record.plot()));
  const can = createMemo(() => {
    const chosen = cans().find(({ id }) => id === draft().can);
    return chosen?.volumeL === undefined ? usualCan(cans()) : chosen;
  });
  const round = () =>
    roundOver({
      plot: record.plot(),
      now: record.now(),
      liquid: liquid()?.id,
      strength: draft().strength,
      litresPer: draft().litresPer,
    });

  function setupFor(bed: string): Setup {
    return {
      liquid: liquid()?.id,
      can: can()?.id,
      canL: can()?.volumeL,
      strength: draft().strength,
      litresPer: draft().litresPer[bed],
    };
  }

  function cardFor(bed: string, said: Said, setup: Setup): PourCard {
    const { litresPer, ...rest } = setup;
    return pourCard({
      ...rest,
      plot: record.plot(),
      now: record.now(),
      bed,
      spoon: keyholder().spoon,
      soil: said.soil,
      passed: said.passed,
      ...(litresPer !== undefined && { litresPer: { [bed]: litresPer } }),
      ...(said.nextPick !== undefined && { nextPick: { [bed]: said.nextPick } }),
    });
  }

  return { record, chosen: draft, change, keyholder, words, liquids, liquid, cans, can, round, setupFor, cardFor };
}

/** What a pour is made with; one that has begun ends with the same, whatever is chosen meanwhile. */
export interface Setup {
  readonly liquid: string | undefined;
  readonly can: string | undefined;
  readonly canL: number | undefined;
  readonly strength: StrengthChoice;
  readonly litresPer: number | undefined;
}

/** Whether two plain values say the same: then nothing that hangs on them is drawn again. */
export function same<T>(a: T, b: T): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
