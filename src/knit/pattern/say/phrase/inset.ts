import {
  ahead,
  attempt,
  type Cursor,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../../row/read/cursor.ts';
import { STS } from '../../../row/read/goal.ts';
import { readEdgeOf } from './edge.ts';

const BORDER = 'border|borders|band|bands|edging';

/** 'inside edge sts', '2 sts in from edge', 'inside a border of 3 sts', 'as before': where a shaping lies beside its edge changes no count. */
export function skipInset(c: Cursor): void {
  // how it is worked is hers
  takePhrase(c, ',? by k|p|knitting|purling 2 sts? tog');
  if (takeFromEdge(c) || takeInside(c)) return;
  takeAnyPhrase(
    c,
    'as before',
    'in the? same manner|way as? before?',
    'inside edge st|sts',
    'fully fashioned',
    'as set',
    'in patt',
  );
}

/** The same before the edge is named; alone it is the edge ('inside the front border on next row'). */
export function skipInsetFirst(c: Cursor): void {
  const inside = attempt(c, () => takeInside(c) && ahead(c, () => readEdgeOf(c)) !== undefined);
  if (!inside && !seesPhrase(c, `,? inside|within a|the? front|neck? ${BORDER}`)) skipInset(c);
}

const takeFromEdge = (c: Cursor): boolean =>
  attempt(c, () => {
    if (takeNumber(c) === undefined || !takePhrase(c, STS)) return false;
    if (!takes(c, 'in', 'inside', 'from')) return false;
    takeAnyPhrase(c, 'from the? edge', 'from the? border|band', 'the? edge');
    return true;
  });

/** ', inside a border of 3 sts,', 'within the border', 'inside the 3 border sts'. */
const takeInside = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',');
    if (!takes(c, 'inside', 'within')) return false;
    takes(c, 'a', 'the', 'each');
    const n = takeNumber(c);
    if (n !== undefined) takePhrase(c, STS);
    if (!takes(c, ...BORDER.split('|'), 'edge')) return false;
    takePhrase(c, STS);
    if (n !== undefined) return true;
    if (takes(c, 'of') && (takeNumber(c) === undefined || !takePhrase(c, STS))) return false;
    takes(c, ',');
    return true;
  });
