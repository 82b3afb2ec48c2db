import { isStitchName, type StitchName } from '../../stitch.ts';
import {
  attempt,
  type Cursor,
  peekNumber,
  peekWord,
  sees,
  takeAnyPhrase,
  takeNumber,
  takes,
} from './cursor.ts';
import { takeSts } from './goal.ts';
import { counted, type ReadItem } from './plain.ts';

/** 'c4f', 'cable 6 back', 't3b', 'c6l'; the word c, t, cable, cr, tw comes next. */
export function readCross(c: Cursor): ReadItem | undefined {
  const twist = sees(c, 't', 'tw', 'twist', 'cr', 'cross');
  c.at += 1;
  const n = takeNumber(c);
  if (n === undefined) return readTwistWord(c);
  takeSts(c);
  const way = takeAnyPhrase(c, 'f', 'front', 'l', 'left', 'fw', 'fwd')
    ? 'f'
    : takeAnyPhrase(c, 'b', 'back', 'r', 'right', 'bw', 'bk')
      ? 'b'
      : undefined;
  if (way === undefined) return undefined;
  // 't3f p' is one crossing, 'c4f p2' a crossing and two stitches
  if (peekNumber(c, 1) === undefined) takes(c, 'p', 'k');
  const cross = [...(twist ? [`t${n}${way}`] : []), `c${n}${way}`].find(isStitchName);
  return cross && counted(cross, 1);
}

/** 'twist left', 'cross right', 'tw l'. */
function readTwistWord(c: Cursor): ReadItem | undefined {
  if (takeAnyPhrase(c, 'left', 'l')) return counted('lt', 1);
  if (takeAnyPhrase(c, 'right', 'r')) return counted('rt', 1);
  return undefined;
}

/** '2/2 LC', '3/3 rpc'; a number comes next. */
export function readFraction(c: Cursor): ReadItem | undefined {
  const front = peekNumber(c);
  const back = peekNumber(c, 2);
  if (front === undefined || back === undefined || peekWord(c, 1) !== '/') return undefined;
  const way = peekWord(c, 3);
  const alias = ({ l: 'lc', r: 'rc', lp: 'lpc', rp: 'rpc', lcp: 'lpc', rcp: 'rpc' } as const)[way] ?? way;
  const name = `${front}/${back} ${alias}`;
  if (!isStitchName(name)) return undefined;
  c.at += 4;
  return counted(name, 1);
}

/** 'sl next 3 sts to cn and hold in front, k3, k3 from cn'; sl or slip comes next. */
export const readCableNeedle = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    const read = crossed(c);
    return read && counted(read, 1);
  });

const NEEDLE = [
  'onto|on|to cn|cable|dpn',
  'onto|on|to a|the|spare|extra cn|cable|dpn|needle',
  'onto|on|to a spare|dbl cn|cable|pointed',
  'onto|on|to a spare? dbl pointed or cable',
  'onto|on|to a spare dbl pointed',
];

function crossed(c: Cursor): StitchName | undefined {
  c.at += 1;
  takes(c, 'the');
  takes(c, 'next');
  const number = takeNumber(c);
  // 'next st' is one
  if (!takeSts(c) && number === undefined) return undefined;
  const held = number ?? 1;
  if (!takeAnyPhrase(c, ...NEEDLE)) return undefined;
  takes(c, 'needle');
  gap(c);
  takes(c, 'hold', 'leave', 'held', 'place', 'put', 'keep');
  takeAnyPhrase(c, 'it', 'them', 'this');
  takes(c, 'in', 'at', 'to');
  takes(c, 'the');
  const front = takes(c, 'front');
  if (!front && !takes(c, 'back')) return undefined;
  takeAnyPhrase(c, 'of work');
  gap(c);
  const first = knitOrPurl(c);
  gap(c);
  const second = knitOrPurl(c);
  if (!first || !second || second.n !== held) return undefined;
  if (!takeAnyPhrase(c, 'from|off the? spare? cn|cable|needle', 'from|off dpn')) return undefined;
  takes(c, 'needle');
  if (first.n === held && !first.purl && !second.purl) return named(`c${2 * held}${front ? 'f' : 'b'}`);
  const purled = first.purl !== second.purl;
  return named(
    `${front ? held : first.n}/${front ? first.n : held} ${front ? 'l' : 'r'}${purled ? 'p' : ''}c`,
  );
}

const named = (name: string): StitchName | undefined => (isStitchName(name) ? name : undefined);

function knitOrPurl(c: Cursor): { n: number; purl: boolean } | undefined {
  const purl = sees(c, 'p');
  if (!takes(c, 'k', 'p')) return undefined;
  takes(c, 'the');
  takes(c, 'next');
  const n = takeNumber(c) ?? 1;
  takeSts(c);
  return { n, purl };
}

function gap(c: Cursor): void {
  while (takes(c, ',', ';', 'and', '.', 'then', '-')) {
    // one crossing, whatever stands between its moves
  }
}
