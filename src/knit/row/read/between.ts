import { namesColours } from './colour.ts';
import { type Cursor, isWord, peekWord, seesOne, takeAnyPhrase, takeTo } from './cursor.ts';
import { means } from './meanings.ts';
import { END, takenBy } from './notation.ts';
import type { Level } from './repeat.ts';
import { readStitch } from './stitch.ts';

/** 'join B' within a row; 'k 20, join a second ball of yarn, k 20' parts it. */
function skipJoin(c: Cursor, level: Level): boolean {
  const { at } = c;
  for (let i = c.at + 1; i < Math.min(c.end, c.at + 9); i += 1) {
    const word = c.tokens[i]?.text;
    if (word === ',' || word === ';') break;
    if (means(word, 'yarn')) {
      takeTo(c, i + 1);
      takeAnyPhrase(c, 'of yarn|wool');
      if (joinsBall(c, at, i) && mayPartAt(level)) level.items.push({ is: 'parting', ball: true });
      return true;
    }
  }
  return false;
}

/** Another ball of the same yarn: where yarns are named it is the next colour. */
const joinsBall = (c: Cursor, from: number, ball: number): boolean =>
  isWord(c.tokens[ball], 'ball') &&
  c.tokens.slice(from, ball).some((one) => isWord(one, 'another', 'second', 'new') || one.value === 2) &&
  !isWord(c.tokens[c.at], 'of') &&
  !namesColours(c.tokens, Math.max(0, from - FAR), Math.min(c.end, ball + FAR));

const FAR = 30;

/** Behind what is bound off or held there is a gap already. */
function mayPartAt({ items, star, close }: Level): boolean {
  const last = items.at(-1);
  if (last === undefined || star >= 0 || close !== undefined || last.is === 'parting') return false;
  return !('work' in last && (last.work === 'bo' || last.work === 'hold'));
}

/** 'join yarn' and nothing else: the row begins, or goes on, where no yarn hangs. */
function saysJoin(c: Cursor): boolean {
  const next = peekWord(c, 2);
  const alone = c.at + 2 >= c.end || next === ',' || next === ']';
  return alone && takeAnyPhrase(c, 'join|rejoin yarn');
}

/** Turns, cut-short last repeats and 'instead of'; whether it was one of them. */
export function readSpecial(c: Cursor, level: Level): boolean {
  if (
    takeAnyPhrase(
      c,
      'w and t',
      'wrap and turn',
      'wrap|wrapping the? next st ,? and? turn|turning work?',
      'wt',
      'w , t',
    )
  ) {
    level.items.push({ is: 'stitches', work: 'wrap next st', times: 1 }, { is: 'turn' });
    return true;
  }
  if (takeAnyPhrase(c, 'turn')) {
    level.items.push({ is: 'turn' });
    return true;
  }
  if (saysJoin(c)) {
    level.items.push({ is: 'stitches', work: 'join yarn', times: 1 });
    return true;
  }
  if (seesOne(c, 'joins yarn')) return skipJoin(c, level);
  if (takeAnyPhrase(c, 'end|ending? last rep')) {
    readLastRepeat(level);
    return true;
  }
  if (!takeAnyPhrase(c, 'instead of')) return false;
  readStitch(c);
  return true;
}

/** 'k across for hem', 'bind off 5 sts for underarm': what a row is for says nothing of its stitches. */
export function skipPurpose(c: Cursor): boolean {
  let end = c.at;
  while (end < c.end && end - c.at < 7 && !isWord(c.tokens[end], '.', ',', ';', ':')) {
    if (c.tokens[end]?.kind !== 'word') return false;
    end += 1;
  }
  takeTo(c, end);
  return true;
}

/** 'rep from * to end, ending k1': the end was not the end. */
export function openLast(level: Level): void {
  const last = level.items.at(-1);
  if (last && 'goal' in last && 'left' in last.goal && last.goal.left === 0)
    level.items[level.items.length - 1] = { ...last, goal: END };
}

/** 'ending last rep k1 instead of k3': the last repeat stops before its last stitches. */
function readLastRepeat(level: Level): void {
  const last = level.items.at(-1);
  if (last?.is === 'group to' && takenBy(last.items.slice(0, -1)) !== undefined)
    level.items.push(...last.items.slice(0, -1));
}
