import { describe, expect, it } from 'vitest';
import { makingUp } from '../../../src/knit/making-up/making-up.ts';
import type { Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

/*
 * Reckoned by hand: a stitch is 4 mm wide and a row 3 mm high. A stitch in every second row is a slant of 4 by 6 mm;
 * what is bound off at an underarm lies level.
 */
const gauge = { stitches: 25, rows: 100 / 3 };
const section = (name: string, rows: number, shaping: readonly Shaping[] = []): Section => ({
  name,
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping,
});
const underarm = (stitches: number): readonly Shaping[] => [
  { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches }] },
  { kind: 'bind off', edge: 'left', groups: [{ row: 2, stitches }] },
];
const piece = (name: string, castOn: number, sections: readonly Section[]): Recipe => ({
  name,
  makes: name === 'Sleeve' ? 2 : 1,
  gauge,
  parts: [{ name, from: { castOn }, sections, end: 'bind off' }],
});
const pieces = [
  piece('Back', 30, [section('body', 10), section('armhole', 8, underarm(3))]),
  piece('Front', 30, [section('body', 12), section('armhole', 8, underarm(3))]),
  piece('Sleeve', 20, [
    section('sleeve', 10),
    section('cap', 8, [
      ...underarm(1),
      { kind: 'edge', edge: 'both', by: -1, rows: [3, 5, 7], inset: 1, lean: 'mirrored' },
    ]),
  ]),
];

describe('a set-in sleeve', () => {
  const made = makingUp({ name: 'Small', pieces });
  const steps = made.ok ? made.value : [];

  it('is blocked, like all pieces, to its widest row and all of its rows', () => {
    if (!made.ok) throw new Error(told(made.faults));
    expect(
      steps.flatMap((s) => (s.kind === 'block' ? [[s.piece, s.makes, s.widthMm, s.heightMm]] : [])),
    ).toEqual([
      ['Back', 1, 120, expect.closeTo(54)],
      ['Front', 1, 120, expect.closeTo(60)],
      ['Sleeve', 2, 80, expect.closeTo(54)],
    ]);
  });

  it('has a cap measured along both slopes and its top, and the armholes of back and front beside it', () => {
    const set = steps.find(({ kind }) => kind === 'set in sleeves');
    if (set?.kind !== 'set in sleeves') throw new Error('no sleeve is set in');
    // four pairs of rows with a stitch each, at both edges; twelve stitches at the top
    expect(set.topMm).toBeCloseTo(2 * 4 * Math.sqrt(4 ** 2 + 6 ** 2) + 12 * 4, 6);
    // three stitches level and eight rows, of the back and of the front
    expect(set.armholeMm).toBeCloseTo(2 * (3 * 4 + 8 * 3), 6);
    expect(set).toMatchObject({ on: 'Back', markerRows: 8, quarters: [2, 4, 6] });
    expect(set.markerMm).toBeCloseTo(24, 6);
    // ten rows are below the armhole
    expect(set.marksMm.map((mm) => Math.round(mm))).toEqual([30, 36, 42, 48]);
  });

  it('eases the side seams where the front is longer up to the armhole', () => {
    const side = steps.find(({ kind }) => kind === 'side seams');
    expect(side).toMatchObject({ rows: { first: 10, second: 12, difference: -2, oneMoreEvery: 5 } });
    expect(steps.find(({ kind }) => kind === 'sleeve seams')).toMatchObject({ rows: 10 });
  });
});

describe('a sleeve that narrows from its hem, no section of which is called a cap', () => {
  const cap = [
    ...underarm(1),
    { kind: 'edge', edge: 'both', by: -1, rows: [3, 5, 7], inset: 1, lean: 'mirrored' } as const,
  ];
  const bell = piece('Sleeve', 26, [
    section('lower', 10, [
      { kind: 'edge', edge: 'both', by: -1, rows: [3, 5, 7], inset: 1, lean: 'mirrored' },
    ]),
    section('upper', 8, cap),
  ]);
  const made = makingUp({ name: 'Small', pieces: [...pieces.slice(0, 2), bell] });
  const steps = made.ok ? made.value : [];

  it('is set in from where stitches are bound off at the underarm, not from where it begins to narrow', () => {
    const set = steps.find(({ kind }) => kind === 'set in sleeves');
    if (set?.kind !== 'set in sleeves') throw new Error('no sleeve is set in');
    expect(set.topMm).toBeCloseTo(2 * 4 * Math.sqrt(4 ** 2 + 6 ** 2) + 12 * 4, 6);
  });
});
