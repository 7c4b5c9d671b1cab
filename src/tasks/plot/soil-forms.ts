// A soil report as it is typed, line by line: value, unit, method and depth as the report has them. Each line says at once
// what it tests and by which published scale; a line that cannot be right is asked about and gives no class, and is kept
// as typed only where the grower says so.

import { organicMatterNGPerM2 } from '#engine/ground/need.ts';
import {
  nitrateNGPerM2,
  readMethod,
  readNitrateUnit,
  readSoilTest,
  readSoilUnit,
  type SoilReading,
} from '#engine/ground/soil-test.ts';
import { plainText, readFigure } from '#engine/quantity/number.ts';
import { soilTestRules } from '#engine/rules/ground.ts';
import { judge } from '#engine/rules/rule.ts';
import { citation } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { soilForm as words } from '#words/en/ground-forms.ts';
import { groundCautions } from '#words/en/ledger.ts';
import { spoken } from '../caution.ts';
import { type FieldTrouble, type FormRead, readForm } from './form.ts';

type Line = Body<'soil.tested'>['figures'][number];
export type SoilWhat = Line['what'];

/** What a line may be of, those of the ledger first. */
export const SOIL_WHAT: readonly SoilWhat[] = [
  'p',
  'k',
  'nitrate',
  'organic-matter',
  'ph',
  'n',
  'ca',
  'mg',
  'ec',
  'other',
];

/** One line as typed. */
export interface SoilRow {
  readonly what: SoilWhat;
  readonly value: string;
  readonly unit: string;
  readonly method: string;
  /** "20", "20 cm" or "8 in". */
  readonly depth: string;
}

export interface SoilTyped {
  readonly of: 'bed' | 'plot';
  readonly rows: readonly SoilRow[];
  readonly laboratory: string;
  readonly note: string;
  /** Lines in question are kept as typed all the same. */
  readonly insists: boolean;
}

/** What a line says as it stands; a line left empty says nothing. */
export interface SoilRowSaid {
  readonly says: readonly string[];
  /** Why no class is given. */
  readonly question?: { readonly text: string; readonly source: string } | undefined;
}

export interface SoilRead {
  readonly read: FormRead<'soil.tested'>;
  readonly rows: readonly SoilRowSaid[];
}

/** Reads a report for a bed, or for the whole plot. */
export function readSoilReport(
  typed: SoilTyped,
  { plot, bed }: { readonly plot: Plot; readonly bed: string },
): SoilRead {
  const troubles = new Map<string, FieldTrouble>();
  const lines = typed.rows.map((row, i) => {
    if (row.value.trim() === '' && row.unit.trim() === '' && row.method.trim() === '') return undefined;
    const { line, wrong } = lineOf(row);
    for (const [field, sentence] of wrong) troubles.set(`figures.${i}.${field}`, { sentence });
    return line;
  });
  const soilPh =
    lines.findLast((line) => line?.what === 'ph')?.value ?? phOf(plot, typed.of === 'bed' ? bed : undefined);
  const name = typed.of === 'plot' ? words.thePlot : (plot.beds.get(bed)?.facts.name ?? words.thePlot);
  const rows = lines.map((line): SoilRowSaid => (line === undefined ? { says: [] } : saidOf(line, { name, soilPh })));
  if (lines.every((line) => line === undefined) && troubles.size === 0) {
    troubles.set('figures', { sentence: words.noRow });
  }
  if (!typed.insists && rows.some(({ question }) => question !== undefined)) {
    troubles.set('insists', { sentence: words.insistFirst });
  }
  const figures = lines.flatMap((line) => line ?? []);
  const base = { ...(typed.of === 'bed' && { bed }), figures };
  const asked = [
    { field: 'laboratory', as: 'text' },
    { field: 'note', as: 'text' },
  ] as const;
  const read = readForm('soil.tested', asked, { laboratory: typed.laboratory, note: typed.note }, { base });
  if (troubles.size === 0) return { read, rows };
  const rest = read.ok ? [] : [...read.troubles].filter(([field]) => !field.startsWith('figures'));
  return { read: { ok: false, troubles: new Map([...rest, ...troubles]) }, rows };
}

type Wrong = readonly (readonly [field: 'value' | 'unit' | 'depth', sentence: string])[];

