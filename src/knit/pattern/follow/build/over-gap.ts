import { END, type Item } from '../../../row/read/notation.ts';
import type { PartBuild } from './build.ts';
import { gapOf } from './gap.ts';

/**
 * 'Knit, casting on 2 sts over those bound off', 'k to gap, cast on 2, k to end': the row goes as far as the gaps of the row
 * before it, nearest first. Undefined where there are none.
 */
export function overGap(items: readonly Item[], part: PartBuild): readonly Item[] | undefined {
  const [first, on, rest, ...more] = items;
  if (first?.is !== 'stitches to' || !('left' in first.goal) || on?.is !== 'stitches' || on.work !== 'co')
    return items;
  const goesOn = rest?.is === 'stitches to' && 'left' in rest.goal && rest.goal.left === 0;
  if (more.length > 0 || (rest !== undefined && !goesOn) || !(on.over || goesOn)) return items;
  const sets = gapOf(part);
  if (sets === undefined) return undefined;
  let left = sets.reduce((sum, n) => sum + n, 0);
  const out: Item[] = [];
  for (let i = sets.length - 1; i > 0; i -= 1) {
    left -= sets[i] as number;
    out.push({ ...first, goal: { left } }, on);
  }
  return [...out, rest ?? { ...first, goal: END }];
}
