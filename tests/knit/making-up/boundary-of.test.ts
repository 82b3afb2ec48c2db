import { describe, expect, it } from 'vitest';
import { Boundaries, layLine } from '../../../src/knit/making-up/boundary-of.ts';
import type { Stretch } from '../../../src/knit/making-up/joint.ts';
import type { Shaping } from '../../../src/knit/piece/recipe.ts';
import { groups, part, piece, section, slant, standing } from './by-hand.ts';

/*
 * 30 stitches of 4 mm, rows of 3 mm; ten rows up to the armhole, three stitches off on either side and one more in its
 * third row, six rows; then the neck parts it: eight, six at the middle, eight.
 */
const front = piece('Front', 'front', [
  part(
    'Body',
    30,
    [section('rib', 4), section('body', 6), section('armhole', 6, ...groups(1, 3), slant('both', -1, 3))],
    'split',
  ),
  part('Left', { part: 'Body', stitches: 8, edge: 'left' }, [section('neck', 4)]),
  part('Right', { part: 'Body', stitches: 8, edge: 'right' }, [section('neck', 4, slant('left', -1, 1))]),
  part('Middle', { part: 'Body', stitches: 6, edge: 'middle' }, []),
]);

const at = (named: string, edge: Stretch['edge'], more: Partial<Stretch> = {}): Stretch => ({
  piece: 'Front',
  make: 1,
  part: named,
  edge,
  ...more,
});

const all = (): Boundaries => new Boundaries(standing(front));
const slope = Math.hypot(4, 6);

describe('a stretch of an edge, with its rows, stitches and mm', () => {
  // rib is 2 mm by 5 mm: four rows are 20 mm
  it.each<[string, Stretch, readonly [number, number, number] | undefined]>([
    ['a cast-on', at('Body', 'start'), [0, 30, 60]],
    ['some of its stitches', at('Body', 'start', { stitches: { from: 5, to: 12 } }), [0, 7, 14]],
    ['none of them', at('Body', 'start', { stitches: { from: 5, to: 5 } }), [0, 0, 0]],
    ['more than there are', at('Body', 'start', { stitches: { from: 5, to: 31 } }), undefined],
    ['from before the first', at('Body', 'start', { stitches: { from: -1, to: 5 } }), undefined],
    ['the wrong way round', at('Body', 'start', { stitches: { from: 6, to: 5 } }), undefined],
    ['a top', at('Left', 'top'), [0, 8, 32]],
    ['of a part without rows', at('Middle', 'top'), [0, 6, 24]],
    ['a top that others go on from', at('Body', 'top'), undefined],
    ['the beginning of one that goes on', at('Left', 'start'), undefined],
    ['a part that is not there', at('Sleeve', 'right'), undefined],
    ['a whole side', at('Body', 'right'), [16, 3, 20 + 18 + 12 + 6 + slope + 6]],
    ['one section', at('Body', 'right', { sections: ['body'] }), [6, 0, 18]],
    ['two sections', at('Body', 'left', { sections: ['rib', 'body'] }), [10, 0, 38]],
    ['two that do not hang together', at('Body', 'left', { sections: ['rib', 'armhole'] }), undefined],
    ['a section that is not there', at('Body', 'left', { sections: ['cap'] }), undefined],
    ['some rows', at('Body', 'right', { rows: { first: 5, last: 8 } }), [4, 0, 12]],
    [
      'rows of one section',
      at('Body', 'right', { sections: ['rib'], rows: { first: 2, last: 8 } }),
      [3, 0, 15],
    ],
    ['rows that are not there', at('Body', 'right', { rows: { first: 17, last: 20 } }), undefined],
    ['what is bound off at once', at('Body', 'right', { sections: ['armhole'], level: 'only' }), [0, 3, 12]],
    ['all but that', at('Body', 'left', { sections: ['armhole'], level: 'without' }), [6, 0, 6 + slope + 6]],
    ['where nothing is', at('Body', 'left', { sections: ['body'], level: 'only' }), undefined],
    ['below its first decrease', at('Body', 'right', { shaped: 'before' }), [10, 0, 38]],
    ['from its first decrease on', at('Body', 'right', { shaped: 'after' }), [6, 3, 12 + 6 + slope + 6]],
    ['of a side without one all is below', at('Left', 'right', { shaped: 'before' }), [4, 0, 12]],
    ['and nothing after', at('Left', 'right', { shaped: 'after' }), [0, 0, 0]],
    ['of a side that begins with one nothing is below', at('Right', 'left', { shaped: 'before' }), [0, 0, 0]],
    ['and all after', at('Right', 'left', { shaped: 'after' }), [4, 0, slope + 6]],
  ])('%s', (_, stretch, found) => {
    const laid = all().lay(stretch);
    expect(laid && [laid.rows, laid.stitches, laid.mm]).toEqual(
      found && [found[0], found[1], expect.closeTo(found[2], 9)],
    );
  });

  it('on another make or piece there is none', () => {
    expect(all().lay({ ...at('Body', 'start'), make: 2 })).toBeUndefined();
    expect(all().lay({ ...at('Body', 'start'), piece: 'Back' })).toBeUndefined();
  });

  it('a section whose rows all turn before the edge is a stretch without length, where they would lie', () => {
    const turn: Shaping = { kind: 'turn', edge: 'left', groups: [{ row: 1, stitches: 4 }] };
    const short = standing(
      piece('Front', 'front', [
        part('Body', 20, [section('body', 4), section('slope', 2, turn), section('top', 2)]),
      ]),
    );
    const edges = new Boundaries(short);
    const idle = edges.lay(at('Body', 'left', { sections: ['slope'] }));
    expect(idle && [idle.from, idle.to, idle.rows, idle.mm]).toEqual([4, 4, 0, 0]);
    expect(
      edges.lay(at('Body', 'left', { sections: ['slope'], rows: { first: 5, last: 6 } })),
    ).toBeUndefined();
    expect(edges.lay(at('Body', 'left', { sections: ['slope'], level: 'only' }))).toBeUndefined();
    expect(edges.lay(at('Body', 'right', { sections: ['slope'] }))).toMatchObject({
      rows: 2,
      from: 4,
      to: 6,
    });
  });
});

