import { toGoal } from './counted-edge.ts';
import { attempt, type Cursor, seesPhrase, takeAnyPhrase, takePhrase, takes } from './cursor.ts';
import { readCount, STS, takeSts } from './goal.ts';
import { skipManner } from './manner.ts';
import { counted, type ReadItem } from './plain.ts';

export const ON_HOLDER = [
  'on|onto|to|upon|in a|the st|stitch holder',
  'on|onto|to|upon a|the|spare|another holder|needle|thread|yarn|length|waste|scrap|pin|holders',
  'on|onto|to|upon st|stitch|spare|waste|scrap|holder|holders|hold holder|holders|yarn|needle|thread',
  'on|onto|to|upon holder|holders|thread|hold',
  'on|onto a|the spare|stitch|st needle|holder|thread',
  'on|onto|to a safety|separate|spare|waste|scrap|contrast pin|yarn|thread|strand|needle|holder',
  'on|onto|to a piece|length|strand of waste|scrap|contrasting yarn',
  'on|onto|to a piece|length|strand of yarn|wool|thread',
  'on|onto|to 2|separate st|stitch holders',
  'on|onto|to separate holders|holder',
];

/** 'place next 24 sts on holder', 'sl 12 sts to a stitch holder', 'leave rem sts on holder'. */
export const readHold = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    if (
      !takes(
        c,
        'place',
        'put',
        'sl',
        'slip',
        'leave',
        'leaving',
        'placing',
        'slipping',
        'transfer',
        'keep',
        'move',
      )
    )
      return undefined;
    const all = takeAnyPhrase(
      c,
      STS,
      `rem|remaining|these|those|all|other|the ${STS}`,
      `the rem|remaining|other ${STS}`,
      `all rem|remaining ${STS}`,
    );
    const n = readCount(c);
    if (all || n !== undefined) {
      takes(c, 'center', 'centre', 'rem', 'remaining');
      takeSts(c);
      skipManner(c);
      if (takeAnyPhrase(c, ...ON_HOLDER)) {
        skipManner(c);
        return n === undefined ? { item: toGoal('hold', c), said: true } : counted('hold', n);
      }
      if (n !== undefined && takeAnyPhrase(c, 'unworked')) return counted('unworked', n);
      if (all && takeAnyPhrase(c, 'unworked')) return { item: toGoal('unworked', c), said: true };
    }
  });

/** 'take up 12 sts from holder', 'k 12 sts from holder' is read where k is. */
export const readTake = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    if (!takes(c, 'take', 'sl', 'slip', 'return', 'replace', 'put', 'place')) return undefined;
    takes(c, 'up');
    if (takePhrase(c, `${STS} from|off holder|holders`)) return { item: toGoal('take', c), said: true };
    const n = readCount(c);
    if (n !== undefined) {
      takeSts(c);
      if (
        takeAnyPhrase(
          c,
          'from|off holder|holders',
          'from|off the|a|st|stitch holder',
          'from|off a stitch|st holder',
        )
      ) {
        takeAnyPhrase(c, 'onto|to|back needle', 'onto|to the needle', 'back onto needle');
        return counted('take', n);
      }
    }
  });

export function takeOnHolder(c: Cursor): boolean {
  if (seesPhrase(c, 'on to')) c.at += 1;
  return takeAnyPhrase(c, ...ON_HOLDER);
}
