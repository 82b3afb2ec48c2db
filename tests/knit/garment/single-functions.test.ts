import { describe, expect, it } from 'vitest';
import { buttonholePlaces } from '../../../src/knit/garment/buttonholes.ts';
import { capFor, halfCapMm, knitCap, LEAST_PAIRS, toleranceMm } from '../../../src/knit/garment/cap.ts';
import { capCurve } from '../../../src/knit/garment/curves.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { shoulderEndFacts, shoulderFacts } from '../../../src/knit/garment/kinds/shoulders.ts';
import { withRoomForShaping } from '../../../src/knit/garment/narrow-rows.ts';
import { type Neck, withOpening } from '../../../src/knit/garment/neck.ts';
import { withHeadThrough } from '../../../src/knit/garment/neck-for-head.ts';
import { holdsShoulders, withHeldShoulders, withShortRows } from '../../../src/knit/garment/short-rows.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { off, part, section, slant } from '../making-up/by-hand.ts';
import { drafted, even, recipeSaid } from './spelled.ts';

/** Single steps of a draft over recipes that are small enough to be reckoned in the head. */

const recipe = (parts: readonly PartRecipe[], mirrored = false): Recipe => ({
  name: 'Back',
  makes: mirrored ? 2 : 1,
  mirrored,
  parts,
});

const turn = (edge: 'right' | 'left', row: number, ...stitches: readonly number[]): Shaping =>
  ({
    ...off(edge, row, ...stitches),
    kind: 'turn',
  }) as Shaping;

const shaping = ({ parts }: Recipe): readonly (readonly Shaping[])[] =>
  parts.map(({ sections }) => sections.flatMap((one: Section) => one.shaping));

describe('shoulders in short rows', () => {
  const steps = [off('right', 1, 5, 5), off('left', 2, 5, 5)];
  const slope = section('shoulder', 4, ...steps);

  it('turn where the row ends: one later at the right edge, one earlier at the left', () => {
    const made = withShortRows(recipe([part('Back', 40, [section('body', 2, ...steps), slope])]));
    expect(shaping(made)).toEqual([[...steps, turn('right', 2, 5, 5), turn('left', 1, 5, 5)]]);
  });

  it('of an open front lie at its right edge, of a shoulder where it was parted, of a middle nowhere', () => {
    expect(shaping(withShortRows(recipe([part('Front', 40, [slope])], true)))).toEqual([
      [turn('right', 2, 5, 5), steps[1]],
    ]);
    const side = (edge: 'right' | 'middle' | 'left') =>
      part(edge, { part: 'Body', edge, stitches: 20 }, [slope]);
    const body = part('Body', 60, [section('body', 2)], 'split');
    expect(shaping(withShortRows(recipe([body, side('right'), side('middle'), side('left')])))).toEqual([
      [],
      [turn('right', 2, 5, 5), steps[1]],
      steps,
      [steps[0], turn('left', 1, 5, 5)],
    ]);
  });

  it('hand on to a shoulder what the body had bound off there, and to a middle nothing', () => {
    const body = part(
      'Body',
      60,
      [section('shoulder', 4, off('right', 1, 5, 4), off('left', 2, 3))],
      'split',
    );
    const side = (edge: 'right' | 'middle' | 'left', stitches: number) =>
      part(edge, { part: 'Body', edge, stitches }, [section('shoulder', 2)]);
    const made = withShortRows(recipe([body, side('right', 11), side('middle', 20), side('left', 17)]));
    expect(made.parts.slice(1).map(({ from }) => 'part' in from && from.stitches)).toEqual([20, 20, 20]);
  });

  it('leave a decrease the stitches that it is worked over, or lay it at the edge itself', () => {
    // a decrease beside an edge stitch takes three: 10 − 4 leave six, 9 − 6 three, 8 − 6 two
    const narrow = (third: number) =>
      withRoomForShaping(
        part('side', 10, [section('shoulder', 4, turn('left', 1, 4, third), slant('right', -1, 1, 3))]),
        0,
      ).sections[0]?.shaping.slice(1);
    expect(narrow(2)).toEqual([slant('right', -1, 1, 3)]);
    const atEdge = { ...slant('right', -1, 3), inset: 0 };
    expect(narrow(3)).toHaveLength(2);
    expect(narrow(3)).toEqual(expect.arrayContaining([slant('right', -1, 1), atEdge]));
  });

  it('on every row, the even ones too, and both edges at once', () => {
    const laid = (edge: 'right' | 'both', stitches: number) => {
      const slanting = { ...slant('right', -1, 2), edge } as Shaping;
      const shoulder = section('shoulder', 2, turn('right', 2, stitches), slanting);
      return withRoomForShaping(part('side', 10, [shoulder]), 0).sections[0]?.shaping.slice(1);
    };
    const [first] = [slant('right', -1, 2)];
    // three for one edge, six for both
    expect(laid('right', 7)).toEqual([first]);
    expect(laid('right', 8)).toEqual([{ ...first, inset: 0 }]);
    expect(laid('both', 4)).toEqual([{ ...first, edge: 'both' }]);
    expect(laid('both', 5)).toEqual([{ ...first, edge: 'both', inset: 0 }]);
  });

  it('have no room to give to a band, nor to what no part was parted from', () => {
    const band = part('band', { pickUp: [{ along: 'edge', stitches: 4 }] }, [
      section('shoulder', 2, turn('left', 1, 3), slant('left', -1, 1)),
    ]);
    expect(withRoomForShaping(band, 3)).toBe(band);
    const orphan = part('side', { part: 'Nobody', edge: 'right', stitches: 20 }, [section('shoulder', 2)]);
    expect(withShortRows(recipe([orphan])).parts[0]?.from).toEqual(orphan.from);
  });

  it('begin with what the part before them left unworked, until a section without a turn', () => {
    const made = (first: string, asleep: number) =>
      withRoomForShaping(
        part('side', { part: 'Body', edge: 'right', stitches: 8 }, [
          section('shoulder', 2, ...(first === 'turns' ? [turn('left', 1, 0)] : []), slant('left', -1, 1)),
        ]),
        asleep,
      ).sections[0]?.shaping.at(-1);
    expect(made('turns', 5)).toEqual(slant('left', -1, 1));
    expect(made('turns', 6)).toEqual({ ...slant('left', -1, 1), inset: 0 });
    expect(made('does not', 6)).toEqual(slant('left', -1, 1));
  });
});

