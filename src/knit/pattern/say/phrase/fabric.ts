import type { FabricName } from '../../../fabric.ts';
import {
  attempt,
  type Cursor,
  isOneOf,
  peek,
  peekNumber,
  peekWord,
  sees,
  seesOne,
  takeAnyPhrase,
  takeNumber,
  takes,
  took,
} from '../../../row/read/cursor.ts';
import { means, withoutWords } from '../../../row/read/meanings.ts';
import type { FabricSaid } from '../statement.ts';

const ST = 'st|sts';

/** 'st st', 'k1, p1 rib', 'moss st', 'pattern', 'Basket pattern', 'as set'. */
export const readFabric = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    takes(c, 'in', 'work', 'working', 'with');
    takes(c, 'a', 'the', 'this', 'these', 'main');
    // 'striped st st'; a 'stripe pattern' is asked for by that name
    const striped = takes(c, 'stripe', 'striped');
    if (striped && sees(c, 'patt')) return undefined;
    // any words before 'pattern' or 'st' may name a pattern: the known ones first
    return readKnown(c) ?? readRib(c) ?? readEstablished(c) ?? readNamedPattern(c);
  });

const named = (name: FabricName): FabricSaid => ({ is: 'named', name });

/** A stitch pattern by the words that name it. */
export function patternNamed(words: string): FabricSaid {
  const name = withoutWords(words, 'beside the name of a pattern');
  const known =
    name === 'rib' || name === 'double moss'
      ? name
      : name === '' || means(name, 'no pattern of its own')
        ? 'the pattern'
        : undefined;
  return { is: 'pattern', words, name, ...(known === undefined ? {} : { else: known }) };
}

function readKnown(c: Cursor): FabricSaid | undefined {
  if (takeAnyPhrase(c, `rev stocking|st ${ST}`, 'rev stst|ss|stocking', 'p side stocking'))
    return named('reverse stocking');
  if (takeAnyPhrase(c, `stocking|stocks|stock|st -? ${ST}`, 'stocking|stst|ss')) return named('stocking');
  if (
    takeAnyPhrase(
      c,
      'k 1 row ,? and? p 1 row alternately?',
      '(? 1 row k ,? and? 1 row p',
      'alt|alternating k and p rows',
    )
  )
    return named('stocking');
  if (takeAnyPhrase(c, 'plain knitting', `garter|gst|g -? ${ST}`, 'garter|gst')) {
    takeAnyPhrase(c, 'ridge', 'patt|border');
    return named('garter');
  }
  if (takeAnyPhrase(c, `dbl moss ${ST}`, 'dbl moss')) return patternNamed('double moss');
  if (takeAnyPhrase(c, `moss|rice ${ST}`, 'moss')) {
    takes(c, 'patt', 'border');
    return named('moss');
  }
  return undefined;
}

/** 'k1, p1 rib', 'rib of k2, p2', '2 x 2 rib', 'single rib'. */
const readRib = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const ahead = takeAnyPhrase(c, 'rib of', 'rib st ,', 'rib , as foll :', 'rib ,? (', 'rib');
    const bracket = takes(c, '(', '[') || took(c, '(');
    const face = readFace(c);
    if (face !== '') {
      if (bracket) takes(c, ')', ']');
      const named = takeAnyPhrase(c, 'rib|ribs patt', 'rib|ribs', 'ribbed') || ahead;
      if (bracket) takes(c, ')', ']');
      if (named) return { is: 'rib', face };
      return undefined;
    }
    if (ahead) {
      takes(c, 'patt');
      return patternNamed('rib');
    }
    const across = readByNumbers(c);
    if (across) return { is: 'rib', face: across };
    if (takeAnyPhrase(c, 'single rib')) return { is: 'rib', face: 'kp' };
    if (takeAnyPhrase(c, 'dbl rib')) return { is: 'rib', face: 'kkpp' };
  });

