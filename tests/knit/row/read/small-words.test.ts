import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';

/** What a row is read as, in our own printed words; a refusal as its codes. */
const read = (text: string): string => {
  const row = parseRow(text);
  return row.ok ? printRow(row.value) : `refused: ${row.faults.map(({ code }) => code).join()}`;
};

/* Small words of a row, each kind in every way that it is written; common practice, no published source. */
describe('several stitches in one', () => {
  it.each(['in', 'into'])('%s the next, in every word for it', (into) => {
    for (const which of [
      'next st',
      'the next st',
      'same st',
      'the same stitch',
      'next stitch',
      'foll st',
      'first st',
      'last st',
      '1 st',
    ])
      expect(read(`(k1, p1) ${into} ${which}, k2`), which).toBe('(k1, p1) in next st, k2');
    expect(read(`(k1, p1) all ${into} next st, k2`)).toBe('(k1, p1) in next st, k2');
    for (const each of [
      'each of next 3 sts',
      'each of the next 3 sts',
      'each of foll 3 sts',
      'each of 3 sts',
    ])
      expect(read(`(k1, p1) ${into} ${each}, k2`), each).toBe('[(k1, p1) in next st] 3 times, k2');
  });

  it('of three and of one', () => {
    expect(read('(k1, yo, k1) in next st, k1')).toBe('(k1, yo, k1) in next st, k1');
    expect(read('k1f&b, k2')).toBe('kfb, k2');
    expect(read('k 1 f and b, p1')).toBe('kfb, p1');
    expect(read('k into back and front of next st, k1')).toBe('kfb, k1');
  });
});

