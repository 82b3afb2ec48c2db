import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf as rows } from './rows-of.ts';

const linesOf = (...text: readonly string[]) => readPattern(text.join('\n')).lines;

/** Lines with a mark, counting from 1. */
const marked = (...text: readonly string[]): readonly number[] =>
  linesOf(...text).flatMap(({ line, faults }) => (faults.length > 0 ? [line] : []));

describe('what is said of stitches and sides is held to', () => {
  it('a single purl row begins a piece on the wrong side (common practice, no published source)', () => {
    expect(rows('BACK', 'Cast on 8 sts.', 'P 1 row. K 1 row.', 'Work 2 rows in st st.')).toEqual([
      'WS purl 8',
      'RS knit 8',
      'WS purl 8',
      'RS knit 8',
    ]);
  });
  it('but where the text says its side, or knits it, or purls more of them', () => {
    expect(rows('BACK', 'Cast on 8 sts.', 'Next row (RS): p to end.')).toEqual(['RS purl 8']);
    expect(rows('BACK', 'Cast on 8 sts.', 'K 1 row. P 1 row.')).toEqual(['RS knit 8', 'WS purl 8']);
    expect(rows('BACK', 'Cast on 8 sts.', 'P 2 rows.')).toEqual(['RS purl 8', 'WS purl 8']);
  });
  it('right side rows behind every row are right side rows', () => {
    const shaped = (first: string) =>
      rows(
        'BACK',
        'Cast on 40 sts.',
        first,
        'Dec 1 st at each end of every row 3 times, then every RS row twice.',
      )
        .map((row) => row.replace(/ .* /, ' '))
        .filter((row, i, all) => row.split(' ')[1] !== (all[i - 1] ?? 'RS 40').split(' ')[1]);
    expect(shaped('Knit 3 rows.')).toEqual(['WS 38', 'RS 36', 'WS 34', 'RS 32', 'RS 30']);
    expect(shaped('Knit 2 rows.')).toEqual(['RS 38', 'WS 36', 'RS 34', 'RS 32', 'RS 30']);
  });
  it('stitches that remain are as many as the row says', () => {
    const row = (n: number) => [
      'BACK',
      'Cast on 40 sts.',
      `Next row: k15, cast off 14 sts, knit remaining ${n}.`,
    ];
    expect(marked(...row(13))).toEqual([3]);
    expect(marked(...row(11))).toEqual([]);
    expect(rows(...row(11))).toEqual(['RS k15, bind off 14 sts, k11 26']);
  });
});

describe('what orders something is taken or told on its line', () => {
  it('behind NOTE, where stitches are on the needle', () => {
    const noted = (words: string) => [
      'BACK',
      'Cast on 40 sts.',
      'Knit 2 rows.',
      `NOTE: ${words}`,
      'Work 2 rows in st st.',
    ];
    expect(marked(...noted('Bind off 5 sts at beg of next 2 rows.'))).toEqual([4]);
    expect(marked(...noted('When front measures 10 cm, bind off 5 sts at beg of next 2 rows.'))).toEqual([4]);
    // what is kept from here on is kept
    expect(marked(...noted('keep 4 sts at each end in moss st throughout.'))).toEqual([]);
    expect(rows(...noted('keep 4 sts at each end in moss st throughout.')).at(-1)).toContain('k1, p1');
    // nothing is ordered
    expect(marked(...noted('the piece is wider than it looks.'))).toEqual([]);
  });
  it('how shapings are made, before anything is cast on', () => {
    expect(
      marked('When decreasing on fronts, k2tog at end of row.', 'BACK', 'Cast on 40 sts.', 'Knit 2 rows.'),
    ).toEqual([1]);
    expect(marked('When decreasing, mind the tension.', 'BACK', 'Cast on 40 sts.', 'Knit 2 rows.')).toEqual(
      [],
    );
  });
  it('a rib that was not understood is not the rib before it', () => {
    const rib = ['BACK', 'Cast on 40 sts.', 'Work in k1, p1 rib for 4 rows.'];
    const twisted = [
      'Work in twisted rib (k1 tbl, p1) for 4 rows.',
      'Work in st st for 4 rows.',
      'Work 2 rows in rib.',
    ];
    expect(rows(...rib, ...twisted).at(-1)).not.toContain('k1, p1');
    expect(rows(...rib, 'Work in st st for 4 rows.', 'Work 2 rows in rib.').at(-1)).toContain('k1, p1');
  });
});
