import { describe, expect, it } from 'vitest';
import type { Joint, Line } from '../../../src/knit/making-up/joint.ts';
import { type Called, jointCalled } from '../../../src/knit/making-up/joint-called.ts';
import { turnedRound } from '../../../src/knit/making-up/piece-edges.ts';
import { renamedStep } from '../../../src/knit/making-up/renamed-step.ts';
import { Ties } from '../../../src/knit/making-up/ties.ts';

describe('a step after pieces were renamed', () => {
  const called = new Map([
    ['Sleeve', 'Arm'],
    ['Sleeve 2', 'Other arm'],
    ['Back', 'Rear'],
    ['2', 'Two'],
  ]);
  it.each([
    ['block Sleeve', 'block Arm'],
    ['pick up Sleeve', 'pick up Arm'],
    ['block Sleeve 1 3', 'block Arm 1 3'],
    ['block Sleeve 12', 'block Arm 12'],
    ['block Sleeve 2', 'block Other arm'],
    ['block Sleeve 2 3', 'block Arm 2 3'],
    ['block Front', 'block Front'],
    ['block Front 2', 'block Front 2'],
    ['block Sleeve two', 'block Sleeve two'],
    ['side seams', 'side seams'],
    ['close Back', 'close Back'],
    ['ends', 'ends'],
  ])('%s is now %s', (id, now) => {
    expect(renamedStep(id, called)).toBe(now);
  });
});

describe('a joint whose pieces, parts and sections are called otherwise', () => {
  const called: Called = {
    piece: (name) => `piece ${name}`,
    part: (name) => `part ${name}`,
    section: (name) => `section ${name}`,
  };
  const old: Line = [
    { piece: 'A', make: 2, part: 'B', edge: 'left', sections: ['c', 'd'], level: 'only', reversed: true },
    { piece: 'E', make: 1, part: 'F', edge: 'top', stitches: { from: 1, to: 3 } },
  ];
  const now: Line = [
    {
      piece: 'piece A',
      make: 2,
      part: 'part B',
      edge: 'left',
      sections: ['section c', 'section d'],
      level: 'only',
      reversed: true,
    },
    { piece: 'piece E', make: 1, part: 'part F', edge: 'top', stitches: { from: 1, to: 3 } },
  ];

  it.each<[string, Joint, Joint]>([
    [
      'of a seam both lines',
      { kind: 'seam', of: 'armhole', a: old, b: old.slice(1), how: 'sewn', ease: 3 },
      { kind: 'seam', of: 'armhole', a: now, b: now.slice(1), how: 'sewn', ease: 3 },
    ],
    [
      'of a band its own piece and all lines',
      {
        kind: 'pick up',
        piece: 'G',
        make: 1,
        along: [
          { line: old, stitches: 7 },
          { line: [], stitches: 1 },
        ],
      },
      {
        kind: 'pick up',
        piece: 'piece G',
        make: 1,
        along: [
          { line: now, stitches: 7 },
          { line: [], stitches: 1 },
        ],
      },
    ],
    [
      'of a free edge its line',
      { kind: 'left free', line: old, as: 'neck' },
      { kind: 'left free', line: now, as: 'neck' },
    ],
  ])('%s', (_, joint, renamed) => {
    expect(jointCalled(joint, called)).toStrictEqual(renamed);
  });

  it('walked from its other end, each of its stretches is turned round, and back again', () => {
    const [one, two] = old;
    const { reversed: _, ...straight } = one as (typeof old)[0];
    expect(turnedRound(old)).toStrictEqual([{ ...two, reversed: true }, straight]);
    expect(turnedRound(turnedRound(old))).toStrictEqual(old);
  });
});

describe('corners that have become one', () => {
  it('meet, however many lie between them, and no others', () => {
    const ties = new Ties();
    expect([ties.meet('a', 'a'), ties.meet('a', 'b')]).toEqual([true, false]);
    ties.tie('a', 'b');
    ties.tie('c', 'd');
    expect([ties.meet('b', 'a'), ties.meet('a', 'c')]).toEqual([true, false]);
    ties.tie('d', 'a');
    ties.tie('b', 'c');
    expect([ties.meet('b', 'c'), ties.meet('d', 'b'), ties.meet('a', 'e')]).toEqual([true, true, false]);
  });
});
