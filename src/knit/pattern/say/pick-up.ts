import {
  ahead,
  attempt,
  type Cursor,
  peek,
  peekWord,
  sees,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { means } from '../../row/read/meanings.ts';
import type { Item } from '../../row/read/notation.ts';
import type { Statement } from './statement.ts';

/** 'With RS facing pick up and k 30 sts along left neck, k 17 from holder, pick up and k 30 sts along right neck'. */
export const readPickUp = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!skipToPickUp(c)) return undefined;
    const edges: { along: string; stitches: number }[] = [];
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
    const items = edges.map(({ stitches }): Item => ({ is: 'stitches', work: 'pu', times: stitches }));
    return { is: 'pick up', items, edges };
  });

const skipToPickUp = (c: Cursor): boolean =>
  attempt(c, () => {
    const opens = seesOne(c, 'beginning of a pick-up');
    for (let far = 0; opens && far < 40 && c.at < c.end; far += 1) {
      if (seesPhrase(c, 'pick up') || seesPhrase(c, 'pu')) return true;
      if (far === 0 && (seesPhrase(c, 'k') || seesPhrase(c, 'sl'))) {
        if (!seesHolder(c)) break;
        return true;
      }
      c.at += 1;
    }
    return false;
  });

/** 'k 12 from holder, pick up …' begins with a holder's stitches. */
function seesHolder(c: Cursor): boolean {
  let holder = false;
  for (let i = c.at; i < Math.min(c.end, c.at + 16); i += 1) {
    const text = c.tokens[i]?.text;
    if (text === 'holder') holder = true;
    if (text === 'pick') return holder;
  }
  return false;
}

function readOne(c: Cursor, goesOn: boolean): { along: string; stitches: number } | undefined {
  const picked = takeAnyPhrase(c, 'pick up', 'pu');
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
  return { stitches: n, along: readAlong(c) };
}

/** The edge in the pattern's words, up to the next stretch. */
function readAlong(c: Cursor): string {
  const said: string[] = [];
  while (c.at < c.end && said.length < 14) {
    if (/^[,;.([]$/.test(peekWord(c)) || seesPhrase(c, 'and pick|k|then') || seesPhrase(c, 'then')) break;
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
