// What is hoped to be picked, and a crop the tables lack, as typed. A goal is read from kilograms or pounds for the bed,
// for an area or for a plant; one out of the usual range is asked about and kept. A crop of the grower's own stands on
// the source they name.

import { type NamedCrop, readCrops } from '#engine/ground/crop-names.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import { plainText, readFigure } from '#engine/quantity/number.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import { citation } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { areaOf } from '#plot/place/bed-area.ts';
import { cropForm, goalForm } from '#words/en/ground-forms.ts';
import { form as formWords } from '#words/en/plot.ts';
import { sayAmountProblem } from '#words/quantity.ts';
import { cropNamed } from '../ledger-answer.ts';
import type { Read } from './bulk-amount.ts';
import { type FieldTrouble, type FormRead, readForm, type Typed } from './form.ts';
import { goalsOf, ownCropsOf } from './own-crops.ts';

/** A crop of a bed, as the forms ask about it. */
export interface CropAsked {
  /** As the bed names it, without its count. */
  readonly name: string;
  /** Stands in the table here. */
  readonly listed: boolean;
  /** Described by the grower, with their source. */
  readonly ownSource: string | undefined;
  /** Usual harvest, and where that comes from. */
  readonly usual: { readonly range: Range; readonly source: string } | undefined;
  readonly goalTyped: string | undefined;
}

/** The crops of a bed, in the order in which they were told. */
export function cropsAsked(plot: Plot, bedId: string, today: string): readonly CropAsked[] {
  const bed = plot.beds.get(bedId);
  if (bed === undefined) return [];
  const own = ownCropsOf(plot);
  const goals = goalsOf({ bed, crop: bed.crop, own, beforeDay: momentOf(today).dateDay + 1 });
  return readCrops(bed.crop ?? '').map((named): CropAsked => {
    const crop = cropNamed(named, own);
    const range = crop?.yieldKgPerM2;
    const goal = crop === undefined ? undefined : goals[crop.id];
    return {
      name: plainName(named),
      listed: named.id !== undefined,
      ownSource: crop?.ownSource,
      usual: range && { range, source: crop.ownSource ?? citation(crop.sources.yieldKgPerM2 ?? 'memory') },
      goalTyped:
        goal === undefined
          ? undefined
          : bed.goals.findLast(({ body }) => body.goal.yieldKgPerM2 === goal)?.body.goal.typed,
    };
  });
}

function plainName({ typed, names }: NamedCrop): string {
  return names[0] || typed;
}

export interface GoalRead {
  readonly read: FormRead<'goal.told'>;
  /** What it comes to, once it can be read. */
  readonly says?: string;
  /** Out of what is usual: asked, not refused. */
  readonly question?: string;
}

/** Reads a goal for one crop of a bed. */
export function readGoal(
  typed: { readonly crop: string; readonly goal: string; readonly plants: string; readonly note: string },
  ask: { readonly plot: Plot; readonly bed: string; readonly today: string; readonly countries: Countries },
): GoalRead {
  const crops = cropsAsked(ask.plot, ask.bed, ask.today);
  const crop = crops.find(({ name }) => name === typed.crop) ?? crops[0];
  const text = typed.goal.trim();
  if (crop === undefined) return { read: refused('crop', { sentence: goalForm.noCrop }) };
  if (text === '') return { read: refused('goal', { sentence: goalForm.noGoal }) };
  const perM2 = perM2Of(text, { ...ask, plants: typed.plants, shares: crops.length });
  if ('trouble' in perM2) return { read: refused(perM2.field ?? 'goal', perM2.trouble) };
  const base = { bed: ask.bed, crop: crop.name, goal: { typed: text, yieldKgPerM2: perM2.value } };
  const read = readForm('goal.told', [{ field: 'note', as: 'text' }], { note: typed.note }, { base });
  const usual = crop.usual?.range;
  const isOutside = usual !== undefined && !(perM2.value >= usual.low && perM2.value <= usual.high);
  return {
    read,
    says: goalForm.read(perM2.value),
    ...(isOutside && { question: goalForm.outside(perM2.value, usual) }),
  };
}

function refused(
  field: string,
  trouble: FieldTrouble,
): { readonly ok: false; readonly troubles: Map<string, FieldTrouble> } {
  return { ok: false, troubles: new Map([[field, trouble]]) };
}

/** Square metres of each unit an area is told by. @arithmetic the foot of 1959 */
const M2_OF: readonly (readonly [RegExp, number])[] = [
  [/^(m²|m2|sqm|sq m|square met(re|er)s?)$/, 1],
  [/^(ft²|ft2|sqft|sq ft|square (foot|feet))$/, 0.3048 ** 2],
];

type PerM2 = { readonly value: number } | { readonly field?: string; readonly trouble: FieldTrouble };

