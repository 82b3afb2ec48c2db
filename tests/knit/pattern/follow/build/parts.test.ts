import { describe, expect, it } from 'vitest';
import { keepBorder } from '../../../../../src/knit/pattern/follow/build/borders.ts';
import { compare } from '../../../../../src/knit/pattern/follow/build/compare.ts';
import { fullNow } from '../../../../../src/knit/pattern/follow/build/full.ts';
import { freshNotes } from '../../../../../src/knit/pattern/follow/build/notes.ts';
import {
  holdSet,
  newPart,
  newPiece,
  split,
  takeUp,
} from '../../../../../src/knit/pattern/follow/build/part.ts';
import { pushRow, takeBack } from '../../../../../src/knit/pattern/follow/build/push-row.ts';
import { evenRows } from '../../../../../src/knit/pattern/follow/build/run-rows.ts';
import { openStretch } from '../../../../../src/knit/pattern/follow/build/target.ts';
import { recipeOf } from '../../../../../src/knit/pattern/follow/build/to-recipe.ts';
import { wantSide } from '../../../../../src/knit/pattern/follow/build/want-side.ts';
import { MOST_PIECES } from '../../../../../src/knit/piece/check-recipe.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';
import { castOn } from './in-hand.ts';

const K = [{ work: 'k', until: { left: 0 } }] as const;

/** So many rows worked, a border at each edge. */
function back(rows: number, firstSide: Side = 'RS') {
  const hand = castOn(20, firstSide);
  hand.part.column = 3;
  keepBorder(hand.part, 'right', 2, ['k']);
  keepBorder(hand.part, 'left', 3, ['k', 'p']);
  evenRows(hand.build, hand.part, rows, 'even');
  return hand;
}

describe('stitches that are parted', () => {
  it.each<[number, number[], number, boolean, string[]]>([
    // after 3 rows the last one ran from the right edge
    [3, [8, 12], 1, false, ['left side 12 at 11 neck right WS', '8 right at 3 neck left WS']],
    [3, [8, 12], 0, false, ['right side 8 at 3 neck left WS', '12 left at 11 neck right WS']],
    [4, [8, 12], 1, false, ['right side 12 at 3 neck left RS', '8 left at 15 neck right RS']],
    [4, [8, 12], 0, false, ['left side 8 at 15 neck right RS', '12 right at 3 neck left RS']],
    [4, [8, 12], 0, true, ['right side 8 at 3 neck left RS', '12 left at 11 neck right RS']],
    [3, [8, 12], 0, true, ['left side 8 at 15 neck right WS', '12 right at 3 neck left WS']],
    [
      3,
      [7, 6, 7],
      2,
      false,
      ['left side 7 at 16 neck right WS', '7 right at 3 neck left WS', '6 middle at 10 neck right WS'],
    ],
    [
      3,
      [7, 6, 7],
      1,
      false,
      ['middle 6 at 10 neck right WS', '7 right at 3 neck left WS', '7 left at 16 neck right WS'],
    ],
  ])('after %i rows in %j, the %i. goes on, before the row: %s', (rows, sets, keep, beforeRow, wanted) => {
    const { build, piece, part } = back(rows);
    part.unworked = 4;
    const now = split(build, piece, part, sets, keep, beforeRow);
    const rest = piece.resting.map(
      (one) => `${one.stitches} ${one.edge} at ${one.column} neck ${one.neck} ${one.firstSide}`,
    );
    expect([`${now.name} ${now.live} at ${now.column} neck ${now.neck} ${now.firstSide}`, ...rest]).toEqual(
      wanted,
    );
    expect([part.end, piece.marks.get('neck')?.rows, now.baseRows]).toEqual(['split', rows, rows]);
    expect(now.unworked).toBe(beforeRow && keep === 0 ? 4 : 0);
    expect(now.parent).toBe(part);
    expect(build.part).toBe(now);
  });

  it('of which the first is not worked first keep nothing that a turn left', () => {
    const { build, piece, part } = back(4);
    part.unworked = 4;
    expect(split(build, piece, part, [8, 12], 1, true).unworked).toBe(0);
  });

  it('keep the border of their own edge, as far as it was worked', () => {
    const { build, piece, part } = back(4);
    const right = split(build, piece, part, [8, 12], 0, true);
    expect(right.borders).toEqual({ right: { stitches: 2, rows: ['k'], first: -4, phase: 0, since: -1 } });
    const left = takeUp(build, piece, piece.resting[0] as never);
    expect(left.borders).toEqual({ left: { stitches: 3, rows: ['k', 'p'], first: -4, phase: 0, since: -1 } });
    const middle = back(3);
    expect(split(middle.build, middle.piece, middle.part, [7, 6, 7], 1).borders).toEqual({});
  });

  it('are taken up on the side that is asked for, a row of the fabric on where that is the other', () => {
    const { build, piece, part } = back(4);
    split(build, piece, part, [6, 7, 7], 0, true);
    const [one, other] = piece.resting;
    const same = takeUp(build, piece, one as never);
    expect([same.firstSide, same.fabricRow]).toEqual(['RS', 4]);
    const turned = takeUp(build, piece, other as never, 'WS');
    expect([turned.firstSide, turned.fabricRow]).toEqual(['WS', 5]);
    expect(piece.resting).toEqual([]);
  });

  it('are held for good while another part goes on', () => {
    const { build, piece, part } = back(4);
    const now = split(build, piece, part, [8, 12], 0, true);
    holdSet(build, piece, piece.resting[0] as never);
    expect(build.part).toBe(now);
    expect(piece.parts.map(({ name, end }) => `${name} ${end}`)).toEqual([
      'body split',
      'right side undefined',
      'left side hold',
    ]);
  });

  it.each([
    ['all that is on the needle', 8, 1, undefined],
    ['those that rest beside it', 12, 1, undefined],
    ['those that rest, told too late', 12, 2, 8],
    ['another number', 9, 1, 8],
  ])('are counted: %s', (_, stated, rows, found) => {
    const { build, piece, part } = back(4);
    const now = split(build, piece, part, [8, 12], 0, true);
    evenRows(build, now, rows, 'even');
    const note = freshNotes();
    compare(build, stated, note, { line: 7, column: 3 } as never);
    expect(note.stated).toEqual([stated]);
    expect(note.faults.map(({ figures }) => figures)).toEqual(
      found === undefined ? [] : [{ statedStitches: stated, foundStitches: found }],
    );
    compare(build, stated, note, { line: 7, column: 9 } as never);
    expect(note.faults.map(({ at }) => at)).toEqual(found === undefined ? [] : [{ line: 7, column: 3 }]);
  });

  it('are not counted with those that rest elsewhere', () => {
    const { build, piece, part } = back(4);
    const side = split(build, piece, part, [8, 12], 0, true);
    split(build, piece, side, [3, 5], 0, true);
    const told = [12, 5].map((stated) => {
      const note = freshNotes();
      compare(build, stated, note, { line: 7, column: 3 } as never);
      return note.faults.length;
    });
    expect(told).toEqual([1, 0]);
  });
});