describe('shoulders that rest', () => {
  it('are those of a panel, or of the sides that it was parted into', () => {
    const ends = (one: Recipe) => withHeldShoulders(one).parts.map(({ end }) => end);
    expect(ends(recipe([part('Back', 40, [])]))).toEqual(['hold']);
    const side = (edge: 'right' | 'middle' | 'left') => part(edge, { part: 'Body', edge, stitches: 20 }, []);
    expect(
      ends(recipe([part('Body', 60, [], 'split'), side('right'), side('middle'), side('left')])),
    ).toEqual(['split', 'hold', 'bind off', 'hold']);
    // what is cast on beside them has no shoulder, be it bound off; nor is anything held that is not bound off
    expect(ends(recipe([part('Flap', 10, []), part('Body', 60, [], 'split'), side('right')]))).toEqual([
      'bind off',
      'split',
      'hold',
    ]);
    expect(ends(recipe([part('Back', 40, [], 'split')]))).toEqual(['split']);
  });

  it('only after short rows, where they are to be joined stitch to stitch, and where there are shoulders', () => {
    const holds = (changes: Partial<Design>) => holdsShoulders({ ...even, ...changes });
    const joined = { shoulder: 'short rows', shoulderEnd: 'three-needle' } as const;
    expect(holds(joined)).toBe(true);
    expect(holds({ ...joined, shoulderEnd: 'grafted' })).toBe(true);
    expect(holds({ ...joined, shoulderEnd: 'bind off' })).toBe(false);
    expect(holds({ ...joined, shoulder: 'steps' })).toBe(false);
    expect(holds({ ...joined, armhole: 'raglan' })).toBe(false);
    expect(holds({})).toBe(false);
  });

  it('are joined as they end: bound off they are sewn', () => {
    expect(shoulderEndFacts()).toEqual({ rests: false, seam: 'mattress' });
    expect(shoulderEndFacts('bind off')).toEqual({ rests: false, seam: 'mattress' });
    expect(shoulderEndFacts('three-needle')).toEqual({ rests: true, seam: 'three-needle' });
    expect(shoulderEndFacts('grafted')).toEqual({ rests: true, seam: 'grafted' });
    expect(
      [shoulderFacts(), shoulderFacts('steps'), shoulderFacts('short rows')].map(({ turns }) => turns),
    ).toEqual([false, false, true]);
  });
});

