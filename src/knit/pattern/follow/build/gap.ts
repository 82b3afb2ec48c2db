import { expandRow } from '../../../row/expand.ts';
import { stitches } from '../../../stitch.ts';
import type { Build, PartBuild, PieceBuild } from './build.ts';
import { isDone, split } from './part.ts';

/** A gap in the middle of the last row parts the stitches; the set last worked goes on. */
export function resolveGap(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  which: 'first' | 'last' = 'last',
): PartBuild {
  const sets = part.gap;
  if (sets === undefined || isDone(part)) return part;
  return split(build, piece, part, sets, which === 'first' ? 0 : sets.length - 1);
}

/**
 * Sets of stitches parted by a gap in the middle of the last row, in the order worked.
 * @param cuts stitches made before each place where the row parts them without a gap
 */
export function gapOf(part: PartBuild, cuts: readonly number[] = []): readonly number[] | undefined {
  const row = part.rows.at(-1);
  if (!row) return undefined;
  const sets: number[] = [];
  let set = 0;
  let made = 0;
  for (const work of expandRow(row.steps, row.before)) {
    const { makes } = stitches[work];
    if (work === 'bo' || work === 'hold') {
      if (set > 0) sets.push(set);
      set = 0;
    } else {
      set += makes;
      made += makes;
      if (makes > 0 && cuts.includes(made)) {
        sets.push(set);
        set = 0;
      }
    }
  }
  if (set > 0) sets.push(set);
  return sets.length > 1 ? sets : undefined;
}