describe('the side that the text names', () => {
  it.each<[number, Side, boolean, Side, number]>([
    [0, 'RS', true, 'RS', 0],
    [0, 'WS', true, 'WS', 1],
    [2, 'RS', true, 'RS', 2],
    [2, 'WS', false, 'RS', 2],
    [3, 'WS', true, 'RS', 3],
  ])('after %i rows, %s comes next: %s', (rows, side, can, firstSide, fabricRow) => {
    const { build, part } = castOn(20);
    evenRows(build, part, rows, 'even');
    expect(wantSide(build, part, side)).toBe(can);
    expect([part.firstSide, part.fabricRow, part.rows.length]).toEqual([firstSide, fabricRow, rows]);
  });

  it('takes one row more of a stretch whose end is open, in its fabric and told at its line', () => {
    const { build, piece, part } = castOn(20);
    evenRows(build, part, 2, 'stretch');
    const section = part.sections.at(-1);
    if (section) section.stretch = openStretch(piece);
    build.line = 9;
    part.fabric = { is: 'face', name: 'garter', rows: ['k', 'p'], label: 'garter' };
    part.fabricRow = 0;
    part.closed = true;
    expect(wantSide(build, part, 'WS')).toBe(true);
    expect(
      part.rows.map(({ fabric, line, kind, fabricRow }) => `${fabric.label} ${line} ${kind} ${fabricRow}`),
    ).toEqual(['stocking 1 stretch 0', 'stocking 1 stretch 1', 'stocking 1 stretch 2']);
    expect([part.fabric.label, part.fabricRow, part.closed, build.line, part.sections.length]).toEqual([
      'garter',
      0,
      true,
      9,
      1,
    ]);
  });

  it.each([
    ['she counted it', { 'back/1': 2 }, undefined],
    ['it has an end of its own', {}, 'WS'],
  ])('takes none where %s', (_, stretches, endSide) => {
    const { build, piece, part } = castOn(20);
    evenRows(build, part, 2, 'stretch');
    const section = part.sections.at(-1);
    if (section) section.stretch = { ...openStretch(piece), ...(endSide && { endSide: endSide as Side }) };
    expect(wantSide({ ...build, stretches }, part, 'WS')).toBe(false);
    expect(part.rows.length).toBe(2);
  });
});

