// The plot's own facts as the facts sheet shows and asks them: a form for each thing, the beds as strips in walking
// order with their measures, the vessels with their fill line. Each form gives the body of one entry, which tells only
// what changed; what a fact forbids is judged by the rules.

import { upToFillLineL } from '#engine/pail/volume.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import { NUMBER_STYLES } from '#engine/quantity/number.ts';
import { bottleProfileRules } from '#engine/rules/profile.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import type { BedFacts } from '#journal/parts/described.ts';
import { canonical } from '#journal/same.ts';
import { basinOf } from '#plot/place/basin.ts';
import { type Ground, groundOf } from '#plot/place/ground.ts';
import { sayDate } from '#words/en/app.ts';
import { form as words } from '#words/en/plot.ts';
import { passableNames, passWords, stricter, stricterOf } from '#words/en/profile.ts';
import { sayTyped } from '#words/quantity.ts';
import { type Asked, type FieldTrouble, type FormRead, readForm, type Typed } from './form.ts';
import { passedOverOn } from './passed-over.ts';
import { profileOf } from './profile.ts';

const YES_NO = ['children', 'dog', 'cat', 'hens', 'immune-weak', 'pregnant'] as const;

/** The forms of the facts sheet, field by field. */
export const factForms = {
  plot: [
    { field: 'name', as: 'text' },
    { field: 'siteRule.text', as: 'text' },
    { field: 'siteRule.on', as: 'date' },
    { field: 'outsideScraps', as: 'yes' },
    { field: 'kitchenScraps', as: 'yes' },
    { field: 'cookedFood', as: 'yes' },
    { field: 'neighboursM', as: 'figure' },
    { field: 'hemisphere', as: 'one', words: ['north', 'south'] },
    { field: 'timeZone', as: 'text' },
    { field: 'latitudeDeg', as: 'figure' },
    { field: 'longitudeDeg', as: 'figure' },
    { field: 'sells', as: 'yes' },
    { field: 'school', as: 'yes' },
    { field: 'note', as: 'text' },
  ],
  about: [
    { field: 'present', as: 'many', words: YES_NO },
    { field: 'poisonLine', as: 'text' },
  ],
  keyholder: [
    { field: 'tag', as: 'text' },
    { field: 'units', as: 'one', words: ['metric', 'us', 'imperial'] },
    { field: 'gallon', as: 'one', words: ['us', 'uk'] },
    { field: 'spoon', as: 'one', words: ['us', 'metric', 'uk', 'au'] },
    { field: 'decimals', as: 'one', words: NUMBER_STYLES },
    { field: 'language', as: 'one', words: ['en', 'de'] },
    { field: 'cannotSmell', as: 'yes' },
  ],
  bed: [
    { field: 'name', as: 'text' },
    { field: 'tag', as: 'text' },
    { field: 'area', as: 'amount', dimension: 'area' },
    { field: 'lengthM', as: 'figure' },
    { field: 'fedArea', as: 'amount', dimension: 'area' },
    { field: 'pots.count', as: 'figure' },
    { field: 'pots.volumeL', as: 'amount', dimension: 'volume', plain: true },
    { field: 'crop', as: 'text' },
    { field: 'eaten', as: 'one', words: ['raw-leaf', 'raw-fruit', 'raw-root', 'cooked', 'not-eaten'] },
    { field: 'feed', as: 'one', words: ['soil', 'leaf-and-soil', 'none'] },
    { field: 'walkingOrder', as: 'figure' },
    { field: 'note', as: 'text' },
  ],
  vessel: [
    { field: 'name', as: 'text' },
    { field: 'volume', as: 'amount', dimension: 'volume' },
    { field: 'lid', as: 'one', words: ['vent', 'loose', 'tight', 'none'] },
    { field: 'place', as: 'text' },
    { field: 'tap', as: 'yes' },
    { field: 'gasRoomFraction', as: 'figure' },
    { field: 'emptyMass', as: 'amount', dimension: 'mass' },
    { field: 'note', as: 'text' },
  ],
  can: [
    { field: 'name', as: 'text' },
    { field: 'kind', as: 'one', words: ['can', 'jug', 'syringe', 'sprayer', 'spoon'] },
    { field: 'volume', as: 'amount', dimension: 'volume' },
    { field: 'rose', as: 'yes' },
    { field: 'nozzleMm', as: 'figure' },
    { field: 'note', as: 'text' },
  ],
  water: [
    { field: 'source', as: 'one', words: ['tap', 'butt', 'well', 'ditch', 'pond', 'bought', 'other'] },
    { field: 'name', as: 'text' },
    { field: 'chlorine.kind', as: 'one', words: ['free', 'chloramine', 'none', 'unknown'] },
    { field: 'chlorine.mgPerL', as: 'figure' },
    { field: 'alkalinity', as: 'degrees' },
    { field: 'hardness', as: 'degrees' },
    { field: 'ph', as: 'figure' },
    { field: 'ecDsPerM', as: 'figure' },
    { field: 'droppings', as: 'yes' },
    { field: 'reportOn', as: 'date' },
    { field: 'note', as: 'text' },
  ],
} as const satisfies Readonly<Record<string, readonly Asked[]>>;

