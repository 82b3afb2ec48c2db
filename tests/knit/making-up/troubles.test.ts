import { describe, expect, it } from 'vitest';
import type { Joint, Line, SeamKind, Stretch } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { roomAlong, unitOf, workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import { part, piece, section, standing, troubleSaid } from './by-hand.ts';

/** Two squares of 10 stitches and 8 rows (40 mm by 24 mm), one of 12 and 10, and a band picked up along them. */
const garment = standing(
  piece('A', 'back', [part('A', 10, [section('body', 8)])]),
  piece('B', 'front', [part('B', 10, [section('body', 8)])]),
  piece('C', 'other', [part('C', 12, [section('body', 10)])]),
  piece('Band', 'neckband', [
    part(
      'Band',
      {
        pickUp: [
          { along: 'a', stitches: 10 },
          { along: 'b', stitches: 10 },
        ],
      },
      [section('rib', 2)],
    ),
  ]),
);
const at = (name: string, edge: Stretch['edge'], more: Partial<Stretch> = {}): Stretch => ({
  piece: name,
  make: 1,
  part: name,
  edge,
  ...more,
});
const seam = (of: SeamKind, a: Line, b: Line, ease?: number): Joint => ({
  kind: 'seam',
  of,
  a,
  b,
  how: 'mattress',
  ...(ease === undefined ? {} : { ease }),
});
const free = (...line: Line): Joint => ({ kind: 'left free', line, as: 'hem' });
const band = (...lines: readonly Line[]): Joint => ({
  kind: 'pick up',
  piece: 'Band',
  make: 1,
  along: lines.map((line) => ({ line, stitches: 10 })),
});

/** What is wrong but for edges that nobody has spoken of. */
const wrong = (...joints: readonly Joint[]): string[] =>
  workJoints(joints, garment)
    .troubles.filter(({ kind }) => kind !== 'forgotten')
    .map(troubleSaid);

describe('a joint that cannot be', () => {
  it.each<[string, readonly Joint[], readonly string[]]>([
    ['sides of the same rows meet', [seam('side', [at('A', 'left')], [at('B', 'right')])], []],
    [
      'sides are held row to row',
      [seam('side', [at('A', 'left')], [at('C', 'right')])],
      ['0 do not meet: 8.0 and 10.0 rows'],
    ],
    [
      'shoulders stitch to stitch',
      [free(at('A', 'start')), seam('shoulder', [at('C', 'top')], [at('B', 'top')])],
      ['1 do not meet: 12.0 and 10.0 stitches'],
    ],
    [
      'armholes by their length, to a stitch and a row of either',
      [seam('armhole', [at('C', 'top')], [at('B', 'top')])],
      [],
    ],
    [
      'and no more',
      [seam('armhole', [at('C', 'top')], [at('B', 'right')])],
      ['0 do not meet: 48.0 and 24.0 mm'],
    ],
    ['an ease that is meant is reckoned in', [seam('side', [at('C', 'left')], [at('A', 'right')], 25)], []],
    [
      'in hundredths of the second',
      [seam('side', [at('A', 'left')], [at('C', 'right')], 10)],
      ['0 do not meet: 8.0 and 11.0 rows'],
    ],
    [
      'an edge that is not there is told, and nothing else of its seam',
      [
        seam('side', [at('A', 'left')], [at('D', 'right')]),
        seam('side', [at('E', 'left')], [at('B', 'left')]),
      ],
      ['0 no such edge: D right', '1 no such edge: E left'],
    ],
    [
      'an edge is used once',
      [free(at('A', 'top')), seam('shoulder', [at('A', 'top')], [at('B', 'top')])],
      ['1 used twice: A top'],
    ],
    [
      'in a line each stretch begins where the one before it ends',
      [free(at('A', 'right'), at('B', 'right'))],
      ['0 not there yet: B right after A right'],
    ],
    ['so a side goes on along its top', [free(at('A', 'right'), at('A', 'top'))], []],
    [
      'and along another piece once they are sewn',
      [
        seam('side', [at('A', 'left')], [at('B', 'right')]),
        free(at('A', 'start'), at('B', 'start')),
        free(at('A', 'top'), at('B', 'top')),
      ],
      [],
    ],
    [
      'not before',
      [free(at('A', 'start'), at('B', 'start')), seam('side', [at('A', 'left')], [at('B', 'right')])],
      ['0 not there yet: B start after A start'],
    ],
    [
      'a seam ties only the corners that it joins',
      [seam('side', [at('A', 'left')], [at('B', 'right')]), free(at('A', 'start'), at('B', 'top'))],
      ['1 not there yet: B top after A start'],
    ],
    [
      'a band as long as its edges',
      [
        free(at('B', 'start')),
        seam('side', [at('A', 'left')], [at('B', 'right')]),
        band([at('A', 'top')], [at('B', 'top')]),
      ],
      [],
    ],
    [
      'a band goes along edges that meet',
      [band([at('A', 'top')], [at('B', 'top')])],
      ['0 not there yet: B top after A top'],
    ],
    [
      'ten stitches for eight rows of 3 mm, which are room for six, are within five',
      [band([at('A', 'right')], [at('A', 'top')])],
      [],
    ],
    [
      'what is picked up has its corners where its edges end',
      [
        band([at('A', 'right')], [at('A', 'top')]),
        free(at('A', 'start', { reversed: true }), at('Band', 'right')),
        free(at('A', 'left'), at('Band', 'left')),
      ],
      [],
    ],
    [
      'and nowhere else',
      [band([at('A', 'right')], [at('A', 'top')]), free(at('A', 'left'), at('Band', 'right'))],
      ['1 not there yet: Band right after A left'],
    ],
  ])('%s', (_, joints, troubles) => {
    expect(wrong(...joints)).toEqual(troubles);
  });

  it('a band with far more or fewer stitches than its edges have room for: 15 in a hundred, or five', () => {
    const along = (count: number, rows: number) => {
      const long = standing(
        piece('A', 'back', [part('A', 10, [section('body', rows)])]),
        piece('Band', 'neckband', [
          part('Band', { pickUp: [{ along: 'a', stitches: count }] }, [section('body', 2)]),
        ]),
      );
      return workJoints([band([at('A', 'right')])], long)
        .troubles.filter(({ kind }) => kind === 'pick up')
        .map(troubleSaid);
    };
    // 40 rows are 120 mm: room for 30 stitches of 4 mm
    expect([along(35, 40), along(25, 40)]).toEqual([[], []]);
    expect(along(36, 40)).toEqual(['0 pick up 0: 36 for 30']);
    expect(along(24, 40)).toEqual(['0 pick up 0: 24 for 30']);
    // 80 rows have room for 60, and nine more or less
    expect([along(69, 80), along(51, 80)]).toEqual([[], []]);
    expect(along(70, 80)).toEqual(['0 pick up 0: 70 for 60']);
    expect(along(50, 80)).toEqual(['0 pick up 0: 50 for 60']);
  });

  it('picks up what its band is planned for, whatever was stated', () => {
    const [made] = workJoints(
      [{ kind: 'pick up', piece: 'Band', make: 1, along: [{ line: [at('A', 'top')], stitches: 99 }] }],
      garment,
    ).worked;
    expect(made?.joint).toMatchObject({ along: [{ stitches: 10 }] });
    expect(wrong({ kind: 'pick up', piece: 'Band', make: 2, along: [] })).toEqual([
      '0 no such edge: Band 2 start',
    ]);
    expect(wrong({ kind: 'pick up', piece: 'Cord', make: 1, along: [] })).toEqual([
      '0 no such edge: Cord start',
    ]);
  });

  it('what nobody has spoken of is told at the end', () => {
    const { troubles } = workJoints(
      [
        free(at('A', 'start'), at('A', 'left')),
        free(at('B', 'start')),
        free(at('B', 'left')),
        free(at('B', 'right')),
        free(at('B', 'top')),
      ],
      garment,
    );
    expect(
      troubles
        .filter((one) => one.kind !== 'forgotten' || ['A', 'B'].includes(one.rest.piece))
        .map(troubleSaid),
    ).toEqual(['forgotten: A 1 top 0r 10s 40.0mm', 'forgotten: A 1 right 8r 0s 24.0mm']);
  });

  it('what each kind of seam is held against; common practice, no published source', () => {
    expect(unitOf).toEqual({
      shoulder: 'stitches',
      lap: 'rows',
      underarm: 'stitches',
      side: 'rows',
      sleeve: 'rows',
      raglan: 'rows',
      band: 'rows',
      armhole: 'mm',
      other: 'mm',
    });
  });

  it('an edge has room for its length in stitches of the fabric that most of it lies along', () => {
    const mixed = standing(piece('A', 'back', [part('A', 20, [section('rib', 3), section('body', 8)])]));
    const room = (...line: Line) => {
      const [made] = workJoints([free(...line)], mixed).worked;
      return made?.lines[0] && roomAlong(made.lines[0]);
    };
    // 15 mm of rib and 24 mm of stocking stitch: a line has the stitch that it ends in
    expect(room(at('A', 'right'))).toBeCloseTo(39 / 4, 9);
    expect(room(at('A', 'right', { sections: ['rib'] }))).toBeCloseTo(15 / 2, 9);
    // 80 mm of top and 15 mm of rib
    expect(room(at('A', 'top'), at('A', 'left', { sections: ['rib'] }))).toBeCloseTo(95 / 4, 9);
    expect(
      room(at('A', 'right', { sections: ['rib'] }), at('A', 'left', { sections: ['body'] })),
    ).toBeCloseTo(39 / 4, 9);
    expect(room()).toBeUndefined();
  });
});

describe('a statement', () => {
  const stated: readonly Joint[] = [seam('side', [at('A', 'left')], [at('B', 'right')])];
  it('holds while its edges are there, even where they do not meet', () => {
    expect(makingUpOf({ ...garment, joints: stated }).joints).toBe(stated);
    const uneven = [seam('side', [at('A', 'left')], [at('C', 'right')])];
    expect(makingUpOf({ ...garment, joints: uneven }).joints).toBe(uneven);
  });

  it('gives way to what is proposed where an edge is no more, or where it says nothing', () => {
    const proposed = makingUpOf(garment).joints;
    expect(proposed).not.toEqual([]);
    expect(makingUpOf({ ...garment, joints: [] }).joints).toEqual(proposed);
    const gone = [seam('side', [at('A', 'left')], [at('Z', 'right')])];
    expect(makingUpOf({ ...garment, joints: gone }).joints).toEqual(proposed);
  });
});
