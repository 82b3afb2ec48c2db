import { type Cursor, peek, peekNumber, peekText, sees, takeAnyPhrase, takeNumber, takePhrase, takes } from '../row/cursor.ts';
import { MM_PER_INCH } from '../gauge.ts';
import type { Side } from '../row/step.ts';
import type { EndEdge, Until } from './statement.ts';

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

const MEASURED =
  'piece|work|it|back|front|fronts|sleeve|sleeves|armhole|armholes|rib|ribbing|border|band|strip|neck|total|side|edge|section|panel|garter|knitting|length|armhole|raglan|yoke|hood|cuff|neckband|collar|body|hem|skirt|bodice|scarf|square|pocket|shoulder|this|cap|tie|belt|strap|all|same';

/** What a stretch of rows runs to: 'until armhole measures 20 cm, ending with a WS row', 'for 6 rows'. */
export function readUntil(c: Cursor): Until | undefined {
  const start = c.at;
  const until = readFor(c) ?? readTill(c);
  if (until === undefined) {
    c.at = start;
    return undefined;
  }
  return until;
}

function readFor(c: Cursor): Until | undefined {
  const start = c.at;
  takes(c, 'for', 'over', 'on');
  takes(c, 'the');
  takes(c, 'next', 'following', 'foll', 'first');
  takes(c, 'a', 'another');
  takes(c, 'further');
  const mm = readLength(c);
  if (mm !== undefined) {
    const said = words(c, start);
    takes(c, 'more', 'deep', 'in', 'all');
    const from = readFrom(c);
    return { is: 'length', mm, from: from ?? 'here', ...ending(c), words: said };
  }
  const n = takeNumber(c);
  takes(c, 'more', 'further');
  if (n !== undefined && takes(c, 'row', 'rows', 'rnds', 'rounds', 'rnd', 'round')) {
    takes(c, 'more', 'even', 'straight');
    return { is: 'rows', n };
  }
  if (n !== undefined && takes(c, 'ridges', 'ridge')) return { is: 'rows', n: 2 * n };
  c.at = start;
  return undefined;
}

function readTill(c: Cursor): Until | undefined {
  if (!takes(c, 'until', 'till', 'to', 'when', 'til', 'once', 'after')) return undefined;
  takes(c, 'the', 'there', 'your', 'you');
  const count = readCountEnd(c);
  if (count) return count;
  const same = readSameLength(c);
  if (same) return same;
  const measured = readMeasured(c);
  if (measured) return measured;
  if (takeAnyPhrase(c, 'desired|required|wanted|correct length', 'length desired|required', 'long enough', 'length is as desired')) {
    return { is: 'open', ...ending(c) };
  }
  return undefined;
}

/** 'until 60 sts remain', 'to 60 sts', 'until there are 60 sts on needle'. */
function readCountEnd(c: Cursor): Until | undefined {
  const start = c.at;
  takes(c, 'are', 'have', 'is');
  takes(c, 'only');
  takes(c, 'a');
  takePhrase(c, 'total of');
  const n = takeNumber(c);
  if (n !== undefined && takePhrase(c, 'st|sts|stitches|stitch')) {
    takes(c, 'are', 'is');
    takes(c, 'remain', 'rem', 'remains', 'left', 'remaining', 'in', 'on');
    takeAnyPhrase(c, 'on needle|needles', 'on the needle|needles', 'needle|needles', 'the needle', 'all', 'on the right needle', 'for each shoulder');
    return { is: 'count', stitches: n };
  }
  if (n !== undefined) {
    takes(c, 'more');
    if (takes(c, 'rows', 'row') && !sees(c, 'less', 'fewer', 'shorter')) {
      takeAnyPhrase(c, 'have been worked|completed|knitted|done', 'are worked|completed|done', 'in all', 'worked', 'from', 'completed', 'are made', 'have been made');
      const from = readFrom(c);
      return { is: 'rows in all', n, from: from ?? 'start' };
    }
    if (takes(c, 'ridges') && !sees(c, 'less', 'fewer')) return { is: 'rows in all', n: 2 * n, from: 'start' };
  }
  c.at = start;
  return undefined;
}

