import { contentHash } from '../content-hash.ts';

/**
 * A link's text in several codes, where one would be too dense for a camera. A part is 'P.n.of.sum.characters': the
 * n-th (from 1) of so many, the sum being that of the whole text.
 */
export interface LinkPart {
  readonly n: number;
  readonly of: number;
  readonly sum: string;
  readonly text: string;
}

/** Most parts of one link that are taken in: far above any garment. */
const MOST_PARTS = 40;
const SUM_LENGTH = 10;
/** characters of a part beside its text, its two numbers of two digits at the most */
const HEAD_LENGTH = 'P.40.40..'.length + SUM_LENGTH;

const sumOf = (text: string): string => contentHash(text).replace(/\W/g, '').slice(0, SUM_LENGTH);

/**
 * @param room most characters of one part
 * @returns the text alone where it has room in one; undefined where it would take too many
 */
export function partsOfLink(text: string, room: number): readonly string[] | undefined {
  if (text.length <= room) return [text];
  const each = room - HEAD_LENGTH;
  const of = each < 1 ? Infinity : Math.ceil(text.length / each);
  if (of > MOST_PARTS) return undefined;
  const sum = sumOf(text);
  return Array.from({ length: of }, (_, i) =>
    ['P', i + 1, of, sum, text.slice(i * each, (i + 1) * each)].join('.'),
  );
}

/** Undefined for what is no part: a whole link, or anything else. */
export function readPart(text: string): LinkPart | undefined {
  const [, n, of, sum, rest] = /^P\.(\d{1,2})\.(\d{1,2})\.(\w{1,16})\.([\w.-]+)$/.exec(text) ?? [];
  const part = { n: Number(n), of: Number(of), sum: sum ?? '', text: rest ?? '' };
  return rest !== undefined && part.n >= 1 && part.n <= part.of && part.of <= MOST_PARTS ? part : undefined;
}

/** The whole text; undefined while a part is missing or they are not of one link. */
export function joinParts(parts: readonly LinkPart[]): string | undefined {
  const [first] = parts;
  if (first === undefined) return undefined;
  const text = Array.from(
    { length: first.of },
    (_, i) => parts.find(({ n }) => n === i + 1)?.text ?? '',
  ).join('');
  return sumOf(text) === first.sum ? text : undefined;
}
