import { contentHash } from '../content-hash.ts';
import { fromBase45, toBase45 } from './base45.ts';
import { deflated, inflateWithin } from './deflate.ts';

/**
 * A text as a run of QR codes, shown one after the other on one screen and read by another device's camera, in any
 * order. Each is 'RIDGELINE/sum/n/of/signs': the n-th (from 1) of so many, the sum being that of all signs together.
 */
export interface RunCode {
  readonly sum: string;
  readonly n: number;
  readonly of: number;
  readonly signs: string;
}

const HEAD = 'RIDGELINE';
/** Most signs of one code: version 15 of ISO/IEC 18004 at level L has room for 758, and is 77 modules wide. */
export const RUN_ROOM = 758;
/** the head of the last code of the longest run: its name, four strokes, the sum, two numbers of three digits */
const HEAD_LENGTH = HEAD.length + 4 + 14 + 6;
/** a minute and three quarters of them; a pullover knitted to its end takes some 60 */
const MOST_CODES = 300;
/** Most bytes that a run may unfold to: a garment with its log packs about 10:1. */
const MOST_BYTES = 12_000_000;

/** Undefined where it would take more codes than anyone holds a camera to. */
export async function codeRun(text: string): Promise<readonly string[] | undefined> {
  const signs = toBase45(await deflated(text));
  const each = RUN_ROOM - HEAD_LENGTH;
  const of = Math.ceil(signs.length / each);
  if (of > MOST_CODES) return undefined;
  const sum = sumOf(signs);
  return Array.from({ length: of }, (_, i) =>
    [HEAD, sum, i + 1, of, signs.slice(i * each, (i + 1) * each)].join('/'),
  );
}

const sumOf = (signs: string): string => contentHash(signs).toUpperCase();

/** Undefined for what is no code of a run. */
export function readRunCode(text: string): RunCode | undefined {
  const [, sum, n, of, signs] =
    /^RIDGELINE\/([0-9A-Z]{14})\/(\d{1,3})\/(\d{1,3})\/([0-9A-Z $%*+./:-]+)$/.exec(text) ?? [];
  if (sum === undefined || signs === undefined) return undefined;
  const code = { sum, n: Number(n), of: Number(of), signs };
  return code.n >= 1 && code.n <= code.of && code.of <= MOST_CODES ? code : undefined;
}

/**
 * What has been read of a run, the new code taken in. One of another run begins anew: she has gone back, or shows
 * another garment.
 */
export const withCode = (read: readonly RunCode[], code: RunCode): readonly RunCode[] => {
  const [first] = read;
  if (first === undefined || first.sum !== code.sum || first.of !== code.of) return [code];
  return read.some(({ n }) => n === code.n) ? read : [...read, code];
};

/** The text of a run; undefined while a code is missing, or where what came together is not what went out. */
export async function textOfRun(read: readonly RunCode[]): Promise<string | undefined> {
  const [first] = read;
  if (first === undefined || read.length < first.of) return undefined;
  const signs = [...read]
    .sort((a, b) => a.n - b.n)
    .map((code) => code.signs)
    .join('');
  const bytes = sumOf(signs) === first.sum ? fromBase45(signs) : undefined;
  return bytes && inflateWithin(bytes, MOST_BYTES).catch(() => undefined);
}