describe('how often a bracket is worked', () => {
  it.each([
    ['[k1, p1] once', 'k1, p1'],
    ['[k1, p1] twice, k1', '[k1, p1] 2 times, k1'],
    ['[k1, p1] rep 3 times', '[k1, p1] 3 times'],
    ['[k1, p1] rep twice more, k1', '[k1, p1] 3 times, k1'],
    ['[k2, p2] all across', '*k2, p2; repeat from * to end'],
    ['[k2, p2] to last 2 sts, k2', '*k2, p2; repeat from * to last 2 sts, k2'],
    ['*k1, p1; rep from * once', '[k1, p1] 2 times'],
    ['*k1, p1; rep from * once more', '[k1, p1] 2 times'],
    ['*k1, p1; rep from * twice', '[k1, p1] 3 times'],
    ['*k1, p1, rep from * 2 times more, k3', '[k1, p1] 3 times, k3'],
    ['rep to end', 'refused: nothing before the repeat'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('one stitch', () => {
  it.each([
    ['k1 b, k2', 'k tbl, k2'],
    ['k1b, k2', 'k1 below, k2'],
    ['p1b, k2', 'p1 below, k2'],
    ['k1 tbl, k2', 'k tbl, k2'],
    ['k1 in back of st, p1', 'k tbl, p1'],
    ['k 2 tog tbl, p1', 'k2tog tbl, p1'],
    ['k 3 sts, p1', 'k3, p1'],
    ['knit 1 stitch, purl 1 stitch', 'k1, p1'],
    ['slip, slip, knit', 'ssk'],
    ['sl, sl, k, p1', 'ssk, p1'],
    ['sl, sl, sl, k', 'sssk'],
    ['sl, sl, p', 'ssp'],
    ['sl, sl, sl, p', 'sssp'],
    ['sl, sl, k1', 'sl1, sl1, k1'],
    ['sl, k1', 'sl1, k1'],
    ['sl, k, p1', 'sl1, k1, p1'],
    ['yfwd, k2tog', 'yo, k2tog'],
    ['sl 1, k2tog, psso, k1', 'sk2p, k1'],
    ['sl 1 purlwise, k1', 'sl1, k1'],
    ['sl1 wyif, p1', 'sl wyif, p1'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('a full stop', () => {
  it.each([
    ['k. 2 tog., p. 1.', 'k2tog, p1'],
    ['k1. p1', 'k1, p1'],
    ['k 2 sts. P 1', 'k2, p1'],
    ['k2, p2. Turn.', 'k2, p2, turn'],
    ['inc. 1 st', 'inc'],
    ['K2tog. 39 sts', 'refused: stitch or repeat expected'],
  ])('shortens a word or ends a sentence: %s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('going on as before', () => {
  it.each([
    'work in patt',
    'work even',
    'patt across',
    'work as set',
    'work in garter st',
    'work in est patt',
    'work in patt as set',
    'work correct',
  ])('%s', (text) => {
    expect(read(text)).toBe('work in pattern');
  });
});

/* Every word that may stand in a place, tried there; common practice, no published source. */
describe('several loops out of one stitch', () => {
  it.each([
    ['k1, p1', '(k1, p1) in next st'],
    ['p1, k1', '(k1, p1) in next st'],
    ['k1, yo', 'inc'],
    ['yo, k1', 'inc'],
    ['k2', 'inc'],
    ['k3', 'inc 2 in next st'],
    ['k1, yo, p1', 'inc 2 in next st'],
    ['p1, yo, p1', 'inc 2 in next st'],
    ['k1, p1, k1', '(k1, p1, k1) in next st'],
    ['p1, k1, p1', '(p1, k1, p1) in next st'],
    ['k4', 'inc 3 in next st'],
    ['k1, p2, k1', 'inc 3 in next st'],
    ['k1, p1, k1, p1', '(k1, p1, k1, p1) in next st'],
    ['k5', 'inc 4 in next st'],
    ['k1, p1, k1, p1, k1', '(k1, p1, k1, p1, k1) in next st'],
    ['k1, yo, k1', '(k1, yo, k1) in next st'],
    ['k1, yo, k1, yo, k1', '(k1, yo, k1, yo, k1) in next st'],
    ['k1 tbl, p1 tbl', '(k1, p1) in next st'],
    // six are none that has a name
    ['k6', 'k6'],
    ['k10', 'k10'],
  ])('(%s) in next st', (loops, printed) => {
    expect(read(`p2, (${loops}) in next st, p2`)).toBe(`p2, ${printed}, p2`);
  });

  it('without brackets takes what has no number before it, and nothing of another kind', () => {
    expect(read('p2, k1, p1 in next st, k2')).toBe('p2, (k1, p1) in next st, k2');
    expect(read('p2, k1, p1, k1 in same st, k2')).toBe('p2, (k1, p1, k1) in next st, k2');
    expect(read('k2tog, k1, p1 in next st, k2')).toBe('k2tog, (k1, p1) in next st, k2');
    // six loops have no name: they stand as they are
    expect(read('k2, k1, p1, k1, p1, k1, p1 in next st, k2')).toBe('k2, k1, p1, k1, p1, k1, p1, k2');
    expect(read('p2, *k1, p1 in next st, k2; rep from * to end')).toBe(
      'p2, *(k1, p1) in next st, k2; repeat from * to end',
    );
  });
});

describe('a stitch of the row below, or in its back', () => {
  const below = ['below', 'in row below', 'in st below', 'in the row below', 'in next st below'];
  it.each(below)('k1 %s', (where) => {
    expect(read(`p2, k1 ${where}, p2`)).toBe('p2, k1 below, p2');
    expect(read(`k2, p1 ${where}, k2`)).toBe('k2, p1 below, k2');
  });

  it.each(['into', 'in'])('k %s the row below, the stitch below, the next stitch of it', (into) => {
    for (const where of ['row below', 'st below', 'next st below', 'next st in row below'])
      for (const the of ['', 'the '])
        expect(read(`p2, k ${into} ${the}${where}, p2`), `${into} ${the}${where}`).toBe('p2, k1 below, p2');
  });

  it.each(['of', 'in', 'into'])('k into back %s each of several', (of) => {
    for (const each of ['each', 'every'])
      for (const next of ['next 3 sts', 'the next 3 sts', 'first 3 sts', 'last 3 sts', 'foll 3 sts', '3 sts'])
        expect(read(`p2, k into back ${of} ${each} of ${next}, p2`), next).toBe('p2, [k tbl] 3 times, p2');
    for (const one of ['next st', 'the next st', 'same st', 'the same st', 'next loop', 'st'])
      expect(read(`p2, k into back ${of} ${one}, p2`), one).toBe('p2, k tbl, p2');
    expect(read(`p2, inc ${of === 'of' ? 'in' : of} every st, p2`)).toBe('p2, [inc] to last 2 sts, p2');
  });
});

describe('rarer words', () => {
  it.each([
    ['inc in front of next st, p2', 'inc, p2'],
    ['inc in the back loop of same st, p2', 'inc, p2'],
    ['inc in back of the last 2, p2', 'refused: stitch or repeat expected'],
    ['k tbl to end', '[k tbl] to end'],
    ['k through back loop to last 2 sts, p2', '[k tbl] to last 2 sts, p2'],
    ['k2, k to end tbl', 'k2, [k tbl] to end'],
    ['k next st tbl, p2', 'k tbl, p2'],
    ['k next st through back loop, p2', 'k tbl, p2'],
    ['k5, slip marker, k5', 'k5, k5'],
    ['k5, sl m, k5', 'k5, k5'],
    ['work 3 tog, k2', 'dec 2 at once, k2'],
    ['work 2 tog, k2', 'dec, k2'],
    ['patt 3 tog, k2', 'dec 2 at once, k2'],
    ['K, dec 1 st at each end', 'dec, knit to last 2 sts, dec'],
    ['P, inc 1 st at the beg', 'inc, purl to end'],
    ['K, dec 1 st at end of row', 'knit to last 2 sts, dec'],
    ['k 1, p 1, across row', '*k1, p1; repeat from * to end'],
    ['k1 … p1', 'k1, p1'],
    ['sl 2, k1, psso, k2', 's2kp, k2'],
    ['sl 2, p1, psso, k2', 's2pp, k2'],
    ['sl 2, k2tog, psso, k2', 'refused: stitch or repeat expected'],
    ['sl 3, k1, psso', 'refused: stitch or repeat expected'],
    ['sl 1, p1, psso, k2', 'spp, k2'],
    ['sl 1, p2tog, psso, k2', 'sp2p, k2'],
    ['sl 1, p3tog, psso', 'refused: stitch or repeat expected'],
    ['sl 1, k3tog, psso, k2', 'dec 3 at once, k2'],
    ['sl 1, k2, psso, k2', 'sl1 k2 psso, k2'],
    ['sl 1, k3, psso, k2', 'refused: stitch or repeat expected'],
    ['sl, sl, k, p2', 'ssk, p2'],
    ['sl, sl, p, k2', 'ssp, k2'],
    ['sl, sl, sl, k, p2', 'sssk, p2'],
    ['slip, slip, slip, purl, k2', 'sssp, k2'],
    ['sl, sl, k2', 'sl1, sl1, k2'],
    ['sl 2 sts to cn and hold in front, k2, k2 from cn, k2', 'c4f, k2'],
    ['sl 2 sts to cn and hold in back, k1, p2 from cn, k2', '1/2 rpc, k2'],
    ['sl 1 st to cn and hold in front, p2, k1 from cn, k2', '1/2 lpc, k2'],
    ['sl 2 sts to cn, k2, k2 from cn', 'refused: stitch or repeat expected'],
  ])('%s', (words, row) => {
    expect(read(words)).toBe(row);
  });
});

describe('a double stitch of short rows', () => {
  it.each(['ds', 'dbl st', 'mds', 'make a ds', 'make dbl st', 'double stitch'])('%s', (words) => {
    expect(read(`${words}, p2`)).toBe('ds, p2');
  });

  it.each([
    'working each ds as one st',
    'work all ds as 1 st',
    'working any dbl st as one st',
    'work each dbl st as a st',
  ])('%s', (words) => {
    expect(read(`p2, ${words}, p2`)).toBe('p2, working each ds as one st, p2');
  });
});

describe('an increase', () => {
  it.each([
    ['inc next st', 'inc'],
    ['inc in next st', 'inc'],
    ['inc pwise', 'inc'],
    ['inc 3 sts', '[inc] 3 times'],
    ['inc by knitting in front and back of last st', 'inc'],
    ['inc by purling in front and then in back of the next st', 'inc'],
  ])('%s', (words, made) => {
    expect(read(`p2, ${words}, p2`)).toBe(`p2, ${made}, p2`);
  });
});

describe('work that goes on as it was', () => {
  it.each(['work', 'working', 'patt', 'rib', 'cont', 'keeping'])('%s, so far', (word) => {
    const far = word === 'keeping' || word === 'cont' ? `${word} in patt` : word;
    expect(read(`k2, ${far} to last 2 sts, k2`)).toBe('k2, work in pattern to last 2 sts, k2');
    expect(read(`k2, ${far} 5 sts, k2`)).toBe('k2, work 5 sts in pattern, k2');
  });

  it.each([
    'in patt',
    'in rib',
    'as set',
    'as est',
    'as before',
    'even',
    'straight',
    'in moss st',
    'patt correct',
  ])('work 5 sts %s', (manner) => {
    expect(read(`k2, work 5 sts ${manner.replace('as before', 'in patt as before')}, k2`)).toBe(
      'k2, work 5 sts in pattern, k2',
    );
  });

  it('a bare number is of stitches, but not of rows, rounds or lengths', () => {
    for (const word of ['work', 'patt', 'rib'])
      expect(read(`k2, ${word} 5, k2`)).toBe('k2, work 5 sts in pattern, k2');
    for (const of of ['rows', 'row', 'rounds', 'more', 'cm', 'inches', 'in'])
      expect(read(`k2, work 5 ${of}, k2`), of).toMatch(/^refused/);
    for (const word of ['cont', 'keeping', 'as']) expect(read(`k2, ${word} 5, k2`), word).toMatch(/^refused/);
    // unless it is said in which manner
    for (const how of ['as set', 'in patt', 'in moss st'])
      expect(read(`k2, cont 5 ${how}, k2`), how).toBe('k2, work 5 sts in pattern, k2');
  });
});

describe('a stitch pattern named elsewhere', () => {
  it('may be named in eight words, no more', () => {
    const named = (words: number) => `k2, work ${'lace '.repeat(words)}over 12 sts, k2`;
    for (const words of [1, 2, 7, 8])
      expect(read(named(words)), `${words}`).toBe('k2, work 12 sts in pattern, k2');
    expect(read(named(9))).toMatch(/^refused/);
  });

  it('goes on behind a bracket that it has nothing to do with', () => {
    expect(read('k2, [k1, p1] in patt to last 2 sts, k2')).toBe(
      'k2, k1, p1, work in pattern to last 2 sts, k2',
    );
  });
});

describe('what a row says beside its stitches', () => {
  it.each([
    ['[k5, turn] twice, k2', '[k5, turn] 2 times, k2'],
    ['k5, join a a a a a a a yarn, k5', 'k5, k5'],
    ['k5, join a a a a a a a a yarn, k5', 'refused: stitch or repeat expected'],
    ['k5, join lace, yarn, k5', 'refused: stitch or repeat expected'],
    ['k5, join lace; yarn, k5', 'refused: stitch or repeat expected'],
    ['k5, attach a ball of wool k5', 'k5, k5'],
    ['k5, add yarn and k5', 'k5, k5'],
    ['k5, join wool, k5', 'k5, k5'],
    ['[k5, join yarn] twice', '[k5, join yarn] 2 times'],
    ['[join yarn, k5] twice', '[join yarn, k5] 2 times'],
    ['k5, rejoin yarn, k5', 'k5, join yarn, k5'],
    ['k5, rejoin yarn', 'k5, join yarn'],
    ['k5, join yarn k5', 'k5, k5'],
    ['k5 for a b c d e f, k2', 'k5, k2'],
    ['k5 for a b c d e f g, k2', 'refused: stitch or repeat expected'],
    ['k5 for 3 left, k2', 'refused: stitch or repeat expected'],
    ['k5 for neck. K2', 'k5, k2'],
    ['k5 for neck; k2', 'k5, k2'],
    ['k5 for neck: k2', 'k5, k2'],
    ['k5 for neck', 'k5'],
    ['*k3, p1; rep from *, end last rep k2', '*k3, p1; repeat from * to last 5 sts, k3, k2'],
    ['*k3, p1; rep from *, ending last rep with k2', '*k3, p1; repeat from * to last 5 sts, k3, k2'],
    ['*k3, p1; rep from *, last rep, k2', '*k3, p1; repeat from * to last 5 sts, k3, k2'],
    ['k2, k1 instead of p1, k2', 'k2, k1, k2'],
    ['k across, ending k1', 'knit to last st, k1'],
    ['*k2, k2tog to end', '*k2, k2tog; repeat from * to end'],
    ['*k2tog to end', '[k2tog] to end'],
    ['k2, k2tog to end', 'k2, [k2tog] to end'],
    ['k 2 to end', '*k2; repeat from * to end'],
    ['k1, *k1, k1, p1 to end', 'k1, *k1, k1, p1; repeat from * to end'],
    ['p1, *k1, p1 in next st, k2; rep from * to end', 'p1, *(k1, p1) in next st, k2; repeat from * to end'],
    ['k2, p2, * rep to end', '*k2, p2; repeat from * to end'],
    ['sl, sl, sl, sl, k', 'sl1, sssk'],
    ['k2, c4f p2, k2', 'k2, c4f, p2, k2'],
    ['k2, t3b p, k2', 'k2, t3b, k2'],
    ...['end', 'ending', ''].flatMap((end) =>
      ['', ' with', ' as', ':', ','].map((as) => [
        `*k3, p1; rep from *, ${end} last rep${as} k2`,
        '*k3, p1; repeat from * to last 5 sts, k3, k2',
      ]),
    ),
    ['((((((((((((k1))))))))))))', 'k1'],
    ['(((((((((((((k1)))))))))))))', 'refused: nested too deep'],
    ['bind off 5 more sts, k2', 'bind off 5 sts, k2'],
    ['bind off 5 rem sts, k2', 'bind off 5 sts, k2'],
    ['bind off 5 center sts, k2', 'bind off 5 sts, k2'],
    ['bind off, k2', 'bind off to last 2 sts, k2'],
    ['decreasing 1, k2', 'dec, k2'],
    ['increasing 1 st, k2', 'inc, k2'],
    ['purling 2, plain 2', 'p2, k2'],
    ['knitting 2, p2', 'k2, p2'],
    ['k2, working cables over 12 sts, k2', 'k2, work 12 sts in pattern, k2'],
    ['sl 1; k1; psso, k2', 'skp, k2'],
    ['sl 1. k1. psso, k2', 'skp, k2'],
    ['sl 1 and k1 then psso, k2', 'skp, k2'],
    ['sl 1 wyif pwise kwise, k2', 'sl wyif, k2'],
    ['sl 1 pwise wyif wyib pwise, k2', 'sl wyib, k2'],
    ['k1, k1, k1, k1, k1, k1, k1 in next st', 'k1, k1, k1, k1, k1, k1, k1'],
    ['k2tog, k1, yo, k1 in next st, k2', 'k2tog, (k1, yo, k1) in next st, k2'],
    // the number behind a star is of stitches where it says so
    ...['over', 'across', 'on', 'for'].flatMap((over) =>
      ['', 'the ', 'next ', 'the next ', 'the first '].map((which) => [
        `*k1, p1* ${over} ${which}12 sts, k2`,
        '[k1, p1] 6 times, k2',
      ]),
    ),
    ['*k1, p1*; over next 12 sts, k2', '[k1, p1] 6 times, k2'],
    ['*k1, p1*, twice, k2', '[k1, p1] 2 times, k2'],
    ['*k1, p1* over 12 rows', 'refused: stitch or repeat expected'],
    ...[
      'this',
      'instructions',
      'directions',
      'these sts',
      'those sts',
      'the sts',
      'these instructions',
      'the directions',
    ].map((what) => [`*k1, p1, rep ${what} 3 times`, '[k1, p1] 4 times']),
    ...[
      'from *',
      'from the *',
      'from first *',
      'from 1st *',
      'from the 1st *',
      'from the first *',
      'between *s',
      'between the *s',
    ].map((where) => [`*k1, p1; rep ${where} to last st, k1`, '*k1, p1; repeat from * to last st, k1']),
    ...['to', 'and', 'through', '-', ''].map((between) => [
      `*k1, p1* k2, rep from * ${between} * 3 times, k2`,
      '*k1, p1; repeat from * to last 12 sts, k2, [k1, p1] 4 times, k2',
    ]),
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('binding off', () => {
  const manners = [
    'loosely',
    'in patt',
    'in rib',
    'in knitting',
    'in k',
    'in p',
    'kwise',
    'pwise',
    'ribwise',
    'firmly',
    'tightly',
    'very loosely',
    'not too tightly',
    'as if to k',
    'as if to p',
    'at beg of row',
    'at start of rows',
    'at beg of each row',
    'for neck',
    'for armhole',
    'for the shoulder',
    'for back of neck',
    'for front neck',
    'for back neck',
    'for left shoulder',
    'for first shoulder',
    'loosely kwise',
  ];
  it.each(manners)('%s changes no count', (manner) => {
    expect(read(`bind off 5 sts ${manner}, k2`)).toBe('bind off 5 sts, k2');
    expect(read(`bind off ${manner} 5 sts, k2`)).toBe('bind off 5 sts, k2');
    expect(read(`k2, bind off all sts ${manner}`)).toBe('k2, bind off to end');
    expect(read(`bind off ${manner} to last 2 sts, k2`)).toBe('bind off to last 2 sts, k2');
    expect(read(`bind off to last 2 sts ${manner}, k2`)).toBe('bind off to last 2 sts, k2');
  });

  it.each(['center', 'next', 'first', 'the next', 'these', 'last', 'middle', 'other'])(
    'the %s five',
    (which) => {
      expect(read(`k2, bind off ${which} 5 sts, k2`)).toBe('k2, bind off 5 sts, k2');
    },
  );
});

describe('the yarn that is worked with', () => {
  it.each(['yarn', 'wool', 'color', 'colour', 'shade'])('is named behind its word: %s', (word) => {
    for (const text of [`k4 in ${word} B, k2`, `k4 with the ${word} B, k2`, `k4 in B ${word}, k2`])
      expect(read(text), text).toBe('k4, k2');
  });
});

describe('an increase in every so many-th stitch', () => {
  it.each([
    ['inc in every 2nd st', '*k1, inc; repeat from * to end'],
    ['inc in every 3rd st', '*k2, inc; repeat from * to end'],
    ['inc 1 st in every 10th st across', '*k9, inc; repeat from * to end'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });

  it.each(['inc in every 1st st', 'inc in every 2 st', 'inc in every 0th st'])('is not %s', (text) => {
    expect(read(text)).not.toMatch(/repeat from/);
  });
});
