import {
  attempt,
  type Cursor,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takesOne,
  took,
} from '../../../row/read/cursor.ts';
import type { Place, Until } from '../how-far.ts';
import { ending } from './ending.ts';
import { readLength } from './measure.ts';
import { readPieceName, readPlace } from './place.ts';

/** 'until same length as back to armhole', 'until piece measures same as back to underarm', 'until it matches back to ...'. */
export const readSameLength = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    takeAnyPhrase(c, 'work|piece from beg|start');
    takes(c, 'left', 'right', 'first', 'second');
    takesOne(c, 'what is measured');
    takes(c, 'measures', 'is', 'measure', 'are', 'corresponds');
    const matches = takes(c, 'matches', 'equals');
    const lessMm = readLength(c);
    const lessRows = lessMm === undefined ? readRowCount(c) : undefined;
    if (lessMm !== undefined || lessRows !== undefined) {
      if (!takes(c, 'less', 'fewer', 'shorter', 'below', 'before')) return undefined;
      takePhrase(c, 'have|are? been? worked|completed');
    }
    takes(c, 'the', 'of');
    // 'work to armhole as for back' works it again
    if (took(c, 'armhole', 'underarm', 'neck', 'shoulder') && seesPhrase(c, 'as for|given')) return undefined;
    const same =
      matches ||
      takeAnyPhrase(
        c,
        'same length|depth as',
        'same as',
        'same length to',
        'as long|high|deep as',
        'same? number of rows as',
        'length as|of',
        'equal to',
        'to match?',
        'as',
        'same',
      ) ||
      lessMm !== undefined ||
      lessRows !== undefined;
    takes(c, 'than');
    takes(c, 'on', 'to', 'for');
    takes(c, 'the');
    const piece = readPieceName(c);
    if (!same || piece === undefined) return undefined;
    // 'until armhole measures same as back armhole': it ends at the shoulder
    let to: Place | undefined = takes(c, 'armhole') ? 'shoulder' : undefined;
    if (takes(c, 'to', 'up', 'at', 'before', 'until')) {
      takes(c, 'to');
      to = readPlace(c);
    }
    // '4 rows fewer than on back to shoulder have been worked'
    if (lessRows !== undefined) takePhrase(c, 'have|has|are been? worked|completed|knitted');
    const less = attempt(c, () => {
      takes(c, ',');
      if (!takes(c, 'less', 'minus')) return undefined;
      const mm = readLength(c);
      const rows = mm === undefined ? readRowCount(c) : undefined;
      return (mm ?? rows) ? { mm, rows } : undefined;
    });
    const mm = lessMm ?? less?.mm;
    const rows = lessRows ?? less?.rows;
    return {
      is: 'same length',
      piece,
      ...(to === undefined ? {} : { to }),
      ...ending(c),
      ...(mm === undefined ? {} : { lessMm: mm }),
      ...(rows === undefined ? {} : { lessRows: rows }),
    };
  });

const readRowCount = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const n = takeNumber(c);
    return n !== undefined && takes(c, 'rows', 'row') ? n : undefined;
  });