describe('a neck parted below its beginning, 5 mm a stitch and 8 mm a pair of rows', () => {
  const neck = (middle: number): Neck => ({
    edge: {
      name: 'neck',
      from: 10,
      gauge: { stitches: 20, rows: 25 },
      at: [4, 5],
      steps: [{ pair: 1, by: -1, as: 'single' }],
      worst: { stitches: 0.25, pair: 1 },
      curve: [
        [
          [15, 0],
          [25, 16],
        ],
      ],
    },
    middle,
  });

  it('stands so long at its slit, binds off what lies level, and goes on as it was', () => {
    expect(withOpening(neck(6), 2, 1)).toEqual({
      middle: 2,
      edge: {
        name: 'neck',
        from: 8,
        gauge: { stitches: 20, rows: 25 },
        at: [1, 1, 4, 5],
        steps: [
          { pair: 2, by: -2, as: 'group' },
          { pair: 3, by: -1, as: 'single' },
        ],
        worst: { stitches: 0.25, pair: 3 },
        curve: [
          [
            [5, 0],
            [5, 16],
          ],
          [
            [15, 16],
            [25, 32],
          ],
        ],
      },
    });
  });

  it('where one stitch lies level it is decreased, and where none does nothing is', () => {
    expect(withOpening(neck(4), 2, 1).edge.steps[0]).toEqual({ pair: 2, by: -1, as: 'single' });
    expect(withOpening(neck(2), 2, 1).edge.steps).toEqual([{ pair: 3, by: -1, as: 'single' }]);
    expect(withOpening(neck(1), 2, 0.5).middle).toBe(1);
  });
});

describe('a neck for its head', () => {
  const { body, neck } = even;
  const baby = { ...body, chest: 480, head: 330, crossBack: 190, armholeDepth: 100 };
  const small = { ...neck, widthMm: 80, depthMm: 30, backDepthMm: 15 };
  const made = (changes: Partial<Design>) =>
    withHeadThrough({ ...even, body: baby, neck: small, ...changes }).neck;

  it('of a baby is half as deep as the armhole and opens behind, at a chest under 510 mm', () => {
    expect(made({})).toMatchObject({ opening: 'back', widthMm: 80, depthMm: 50 });
    expect(made({ body: { ...baby, chest: 509 } }).opening).toBe('back');
    const wider = made({ body: { ...baby, chest: 510 } });
    expect(wider.opening).toBeUndefined();
    expect(wider.widthMm).toBeGreaterThan(80);
  });

  it('does not open behind where the back has no curve, nor on a raglan, nor where the front is open', () => {
    for (const changes of [{ neck: { ...small, backDepthMm: 0 } }, { armhole: 'raglan' as const }]) {
      expect(made(changes).opening).toBeUndefined();
      expect(made(changes).widthMm).toBeGreaterThan(80);
    }
    expect(made({ kind: 'cardigan' })).toEqual(small);
  });

  it('stays as deep as it is where it is deeper, has a point, or is not a child’s', () => {
    expect(made({ neck: { ...small, depthMm: 60 } }).depthMm).toBe(60);
    expect(made({ neck: { ...small, shape: 'V' } }).depthMm).toBe(30);
    expect(made({ body: { ...baby, chest: 699 } }).depthMm).toBe(50);
    expect(made({ body: { ...baby, chest: 700 } }).depthMm).toBe(30);
  });

  it('that the head passes stays as it is', () => {
    expect(made({ body: { ...baby, chest: 700, head: 100 } })).toEqual(small);
    expect(withHeadThrough(even)).toEqual(even);
  });

  it('is no wider than leaves a shoulder: 62 in the hundred of the cross back; then it opens', () => {
    const big = made({ body: { ...baby, chest: 600, head: 700 } });
    expect(big.widthMm).toBe(Math.floor(0.62 * 190));
    expect(big.opening).toBe('back');
  });
});

describe('a cuff that is reached from above, 80 stitches to 42', () => {
  const topDown = (lengthMm: number) => {
    const sleeve = { ...even.sleeve, direction: 'top down', shape: 'after cuff', lengthMm } as const;
    const ease = { ...even.ease, wrist: 60, upperArm: 0 };
    const { recipes } = drafted({ armhole: 'drop', ease, sleeve });
    return recipes.filter(({ role }) => role === 'sleeve').flatMap(recipeSaid)[1];
  };

  // 40 mm of cuff are 10 rows of 4 mm; so are the rows above it
  it('has its change of count in the two rows above it, where there are more than four', () => {
    expect(topDown(64)).toBe(
      'Sleeve = 80; sleeve 4 stocking 4; sleeve 2 stocking 4, -38 across 1; cuff 10 rib 2x2 3; bind off',
    );
    expect(topDown(72)).toContain('sleeve 6 stocking 4; sleeve 2 stocking 4, -38 across 1; cuff 10');
  });

  it('in its own first row, where there are four', () => {
    expect(topDown(56)).toBe('Sleeve = 80; sleeve 4 stocking 4; cuff 10 rib 2x2 3, -38 across 1; bind off');
  });
});

