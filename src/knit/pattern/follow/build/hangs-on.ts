import { stitchesNamed } from '../../../row/stitches-of-steps.ts';
import type { Build, MadeRow, StitchPattern } from './build.ts';
import { unknownFabric } from './fabric.ts';

/**
 * By each source line that works again what was not understood elsewhere, or goes on from it as established: the line of
 * that sentence.
 */
export function hangsOn({ pieces, unreadLines, patterns }: Build): Map<number, number> {
  const found = new Map<number, number>();
  const known = [...patterns.values()].filter(({ unread }) => unread !== undefined);
  for (const { parts } of pieces)
    for (const { rows } of parts) {
      let last: number | undefined;
      for (const row of rows) {
        const from = row.own === undefined ? undefined : unreadLines.get(row.own);
        last = from ?? (goesOn(row) ? last : undefined) ?? lacking(row, known) ?? unnamed(row);
        if (last !== undefined && last !== row.line && !found.has(row.line)) found.set(row.line, last);
      }
    }
  return found;
}

/** It is of a pattern that has more rows than were understood. */
const lacking = ({ fabric }: MadeRow, known: readonly StitchPattern[]): number | undefined =>
  fabric.is === 'rows'
    ? known.find(({ rows }) => [...rows.values()].some((items) => items === fabric.rows[0]))?.unread
    : undefined;

/** It goes on in what a line before it calls by a name that nobody knows. */
const unnamed = ({ fabric, steps }: MadeRow): number | undefined =>
  fabric.is === 'patt' && stitchesNamed(steps).includes('patt') ? fabric.line : undefined;

/** It is worked as whatever nobody understood before it. */
const goesOn = ({ own, fabric, steps }: MadeRow): boolean =>
  own === undefined && fabric === unknownFabric && stitchesNamed(steps).includes('patt');
