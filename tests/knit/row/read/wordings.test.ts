import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';
import { told } from '../../../told.ts';

/**
 * One row said in many ways: leaflets put other words in the same places (common practice, no published source). Each
 * place of a sentence is filled in turn with each of its words, the others staying as they are, and a stitch follows
 * that must not be swallowed.
 */

const read = (text: string): string => {
  const row = parseRow(text);
  return row.ok ? printRow(row.value) : `refused: ${told(row.faults)}`;
};

/** The words that may stand in each place, the commonest first; a dash is none. */
type Places = readonly string[];

function waysOf(places: Places): string[] {
  const choices = places.map((place) => place.split('|').map((word) => (word === '—' ? '' : word)));
  const first = choices.map(([word = '']) => word);
  const sentence = (words: readonly string[]) => words.filter(Boolean).join(' ').replaceAll(' ,', ',');
  return [
    ...new Set(
      choices.flatMap((words, at) =>
        words.map((word) => sentence(first.map((usual, i) => (i === at ? word : usual)))),
      ),
    ),
  ];
}

const cn = 'from cn|off cn|from cable|from the cn|off the cable|from dpn|off dpn|from cable needle';
const held = (front: string) => [
  'p2, sl|p2, slip',
  'next|—|the next',
  '3',
  'sts|st|—|stitches',
  'to cn|onto cn|on cable needle|to a cn|onto the cable needle|on a double pointed needle|to dpn|on an extra needle|on a spare cable needle'.replace(
    '|on an extra needle',
    '|on extra needle',
  ),
  'and|,|&|then',
  'hold|leave|place|put|keep',
  '—|it|them|this',
  'in|at|to',
  `${front}|the ${front}`,
  '—|of work',
  ', k3|and k3|then k3|, knit 3|, k next 3',
  ', k3|, then k3|, knit 3 sts',
  cn,
  ', p2',
];

