// What a season was meant to be: the grower's own figures, kept beside the record by hand. The sheets are held against what the
// engine makes of these, never against what the record says.

import type { Body } from '#journal/kinds/index.ts';

export interface BookBed {
  readonly id: string;
  readonly name: string;
  readonly tag: string | undefined;
  readonly areaM2: number | undefined;
  readonly fedM2: number | undefined;
  readonly pots: number | undefined;
  /** Litres of one pot. */
  readonly potL: number | undefined;
  readonly crop: string | undefined;
  readonly eaten: Body<'bed.described'>['eaten'];
  readonly feed: Body<'bed.described'>['feed'];
  readonly walkingOrder: number | undefined;
}

export interface BookLot {
  readonly id: string;
  readonly material: string;
  readonly weighedKg: number;
  usedKg: number;
}

export interface BookLook {
  /** Days since the filling, parts of a day counted. */
  readonly day: number;
  readonly ph: number | undefined;
  readonly by: 'meter' | 'strip';
  readonly smell: Body<'peg.looked'>['smell'];
  readonly surface: Body<'peg.looked'>['surface'];
  readonly temperatureC: number | undefined;
}

export interface BookBottles {
  readonly id: string;
  readonly filledEachL: number;
  readonly sizeL: number;
  readonly count: number;
  readonly temperatureC: number | undefined;
  pouredL: number;
}

export interface BookBatch {
  readonly id: string;
  readonly peg: number;
  readonly vesselL: number;
  readonly gasRoom: number;
  readonly lid: 'loose' | 'vent';
  readonly filledDay: number;
  readonly filledMinute: number;
  parts: readonly { readonly material: string; readonly massKg: number }[];
  waterL: number;
  /** Undefined where no report was named. */
  readonly alkalinityMeqPerL: number | undefined;
  fromTap: boolean;
  sugar: { readonly product: string; readonly massKg: number } | undefined;
  /** At filling; undefined where it was not told. */
  readonly temperatureC: number | undefined;
  readonly looks: BookLook[];
  drainedL: number;
  solidsKg: number;
  strained: { readonly day: number; readonly dateDay: number; readonly ph: number; readonly by: 'meter' } | undefined;
  bottles: BookBottles | undefined;
}

export interface BookPour {
  readonly id: string;
  readonly bed: string;
  readonly batch: string;
  readonly day: number;
  readonly pouredL: number;
  readonly concentrateL: number;
  readonly held: boolean;
}

export interface BookFeeding {
  readonly material: string;
  readonly lot: string | undefined;
  /** Exactly one of them was told. */
  readonly massKg: number | undefined;
  readonly volumeL: number | undefined;
}

/** A whole season. */
export class Book {
  sells = false;
  /** Whether anybody reads a thermometer. */
  thermometer = true;
  readonly beds: BookBed[] = [];
  readonly lots: BookLot[] = [];
  readonly batches: BookBatch[] = [];
  readonly pours: BookPour[] = [];
  readonly heap: BookFeeding[] = [];
  heapWaterL = 0;
  readonly vessels: {
    id: string;
    name: string;
    volumeL: number;
    gasRoom: number;
    lid: 'loose' | 'vent' | undefined;
  }[] = [];
  readonly cans: { id: string; volumeL: number }[] = [];
  tap:
    | { readonly id: string; readonly alkalinityMeqPerL: number | undefined; readonly ph: number | undefined }
    | undefined;
}
