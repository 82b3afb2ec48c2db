import { type Item, takenBy } from '../../../row/read/notation.ts';
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
    if (plain.is !== 'stitches') return [plain];
    const behind = takenBy(items.slice(i));
    const from = takenBy(items.slice(0, i)) ?? (behind === undefined ? undefined : count - behind);
    return moss(plain.times, from === undefined ? undefined : looks?.slice(from, from + plain.times));
  });
}

/** Each stitch the other way round than it looks; by turns where it has only begun. */
function moss(times: number, looks: readonly StitchName[] | undefined): Item[] {
  const goesOn = looks?.length === times && looks.every((look, i) => i === 0 || look !== looks[i - 1]);
  const first = goesOn && looks[0] === 'k' ? 'p' : 'k';
  return Array.from({ length: times }, (_, i) => ({
    is: 'stitches',
    work: (i % 2 === 0) === (first === 'k') ? 'k' : 'p',
    times: 1,
  }));
}