const families: readonly (readonly [is: string, places: Places])[] = [
  ['p2, c6f, p2', held('front')],
  ['p2, c6b, p2', held('back')],
  [
    'k1, 2/1 lpc, k1',
    [
      'k1, sl 2 sts to cn, hold in front',
      ', p1|, purl 1|, p next st'.replace('|, p next st', ''),
      `, k2 ${cn.split('|')[0]}`,
      ', k1',
    ],
  ],
  [
    'k1, 2/1 rpc, k1',
    ['k1, sl 1 st to cn, hold in back', ', k2|, knit 2', ', p1 from cn|, purl 1 from cn', ', k1'],
  ],
  ['k1, c4f, k1', ['k1,', 'c4f|cable 4 front|c 4 f|c4l|cable 4 left|c4 fwd|c 4 sts front', ', k1']],
  ['k1, c4b, k1', ['k1,', 'c4b|cable 4 back|c 4 b|c4r|cable 4 right|c4 bk', ', k1']],
  ['k2, 2/2 lc, p1', ['k2,', '2/2 lc|2/2 l', ', p1']],
  ['k2, 2/2 rpc, p1', ['k2,', '2/2 rpc|2/2 rp|2/2 rcp', ', p1']],
  [
    'k2tog, place 12 sts on holder, k1',
    [
      'k2tog,',
      'place|put|sl|slip|leave|transfer|keep|move',
      'next|the next|first|following|—',
      '12',
      'sts|stitches',
      'on holder|on a holder|onto holder|to stitch holder|on a st holder|onto a spare needle|on a thread|on a safety pin|to a length of yarn|on waste yarn|on a piece of waste yarn|upon a stitch holder',
      ', k1',
    ],
  ],
  [
    'k3, take up 12 sts from holder, k1',
    [
      'k3,',
      'take up|take|slip|return|replace|put|place',
      '12',
      'sts|stitches',
      'from holder|off holder|from the holder|from stitch holder|off a stitch holder|from a holder',
      '—|onto needle|to the needle|back onto needle',
      ', k1',
    ],
  ],
  [
    'k3, take up 12 sts from holder, k1',
    [
      'k3,',
      'k|knit',
      '12',
      'sts|—',
      'from holder|off holder|from st holder|from the stitch holder|off the holder',
      ', k1',
    ],
  ],
  [
    'knit to last 4 sts, k2tog, k2',
    [
      'k|knit|plain',
      'to|until|till|up to',
      'last 4|the last 4|within 4|4',
      'sts|stitches'.replace('|stitches', ''),
      '—',
      ', k2tog, k2',
    ].map((place) => (place === 'last 4|the last 4|within 4|4' ? 'last 4|the last 4' : place)),
  ],
  [
    'knit to last 4 sts, k2tog, k2',
    [
      'k',
      'to|until|till',
      '—|there are|there are only',
      '4',
      'sts|st',
      'remain|rem|remaining|left|are left|from the end|from end|before the end|before end|of the end of row|from the end of the row|remain on left needle|remain on lh needle|remain on the left needle|left on needle',
      ', k2tog, k2',
    ],
  ],
  [
    'k2tog, knit to end',
    [
      'k2tog,',
      'k|knit',
      'to end|to the end|across|all the way|across row|to end of row|to the end of the row|across all sts|all sts|across the row|along the row|straight across|rem sts|remaining stitches|the rem sts|to end of this row|the rest|all rem sts|over all sts|the whole row|entire row|across all the sts|even|in every st|each st|every st across',
    ],
  ],
  ['knit to last st, p1', ['k', 'to last st|to last stitch|to last 1 st|to the last st', ', p1']],
  [
    '[k1, p2] 3 times, k4',
    [
      '(k1, p2)',
      '3 times|three times|3 x|× 3|x 3|for 3 times|a total of 3 times|over next 9 sts|across next 9 sts|on next 9 sts|2 times more|2 more times|twice more|2 times again|, 3 times|rep 3 times|repeat 3 times|3 times in all|3 times altogether|2 further times',
      ', k4',
    ],
  ],
  [
    '[k1, p2] 2 times, k4',
    ['(k1, p2)', 'twice|2 times|two times|once more|another time'.replace('|another time', ''), ', k4'],
  ],
  ['[k1, p2] 3 times, k4', ['3|three', 'x|×|times', '—|,|:', '(k1, p2)|[k1, p2]', ', k4']],
  [
    '*k1, p1; repeat from * to last 2 sts, k2',
    ['(k1, p1)', 'to last 2 sts|until 2 sts remain|rep to last 2 sts|repeat to last 2 sts', ', k2'],
  ],
  [
    'p1, kfb, k3',
    [
      'p1,',
      'kfb|k f & b|k f and b|k1f&b|k1fb|k1 f and b|k into front and back of next st|knit in front and back of st|k in the front and back of the next stitch|k into front and then back of next st|k into front and into back of same st|k 1 into front and back of next st|k in back and front of next st|k into front loop and back loop of next st|k into front then back of st|k1 into back and front|k into front and back of the following st',
      ', k3',
    ],
  ],
  [
    'p1, [kfb] 2 times, k3',
    [
      'p1,',
      'k into front and back of each of next 2 sts|k in front and back of each of the next 2 sts|k into front and back of next 2 sts|kfb in each of next 2 sts'.replace(
        '|kfb in each of next 2 sts',
        '',
      ),
      ', k3',
    ],
  ],
  [
    'p1, kfbf, k3',
    [
      'p1,',
      'k into front, back and front of next st|k in front back and front of next st|knit into the front, back, front of st',
      ', k3',
    ],
  ],
  [
    'k1, pfb, k3',
    ['k1,', 'pfb|p f & b|p into front and back of next st|purl in back and front of next st', ', k3'],
  ],
  [
    'p1, k tbl, k3',
    [
      'p1,',
      'k1 tbl|k1b|k 1 through back loop|k1 through the back loop|k1 through back of loop|k into back of next st|k in back loop of st|k tbl|k next st tbl|k1 into back|k1 in back of st'.replace(
        '|k1b',
        '',
      ),
      ', k3',
    ],
  ],
  [
    'p1, [k tbl] 2 times, k3',
    [
      'p1,',
      'k2 tbl|k 2 sts tbl|k2 through back loops|k2 in back of sts|k into back of next 2 sts|k in back of each of next 2 sts',
      ', k3',
    ],
  ],
  [
    'p1, k2tog tbl, k3',
    [
      'p1,',
      'k2tog tbl|k 2 tog tbl|k2tog through back loops|k 2 sts tog through the back loops|k 2 tbl tog|k2tog in back of sts|k2 tog - tbl|k 2 together through back of loops',
      ', k3',
    ],
  ],
  [
    'p1, k2tog, k3',
    ['p1,', 'k2tog|k 2 tog|k 2 together|k 2 sts tog|knit 2 stitches together|k tog|k next 2 sts tog', ', k3'],
  ],
  ['p1, p3tog, k3', ['p1,', 'p3tog|p 3 tog|purl 3 sts together', ', k3']],
  [
    'k1, skp, k3',
    [
      'k1,',
      'sl|slip|s',
      '1',
      '—|st',
      '—|knitwise|kwise|as if to knit|wyib',
      ', k1|- k 1|, knit 1|and k 1|, k next st'.replace('|, k next st', ''),
      ', psso|- psso|, pass slip st over|, pass the slipped stitch over|and pass slipped st over|, pass sl st over knit st|, psso the k st',
      ', k3',
    ],
  ],
  [
    'k1, sk2p, k3',
    [
      'k1,',
      'sl 1',
      ', k2tog|, k 2 tog|, k 2 sts together|, then k2tog',
      ', psso|, pass slip stitch over|, pass slipped st over k 2 tog',
      ', k3',
    ],
  ],
  [
    'k1, s2kp, k3',
    [
      'k1,',
      'sl 2|slip 2 sts',
      'tog|together|tog knitwise|knitwise|as if to k2tog'.replace('|as if to k2tog', ''),
      ', k1',
      ', p2sso|, pass 2 slipped sts over|, pass both slipped stitches over|, psso',
      ', k3',
    ],
  ],
  ['k1, ssk, k3', ['k1,', 'ssk|sl, sl, k|slip, slip, knit|sl - sl - k|slip, slip and knit', ', k3']],
  ['k1, sssk, k3', ['k1,', 'sssk|sl, sl, sl, k|slip, slip, slip, knit', ', k3']],
  ['k1, ssp, k3', ['k1,', 'ssp|sl, sl, p|slip, slip, purl', ', k3']],
  [
    'k1, [sl wyif] 2 times, k3',
    [
      'k1, sl',
      '—|the|next',
      '2',
      'sts|—',
      'wyif|with yarn in front|with yarn at front|yif|purlwise wyif|pwise with yarn in front',
      ', k3',
    ],
  ],
  [
    'k1, sl2, k3',
    [
      'k1,',
      'sl|slip',
      'the|—|next|first',
      '2',
      'sts|—',
      '—|purlwise|pwise|as if to purl|p - wise|knitwise|kw|as to k|as for purl|as if knitting',
      ', k3',
    ],
  ],
  ['k1, sl wyib, k3', ['k1, sl 1', 'wyib|with yarn in back|with yarn at back|yib', ', k3']],
  [
    'k1, yo, k3',
    [
      'k1,',
      'yo|yon|yrn|yfwd|wf|wfd|yarn over|yarn forward|wool forward|wool round needle|wl fwd|yarn over needle|yo once|o|yf on needle'.replace(
        '|yf on needle',
        '',
      ),
      ', k3',
    ],
  ],
  [
    'k1, yo twice, k3',
    [
      'k1,',
      'yo twice|yo 2 times|double yo|yo2|yarn over twice|wool forward twice|yarn round needle twice',
      ', k3',
    ],
  ],
  ['k1, m1l, k3', ['k1,', 'm1l|m1 left|make 1 left|m 1 l|m1 - l|make 1 left leaning', ', k3']],
  ['k1, m1r, k3', ['k1,', 'm1r|m1 right|make 1 right|make 1 right leaning', ', k3']],
  ['k1, m1p, k3', ['k1,', 'm1p|make 1 purlwise|m1 pwise|m1 purl', ', k3']],
  ['k1, m1, k3', ['k1,', 'm1|make 1|m 1|make 1 st|m1 knitwise|m1 tbl', ', k3']],
  [
    'k1, inc, k3',
    [
      'k1,',
      'inc 1|inc in next st|inc 1 in next st|increase 1 st in next st|inc next st|inc 1 st|inc in following st|inc 1 in the next stitch',
      ', k3',
    ],
  ],
  [
    'k1, [inc] 3 times, k3',
    [
      'k1,',
      'inc in each of next 3 sts|inc 1 in each of next 3 sts|inc 1 st in each of the next 3 sts|inc in next 3 sts|inc in each of following 3 sts',
      ', k3',
    ],
  ],
  ['k1, dec 2 at once, k3', ['k1,', 'dec 2 sts at once|dec 2 together|dec 2 tog|dec 2 sts tog', ', k3']],
  ['k1, mb, k3', ['k1,', 'mb|make bobble|make a bobble', ', k3']],
  [
    'bind off 5 sts, k6, k2tog',
    [
      'bo 5,',
      'k until there are',
      '6',
      'sts|stitches',
      'on right needle|on rh needle|on the right needle|on right hand needle|on right - hand needle|on right needle after bind off|on right needle after bo',
      ', k2tog',
    ],
  ],
  [
    'k2, k1 below, p1',
    [
      'k2,',
      'k1 below|k 1 below|k into st below|k1 in row below|k1 in st below|k in the stitch below|k1 in the row below|k in row below',
      ', p1',
    ],
  ],
];

describe.each(families)('%s', (is, places) => {
  const ways = waysOf(places);
  const [usual = ''] = ways;
  const known = read(usual);

  it(`is what '${usual}' says`, () => {
    expect(known).toBe(is);
  });

  it.each(ways.slice(1))('is said by %s too', (way) => {
    expect(read(way)).toBe(known);
  });
});
