import { describe, expect, it } from 'vitest';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { mergeTexts } from '../../../src/knit/written/merge-sizes.ts';

/** Lists of sizes as leaflets set them, 'cast on 92 (100, 108) sts', a dash where a size has none: common practice, no published source. */
const merged = (...texts: readonly (readonly string[])[]) =>
  mergeTexts(texts, ['S', 'M', '2X', '12 months'].slice(0, texts.length), englishWritten('US').list);

describe('lines of several sizes in one text', () => {
  it.each<[string, string, string[]]>([
    [
      'only what differs is a list',
      'Cast on 92 (100, 100) sts, k2.',
      ['Cast on 92 sts, k2.', 'Cast on 100 sts, k2.', 'Cast on 100 sts, k2.'],
    ],
    ['a figure with a point is one figure', '20.5 (21) sts', ['20.5 sts', '21 sts']],
    [
      'an ordinal keeps its ending',
      'every foll 8th (6th, 2nd) row',
      ['every foll 8th row', 'every foll 6th row', 'every foll 2nd row'],
    ],
    ['one stitch and many are one line', 'to 1 (2) sts', ['to 1 st', 'to 2 sts']],
    [
      'the last stitch and the last ones too',
      'knit to last 1 (2) sts, k1',
      ['knit to last st, k1', 'knit to last 2 sts, k1'],
    ],
    [
      'once more and several times too',
      'Rep row 3, 1 (4) times more.',
      ['Rep row 3 once more.', 'Rep row 3, 4 times more.'],
    ],
    [
      'what is one for all stays as it is',
      'Rep rows 1 and 2 (3) once more. (1 st)',
      ['Rep rows 1 and 2 once more. (1 st)', 'Rep rows 1 and 3 once more. (1 st)'],
    ],
    ['a stretch ends behind a word', 'Rep rows 5 (7) to 8 (10)', ['Rep rows 5–8', 'Rep rows 7–10']],
    ['its end alone differs', 'Rep rows 5 to 8 (10)', ['Rep rows 5–8', 'Rep rows 5–10']],
    ['its beginning alone differs', 'Rep rows 5 (7) to 10', ['Rep rows 5–10', 'Rep rows 7–10']],
    [
      'a stretch alike is as it was',
      'rows 5–8 on 92 (100) sts',
      ['rows 5–8 on 92 sts', 'rows 5–8 on 100 sts'],
    ],
    [
      'what all sizes have alike is left as it is, whatever it looks like',
      'rows 5–8 (9 rows), 1 sts, 1 times more',
      ['rows 5–8 (9 rows), 1 sts, 1 times more', 'rows 5–8 (9 rows), 1 sts, 1 times more'],
    ],
    ['a point before a one makes no single stitch', '20.1 sts in 5 (6)', ['20.1 sts in 5', '20.1 sts in 6']],
  ])('%s: %s', (_, wanted, lines) => {
    expect(merged(...lines.map((line) => [line]))).toEqual([wanted]);
  });

  it('numbers within the name of a stitch are no numbers: another stitch is another line', () => {
    expect(merged(['k1, k2tog, k3'], ['k1, k3tog, k3'])).toEqual([
      'Size S only: k1, k2tog, k3',
      'Size M only: k1, k3tog, k3',
    ]);
  });

  it('what only some sizes work is theirs by name, with a dash for the others, and stands in everyone’s order', () => {
    expect(
      merged(
        ['Cast on 10 sts.', 'knit.', 'Bind off.'],
        ['Cast on 12 sts.', 'dec to 8 sts', 'knit.', 'Bind off.'],
        ['Cast on 14 sts.', 'dec to 9 sts', 'purl.', 'Bind off.'],
        ['Cast on 16 sts.', 'knit.', 'Bind off.', 'Break yarn.'],
      ),
    ).toEqual([
      'Cast on 10 (12, 14, 16) sts.',
      'Sizes M and 2X only: dec to – (8, 9, –) sts',
      'Sizes S, M and 12 months only: knit.',
      'Size 2X only: purl.',
      'Bind off.',
      'Size 12 months only: Break yarn.',
    ]);
  });

  it.each<[string, readonly (readonly string[])[], readonly string[]]>([
    [
      'begins with a line of its own',
      [
        ['a', 'b'],
        ['x', 'a', 'b'],
      ],
      ['Size M only: x', 'a', 'b'],
    ],
    [
      'lacks the first line',
      [
        ['x', 'a', 'b'],
        ['a', 'b'],
      ],
      ['Size S only: x', 'a', 'b'],
    ],
    [
      'ends with a line of its own',
      [
        ['a', 'b'],
        ['a', 'b', 'x'],
      ],
      ['a', 'b', 'Size M only: x'],
    ],
    [
      'lacks the last line',
      [
        ['a', 'b', 'x'],
        ['a', 'b'],
      ],
      ['a', 'b', 'Size S only: x'],
    ],
    [
      'has a line elsewhere: the longer run stays together',
      [
        ['a', 'b', 'c'],
        ['b', 'c', 'a'],
      ],
      ['Size S only: a', 'b', 'c', 'Size M only: a'],
    ],
    [
      'has other lines: hers before, the others behind',
      [
        ['a', 'x', 'b'],
        ['a', 'y', 'b'],
      ],
      ['a', 'Size S only: x', 'Size M only: y', 'b'],
    ],
    ['has nothing in common', [['a'], ['b']], ['Size S only: a', 'Size M only: b']],
  ])('a size that %s', (_, texts, wanted) => {
    expect(merged(...texts)).toEqual(wanted);
  });

  it('a blank line is no size’s own, and nothing of nothing is nothing', () => {
    expect(merged(['a', '', 'b'], ['a', 'b'])).toEqual(['a', '', 'b']);
    expect(merged([], [])).toEqual([]);
    expect(merged()).toEqual([]);
  });
});
