import { MM_PER_INCH } from '../../../gauge.ts';
import {
  attempt,
  type Cursor,
  peekNumber,
  peekWord,
  sees,
  takeAnyPhrase,
  takeNumber,
  takes,
} from '../../../row/read/cursor.ts';

/** A number that may have a fraction beside it: '15', '15½', '15 1/2'. */
export function readAmount(c: Cursor): number | undefined {
  const n = takeNumber(c);
  if (n === undefined) return undefined;
  return attempt(c, () => withFraction(c, n)) ?? n;
}

function withFraction(c: Cursor, n: number): number | undefined {
  takes(c, 'and', '-');
  const half = peekNumber(c);
  const over = peekNumber(c, 2);
  if (half !== undefined && half > 0 && half < 1) {
    c.at += 1;
    return n + half;
  }
  if (half !== undefined && peekWord(c, 1) === '/' && over !== undefined && over > half) {
    c.at += 3;
    return n + half / over;
  }
  if (peekWord(c) === '/' && half === undefined) {
    const lower = peekNumber(c, 1);
    if (lower !== undefined && lower > n && lower <= 16) {
      c.at += 2;
      return n / lower;
    }
  }
  return undefined;
}

/** '38 cm (15 in)' in mm; the first unit counts and the other one in brackets is passed over. */
export const readLength = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, 'about', 'approx', 'around', 'another', 'a', 'further');
    if (!takeAnyPhrase(c, 'total of', 'at least')) takes(c, 'total');
    const least = readAmount(c);
    // '2-3 inches', '12 to 14 inches': between them
    const most = attempt(c, () => (takes(c, '-', 'to', 'or') ? readAmount(c) : undefined));
    const n = least !== undefined && most !== undefined && most > least ? (least + most) / 2 : least;
    if (most !== undefined && n === least) return undefined;
    takes(c, 'more', 'further');
    const unit = n === undefined ? undefined : readUnit(c);
    // '4 mm needles' are no length
    if (n === undefined || unit === undefined || sees(c, 'needle', 'pins', 'ns')) return undefined;
    skipOtherUnit(c);
    return n * unit;
  });

function readUnit(c: Cursor): number | undefined {
  takes(c, '-');
  if (takes(c, 'cm')) return 10;
  if (takes(c, 'mm')) return 1;
  if (takes(c, 'in', 'inch')) return MM_PER_INCH;
  return undefined;
}

const skipOtherUnit = (c: Cursor): boolean =>
  attempt(c, () => {
    const comma = takes(c, ',');
    const open = takes(c, '(', '[', '/', 'or') || comma;
    if (!open || readAmount(c) === undefined || readUnit(c) === undefined) return false;
    takes(c, ')', ']');
    return true;
  });
