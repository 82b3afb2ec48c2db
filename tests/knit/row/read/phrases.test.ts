import { describe, expect, it } from 'vitest';
import { type Cursor, cursorOver } from '../../../../src/knit/row/read/cursor.ts';
import { readCount, readGoal, readTimes } from '../../../../src/knit/row/read/goal.ts';
import { readGroupEnd, readInOneStitch } from '../../../../src/knit/row/read/group-end.ts';
import { takeOnHolder } from '../../../../src/knit/row/read/holder.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { skipManner } from '../../../../src/knit/row/read/manner.ts';
import { readOfNext } from '../../../../src/knit/row/read/plain.ts';
import { readStitch } from '../../../../src/knit/row/read/stitch.ts';

/**
 * The small phrases of a row by themselves: what each says, and that it takes all of its words and none behind them. A
 * bracket in the middle of a text stands where a phrase ends; common practice, no published source.
 */
function reading<T>(read: (c: Cursor) => T): (text: string) => readonly [T, string] {
  return (text) => {
    const c = cursorOver(lex(text));
    const found = read(c);
    return [
      found,
      c.tokens
        .slice(c.at)
        .map((token) => token.text)
        .join(' '),
    ];
  };
}

const none = (text: string) =>
  [
    undefined,
    lex(text)
      .map((token) => token.text)
      .join(' '),
  ] as const;

describe('how far', () => {
  const goal = reading(readGoal);

  it.each(
    (
      'to end|to ends|to the end|until end|upto end|up to end|up to the end|till end|to end of row|to end of rnd|to end of needle|' +
      'to end of the row|to the end of the rnd|to the end of the needle|to end of rows|to end of next row|to end of this row'
    ).split('|'),
  )('%s, in so many words', (text) => {
    expect(goal(`${text} purl`)).toEqual([{ left: 0 }, 'purl']);
  });

  it.each(
    (
      'all the way|all the way across|all across|straight across|in every st|every st|each st|every st across|each st across|' +
      'all rem sts|all rem sts across|all sts|all sts to end|the rest|the rest of row|the rest of the row|all|back|even|even across|back across|back to end|all to end|' +
      'the rem|rem|the remainder|rem sts|rem sts of the row|the remainder of the row|' +
      'around|entire rnd|entire row|the entire row|whole row|the whole row|the row|' +
      'across|over|along|across row|across the row|across rnd|along the rnd|over this row|across needle|across all sts|across all the sts|' +
      'across all rem sts|across rem sts|over sts|across to end|across row to end|across all sts of row|across all sts of the row|' +
      'across all sts on needle|across sts on holder|across the row to end'
    ).split('|'),
  )('%s, as far as what follows allows', (text) => {
    expect(goal(`${text} purl`)).toEqual([{ left: 'what follows' }, 'purl']);
  });

  it.each<[string, number]>([
    ['to last st', 1],
    ['to last', 1],
    ['to last 4 sts', 4],
    ['to the last 4 sts', 4],
    ['to within last 4 sts', 4],
    ['to within the last 4', 4],
    ['until you reach last 4 sts', 4],
    ['until you reach the last 4 sts', 4],
    ['up to last 4 sts', 4],
    ['upto the last 4 sts', 4],
    ['to within 4 sts of end', 4],
    ['to within 4 sts of the end', 4],
    ['to 4 from the end of the row', 4],
    ['to 4 sts from end', 4],
    ['to 4 sts before end', 4],
    ['to 4 sts before the end of row', 4],
    ['to 4 sts before next end', 4],
    ...['remain', 'rem', 'left', 'unworked', 'are left', 'are unworked'].flatMap((rest): [string, number][] =>
      [
        '',
        ' on left needle',
        ' on lh needle',
        ' on needle',
        ' on left hand needle',
        ' on the left needle',
      ].map((where) => [`until 4 sts ${rest}${where}`, 4]),
    ),
    ['until there are 4 sts left', 4],
    ['until there are only 4 sts left', 4],
    ['until only 4 remain', 4],
  ])('%s: to the last %i', (text, left) => {
    expect(goal(`${text} purl`)).toEqual([{ left }, 'purl']);
  });

  it.each(['', 'next ', 'first ', 'second ', 'foll ', 'the ', 'the next ', 'the second '])(
    'to %smarker',
    (which) => {
      for (const marker of ['m', 'marker', 'markers', 'mkr']) {
        expect(goal(`to ${which}${marker} purl`)).toEqual([{ marker: 0 }, 'purl']);
        expect(goal(`to 3 sts before ${which}${marker} purl`)).toEqual([{ marker: 3 }, 'purl']);
      }
    },
  );

  it.each(
    (
      'to next st|to 4 sts|to 4 sts before next st|to 4 sts from marker|to 4.5 sts before end|to 4 sts of row|until row|to|' +
      'across 12 sts|across next 12 sts|over the 12 sts|over center 12 sts|over first 12 sts|over the first 12 sts|across rem 12 sts|along the next 5 sts|' +
      'straight on|in next st|in the next st|end|k to end'
    ).split('|'),
  )('is not said by %s', (text) => {
    expect(goal(text)).toEqual(none(text));
  });

  it('no half a stitch is left', () => {
    expect(goal('to last 4.5 sts')).toEqual([{ left: 1 }, '4.5 sts']);
  });
});

