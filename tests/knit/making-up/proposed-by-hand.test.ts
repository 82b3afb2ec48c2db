import { describe, expect, it } from 'vitest';
import { finished } from '../../../src/knit/making-up/finished.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { groups, lineSaid, off, part, piece, section, slant, standing, workedSaid } from './by-hand.ts';
import { cardigan, drop, raglan } from './shapes.ts';

const band = (name: string, along: string): Recipe =>
  piece(name, 'other', [part(name, { pickUp: [{ along, stitches: 4 }] }, [section('body', 2)])]);

/** What a band is picked up along, by the words that say it. */
function along(pieces: readonly Recipe[], words: string): string {
  const joints = proposed(standing(...pieces, band('Band', words)));
  const found = joints.find((joint) => joint.kind === 'pick up');
  return found?.kind === 'pick up' ? found.along.map(({ line }) => lineSaid(line)).join() : 'none';
}

const [back, front, sleeve] = drop as [Recipe, Recipe, Recipe];

/* Words as patterns and the editor have them, English and German; common practice, no published source. */
describe('what a band is picked up along', () => {
  it.each([
    ['left front neck', 'Right left turned'],
    ['Linker Halsausschnitt', 'Right left turned'],
    ['RIGHT FRONT NECK', 'Left right'],
    ['rechte vordere Halskante', 'Left right'],
    ['right neck', 'Left right'],
    ['middle of the front neck', 'Middle top'],
    ['centre', 'Middle top'],
    ['center front', 'Middle top'],
    ['Point of the V', 'Middle top'],
    ['vordere Mitte', 'Middle top'],
    ['Spitze', 'Middle top'],
    ['Back neck', 'Back top stitches 7-13'],
    ['rückwärtiger Halsausschnitt', 'Back top stitches 7-13'],
    ['hinterer HALS', 'Back top stitches 7-13'],
    ['left front armhole', 'Body right rows 8-8, Right right'],
    ['Armloch vorn', 'Body right rows 8-8, Right right'],
    ['back armhole', 'Back left rows 8-12 turned'],
    ['hinterer ARMAUSSCHNITT', 'Back left rows 8-12 turned'],
    ['LEFT FRONT SHOULDER', 'Right top'],
    ['linke vordere SCHULTER', 'Right top'],
    ['Schulter links', 'Right top'],
    ['left back shoulder', ''],
    ['shoulder', ''],
    ['LINKS VORN AM HALS', 'Right left turned'],
    ['VORDERER rechter Ausschnitt', 'Left right'],
    ['MITTE', 'Middle top'],
    ['front neck', ''],
    ['the hem', ''],
    ['back', ''],
    ['neck', ''],
  ])('of a pullover: %s', (words, line) => {
    expect(along(drop, words)).toBe(line);
  });

  it.each([
    ['left front edge', 'Front left before shaping turned'],
    ['linke Kante', 'Front left before shaping turned'],
    ['right EDGE', 'Front 2 right before shaping'],
    ['rechte vordere KANTE', 'Front 2 right before shaping'],
    ['front edge', ''],
  ])('of a cardigan: %s', (words, line) => {
    expect(along(cardigan, words)).toBe(line);
  });

  it.each([
    ['left sleeve top', 'Sleeve top'],
    ['rechter Ärmel', 'Sleeve 2 top'],
    ['LINKER ÄRMEL', 'Sleeve top'],
    ['Right SLEEVE', 'Sleeve 2 top'],
    ['SLEEVE', ''],
  ])('of a raglan: %s', (words, line) => {
    expect(along(raglan, words)).toBe(line);
  });

  it('of a front that is not parted: its whole top between the shoulders', () => {
    const whole = piece('Front', 'front', [part('Front', 20, [section('a', 12)])]);
    expect(along([back, whole, sleeve], 'front neck')).toBe('Front top');
    expect(along([back, whole, sleeve], 'Ausschnitt vorn')).toBe('Front top');
    expect(along([back, whole, sleeve], 'left front neck')).toBe('');
  });
});