/** '2 plain', 'one-plain' */
const turned = (c: Cursor): number => {
  if (peekNumber(c) === undefined) return 0;
  const far = peekWord(c, 1) === '-' ? 2 : 1;
  return isOneOf(peekWord(c, far), 'k p plain') ? far : 0;
};

/** 'k2, p2' as 'kkpp'; '' when something else comes. */
function readFace(c: Cursor): string {
  let face = '';
  while (sees(c, 'k', 'p', 'and', ',', 'x', '/', '.') || turned(c) > 0) {
    if (takes(c, ',', 'and', 'x', '/', '.')) continue;
    // '2 plain, 2 purl'
    const before = turned(c);
    const stitch = peekWord(c, before) === 'p' ? 'p' : 'k';
    const n = peekNumber(c, before > 0 ? 0 : 1);
    if (n === undefined || !Number.isSafeInteger(n) || n < 1 || n > 40) break;
    if (means(peekWord(c, 2), 'after a stitch count')) break;
    face += stitch.repeat(n);
    c.at += Math.max(2, before + 1);
  }
  return face.includes('k') && face.includes('p') ? face : '';
}

/** 'Work 4 rows in | k2, p2, and bind off', 'change to | k1, p1 (for the cuff)': a rib that ends where an order does. */
export const readSpelledRib = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const face = readFace(c);
    const ends =
      c.at >= c.end ||
      sees(c, '(', ';') ||
      (took(c, ',', 'and', '.') && seesOne(c, 'bids') && !sees(c, 'k', 'p', 'sl', 'inc', 'dec'));
    return face !== '' && ends ? { is: 'rib', face } : undefined;
  });

/** 'Rib 6 rows | (k 1, p 1)', 'Rib 6 rows | , k 1, p 1'. */
export const readBracketed = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const open = takes(c, '(');
    const face = open || takes(c, ',') ? readFace(c) : '';
    return face !== '' && (open ? takes(c, ')') : c.at >= c.end) ? { is: 'rib', face } : undefined;
  });

/** '2 x 2 rib', '1/1 rib'. */
const readByNumbers = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const k = takeNumber(c);
    if (k !== undefined && takes(c, 'x', '/', 'by', '-') && Number.isSafeInteger(k) && k < 20) {
      const p = takeNumber(c);
      if (p !== undefined && Number.isSafeInteger(p) && p < 20 && takeAnyPhrase(c, 'rib'))
        return 'k'.repeat(k) + 'p'.repeat(p);
    }
  });

const readEstablished = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    takes(c, 'keeping', 'keep');
    takeAnyPhrase(c, 'continuity of', 'to', 'in');
    takes(c, 'est', 'same', 'this', 'main');
    if (
      takeAnyPhrase(
        c,
        'patt|pats|manner as set|est|before',
        'patt|pats correct',
        'patt|pats|manner',
        'as set|est|before',
      )
    ) {
      // 'in pattern st' is the one that the text defines
      if (sees(c, 'st')) return undefined;
      takes(c, 'correct', 'throughout');
      attempt(c, () => {
        takes(c, 'over');
        return takeAnyPhrase(c, 'all sts', 'these sts', 'rem sts');
      });
      return { is: 'established' };
    }
  });

/** 'Basket pattern', 'Lace stitch', 'cable patt': up to four words before the noun. */
const readNamedPattern = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const said: string[] = [];
    while (said.length < 5) {
      const token = peek(c);
      if (
        token === undefined ||
        (token.kind !== 'word' && !(token.kind === 'number' && said.length > 0)) ||
        means(token.word, 'not in the name of a fabric')
      )
        break;
      said.push(token.text);
      c.at += 1;
      if (takes(c, 'patt', 'st', 'rib', 'panel', 'chart')) {
        if (took(c, 'patt')) takes(c, 'st');
        else if (took(c, 'st')) takes(c, 'patt');
        if (took(c, 'rib')) said.push('rib');
        return patternNamed(said.join(' '));
      }
    }
  });
