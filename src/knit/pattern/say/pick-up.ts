import type { PickUp } from '../../piece/recipe.ts';
import {
  ahead,
  attempt,
  type Cursor,
  isOneOf,
  peek,
  peekWord,
  sees,
  seesOne,
  seesPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { means } from '../../row/read/meanings.ts';
import type { Item } from '../../row/read/notation.ts';
import { seesForEach } from '../../row/read/pick-up.ts';
import type { Statement } from './statement.ts';

/** 'With RS facing pick up and k 30 sts along left neck, k 17 from holder, pick up and k 30 sts along right neck'. */
export const readPickUp = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!skipToPickUp(c)) return undefined;
    const edges: PickUp[] = [];
    while (c.at < c.end && edges.length < 30) {
      const one = attempt(c, () => {
        takes(c, ',', ';');
        takes(c, 'and', 'then');
        return readOne(c, edges.length > 0);
      });
      if (one === undefined) break;
      edges.push(one);
    }
    if (edges.length === 0) return undefined;
    skipHowHigh(c);
    const items = edges.map(({ stitches }): Item => ({ is: 'stitches', work: 'pu', times: stitches }));
    return { is: 'pick up', items, edges };
  });

/** 'pick up 15 sts at the centre of the front, 18 rows above the border': where is said in her words. */
const skipHowHigh = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, ',') || takeNumber(c) === undefined || !takePhrase(c, 'rows|cm|in above|below|from'))
      return false;
    while (c.at < c.end && !sees(c, '.', ';')) c.at += 1;
    return true;
  });

/** Words before 'pick up', which say from where; 'with RS facing, k 12 from holder, pick up …' begins with a holder's stitches. */
const skipToPickUp = (c: Cursor): boolean =>
  attempt(c, () => {
    if (sees(c, 'k', 'sl')) return seesHolder(c);
    if (!seesOne(c, 'beginning of a pick-up')) return false;
    for (let far = 0; far < 40 && c.at < c.end; far += 1) {
      if (seesPhrase(c, 'pick up') || ahead(c, () => readOne(c, false)?.held === true)) return true;
      c.at += 1;
    }
    return false;
  });

const seesHolder = (c: Cursor): boolean => {
  const words = c.tokens.slice(c.at, Math.min(c.end, c.at + 16)).map(({ text }) => text);
  const pick = words.indexOf('pick');
  return pick >= 0 && words.slice(0, pick).includes('holder');
};

function readOne(c: Cursor, goesOn: boolean): PickUp | undefined {
  const picked = takePhrase(c, 'pick up');
  if (picked) takes(c, 'and', ',');
  const knitted = takes(c, 'k', 'p', 'work', 'sl');
  if (
    !picked &&
    !knitted &&
    !(goesOn && peek(c)?.kind === 'number' && seesPhrase({ ...c, at: c.at + 1 }, STS))
  )
    return undefined;
  takes(c, 'across', 'over', 'the', 'up', 'evenly');
  takes(c, 'the', 'next');
  const n = takeNumber(c);
  if (n === undefined || !Number.isSafeInteger(n)) return undefined;
  if (!takePhrase(c, STS) && !picked && !seesPhrase(c, 'from|off|across')) return undefined;
  if (seesForEach(c)) return undefined;
  // twice as many, and nobody says at which edges
  if (picked && seesPhrase(c, 'on|at|along each|both side|sides|end|ends')) return undefined;
  const isHeld = !picked && seesPhrase(c, 'from|off holder|needle');
  // 'from holder along the neck': the edge is named behind it
  if (isHeld && seesPhrase(c, 'from holder along')) takePhrase(c, 'from holder');
  return { stitches: n, along: readAlong(c), ...(isHeld ? { held: true } : {}) };
}

/** The edge in the pattern's words, up to the next stretch. */
function readAlong(c: Cursor): string {
  const said: string[] = [];
  while (c.at < c.end && said.length < 14) {
    if (
      isOneOf(peekWord(c), ', ; . ( [') ||
      seesPhrase(c, 'and pick|k|then|work|rib|p|cont|beg|bind') ||
      seesPhrase(c, 'then')
    )
      break;
    const word = peek(c)?.text ?? '';
    if (!(said.length === 0 && means(word, 'along an edge'))) said.push(word);
    c.at += 1;
  }
  return said.join(' ');
}

/** 'with RS facing pick up and knit 72 sts evenly along armhole edge'. */
export const seesPickUp = (c: Cursor): boolean =>
  ahead(c, () => {
    for (let far = 0; far < 25 && c.at < c.end && !seesPhrase(c, 'pick up') && !sees(c, '.'); far += 1)
      c.at += 1;
    return seesPhrase(c, 'pick up');
  });
