import { attempt, type Cursor, isWord, sees, seesOne, takeAnyPhrase, takes } from '../../row/read/cursor.ts';
import type { Side } from '../../row/step.ts';
import { readFacing } from './phrase/facing.ts';
import { readSide } from './phrase/side.ts';
import type { Said, Statement } from './statement.ts';

/** '(RS)' before an instruction, 'noting first row is a WS row'. */
export const readNextSide = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const noting = takeAnyPhrase(
      c,
      'noting that? first row is',
      'noting that? 1 st row is',
      'noting first row will be',
      'first row is',
    );
    const open = !noting && takes(c, '(', '[');
    if (!noting && !open) return undefined;
    takes(c, 'a', 'the', 'on');
    const side = readSide(c);
    if (side === undefined) return undefined;
    takes(c, 'row', 'side');
    return noting || takes(c, ')', ']') ? { is: 'next side', side } : undefined;
  });

/** 'With WS facing, cast off 5 sts, …' at the beginning of a sentence: the side of the row that it begins. */
export const readNextFacing = (c: Cursor, said: readonly Said[]): Statement | undefined =>
  attempt(c, () => {
    const before = said.at(-1)?.statement;
    // 'p 1 row on WS': the side of that row
    if (before?.is === 'rows' && before.n === 1 && sees(c, 'on')) return sideBehind(c);
    // '… on a holder, with WS facing cast off 3 sts'
    if (said.length > 0 && before?.is !== 'hold' && before?.is !== 'heading') return undefined;
    const side = sees(c, 'with') ? readFacing(c) : readBareFacing(c);
    const facing = c.tokens
      .slice(Math.max(0, c.at - 3), c.at)
      .some((token) => isWord(token, 'facing', 'toward', 'towards'));
    return side !== undefined && facing && seesOne(c, 'beginning of a row')
      ? { is: 'next side', side }
      : undefined;
  });

/** 'Right side facing, cast off.' */
const readBareFacing = (c: Cursor): Side | undefined =>
  attempt(c, () => {
    if (!sees(c, 'rs', 'ws', 'right', 'wrong')) return undefined;
    const side = readSide(c);
    if (!takes(c, 'facing')) return undefined;
    takes(c, ',');
    return side;
  });

const sideBehind = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const side = takes(c, 'on') ? readSide(c) : undefined;
    takes(c, 'side');
    return side === undefined ? undefined : { is: 'next side', side };
  });
