import {
  attempt,
  type Cursor,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeTo,
  took,
} from '../../../row/read/cursor.ts';
import type { FabricSaid } from '../statement.ts';
import { patternNamed, readFabric } from './fabric.ts';

export const readFabricHere = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    // 'K 1, P 1 in ribbing for 2 inches', 'K 2, P 2 for 4 inches'
    const face = attempt(c, () => {
      takes(c, 'in');
      return readBareRib(c);
    });
    if (face) return face;
    const ribbed = attempt(c, () => (takes(c, 'rib') || took(c, 'rib') ? readBareRib(c) : undefined));
    if (ribbed) return ribbed;
    if (took(c, 'rib') && seesPhrase(c, 'for|until|to|in')) return patternNamed('rib');
    return readFabric(c);
  });

/** 'Begin pattern' is the one that the text defines, and nothing that goes on. */
export const readFabricAnew = (c: Cursor, begins: boolean): FabricSaid | undefined => {
  const fabric = readFabricHere(c);
  return begins && fabric?.is === 'established' && took(c, 'patt') ? patternNamed('patt') : fabric;
};

const readBareRib = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    let face = '';
    let groups = 0;
    let counted = 0;
    const starred = takes(c, '*');
    while (sees(c, 'k', 'p', ',', 'and') && face.length < 40) {
      if (takes(c, ',', 'and')) continue;
      const n = peekNumber(c, 1);
      if (n === undefined || n < 1 || n > 20 || !Number.isSafeInteger(n)) break;
      face += peekWord(c).charAt(0).repeat(n);
      takeTo(c, c.at + 2);
      groups += 1;
      if (!takePhrase(c, 'st|sts')) continue;
      counted += 1;
      // 'k 2, p 2 sts', 'k 1 st, p 1 st', and no 'k 2 sts, p 2'
      if (counted < groups) break;
    }
    if (counted > 1 && counted < groups) return undefined;
    if (counted === 1 && !took(c, 'st', 'sts', ',')) return undefined;
    if (starred && !takes(c, '*')) return undefined;
    const rib = face.includes('k') && face.includes('p');
    if (rib && (takeAnyPhrase(c, 'in rib', 'rib', '( rib )') || seesPhrase(c, 'for|until'))) {
      if (!seesPhrase(c, 'to end|last')) return { is: 'rib', face };
    }
  });
