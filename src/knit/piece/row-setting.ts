import { type FabricName, fabrics } from '../fabric.ts';
import type { Run } from '../row/shorten.ts';
import type { Side } from '../row/step.ts';
import type { Columns } from './needle.ts';
import type { ShapingMark } from './planned.ts';

/** One row still to be put into words: its stitches in the order worked, and the needle after it. */
export interface BuiltRow {
  readonly runs: readonly Run[];
  readonly columns: Columns;
  readonly marks: readonly ShapingMark[];
}

/** Where a row is worked: which fabric, which of its rows, from which side. */
export interface RowSetting {
  readonly fabric: FabricName;
  /** rows of the piece worked before it; even on RS rows */
  readonly phase: number;
  readonly side: Side;
  readonly slipped: boolean;
  /** columns of the centre stitches at which the section shapes, by their place at its first row */
  readonly centres?: ReadonlyMap<number, number>;
  /** stitches left unworked at either edge by the short rows so far */
  readonly unworked?: Unworked;
}

export interface Unworked {
  readonly right: number;
  readonly left: number;
}

export const allWorked: Unworked = { right: 0, left: 0 };

/** The face of a column on this row: what is worked there so that the fabric goes on as established. */
export function faceOf({ fabric, phase, side }: RowSetting): (column: number) => 'k' | 'p' {
  const { rows } = fabrics[fabric];
  const face = rows[phase % rows.length] ?? 'k';
  const flip = side === 'WS';
  return (column) => {
    const shown = face[((column % face.length) + face.length) % face.length];
    return (shown === 'k') === flip ? 'p' : 'k';
  };
}
