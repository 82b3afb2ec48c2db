import {
  attempt,
  type Cursor,
  sees,
  takeAnyPhrase,
  takePhrase,
  takes,
  took,
} from '../../../row/read/cursor.ts';
import type { EdgeName } from '../how-far.ts';

const NECK = 'neck|front|inside|inner|center|v|opening|neckline';

const ARM = 'armhole|arm|side|seam|underarm|outer|outside|raglan|shoulder|sleeve';

const EDGE = 'edge|side|sides|end|ends';

const NECK_EDGES = ['neck', 'front', 'center'];

const ARM_EDGES = ['armhole', 'arm', 'side', 'seam', 'underarm', 'raglan', 'sleeve'];

/** 'at each end', 'at neck edge', 'each side', 'at beg', 'at same edge'. */
export const readEdge = (c: Cursor): EdgeName | undefined => attempt(c, () => edgeAfterAt(c));

function edgeAfterAt(c: Cursor): EdgeName | undefined {
  takes(c, 'in', 'into');
  takes(c, 'from', 'at', 'on', 'along', 'inside', 'of', 'within');
  takes(c, 'the', 'a');
  // 'inc in first and last st of every 6th row'
  const outer = attempt(
    c,
    () => takeAnyPhrase(c, 'first and last st|sts', 'first st and last st') && sees(c, 'of', 'on'),
  );
  if (outer || takesTwo(c)) return 'both';
  if (takeAnyPhrase(c, 'beg|begin|start of each|both arm|armhole edge|side', 'beg and ending of row|rows'))
    return 'both';
  if (takeAnyPhrase(c, 'beg|begin|start', 'right hand end'))
    return edgeBegun(c) ?? edgeBegunAt(c) ?? 'beginning';
  if (takeAnyPhrase(c, 'each of both', 'both|each|either|every', '2')) {
    if (takes(c, 'neck', 'front', 'v', 'center', 'inner', 'inside')) {
      takeAnyPhrase(c, EDGE);
      return 'neck';
    }
    takes(c, ...ARM.split('|').filter((word) => word !== 'side'));
    takes(c, 'side');
    if (
      takeAnyPhrase(c, EDGE) ||
      took(c, 'side') ||
      ARM.split('|').includes(c.tokens[c.at - 1]?.text ?? '')
    ) {
      takeAnyPhrase(c, EDGE);
      return 'both';
    }
    return undefined;
  }
  if (
    attempt(c, () => took(c, 'inside', 'the') && takeAnyPhrase(c, 'of? the? front|neck? border|band|edging'))
  )
    return 'inside';
  if (takeAnyPhrase(c, 'same|this edge|end|side', 'that edge')) return 'same';
  if (
    takeAnyPhrase(
      c,
      `${NECK} opening edge`,
      `${NECK} ${EDGE}`,
      'center front|neck|back edge',
      'front|neck|center opening',
      'front neck edge',
      'v neck edge',
      'front and neck edge',
      'neck',
    )
  )
    return 'neck';
  if (
    takeAnyPhrase(
      c,
      `${ARM} seam edge`,
      'raglan armhole edge',
      'side|sides seam',
      `${ARM} ${EDGE}`,
      'armhole',
    )
  )
    return 'armhole';
  if (takes(c, 'sides')) return 'both';
  if (takeAnyPhrase(c, 'right edge|side|hand|end')) return 'right';
  if (takeAnyPhrase(c, 'left edge|side|hand|end')) return 'left';
  if (takes(c, 'end', 'ends')) return 'end';
  return undefined;
}

/** Which of a piece's two edges a word is of. */
const takeNeckOrArm = (c: Cursor): 'neck' | 'armhole' | undefined =>
  takes(c, ...NECK_EDGES) ? 'neck' : takes(c, ...ARM_EDGES) ? 'armhole' : undefined;

/** 'both neck and armhole edges', 'neck edge and at side edge': one piece's two. */
const takesTwo = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, 'both', 'each');
    const first = takeNeckOrArm(c);
    if (first === undefined) return false;
    takeAnyPhrase(c, EDGE);
    if (!takes(c, 'and')) return false;
    takes(c, 'at', 'on');
    takes(c, 'the');
    const second = takeNeckOrArm(c);
    return second !== undefined && second !== first && takeAnyPhrase(c, EDGE);
  });

/** 'at beg of armhole edge': the edge at which the row begins. */
const edgeBegun = (c: Cursor): EdgeName | undefined =>
  attempt(c, () => {
    if (!takes(c, 'of')) return undefined;
    takes(c, 'the');
    const name = takeNeckOrArm(c);
    return takes(c, 'edge') ? name : undefined;
  });

/** 'at beg of row on armhole side': the edge at which the row begins. */
const edgeBegunAt = (c: Cursor): EdgeName | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'of row|rows') || !sees(c, 'at', 'on')) return undefined;
    const edge = edgeAfterAt(c);
    return edge === 'neck' || edge === 'armhole' ? edge : undefined;
  });

export function readEdgeOf(c: Cursor): EdgeName | undefined {
  const edge = readEdge(c);
  if (edge === undefined) return undefined;
  // 'beginning and ending of rows'
  if (edge === 'beginning' && takePhrase(c, 'and ending of row|rows')) return 'both';
  if (edge === 'beginning' && attempt(c, () => takes(c, 'and') && readEdge(c) === 'end')) {
    if (!takeAnyPhrase(c, 'of the? needle'))
      attempt(c, () => takeAnyPhrase(c, 'of? the? row') && sees(c, 'every', 'each', 'on'));
    return 'both';
  }
  if (!takeAnyPhrase(c, 'of the? needle'))
    attempt(
      c,
      () => takeAnyPhrase(c, 'of the? work|piece|row') && sees(c, 'every', 'on', 'in', 'next', 'each', 'of'),
    );
  takes(c, 'only');
  return edge;
}
