import type { Fault } from '../../fault.ts';
import { means } from '../../row/read/meanings.ts';
import { WHOLE } from './beside.ts';
import type { ReadSentence, Said, Statement } from './statement.ts';

/**
 * What was not understood. Words that hang on a statement without a mark between are of it ('work 3 rows | in wibble'), and
 * so is what is to be kept meanwhile ('work 6 rows, | keeping 3 sts at each edge in moss st'): then nothing of it is
 * understood ('k 1 row, | inc 1 st in 5th st'). A shaping stands all the same.
 */
export function withRest(
  said: Said[],
  fault: Fault,
  last: { readonly begin: number; readonly end: number },
  rest: { readonly at: number; readonly parted: boolean; readonly word: string; readonly more: boolean },
): ReadSentence {
  const is = said.at(-1)?.statement.is;
  const meanwhile = rest.parted && means(rest.word, 'beginning of an aside');
  const within =
    (is === 'rows' && means(rest.word, 'changes the count')) || (rest.more && isUntimed(said.at(-1)));
  if (is === undefined || (rest.parted && !meanwhile && !within)) return { said, fault, rest: rest.at };
  if (meanwhile && SHAPES.has(is)) return { said, fault, rest: rest.at, beside: true };
  if (!WHOLE.has(is)) return { said, fault, rest: rest.at };
  said.pop();
  return { said, fault, rest: last.begin, order: true };
}

/** 'Dec 1 st at neck edge | and 2 sts at armhole edge on next 3 rows': in which rows is said behind the second of them. */
const isUntimed = (said: Said | undefined): boolean =>
  said?.statement.is === 'shape' && said.statement.beats.length === 0;

const SHAPES: ReadonlySet<Statement['is']> = new Set([
  'shape',
  'groups',
  'evenly',
  'bind off',
  'cast on',
  // 'to correspond, omitting buttonholes'
  'as for',
]);