describe('a row taken back', () => {
  it('leaves all as it was before it', () => {
    const { build, part } = back(3);
    const before = { ...part, rows: [...part.rows], sections: [...part.sections] };
    const cells = build.cells;
    build.needle = 5;
    pushRow(build, part, [{ work: 'k2tog', times: 1 }, ...K], { kind: 'row', advance: true });
    expect([part.live, part.rows.length, part.sections.length, build.cells]).toEqual([19, 4, 2, cells + 40]);
    expect(takeBack(build, part)?.after).toBe(19);
    expect({ ...part, closed: before.closed }).toEqual(before);
  });

  it('is none where none was worked', () => {
    const { build, part } = castOn(20);
    expect(takeBack(build, part)).toBeUndefined();
  });

  it('is too many rows, stitches or cells where no piece has as many', () => {
    const { build, part } = castOn(1500);
    const more = [{ work: 'kfb', until: { left: 0 } }] as const;
    expect(pushRow(build, part, more, { kind: 'row', advance: true })?.code).toBe('too many stitches');
    build.cells = 6_000_001;
    expect(pushRow(build, part, K, { kind: 'row', advance: true })).toMatchObject({
      code: 'too long',
      figures: { mostRows: 4000 },
    });
    build.cells = 6_000_000;
    expect(pushRow(build, part, K, { kind: 'row', advance: true })).toBeUndefined();
  });
});

describe('more than a garment can have', () => {
  it('pieces: what comes next is not read, and the last one is let go', () => {
    const { build } = castOn(9, 'RS', 'piece 1');
    for (let i = 2; i <= MOST_PIECES + 1; i += 1) {
      expect(fullNow(build)).toBeUndefined();
      const piece = newPiece(build, { name: `piece ${i}`, makes: 1 });
      newPart(build, piece, { name: 'body', from: { castOn: 9 }, live: 9, firstSide: 'RS' });
    }
    expect(fullNow(build)).toMatchObject({
      code: 'too many pieces read',
      figures: { mostPieces: MOST_PIECES },
    });
    expect([build.full, build.piece, build.part, build.pieces.length, build.begun.length]).toEqual([
      true,
      undefined,
      undefined,
      MOST_PIECES,
      MOST_PIECES,
    ]);
    expect(fullNow(build)).toBeUndefined();
  });

  it('parts: those that are there stay', () => {
    const { build, piece } = castOn(9);
    const more = () => newPart(build, piece, { name: 'body', from: { castOn: 9 }, live: 9, firstSide: 'RS' });
    while (piece.parts.length < 100) more();
    expect(fullNow(build)).toBeUndefined();
    expect(more().name).toBe('body 101');
    expect(fullNow(build)).toMatchObject({
      code: 'too many parts begun',
      figures: { pieceName: 'back', mostTimes: 100 },
    });
    expect([build.full, build.piece, build.pieces.length]).toEqual([true, piece, 1]);
  });
});

describe('a piece as a recipe', () => {
  it('has its gauge, its rows and what rests', () => {
    const { build, piece, part } = back(2);
    build.gauge = { stitches: 20, rows: 28 };
    const now = split(build, piece, part, [8, 12], 0, true);
    evenRows(build, now, 1, 'even');
    expect(recipeOf(build, piece)).toMatchObject({
      name: 'Back',
      role: 'back',
      makes: 1,
      gauge: { stitches: 20, rows: 28 },
      parts: [
        {
          name: 'body',
          from: { castOn: 20 },
          firstSide: 'RS',
          sections: [{ name: 'stocking', rows: 2, needle: 4, shaping: [] }],
          end: 'split',
        },
        {
          name: 'right side',
          from: { part: 'body', stitches: 8, edge: 'right' },
          sections: [{ rows: 1 }],
          end: 'hold',
        },
        {
          name: 'resting 1',
          from: { part: 'body', stitches: 12, edge: 'left' },
          firstSide: 'RS',
          sections: [],
          end: 'hold',
        },
      ],
    });
  });

  it('has no gauge that nobody said, and is none without stitches or rows', () => {
    const { build, piece, part } = castOn(20);
    expect(recipeOf(build, piece)).toBeUndefined();
    evenRows(build, part, 1, 'even');
    expect(recipeOf(build, piece)).not.toHaveProperty('gauge');
    const none = castOn(0);
    none.part.end = 'hold';
    expect(recipeOf(none.build, none.piece)).toBeUndefined();
  });
});
