import { describe, expect, it } from 'vitest';
import type { Stretch } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { lineLeft, lineNamed, neckSeamOf } from '../../../src/knit/making-up/waiting-seam.ts';
import type { PieceRole, Recipe } from '../../../src/knit/piece/recipe.ts';
import { part, piece, section, standing } from './by-hand.ts';
import { drop } from './shapes.ts';

/* Bands of three rows of rib that lie over each other; common practice, no published source. */
const band = (name: string, role: PieceRole, ...along: readonly string[]): Recipe =>
  piece(name, role, [
    part(name, { pickUp: along.map((one) => ({ along: one, stitches: 4 })) }, [section('rib', 3)]),
  ]);
const laps = (...bands: readonly Recipe[]) =>
  makingUpOf(standing(...drop, ...bands)).steps.filter(({ kind }) => kind === 'lap');

describe('what lies over something else is a step of its own', () => {
  it('a placket by the band on top', () => {
    const bands = [
      band('Left', 'front band', 'left front edge'),
      band('Right', 'front band', 'right front edge'),
    ];
    expect(laps(...bands)).toMatchObject([{ id: 'lap', of: 'placket', rows: 3, band: 'Right' }]);
  });

  it('an open left shoulder, and both of them, which have no band that is named', () => {
    const [left] = laps(band('Flap', 'other', 'left front shoulder'));
    expect(left).toMatchObject({ id: 'lap', of: 'left shoulder', rows: 3 });
    expect(left).not.toHaveProperty('band');
    const both = laps(
      band(
        'Before',
        'neckband',
        'left front shoulder',
        'left front neck',
        'right front neck',
        'right front shoulder',
      ),
      band('Behind', 'neckband', 'right back shoulder', 'back neck', 'left back shoulder'),
    );
    expect(both).toMatchObject([{ id: 'lap', of: 'both shoulders', rows: 3 }]);
    expect(both[0]).not.toHaveProperty('band');
  });

  it('none where nothing lies over anything', () => {
    expect(laps(band('Neckband', 'neckband', 'left front neck', 'right front neck', 'back neck'))).toEqual(
      [],
    );
  });
});

describe('a seam that meets the neck', () => {
  const seam = (name: string, edge: Stretch['edge'], reversed?: true) =>
    neckSeamOf(
      {
        kind: 'seam',
        of: 'shoulder',
        a: [],
        b: [{ piece: name, make: 1, part: name, edge, ...(reversed && { reversed }) }],
        how: 'mattress',
      },
      'Back',
    );

  it('is of the side at which the panel has that edge: of a back as it is worn, of a front the other way round', () => {
    expect(
      [seam('Back', 'left'), seam('Back', 'right'), seam('Front', 'left'), seam('Front', 'right')].map(
        lineNamed,
      ),
    ).toEqual(['left back', 'right back', 'right front', 'left front']);
    // a top goes from the right edge to the left one, unless it is turned round
    expect([seam('Back', 'top'), seam('Back', 'top', true)].map(lineNamed)).toEqual([
      'right back',
      'left back',
    ]);
    expect([seam('Front', 'top'), seam('Front', 'top', true)].map(lineNamed)).toEqual([
      'left front',
      'right front',
    ]);
    expect(lineNamed(seam('Back', 'right', true))).toBe('right back');
  });

  it('is left where the other of its sleeve is sewn, and that one is not', () => {
    const [rightFront, leftFront, rightBack, leftBack] = [
      seam('Front', 'left'),
      seam('Front', 'right'),
      seam('Back', 'right'),
      seam('Back', 'left'),
    ];
    expect(lineLeft([rightFront, leftFront, rightBack])).toBe('left back');
    expect(lineLeft([rightFront, leftBack, rightBack])).toBe('left front');
    expect(lineLeft([leftFront, leftBack])).toBeUndefined();
    expect(lineLeft([rightBack])).toBe('right front');
    expect(lineLeft([])).toBeUndefined();
  });
});
