import { describe, expect, it } from 'vitest';
import { finished } from '../../../src/knit/making-up/finished.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { dataSaid, standing, stepSaid } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';
import {
  cardigan,
  cardiganBands,
  drop,
  fromTheTop,
  indented,
  raglan,
  raglanBand,
  shortRows,
} from './shapes.ts';

/* Reckoned by hand: a stitch of stocking stitch is 4 mm by 3 mm, of rib 2 mm by 5 mm; each seam takes a stitch of either edge. */
const even = (count: number) => `{first ${count} second ${count} difference 0 oneMoreEvery 0}`;

function of(...pieces: readonly Recipe[]) {
  const garment = standing(...pieces);
  const made = makingUpOf(garment);
  return { steps: made.steps.map(stepSaid), finished: dataSaid(finished(made.worked, garment)) };
}

describe('the steps of the making up of', () => {
  it.each([
    [
      'a pullover with set-in sleeves and a neckband',
      [back, front, sleeve, neckband],
      [
        'block Back: kind block piece Back makes 1 widthMm 120 heightMm 68',
        'block Front: kind block piece Front makes 1 widthMm 120 heightMm 71',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 64 heightMm 52',
        `shoulders: kind shoulders back Back front Front stitches ${even(6)} seams 1 side right how mattress`,
        'pick up Neckband: kind pick up band Neckband edges [along left front neck stitches 5 along middle of the front neck stitches 4 along right front neck stitches 5 along back neck stitches 8] ratio {stitches 3 rows 4} total 22',
        `close Neckband: kind close band Neckband rows 3 seam {of shoulder line left back both ${even(6)} how mattress}`,
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 88.8 armholeMm 76.8 markerRows 8 markerMm 24 on Back marksMm [38 44 50 56] quarters [2 4 6] underarm {stitches 3 rows 0}',
        `side seams: kind side seams back Back front Front rows ${even(10)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 10',
        'ends: kind ends',
      ],
    ],
    [
      'a drop shoulder: its straight sleeve tells how deep',
      drop,
      [
        'block Back: kind block piece Back makes 1 widthMm 80 heightMm 36',
        'block Front: kind block piece Front makes 1 widthMm 80 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 40 heightMm 18',
        `shoulders: kind shoulders back Back front Front stitches ${even(7)} seams 2 how mattress`,
        'neck edge: kind neck edge edges [along side of neck times 2 rows 4 ratio {stitches 3 rows 4} stitches 3 along front neck times 1 stitches 4 along back neck times 1 stitches 6] total 16',
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 32.5 armholeMm 30 markerRows 5 markerMm 15 on Back marksMm [21 24.8 28.5 32.3] quarters [1 3 4] underarm {stitches 0 rows 0}',
        `side seams: kind side seams back Back front Front rows ${even(7)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 6',
        'ends: kind ends',
      ],
    ],
    [
      'an indented sleeve: three rows of its sides go into the corner',
      indented,
      [
        'block Back: kind block piece Back makes 1 widthMm 96 heightMm 36',
        'block Front: kind block piece Front makes 1 widthMm 96 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 40 heightMm 18',
        `shoulders: kind shoulders back Back front Front stitches ${even(7)} seams 2 how mattress`,
        'neck edge: kind neck edge edges [along side of neck times 2 rows 4 ratio {stitches 3 rows 4} stitches 3 along front neck times 1 stitches 4 along back neck times 1 stitches 6] total 16',
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 49.3 armholeMm 52 markerRows 6 markerMm 18 on Back marksMm [18 22.5 27 31.5] quarters [2 3 5] underarm {stitches 2 rows 3}',
        `side seams: kind side seams back Back front Front rows ${even(6)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 3',
        'ends: kind ends',
      ],
    ],
    [
      'a raglan',
      raglan,
      [
        'block Back: kind block piece Back makes 1 widthMm 88 heightMm 36',
        'block Front: kind block piece Front makes 1 widthMm 88 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 56 heightMm 36',
        `set in sleeves: kind raglan sleeve Sleeve seams 4 rows ${even(8)} underarm {stitches 2 rows 0}`,
        'neck edge: kind neck edge edges [along side of neck times 2 rows 4 ratio {stitches 3 rows 4} stitches 3 along front neck times 1 stitches 10 along back neck times 1 stitches 12] total 28',
        `side seams: kind side seams back Back front Front rows ${even(4)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 4',
        'ends: kind ends',
      ],
    ],
    [
      'a raglan with a neckband',
      [...raglan, raglanBand],
      [
        'block Back: kind block piece Back makes 1 widthMm 88 heightMm 36',
        'block Front: kind block piece Front makes 1 widthMm 88 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 56 heightMm 36',
        `set in sleeves: kind raglan sleeve Sleeve seams 3 waits left back rows ${even(8)} underarm {stitches 2 rows 0}`,
        'pick up Neckband: kind pick up band Neckband edges [along left sleeve top stitches 4 along left front neck stitches 7 along centre front stitches 2 along right front neck stitches 7 along right sleeve stitches 4 along back neck stitches 12] ratio {stitches 3 rows 4} total 36',
        `close Neckband: kind close band Neckband rows 3 seam {of raglan line left back both ${even(8)}}`,
        `side seams: kind side seams back Back front Front rows ${even(4)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 4',
        'ends: kind ends',
      ],
    ],
    [
      'a cardigan of two makes of one piece',
      cardigan,
      [
        'block Back: kind block piece Back makes 1 widthMm 80 heightMm 36',
        'block Front: kind block piece Front makes 2 widthMm 40 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 40 heightMm 18',
        `shoulders: kind shoulders back Back front Front stitches ${even(8)} seams 2 how mattress`,
        'neck edge: kind neck edge edges [along side of neck times 2 rows 4 ratio {stitches 3 rows 4} stitches 3 along back neck times 1 stitches 4] total 10',
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 32.5 armholeMm 30 markerRows 5 markerMm 15 on Back marksMm [21 24.8 28.5 32.3] quarters [1 3 4] underarm {stitches 0 rows 0}',
        `side seams: kind side seams back Back front Front rows ${even(7)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 6',
        'ends: kind ends',
      ],
    ],
    [
      'a cardigan with bands',
      [...cardigan, ...cardiganBands],
      [
        'block Back: kind block piece Back makes 1 widthMm 80 heightMm 36',
        'block Front: kind block piece Front makes 2 widthMm 40 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 40 heightMm 18',
        `shoulders: kind shoulders back Back front Front stitches ${even(8)} seams 2 how mattress`,
        'pick up Neckband: kind pick up band Neckband edges [along right front neck stitches 4 along back neck stitches 4 along left front neck stitches 4] ratio {stitches 1 rows 1} total 12',
        'pick up Buttons: kind pick up band Buttons edges [along left front edge stitches 12] ratio {stitches 1 rows 1} total 12',
        'pick up Holes: kind pick up band Holes edges [along right front edge stitches 12] ratio {stitches 1 rows 1} total 12',
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 32.5 armholeMm 30 markerRows 5 markerMm 15 on Back marksMm [21 24.8 28.5 32.3] quarters [1 3 4] underarm {stitches 0 rows 0}',
        `side seams: kind side seams back Back front Front rows ${even(7)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 6',
        'ends: kind ends',
      ],
    ],
    [
      'a sleeve from the top down: every line of it the other way round',
      [back, front, fromTheTop],
      [
        'block Back: kind block piece Back makes 1 widthMm 120 heightMm 68',
        'block Front: kind block piece Front makes 1 widthMm 120 heightMm 71',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 64 heightMm 42',
        `shoulders: kind shoulders back Back front Front stitches ${even(6)} seams 2 how mattress`,
        'neck edge: kind neck edge edges [along side of neck times 2 rows 7 ratio {stitches 3 rows 4} stitches 5 along front neck times 1 stitches 4 along back neck times 1 stitches 8] total 22',
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 78.4 armholeMm 76.8 markerRows 8 markerMm 24 on Back marksMm [38 44 50 56] quarters [2 4 6] underarm {stitches 3 rows 0}',
        `side seams: kind side seams back Back front Front rows ${even(10)}`,
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 10',
        'ends: kind ends',
      ],
    ],
    [
      'shoulders in short rows lie where their turns begin',
      [shortRows, ...drop.slice(1)],
      [
        'block Back: kind block piece Back makes 1 widthMm 80 heightMm 42',
        'block Front: kind block piece Front makes 1 widthMm 80 heightMm 36',
        'block Sleeve: kind block piece Sleeve makes 2 widthMm 40 heightMm 18',
        'shoulders: kind shoulders back Back front Front stitches {first 7 second 7 difference 0 oneMoreEvery 0} seams 2 how mattress',
        'neck edge: kind neck edge edges [along side of neck times 2 rows 4 ratio {stitches 3 rows 4} stitches 3 along front neck times 1 stitches 4 along back neck times 1 stitches 6] total 16',
        'set in sleeves: kind set in sleeves sleeve Sleeve topMm 32.5 armholeMm 30 markerRows 5 markerMm 15 on Back marksMm [9 12.8 16.5 20.3] quarters [1 3 4] underarm {stitches 0 rows 0}',
        'side seams: kind side seams back Back front Front rows {first 3 second 7 difference -4 oneMoreEvery 1}',
        'sleeve seams: kind sleeve seams sleeve Sleeve rows 6',
        'ends: kind ends',
      ],
    ],
  ] as const)('%s', (_, pieces, steps) => {
    expect(of(...pieces).steps).toEqual(steps);
  });
});

describe('what it measures when it is made up, mm', () => {
  it.each([
    [
      'a pullover with set-in sleeves and a neckband',
      [back, front, sleeve, neckband],
      'chest 224 length 68 napeToCuff 88 upperArm 56 wrist 20 neck 91.8 neckWithBand 44 armhole 76.8',
    ],
    [
      'a drop shoulder: its straight sleeve tells how deep',
      drop,
      'chest 144 length 36 napeToCuff 54 upperArm 32 wrist 24 neck 66.4 neckWithBand 66.4 armhole 30',
    ],
    [
      'an indented sleeve: three rows of its sides go into the corner',
      indented,
      'chest 176 length 36 napeToCuff 54 upperArm 32 wrist 24 neck 66.4 neckWithBand 66.4 armhole 52',
    ],
    [
      'a raglan',
      raglan,
      'chest 160 length 36 napeToCuff 56 upperArm 48 wrist 48 neck 146.4 neckWithBand 146.4 armhole 71.3',
    ],
    [
      'a raglan with a neckband',
      [...raglan, raglanBand],
      'chest 160 length 36 napeToCuff 56 upperArm 48 wrist 48 neck 146.4 neckWithBand 72 armhole 71.3',
    ],
    [
      'a cardigan of two makes of one piece',
      cardigan,
      'chest 144 length 36 napeToCuff 54 upperArm 32 wrist 24 neck 44.8 neckWithBand 44.8 armhole 30',
    ],
    [
      'a cardigan with bands',
      [...cardigan, ...cardiganBands],
      'chest 159 length 36 napeToCuff 54 upperArm 32 wrist 24 neck 44.8 neckWithBand 24 armhole 30',
    ],
    [
      // its 6 stitches, 2 increases at either edge and 3 cast on at each underarm are 16, less a seam at either edge 14: 56 mm
      'a sleeve from the top down: every line of it the other way round',
      [back, front, fromTheTop],
      'chest 224 length 68 napeToCuff 78 upperArm 56 wrist 40 neck 91.8 neckWithBand 91.8 armhole 76.8',
    ],
    [
      'shoulders in short rows lie where their turns begin',
      [shortRows, ...drop.slice(1)],
      'chest 144 length 42 napeToCuff 54 upperArm 32 wrist 24 neck 66.4 neckWithBand 66.4 armhole 30',
    ],
  ] as const)('%s', (_, pieces, measures) => {
    expect(of(...pieces).finished).toBe(measures);
  });
});

/* Common practice, no published source: a band worked in rows is begun where its ends meet, at a seam that waits for them. */
describe('a neckband that is picked up from another seam on', () => {
  const begunAt = (band: Recipe, along: string): Recipe => ({
    ...band,
    parts: band.parts.map((one) => {
      const { pickUp = [] } = 'pickUp' in one.from ? one.from : {};
      const at = pickUp.findIndex((edge) => edge.along === along);
      return { ...one, from: { pickUp: [...pickUp.slice(at), ...pickUp.slice(0, at)] } };
    }),
  });
  const joined = (...pieces: readonly Recipe[]) => {
    const { steps, troubles } = makingUpOf(standing(...pieces));
    const said = steps.filter(({ kind }) => ['shoulders', 'raglan', 'close'].includes(kind)).map(stepSaid);
    return [...said, ...troubles.flatMap(({ kind }) => (kind === 'not there yet' ? [kind] : []))];
  };

  it('at the right shoulder: that one waits, and the left one is sewn first', () => {
    expect(joined(back, front, sleeve, begunAt(neckband, 'back neck'))).toEqual([
      `shoulders: kind shoulders back Back front Front stitches ${even(6)} seams 1 side left how mattress`,
      `close Neckband: kind close band Neckband rows 3 seam {of shoulder line right back both ${even(6)} how mattress}`,
    ]);
  });

  it.each([
    ['left sleeve top', 'left back'],
    ['left front neck', 'left front'],
    ['right sleeve', 'right front'],
    ['back neck', 'right back'],
  ])('of a raglan at its %s: the %s line waits', (along, line) => {
    expect(joined(...raglan, begunAt(raglanBand, along))).toEqual([
      `set in sleeves: kind raglan sleeve Sleeve seams 3 waits ${line} rows ${even(8)} underarm {stitches 2 rows 0}`,
      `close Neckband: kind close band Neckband rows 3 seam {of raglan line ${line} both ${even(8)}}`,
    ]);
  });

  it('at the middle of the front: both shoulders are sewn first', () => {
    expect(joined(back, front, sleeve, begunAt(neckband, 'right front neck'))).toEqual([
      `shoulders: kind shoulders back Back front Front stitches ${even(6)} seams 2 how mattress`,
      'close Neckband: kind close band Neckband rows 3',
    ]);
  });
});
