import { toGoal } from './counted-edge.ts';
import { attempt, type Cursor, seesPhrase, takeAnyPhrase, takePhrase, takes } from './cursor.ts';
import { readCount, STS, takeSts } from './goal.ts';
import { skipManner } from './manner.ts';
import { counted, type ReadItem } from './plain.ts';

const ON = 'on|onto|to|upon';

/** The longer ones first: some begin with all the words of others. */
export const ON_HOLDER = [
  `${ON} a? piece|length|strand of waste|scrap|contrasting? yarn|wool|thread`,
  `${ON} a|the|another|2? st|spare|separate|safety|waste|scrap|contrast|holder|hold holder|needle|pin|yarn|thread|strand`,
  `${ON} a|the|spare|another holder|needle|thread|yarn|length|waste|scrap|pin`,
  `${ON} separate|second|third st? holder`,
  `${ON} the second|third holder`,
  `${ON} st -? holder`,
  `${ON} a|the? st - holder`,
  `${ON} holder|thread|hold`,
  'in a|the st holder',
];

/** 'place next 24 sts on holder', 'sl 12 sts to a stitch holder', 'leave rem sts on holder'. */
export const readHold = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    if (!takes(c, 'place', 'put', 'sl', 'leave', 'transfer', 'keep', 'move')) return undefined;
    const centre = centreWorked(c);
    const worked = attempt(c, () => {
      const of = takesWorked(c);
      return of !== undefined && takeHolder(c) ? { of: of || centre } : undefined;
    });
    if (worked) {
      skipManner(c);
      return { item: { is: 'parting', ...(worked.of > 0 && { of: worked.of }) } };
    }
    const all = takeAnyPhrase(
      c,
      STS,
      `rem|these|those|all|other|the ${STS}`,
      `the rem|other ${STS}`,
      `all rem ${STS}`,
    );
    const n = readCount(c);
    if (all || n !== undefined) {
      takes(c, 'center', 'rem');
      takeSts(c);
      takeAnyPhrase(c, 'of|in the? row');
      skipManner(c);
      if (takeAnyPhrase(c, ...ON_HOLDER)) {
        skipManner(c);
        return n === undefined ? { item: toGoal('hold', c) } : counted('hold', n);
      }
      if (n !== undefined && takeAnyPhrase(c, 'unworked')) return counted('unworked', n);
      if (all && takeAnyPhrase(c, 'unworked', 'on the? left|lh? needle'))
        return { item: toGoal('unworked', c) };
    }
  });

/** 'place them on a holder', 'slip these 25 sts to a holder', and 'place on holder' behind what was worked. */
function takesWorked(c: Cursor): number | undefined {
  if (takes(c, 'them', 'these', 'those')) {
    const n = readCount(c);
    takeSts(c);
    return n ?? 0;
  }
  return seesPhrase(c, 'on|onto|upon') ? 0 : undefined;
}

/** 'k center 20 sts and | place on a holder': so many of the stitches before it; 0 where it is none in the middle. */
function centreWorked({ tokens, at }: Cursor): number {
  const before = tokens.slice(Math.max(0, at - 6), at - 1);
  const n = before.filter(({ kind }) => kind === 'number').at(-1)?.value ?? 0;
  return before.some(({ word }) => word === 'center') ? n : 0;
}

function takeHolder(c: Cursor): boolean {
  if (!takeAnyPhrase(c, ...ON_HOLDER)) return false;
  takeAnyPhrase(c, 'or on? a? safety|spare pin|needle');
  takeAnyPhrase(c, 'to be worked later', 'to work later', 'for later');
  takeAnyPhrase(c, 'for left|right|back|front|first|second front|back|shoulder|side? of? neck?');
  return true;
}

/** 'take up 12 sts from holder', 'k 12 sts from holder' is read where k is. */
export const readTake = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    if (!takes(c, 'take', 'sl', 'return', 'replace', 'put', 'place')) return undefined;
    takes(c, 'up');
    if (takePhrase(c, `${STS} from|off holder`)) return { item: toGoal('take', c) };
    const n = readCount(c);
    if (n !== undefined) {
      takeSts(c);
      if (takeAnyPhrase(c, 'from|off the|a|st? holder', 'from|off a st holder')) {
        takeAnyPhrase(c, 'onto|to|back needle', 'onto|to the needle', 'back onto needle');
        return counted('take', n);
      }
    }
  });

export function takeOnHolder(c: Cursor): boolean {
  if (seesPhrase(c, 'on to')) c.at += 1;
  if (!takeAnyPhrase(c, ...ON_HOLDER)) return false;
  takeAnyPhrase(
    c,
    ',? or on? a? spare|safety|st? holder|needle|pin',
    ',? or on? a? length|piece of yarn|wool',
  );
  return true;
}