describe('how many', () => {
  const count = reading(readCount);

  it.each(
    ['', 'across ', 'over ', 'on '].flatMap((across) =>
      ['', 'the ', 'these '].flatMap((the) =>
        ['', 'next ', 'first ', 'last ', 'foll ', 'center ', 'middle ', 'rem ', 'other '].map(
          (which) => `${across}${the}${which}`,
        ),
      ),
    ),
  )('%s5', (before) => {
    expect(count(`${before}5 purl`)).toEqual([5, 'purl']);
    expect(count(`${before}sts`)).toEqual(none(`${before}sts`));
  });

  it('is whole', () => {
    expect(count('next 2.5 sts')).toEqual(none('next 2.5 sts'));
  });
});

describe('how often', () => {
  const often = reading(readTimes);
  const plain = { total: false, more: false };

  it.each<[string, number, { total?: boolean; more?: boolean }]>([
    ['once', 1, {}],
    ['twice', 2, {}],
    ['thrice', 3, {}],
    ['a once', 1, {}],
    ['another 3 times', 3, {}],
    ['for 3 times', 3, {}],
    ['3 times', 3, {}],
    ['3 x', 3, {}],
    ['x 3', 3, {}],
    ['× 3 times', 3, {}],
    ['once more', 1, { more: true }],
    ['twice again', 2, { more: true }],
    ['3 times more', 3, { more: true }],
    ['3 more times', 3, { more: true }],
    ['3 further times', 3, { more: true }],
    ['3 times further', 3, { more: true }],
    ['once more time', 1, { more: true }],
    ['3 times in all', 3, { total: true }],
    ['3 times in total', 3, { total: true }],
    ['3 times altogether', 3, { total: true }],
    ['3 times total', 3, { total: true }],
    ['3 times all together', 3, { total: true }],
    ['a total of 3 times', 3, { total: true }],
    ['total of 3 times', 3, { total: true }],
    ['for a total of 3 times', 3, { total: true }],
    ['3 more times in all', 3, { total: true, more: true }],
  ])('%s', (text, n, said) => {
    expect(often(`${text} purl`)).toEqual([{ n, ...plain, ...said }, 'purl']);
  });

  it.each(['3 sts', '3 more sts', '2.5 times', 'x', 'a row', 'for 3 rows', 'time', 'total of sts', 'more'])(
    'is not said by %s',
    (text) => {
      expect(often(text)).toEqual(none(text));
    },
  );
});