export type FactForm = keyof typeof factForms;
type ThingKind = 'plot.described' | 'bed.described' | 'vessel.described' | 'can.described';

/** What a form of the facts sheet writes down: the kind and body of one entry. */
export interface FactAct<K extends Kind = Kind> {
  readonly kind: K;
  readonly body: Body<K>;
}
export type FactRead<K extends Kind = Kind> =
  | { readonly ok: true; readonly act: FactAct<K> | undefined }
  | Extract<FormRead<K>, { ok: false }>;

const THINGS = {
  plot: { kind: 'plot.described', ref: undefined },
  about: { kind: 'plot.described', ref: undefined },
  bed: { kind: 'bed.described', ref: 'bed' },
  vessel: { kind: 'vessel.described', ref: 'vessel' },
  can: { kind: 'can.described', ref: 'can' },
} as const satisfies Readonly<Record<string, { kind: ThingKind; ref: string | undefined }>>;

/** Tellings of a thing by other devices that are shown here: what is told of it on this device is told over them. */
export function toldOver(plot: Plot, thing: string, device: string): { readonly over?: string[] } {
  const others = (plot.tellings.get(thing) ?? []).filter((one) => one.device !== device);
  return others.length === 0 ? {} : { over: others.slice(-60).map(({ id }) => id) };
}

/** Reads the form of a thing, new or known; `act` is undefined where nothing was changed. */
export function readThing(
  form: keyof typeof THINGS,
  typed: Typed,
  {
    known,
    countries = {},
    now,
  }: { readonly known?: object | undefined; readonly countries?: Countries; readonly now: string },
): FactRead<ThingKind> {
  const { kind, ref } = THINGS[form];
  const asked: readonly Asked[] = factForms[form];
  const { id, ...base }: { readonly id?: string } = known ?? {};
  const read = readForm(kind, asked, typed, { base, countries, now });
  if (!read.ok) return read;
  const emptied = Object.keys(base).filter((field) => !(field in read.body));
  if (emptied.length > 0) {
    const at = (field: string) => asked.find((one) => one.field.startsWith(field))?.field ?? field;
    const trouble: FieldTrouble = { sentence: words.cannotEmpty };
    return { ok: false, troubles: new Map(emptied.map((field) => [at(field), trouble])) };
  }
  const before: Readonly<Record<string, unknown>> = base;
  const changed = Object.entries(read.body).filter(([key, value]) => canonical(value) !== canonical(before[key]));
  if (changed.length === 0 && known !== undefined) return { ok: true, act: undefined };
  const body = { ...Object.fromEntries(changed), ...(ref !== undefined && id !== undefined && { [ref]: id }) };
  return { ok: true, act: { kind, body: body as Body<ThingKind> } };
}

/** A report of a water: a fact of its day, always told whole. */
export function readWater(typed: Typed, now: string): FactRead<'water.reported'> {
  const read = readForm('water.reported', factForms.water, typed, { now });
  return read.ok ? { ok: true, act: { kind: 'water.reported', body: read.body } } : read;
}

