import { END, type Item, takenBy } from './notation.ts';

/**
 * 'K 3, * p 6, k 3, repeat from * across row, end k 3': where that does not come out, and the end is that of the last
 * repeat, it is said twice and worked once.
 */
export function endingOnce(items: readonly Item[], live: number): readonly Item[] {
  const at = items.findIndex(({ is }) => is === 'group to');
  const group = items[at];
  const end = items.slice(at + 1);
  if (group?.is !== 'group to' || end.length === 0) return items;
  const before = takenBy(items.slice(0, at));
  const span = takenBy(group.items);
  const last = takenBy(end);
  if (before === undefined || !span || last === undefined) return items;
  const left = live - before;
  if (left <= last || (left - last) % span === 0) return items;
  const cut = cutShort(group.items, end, (left - last) % span);
  if (cut) return [...items.slice(0, at), { ...group, goal: END }, ...cut, ...end];
  if (left % span !== 0) return items;
  const same = JSON.stringify(group.items.slice(-end.length)) === JSON.stringify(end);
  return same ? [...items.slice(0, at), { ...group, goal: END }] : items;
}

/**
 * '* P 3, k 3, repeat from * across row, ending k 4': the last repeat goes as far as the stitches that the end has more of.
 */
function cutShort(inner: readonly Item[], end: readonly Item[], over: number): readonly Item[] | undefined {
  const [first] = end;
  for (let n = 1; n < inner.length; n += 1) {
    const next = inner[n];
    if (takenBy(inner.slice(0, n)) !== over) continue;
    const alike = first?.is === 'stitches' && next?.is === 'stitches' && first.work === next.work;
    return alike && first.times > next.times ? inner.slice(0, n) : undefined;
  }
  return undefined;
}

/**
 * 'Knit 1, purl 1.' as a whole row: a row uses every stitch, so what a rib has is worked all across, where it comes out.
 * 'K 40' on 80 stitches stays as it is: that is half a row.
 */
export function ribAcross(items: readonly Item[], live: number): readonly Item[] {
  if (items.length < 2 || items.length > 4) return items;
  let sum = 0;
  const works = new Set<string>();
  for (const item of items) {
    if (item.is !== 'stitches' || (item.work !== 'k' && item.work !== 'p')) return items;
    if (item.panel || item.rib || item.times > 6) return items;
    sum += item.times;
    works.add(item.work);
  }
  if (works.size < 2 || sum >= live || live % sum !== 0) return items;
  return [{ is: 'group to', items, goal: END }];
}
