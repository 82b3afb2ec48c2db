import { MM_PER_INCH } from '../../../gauge.ts';
import {
  type Cursor,
  peek,
  peekNumber,
  peekText,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../../row/read/cursor.ts';
import type { Side } from '../../../row/step.ts';
import type { EndEdge } from '../statement.ts';

/** A number that may have a fraction beside it: '15', '15½', '15 1/2'. */
export function readAmount(c: Cursor): number | undefined {
  const n = takeNumber(c);
  if (n === undefined) return undefined;
  takes(c, 'and', '-');
  const half = peekNumber(c);
  const over = peekNumber(c, 2);
  if (half !== undefined && half > 0 && half < 1) {
    c.at += 1;
    return n + half;
  }
  if (half !== undefined && peekText(c, 1) === '/' && over !== undefined && over > half) {
    c.at += 3;
    return n + half / over;
  }
  if (peekText(c) === '/' && half === undefined) {
    const lower = peekNumber(c, 1);
    if (lower !== undefined && lower > n && lower <= 16) {
      c.at += 2;
      return n / lower;
    }
  }
  const justTook = c.tokens[c.at - 1]?.text;
  if (justTook === 'and' || justTook === '-') c.at -= 1;
  return n;
}

/** '38 cm (15 in)' in mm; the first unit counts and the other one in brackets is passed over. */
export function readLength(c: Cursor): number | undefined {
  const start = c.at;
  takes(c, 'about', 'approx', 'approximately', 'another', 'a', 'further', 'total');
  takePhrase(c, 'total of');
  const n = readAmount(c);
  const unit = n === undefined ? undefined : readUnit(c);
  if (n === undefined || unit === undefined) {
    c.at = start;
    return undefined;
  }
  skipOtherUnit(c);
  return n * unit;
}

function readUnit(c: Cursor): number | undefined {
  takes(c, '-');
  if (takes(c, 'cm', 'cms', 'centimeters', 'centimetres', 'centimetre', 'centimeter')) return 10;
  if (takes(c, 'mm', 'millimetres', 'millimeters')) return 1;
  if (takes(c, 'in', 'ins', 'inch', 'inches', '"')) return MM_PER_INCH;
  return undefined;
}

function skipOtherUnit(c: Cursor): void {
  const start = c.at;
  const open = takes(c, '(', '[', '/', 'or', ',');
  if (open && readAmount(c) !== undefined && readUnit(c) !== undefined) {
    takes(c, ')', ']');
    return;
  }
  c.at = start;
}

export const MEASURED =
  'piece|work|it|back|front|fronts|sleeve|sleeves|armhole|armholes|rib|ribbing|border|band|strip|neck|total|side|edge|section|panel|garter|knitting|length|armhole|raglan|yoke|hood|cuff|neckband|collar|body|hem|skirt|bodice|scarf|square|pocket|shoulder|this|cap|tie|belt|strap|all|same';

/** ', ending with a WS row', 'ending with RS facing for next row', 'end with row 4 of pattern'. */
export function ending(c: Cursor): { end?: Side; endEdge?: EndEdge } {
  const start = c.at;
  takes(c, ',', '(', '-', ';');
  takes(c, 'and', 'then');
  if (!takes(c, 'ending', 'end', 'finishing', 'finish', 'ends', 'ended', 'ready')) {
    c.at = start;
    return {};
  }
  const ready = c.tokens[c.at - 1]?.text === 'ready';
  takes(c, 'with', 'on', 'after', 'at', 'having', 'by', 'for', 'to', 'so');
  takes(c, 'that', 'working', 'work', 'a', 'an', 'the', 'last', 'completing');
  takes(c, 'worked', 'just');
  if (takeAnyPhrase(c, 'side|armhole|arm|seam|underarm edge', 'side|armhole seam'))
    return { endEdge: 'armhole' };
  if (
    takeAnyPhrase(c, 'front|neck|center|centre|inner edge', 'center|centre front edge', 'center|centre front')
  )
    return { endEdge: 'neck' };
  const side = readSide(c);
  if (side === undefined) {
    skipRowName(c);
    return {};
  }
  const facing = takes(c, 'facing');
  takes(c, 'row', 'rows', 'side', 'rnd');
  takeAnyPhrase(c, 'for next row', 'for the next row', 'next');
  takeAnyPhrase(c, 'row', 'completed', 'just worked', 'worked');
  takes(c, ')');
  const next = facing || ready;
  return { end: next ? (side === 'RS' ? 'WS' : 'RS') : side };
}

function skipRowName(c: Cursor): void {
  while (peek(c) && !/^[,.;)]$/.test(peekText(c))) c.at += 1;
}

/** 'RS', 'wrong side', 'k row', 'purl row'. */
export function readSide(c: Cursor): Side | undefined {
  if (takeAnyPhrase(c, 'rs', 'right side|s', 'r s', 'k|knit', 'right - side')) return 'RS';
  if (takeAnyPhrase(c, 'ws', 'wrong side|s', 'w s', 'p|purl', 'wrong - side')) return 'WS';
  return undefined;
}