describe('what stands behind a bracket', () => {
  const end = reading(readGroupEnd);

  it.each<[string, ReturnType<typeof readGroupEnd>]>([
    ...'in next st|into next st|all in next st|all into the next st|in the same st|in foll st|in first st|in last loop|in center st|in 1 st|in the next 1 st|in same loop'
      .split('|')
      .map((text): [string, ReturnType<typeof readGroupEnd>] => [text, { is: 'in one', times: 1 }]),
    ['in next st twice', { is: 'in one', times: 2 }],
    ['in next st 3 times', { is: 'in one', times: 3 }],
    ...'in each of next 3 sts|into each of the next 3 sts|all in each of next 3 sts|in each of foll 3 sts|in each of the foll 3 sts|in each of 3 sts'
      .split('|')
      .map((text): [string, ReturnType<typeof readGroupEnd>] => [text, { is: 'in one', times: 3 }]),
    ...(
      '3 times|rep 3 times|repeated 3 times|, 3 times|rep, 3 times|rep instructions in parentheses 3 times|rep instructions in brackets 3 times|' +
      'rep these sts 3 times|2 times more|rep twice more|3 times in all'
    )
      .split('|')
      .map((text): [string, ReturnType<typeof readGroupEnd>] => [text, { is: 'times', n: 3 }]),
    ['to end', { is: 'goal', goal: { left: 0 } }],
    [', to last 2 sts', { is: 'goal', goal: { left: 2 } }],
    ['rep to last 2 sts', { is: 'goal', goal: { left: 2 } }],
    ['across', { is: 'goal', goal: { left: 'what follows' } }],
    ...['over', 'across', 'on', 'for', 'along'].flatMap((over) =>
      ['', 'the '].flatMap((the) =>
        ['', 'next ', 'first ', 'center ', 'foll ', 'last '].map(
          (which): [string, ReturnType<typeof readGroupEnd>] => [
            `${over} ${the}${which}12 sts`,
            { is: 'over', stitches: 12 },
          ],
        ),
      ),
    ),
  ])('%s', (text, is) => {
    expect(end(`${text} purl`)).toEqual([is, 'purl']);
  });

  it.each([
    'in next row',
    'in each of next 3 rows',
    'in each of next sts',
    'in each st of 5',
    'for 12 rows',
    'on 2.5 sts',
    'rep',
    ', k1',
  ])('%s is not its', (text) => {
    expect(end(text)).toEqual([{ is: 'once' }, none(text)[1]]);
  });

  it('one stitch is one', () => {
    const one = reading(readInOneStitch);
    expect(one('all in next st purl')).toEqual([true, 'purl']);
    expect(one('all next st')).toEqual([false, 'all next st']);
    expect(one('next st')).toEqual([false, 'next st']);
  });
});

describe('of which stitches', () => {
  const which = reading(readOfNext);
  it.each(
    ['of', 'in', 'into'].flatMap((of) =>
      ['', 'each of ', 'every of ', 'each in ', 'each of the '].flatMap((each) =>
        ['', 'same ', 'next ', 'first ', 'last ', 'foll '].map((one) => `${of} ${each}${one}`),
      ),
    ),
  )('%s3 sts', (before) => {
    expect(which(`${before}3 sts purl`)).toEqual([3, 'purl']);
    expect(which(`${before}st purl`)).toEqual([1, 'purl']);
    expect(which(`${before}loop purl`)).toEqual([1, 'purl']);
    expect(which(`${before}3 rows`)).toEqual(none(`${before}3 rows`));
  });

  it('the same, said behind the number too', () => {
    expect(which('in 1 same st purl')).toEqual([1, 'purl']);
    expect(which('next st')).toEqual(none('next st'));
    expect(which('in 2.5 sts')).toEqual(none('in 2.5 sts'));
  });
});

describe('onto what stitches are put', () => {
  const holder = reading(takeOnHolder);
  const ways = (
    'a st holder|the st holder|holder|a holder|the holder|spare needle|a spare needle|a needle|the needle|another needle|a thread|a spare yarn|' +
    'a length of yarn|a length of wool|a length of thread|st holder|waste yarn|scrap yarn|spare thread|thread|hold|a safety pin|a separate needle|' +
    'a contrast thread|a waste yarn|a scrap thread|a piece of waste yarn|a strand of scrap yarn|a length of contrasting yarn|a piece of yarn|' +
    'a strand of wool|2 st holder|separate st holder|separate holder|a spare strand|hold holder|holder needle|a pin|a waste needle|another holder|the spare holder|a length|the waste|a scrap|spare pin|2 separate holder'
  ).split('|');
  it.each(ways)('%s', (what) => {
    for (const onto of ['on', 'onto', 'to', 'upon'])
      expect(holder(`${onto} ${what} purl`), onto).toEqual([true, 'purl']);
    expect(holder(`on to ${what} purl`)).toEqual([true, 'purl']);
  });

  it.each(['on the front', 'to end', 'a holder', 'on 12 sts'])('is not said by %s', (text) => {
    expect(holder(text)).toEqual([false, none(text)[1]]);
  });
});

