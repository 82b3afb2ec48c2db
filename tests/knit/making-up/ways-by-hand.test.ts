import { describe, expect, it } from 'vitest';
import type { Break, Consequence } from '../../../src/knit/making-up/break.ts';
import type { Edit } from '../../../src/knit/making-up/edit.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import {
  merged,
  namesAlong,
  otherLines,
  pairWays,
  pickUpWays,
  placesIn,
  rowsEdit,
  rowWays,
  sidesOf,
} from '../../../src/knit/making-up/ways.ts';
import type { WorkedJoint } from '../../../src/knit/making-up/work-making-up.ts';
import type { PickUp } from '../../../src/knit/piece/recipe.ts';
import { part, piece, section, standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';
import { drop } from './shapes.ts';

const seamsOf = (of: string, worked: readonly WorkedJoint[]) =>
  worked.filter(({ joint }) => joint.kind === 'seam' && joint.of === of);
const linesOf = (one: WorkedJoint | undefined) => {
  const [a, b] = one?.lines ?? [];
  if (!a || !b) throw new Error('a seam has two lines');
  return [a, b] as const;
};
const seam: Consequence = {
  kind: 'seam',
  of: 'side',
  unit: 'rows',
  piece: 'Back',
  to: 'Front',
  was: 0,
  now: 0,
  other: 0,
  longerMm: 0,
};
const broken = (worked: WorkedJoint | undefined, what: Consequence = seam): Break => ({
  key: '',
  what,
  ...(worked ? { worked } : {}),
});
const editSaid = (edit: Edit): string =>
  edit.kind === 'rows'
    ? `${edit.piece} ${edit.makes.join('+')} ${edit.part} ${edit.section} ${edit.called} by ${edit.by}`
    : edit.kind;

const straight = makingUpOf(standing(...drop)).worked;
const shaped = makingUpOf(standing(back, front, sleeve, neckband)).worked;

/* A drop shoulder's armhole: 7 rows of the back, 4 of the right front, 3 of its body below. */
describe('sections along an edge', () => {
  const [top, armhole] = linesOf(seamsOf('armhole', straight)[0]);

  it('long ones before short ones, each name of each parent once', () => {
    expect(namesAlong(armhole)).toEqual(['["a",""]', '["b","Body"]']);
    expect(namesAlong(top)).toEqual([]);
  });

  it('none where all of it is bound off: a level stretch has no rows to be longer by', () => {
    const level = armhole.laid.map((one) => ({
      ...one,
      bits: one.bits.map((bit) => ({ ...bit, level: true as const })),
    }));
    expect(namesAlong({ ...armhole, laid: level })).toEqual([]);
  });

  it('plain ones before shaped ones, however short', () => {
    // the side: four rows of rib and six of the body are plain; of a sleeve two of rib, and eight that widen
    const [body] = linesOf(seamsOf('side', shaped)[0]);
    const [arm] = linesOf(seamsOf('sleeve', shaped)[0]);
    expect(namesAlong(body)).toEqual(['["body",""]', '["rib",""]']);
    expect(namesAlong(arm)).toEqual(['["rib",""]', '["sleeve",""]']);
  });

  it('where they are, in each part of each make: rows along the edge, and how high one is, mm', () => {
    const said = (called: string) =>
      placesIn([armhole], called).map(
        ({ laid: { stretch }, section: at, name, rows, height, isShaped }) =>
          `${stretch.piece} ${stretch.part} ${at} ${name} ${rows}r ${height.toFixed(0)}mm ${isShaped}`,
      );
    expect(said('["a",""]')).toEqual(['Back Back 0 a 5r 3mm false', 'Front Body 0 a 1r 3mm false']);
    expect(said('["b","Body"]')).toEqual(['Front Right 0 b 4r 3mm false']);
    expect(said('["b",""]')).toEqual([]);
    const [cap] = linesOf(seamsOf('armhole', shaped)[0]);
    expect(placesIn([cap], '["cap",""]').map(({ rows, isShaped }) => [rows, isShaped])).toEqual([[6, true]]);
  });

  it('become an edit of that section', () => {
    const [place] = placesIn([armhole], '["b","Body"]');
    expect(place && rowsEdit(place, -2)).toEqual({
      kind: 'rows',
      piece: 'Front',
      makes: [1],
      part: 'Right',
      section: 0,
      called: 'b',
      by: -2,
    });
  });
});

describe('which edge follows', () => {
  const [one] = seamsOf('side', straight);
  const [fore, rear] = linesOf(one);
  it.each([
    ['the back where the front stays', ['Front'], { kept: fore, other: rear }],
    ['the front where the back stays', ['Back'], { kept: rear, other: fore }],
    ['none where both stay', ['Back', 'Front'], undefined],
    ['none where nothing stays', [], undefined],
  ])('%s', (_, locked, sides) => {
    expect(sidesOf(broken(one), new Set(locked))).toEqual(sides);
    expect(otherLines(broken(one), new Set(locked))).toEqual(sides ? [sides.other] : []);
  });
  it('none of what is no seam', () => {
    expect(sidesOf(broken(undefined), new Set(['Back']))).toBeUndefined();
  });
});

describe('rows that may bring two edges together', () => {
  const rowsMore = makingUpOf(
    standing(
      piece('Back', 'back', [
        part('Back', 30, [
          section('rib', 4),
          section('body', 10),
          ...(back.parts[0]?.sections.slice(2) ?? []),
        ]),
      ]),
      front,
      sleeve,
      neckband,
    ),
  ).worked;
  it('as many as the other has more, the longest plain section first, of both sides of a body as one', () => {
    const group = seamsOf('side', rowsMore).map((one) => broken(one));
    expect(group).toHaveLength(2);
    const ways = (locked: string) =>
      [...rowWays(group, new Set([locked]))].map((edits) => edits.map(editSaid));
    expect(ways('Back')).toEqual([['Front 1 Body 1 body by 4'], ['Front 1 Body 0 rib by 4']]);
    expect(ways('Front')).toEqual([['Back 1 Back 1 body by -4'], ['Back 1 Back 0 rib by -4']]);
    expect(ways('Sleeve')).toEqual([]);
    expect([...rowWays([], new Set(['Back']))]).toEqual([]);
  });

  it('below a neck before beside it where a whole edge is to be level, the longest first elsewhere', () => {
    const [one] = seamsOf('armhole', straight);
    const [top, armhole] = linesOf(one);
    const front = { ...armhole, laid: armhole.laid.filter(({ stretch }) => stretch.piece === 'Front') };
    const worked = { ...one, lines: [top, front] } as unknown as WorkedJoint;
    const order = (kind: string) =>
      [...rowWays([broken(worked, { ...seam, kind } as unknown as Consequence)], new Set(['Sleeve']))].map(
        ([edit]) => edit?.kind === 'rows' && edit.part,
      );
    expect(order('level')).toEqual(['Body', 'Right']);
    expect(order('seam')).toEqual(['Right', 'Body']);
  });

  it('of a pair: as many as the changed one has more', () => {
    const [arm] = linesOf(seamsOf('sleeve', shaped)[1]);
    const pair = { kind: 'pair', piece: 'Sleeve', was: 10, now: 14, other: 8 } as const;
    expect([...pairWays(pair, arm)].map((edits) => edits.map(editSaid))).toEqual([
      ['Sleeve 2 Sleeve 0 rib by 6'],
      ['Sleeve 2 Sleeve 1 sleeve by 6'],
    ]);
    expect([...pairWays(pair, undefined)]).toEqual([]);
  });

  it('the same of several makes is one edit, makes in their order', () => {
    const of = (make: number, by = 2, called = 'a'): Edit => ({
      kind: 'rows',
      piece: 'Sleeve',
      makes: [make],
      part: 'Sleeve',
      section: 0,
      called,
      by,
    });
    expect(merged([of(2), of(1), of(2)])).toEqual([{ ...of(1), makes: [1, 2] }]);
    expect(merged([of(10), of(2), of(1, 4), of(1, 2, 'b')])).toEqual([
      { ...of(2), makes: [2, 10] },
      of(1, 4),
      of(1, 2, 'b'),
    ]);
    expect(merged([{ kind: 'width', piece: 'Sleeve', part: 'Sleeve', by: 2 }, of(1)])).toEqual([of(1)]);
  });
});

/* A rib over a multiple of 4 grows by a multiple of 4: what an edge asks for first, then one more or fewer on it, and so on. */
describe('counts of a band', () => {
  const band = (fabric: 'rib 2x2' | 'garter', ...pickUp: readonly PickUp[]) =>
    standing(piece('Band', 'other', [part('Band', { pickUp }, [{ ...section('rib', 3), fabric }])]));
  const asks = (along: number, fit: number, make = 1): Break =>
    broken(
      { joint: { kind: 'pick up', piece: 'Band', make, along: [] }, lines: [] } as unknown as WorkedJoint,
      {
        kind: 'pick up',
        band: 'Band',
        along,
        stitches: 0,
        fit,
        longerMm: 0,
      },
    );
  const ways = (garment: ReturnType<typeof band>, group: readonly Break[], locked: readonly string[] = []) =>
    [...pickUpWays(garment, group, new Set(locked))].map((edits) =>
      edits
        .map((edit) =>
          edit.kind === 'pick up'
            ? `${edit.piece} ${edit.edges.map(({ at, along, was, now }) => `${at} ${along} ${was}→${now}`).join(' ')}`
            : edit.kind,
        )
        .join('; '),
    );
  const edges = [
    { along: 'left', stitches: 5 },
    { along: 'middle', stitches: 4 },
    { along: 'right', stitches: 5 },
    { along: 'back neck', stitches: 8 },
  ];

  it('an edge of 5 that asks for 11: what it has besides is behind, nearest first', () => {
    const pairs = [
      [11, 10],
      [11, 6],
      [12, 9],
      [12, 5],
      [10, 7],
      [10, 11],
      [13, 8],
      [13, 12],
      [13, 4],
      [9, 8],
      [9, 12],
      [9, 4],
      [14, 7],
      [14, 11],
      [8, 9],
      [8, 5],
      [15, 10],
      [15, 6],
      [7, 10],
      [7, 6],
    ];
    expect(ways(band('rib 2x2', ...edges), [asks(0, 11)])).toEqual(
      pairs.map(([left, behind]) => `Band 0 left 5→${left}${behind === 8 ? '' : ` 3 back neck 8→${behind}`}`),
    );
  });

  it('in garter any count is as good: what it asks for, then one more or fewer', () => {
    const first = ways(band('garter', ...edges), [asks(0, 11)]);
    expect(first).toEqual(
      [
        [11, 8],
        [11, 9],
        [11, 7],
        [12, 8],
        [12, 9],
        [12, 7],
        [10, 8],
        [10, 9],
        [10, 7],
      ].map(([left, behind]) => `Band 0 left 5→${left}${behind === 8 ? '' : ` 3 back neck 8→${behind}`}`),
    );
  });

  it('the second make of a band has its edges the other way round', () => {
    expect(ways(band('garter', ...edges), [asks(0, 12, 2)])[0]).toBe('Band 3 back neck 8→12');
    expect(ways(band('garter', ...edges), [asks(1, 9, 2)])[0]).toBe('Band 2 right 5→9');
  });

  it('behind is behind, wherever along the band it comes', () => {
    const round = [edges[0], edges[3], edges[1], edges[2]].flatMap((one) => one ?? []);
    expect(ways(band('rib 2x2', ...round), [asks(0, 11)])[0]).toBe('Band 0 left 5→11 1 back neck 8→10');
  });

  it('where no edge is behind, the last one that is not asked about', () => {
    const three = edges.slice(0, 3);
    expect(ways(band('rib 2x2', ...three), [asks(0, 8)])[0]).toBe('Band 0 left 5→8 2 right 5→6');
    expect(ways(band('rib 2x2', ...three), [asks(0, 8), asks(2, 8)])[0]).toBe(
      'Band 0 left 5→8 1 middle 4→6 2 right 5→8',
    );
    // all three asked about: only they change
    const all = ways(band('rib 2x2', ...three), [asks(0, 8), asks(1, 6), asks(2, 6)]);
    expect(all).toEqual(['Band 0 left 5→10 1 middle 4→8 2 right 5→8', 'Band 0 left 5→6 2 right 5→4']);
  });

  it('what rests on a holder is as many as it is, and takes none of the others’', () => {
    const held = [
      { along: 'left', stitches: 5 },
      { along: 'middle', stitches: 4, held: true as const },
    ];
    expect(ways(band('garter', ...held), [asks(1, 6)])).toEqual([
      'Band 1 middle 4→6',
      'Band 0 left 5→6 1 middle 4→6',
      'Band 0 left 5→4 1 middle 4→6',
      'Band 1 middle 4→6',
      'Band 0 left 5→6 1 middle 4→6',
      'Band 0 left 5→4 1 middle 4→6',
      'Band 1 middle 4→6',
      'Band 0 left 5→6 1 middle 4→6',
      'Band 0 left 5→4 1 middle 4→6',
    ]);
    expect(ways(band('garter', ...held), [asks(0, 7)])).toEqual([
      'Band 0 left 5→7',
      'Band 0 left 5→8',
      'Band 0 left 5→6',
    ]);
  });

  it('none of a band that stays, nor of one that is not there or is cast on', () => {
    expect(ways(band('garter', ...edges), [asks(0, 9)], ['Band'])).toEqual([]);
    expect(ways(standing(back), [asks(0, 9)])).toEqual([]);
    expect(ways(standing({ ...back, name: 'Band' }), [asks(0, 9)])).toEqual([]);
    expect(ways(band('garter', ...edges), [])).toEqual([]);
    expect(ways(band('garter', ...edges), [broken(undefined)])).toEqual([]);
  });
});
