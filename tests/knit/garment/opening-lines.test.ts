import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { drafted, even } from './spelled.ts';

/*
 * Where the drawings of a draft open, mm from the middle and the lower edge, reckoned by hand from `spelled.ts`: a stitch is 5 mm
 * wide and a pair of rows 8 mm high; the neck of the front lies at 480 mm, that of the back at 536.
 */
type Opening = NonNullable<Design['neck']['opening']>;
const opened = (opening: Opening, openingMm: number, more: Partial<Design> = {}) =>
  Object.fromEntries(
    drafted({ ...more, neck: { ...even.neck, opening, openingMm } }).outlines.map(({ piece, openings }) => [
      piece,
      openings,
    ]),
  );
const none = { Back: undefined, Front: undefined, Sleeve: undefined };

describe('a garment opens', () => {
  it('behind, in the middle of its back, so far below the neck', () => {
    const slit = (from: number) => ({
      ...none,
      Back: [
        [
          [0, from],
          [0, 536],
        ],
      ],
    });
    expect(opened('back', 80)).toEqual(slit(456));
    expect(opened('back', 120)).toEqual(slit(416));
  });

  it('at the top of a raglan’s left line behind, row by row', () => {
    // 19 stitches of half the back at the pair of rows that ends at 528 mm, 18, 17 twice, 16 at its top
    const line = [
      [-95, 528],
      [-90, 536],
      [-85, 544],
      [-85, 552],
      [-80, 560],
    ];
    const raglan = { armhole: 'raglan' } as const;
    expect(opened('raglan seam', 40, raglan)).toEqual({ ...none, Back: [line] });
    expect(opened('raglan seam', 16, raglan)).toEqual({ ...none, Back: [line.slice(3)] });
  });

  it('in front between two bands: along both edges of the four stitches bound off below', () => {
    const edge = (x: number, from: number) => [
      [x, from],
      [x, 480],
    ];
    expect(opened('placket', 80)).toEqual({ ...none, Front: [edge(10, 400), edge(-10, 400)] });
    expect(opened('placket', 160)).toEqual({ ...none, Front: [edge(10, 320), edge(-10, 320)] });
  });

  it('along the wearer’s left shoulder, at the left of the back and at the right of the front, or along both', () => {
    const shoulder = [
      [170, 536],
      [145, 536],
      [145, 544],
      [120, 544],
      [120, 552],
      [100, 552],
      [100, 560],
      [80, 560],
    ];
    const mirrored = shoulder.map(([x = 0, y = 0]) => [-x, y]);
    expect(opened('left shoulder', 0)).toEqual({ ...none, Back: [mirrored], Front: [shoulder] });
    expect(opened('envelope', 0)).toEqual({
      ...none,
      Back: [shoulder, mirrored],
      Front: [shoulder, mirrored],
    });
  });

  it('nowhere where it has no opening', () => {
    expect(opened('none', 80)).toEqual(none);
  });
});
