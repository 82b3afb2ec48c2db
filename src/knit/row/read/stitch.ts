import type { StitchName } from '../../stitch.ts';
import { readBindOff } from './bind-off.ts';
import { readCableNeedle, readCross, readFraction } from './cable.ts';
import { readCastOn } from './cast-on.ts';
import { readDecrease, readIncrease, readMake, readOver } from './change.ts';
import { attempt, type Cursor, peek, peekWord, takePhrase } from './cursor.ts';
import { readDrop } from './drop.ts';
import { readHold, readTake } from './holder.ts';
import { readMarker } from './marker.ts';
import { readPickUp } from './pick-up.ts';
import { counted, type ReadItem, readPlain } from './plain.ts';
import { readFrontSlip, readMovedSlip, readSlip } from './slip.ts';
import { readPanel, readRestOfRow, readWork } from './work.ts';

/** Abbreviations that stand for one stitch and nothing else; letters and numbers parted by blanks. */
const NAMES: readonly (readonly [string, StitchName])[] = [
  ['s 2 kp 2', 's2kp'],
  ['s 2 kp|kpo', 's2kp'],
  ['s 2 k 1 p|po', 's2kp'],
  ['sl 2 kp|kpo', 's2kp'],
  ['sk 2 p|po|togp|psso', 'sk2p'],
  ['sl k 2 tog psso', 'sk2p'],
  ['cdd|cddec', 's2kp'],
  ['s 2 pp 2', 's2pp'],
  ['s 2 pp|ppo', 's2pp'],
  ['dd|ddec', 'dec 2'],
  ['skp|skpo|sko|skpsso', 'skp'],
  ['ssk', 'ssk'],
  ['ssp', 'ssp'],
  ['sssk', 'sssk'],
  ['s 3 k', 'sssk'],
  ['sssp', 'sssp'],
  ['spp', 'spp'],
  ['sp 2 p', 'sp2p'],
  ['kfbf|kfbfb', 'kfbf'],
  ['kfb|kbf|kf', 'kfb'],
  ['pfb|pbf', 'pfb'],
  ['ktbl|kb', 'k tbl'],
  ['ptbl|pb', 'p tbl'],
  ['ktog|n|narrow', 'k2tog'],
  ['ptog', 'p2tog'],
  ['mb', 'mb'],
  ['bobble', 'mb'],
  ['lt', 'lt'],
  ['rt', 'rt'],
  ['left|l twist|cross', 'lt'],
  ['right|r twist|cross', 'rt'],
  ['lli|rli|kll|krl|lir|ril|lil', 'm1'],
  ['lifted inc', 'm1'],
  ['wrap the? next st', 'wrap next st'],
  ['working|work each|all|any ds as one|1|a st', 'working each ds as one st'],
  ['working|work each|all|any dbl st as one|1|a st', 'working each ds as one st'],
  ['mds', 'ds'],
  ['ds', 'ds'],
  ['make a? ds', 'ds'],
  ['dbl st', 'ds'],
  ['make a? dbl st', 'ds'],
  ['dbl dec', 'dec 2'],
  ['dbl inc', 'inc 2'],
];

const namesBy = new Map<string, (readonly [string, StitchName])[]>();
for (const name of NAMES) {
  for (const first of (name[0].split(' ')[0] ?? '').split('|')) {
    namesBy.set(first, [...(namesBy.get(first) ?? []), name]);
  }
}

type Reader = (c: Cursor) => ReadItem | undefined;

/** What may begin with a word; tried in order, with the reason where two read the same words. */
const READERS: Readonly<Record<string, readonly Reader[]>> = {
  ...each(['k', 'p', 'plain', 'knitting', 'purling'], [readPlain]),
  // 'sl marker', 'sl 12 sts to holder', 'sl 1 from holder' and 'sl 3 sts to cn' would be slipped stitches
  ...each(['sl', 's'], [readMarker, readHold, readTake, readCableNeedle, readSlip]),
  ...each(['m', 'make'], [readMake]),
  ...each(['inc', 'increasing'], [readIncrease]),
  ...each(['dec', 'decreasing'], [readDecrease]),
  ...each(['bo', 'bind', 'cast', 'b', 'boff'], [readBindOff, readCastOn]),
  ...each(['co'], [readCastOn]),
  ...each(['c', 'cable', 't', 'tw', 'twist', 'cr', 'cross'], [readCastOn, readCross]),
  ...each(['pick', 'pu'], [readPickUp]),
  // 'place next 2 sts on a cable needle' would be held, and 'place 2 sts on a holder' is no crossing
  ...each(
    ['place', 'put', 'leave', 'transfer', 'move', 'keep'],
    [readMarker, readCableNeedle, readHold, readTake],
  ),
  ...each(
    ['yo', 'yb', 'ytb', 'ybk', 'wb', 'wbk', 'yarn', 'wool', 'wl', 'w', 'with', 'bring', 'pass'],
    [readMovedSlip],
  ),
  ...each(['take', 'return', 'replace'], [readMovedSlip, readTake]),
  ...each(['drop'], [readMarker, readDrop]),
  ...each(['wyif'], [readFrontSlip]),
  ...each(['complete', 'finish'], [readRestOfRow]),
  ...each(['pm', 'sm', 'slm', 'rm', 'remove'], [readMarker]),
  ...each(['work', 'working', 'patt', 'rib', 'in', 'cont', 'keeping'], [readWork]),
};

function each(words: readonly string[], readers: readonly Reader[]): Record<string, readonly Reader[]> {
  return Object.fromEntries(words.map((word) => [word, readers]));
}

/** One stitch of a row with its count or how far it goes; nothing is taken when there is none. */
export const readStitch = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    const first = peek(c);
    if (first === undefined) return undefined;
    return first.kind === 'number' ? readFraction(c) : readWord(c);
  });

function readWord(c: Cursor): ReadItem | undefined {
  const word = peekWord(c);
  for (const [phrase, work] of namesBy.get(word) ?? []) {
    if (takePhrase(c, phrase)) return counted(work, 1);
  }
  const readers = Object.hasOwn(READERS, word) ? (READERS[word] ?? []) : [];
  for (const read of readers) {
    const item = attempt(c, () => read(c));
    if (item) return item;
  }
  return readOver(c) ?? readPanel(c);
}
