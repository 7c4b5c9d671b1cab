// The two acts of a straining, and what a bottle is called. A bottle made for drink is recognised by its name and
// never offered; a name that tells neither is asked about again.

import type { KeptMass, KeptVolume } from '#engine/quantity/kept.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { containerWords } from '#words/en/straining.ts';
import { type Figures, withRemark } from './figures-shown.ts';
import type { BottlePlan } from './straining.ts';

/** What a container is, by what it is called. */
export function bottleNamed(typed: string): Body<'bottle.filled'>['material'] | 'unclear' {
  const text = typed.toLowerCase();
  const says = (words: readonly string[]) =>
    words.some((word) => new RegExp(`(?<![a-z])${word}(?:s|es)?(?![a-z])`).test(text));
  if (says(containerWords.drink)) return 'drink-bottle';
  if (says(containerWords.glass)) return 'glass';
  return says(containerWords.plastic) ? 'plastic' : 'unclear';
}

/** What was measured, as typed beside what it was read as. */
export interface StrainingTold {
  readonly batch: string;
  readonly drained: KeptVolume;
  readonly solids?: KeptMass | undefined;
  readonly rest: Body<'peg.strained'>['rest'];
  readonly meshMm?: number | undefined;
  readonly acidity?: Body<'peg.strained'>['acidity'];
  readonly ecDsPerM?: number | undefined;
  readonly solidsTo?: Body<'peg.strained'>['solidsTo'];
}

/** What was bottled. */
export interface BottlesTold {
  readonly batch: string;
  readonly plan: BottlePlan;
  readonly filled: KeptVolume;
  readonly size: KeptVolume;
  readonly place?: string | undefined;
}

export interface Act {
  readonly kind: Kind;
  readonly body: Body<Kind>;
  readonly on: string;
}

export function strainedBody(told: StrainingTold): Body<'peg.strained'> {
  const { batch, drained, solids, rest, meshMm, acidity, ecDsPerM, solidsTo } = told;
  return {
    batch,
    drained,
    rest,
    ...(solids !== undefined && { solids }),
    ...(meshMm !== undefined && { meshMm }),
    ...(acidity !== undefined && { acidity }),
    ...(ecDsPerM !== undefined && { ecDsPerM }),
    ...(solidsTo !== undefined && { solidsTo }),
  };
}

export function bottledBody({ batch, plan, filled, size, place }: BottlesTold): Body<'bottle.filled'> {
  return {
    batch,
    filled,
    size,
    count: plan.count,
    cap: plan.cap,
    material: plan.material,
    ...(plan.temperatureC !== undefined && { temperatureC: plan.temperatureC }),
    ...(place !== undefined && place !== '' && { place }),
  };
}

/** The acts that stand or fall together: what was strained now, and what was bottled. */
export function strainingActs(told: {
  /** Local date and time that the shown figures were computed for. */
  readonly on: string;
  /** What the sheet showed, kept beside each. */
  readonly shown?: { readonly strained: Figures; readonly bottled: Figures } | undefined;
  readonly strained?: StrainingTold | undefined;
  readonly bottled?: BottlesTold | undefined;
}): readonly Act[] {
  const { on, shown, strained, bottled } = told;
  const beside = <T extends Parameters<typeof withRemark>[0]>(body: T, figures: Figures | undefined) =>
    figures === undefined ? body : withRemark(body, figures);
  return [
    ...(strained === undefined
      ? []
      : [{ kind: 'peg.strained' as const, body: beside(strainedBody(strained), shown?.strained), on }]),
    ...(bottled === undefined
      ? []
      : [{ kind: 'bottle.filled' as const, body: beside(bottledBody(bottled), shown?.bottled), on }]),
  ];
}
