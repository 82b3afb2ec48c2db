import { expandRow } from '../../../row/expand.ts';
import type { Side, Step } from '../../../row/step.ts';
import type { StitchName } from '../../../stitch.ts';
import type { FabricState, Face } from './fabric-state.ts';

/**
 * The stitches of one plain row of a fabric, from the right edge to the left as seen with the right side facing,
 * in the words of the side on which the row is worked.
 * @returns undefined where the fabric's next row is not made of knit and purl stitches alone
 */
export function spellFabric(
  fabric: FabricState,
  fabricRow: number,
  side: Side,
  column: number,
  count: number,
): StitchName[] | undefined {
  if (fabric.is === 'patt') return undefined;
  const look =
    fabric.is === 'face'
      ? lookOfFace(fabric.rows, fabricRow)
      : lookOfRow(fabric.faces[fabricRow % fabric.rows.length]);
  if (look === undefined) return undefined;
  const out: StitchName[] = [];
  for (let i = 0; i < count; i += 1) out.push(stitchFor(look(column + i), side));
  return out;
}

const stitchFor = (look: string, side: Side): StitchName => ((look === 'k') === (side === 'RS') ? 'k' : 'p');

function lookOfFace(rows: readonly string[], fabricRow: number): (column: number) => string {
  const row = rows[fabricRow % rows.length] ?? 'k';
  return (column) => row.charAt(((column % row.length) + row.length) % row.length);
}

/** Beyond the columns that were worked the row goes on in its own period. */
function lookOfRow(face: Face | undefined): ((column: number) => string) | undefined {
  if (face === undefined || face.looks.length === 0) return undefined;
  const { column: first, looks } = face;
  const period = periodOf(looks);
  return (column) => {
    const at = column - first;
    if (at >= 0 && at < looks.length) return looks.charAt(at);
    const middle = Math.floor(looks.length / 2);
    const shifted = middle + ((((at - middle) % period) + period) % period);
    return looks.charAt(shifted) || 'k';
  };
}

/** The shortest period of the middle of the row; edge stitches are not part of it. */
function periodOf(looks: string): number {
  const edge = Math.min(3, Math.floor(looks.length / 6));
  for (let period = 1; period <= looks.length / 2 && period <= 40; period += 1) {
    let fits = true;
    for (let i = edge; i + period < looks.length - edge && fits; i += 1)
      fits = looks.charAt(i) === looks.charAt(i + period);
    if (fits) return period;
  }
  return looks.length;
}

/** How a worked row looks from the right side, right edge first; undefined when it is not all knit and purl. */
export function looksOf(works: readonly StitchName[], side: Side): string | undefined {
  let looks = '';
  for (const work of works) {
    if (work !== 'k' && work !== 'p') return undefined;
    looks += (work === 'k') === (side === 'RS') ? 'k' : 'p';
  }
  return side === 'RS' ? looks : [...looks].reverse().join('');
}

/**
 * The stitch that all plain stitches of a row are; undefined where it has both knit and purl ones, or was worked on
 * another side than the one asked for.
 */
export function plainWork(
  row: { readonly steps: readonly Step[]; readonly before: number; readonly side: Side },
  side: Side,
): 'k' | 'p' | undefined {
  if (row.side !== side) return undefined;
  const plain = new Set(expandRow(row.steps, row.before).filter((work) => work === 'k' || work === 'p'));
  const [only] = plain;
  return plain.size === 1 && (only === 'k' || only === 'p') ? only : undefined;
}
