import { describe, expect, it } from 'vitest';
import { attempt, cursorOver, takes } from '../../../../src/knit/row/read/cursor.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';
import { wordOf } from '../../../../src/knit/row/read/vocabulary.ts';
import { saidIn } from '../../pattern/say/said.ts';

describe('the vocabulary', () => {
  // US and UK words and abbreviations: the published lists named in tests/outside/stitches.test.ts
  it.each([
    ['Bind off rem 24 sts', 'Bind off remaining 24 stitches'],
    ['Work in stockinette st for 10 cm', 'Work in stocking stitch for 10 centimetres'],
    ['Work in seed st for 4 in', 'Work in moss stitch for 4 inches'],
    ['Dec 1 st at each end of foll alt row', 'Decrease 1 stitch at each end of following alternate row'],
    ['Rep rows 1 & 2 5 times', 'Repeat rows 1 and 2 5 times'],
    ['Place marker at each end', 'Placing markers at each end'],
  ])('reads %s as %s', (short, full) => {
    expect(saidIn(full)).toEqual(saidIn(short));
    expect(saidIn(full)).not.toEqual([]);
  });

  it('reads a row alike in full and abbreviated', () => {
    const row = parseRow('k2, sl1, k2tog, *p1, k1; rep from * to last 2 sts, yo, k2');
    expect(
      parseRow('knit 2, slip 1, k2 together, *purl 1, knit 1; repeat from * to last 2 stitches, yrn, knit 2'),
    ).toEqual(row);
    expect(row.ok).toBe(true);
  });

  it('is asked once: a word that stands for others is no spelling of another', () => {
    for (const word of ['knit', 'stitches', 'following', 'centre', 'inches', '×', '&'])
      expect(wordOf(wordOf(word))).toBe(wordOf(word));
    expect(wordOf('wibble')).toBe('wibble');
  });

  it('leaves the text of a word as it was written', () => {
    expect(lex('Stitches').map(({ text, word }) => [text, word])).toEqual([['stitches', 'sts']]);
  });
});

/*
 * One word, in full and abbreviated, of one and of many, US and UK. The first block is of the Craft Yarn Council's list
 * of knit abbreviations (from memory), the others are common practice, no published source.
 */
const alike = [
  'k knit|p purl|sl slip|inc increase increases|dec decrease decreases|tog together|rep repeat|foll following follows',
  'rem remaining|alt alternate|beg beginning|cont continue|approx approximately|fwd forward|bet between|patt pat pattern',
  'st stitch|sts stitches|rnd round|rnds rounds|kwise knitwise|pwise purlwise|cm centimetres centimeters|mm millimeters',
  'm marker|yo yon yrn yfwd|dbl double|rev reverse',
  // many and one
  'armhole armholes|underarm underarms|shoulder shoulders|seam seams|edge edges|loop loops|needle needles ndls',
  'holder holders|marker markers|ball balls|ridge ridges|pats patterns|time times|remain remains|inch inches ins "',
  // the UK and the US
  'center centre|stocking stockinette|moss seed|gauge tension',
  // as it is written in passing
  'bind binding|cast casting|pick picking|place placing|leave leaving|turn turning|rib ribbing|est established',
  'increasing incing|decreasing decing|through thru|until till|and &|x ×|garter gar|gst gtst|measures meas|psso pssso',
].flatMap((line) => line.split('|').map((group) => group.split(' ')));

describe('one word', () => {
  it.each(alike.filter(([first]) => first !== 'm'))('%s is %s, however it is spelled', (...spellings) => {
    expect(new Set(spellings.map(wordOf)).size, spellings.join()).toBe(1);
  });

  it('is not another', () => {
    const words = alike.map(([first = '']) => wordOf(first));
    expect(new Set(words).size).toBe(alike.length);
  });

  it('of a number is the number', () => {
    const words =
      'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty';
    expect(lex(words).map(({ kind, value }) => [kind, value])).toEqual(
      words.split(' ').map((_, i) => ['number', i + 1]),
    );
  });
});

/** Whether the full stop is read as a mark of its own. */
const stops = (text: string): boolean => lex(text).some(({ text: mark }) => mark === '.');

/* Abbreviations are written with a full stop in older books, common practice, no published source. */
describe('a full stop behind', () => {
  it.each(
    (
      'st sts rep beg foll rem inc dec alt tog approx patt cont k p sl rnd wl fwd ins cm cms mm tbl psso opp meas rh lh ' +
      'rs ws yds oz yo yrn cn dpn cc pcs wyif wyib bo co nec ctr skp ssk col med sz gar stocking ss gst incr decr'
    ).split(' '),
  )('%s ends no sentence, unless a capital follows', (short) => {
    expect(stops(`${short}. until`)).toBe(false);
    expect(stops(`${short}. Until`)).toBe(true);
    expect(stops(`${short}.`)).toBe(true);
    expect(stops(`${short}.,`)).toBe(false);
  });

  it.each(['wibble', 'end', 'knit', 'row', 'needle', 'work'])('%s ends one', (word) => {
    expect(stops(`${word}. until`)).toBe(true);
  });

  it.each('no sl inc dec foll rem approx cont rep beg alt ea rnd size next yo k p'.split(' '))(
    '%s goes on with a number',
    (short) => {
      const isShort = !['size', 'next'].includes(short);
      expect(stops(`${short}. 5`)).toBe(!isShort);
    },
  );

  it.each(['sts', 'tog', 'tbl', 'psso', 'ssk', 'cm'])('%s does not: a count begins a sentence', (short) => {
    expect(stops(`${short}. 5`)).toBe(true);
    expect(stops(`${short}.5`)).toBe(false);
  });

  it('a stitch is one, in ‘st. st’, whatever follows', () => {
    expect(stops('St. St for 5 cm')).toBe(false);
    expect(stops('st.    st for 5 cm')).toBe(false);
    expect(stops('st. Stop')).toBe(true);
    // no abbreviation stands apart from its full stop
    expect(stops('st . until')).toBe(true);
  });
});

describe('an attempt', () => {
  it('that makes nothing of the text takes nothing of it', () => {
    const c = cursorOver(lex('bind off all'));
    expect(attempt(c, () => (takes(c, 'bind') && takes(c, 'on') ? 'on' : undefined))).toBeUndefined();
    expect(c.at).toBe(0);
    expect(attempt(c, () => takes(c, 'bind') && takes(c, 'on'))).toBe(false);
    expect(c.at).toBe(0);
    expect(attempt(c, () => (takes(c, 'bind') && takes(c, 'off') ? 'off' : undefined))).toBe('off');
    expect(c.at).toBe(2);
  });
});
