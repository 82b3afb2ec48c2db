import { expandRow } from '../../../row/expand.ts';
import { shortenWorks } from '../../../row/shorten.ts';
import type { Side, Step } from '../../../row/step.ts';
import { type StitchName, stitches } from '../../../stitch.ts';
import type { Edit } from './edit.ts';

/**
 * A row that the text spells, with what another shaping does to its edges at the same time: the two plain stitches
 * nearest to the edge become a decrease, the nearest one an increase.
 */
export function mergeEdits(
  steps: readonly Step[],
  count: number,
  edits: readonly Edit[],
  side: Side,
): Step[] {
  let works = expandRow(steps, count);
  for (const edit of edits) {
    const atStart = (edit.at === 'right') === (side === 'RS');
    const ordered = atStart ? works : [...works].reverse();
    const merged = edit.work ? withGroup(ordered, edit.work, edit.stitches) : mergeOne(ordered, edit.change);
    works = atStart ? merged : merged.reverse();
  }
  return shortenWorks(works);
}

const isPlain = (work: StitchName | undefined): boolean =>
  work !== undefined && stitches[work].role === 'plain' && work !== 'unworked';

/** Stitches bound off in place of the first ones, where each of these takes one; cast on before them. */
function withGroup(works: readonly StitchName[], work: 'bo' | 'co', n: number): StitchName[] {
  const group = new Array<StitchName>(n).fill(work);
  if (work === 'co') return [...group, ...works];
  const first = works.slice(0, n);
  return first.length === n && first.every(isPlain) ? [...group, ...works.slice(n)] : [...works];
}

function mergeOne(works: readonly StitchName[], change: number): StitchName[] {
  const out = [...works];
  for (let done = 0; done < Math.abs(change); done += 1) {
    const at = out.findIndex((work, i) => isPlain(work) && (change > 0 || isPlain(out[i + 1])));
    if (at < 0) return out;
    out.splice(at, change > 0 ? 1 : 2, change > 0 ? 'inc' : 'dec');
  }
  return out;
}
