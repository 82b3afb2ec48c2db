import { hasWord, withoutWords } from '../../row/read/meanings.ts';
import { NUMBER_WORDS } from '../../row/read/vocabulary.ts';
import type { Half, Title } from './statement.ts';

/** What a heading, or a short line of its own, calls what follows. */
export function titleOf(words: string): Title {
  const half = halfOf(words);
  return {
    words,
    pattern: withoutWords(words, 'beside a title'),
    divides: ['neck', 'shoulder', 'divide'].some((word) => words.includes(word)),
    ...(/^\d+$/.test(words) ? { number: true } : {}),
    ...(half === undefined ? {} : { half }),
  };
}

/** 'Right front', 'Fronts': a piece that is one half of what a back is; a left sleeve is as wide as any. */
export function halfOf(name: string): Half | undefined {
  if (hasWord(name, 'whole on either side')) return undefined;
  if (/\bright\b/.test(name)) return 'right';
  return hasWord(name, 'left half') ? 'left' : undefined;
}

/** The title in a line that says nothing else, in her own words: without brackets and marks, not too long. */
export function titleInWords(words: string): Title | undefined {
  const found = MAKES.exec(words);
  const n = found?.[1] === undefined ? 0 : (NUMBER_WORDS[found[1].toLowerCase()] ?? Number(found[1]));
  const makes = Number.isInteger(n) && n > 1 ? Math.min(n, 20) : undefined;
  const plain = (makes ? words.slice(0, found?.index) : words)
    .replace(/\(.*$/s, '')
    .replace(/[.:,]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/[\s-]+$/, '')
    .trim();
  if (!/\p{L}/u.test(plain)) return undefined;
  return { ...titleOf(plain.toLowerCase().slice(0, 40)), ...(makes ? { makes } : {}) };
}

/** 'Balls (make 2)', 'STRAPS – make two' */
const MAKES = /[\s(,:–—-]+make\s+(\w+)\s*\)?\s*[.:]?\s*$/i;
