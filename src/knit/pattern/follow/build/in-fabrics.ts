import { type Goal, type Item, takenBy } from '../../../row/read/notation.ts';
import type { Side } from '../../../row/step.ts';
import type { StitchName } from '../../../stitch.ts';

/**
 * 'Work 6 sts in garter st, k to end': what a row names a fabric for is worked in that, whatever is on the needle.
 * @param main the fabric that is on the needle anyway, where it has a name
 * @param looks what each stitch looks like from this side, in the order worked; undefined where nobody knows
 */
export function inFabrics(
  items: readonly Item[],
  side: Side,
  count: number,
  main: string | undefined,
  looks: readonly StitchName[] | undefined,
): readonly Item[] {
  return items.flatMap((item, i): readonly Item[] => {
    if ((item.is !== 'stitches' && item.is !== 'stitches to') || item.fabric === undefined) return [item];
    const { fabric, ...plain } = item;
    if (fabric === main) return [plain];
    if (fabric === 'garter') return [{ ...plain, work: 'k' }];
    if (fabric === 'stocking') return [{ ...plain, work: side === 'RS' ? 'k' : 'p' }];
    const before = takenBy(items.slice(0, i));
    // 'in moss st to last 3 sts': as many as are there
    const times = plain.is === 'stitches' ? plain.times : count - (before ?? count) - leftBy(plain.goal);
    if (!(times > 0)) return [plain];
    const behind = takenBy(items.slice(i));
    const from = before ?? (behind === undefined ? undefined : count - behind);
    return moss(times, from === undefined ? undefined : looks?.slice(from, from + times));
  });
}

const leftBy = (goal: Goal): number =>
  'left' in goal && typeof goal.left === 'number' ? goal.left : Number.NaN;

/** More of them are said in pairs. */
const MOST_SPELLED = 12;

/** Each stitch the other way round than it looks; by turns where it has only begun. */
function moss(times: number, looks: readonly StitchName[] | undefined): Item[] {
  const goesOn = looks?.length === times && looks.every((look, i) => i === 0 || look !== looks[i - 1]);
  const first = goesOn && looks[0] === 'k' ? 'p' : 'k';
  const one = (i: number): Item => ({
    is: 'stitches',
    work: (i % 2 === 0) === (first === 'k') ? 'k' : 'p',
    times: 1,
  });
  if (times <= MOST_SPELLED) return Array.from({ length: times }, (_, i) => one(i));
  const pairs: Item = { is: 'group', items: [one(0), one(1)], times: Math.floor(times / 2) };
  return times % 2 === 0 ? [pairs] : [pairs, one(0)];
}
