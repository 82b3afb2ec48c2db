import { END, type Item, takenBy } from './notation.ts';

/** A written row on so many stitches: where its words do not come out on them and another usage of the trade does, that is meant. */
export const asCounted = (items: readonly Item[], live: number): readonly Item[] =>
  everyNth(ribCut(allAcross(incBetween(besideGaps(items, live)), live), live), live);

/** 'K 2, inc 1, k to last 2 sts, inc 1, k 2': where no stitch is left to be increased in, they are made between two. */
function incBetween(items: readonly Item[]): readonly Item[] {
  const isInc = (item: Item): boolean => item.is === 'stitches' && item.work === 'inc';
  const at = items
    .map((item) => 'goal' in item && 'left' in item.goal && item.goal.left !== 0)
    .lastIndexOf(true);
  const open = items[at];
  const left = open !== undefined && 'goal' in open && 'left' in open.goal ? open.goal.left : undefined;
  const taken = takenBy(items.slice(at + 1));
  const incs = items.slice(at + 1).filter(isInc).length;
  if (typeof left !== 'number' || incs === 0 || taken !== left + incs) return items;
  return items.map((item) => (isInc(item) ? ({ ...item, work: 'm1' } as Item) : item));
}

/**
 * 'K 15, cast off 4, k 25, cast off 4, k 15' on 65 stitches: the stitch that is left on the needle by casting off is not
 * counted by some, and then every gap has one more behind it.
 */
function besideGaps(items: readonly Item[], live: number): readonly Item[] {
  const behind = (i: number): boolean => {
    const [gap, next] = [items[i - 1], items[i]];
    return (
      gap?.is === 'stitches' && gap.work === 'bo' && i > 1 && next?.is === 'stitches' && next.work !== 'bo'
    );
  };
  const goal = items
    .map((item) => item.is === 'stitches to' && 'left' in item.goal && item.goal.left !== 0)
    .lastIndexOf(true);
  const open = items[goal];
  const to = open?.is === 'stitches to' && 'left' in open.goal ? open.goal.left : undefined;
  const taken = takenBy(items.slice(goal + 1));
  const wanted = goal < 0 ? live : to;
  const gaps = items.filter((_, i) => i > goal + 1 && behind(i)).length;
  if (gaps === 0 || taken === undefined || typeof wanted !== 'number' || wanted - taken !== gaps)
    return items;
  return items.map((item, i) =>
    i > goal + 1 && behind(i) && item.is === 'stitches' ? { ...item, times: item.times + 1 } : item,
  );
}

/** 'K 2 tog, k 3 across': all of it is repeated where the last of it alone does not come out. */
function allAcross(items: readonly Item[], live: number): readonly Item[] {
  const last = items.at(-1);
  if (items.length < 2 || (last?.is !== 'group to' && last?.is !== 'stitches to')) return items;
  const inner: readonly Item[] =
    last.is === 'group to' ? last.items : [{ is: 'stitches', work: last.work, times: 1 }];
  const before = takenBy(items.slice(0, -1));
  const one = takenBy(inner);
  if (inner.length !== 1 || before === undefined || !one) return items;
  const plain = items.slice(0, -1).every(({ is }) => is === 'stitches');
  if (!plain || (live - before) % one === 0 || live % (before + one) !== 0) return items;
  return [{ is: 'group to', items: [...items.slice(0, -1), ...inner], goal: last.goal }];
}

/** 'K 1, p 1 alternately across' on 35 stitches ends with a knit one: a rib is cut where the row ends. */
function ribCut(items: readonly Item[], live: number): readonly Item[] {
  const at = items.findIndex(({ is }) => is === 'group to');
  const last = items[at];
  const beside = [...items.slice(0, at), ...items.slice(at + 1)];
  const taken = takenBy(beside);
  if (last?.is !== 'group to' || taken === undefined || !('left' in last.goal)) return items;
  const span = takenBy(last.items);
  const ribbed = last.items.every(
    (item) => item.is === 'stitches' && (item.work === 'k' || item.work === 'p'),
  );
  const shaped = items
    .slice(at + 1)
    .every((item) => 'work' in item && (item.work === 'inc' || item.work === 'dec'));
  const left = last.goal.left === 0 || last.goal === END ? live - taken : 0;
  if (!ribbed || !shaped || !span || left < span) return items;
  for (let n = 1; n < last.items.length; n += 1) {
    const cut = last.items.slice(0, n);
    if (takenBy(cut) === left % span)
      return [...items.slice(0, at), { ...last, goal: END }, ...cut, ...items.slice(at + 1)];
  }
  return items;
}

/** 'Inc in every 10th st' on 86 stitches: eight of them, and the last six are worked as they are. */
function everyNth(items: readonly Item[], live: number): readonly Item[] {
  const [only] = items;
  const [plain] = only?.is === 'group to' ? only.items : [];
  if (items.length !== 1 || only?.is !== 'group to' || !only.nth || plain?.is !== 'stitches') return items;
  const times = Math.floor(live / (takenBy(only.items) as number));
  return [
    { is: 'group', items: only.items, times },
    { is: 'stitches to', work: plain.work, goal: END },
  ];
}
