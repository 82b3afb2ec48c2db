import { readColour, readColourName } from '../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import type { Item } from '../../row/read/notation.ts';
import { skipNotes } from './even.ts';
import { readFabric } from './phrase/fabric.ts';
import { takePurpose } from './phrase/purpose.ts';
import { ROWS } from './phrase/row-numbers.ts';
import { readUntil } from './phrase/until.ts';
import type { FabricSaid, Statement } from './statement.ts';

/** 'k 1 row', 'purl 3 rows', 'work 4 rows', 'k 1 row, p 1 row'. */
export const readRows = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const turns = readTurns(c);
    if (turns) return turns;
    const base = readBase(c);
    if (base !== undefined) {
      if (takeAnyPhrase(c, 'back')) {
        const whole = c.at >= c.end || sees(c, '.', ',', ';');
        return whole ? { is: 'rows', n: 1, items: [wholeRow(base)] } : undefined;
      }
      const sided = readNextSided(c, base);
      if (sided) return sided;
      const span = readSpan(c);
      const n = span ?? takeNumber(c);
      takes(c, 'more', 'further');
      if (n !== undefined && (span !== undefined || takePhrase(c, ROWS))) {
        takes(c, 'more', 'further');
        takeAnyPhrase(c, 'even', 'straight', 'plain');
        const fabric = readFabricBehind(c);
        if (fabric) {
          skipNotes(c);
          takePhrase(c, 'for|to the? make? the? top|bottom|lower|upper? border|edge|band|hem');
          return { is: 'even', fabric, until: { is: 'rows', n } };
        }
        return { is: 'rows', n, items: [wholeRow(base)] };
      }
      // 'k 4 ribs of garter st': two rows each
      if (
        n !== undefined &&
        (takeAnyPhrase(c, 'ribs of garter st?', 'ribs even|plain') || (base === 'k' && takesRibs(c)))
      )
        return { is: 'rows', n: 2 * n, items: [wholeRow('k')] };
      if (n !== undefined && takePhrase(c, 'ridge')) {
        takeAnyPhrase(c, 'even', 'straight', 'plain');
        return { is: 'rows', n: 2 * n, items: [wholeRow('k')] };
      }
      if (takeAnyPhrase(c, 'the? next|first|second|third|fourth row', 'a row'))
        return { is: 'rows', n: 1, items: [wholeRow(base)] };
    }
  });

/** 'Knit rows 1-10': so many; 'knit rows 1-4 of the chart' are others. */
const readSpan = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const first = takes(c, 'rows') ? takeNumber(c) : undefined;
    const last = takes(c, '-', 'to') ? takeNumber(c) : undefined;
    return first === 1 && last !== undefined && last > 1 && !sees(c, 'of') ? last : undefined;
  });

/** 'Knit across next purl row to form a ridge', 'knit the next WS row for hemline': on that side. */
const readNextSided = (c: Cursor, base: 'k' | 'p'): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'across');
    takes(c, 'the', 'on');
    if (!takes(c, 'next') || !sees(c, 'k', 'p', 'rs', 'ws')) return undefined;
    const side = takes(c, 'k', 'rs') ? 'RS' : 'WS';
    if (side === 'WS') takes(c, 'p', 'ws');
    if (!takes(c, 'row')) return undefined;
    takePhrase(c, 'to form|make a? ridge|hemline|foldline');
    takePurpose(c);
    return { is: 'row', label: { rows: [], side }, items: [wholeRow(base)] };
  });

/** 'Knit 5 ribs', 'knit 5 ribs on the first 26 sts': there and back is one. */
const takesRibs = (c: Cursor): boolean =>
  attempt(
    c,
    () => takes(c, 'ribs') && (c.at >= c.end || sees(c, 'on', ',', '.', ';', ':', '(', 'and', 'then')),
  );

/** 'Knit 1 row, purl 1 row alternately for 10 cm': from the first of them on. */
const readTurns = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const firstLooks = takePhrase(c, 'k 1 row ,? and? p 1 row alternately?')
      ? 'k'
      : takePhrase(c, 'p 1 row ,? and? k 1 row alternately?')
        ? 'p'
        : undefined;
    takes(c, ',');
    const until = firstLooks && readUntil(c);
    return until && { is: 'even', fabric: { is: 'named', name: 'stocking' }, until, firstLooks };
  });

/** 'Work 4 rows A, | 4 rows B', '2 rows in B' behind other rows: as many more. */
export const readRowsElided = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const n = takeNumber(c);
    if (n === undefined || !takePhrase(c, ROWS)) return undefined;
    return ahead(c, () => readColour(c) ?? readColourName(c)) === undefined
      ? undefined
      : { is: 'even', until: { is: 'rows', n } };
  });

/** 'Knit 20 rows | in stocking st': 'knit' is to work them. */
const readFabricBehind = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const open = takes(c, '(');
    if (!open && !sees(c, 'in') && !takes(c, 'of')) return undefined;
    const fabric = readFabric(c);
    return open && !takes(c, ')') ? undefined : fabric;
  });

const readBase = (c: Cursor): 'k' | 'p' | undefined =>
  takes(c, 'k', 'knitting') ? 'k' : takes(c, 'p', 'purling') ? 'p' : undefined;

const wholeRow = (work: 'k' | 'p'): Item => ({ is: 'stitches to', work, goal: { left: 'what follows' } });