describe('corners', () => {
  const corners = (stretch: Stretch): (string | undefined)[] => {
    const laid = all().lay(stretch);
    return [laid?.begin, laid?.end].map((corner) => corner?.replace('["Front",1,', '').replace(']', ''));
  };

  it.each<[string, Stretch, string, string]>([
    [
      'a cast-on goes from the right to the left',
      at('Body', 'start'),
      '"Body" start right',
      '"Body" start left',
    ],
    [
      'turned round, from the left',
      at('Body', 'start', { reversed: true }),
      '"Body" start left',
      '"Body" start right',
    ],
    ['a side goes up', at('Body', 'left'), '"Body" start left', '"Body" top left'],
    ['turned round, down', at('Body', 'left', { reversed: true }), '"Body" top left', '"Body" start left'],
    [
      'a part of one ends on it',
      at('Body', 'right', { sections: ['body'] }),
      '"Body" right 4',
      '"Body" right 10',
    ],
    [
      'so does a part of a top',
      at('Left', 'top', { stitches: { from: 2, to: 8 } }),
      '"Left" top 2',
      '"Left" top left',
    ],
  ])('%s', (_, stretch, begin, end) => {
    expect(corners(stretch)).toEqual([begin, end]);
  });

  it('parts that go on lie beside each other, the right one first, and the middle between them', () => {
    const edges = all();
    const corner = (name: string) =>
      `["Front",1,${JSON.stringify(name.split(' ')[0])}] ${name.split(' ').slice(1).join(' ')}`;
    const meet = (a: string, b: string) => edges.ties.meet(corner(a), corner(b));
    expect(meet('Body top right', 'Right start right')).toBe(true);
    expect(meet('Right start left', 'Middle start right')).toBe(true);
    expect(meet('Middle start left', 'Left start right')).toBe(true);
    expect(meet('Left start left', 'Body top left')).toBe(true);
    // the middle has no rows: its top is where it begins
    expect(meet('Middle start right', 'Middle top right')).toBe(true);
    expect(meet('Middle start left', 'Middle top left')).toBe(true);
    expect(meet('Right start right', 'Right start left')).toBe(false);
    expect(meet('Left start left', 'Left top left')).toBe(false);
    expect(meet('Body start right', 'Body top right')).toBe(false);
    expect(meet('Left top right', 'Left top left')).toBe(false);
  });

  it('two parts at one edge lie in the order in which they go on inwards', () => {
    const edges = new Boundaries(
      standing(
        piece('Front', 'front', [
          part('Body', 20, [section('body', 2)], 'split'),
          part('Outer', { part: 'Body', stitches: 5, edge: 'left' }, [section('neck', 2)]),
          part('Inner', { part: 'Body', stitches: 5, edge: 'left' }, [section('neck', 2)]),
          part('Right', { part: 'Body', stitches: 10, edge: 'right' }, [section('neck', 2)]),
        ]),
      ),
    );
    expect(edges.ties.meet('["Front",1,"Inner"] start left', '["Front",1,"Outer"] start right')).toBe(true);
    expect(edges.ties.meet('["Front",1,"Right"] start left', '["Front",1,"Inner"] start right')).toBe(true);
  });
});