describe('a back that is parted below its neck', () => {
  const half = (name: string, edge: 'right' | 'left') =>
    part(name, { part: 'Body', stitches: 10, edge }, [
      section('b', 4),
      section('c', 4, slant(edge === 'right' ? 'left' : 'right', -1, 1, 3)),
    ]);
  const rear = piece('Back', 'back', [
    part('Body', 20, [section('a', 4)], 'split'),
    half('Right', 'right'),
    half('Left', 'left'),
  ]);
  const neckband = piece('Band', 'neckband', [
    part(
      'Band',
      {
        pickUp: ['left back neck', 'left front neck', 'centre', 'right front neck', 'right back neck'].map(
          (at) => ({ along: at, stitches: 4 }),
        ),
      },
      [section('rib', 2)],
    ),
  ]);

  it('has its neck in two halves, and the edges of the opening between them to itself', () => {
    const joints = proposed(standing(rear, front, sleeve, neckband));
    const said = joints.flatMap((joint) => {
      if (joint.kind === 'pick up') return joint.along.map(({ line }) => lineSaid(line));
      return joint.kind === 'left free' && joint.as === 'opening' ? [lineSaid(joint.line)] : [];
    });
    expect(said).toEqual([
      'Left right after shaping',
      'Right left turned',
      'Middle top',
      'Left right',
      'Right left after shaping turned',
      'Right left before shaping turned, Left right before shaping',
      'Band right',
      'Band left',
    ]);
  });
});

describe('fronts', () => {
  it('that are pieces of their own are sewn as two makes of one are', () => {
    const half = (name: string, role: 'left front' | 'right front', inner: 'left' | 'right') =>
      piece(name, role, [part(name, 10, [section('a', 8), section('b', 4, slant(inner, -1, 1, 3))])]);
    const own = [half('Left', 'left front', 'left'), half('Right', 'right front', 'right')];
    const renamed = makingUpOf(standing(...cardigan))
      .worked.map(workedSaid)
      .map((line) => line.replaceAll('Front 2', 'Right').replaceAll('Front', 'Left'));
    const said = (...fronts: readonly Recipe[]) =>
      makingUpOf(standing(back, ...fronts, sleeve)).worked.map(workedSaid);
    expect(said(...own)).toEqual(renamed);
    // one of them alone is no front of a body
    expect(said(...own.slice(0, 1)).filter((line) => line.startsWith('side'))).toEqual([]);
  });

  it('of which the first make is the right one are told apart by their shapes', () => {
    const turned = piece(
      'Front',
      'front',
      [part('Front', 10, [section('a', 8), section('b', 4, slant('right', -1, 1, 3))])],
      { makes: 2, mirrored: true },
    );
    const said = makingUpOf(standing(back, turned, sleeve)).worked.map(workedSaid);
    expect(said).toContain('side: Front 2 right rows 1-7 (7r 21.0mm) = Back left rows 1-7 (7r 21.0mm)');
    expect(said).toContain('side: Front left rows 1-7 (7r 21.0mm) = Back right rows 1-7 (7r 21.0mm)');
  });

  it('whose neck lies beside the shoulder: what the groups have left of it lies at the top, and behind that the neck', () => {
    const half = piece(
      'Front',
      'front',
      [part('Front', 7, [section('a', 8), section('shoulder', 2, off('right', 1, 3))])],
      {
        makes: 2,
        mirrored: true,
      },
    );
    const rear = piece('Back', 'back', [
      part('Back', 16, [section('a', 8), section('shoulder', 2, ...groups(1, 3))]),
    ]);
    const told = { seams: new Set(['shoulder'] as const), shoulder: { back: 5, front: 5 }, leftFirst: true };
    const joints = proposed(standing(rear, half, band('Band', 'left front neck')), told);
    const said = joints.flatMap((joint) =>
      joint.kind === 'pick up'
        ? joint.along.map(({ line }) => lineSaid(line))
        : joint.kind === 'seam' && joint.of === 'shoulder'
          ? [`${lineSaid(joint.a)} = ${lineSaid(joint.b)}`]
          : [],
    );
    expect(said).toEqual([
      'Front 2 left rows 9-10, Front 2 top stitches 2-4 turned = Back right rows 9-10, Back top stitches 0-2',
      'Front right rows 9-10, Front top stitches 0-2 = Back left rows 9-10, Back top stitches 8-10 turned',
      'Front top stitches 2-4, Front left after shaping turned',
    ]);
  });

  it('one sleeve that is knitted once is sewn in twice over, and told', () => {
    const once = { ...sleeve, makes: 1 };
    const made = makingUpOf(standing(back, front, once));
    expect(made.troubles.filter(({ kind }) => kind === 'used twice').length).toBeGreaterThan(0);
  });
});

