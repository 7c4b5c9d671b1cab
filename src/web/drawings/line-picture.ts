// What the drawing of the line is handed: words and litres for each stretch. Both ways of laying it out, upright and
// lying, take the same picture and give the same kind of places; line-drawing.tsx draws them.

import type { VesselShape } from '#engine/pail/shape.ts';
import type { State } from '#engine/souring/reason.ts';
import type { PegSaid, Said } from '#words/en/line.ts';
import type { Scale, StripAt } from './line-geometry.ts';
import type { Stand } from './vessel-geometry.ts';

export interface Linked {
  readonly to: string;
}

export interface PictureStrip {
  readonly id: string;
  readonly tag: string;
  readonly lengthM: number;
  readonly widthM: number;
  readonly fedFraction: number;
  readonly pots: number;
  /** Width of a pot as a share of the place it stands on. */
  readonly discFraction: number;
}

export interface PicturePeg extends PegSaid, Linked {
  readonly state: State;
  readonly shape: VesselShape;
  readonly presentL: number;
  readonly usableL: number;
}

export interface LinePicture {
  readonly title: string;
  readonly pailName: string;
  readonly scraps: Said & Linked & { readonly inL: number; readonly asideL: number; readonly hatch: string };
  readonly pegs: readonly PicturePeg[];
  /** Stands in the place of the pegs while there is none. */
  readonly noPeg: Said & Linked;
  readonly bottles: Said &
    Linked & {
      readonly each: readonly { readonly litres: number; readonly sizeL: number }[];
      readonly takes: { readonly litres: number; readonly text: string } | undefined;
    };
  readonly can: Said & Linked & { readonly canL: number; readonly concentrateFraction: number };
  readonly beds: Said & Linked & { readonly strips: readonly PictureStrip[] };
  readonly heap: Said;
  readonly scale: {
    readonly beds: string;
    readonly oneMetre: string;
    readonly things: string;
    readonly halfMetre: string;
    readonly fifthMetre: string;
  };
  /** Beside the dotted branch, where there is room. */
  readonly toHeap: string;
  readonly andMore: (count: number) => string;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A block of words: name, figure, notes, and what wants a hand. */
export interface Words {
  readonly x: number;
  readonly y: number;
  readonly name?: string | undefined;
  readonly figure?: string | undefined;
  readonly notes: readonly string[];
  /** Notes stand to the right of the figure instead of beneath. */
  readonly notesX?: number | undefined;
  readonly hand?: string | undefined;
}

export interface PegPlace {
  readonly peg: PicturePeg;
  readonly hit: Box;
  readonly stand: Stand;
  readonly words: Words;
}

export interface BottlePlace extends Box {
  /** Share of the body that is full. */
  readonly fraction: number;
}

/** Everything of the line where it stands, px. */
export interface LineLayout {
  readonly width: number;
  readonly height: number;
  readonly scale: Scale;
  readonly scraps: {
    readonly hit: Box;
    readonly words: Words;
    /** Bottom left corners of heap and sack. */
    readonly heap: Box | undefined;
    readonly brokenOff: boolean;
    readonly sack: Box | undefined;
  };
  readonly pail: Words | undefined;
  readonly noPegHit: Box | undefined;
  readonly pegs: readonly PegPlace[];
  readonly bottles: {
    readonly hit: Box;
    readonly words: Words;
    readonly each: readonly BottlePlace[];
    readonly more: { readonly x: number; readonly y: number; readonly count: number } | undefined;
    readonly takes: { readonly x: number; readonly y: number; readonly width: number } | undefined;
  };
  readonly can: { readonly hit: Box; readonly words: Words; readonly body: Box };
  readonly beds: {
    readonly hit: Box;
    readonly words: Words;
    readonly strips: readonly StripAt[];
    readonly pxPerM: number;
    readonly scaleAt: { readonly x: number; readonly y: number };
  };
  readonly heap: { readonly body: Box; readonly words: Words };
  readonly scaleAt: { readonly x: number; readonly y: number };
  readonly benches: readonly string[];
  /** The line itself; dashed where nothing flows yet. */
  readonly flows: readonly string[];
  readonly waitingFlows: readonly string[];
  readonly pours: readonly string[];
  readonly solids: readonly string[];
  readonly solidsAt?: { readonly x: number; readonly y: number } | undefined;
  /** Points of arrows, and the way they point. */
  readonly tips: readonly { readonly x: number; readonly y: number; readonly way: 'down' | 'left' | 'right' }[];
}

/** Height that a block of words takes. */
export function wordsHeight({ name, figure, notes, notesX, hand }: Words): number {
  const head = (name === undefined ? 0 : 26) + (figure ? 44 : 0);
  const beneath = notesX === undefined ? notes.length * 23 : Math.max(0, notes.length * 23 - 44);
  return head + beneath + (hand === undefined ? 0 : 25) + 8;
}
