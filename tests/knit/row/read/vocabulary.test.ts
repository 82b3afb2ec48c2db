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
