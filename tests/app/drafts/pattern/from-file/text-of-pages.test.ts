import { describe, expect, it } from 'vitest';
import type { Bit, PageOfBits } from '../../../../../src/app/drafts/pattern/from-file/page.ts';
import { textOfPages } from '../../../../../src/app/drafts/pattern/from-file/text-of-pages.ts';
import { column, type Printed } from './made-pdf.ts';

/** A page as the letters of a fixed width would lie on it: 6 points each at a size of 10. */
const page = (...printed: readonly Printed[]): PageOfBits => ({
  height: 842,
  bits: printed.map(
    ({ text, x, y, size = 10 }): Bit => ({ text, x, y, size, width: text.length * size * 0.6 }),
  ),
});

const left = [
  'FRONT',
  'Work as the back until the piece',
  'measures 42 cm, ending with a WS',
  'row.',
  'Shape neck',
  'Next row (RS): k32, turn, and work',
  'on these stitches only.',
];
const right = [
  'Decrease 1 st at the neck edge on',
  'every second row 6 times. 26 sts.',
  'Work 4 rows straight.',
  'Bind off.',
  'SLEEVES (make 2)',
  'Cast on 44 sts and work in k2, p2',
  'rib for 5 cm.',
];
const readInColumns = [
  'FRONT',
  'Work as the back until the piece measures 42 cm, ending with a WS row.',
  'Shape neck',
  'Next row (RS): k32, turn, and work on these stitches only.',
  '',
  'Decrease 1 st at the neck edge on every second row 6 times. 26 sts.',
  'Work 4 rows straight.',
  'Bind off.',
  'SLEEVES (make 2)',
  'Cast on 44 sts and work in k2, p2 rib for 5 cm.',
].join('\n');

describe('a sentence that the width broke behind a number', () => {
  it('goes on with its rows; rows with a label begin a line', () => {
    const lines = [
      'Bind off 4 sts at the beg of the next 4',
      'rows, 2 sts at the beg of the next 2',
      'rows 2 more times. Then work straight.',
      'Rows 2 and 4: purl.',
    ];
    expect(textOfPages([page(...column(50, 700, lines))])).toBe(
      'Bind off 4 sts at the beg of the next 4 rows, 2 sts at the beg of the next 2 rows 2 more times. Then work straight.\n' +
        'Rows 2 and 4: purl.',
    );
  });
});

describe('columns of a page', () => {
  it('are read one after the other, whether their lines stand level or not', () => {
    for (const lower of [0, 5])
      expect(textOfPages([page(...column(50, 700, left), ...column(310, 700 - lower, right))])).toBe(
        readInColumns,
      );
  });

  it('lie below what goes across both, and above it', () => {
    const title = { text: 'A pullover for long walks, in five sizes', x: 150, y: 740, size: 14 };
    const foot = {
      text: 'Weave in all ends, pin the pieces to size, dampen them and let them dry on the floor.',
      x: 50,
      y: 560,
    };
    const text = textOfPages([page(title, ...column(50, 700, left), ...column(310, 700, right), foot)]);
    expect(text).toBe(`${title.text}\n\n${readInColumns}\n\n${foot.text}`);
  });

  it('are three as well', () => {
    const narrow = (n: number) =>
      column(
        40 + 180 * n,
        700,
        left.map((line) => line.slice(0, 26)),
      );
    const text = textOfPages([page(...narrow(0), ...narrow(1), ...narrow(2))]);
    expect(text.match(/FRONT\nWork as the back until/g)).toHaveLength(3);
  });

  it('are none in a table: a row of it is read across', () => {
    const table = [
      ['Size', 'S', 'M', 'L'],
      ['Chest', '88', '96', '104 cm'],
      ['Length', '56', '58', '60 cm'],
      ['Sleeve', '44', '45', '46 cm'],
      ['Yarn', '9', '10', '11 balls'],
    ].flatMap((cells, row) => cells.map((text, at) => ({ text, x: 50 + 110 * at, y: 700 - 14 * row })));
    expect(textOfPages([page(...table)]).split('\n')).toEqual([
      'Size S M L',
      'Chest 88 96 104 cm',
      'Length 56 58 60 cm',
      'Sleeve 44 45 46 cm',
      'Yarn 9 10 11 balls',
    ]);
  });
});

