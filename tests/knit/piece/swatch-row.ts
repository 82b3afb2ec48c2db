import type { FabricName } from '../../../src/knit/fabric.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Shaping } from '../../../src/knit/piece/recipe.ts';
import { printRow } from '../../../src/knit/row/print.ts';
import type { RowWords } from '../../../src/knit/row/row-words.ts';
import { told } from '../../told.ts';

export interface Swatch {
  readonly fabric: FabricName;
  readonly castOn: number;
  readonly shaping?: readonly Shaping[];
  readonly selvedge?: 'slipped';
  readonly end?: 'bind off';
  /** the second make, the mirror image of the first */
  readonly mirrored?: true;
}

/** The words of one row of a swatch; odd rows are RS rows, worked from the right edge. */
export function rowOf(swatch: Swatch, row: number, words?: RowWords): string {
  const { fabric, castOn, shaping = [], selvedge = 'plain', end = 'hold', mirrored = false } = swatch;
  const made = plan({
    name: 'Swatch',
    makes: mirrored ? 2 : 1,
    mirrored,
    parts: [
      {
        name: 'body',
        from: { castOn },
        selvedge,
        end,
        sections: [{ name: 'all', rows: 8, fabric, needle: 4, shaping }],
      },
    ],
  });
  if (!made.ok) throw new Error(told(made.faults));
  const [part] = (mirrored ? made.value.mirrorParts : made.value.parts) ?? [];
  return printRow(part?.rows[row - 1]?.steps ?? [], words);
}

type Lean = 'mirrored' | 'plain';
type Which = 'both' | 'right' | 'left';

/** `by` stitches at the edge on that row, `inset` stitches in from it. */
export const at = (
  edge: Which,
  by: number,
  inset: number,
  row: number,
  lean: Lean = 'mirrored',
): Shaping => ({
  kind: 'edge',
  edge,
  by,
  rows: [row],
  inset,
  lean,
});

export const across = (by: number, row: number): Shaping => ({ kind: 'across', row, by });

export const group = (
  kind: 'bind off' | 'cast on' | 'turn',
  edge: 'right' | 'left',
  stitches: number,
  row: number,
): Shaping => ({ kind, edge, groups: [{ row, stitches }] });
