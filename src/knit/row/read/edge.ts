import type { StitchName } from '../../stitch.ts';
import { type Cursor, peek, seesPhrase, takeAnyPhrase, takePhrase, takes } from './cursor.ts';
import { readCount, readGoal, STS, takeSts } from './goal.ts';
import type { Item } from './notation.ts';
import { counted, type ReadItem } from './plain.ts';

export const BIND_OFF = [
  'bo',
  'bind off',
  'cast off',
  'binding off',
  'casting off',
  'b o',
  'bind - off',
  'cast - off',
  'boff',
];
export const CAST_ON = ['co', 'cast on', 'casting on', 'cast - on', 'c o'];

const MANNERS = [
  'in pattern|patt|pat|rib|ribbing|knitting|knit|purl',
  'in k|p 1',
  'ribwise',
  'at beg|beginning|start of row|rows|needle',
  'at beg|beginning|start of each|every|both|the row|rows',
  'knitwise',
  'purlwise',
  'kwise',
  'pwise',
  'loosely',
  'firmly',
  'tightly',
  'very loosely',
  'not too tightly',
  'for neck|armhole|armholes|underarm|underarms|shoulder|front|back|pocket|buttonhole|thumb',
  'for the neck|armhole|shoulder|back',
  'for back|front of neck',
  'for front neck|edge',
  'for back neck',
  'for left|right shoulder|front|armhole|underarm',
  'for 1st|first shoulder',
  'as if to k|p|knit|purl',
];

export function skipManner(c: Cursor): void {
  while (takeAnyPhrase(c, ...MANNERS)) {
    // how it is done changes no count
  }
}

/** 'bind off 5 sts', 'bo center 17 sts', 'cast off all sts', 'bo to end'. */
export function readBindOff(c: Cursor): ReadItem | undefined {
  if (!takeAnyPhrase(c, ...BIND_OFF)) return undefined;
  skipManner(c);
  const all = readGoal(c);
  if (all) {
    skipManner(c);
    return { item: { is: 'stitches to', work: 'bo', goal: all }, said: true };
  }
  return countedEdge(c, 'bo');
}

function countedEdge(c: Cursor, work: StitchName): ReadItem {
  const n = readCount(c);
  takes(c, 'more');
  takes(c, 'center', 'centre', 'rem', 'remaining', 'new');
  takeSts(c);
  skipManner(c);
  return n === undefined ? { item: allOf(work), said: false } : counted(work, n);
}

const allOf = (work: StitchName): Item => ({ is: 'stitches to', work, goal: { left: 'what follows' } });

const toGoal = (work: StitchName, c: Cursor): Item => ({
  is: 'stitches to',
  work,
  goal: readGoal(c) ?? { left: 'what follows' },
});

/** 'cast on 5 sts', within a row or at its edge. */
export function readCastOn(c: Cursor): ReadItem | undefined {
  if (!takeAnyPhrase(c, ...CAST_ON)) return undefined;
  const goal = readGoal(c);
  if (goal) return { item: { is: 'stitches to', work: 'co', goal }, said: true };
  const n = readCount(c);
  if (n === undefined) return undefined;
  takes(c, 'more', 'new');
  takeSts(c);
  skipManner(c);
  takeAnyPhrase(
    c,
    'over bo|bound|cast sts',
    'over bound off sts',
    'over cast off sts',
    'over those bound|cast off',
  );
  takeAnyPhrase(c, 'over the bound|cast - off sts', 'over bound - off sts', 'over the bound off sts');
  return counted('co', n);
}

/** 'pick up and knit 12 sts along neck': the edge's name is read elsewhere, here it is passed over. */
export function readPickUp(c: Cursor): ReadItem | undefined {
  if (!takeAnyPhrase(c, 'pick up', 'pu', 'picking up', 'pick - up')) return undefined;
  takes(c, 'and', '&', ',');
  takes(c, 'k', 'knit', 'p', 'purl');
  const goal = readGoal(c);
  if (goal) return { item: { is: 'stitches to', work: 'pu', goal }, said: true };
  const n = readCount(c);
  if (n === undefined) return undefined;
  takeSts(c);
  while (peek(c)?.kind === 'word' && !takes(c, ',')) {
    if (seesPhrase(c, 'and k|knit|pick') || seesPhrase(c, 'k|p|from holder')) break;
    c.at += 1;
  }
  return counted('pu', n);
}

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
export function readHold(c: Cursor): ReadItem | undefined {
  const start = c.at;
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
  c.at = start;
  return undefined;
}

