import {
  attempt,
  type Cursor,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeWhole,
} from '../../row/read/cursor.ts';
import type { Side } from '../../row/step.ts';
import { readSide } from './phrase/side.ts';

/** Rows of a border, the first on the right side; each as it looks from there. */
export interface BorderRows {
  readonly is: 'border rows';
  readonly rows: readonly string[];
}

/**
 * 'in pattern of p 2, k 5, p 2 on the right side', 'which are knitted on RS and on WS are worked k 2, p 3, k 2': the rows
 * of a border over so many stitches, as each of them looks from the right side.
 */
export const readBorderRows = (c: Cursor, stitches: number): BorderRows | undefined =>
  attempt(c, () => {
    const right = readFace(c, stitches, 'RS');
    if (right === undefined) return undefined;
    const wrong = attempt(c, () => {
      takes(c, ',');
      takes(c, 'and', 'but');
      return readFace(c, stitches, 'WS');
    });
    const faces = [right, wrong ?? right] as const;
    // what is not the same from either end may be meant either way round
    return faces.every((face) => [...face].reverse().join('') === face)
      ? { is: 'border rows', rows: faces }
      : undefined;
  });

/** 'worked in pattern of p 2, k 5, p 2 on RS', 'on WS are worked k 2, p 3, k 2'. */
const readFace = (c: Cursor, stitches: number, side: Side): string | undefined =>
  attempt(c, () => {
    const before = takeSideOf(c, side);
    takeAnyPhrase(c, 'which|that? are|is', 'which|that');
    takes(c, 'worked', 'working', 'work', 'kept');
    takeAnyPhrase(c, 'in? patt of', 'in|as');
    const looks = readStitches(c, stitches);
    takes(c, ',');
    if (looks === undefined || (!before && !takeSideOf(c, side))) return undefined;
    return side === 'RS' ? looks : [...looks].map((one) => (one === 'k' ? 'p' : 'k')).join('');
  });

const takeSideOf = (c: Cursor, side: Side): boolean =>
  attempt(c, () => {
    if (!takePhrase(c, 'on the?') || readSide(c) !== side) return false;
    takes(c, 'rows', 'row');
    takePhrase(c, 'of the? work|piece');
    return true;
  });

/** 'k 2, p 3, k 2', or 'knitted' and 'purled': all of them. */
const readStitches = (c: Cursor, stitches: number): string | undefined =>
  attempt(c, () => {
    let out = '';
    while (out.length < stitches) {
      if (out !== '') takes(c, ',');
      const work = takes(c, 'k', 'knitted') ? 'k' : takes(c, 'p', 'purled') ? 'p' : undefined;
      if (work === undefined) return undefined;
      const n = takeWhole(c);
      if (n === undefined && (out !== '' || !seesPhrase(c, 'on|,|and'))) return undefined;
      if (n !== undefined && n > stitches) return undefined;
      out += work.repeat(n ?? stitches);
    }
    return out.length === stitches ? out : undefined;
  });
