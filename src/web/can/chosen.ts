// What is poured from, with which can and how strong, as chosen last on this device; the words of the keyholder's
// language; and the card that follows from it all. The tasks answer; nothing is worked out here.

import { type Accessor, createMemo, createResource } from 'solid-js';
import { type HoursView, hoursOf, type SunDay } from '#tasks/plot/hours.ts';
import { type Liquid, liquidsOf, usualLiquid } from '#tasks/plot/liquid.ts';
import {
  type CanChoice,
  cansOf,
  keyholderOf,
  type PourAsk,
  type PourCard,
  pourCard,
  sprayersOf,
  usualCan,
} from '#tasks/plot/pour.ts';
import { MATCHED, type NextPick, type Round, roundOver } from '#tasks/plot/round.ts';
import type { StrengthChoice } from '#tasks/plot/strength.ts';
import { canCard as german } from '#words/de/can-card.ts';
import { type CanCardWords, canCard as english } from '#words/en/can-card.ts';
import { deviceZone } from '../app/clock.ts';
import { useRecord } from '../app/context.tsx';
import { dayAfter } from '../app/demo.ts';
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
  readonly soil?: PourAsk['soil'];
  readonly airSeen?: PourAsk['airSeen'];
  readonly way?: 'soil' | 'leaf' | undefined;
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
  readonly setupFor: (bed: string, way?: 'soil' | 'leaf') => Setup;
  /** Today and tomorrow hour by hour. */
  readonly hoursFor: (said: Said) => HoursView;
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

  // The library of the sky is fetched only for a plot that told its place.
  const [sun] = createResource(
    () => {
      const { latitudeDeg, longitudeDeg, timeZone } = record.plot().facts;
      return latitudeDeg === undefined || longitudeDeg === undefined
        ? undefined
        : { latitudeDeg, longitudeDeg, timeZone: timeZone ?? deviceZone(), today: record.today() };
    },
    async ({ today, ...place }): Promise<{ readonly [on: string]: SunDay }> => {
      const { sunOfDates } = await import('#tasks/plot/sun.ts');
      return sunOfDates([today, dayAfter(today, 1)], place);
    },
  );
  const hoursFor = ({ soil, airSeen }: Said) =>
    hoursOf({ plot: record.plot(), now: record.now(), sun: sun(), soil, airSeen });

  function setupFor(bed: string, way: 'soil' | 'leaf' = 'soil'): Setup {
    const used = way === 'leaf' ? sprayersOf(record.plot()).at(-1) : can();
    return {
      way,
      liquid: liquid()?.id,
      can: used?.id,
      canL: used?.volumeL,
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
      airSeen: said.airSeen,
      sun: sun(),
      ...(litresPer !== undefined && { litresPer: { [bed]: litresPer } }),
      ...(said.nextPick !== undefined && { nextPick: { [bed]: said.nextPick } }),
    });
  }

  return {
    record,
    chosen: draft,
    change,
    keyholder,
    words,
    liquids,
    liquid,
    cans,
    can,
    round,
    hoursFor,
    setupFor,
    cardFor,
  };
}

/** What a pour is made with; one that has begun ends with the same, whatever is chosen meanwhile. */
export interface Setup {
  readonly way?: 'soil' | 'leaf';
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
