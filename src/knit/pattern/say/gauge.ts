import {
  ahead,
  attempt,
  type Cursor,
  isWord,
  peekNumber,
  sees,
  seesPhrase,
  takeAll,
  takeAnyPhrase,
  takePhrase,
  takes,
  takesOne,
  takeTo,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { means } from '../../row/read/meanings.ts';
import { readNeedle } from './needle.ts';
import { readFabric } from './phrase/fabric.ts';
import { readAmount, readLength } from './phrase/measure.ts';
import type { Statement } from './statement.ts';

/** 'Gauge: 20 sts and 28 rows = 10 cm in st st', '5 sts = 1 inch', '9 sts = 2 inches; 6 rows = 1 inch'. Per 100 mm. */
export const readGauge = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const start = c.at;
    takeNeedles(c);
    takes(c, '(');
    takes(c, 'gauge');
    takeAnyPhrase(c, 'should be');
    takes(c, ':', '-', 'is', ',');
    takes(c, 'of', 'over', 'about', 'approx');
    let stitches: number | undefined;
    let rows: number | undefined;
    let pending: { sts?: number; rows?: number } = {};
    let fabric = undefined as ReturnType<typeof readFabric>;
    for (let i = 0; i < 12 && c.at < c.end; i += 1) {
      takes(c, 'and', ',', ';', '.', 'x', 'to', '-');
      const n = readAmount(c);
      if (n === undefined) {
        fabric = fabric ?? readFabric(c);
        if (fabric === undefined) break;
        continue;
      }
      if (takePhrase(c, 'st|sts')) pending = { ...pending, sts: n };
      else if (takePhrase(c, 'row|rows|rnds')) pending = { ...pending, rows: n };
      else if (takePhrase(c, 'ridge')) pending = { ...pending, rows: 2 * n };
      else break;
      fabric = readInFabric(c) ?? fabric;
      const mm = readMeasure(c);
      if (mm !== undefined) {
        if (pending.sts !== undefined) stitches = (pending.sts * 100) / mm;
        if (pending.rows !== undefined) rows = (pending.rows * 100) / mm;
        pending = {};
      }
      fabric = readInFabric(c) ?? fabric;
    }
    if (stitches === undefined && rows === undefined) return undefined;
    takeAll(c);
    return {
      is: 'gauge',
      ...(stitches === undefined ? {} : { stitches }),
      ...(rows === undefined ? {} : { rows }),
      ...(fabric === undefined ? {} : { fabric }),
      ...needleWithin(c, start),
    };
  });

/** Whether what comes next tells a gauge, by its name, its needles or its measure. */
export const seesGauge = (c: Cursor): boolean => {
  if (sees(c, 'gauge') || seesPhrase(c, '( gauge')) return true;
  if (ahead(c, () => takeNeedles(c))) return true;
  return (
    peekNumber(c) !== undefined &&
    c.tokens.slice(c.at, c.end).some((token) => isWord(token, '=', 'inch', 'cm')) &&
    seesPhrase({ ...c, at: c.at + 1 }, STS)
  );
};

/** 'On 3.25 mm needles, 28 sts and 36 rows to 10 cm'. */
export const takeNeedles = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takes(c, 'on', 'using', 'with') &&
      readNeedle({ ...c, at: c.at - 1 }) !== undefined &&
      takeNeedleWords(c),
  );

function takeNeedleWords(c: Cursor): boolean {
  for (let i = 0; i < 8; i += 1) {
    if (takes(c, ',')) return seesAmount(c);
    takeTo(c, c.at + 1);
  }
  return false;
}

const seesAmount = (c: Cursor): boolean =>
  ahead(c, () => readAmount(c) !== undefined && takePhrase(c, 'st|sts'));

/** 'on 4 mm needles', 'using a 3.5 mm needle': what the swatch was knitted with. */
function needleWithin(c: Cursor, from: number): { needle?: number } {
  const texts = c.tokens.slice(from, c.end).map((token) => token.text);
  if (!texts.some((text) => means(text, 'needles'))) return {};
  const at = texts.findIndex(
    (text, i) => text === 'mm' && peekNumber({ ...c, at: from + i - 1 }) !== undefined,
  );
  const needle = at > 0 ? peekNumber({ ...c, at: from + at - 1 }) : undefined;
  return needle === undefined || needle <= 0 ? {} : { needle };
}

const readInFabric = (c: Cursor): ReturnType<typeof readFabric> =>
  attempt(c, () => (takes(c, 'in', 'over', 'of') ? readFabric(c) : undefined));

const readMeasure = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takesOne(c, 'is as much as');
    takes(c, '=');
    const square = readLength(c);
    if (square !== undefined) {
      takeAnyPhrase(c, 'square', 'sq', 'in width', 'wide');
      attempt(c, () => takes(c, 'x', '/', 'by') && readLength(c) !== undefined);
      return square;
    }
    // 'to the inch', 'per inch'
    takes(c, 'the', 'each');
    if (takePhrase(c, 'inch|in')) return 25.4;
    if (takePhrase(c, 'cm')) return 10;
  });
