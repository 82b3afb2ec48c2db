import { describe, expect, it } from 'vitest';
import { type Finished, finished } from '../../../src/knit/making-up/finished.ts';
import type { Joint, SeamKind, Stretch } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { groups, off, part, piece, section, slant, standing } from './by-hand.ts';
import { armholeBand, back, front, neckband, sleeve } from './pullover.ts';

/* Measures of a few seams that are stated one by one, reckoned on paper: 4 mm a stitch, 3 mm a row; a seam takes a stitch of each edge. */

const along = (name: string, edge: Stretch['edge'], more: Partial<Stretch> = {}): Stretch => ({
  piece: name,
  make: 1,
  part: name,
  edge,
  ...more,
});
const seam = (of: SeamKind, a: Stretch, b: Stretch): Joint => ({
  kind: 'seam',
  of,
  a: [a],
  b: [b],
  how: 'mattress',
});
const measured = (pieces: readonly Recipe[], joints: readonly Joint[]): Finished => {
  const garment = standing(...pieces);
  return finished(workJoints(joints, garment).worked, garment);
};
const proposed = (...pieces: readonly Recipe[]): Finished => {
  const garment = standing(...pieces);
  return finished(makingUpOf(garment).worked, garment);
};

const panel = (name: string, role: 'back' | 'front', ...at: readonly number[]) =>
  piece(name, role, [part(name, 20, [section('a', 12, slant('both', 1, ...at))])]);

describe('round the body', () => {
  const sides = (rows?: { readonly first: number; readonly last: number }) =>
    (['left', 'right'] as const).map((edge) =>
      seam(
        'side',
        along('Back', edge, rows && { rows }),
        along('Front', edge === 'left' ? 'right' : 'left', rows && { rows }),
      ),
    );

  it('is that of the row with which the side seam ends, whatever is added in the next', () => {
    const widening = [panel('Back', 'back', 3, 7), panel('Front', 'front', 3, 7)];
    // 20 and 2 in row 3; two more in row 7
    expect(measured(widening, sides({ first: 1, last: 6 })).chest).toBe(2 * (22 - 2) * 4);
    expect(measured(widening, sides({ first: 1, last: 7 })).chest).toBe(2 * (24 - 2) * 4);
    expect(measured(widening, sides()).chest).toBe(2 * (24 - 2) * 4);
    expect(measured(widening, sides({ first: 1, last: 1 })).chest).toBe(2 * (20 - 2) * 4);
  });

  it('of half a front is with what its neck has taken in the rows of that seam, its last one too', () => {
    const rear = piece('Back', 'back', [part('Back', 20, [section('a', 12)])]);
    const half = piece(
      'Front',
      'front',
      [part('Front', 10, [section('a', 12, slant('left', -1, 3, 7, 9))])],
      {
        makes: 2,
        mirrored: true,
      },
    );
    const seams = (last: number) => [
      seam(
        'side',
        along('Back', 'left', { rows: { first: 1, last } }),
        along('Front', 'right', { rows: { first: 1, last } }),
      ),
      seam(
        'side',
        along('Back', 'right', { rows: { first: 1, last } }),
        along('Front', 'left', { make: 2, rows: { first: 1, last } }),
      ),
    ];
    for (const last of [2, 3, 6, 7, 8])
      expect(measured([rear, half], seams(last)).chest).toBe(18 * 4 + 2 * 9 * 4);
  });
});

describe('from the nape to the cuff', () => {
  const capped = piece(
    'Sleeve',
    'sleeve',
    [part('Sleeve', 12, [section('a', 4), section('b', 6, ...groups(1, 2), slant('both', -1, 3, 5))])],
    { makes: 2 },
  );

  it('of a back that is parted below its underarms: both of its halves, as they have grown', () => {
    const half = (edge: 'right' | 'left') =>
      part(edge === 'right' ? 'Right' : 'Left', { part: 'Body', stitches: 12, edge }, [
        section('b', 4, slant(edge, 1, 3)),
        section('c', 8, off(edge, edge === 'right' ? 1 : 2, 2)),
      ]);
    const rear = piece('Back', 'back', [
      part('Body', 24, [section('a', 4)], 'split'),
      half('right'),
      half('left'),
    ]);
    const fore = piece('Front', 'front', [
      part('Front', 24, [
        section('a', 4),
        section('b', 4, slant('both', 1, 3)),
        section('c', 8, ...groups(1, 2)),
      ]),
    ]);
    // 13 of either half, less two at each underarm: 22, a stitch of each edge in the seams; ten rows of sleeve
    expect(proposed(rear, fore, capped).napeToCuff).toBe((22 - 2) * 2 + 10 * 3);
    expect(proposed(fore, capped).napeToCuff).toBeUndefined();
  });

  it('is none of sleeves that are sewn to no back, or not sewn in', () => {
    const straightBack = panel('Back', 'back');
    const onFront = [seam('armhole', along('Sleeve', 'top'), along('Front', 'right'))];
    expect(measured([panel('Front', 'front'), capped], onFront).napeToCuff).toBeUndefined();
    const side = seam('side', along('Back', 'left'), along('Front', 'right'));
    expect(measured([straightBack, panel('Front', 'front'), capped], [side]).napeToCuff).toBeUndefined();
    expect(measured([straightBack, panel('Front', 'front'), capped], [side, ...onFront]).napeToCuff).toBe(
      (20 - 2) * 2 + 30,
    );
    expect(measured([straightBack, panel('Front', 'front')], [side]).napeToCuff).toBeUndefined();
  });
});

describe('round the neck', () => {
  const SLANT = Math.hypot(4, 6);
  // two slants beside each shoulder of two rows and three; four stitches between, eight behind
  const neck = 4 * SLANT + 5 * 3 + 4 * 4 + 8 * 4;

  it('is the edge that is left free, or that a band is picked up along, whatever the band is called', () => {
    expect(proposed(back, front).neck).toBeCloseTo(neck, 6);
    expect(proposed(back, front, sleeve, neckband).neck).toBeCloseTo(neck, 6);
    expect(proposed(back, front, sleeve, { ...neckband, role: 'other' }).neck).toBeCloseTo(neck, 6);
  });

  it('is no armhole, and no edge of a band', () => {
    expect(proposed(back, front, armholeBand).neck).toBeCloseTo(neck, 6);
    expect(proposed(back, front, neckband, armholeBand).neck).toBeCloseTo(neck, 6);
    expect(proposed(back, front, neckband, armholeBand).armhole).toBeCloseTo(
      proposed(back, front).armhole ?? 0,
      6,
    );
  });
});