describe('what is used', () => {
  it('is told once: what overlaps is used twice, what lies beside it is not', () => {
    const edges = all();
    const use = (rows: { first: number; last: number }) => {
      const laid = edges.lay(at('Body', 'right', { rows }));
      return laid && edges.use(laid);
    };
    expect(use({ first: 3, last: 5 })).toBe(true);
    expect(use({ first: 6, last: 7 })).toBe(true);
    expect(use({ first: 1, last: 2 })).toBe(true);
    expect(use({ first: 5, last: 6 })).toBe(false);
    expect(use({ first: 2, last: 3 })).toBe(false);
  });

  it('and the rest stretch by stretch and row by row, of what no part goes on from', () => {
    const edges = all();
    const take = (stretch: Stretch) => {
      const laid = edges.lay(stretch);
      if (laid) edges.use(laid);
    };
    take(at('Body', 'start', { stitches: { from: 20, to: 25 } }));
    take(at('Body', 'start', { stitches: { from: 5, to: 10 } }));
    take(at('Body', 'right', { rows: { first: 5, last: 10 } }));
    for (const edge of ['left'] as const) take(at('Body', edge));
    for (const name of ['Left', 'Right'])
      for (const edge of ['right', 'left', 'top'] as const) take(at(name, edge));
    // each says which stretch it is, so that it can be joined by hand
    const left = (stretch: Stretch, rows: number, stitches: number, mm: number) => {
      const { piece, make, part, edge } = stretch;
      return { piece, make, part, edge, rows, stitches, mm: expect.closeTo(mm, 9), stretch };
    };
    expect(edges.rest()).toEqual([
      left(at('Body', 'start', { stitches: { from: 0, to: 5 } }), 0, 5, 10),
      left(at('Body', 'start', { stitches: { from: 10, to: 20 } }), 0, 10, 20),
      left(at('Body', 'start', { stitches: { from: 25, to: 30 } }), 0, 5, 10),
      left(at('Body', 'right', { rows: { first: 1, last: 4 } }), 4, 0, 20),
      left(at('Body', 'right', { rows: { first: 11, last: 16 } }), 6, 3, 24 + slope),
      left(at('Middle', 'top'), 0, 6, 24),
    ]);
  });

  it('what is used twice over leaves no more than its end', () => {
    const edges = all();
    for (const stitches of [
      { from: 0, to: 20 },
      { from: 3, to: 6 },
    ]) {
      const laid = edges.lay(at('Body', 'start', { stitches }));
      if (laid) edges.use(laid);
    }
    expect(edges.rest()[0]).toMatchObject({ edge: 'start', stitches: 10, mm: 20 });
  });
});

describe('a line of stretches', () => {
  it('adds up, and tells which are not there', () => {
    const missing = at('Sleeve', 'top');
    const line = layLine(all(), [at('Body', 'start'), missing, at('Left', 'top')]);
    expect(line).toMatchObject({ rows: 0, stitches: 38, mm: 60 + 32, missing: [missing] });
    expect([line.begin, line.end]).toEqual(['["Front",1,"Body"] start right', '["Front",1,"Left"] top left']);
    expect(layLine(all(), [])).toEqual({
      laid: [],
      begin: undefined,
      end: undefined,
      rows: 0,
      stitches: 0,
      mm: 0,
      missing: [],
    });
  });

  /** A slant that goes on through two parts: its last stretch is as steep as that before it, not upright after two rows. */
  const steep = piece('Side', 'other', [
    part('Low', 30, [section('low', 8, slant('both', -1, 1, 5))], 'split'),
    part('High', { part: 'Low', stitches: 26, edge: 'right' }, [section('high', 8, slant('both', -1, 1, 5))]),
  ]);
  const of = (name: string, edge: 'right' | 'left', more: Partial<Stretch> = {}): Stretch => ({
    ...at(name, edge, more),
    piece: 'Side',
  });
  const mm = (...line: readonly Stretch[]) => layLine(new Boundaries(standing(steep)), line).mm;

  it('a slant over two parts of one edge is measured as one; over other edges apart', () => {
    const whole = 4 * Math.hypot(4, 12);
    expect(mm(of('Low', 'right'), of('High', 'right'))).toBeCloseTo(whole, 9);
    const lonely = [
      of('Low', 'right', { rows: { first: 5, last: 8 } }),
      of('High', 'right', { rows: { first: 1, last: 4 } }),
    ] as const;
    // two single decreases would be a slant over two rows each
    expect(mm(...lonely)).toBeCloseTo(2 * Math.hypot(4, 12), 9);
    expect(mm(lonely[0], { ...lonely[1], edge: 'left' })).toBeCloseTo(2 * (slope + 6), 9);
    expect(mm(lonely[0], { ...lonely[1], reversed: true })).toBeCloseTo(2 * (slope + 6), 9);
    expect(mm({ ...lonely[0], reversed: true }, lonely[1])).toBeCloseTo(2 * (slope + 6), 9);
    expect(mm(lonely[0], of('High', 'right', { level: 'only' }), lonely[1])).toBeCloseTo(
      2 * Math.hypot(4, 12),
      9,
    );
    const top = { ...of('High', 'right'), edge: 'top' } as const;
    expect(mm(lonely[0], top, lonely[1])).toBeCloseTo(2 * (slope + 6) + 22 * 4, 9);
  });
});
