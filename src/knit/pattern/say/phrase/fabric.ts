import type { FabricName } from '../../../fabric.ts';
import {
  attempt,
  type Cursor,
  peek,
  peekNumber,
  peekText,
  takeAnyPhrase,
  takeNumber,
  takes,
} from '../../../row/read/cursor.ts';
import type { FabricSaid } from '../statement.ts';

const ST = 'st|stitch|sts';

/** 'st st', 'k1, p1 rib', 'moss st', 'pattern', 'Basket pattern', 'as set'. */
export const readFabric = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const start = c.at;
    takes(c, 'in', 'work', 'working', 'with');
    takes(c, 'a', 'the', 'this', 'these', 'main');
    const fabric = readKnown(c) ?? readRib(c) ?? readEstablished(c) ?? readNamedPattern(c);
    if (fabric === undefined) c.at = start;
    return fabric;
  });

const named = (name: FabricName): FabricSaid => ({ is: 'named', name });

/** A stitch pattern by the words that name it. */
export function patternNamed(words: string): FabricSaid {
  const name = words
    .replace(/\b(pattern|patt|pat|stitch|st|the|main|in|work|as|a)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const known =
    name === 'rib' || name === 'double moss' ? name : NO_NAME.test(name) ? 'the pattern' : undefined;
  return { is: 'pattern', words, name, ...(known === undefined ? {} : { else: known }) };
}

const NO_NAME = /^(|pattern|main|same|this|it|body|border|band)$/;

function readKnown(c: Cursor): FabricSaid | undefined {
  if (
    takeAnyPhrase(
      c,
      `reverse|rev|reversed stocking|stockinette|st ${ST}`,
      'rev stst|ss',
      'reverse stockinette|stocking',
      'reverse st st',
      'purl side stockinette',
    )
  )
    return named('reverse stocking');
  if (
    takeAnyPhrase(
      c,
      `stocking|stockinette|stockingette|stocks|stock|st ${ST}`,
      'stockinette|stocking|stst|ss|stockinet',
    )
  )
    return named('stocking');
  if (takeAnyPhrase(c, `garter|gar|gst|g ${ST}`, 'garter|gst')) {
    takeAnyPhrase(c, 'ridges|ridge', 'pattern|border');
    return named('garter');
  }
  if (takeAnyPhrase(c, `double moss|seed ${ST}`, 'double moss|seed')) return patternNamed('double moss');
  if (takeAnyPhrase(c, `moss|seed|rice ${ST}`, 'moss|seed')) {
    takes(c, 'pattern', 'border');
    return named('moss');
  }
  return undefined;
}

/** 'k1, p1 rib', 'rib of k2, p2', '2 x 2 rib', 'single rib'. */
const readRib = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    const ahead = takeAnyPhrase(
      c,
      'rib|ribbing of',
      'ribbing|rib , as follows :',
      'rib|ribbing (',
      'rib|ribbing',
    );
    const bracket = takes(c, '(', '[') || c.tokens[c.at - 1]?.text === '(';
    const face = readFace(c);
    if (face !== '') {
      if (bracket) takes(c, ')', ']');
      const named = takeAnyPhrase(c, 'rib|ribbing|ribs pattern', 'rib|ribbing|ribs', 'ribbed') || ahead;
      if (bracket) takes(c, ')', ']');
      if (named) return { is: 'rib', face };
      return undefined;
    }
    if (ahead) {
      takes(c, 'pattern');
      return patternNamed('rib');
    }
    const across = readByNumbers(c);
    if (across) return { is: 'rib', face: across };
    if (takeAnyPhrase(c, 'single rib|ribbing')) return { is: 'rib', face: 'kp' };
    if (takeAnyPhrase(c, 'double rib|ribbing')) return { is: 'rib', face: 'kkpp' };
  });

/** 'k2, p2' as 'kkpp'; '' when something else comes. */
function readFace(c: Cursor): string {
  let face = '';
  while (face.length < 60 && /^(k|p|knit|purl|and|,|x|\/)$/.test(peekText(c))) {
    if (takes(c, ',', 'and', 'x', '/')) continue;
    const stitch = peekText(c).charAt(0);
    const n = peekNumber(c, 1);
    if (n === undefined || !Number.isSafeInteger(n) || n < 1 || n > 40) break;
    const after = peekText(c, 2);
    if (/^(tog|row|rows|st|sts|rnd|rnds|cm|in|inch|inches|times)$/.test(after)) break;
    face += stitch.repeat(n);
    c.at += 2;
  }
  return face.includes('k') && face.includes('p') ? face : '';
}

/** '2 x 2 rib', '1/1 rib'. */
const readByNumbers = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const k = takeNumber(c);
    if (k !== undefined && takes(c, 'x', '×', '/', 'by', '-') && Number.isSafeInteger(k) && k < 20) {
      const p = takeNumber(c);
      if (p !== undefined && Number.isSafeInteger(p) && p < 20 && takeAnyPhrase(c, 'rib|ribbing'))
        return 'k'.repeat(k) + 'p'.repeat(p);
    }
  });

const readEstablished = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    takes(c, 'keeping', 'keep');
    takeAnyPhrase(c, 'continuity of', 'to', 'in');
    takes(c, 'established', 'est', 'same', 'this', 'main');
    if (
      takeAnyPhrase(
        c,
        'pattern|patt|pat|pats|patterns|manner as set|established|est|before',
        'pattern|patt|pat|pats correct',
        'pattern|patt|pat|pats|patterns|manner',
        'as set|established|est|before',
      )
    ) {
      takes(c, 'correct', 'throughout');
      const tail = c.at;
      takes(c, 'over');
      if (!takeAnyPhrase(c, 'all sts', 'these sts', 'rem sts')) c.at = tail;
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
        /^(until|for|to|and|row|rows|even|st|sts|from|at|on|dec|inc|decrease|increase|decreasing|increasing|k|p|knit|purl|bo|bind|cast|co|sl|slip|yo|next|last|each|every|place|rep|repeat|end|ending|beg|until|left|right|shape|working|then|when|of)$/.test(
          token.text,
        )
      )
        break;
      said.push(token.text);
      c.at += 1;
      if (takes(c, 'pattern', 'patt', 'pat', 'st', 'stitch', 'rib', 'panel', 'chart'))
        return patternNamed(said.join(' '));
    }
  });