const PLACES: Readonly<Record<string, string>> = {
  armhole: 'armhole',
  armholes: 'armhole',
  underarm: 'armhole',
  underarms: 'armhole',
  neck: 'neck',
  neckline: 'neck',
  shoulder: 'shoulder',
  shoulders: 'shoulder',
  raglan: 'raglan',
  cap: 'cap',
  rib: 'rib',
  ribbing: 'rib',
  border: 'rib',
  band: 'rib',
  welt: 'rib',
  waist: 'waist',
};

/** 'armhole (shaping)', 'the beg of armhole', 'neck shaping', '1st shoulder bind-off'. */
export function readPlace(c: Cursor): string | undefined {
  takeAnyPhrase(c, 'beg|beginning|start|end|bottom|top|base of', 'the beg|beginning|start|end|bottom|top of', 'first row of');
  takes(c, 'the', 'end', 'beg', 'first', '1st', 'front', 'back');
  takes(c, 'of');
  takes(c, 'shape', 'shaping');
  takes(c, 'the', 'of');
  takes(c, 'back', 'front', 'first');
  const place = PLACES[peekText(c)];
  if (place === undefined) return undefined;
  c.at += 1;
  takes(c, 'shaping', 'shapings', 'edge', 'opening', 'bind', 'bo', 'decrease', 'decreases', 'dec');
  takes(c, '-');
  takes(c, 'off', 'offs');
  takes(c, 'shaping');
  return place;
}

const PIECES = 'back|front|fronts|sleeve|sleeves|left|right|first|other|second|piece|1st|body';

/** 'until same length as back to armhole', 'until piece measures same as back to underarm', 'until it matches back to ...'. */
function readSameLength(c: Cursor): Until | undefined {
  const start = c.at;
  takePhrase(c, MEASURED);
  takes(c, 'measures', 'is', 'measure', 'are', 'matches', 'equals', 'corresponds');
  const lessMm = readLength(c);
  let lessRows: number | undefined;
  if (lessMm === undefined) {
    const n = takeNumber(c);
    if (n !== undefined && takes(c, 'rows')) lessRows = n;
    else if (n !== undefined) c.at -= 1;
  }
  if (lessMm !== undefined || lessRows !== undefined) {
    takes(c, 'are', 'is', 'have');
    if (!takes(c, 'less', 'fewer', 'shorter', 'below', 'before')) {
      c.at = start;
      return undefined;
    }
    takeAnyPhrase(c, 'have been worked', 'been worked', 'are worked', 'have been completed');
  }
  takes(c, 'the', 'of');
  const same = takeAnyPhrase(c, 'same length as', 'same as', 'same length to', 'as long as', 'same depth as', 'same number of rows as', 'length as', 'the length of', 'length of', 'equal to', 'to match', 'to', 'as for', 'as', 'number of rows as', 'same', 'there are same number of rows as') || lessMm !== undefined || lessRows !== undefined;
  takes(c, 'than');
  takes(c, 'on', 'to', 'for');
  takes(c, 'the');
  const piece = readPieceName(c);
  if (!same || piece === undefined) {
    c.at = start;
    return undefined;
  }
  let to = 'end';
  if (takes(c, 'to', 'up', 'at', 'before', 'until', 'till')) {
    takes(c, 'to');
    to = readPlace(c) ?? 'end';
  }
  return { is: 'same length', piece, to, ...ending(c), ...(lessMm === undefined ? {} : { lessMm }), ...(lessRows === undefined ? {} : { lessRows }) };
}

export function readPieceName(c: Cursor): string | undefined {
  if (!sees(c, ...PIECES.split('|'))) return undefined;
  const first = peekText(c);
  c.at += 1;
  if (/^(left|right|first|other|second|1st)$/.test(first) && sees(c, 'front', 'back', 'sleeve', 'side', 'shoulder', 'half', 'fronts')) {
    const second = peekText(c);
    c.at += 1;
    return `${first} ${second}`;
  }
  return first;
}

