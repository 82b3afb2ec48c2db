import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';

/** '(sl next 2 sts to cn and hold in back), k2. Knit the 2 sts from cn, …': one crossing. */
export const endsHeldStitches = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at + 1], 'k', 'p') &&
  tokens
    .slice(at + 2, at + 8)
    .some(
      (token, i, all) =>
        isWord(token, 'from', 'off') &&
        all.slice(i + 1, i + 4).some((one) => isWord(one, 'cn', 'cable', 'spare', 'dpn')),
    );

/** Farther on no colon ends a label. */
const LONGEST_LABEL = 8;

/** '1st row: K9. P2. K8.': behind a label, a stop between stitches that are counted parts nothing. */
export const partsStitches = (tokens: readonly Token[], from: number, at: number): boolean =>
  isLabelled(tokens, from, at) && endsStitch(tokens, at) && beginsStitch(tokens, at + 1);

/** '1st row: K30. Turn. Leave rem sts on a spare needle.': the turn is the end of the row, and what is left at it. */
export function partsTurn(tokens: readonly Token[], from: number, at: number): boolean {
  if (isWord(tokens[at + 1], 'turn'))
    return endsStitch(tokens, at) && (isLabelled(tokens, from, at) || isWord(tokens[at + 2], '.'));
  const rest = isWord(tokens[at + 2], 'the') ? at + 3 : at + 2;
  return (
    isWord(tokens[at - 1], 'turn') &&
    isWord(tokens[at + 1], 'leave', 'place', 'sl', 'put') &&
    isWord(tokens[rest], 'rem')
  );
}

/** 'Beginning with a p row. St st 6 rows.' */
export const beginsWithRow = (tokens: readonly Token[], from: number, at: number): boolean =>
  at - from < 6 &&
  isWord(tokens[from], 'beg', 'starting', 'commencing', 'start', 'begin') &&
  isWord(tokens[at - 1], 'row') &&
  isWord(tokens[at - 2], 'k', 'p');

function isLabelled(tokens: readonly Token[], from: number, at: number): boolean {
  let row = false;
  for (let i = from; i < Math.min(at, from + LONGEST_LABEL); i += 1) {
    if (isWord(tokens[i], ':')) return row;
    row ||= isWord(tokens[i], 'row');
  }
  return false;
}

/** 'k9', 'k2tog', 'yo', 'inc 1 st in next st' end here; '5 rows' and 'k to end' do not. */
function endsStitch(tokens: readonly Token[], at: number): boolean {
  const last = tokens[at - 1];
  if (last?.kind === 'number') return isWord(tokens[at - 2], 'k', 'p', 'sl', 'inc', 'dec');
  if (isCable(tokens, at - 3)) return true;
  // '(k2tog, k3) 8 times'
  if (isWord(last, 'time', 'twice', ')')) return [1, 2, 3].some((far) => isWord(tokens[at - far], ')'));
  if (isWord(last, 'st', 'sts')) return isWord(tokens[at - 2], 'next') || endsStitch(tokens, at - 1);
  return isWord(last, 'tog', 'yo', 'fwd', 'psso', 'ssk', 'skp');
}

/** 'C6B', 'Cr3L', 'T4F'. */
const isCable = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], 'c', 'cr', 't', 'tw') &&
  tokens[at + 1]?.kind === 'number' &&
  isWord(tokens[at + 2], 'b', 'f', 'l', 'r') &&
  tokens[at + 2]?.glued === true;

/** 'p2', 'k2tog', 'yo', 'wl fwd', 'inc 1 st in next st', 'work in patt to end'; 'p 1 row' and 'k 2 times' are no stitches. */
export function beginsStitch(tokens: readonly Token[], at: number): boolean {
  const start = isWord(tokens[at], '*', '(', '[') ? at + 1 : at;
  if (isWord(tokens[start], 'yo', 'wl', 'ssk', 'skp') || isCable(tokens, start)) return true;
  if (isWord(tokens[start], 'm') && tokens[start + 1]?.value === 1 && tokens[start + 1]?.glued) return true;
  if (isWord(tokens[start], 'work', 'patt', 'k', 'p') && endsIt(tokens, start + 1)) return true;
  if (!isWord(tokens[start], 'k', 'p', 'sl', 'inc') || tokens[start + 1]?.kind !== 'number') return false;
  if (isWord(tokens[start], 'inc'))
    return (
      isWord(tokens[start + 2], 'st') &&
      isWord(tokens[start + 3], 'in') &&
      isWord(tokens[start + 4], 'next', 'last')
    );
  return !isWord(tokens[start + 2], 'row', 'rows', 'time', 'ridge', 'rib', 'inch', 'cm', 'rnd', 'rnds');
}

const endsIt = (tokens: readonly Token[], at: number): boolean => {
  const to = isWord(tokens[at], 'in') && isWord(tokens[at + 1], 'patt') ? at + 2 : at;
  return isWord(tokens[to], 'to') && isWord(tokens[to + 1], 'end', 'last');
};