/** A keyholder, new or changed: the plot tells its whole list anew. */
export function readKeyholder(typed: Typed, plot: Plot, tag: string | undefined): FactRead<'plot.described'> {
  const list = plot.facts.keyholders ?? [];
  const at = list.findIndex((one) => one.tag === tag);
  const place = at < 0 ? list.length : at;
  const asked = factForms.keyholder.map((one): Asked => ({ ...one, field: `keyholders.${place}.${one.field}` }));
  const renamed = Object.fromEntries(
    Object.entries(typed).map(([field, text]) => [`keyholders.${place}.${field}`, text]),
  );
  const base = { keyholders: at < 0 ? [...list, {}] : list };
  const read = readForm('plot.described', asked, renamed, { base });
  const bare = (field: string) => field.replace(/^keyholders\.\d+\.|^keyholders\[\d+\]\.?/, '') || 'tag';
  if (!read.ok) return { ok: false, troubles: new Map([...read.troubles].map(([field, one]) => [bare(field), one])) };
  const tags = (read.body.keyholders ?? []).map((one) => one.tag);
  if (new Set(tags).size < tags.length) {
    return { ok: false, troubles: new Map([['tag', { sentence: words.tagTaken(typed.tag ?? '') }]]) };
  }
  return { ok: true, act: { kind: 'plot.described', body: read.body } };
}

/** Whose gallon and spoon and which mark before decimals a keyholder of the plot means; undefined where it must be asked. */
export function countriesOf({ facts }: Pick<Plot, 'facts'>, tag: string): Countries {
  const { gallon, spoon, decimals } = (facts.keyholders ?? []).find((one) => one.tag === tag) ?? {};
  return { gallon: gallon === 'uk' ? 'imperial' : gallon, spoon, style: decimals };
}

/** A bed as a strip: the ground it takes, and what was entered of it. */
export interface BedStrip extends Ground {
  readonly id: string;
  readonly facts: BedFacts;
}

/** Beds that are still there, in walking order; those without a place in it last. */
export function bedStrips(plot: Plot): readonly BedStrip[] {
  const beds = [...plot.beds.values()].map(({ facts }) => facts).filter(({ gone }) => gone !== true);
  const order = ({ walkingOrder = Number.POSITIVE_INFINITY }: BedFacts) => walkingOrder;
  beds.sort((a, b) => (order(a) === order(b) ? 0 : order(a) - order(b)));
  return beds.flatMap((facts) => {
    const strip = stripOf(facts);
    return strip === undefined ? [] : [strip];
  });
}

function stripOf(facts: BedFacts): BedStrip | undefined {
  const ground = groundOf(facts);
  return ground && { id: facts.id, facts, ...ground };
}

/** Beds whose measures are not told, so that they cannot be drawn. */
export function bedsWithoutArea(plot: Plot): readonly BedFacts[] {
  return [...plot.beds.values()]
    .map(({ facts }) => facts)
    .filter((facts) => !facts.gone && stripOf(facts) === undefined);
}

/** Vessels that are still there and have a volume, as they are drawn. */
export function vesselsDrawn(plot: Plot) {
  return [...plot.vessels.values()].flatMap((vessel) => {
    const { id, name = '', volume, gasRoomFraction, gone } = vessel;
    return volume === undefined || gone === true
      ? []
      : [
          {
            id,
            name,
            typed: sayTyped(volume),
            volumeL: volume.volumeL,
            usableL: upToFillLineL({ volumeL: volume.volumeL, gasRoomFraction }),
            shape: basinOf(vessel, 0).shape,
          },
        ];
  });
}

/** What the sheet still wants before the first pail: its name, a vessel, a bed. */
export function firstSteps({ facts, vessels, beds }: Plot) {
  return { name: facts.name !== undefined, vessel: vessels.size > 0, bed: beds.size > 0 };
}

/** Children or a class are about and no number of a poison line is told. */
export function wantsPoisonLine(plot: Plot): boolean {
  return bottleCare(plot).some(({ rule }) => rule === 'bottle-poison-line-not-told');
}

/** What the answers about who is there say where bottles are filled or stand. */
export function bottleCare(plot: Plot): readonly Finding[] {
  return judge(bottleProfileRules, { profile: profileOf(plot), poisonLineTold: plot.facts.poisonLine !== undefined });
}

/** What the answers of the plot make stricter, a line for each. */
export function madeStricter(plot: Plot): readonly string[] {
  return stricterOf(profileOf(plot)).map((answer) => stricter[answer]);
}

/** Stops that were passed over for a bed, as its line on the sheet says them. */
export function passedLines(plot: Plot, bed: string, today: string): readonly string[] {
  const found = plot.beds.get(bed);
  if (found === undefined) return [];
  return passedOverOn(plot, found).map(({ rule, reason, on }) =>
    passWords.passedMark(passableNames[rule] ?? rule, reason, sayDate(on, today)),
  );
}
