import {
  type Cursor,
  peek,
  peekText,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { readBeats } from './phrase/beats.ts';
import { ending } from './phrase/measure.ts';
import { readUntil } from './phrase/until.ts';
import type { Beat, EdgeName, Statement } from './statement.ts';

const NECK = 'neck|front|inside|inner|center|centre|v|opening|neckline';

const ARM = 'armhole|armholes|arm|side|seam|underarm|outer|outside|raglan|shoulder|sleeve';

const EDGE = 'edge|edges|side|sides|end|ends';

/** 'at each end', 'at neck edge', 'each side', 'at beg', 'at same edge'. */
export function readEdge(c: Cursor): EdgeName | undefined {
  const start = c.at;
  const edge = edgeAfterAt(c);
  if (edge === undefined) c.at = start;
  return edge;
}

function edgeAfterAt(c: Cursor): EdgeName | undefined {
  takes(c, 'in');
  takes(c, 'from', 'at', 'on', 'along', 'inside', 'of', 'within');
  takes(c, 'the', 'a');
  if (
    takeAnyPhrase(
      c,
      'beg|beginning|start and|& at end',
      'beg|beginning|start and|& end',
      'beg|beginning|start and|& at the end',
      'beg|beginning|start and|& the end',
    )
  )
    return 'both';
  if (takeAnyPhrase(c, 'beg|beginning|start', 'right hand end')) return 'beginning';
  if (takeAnyPhrase(c, 'both|each|either|every', 'each of both', '2')) {
    if (takes(c, 'neck', 'front', 'v')) {
      takeAnyPhrase(c, EDGE);
      return 'neck';
    }
    takes(c, ...ARM.split('|').filter((word) => word !== 'side'));
    takes(c, 'side');
    if (
      takeAnyPhrase(c, EDGE) ||
      c.tokens[c.at - 1]?.text === 'side' ||
      ARM.split('|').includes(c.tokens[c.at - 1]?.text ?? '')
    ) {
      takeAnyPhrase(c, EDGE);
      return 'both';
    }
    return undefined;
  }
  if (takeAnyPhrase(c, 'same|this edge|end|side', 'that edge')) return 'same';
  if (
    takeAnyPhrase(
      c,
      `${NECK} ${EDGE}`,
      `${NECK} opening edge`,
      'center|centre front|neck|back edge|edges',
      'front neck|edge edge',
      'v neck edge',
      'front and neck edge',
      'neck',
    )
  )
    return 'neck';
  if (
    takeAnyPhrase(
      c,
      'side|sides seam|seams',
      `${ARM} ${EDGE}`,
      `${ARM} seam edge`,
      'armhole',
      'armholes',
      'side edges',
      'arm side',
    )
  )
    return 'armhole';
  if (takeAnyPhrase(c, 'side edge|edges', 'sides')) return 'both';
  if (takeAnyPhrase(c, 'right edge|side|hand')) return 'right';
  if (takeAnyPhrase(c, 'left edge|side|hand')) return 'left';
  if (takes(c, 'end', 'ends')) return 'end';
  return undefined;
}

const CHANGES: Readonly<Record<string, number>> = {
  dec: -1,
  decrease: -1,
  decreasing: -1,
  decs: -1,
  inc: 1,
  increase: 1,
  increasing: 1,
  incs: 1,
};

/**
 * Shaping at an edge or across a row, in whichever order it is said: 'dec 1 st at each end of next row',
 * 'at each end of every 4th row inc 1 st', 'inc 6 sts evenly across next row to 60 sts'.
 */
export function readShape(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'then', 'and');
  const when = readBeatsBefore(c);
  const edgeBefore = readEdgeOf(c);
  const later = when.length > 0 ? when : edgeBefore ? readBeatsAfter(c) : [];
  takes(c, ',', ':');
  const sign = CHANGES[peekText(c)];
  if (sign === undefined) {
    c.at = start;
    return undefined;
  }
  c.at += 1;
  const by = readBy(c);
  const evenly = readEvenly(c, sign * by, later);
  if (evenly) return evenly;
  skipInset(c);
  const edge = readEdgeOf(c) ?? edgeBefore;
  if (edge === undefined) {
    c.at = start;
    return undefined;
  }
  skipInset(c);
  if (takeAnyPhrase(c, 'of|on|in last row', 'of|on|in the last row')) {
    return { is: 'evenly', change: sign * by * (edge === 'both' ? 2 : 1), on: 'last' };
  }
  takes(c, ',');
  const beats = later.length > 0 ? [...later, ...readBeatsAfter(c)] : readBeatsAfter(c);
  takes(c, 'only');
  const at = c.at;
  const beats2 = beats.length > 0 ? withEnd(c, beats) : beats;
  if (beats2 === beats) c.at = at;
  return { is: 'shape', change: sign * by, edge, beats: beats2 };
}

/** '… every other row, 5 times in all' and '… at neck edge until 17 sts remain' close the last beat. */
function withEnd(c: Cursor, beats: readonly Beat[]): readonly Beat[] {
  const last = beats.at(-1) as Beat;
  if (last.times !== undefined || last.toCount !== undefined || last.until !== undefined) return beats;
  takes(c, ',');
  const until = readUntil(c);
  if (until?.is === 'count') return [...beats.slice(0, -1), { ...last, toCount: until.stitches }];
  return beats;
}

