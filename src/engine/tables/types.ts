// The shape of the generated tables. scripts/tables.mjs reads data/*.csv, checks them and writes
// generated.ts beside this file; the CSV files are the only truth.

/** One figure of a long-form table: a value or a band, and where it comes from. */
export interface Figure {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Id of data/sources.csv, or 'practice', 'memory', 'our-caution'. */
  readonly source: string;
  readonly mark: 'seen' | 'memory' | 'practice' | 'derived';
}

/** The figures of one row, by quantity; a figure that is not known is absent. */
export type Figures = Readonly<Partial<Record<string, Figure>>>;

/** A row of data/materials.csv: what it is and where it may go. */
export interface MaterialRow {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  readonly into: 'liquid' | 'compost-only' | 'set-aside' | 'out';
  /** One line: why it may not go everywhere; '' for plain liquid materials. */
  readonly why: string;
  readonly whySource: string;
  readonly figures: Figures;
}

/** A row of data/excluded.csv: a plant, or a disease on one, that never goes into the pail. */
export interface ExcludedRow {
  readonly id: string;
  /** Every common name, the first one shown. */
  readonly names: readonly string[];
  readonly latin: string;
  readonly part: string;
  readonly group: 'toxic' | 'irritant' | 'diseased' | 'spreading' | 'slow';
  /** The softest place left: a heap, only a heap that gets hot, or neither pail nor heap. */
  readonly into: 'out' | 'compost-only' | 'hot-heap-only';
  /** One line: why. */
  readonly why: string;
  readonly source: string;
  readonly mark: Figure['mark'];
}

/** A row of data/sugars.csv with its figures. */
export interface SugarRow {
  readonly id: string;
  readonly name: string;
  readonly figures: Figures;
}

/** A row of data/sources.csv. */
export interface SourceRow {
  readonly id: string;
  /** Author, year and title as cited on a screen. */
  readonly cite: string;
  readonly mark: string;
}