describe('a figure in a warning', () => {
  it('is the nearest whole millimetre: 29 pairs of rows at 27 to 100 mm are 214.8', () => {
    const { warnings } = drafted({
      gauges: { ...even.gauges, stocking: { stitches: 20, rows: 27 } },
      body: { ...even.body, armholeDepth: 195 },
      ease: { ...even.ease, upperArm: 130 },
    });
    // 280 and 130 mm are 82 stitches of 5 mm
    expect(warnings).toMatchObject([
      { code: 'cap out of proportion', figures: { depthMm: 215, widthMm: 410 }, overruled: false },
    ]);
  });
});

describe('a cap of 60 stitches, 3 bound off at each underarm, to 16, 5 mm a stitch and 8 mm a pair of rows', () => {
  const wish = {
    gauge: { stitches: 20, rows: 25 },
    wide: 60,
    step: 3,
    top: 16,
    isTopDown: false,
    endsSquare: false,
  };

  it('binds off, stands upright for one pair of rows, and ends level at its height', () => {
    const { curve, knitted } = knitCap(wish, 15);
    expect(curve.slice(0, 2)).toEqual([
      [
        [150, 0],
        [135, 0],
      ],
      [
        [135, 0],
        [135, 8],
      ],
    ]);
    expect(curve[2]?.[0]).toEqual([135, 8]);
    expect(curve.at(-1)).toEqual([
      [40, 120],
      [0, 120],
    ]);
    expect(knitted.at).toHaveLength(15);
    expect(knitted.at[0]).toBe(27);
    expect(knitted.steps[0]).toEqual({ pair: 0, by: -3, as: 'group' });
  });

  it('is sewn to what is a row and a stitch off, and has three pairs of rows at least', () => {
    expect(toleranceMm(wish.gauge)).toBe(9);
    expect(LEAST_PAIRS).toBe(3);
  });

  it('fits an upright armhole of 20 pairs of rows by its edge, with the ease in the hundred', () => {
    const armhole = {
      name: 'armhole',
      from: 0,
      gauge: wish.gauge,
      at: Array.from({ length: 20 }, () => 34),
      steps: [],
      worst: { stitches: 0, pair: 0 },
      curve: [
        [
          [170, 0],
          [170, 160],
        ],
      ],
    } as const;
    for (const ease of [0, 5, 10]) {
      const cap = capFor(wish, armhole, ease);
      expect(cap?.offMm).toBeLessThan(0.01);
      // what the stairs of the cap measure is within what may be sewn together of 160 mm and its ease
      expect(Math.abs(halfCapMm(wish, cap?.pairs ?? 0) - 1.6 * (100 + ease)), `${ease}`).toBeLessThan(9);
    }
    // no wider at its foot than at its top, or flat and still longer than the armhole
    expect(capFor({ ...wish, top: 54 }, armhole, 0)).toBeUndefined();
    expect(capFor({ ...wish, top: 53 }, armhole, 0)).toBeDefined();
    expect(capFor({ ...wish, wide: 90 }, armhole, 0)).toBeUndefined();
  });
});

describe('curves', () => {
  it('a cap runs level at both ends for two fifths of its width; where its top is asked for it arrives aslant', () => {
    // 200 mm less 20 at the foot, 40 at the top: 140 between, handles of 56; 21 in the hundred of 192 mm are 40.32
    const cap = (isSquare?: boolean) => capCurve(200, 20, 40, 200, 8, isSquare)[2];
    expect(cap()).toEqual([
      [180, 8],
      [124, 8],
      [96, 200],
      [40, 200],
    ]);
    expect(cap(true)).toEqual([
      [180, 8],
      [124, 8],
      [96, expect.closeTo(159.68, 6)],
      [40, 200],
    ]);
  });
});

describe('button holes', () => {
  const wish = {
    fabric: 'garter',
    gauge: { stitches: 20, rows: 30 },
    stitches: 90,
    over: 80,
    buttons: 4,
    buttonMm: 18,
  } as const;

  it('lie along the part of the band that is meant: from its right end, or to its left one', () => {
    // 12.5 mm are 2.5 stitches, three; holes of three: from 3 to 80 - 3 - 3 in three stretches
    expect(buttonholePlaces({ ...wish, at: 'right' })).toEqual([3, 27, 50, 74]);
    expect(buttonholePlaces({ ...wish, at: 'left' })).toEqual([13, 37, 60, 84]);
  });

  it('one lies in the middle, none is none', () => {
    expect(buttonholePlaces({ ...wish, at: 'right', buttons: 1 })).toEqual([39]);
    expect(buttonholePlaces({ ...wish, at: 'right', buttons: 0 })).toBeUndefined();
  });
});