function lineOf({ what, value, unit, method, depth }: SoilRow): { readonly line?: Line; readonly wrong: Wrong } {
  const wrong: (readonly ['value' | 'unit' | 'depth', string])[] = [];
  const text = value.trim();
  const plain = plainText(text);
  const share = /^(.*\d)\s*%$/.exec(plain)?.[1];
  const figure = readFigure(share ?? plain);
  if (text === '') wrong.push(['value', words.noValue]);
  else if (!figure.ok)
    wrong.push(['value', figure.why === 'not-a-number' ? words.notFigure(text) : words.twoWays(text)]);
  // "30 ppm" in the place of the value says its unit too.
  const behind = share === undefined ? (figure.ok ? figure.rest.trim() : '') : '%';
  const named = unit.trim() || behind || IMPLIED[what] || '';
  if (behind !== '' && unit.trim() !== '' && behind !== unit.trim()) wrong.push(['value', words.notFigure(text)]);
  if (named === '') wrong.push(['unit', words.noUnit]);
  if (figure.ok && what === 'ph' && !(figure.value >= 2 && figure.value <= 12))
    wrong.push(['value', words.badPh(text)]);
  if (figure.ok && named === '%' && figure.value > 100) wrong.push(['value', words.badPercent(text)]);
  const depthCm = depthOf(depth);
  if (depthCm === 'unread') wrong.push(['depth', words.badDepth(depth.trim())]);
  if (wrong.length > 0 || !figure.ok) return { wrong };
  return {
    wrong,
    line: {
      what,
      typed: behind === '' ? text : plain.slice(0, plain.length - behind.length).trim(),
      value: figure.value,
      unit: named,
      ...(method.trim() !== '' && { method: method.trim() }),
      ...(typeof depthCm === 'number' && { depthCm }),
    },
  };
}

/** Units that a report need not print. */
const IMPLIED: Readonly<Partial<Record<SoilWhat, string>>> = { ph: 'pH', 'organic-matter': '%' };
/** @arithmetic the international inch */
const CM_PER_INCH = 2.54;

function depthOf(typed: string): number | 'unread' | undefined {
  const text = typed.trim();
  if (text === '') return undefined;
  const figure = readFigure(plainText(text));
  if (!figure.ok) return 'unread';
  const unit = figure.rest.trim().toLowerCase();
  const cm = /^(in|inch|inches|")$/.test(unit)
    ? figure.value * CM_PER_INCH
    : unit === '' || unit === 'cm'
      ? figure.value
      : Number.NaN;
  return cm >= 1 && cm <= 300 ? cm : 'unread';
}

/** pH of the soil as last told, of the bed before that of the plot. */
function phOf(plot: Plot, bed: string | undefined): number | undefined {
  const own = bed === undefined ? [] : (plot.beds.get(bed)?.soilTests ?? []);
  return [...plot.soilTests.filter(({ body }) => body.bed === undefined), ...own]
    .flatMap(({ body }) => body.figures)
    .findLast(({ what }) => what === 'ph')?.value;
}

interface Around {
  readonly name: string;
  readonly soilPh: number | undefined;
}

function saidOf(line: Line, around: Around): SoilRowSaid {
  switch (line.what) {
    case 'p':
    case 'k':
      return classOf(line, line.what, around);
    case 'nitrate': {
      const unit = readNitrateUnit(line.unit);
      if (unit === undefined) return ask(words.nitrateUnit);
      const { value, depthCm } = line;
      return {
        says: [words.nitrate(nitrateNGPerM2({ value, unit, depthCm }), unit === 'ppm' && depthCm === undefined)],
      };
    }
    case 'organic-matter':
      return line.unit === '%' ? { says: [words.matter(organicMatterNGPerM2(line.value))] } : ask(words.matterUnit);
    case 'ph':
      return { says: [words.ph] };
    default:
      return { says: [words.kept] };
  }
}

function ask(text: string): SoilRowSaid {
  return { says: [], question: { text, source: citation('our-caution') } };
}

function classOf(line: Line, element: 'p' | 'k', { name, soilPh }: Around): SoilRowSaid {
  const method = line.method === undefined ? undefined : readMethod(line.method);
  const unit = readSoilUnit(line.unit);
  const reading: SoilReading = { element, value: line.value, unit: unit ?? 'ppm', method, soilPh };
  const found =
    method !== undefined && unit === undefined
      ? ({ kind: 'question', why: 'unit-not-for-method' } as const)
      : readSoilTest(reading);
  if (found.kind === 'class') {
    const others = words.others(found.others.map((other) => ({ class: other.class, source: citation(other.source) })));
    return { says: [words.class(found.class, citation(found.source)), others].filter((one) => one !== '') };
  }
  const situation = { bed: name, element, typed: typedOf(line), question: found.why, method, soilPh, others: [] };
  const [caution] = spoken(judge(soilTestRules, situation), groundCautions);
  return { says: [], question: { text: caution?.text ?? words.kept, source: caution?.source ?? '' } };
}

function typedOf({ typed, unit, method }: Line): string {
  return [`${typed} ${unit}`, ...(method === undefined ? [] : [method])].join(', ');
}