function readMeasured(c: Cursor): Until | undefined {
  const start = c.at;
  const what: string[] = [];
  while (sees(c, ...MEASURED.split('|'), 'left', 'right', 'entire', 'whole', 'of', 'edge', 'depth', 'the', 'from', 'st', 'pattern', 'patt', 'straight')) {
    what.push(peekText(c));
    c.at += 1;
  }
  takes(c, 'measures', 'measure', 'is', 'measuring', 'are', 'reaches', 'measured');
  const at = c.at;
  const mm = readLength(c);
  if (mm === undefined) {
    c.at = start;
    return undefined;
  }
  const said = words(c, at);
  takes(c, 'in');
  takes(c, 'long', 'deep', 'length', 'all', 'total', 'high', 'wide');
  const from = readFrom(c) ?? fromMeasured(what);
  takeAnyPhrase(c, 'or length desired|required', 'or desired|required length', 'or as long as desired', 'or to length desired', 'or length required');
  return { is: 'length', mm, from, ...ending(c), words: said };
}

function fromMeasured(what: readonly string[]): string {
  for (const word of what) {
    if (/^armholes?$/.test(word)) return 'armhole';
    if (/^(rib|ribbing|border|band|hem|cuff|neckband|collar)$/.test(word)) return 'section';
    if (word === 'raglan') return 'armhole';
    if (/^(neck|yoke)$/.test(word)) return 'heading';
  }
  return 'start';
}

const FROM: readonly (readonly [string, string])[] = [
  ['beg|beginning|start|lower|bottom|cast|co|first|1st', 'start'],
  ['bo|bind|bound|armhole|armholes|underarm|underarms', 'armhole'],
  ['rib|ribbing|border|band|top|welt|hem|hemline|cuff|turning|change', 'rib'],
  ['marker|markers|mark|m|pick|picked|pu', 'marker'],
  ['last|neck|division|divide|here|this|last|shaping|end|dec|inc', 'heading'],
];

/** 'from cast-on edge', 'from beg', 'above ribbing', 'after last bind-off'. */
function readFrom(c: Cursor): string | undefined {
  const start = c.at;
  if (takes(c, 'altogether')) return 'start';
  if (takeAnyPhrase(c, 'in all', 'in total', 'total')) return 'start';
  if (!takes(c, 'from', 'above', 'after', 'past', 'beyond', 'of', 'below')) return undefined;
  takes(c, 'the', 'all', 'beginning', 'beg', 'start', 'first', 'top', 'end');
  const bare = c.tokens[c.at - 1]?.text ?? '';
  const ofSaid = takes(c, 'of');
  takes(c, 'the', 'first', 'last', 'final', '1st', 'initial');
  const found = FROM.find(([list]) => list.split('|').includes(peekText(c)));
  if (found) {
    c.at += 1;
    skipTail(c);
    return found[1];
  }
  if (!ofSaid && /^(beginning|beg|start)$/.test(bare)) return 'start';
  c.at = start;
  return undefined;
}

function skipTail(c: Cursor): void {
  while (takes(c, 'on', 'off', 'edge', '-', 'sts', 'st', 'row', 'shaping', 'of', 'ribbing', 'armhole', 'armholes', 'underarm', 'dec', 'inc', 'decrease', 'increase', 'band', 'round', 'ridge', 'up', 'border', 'rib', 'bind', 'cast', 'edges', 'line', 'shapings', 'offs', 'neck', 'hem', 'work', 'rows', 'bound', 'for')) {
    // the rest of the place's name
  }
}

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
  if (takeAnyPhrase(c, 'side|armhole|arm|seam|underarm edge', 'side|armhole seam')) return { endEdge: 'armhole' };
  if (takeAnyPhrase(c, 'front|neck|center|centre|inner edge', 'center|centre front edge', 'center|centre front')) return { endEdge: 'neck' };
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

const words = (c: Cursor, from: number): string =>
  c.tokens
    .slice(from, c.at)
    .map((token) => token.text)
    .join(' ');
