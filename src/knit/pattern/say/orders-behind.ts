import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';

/** 'attach CC and work in pattern until …': what is told is but the beginning of an order. */
export function hidesOrder(tokens: readonly Token[], from: number, to: number): boolean {
  for (let i = from + 1; i < to; i += 1) if (joinsOrder(tokens, i)) return true;
  return false;
}

/** '… | and cast on 4 sts', '… but | continue as before': an order that no word before it may swallow. */
export const joinsOrder = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], 'and', 'but', ',', 'then', ';')
    ? joinsOrder(tokens, at + 1) || isOrder(tokens, at + 1)
    : isWord(tokens[at - 1], 'and', 'but', ',', 'then', ';') && isOrder(tokens, at);

function isOrder(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  // what comes is named
  if (tokens.slice(at, at + 8).some((token) => isWord(token, 'foll'))) return false;
  if (isWord(tokens[at], 'cast', 'bind', 'pick', 'rep', 'inc', 'dec', 'shape')) return next !== undefined;
  return (
    isWord(tokens[at], 'work', 'cont', 'k', 'p') && (next?.kind === 'number' || isWord(next, ...GOES_ON))
  );
}

const GOES_ON =
  'in on even straight across to until as from rem these for each over next every without'.split(' ');