const PUT = ['place', 'sl', 'put', 'leave', 'transfer'];

/** 'K. over 18 sts. Place on holder. Bind off 32 sts.': one row in three sentences. */
export function holdsWorked(tokens: readonly Token[], from: number, at: number): boolean {
  const next = at + 1;
  if (isWord(tokens[next], ...PUT))
    return (
      worksSome(tokens, from, at) &&
      isWord(tokens[next + 1], 'on', 'onto', 'them', 'these', 'those', 'rem', 'the') &&
      (!isWord(tokens[next + 1], 'the') || isWord(tokens[next + 2], 'rem'))
    );
  const tail = tokens.slice(Math.max(from, at - 9), at);
  if (!tail.slice(-8).some((token) => isWord(token, 'holder'))) return false;
  if (!isWord(tokens[from], 'k', 'p', 'work', 'next', 'then')) return false;
  if (goesOnInRow(tokens, next)) return true;
  const put = tail.some((token) => isWord(token, ...PUT));
  return (
    put && (isWord(tokens[next], 'join', 'attach') ? joinsAndWorks(tokens, next) : worksRest(tokens, next))
  );
}

/** 'K 32', 'Bind off 12 sts' behind a stop; 'K 4 rows' says rows of their own. */
function goesOnInRow(tokens: readonly Token[], at: number): boolean {
  if (isWord(tokens[at], 'bind', 'bo', 'cast')) return true;
  const k = isWord(tokens[at], 'k', 'p') && tokens[at + 1]?.kind === 'number';
  return k && !isWord(tokens[at + 2], 'row', 'rows', 'ridge');
}

/** 'Knit to end', 'Work across rem sts' behind a stop; 'Work rem sts in rib' says rows of their own. */
function worksRest(tokens: readonly Token[], at: number): boolean {
  if (!isWord(tokens[at], 'k', 'p', 'work', 'patt')) return false;
  const next = isWord(tokens[at + 1], 'across', 'over') ? at + 2 : at + 1;
  const last = tokens.slice(next, next + 4).findIndex((token) => isWord(token, 'end', 'sts'));
  const rest = isWord(tokens[next], 'to', 'rem') || isWord(tokens[next + 1], 'rem');
  const behind = tokens[next + last + 1];
  return rest && last > 0 && (behind === undefined || isWord(behind, '.', ','));
}

/** 'Join second ball and k 32.' */
const joinsAndWorks = (tokens: readonly Token[], at: number): boolean =>
  [3, 4, 5, 6, 7].some(
    (i) =>
      isWord(tokens[at + i - 1], 'and', ',') && (goesOnInRow(tokens, at + i) || worksRest(tokens, at + i)),
  );

/** '… work over 30 sts': the sentence ends with so many stitches worked. */
function worksSome(tokens: readonly Token[], from: number, at: number): boolean {
  let i = at - 1;
  if (!isWord(tokens[i], 'st', 'sts') || tokens[i - 1]?.kind !== 'number') return false;
  i -= 2;
  while (i > from && isWord(tokens[i], 'over', 'across', 'first', 'the')) i -= 1;
  return i >= from && isWord(tokens[i], 'k', 'p', 'work', 'patt', 'rib');
}

/** 'bind off 22 sts; on last 18 sts work for 4 cm', '… and on the remaining 26 sts knit 5 rows': rows of their own. */
export function worksOnSome(tokens: readonly Token[], at: number): boolean {
  if (!isWord(tokens[at], ';', ',', 'and')) return false;
  // '… and work to correspond'
  if (isWord(tokens[at + 1], 'work') && isWord(tokens[at + 2], 'to') && isWord(tokens[at + 3], 'correspond'))
    return isWord(tokens[at - 1], 'sts') && !isWord(tokens[at + 4], 'with', 'to');
  // '… and continue work on the remaining 28 sts as follows'
  const work = isWord(tokens[at + 2], 'work') ? at + 3 : at + 2;
  if (isWord(tokens[at + 1], 'cont') && isWord(tokens[work], 'on'))
    return tokens.slice(work, work + 5).some((token) => isWord(token, 'rem', 'last', 'first'));
  if (!isWord(tokens[at + 1], 'on', 'over')) return false;
  const which = isWord(tokens[at + 2], 'the', 'these') ? at + 3 : at + 2;
  if (!isWord(tokens[which], 'last', 'rem', 'first', 'other') || !isWord(tokens[which + 2], 'sts'))
    return false;
  return tokens.slice(which + 3, which + 8).some((token) => isWord(token, ...ROWS_OF_THEIR_OWN));
}

const ROWS_OF_THEIR_OWN = ['row', 'rows', 'ribs', 'ridge', 'inch', 'in', 'cm', 'for', 'until', 'even'];