describe('a line of a page', () => {
  const lines = (...texts: readonly string[]) => textOfPages([page(...column(50, 700, texts))]).split('\n');

  it('that a hyphen ends goes on in the next, with the hyphen where the word has one', () => {
    expect(lines('Continue in stocking stitch on the re-', 'maining stitches until it is long')).toEqual([
      'Continue in stocking stitch on the remaining stitches until it is long',
    ]);
    expect(
      lines('Slip the stitches to the tip of the right-', 'hand needle and turn the work over.'),
    ).toEqual(['Slip the stitches to the tip of the right-hand needle and turn the work over.']);
    expect(lines('Work the drop-stitch row, then one drop-', 'stitch row more and four rows plain.')).toEqual(
      ['Work the drop-stitch row, then one drop-stitch row more and four rows plain.'],
    );
  });

  /** A full line of forty letters below what is given, 12 points below it unless said. */
  const above = (...bits: readonly Printed[]) =>
    textOfPages([page(...bits, { text: 'and forty letters of a line that is full', x: 50, y: 688 })]);
  const full = { text: 'until it is as long as it can be and has', x: 50, y: 700 };

  it('goes on in the next one where that had no more room in it', () => {
    expect(above(full)).toBe(`${full.text} and forty letters of a line that is full`);
    // room for three letters and the space before them, and no more
    const just = 'until it is as long as one needs it a';
    expect(just).toHaveLength(37);
    expect(above({ ...full, text: just.slice(0, 36) })).toBe(
      `${just.slice(0, 35)} and forty letters of a line that is full`,
    );
    expect(above({ ...full, text: 'until it is as long as it can be' })).toBe(
      'until it is as long as it can be\nand forty letters of a line that is full',
    );
  });

  it('ends where it is one of a table, where the next one is, and where that stands apart', () => {
    // both cells end where the full line below ends: 15 letters of 6 points behind 200
    const cells = (y: number) => [
      { text: 'Chest', x: 50, y },
      { text: 'eighty-eight cm', x: 200, y },
    ];
    expect(above(...cells(700))).toBe('Chest eighty-eight cm\nand forty letters of a line that is full');
    const chest = cells(688).map((cell) => ({ ...cell, text: cell.text.toLowerCase() }));
    expect(textOfPages([page(full, ...chest)])).toBe(`${full.text}\nchest eighty-eight cm`);
    const apart = column(50, 700, ['knit the first row', 'and the next', 'Row 3: purl']).concat(
      { ...full, y: 664 },
      { text: 'and forty letters of a line that is full', x: 50, y: 640 },
    );
    expect(
      textOfPages([page(...apart)])
        .split('\n')
        .slice(-3),
    ).toEqual([full.text, '', 'and forty letters of a line that is full']);
  });

  it('that opens something is a line of its own, however full the one above is', () => {
    const each = [
      'Row 1 (RS): knit all of the stitches.',
      'Row 2: purl all stitches of this row.',
      'Rep rows 1 and 2 until 20 cm are done',
      '4. Bind off all the stitches loosely.',
      '* Knit 2, purl 2, repeat from * to en',
      'Next row (WS): purl them all once more',
      '3rd row: knit, and then bind off here.',
      'LEFT FRONT',
      'Cast on 40 sts and knit six rows more.',
    ];
    expect(lines(...each)).toEqual(each);
  });

  it('begin something new behind a wider distance than is usual, where every other one is wider as well', () => {
    // the lines stand 12 and 20 points apart in turn: 12 is usual, and half as much again is wide
    const ys = [700, 688, 668, 656, 636];
    const each = ['Cast on 40.', 'Knit 2 rows.', 'Bind off.', 'Cast on 20.', 'Knit 9 rows.'];
    const text = textOfPages([page(...each.map((text, i) => ({ text, x: 50, y: ys[i] as number })))]);
    expect(text.split('\n\n').map((block) => block.split(/\s*\n|(?<=\.) /))).toEqual([
      ['Cast on 40.', 'Knit 2 rows.'],
      ['Bind off.', 'Cast on 20.'],
      ['Knit 9 rows.'],
    ]);
  });

  it('takes a raised fraction to the words that it belongs to', () => {
    const raised = [
      { text: 'until it measures 12', x: 50, y: 700 },
      { text: '1/2', x: 172, y: 703, size: 6 },
      { text: 'in, then bind off', x: 190, y: 700 },
    ];
    expect(textOfPages([page(...raised)])).toBe('until it measures 12 1/2 in, then bind off');
  });

  it('at the foot is no page’s number where it stands in the text', () => {
    expect(lines('Number of stitches left:', '24')).toEqual(['Number of stitches left: 24']);
    expect(textOfPages([page({ text: 'Bind off.', x: 50, y: 500 }, { text: '– 3 –', x: 290, y: 25 })])).toBe(
      'Bind off.',
    );
  });
});