describe('in what manner', () => {
  const manner = reading(skipManner);
  it.each(
    (
      'in patt|in rib|in knitting|in k|in p|ribwise|at beg of row|at start of rows|at beg of needle|at beg of each row|at start of every row|' +
      'at beg of both rows|at beg of the row|kwise|pwise|loosely|firmly|tightly|very loosely|not too tightly|for back of neck|for front of neck|' +
      'for front neck|for front edge|for back neck|for left shoulder|for right front|for left armhole|for right underarm|for 1st shoulder|' +
      'for first shoulder|for neck|for armhole|for underarm|for shoulder|for front|for back|for pocket|for buttonhole|for thumb|for the neck|' +
      'for the armhole|for the shoulder|for the back|as if to k|as if to p|loosely in rib for neck'
    ).split('|'),
  )('%s', (text) => {
    expect(manner(`${text} purl`)).toEqual([undefined, 'purl']);
  });
});

describe('one stitch by itself', () => {
  const stitch = reading((c) => readStitch(c)?.item);
  const is = (work: string, times = 1) => ({ is: 'stitches', work, times });

  it.each<[string, object]>([
    ['inc by knitting in front and back of next st', is('inc')],
    ['inc by k into the front and then into back of next st', is('inc')],
    ['inc by purling in the front and back of 1 st st', is('inc')],
    ['inc by p in front and in the back of the next st', is('inc')],
    ['inc by knitting into the front and back of first st', is('inc')],
    ['inc by k in front and back of last st', is('inc')],
    ['inc 2 in each st', { is: 'stitches to', work: 'inc', goal: { left: 'what follows' } }],
    ['inc in every st across', { is: 'stitches to', work: 'inc', goal: { left: 'what follows' } }],
    ['inc into each st to end', { is: 'stitches to', work: 'inc', goal: { left: 'what follows' } }],
    ['inc 1 pwise', is('inc')],
    ['inc 3 kwise', is('inc', 3)],
    ['inc 2 in next st', is('inc 2')],
    ['inc 5 in next st', is('inc', 5)],
    ['inc 1 in each of next 4 sts', is('inc', 4)],
    ['inc 1 each in next 4 sts', is('inc', 4)],
    ['inc 2 sts evenly', { is: 'evenly', change: 2 }],
    ['inc 2 sts spaced evenly', { is: 'evenly', change: 2 }],
    ['inc 2 sts evenly spaced', { is: 'evenly', change: 2 }],
    ['inc 2 as evenly as possible', { is: 'evenly', change: 2 }],
    ['inc 2 sts at even intervals', { is: 'evenly', change: 2 }],
    ['dec 2 sts at equal intervals', { is: 'evenly', change: -2 }],
    ['dec 1 st at center of row', { is: 'evenly', change: -1 }],
    ['dec 1 st at middle of row', { is: 'evenly', change: -1 }],
    ['dec 1 at center', { is: 'evenly', change: -1 }],
    ['dec 1 in middle st', { is: 'evenly', change: -1 }],
    ['inc 1 in center st', { is: 'evenly', change: 1 }],
    ['dec evenly', { is: 'evenly', change: -1 }],
    ['dec 2 sts even', { is: 'evenly', change: -2 }],
    ['dec 2 sts evenly across', { is: 'evenly', change: -2 }],
    ['dec 2 sts evenly across row', { is: 'evenly', change: -2 }],
    ['dec 2 sts evenly along row', { is: 'evenly', change: -2 }],
    ['dec 2 sts evenly in row', { is: 'evenly', change: -2 }],
    ['dec 2 sts evenly in this row', { is: 'evenly', change: -2 }],
    ['dec 2 sts evenly on row', { is: 'evenly', change: -2 }],
    ...['across', 'over', 'along', 'in'].flatMap((over) =>
      ['', 'the ', 'next ', 'the next ', 'center ', 'the center '].map((which): [string, object] => [
        `inc 2 sts evenly ${over} ${which}24 sts`,
        { is: 'evenly', change: 2, over: 24 },
      ]),
    ),
    ['dec 2 at once', is('dec 2')],
    ['dec 3 tog', is('dec 3')],
    ['dec 4 sts at once', is('dec 4')],
    ['yo 3 times', is('yo', 3)],
    ['yo 3 x', is('yo', 3)],
    ['yo2', is('yo twice')],
    ['yo3', is('yo', 3)],
    ['yo 2 times', is('yo twice')],
    ['dbl yo', is('yo twice')],
    ['yarn rnd the needle twice', is('yo twice')],
    ['wool over needle once', is('yo')],
    ['wl rd n', is('yo')],
    ['yarn over on needle', is('yo')],
    ['make a bobble', is('mb')],
    ['make a 1', is('m1')],
    ['make 2 sts', is('m1', 2)],
    ...['left leaning', 'left', 'l', '- l'].map((way): [string, object] => [`m 1 ${way}`, is('m1l')]),
    ...['right leaning', 'right', 'r', '- r'].map((way): [string, object] => [`m 1 ${way}`, is('m1r')]),
    ...['p', 'pwise', '- p'].map((way): [string, object] => [`m 1 ${way}`, is('m1p')]),
    ...['k', 'kwise', 'a', 'z', 't', 'tbl', '- k'].map((way): [string, object] => [`m 1 ${way}`, is('m1')]),
    ['k into front and back next st', is('kfb')],
    ['p into front and back', is('pfb')],
    ...[
      'k the k sts and p the p sts',
      'p the p sts and k the k sts',
      'k the k st, p the p st',
      'k the k sts, and p the p sts',
    ].flatMap((text) =>
      [
        '',
        ' as they appear',
        ' as they face you',
        ' as they are',
        ' as they present themselves',
        ' as set',
        ' as est',
      ].map((look): [string, object] => [
        text + look,
        { is: 'stitches to', work: 'patt', goal: { left: 'what follows' }, appear: true },
      ]),
    ),
    [
      'k the k sts and p the p sts to last 4 sts',
      { is: 'stitches to', work: 'patt', goal: { left: 4 }, appear: true },
    ],
    ['t3f p', is('t3f')],
    ['c4b k', is('c4b')],
    ['k 1 st into front and back', is('kfb')],
    ['p 1 st into back and front', is('pfb')],
    ['work across 12 sts', { is: 'stitches', work: 'patt', times: 12 }],
    ['work over next 12 sts', { is: 'stitches', work: 'patt', times: 12 }],
    ['work lace over next 12 sts', { is: 'stitches', work: 'patt', times: 12, panel: true }],
    ['rib across 12 sts', { is: 'stitches', work: 'patt', times: 12, rib: true }],
    ['k st', is('k')],
    ['k a st', is('k')],
    ['p next st', is('p')],
    ['p next st tbl', is('p tbl')],
    ['k tbl', is('k tbl')],
    ['k tbl 3', is('k tbl', 3)],
    ['k 5 tog tbl', is('k5tog')],
    ['k2togtbl', is('k2tog tbl')],
    ['k2 b tog', is('k2tog tbl')],
    ['k 2 from left needle', is('k', 2)],
    ['sl st', is('sl')],
    ...['', 'the '].flatMap((the) =>
      ['', 'next ', 'first ', 'extra ', 'second ', 'last '].flatMap((which) =>
        ['st', 'yo', 'loop', 'yarn over', 'wrap'].map((what): [string, object] => [
          `drop ${the}${which}${what}`,
          is('drop'),
        ]),
      ),
    ),
    ['drop 2 wraps', is('drop', 2)],
    ['drop the 2 extra loops', is('drop', 2)],
    ['drop first st off the needle', is('drop')],
    ['drop next wrap from left needle', is('drop')],
    ['drop 1 extra yarn over from needle', is('drop')],
  ])('%s', (text, item) => {
    expect(stitch(`${text} wibble`)).toEqual([item, 'wibble']);
  });

  it.each([
    'm 1.5',
    'make it',
    'm l',
    'yarn it',
    's st',
    'c4',
    't 3',
    'c4 up',
    '2/2',
    '2/2 xc',
    '2 2 lc',
    'rem sts',
  ])('is not said by %s', (text) => {
    expect(stitch(text)).toEqual(none(text));
  });

  it('is no half of one', () => {
    expect(stitch('inc 2.5 sts')).toEqual([is('inc'), '2.5 sts']);
    expect(stitch('sl 2.5 sts')).toEqual([is('sl'), '2.5 sts']);
  });
});