/** '… and 1 st at neck edge every 4th row': the word for the change stands before the first of them only. */
export function readElidedShape(c: Cursor, sign: number): Statement | undefined {
  const start = c.at;
  const n = takeNumber(c);
  if (n !== undefined && takePhrase(c, STS)) {
    const edge = readEdgeOf(c);
    const beats = edge === undefined ? [] : readBeatsAfter(c);
    if (edge !== undefined && beats.length > 0) return { is: 'shape', change: sign * n, edge, beats };
  }
  c.at = start;
  return undefined;
}

function readBy(c: Cursor): number {
  takes(c, 'a', 'single');
  const n = takeNumber(c);
  takes(c, 'more');
  takePhrase(c, STS);
  return n ?? 1;
}

/** 'inside edge sts', 'working decs 2 sts in from edge', 'as before' change no count. */
function skipInset(c: Cursor): void {
  const start = c.at;
  const n = takeNumber(c);
  if (n !== undefined && takePhrase(c, STS) && takeAnyPhrase(c, 'in', 'in from edge', 'inside', 'from')) {
    takeAnyPhrase(c, 'from edge', 'from the edge', 'edge');
    return;
  }
  c.at = start;
  takeAnyPhrase(c, 'as before', 'inside edge st|sts', 'fully fashioned', 'as set', 'in pattern');
}

export function readEdgeOf(c: Cursor): EdgeName | undefined {
  const edge = readEdge(c);
  if (edge === undefined) return undefined;
  if (edge === 'beginning' && seesPhrase(c, 'and|& end|at')) {
    const start = c.at;
    c.at += 1;
    const second = readEdge(c);
    if (second === 'end') return 'both';
    c.at = start;
  }
  takes(c, 'only');
  return edge;
}

/** 'on next row', 'every other row', 'on every RS row' before the word that says what is done. */
export function readBeatsBefore(c: Cursor): Beat[] {
  const start = c.at;
  if (!sees(c, 'on', 'every', 'next', 'each', 'in', 'at', 'over')) return [];
  if (
    sees(c, 'at', 'each', 'in', 'on') &&
    !/^(next|every|each|the|rs|foll|following|this|row)$/.test(peekText(c, 1)) &&
    peek(c, 1)?.kind !== 'number'
  )
    return [];
  if (peekText(c) === 'each' && /^(end|side|edge)$/.test(peekText(c, 1))) return [];
  const beats = readBeats(c);
  if (beats.length === 0) c.at = start;
  return beats;
}

const readBeatsAfter = (c: Cursor): Beat[] => readBeats(c);

function readEvenly(c: Cursor, change: number, when: readonly Beat[]): Statement | undefined {
  const start = c.at;
  takes(c, 'spaced', 'as');
  const evenly = takeAnyPhrase(c, 'evenly', 'even', 'at even intervals', 'at equal intervals');
  if (evenly) takeAnyPhrase(c, 'spaced', 'as possible');
  const over = readOver(c);
  const row = readRowRef(c);
  if (!evenly && row === undefined && over === undefined) {
    c.at = start;
    return undefined;
  }
  if (!evenly && !over && (row === undefined || when.length > 0)) {
    c.at = start;
    return undefined;
  }
  const at = c.at;
  takes(c, ',', '-', '(');
  const until = readUntil(c);
  if (until?.is !== 'count') c.at = at;
  return {
    is: 'evenly',
    change,
    on: row ?? 'unsaid',
    ...(until?.is === 'count' ? { toCount: until.stitches } : {}),
    ...(over === undefined ? {} : { over }),
  };
}

function readOver(c: Cursor): number | undefined {
  const start = c.at;
  if (takes(c, 'across', 'over', 'along', 'on')) {
    takes(c, 'the');
    takes(c, 'next', 'center', 'centre', 'front', 'back');
    const n = takeNumber(c);
    if (n !== undefined && takePhrase(c, STS)) return n;
  }
  c.at = start;
  return undefined;
}

/** 'across next row', 'in last row of rib', 'on this row'. */
function readRowRef(c: Cursor): 'next' | 'last' | 'unsaid' | undefined {
  const start = c.at;
  takes(c, 'across', 'in', 'on', 'over', 'along', 'during', 'to');
  takes(c, 'the');
  const last = takes(c, 'last', 'final', 'previous');
  const next = !last && takes(c, 'next', 'first', 'following', 'foll', '1st');
  if (!last && !next) takes(c, 'this');
  if (takePhrase(c, 'ws|rs|p|k|purl|knit row') || takeAnyPhrase(c, 'row', 'rnd', 'round')) {
    takeAnyPhrase(
      c,
      'of rib|ribbing|border|garter|band|welt|cuff',
      'of the rib|ribbing|border',
      'of rib pattern',
      'of garter st',
    );
    return last ? 'last' : next ? 'next' : 'unsaid';
  }
  c.at = start;
  return undefined;
}

/** ', ending with a WS row' after shaping is passed over. */
export const skipEnding = (c: Cursor): void => {
  const start = c.at;
  const { end, endEdge } = ending(c);
  if (end === undefined && endEdge === undefined) c.at = start;
};