/* Reckoned by hand, 4 mm a stitch: each of the four edges gives a stitch to its seam. */
describe('round the body', () => {
  const chest = (...pieces: readonly Recipe[]) => {
    const garment = standing(...pieces);
    return finished(makingUpOf(garment).worked, garment).chest;
  };
  const capped = piece(
    'Sleeve',
    'sleeve',
    [part('Sleeve', 12, [section('a', 4), section('b', 6, ...groups(1, 2), slant('both', -1, 3, 5))])],
    { makes: 2 },
  );
  /** A neck that parts the front four rows below the underarm; both sides widen once above that, as the back does. */
  const parted = (edge: 'right' | 'left') =>
    part(edge === 'right' ? 'Right' : 'Left', { part: 'Body', stitches: 12, edge }, [
      section('b', 4, slant(edge, 1, 3), slant(edge === 'right' ? 'left' : 'right', -1, 1, 3)),
      section('c', 8, off(edge, edge === 'right' ? 1 : 2, 2)),
    ]);

  it('a front that its neck parts below the underarm has half of its width beside each side', () => {
    const rear = piece('Back', 'back', [
      part('Back', 24, [
        section('a', 4),
        section('b', 4, slant('both', 1, 3)),
        section('c', 8, ...groups(1, 2)),
      ]),
    ]);
    const deep = piece('Front', 'front', [
      part('Body', 24, [section('a', 4)], 'split'),
      parted('right'),
      parted('left'),
    ]);
    expect(chest(rear, deep, capped)).toBe((26 - 2) * 4 + 2 * (13 - 1) * 4);
  });

  it('of half a front what its neck has taken up to the underarm is counted with it', () => {
    const half = piece(
      'Front',
      'front',
      [part('Front', 10, [section('a', 12, slant('left', -1, 1, 5, 9))])],
      {
        makes: 2,
        mirrored: true,
      },
    );
    // the sides are rows 1 to 5: two of its three decreases
    expect(chest(back, half, sleeve)).toBe((20 - 2) * 4 + 2 * (10 - 1) * 4);
  });

  it('is not told of a back alone, nor without side seams', () => {
    expect(chest(back)).toBeUndefined();
    expect(chest(back, sleeve)).toBeUndefined();
    expect(chest(front)).toBeUndefined();
  });
});

describe('what is not told', () => {
  const measures = (...pieces: readonly Recipe[]) => {
    const garment = standing(...pieces);
    return finished(makingUpOf(garment).worked, garment);
  };
  it('of a garment without sleeves: arm and wrist; of one without a back: its length', () => {
    const vest = measures(back, front);
    expect(vest).toMatchObject({ length: 36, napeToCuff: undefined, upperArm: undefined, wrist: undefined });
    const { length, neckWithBand, napeToCuff } = measures(front, sleeve);
    expect([length, napeToCuff]).toEqual([undefined, undefined]);
    expect(neckWithBand).toBeCloseTo(2 * (Math.hypot(4, 6) + 6) + 16, 9);
    expect(measures(sleeve)).toMatchObject({ neck: undefined, neckWithBand: undefined, chest: undefined });
  });
});
