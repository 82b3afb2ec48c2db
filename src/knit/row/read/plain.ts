import { isStitchName, type StitchName } from '../../stitch.ts';
import { takeColourBehind } from './colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  peekWord,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeWhole,
} from './cursor.ts';
import { readCount, readGoal, takeSts } from './goal.ts';
import type { Item } from './notation.ts';

/** A stitch; `bare`: its number was not said, so that 'k' can mean the whole row. */
export interface ReadItem {
  readonly item: Item;
  readonly bare?: true;
}

export const counted = (work: StitchName, times: number): ReadItem => ({
  item: { is: 'stitches', work, times },
});

export const bare = (work: StitchName): ReadItem => ({ ...counted(work, 1), bare: true });

const TBL = ['tbl', 'through the? back loop', 'through the? back of st|sts|loop'];

/** After 'k', 'knit', 'p', 'purl': count, 'tog', 'tbl', 'front and back', or how far. */
export function readPlain(c: Cursor): ReadItem | undefined {
  const base = sees(c, 'k', 'knitting', 'plain') ? 'k' : 'p';
  c.at += 1;
  const quick = readQuick(c, base);
  if (quick) return quick;
  const other = base === 'k' ? 'p|purled' : 'k|knitted';
  const own = base === 'k' ? 'k|knitted' : 'p|purled';
  if (takeAnyPhrase(c, `the ${other} st|sts ,? and? ${base === 'k' ? 'p' : 'k'} the ${own} st|sts`)) {
    const item = asEstablished(c).item;
    return { item: { ...item, opposite: true } as Item };
  }
  if (takeAnyPhrase(c, `the ${own} st|sts ,? and? ${base === 'k' ? 'p' : 'k'} the ${other} st|sts`))
    return asEstablished(c);
  const onRight = readOnRightNeedle(c);
  if (onRight !== undefined) return counted(base, onRight);
  const special = readInto(c, base) ?? readBack(c, base);
  if (special) return special;
  const goal = readGoal(c);
  if (goal) {
    const work = takeAnyPhrase(c, ...TBL) ? (`${base} tbl` as const) : base;
    return { item: { is: 'stitches to', work, goal } };
  }
  const glued = c.tokens[c.at]?.glued === true;
  const n = readCount(c);
  if (n === undefined) return readUncounted(c, base);
  return readCounted(c, base, n, glued);
}

/** 'k2,' and 'p3 k' need no further look: the commonest stitches of all are read first. */
function readQuick(c: Cursor, base: 'k' | 'p'): ReadItem | undefined {
  const n = c.tokens[c.at];
  if (n?.kind !== 'number' || c.at >= c.end || !Number.isSafeInteger(n.value)) return undefined;
  const after = c.at + 1 < c.end ? c.tokens[c.at + 1] : undefined;
  if (after !== undefined && !(after.kind === 'mark' && ',;*)]}'.includes(after.text))) return undefined;
  c.at += 1;
  return counted(base, n.value);
}

/** 'k2', 'k2tog', 'k1 tbl', 'k1b', 'k1f&b', 'k 3 sts'. */
function readCounted(c: Cursor, base: 'k' | 'p', n: number, glued: boolean): ReadItem | undefined {
  // 'k2 B' is knitted in yarn B where there is a yarn A
  if (ahead(c, () => takeColourBehind(c))) return counted(base, n);
  if (glued && peekGlued(c, 'b')) {
    c.at += 1;
    return counted(base === 'k' ? 'k1 below' : 'p1 below', n);
  }
  if (n === 1 && takeAnyPhrase(c, 'fb|bf', 'f and|/|-? b')) return counted(`${base}fb`, 1);
  // 'ending with k 2 more sts'
  attempt(c, () => takes(c, 'more') && sees(c, 'st', 'sts'));
  const stsSaid = takeSts(c);
  if (takes(c, 'tog')) return together(c, base, n);
  if (takes(c, 'togtbl')) return together(c, base, n, true);
  if (takePhrase(c, 'into back|front and back|front') && n === 1) return counted(`${base}fb`, 1);
  if (takeAnyPhrase(c, ...TBL, 'b', 'into back', 'in back of st|sts|loop')) {
    return takes(c, 'tog') ? together(c, base, n, true) : counted(`${base} tbl`, n);
  }
  if (takePhrase(c, 'in? the|next? row|st? below')) {
    return counted(base === 'k' ? 'k1 below' : 'p1 below', n);
  }
  if (takePhrase(c, 'from|off the? st|a|back|front? holder')) {
    return counted('take', n);
  }
  if (!stsSaid) takeAnyPhrase(c, 'from left needle');
  return counted(base, n);
}