/** 'take up 12 sts from holder', 'k 12 sts from holder' is read where k is. */
export function readTake(c: Cursor): ReadItem | undefined {
  const start = c.at;
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
  c.at = start;
  return undefined;
}

/** 'drop 1 st', 'drop next yo', 'drop st off needle'. */
export function readDrop(c: Cursor): ReadItem {
  c.at += 1;
  takes(c, 'the', 'next', 'first', 'extra', 'second');
  const n = readCount(c);
  takes(c, 'extra', 'next', 'second');
  takeAnyPhrase(c, STS, 'yo|yos', 'loop|loops', 'wrap|wraps', 'yarn over');
  takeAnyPhrase(c, 'off needle', 'off the needle', 'from needle', 'from left needle');
  return counted('drop', n ?? 1, n !== undefined);
}

/** 'pm', 'place marker', 'rm', 'remove marker', 'sm'. */
export function readMarker(c: Cursor): ReadItem | undefined {
  const marker = 'm|mk|mkr|marker|markers|mrk';
  const does = (what: 'place' | 'slip' | 'remove'): ReadItem => ({
    item: { is: 'marker', does: what },
    said: true,
  });
  if (takeAnyPhrase(c, 'pm', `place|put ${marker}`, `place|put a|1 ${marker}`)) return does('place');
  if (takeAnyPhrase(c, 'sm', 'slm', `sl|slip ${marker}`)) return does('slip');
  if (takeAnyPhrase(c, 'rm', `remove|drop ${marker}`)) return does('remove');
  return undefined;
}

/** 'work row 1 of cable panel over next 12 sts', 'work cable pattern across 12 sts'. */
function readPanel(c: Cursor): ReadItem | undefined {
  const start = c.at;
  if (takes(c, 'work', 'working')) {
    for (let far = 0; far < 9 && peek(c)?.kind !== 'mark' && peek(c) !== undefined; far += 1) {
      if (far > 0 && takes(c, 'over', 'across')) {
        const n = readCount(c);
        if (n !== undefined && takeSts(c))
          return { item: { is: 'stitches', work: 'patt', times: n, panel: true }, said: true };
        break;
      }
      c.at += 1;
    }
  }
  c.at = start;
  return undefined;
}

/** 'work 12 sts', 'work in pattern to last 3 sts', 'patt 5', 'rib to end'. */
export function readWork(c: Cursor): ReadItem | undefined {
  const start = c.at;
  const panel = readPanel(c);
  if (panel) return panel;
  if (
    !takes(c, 'work', 'working', 'patt', 'pat', 'pattern', 'rib', 'continue', 'cont', 'in', 'keeping', 'as')
  )
    return undefined;
  skipEstablished(c);
  const goal = readGoal(c);
  if (goal) {
    skipEstablished(c);
    return { item: { is: 'stitches to', work: 'patt', goal }, said: true };
  }
  const n = readCount(c);
  if (n !== undefined) {
    const sts = takeSts(c);
    const styled = skipEstablished(c);
    const bare = /^(patt|pat|rib|work|pattern)$/.test(c.tokens[start]?.text ?? '');
    if ((sts || styled || bare) && !seesPhrase(c, 'row|rows|rnds|rnd|more|cm|ins|in|"|inches|inch'))
      return counted('patt', n);
  } else if (c.at - start >= 2 || c.tokens[start]?.text === 'patt') {
    return { item: allOf('patt'), said: true };
  }
  c.at = start;
  return undefined;
}

const ESTABLISHED = [
  'in pattern|patt|pat|rib|ribbing|pats',
  'in est|established|same|this pattern|patt|pat|rib',
  'in pattern|patt|pat as set|established|est|before',
  'as set|established|est|before|usual',
  'in garter|moss|seed|stocking|stockinette st|stitch',
  'even',
  'pattern|patt|pat',
  'keeping to|in pattern|patt',
  'keeping continuity of pattern|patt',
  'correct',
  'straight',
];

function skipEstablished(c: Cursor): boolean {
  let any = false;
  while (takeAnyPhrase(c, ...ESTABLISHED)) any = true;
  return any;
}

export function takeOnHolder(c: Cursor): boolean {
  if (seesPhrase(c, 'on to')) c.at += 1;
  return takeAnyPhrase(c, ...ON_HOLDER);
}
export const takeBindOff = (c: Cursor): boolean => takeAnyPhrase(c, ...BIND_OFF);
export const takeCastOn = (c: Cursor): boolean => takeAnyPhrase(c, ...CAST_ON);
export const takeRest = (c: Cursor): boolean => takePhrase(c, `rem|remaining|all ${STS}`);