function perM2Of(
  text: string,
  ask: {
    readonly plot: Plot;
    readonly bed: string;
    readonly countries: Countries;
    readonly plants: string;
    readonly shares: number;
  },
): PerM2 {
  const [, amount = '', by = ''] = /^(.*?)\s*(?:\/|\bper\b|\ban?\b|\beach\b)\s*(.*)$/i.exec(text) ?? [
    undefined,
    text,
    '',
  ];
  const mass = parseAmount(amount, { dimension: 'mass', ...ask.countries });
  if (!mass.ok) {
    const said = sayAmountProblem(mass);
    return {
      trouble: { sentence: formWords.problem(text, said.message, said.allowed), ...(mass.ask && { ask: mass.ask }) },
    };
  }
  const unit = by.trim().toLowerCase();
  const m2 = M2_OF.find(([name]) => name.test(unit))?.[1];
  if (m2 !== undefined) return { value: mass.value / m2 };
  const isPlant = /^plants?$/.test(unit);
  if (unit !== '' && !isPlant) return { trouble: { sentence: goalForm.notPer(by.trim()) } };
  const facts = ask.plot.beds.get(ask.bed)?.facts;
  const areaM2 = facts && areaOf(facts)?.areaM2;
  if (areaM2 === undefined) return { trouble: { sentence: goalForm.noArea } };
  const plants = isPlant ? plantsOf(ask) : 1;
  if (plants === undefined) return { field: 'plants', trouble: { sentence: goalForm.noPlants } };
  // Crops of one bed have equal shares of it, as in the sums of need.
  return { value: (mass.value * plants) / (areaM2 / ask.shares) };
}

/** Plants as typed, else as the bed or its planting tells where it has one crop alone. */
function plantsOf(ask: {
  readonly plot: Plot;
  readonly bed: string;
  readonly plants: string;
  readonly shares: number;
}) {
  const text = ask.plants.trim();
  if (text !== '') return /^[1-9]\d{0,5}$/.test(text) ? Number(text) : undefined;
  const bed = ask.plot.beds.get(ask.bed);
  if (bed === undefined || ask.shares !== 1) return undefined;
  const counted = /^\s*([1-9]\d{0,5})\b/.exec(bed.crop ?? '')?.[1];
  return bed.plantings.at(-1)?.body.plants ?? (counted === undefined ? undefined : Number(counted));
}

type Band = NonNullable<Body<'crop.described'>['harvest']>;
type Units = readonly (readonly [name: RegExp, factor: number])[];

/** What each figure of an own crop may be told in; the first is what its label says. @arithmetic */
const KG_PER_M2: Units = [
  [/^kg\/m(²|2)$/, 1],
  [/^kg\/ha$/, 1e-4],
  [/^t\/ha$/, 0.1],
  [/^lb\/(sqft|ft²|ft2)$/, 0.45359237 / 0.3048 ** 2],
];
const G_PER_M2: Units = [
  [/^g\/m(²|2)$/, 1],
  [/^kg\/ha$/, 0.1],
  [/^lb\/(ac|acre)$/, 453.59237 / 4046.8564224],
];
const G_PER_KG: Units = [
  [/^g\/kg$/, 1],
  [/^kg\/t$/, 1],
  [/^percent$/, 10],
];

/** The figures of an own crop: field, what it may be told in, and how that is said. */
export const CROP_FIGURES = [
  ['harvest', KG_PER_M2, ['kg/m²', 'kg/ha', 't/ha', 'lb/sq ft']],
  ['nNeed', G_PER_M2, ['g/m²', 'kg/ha', 'lb/acre']],
  ['nContent', G_PER_KG, ['g/kg', '%']],
  ['pContent', G_PER_KG, ['g/kg', '%']],
  ['kContent', G_PER_KG, ['g/kg', '%']],
] as const;

/** Reads a crop of the grower's own. */
export function readOwnCrop(name: string, typed: Typed): FormRead<'crop.described'> {
  const troubles = new Map<string, FieldTrouble>();
  if ((typed.source ?? '').trim() === '') troubles.set('source', { sentence: cropForm.noSource });
  const bands: Record<string, Band> = {};
  for (const [field, units, allowed] of CROP_FIGURES) {
    const text = (typed[field] ?? '').trim();
    if (text === '') continue;
    const read = bandOf(text, units, allowed);
    if ('trouble' in read) troubles.set(field, read.trouble);
    else bands[field] = { typed: text, ...read.value };
  }
  const asked = [
    { field: 'source', as: 'text' },
    { field: 'note', as: 'text' },
  ] as const;
  const read = readForm('crop.described', asked, typed, { base: { name, ...bands } });
  if (read.ok && troubles.size === 0) return read;
  // That nothing is told at all follows from a figure that could not be read, and is then not said as well.
  const rest = read.ok ? [] : [...read.troubles].filter(([field]) => field !== 'entry' || troubles.size === 0);
  const named = rest.map(([field, one]) => [field.split('.')[0] ?? field, one] as const);
  return { ok: false, troubles: new Map([...named, ...troubles]) };
}

/** "3", "2 to 4", "2-4 kg/m²": the middle of two ends counts as likely. */
function bandOf(text: string, units: Units, allowed: readonly string[]): Read<Range> {
  const trouble = { trouble: { sentence: cropForm.notBand(text, allowed) } };
  const [first = '', second] = plainText(text)
    .replaceAll('%', ' percent')
    .split(/\s*(?:\bto\b|[-–])\s*/i);
  const [a, b] = [readFigure(first), second === undefined ? undefined : readFigure(second)];
  if (!a.ok || (b !== undefined && !b.ok)) return trouble;
  const unit = (b ?? a).rest.replaceAll(/\s/g, '').toLowerCase();
  const factor = unit === '' ? units[0]?.[1] : units.find(([name]) => name.test(unit))?.[1];
  if (factor === undefined || (b !== undefined && (a.rest.trim() !== '' || b.value < a.value))) return trouble;
  if (b === undefined) return { value: point(a.value * factor) };
  const [low, high] = [a.value * factor, b.value * factor];
  return { value: { low, likely: (low + high) / 2, high } };
}