function together(c: Cursor, base: 'k' | 'p', n: number, back = false): ReadItem | undefined {
  const tbl = takeAnyPhrase(c, '- tbl', ...TBL, 'b', 'in back of st|sts|loop') || back;
  const plain = `${base}${n}tog`;
  const known = [...(tbl ? [`${plain} tbl`] : []), plain].find(isStitchName);
  return known && counted(known, 1);
}

function readUncounted(c: Cursor, base: 'k' | 'p'): ReadItem | undefined {
  if (takes(c, 'tog')) return counted(`${base}2tog`, 1);
  if (takePhrase(c, 'next st')) {
    return takeAnyPhrase(c, ...TBL) ? counted(`${base} tbl`, 1) : counted(base, 1);
  }
  if (takeAnyPhrase(c, ...TBL)) return counted(`${base} tbl`, 1);
  if (takePhrase(c, 'a? st')) return counted(base, 1);
  return bare(base);
}

/** 'k into front and back of next st', 'k in back of next 2 sts', 'knit into the st below'. */
const readInto = (c: Cursor, base: 'k' | 'p'): ReadItem | undefined =>
  attempt(c, () => {
    if (takeAnyPhrase(c, 'fb', 'f and b')) return counted(`${base}fb`, 1);
    const n = takeNumber(c);
    if (takeAnyPhrase(c, 'twice in|into')) {
      takes(c, 'the');
      takes(c, 'next', 'same', 'each', 'every', 'first', 'last');
      return takeSts(c) ? counted(`${base}fb`, 1) : undefined;
    }
    if (takes(c, 'in', 'into', 'through')) {
      takes(c, 'the');
      if (takeAnyPhrase(c, 'front ,? back and front', 'f b and f', 'front , back , front') && base === 'k') {
        return counted('kfbf', ofNext(c));
      }
      if (
        takeAnyPhrase(
          c,
          'front and? then? in|into? back',
          'f and b',
          'fb',
          'back and then? front',
          'front loop and|then back loop',
        )
      ) {
        return counted(`${base}fb`, ofNext(c));
      }
      if (takeAnyPhrase(c, 'back loop', 'back')) {
        const each = ofNext(c);
        return counted(`${base} tbl`, each > 1 ? each : (n ?? 1));
      }
      if (takeAnyPhrase(c, 'row below', 'next? st below', 'next st in row below')) {
        return counted(base === 'k' ? 'k1 below' : 'p1 below', 1);
      }
    }
  });

const readBack = (c: Cursor, base: 'k' | 'p'): ReadItem | undefined =>
  takes(c, 'tbl') ? counted(`${base} tbl`, takeNumber(c) ?? 1) : undefined;

/** 'of next st', 'of each of next 3 sts'. */
export function ofNext(c: Cursor): number {
  if (sees(c, 'of', 'in', 'into')) return readOfNext(c) ?? 1;
  if (takes(c, 'next')) takeSts(c);
  return 1;
}

export const readOfNext = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (!takes(c, 'of', 'in', 'into')) return undefined;
    takes(c, 'each', 'every');
    takes(c, 'of', 'in');
    takes(c, 'the');
    takes(c, 'same', 'next', 'first', 'last', 'foll');
    const n = takeWhole(c);
    takes(c, 'same');
    return takeSts(c) || takes(c, 'loop') ? (n ?? 1) : undefined;
  });

/** 'k until there are 10 sts on right needle', said after stitches were bound off. */
const readOnRightNeedle = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (takeAnyPhrase(c, 'until there are', 'until you have')) {
      const n = takeWhole(c);
      if (n !== undefined && takeSts(c) && takePhrase(c, 'on the? right|rh -? hand? needle')) {
        takeAnyPhrase(c, 'after bind|cast off', 'after bo');
        return n;
      }
    }
  });

/** 'as they appear': what each stitch shows is worked again. */
function asEstablished(c: Cursor): ReadItem {
  takeAnyPhrase(c, 'as they appear|face you?', 'as they are|present themselves?', 'as set|est');
  const goal = readGoal(c);
  return {
    item: { is: 'stitches to', work: 'patt', goal: goal ?? { left: 'what follows' }, appear: true },
  };
}

function peekGlued(c: Cursor, text: string): boolean {
  return peekWord(c) === text && c.tokens[c.at]?.glued === true;
}
