import { afterEach, describe, expect, it } from 'vitest';
import {
  beforeRow,
  colourBefore,
  coloursInHand,
  hasTension,
  nextWithBefore,
  notesInHand,
  partAsItStands,
  tooEarly,
} from '../../../src/app/in-hand/before-row.ts';
import { type GarmentView, garmentInHand, inHand } from '../../../src/app/state.ts';
import type { Gauge } from '../../../src/knit/gauge.ts';
import type { PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';
import type { PieceRole } from '../../../src/knit/piece/recipe.ts';
import { type MakeKey, makeKey } from '../../../src/progress/log.ts';
import { plainPart } from '../../store/scenario.ts';

/** What stands on the card before a row: by hand, over a plain scarf and its garment. */

const KEY = makeKey({ garment: 'scarf', piece: 'long', part: 0, make: 2 });
const part = plainPart(12);
const gauge: Gauge = { stitches: 20, rows: 28 };

interface Hand {
  readonly make?: MakeKey;
  readonly parts?: readonly PlannedPart[];
  readonly gauge?: Gauge;
  readonly role?: PieceRole;
  readonly garment?: object;
}

/** The second copy of the scarf is in hand. */
function takeUp({ make = KEY, parts = [part], gauge, role, garment = {} }: Hand = {}): void {
  inHand.value = { make, part, place: { part: 0 } } as never;
  const copy = (n: number, of: readonly PlannedPart[]) => ({ make: n, parts: of, recipe: { gauge, role } });
  garmentInHand.value = {
    garment: { id: 'scarf', pieces: [], ...garment },
    pieces: [{ id: 'long', makes: [copy(1, [plainPart(3)]), copy(2, parts)] }],
  } as unknown as GarmentView;
}

const at = (n: number, of = part) => {
  const row = of.rows[n - 1];
  if (row === undefined) throw new Error(`no row ${n}`);
  return { part: of, row };
};

/** The plain part with another needle from a row on. */
const onNeedle = (mm: number, from: number, of = part): PlannedPart => ({
  ...of,
  rows: of.rows.map((row) => (row.n < from ? row : { ...row, needle: mm })),
});

afterEach(() => {
  inHand.value = undefined;
  garmentInHand.value = undefined;
  notesInHand.value = undefined;
  tooEarly.value = '';
});

describe('a band that is picked up across a seam that is not sewn', () => {
  const kinds = (n: number) => beforeRow(at(n)).map(({ kind }) => kind);

  it('is told so before its first row, and before no other', () => {
    takeUp();
    expect(kinds(1)).toEqual([]);
    tooEarly.value = KEY;
    expect([kinds(1), kinds(2)]).toEqual([['sew'], []]);
  });

  it('is not told of another make', () => {
    takeUp();
    tooEarly.value = makeKey({ garment: 'scarf', piece: 'long', part: 0, make: 1 });
    expect(kinds(1)).toEqual([]);
  });
});

/** A neck bound off tightly does not go over the head; common practice, no published source. */
it('a neckband is bound off loosely, nothing else is told to be', () => {
  const last = { ...(part.rows[5] as PlannedRow), after: 0 };
  const kinds = (role: PieceRole, row: PlannedRow) => {
    takeUp({ role });
    return beforeRow({ part, row }).map(({ kind }) => kind);
  };
  expect(kinds('neckband', last)).toEqual(['loosely']);
  expect(kinds('neckband', { ...last, after: 8 })).toEqual([]);
  expect(kinds('front band', last)).toEqual([]);
});

describe('what comes before a row', () => {
  it('is nothing before a plain row, the garment read or not', () => {
    expect(beforeRow(at(5))).toEqual([]);
    takeUp();
    expect(part.rows.flatMap((row) => beforeRow({ part, row }))).toEqual([]);
    expect(nextWithBefore(part, 0)).toBeUndefined();
  });

  it('is another needle, where that changes', () => {
    const other = onNeedle(5, 7);
    takeUp({ parts: [other] });
    expect([6, 7, 8].map((n) => beforeRow(at(n, other)))).toEqual([[], [{ kind: 'needle', mm: 5 }], []]);
  });

  it('is the needle first, then the colour, then what she has noted', () => {
    takeUp({
      parts: [onNeedle(5, 5)],
      garment: {
        stripes: [
          { colour: 'moss', rows: 4 },
          { colour: 'sand', rows: 2 },
        ],
      },
    });
    const note = { entry: 'e', kind: 'note', row: 5, text: 'red marker', make: 1 } as const;
    notesInHand.value = { make: KEY, notes: [note, { ...note, row: 6 }, { ...note, row: 4 }] };
    expect(beforeRow(at(5, onNeedle(5, 5)))).toEqual([
      { kind: 'needle', mm: 5 },
      { kind: 'colour', colour: 'sand' },
      note,
    ]);
  });

  it('has no note of another copy', () => {
    takeUp();
    const notes = [{ entry: 'e', kind: 'note', row: 5, text: 'red', make: 1 }] as const;
    notesInHand.value = { make: 'scarf/long/0/1', notes };
    expect(beforeRow(at(5))).toEqual([]);
    notesInHand.value = { make: KEY, notes };
    expect(beforeRow(at(5))).toEqual(notes);
  });

  it('is a place to measure only where somebody measured a tension', () => {
    const rows = plainPart(40).rows.map((row) => ({
      ...row,
      section: row.n > 30 ? 1 : 0,
      shaping: row.n > 30 ? [{ kind: 'edge', edge: 'left', by: -1 } as const] : [],
    }));
    const shaped: PlannedPart = {
      ...plainPart(40),
      rows,
      sections: [
        { name: 'Body', fabric: 'garter', needle: 4, first: 1, last: 30 },
        { name: 'Cap', fabric: 'garter', needle: 4, first: 31, last: 40 },
      ],
    };
    takeUp({ parts: [shaped] });
    expect(hasTension()).toBe(false);
    expect(beforeRow(at(31, shaped))).toEqual([]);
    takeUp({ parts: [shaped], gauge });
    expect(hasTension()).toBe(true);
    // thirty rows of 2.5 mm
    expect(beforeRow(at(31, shaped))).toEqual([{ kind: 'measure', mm: 75 }]);
    // of 3 mm as she measured them; a part that has not the row is not held against
    const measured = { ...shaped, rows: rows.map((row) => ({ ...row, height: row.n * 3 })) };
    takeUp({ parts: [measured], gauge });
    expect(beforeRow(at(31, shaped))).toEqual([{ kind: 'measure', mm: 90 }]);
    takeUp({ parts: [{ ...measured, rows: measured.rows.slice(0, 30) }], gauge });
    expect(beforeRow(at(31, shaped))).toEqual([{ kind: 'measure', mm: 75 }]);
  });
});

describe('the part in hand as it stands', () => {
  it('is that of the copy in hand, once the garment is read', () => {
    expect(partAsItStands()).toBeUndefined();
    takeUp();
    expect(partAsItStands()).toBe(part);
    expect(hasTension()).toBe(false);
  });
});

describe('the colour taken up before a row', () => {
  const stripes = [
    { colour: 'moss', rows: 4 },
    { colour: 'sand', rows: 2 },
  ];
  const changes = () => part.rows.flatMap(({ n }) => colourBefore(part, n) ?? []);
  const changedAt = () => part.rows.flatMap(({ n }) => (colourBefore(part, n) === undefined ? [] : [n]));

  it('is that of each stripe at its first row, but not of row 1 where the set-up has none', () => {
    takeUp({ garment: { stripes } });
    expect(changedAt()).toEqual([5, 7, 11]);
    expect(changes()).toEqual(['sand', 'moss', 'sand']);
  });

  it('is that of row 1 too, where the set-up is of another', () => {
    takeUp({ garment: { stripes, striped: { long: { first: 1, at: 5 } } } });
    expect(changedAt()).toEqual([1, 3, 7, 9]);
    expect(changes()).toEqual(['sand', 'moss', 'sand', 'moss']);
  });

  it('is none without stripes, before the garment is read, and of another garment', () => {
    expect(coloursInHand(part)).toBeUndefined();
    takeUp();
    expect(coloursInHand(part)).toBeUndefined();
    takeUp({ garment: { stripes: [] } });
    expect(coloursInHand(part)).toBeUndefined();
    takeUp({ garment: { stripes }, make: makeKey({ garment: 'hat', piece: 'long', part: 0, make: 2 }) });
    expect(coloursInHand(part)).toBeUndefined();
    expect(changes()).toEqual([]);
  });
});

describe('the next row before which something is done', () => {
  it('lies after the one in hand', () => {
    const twice = onNeedle(5, 4);
    takeUp({
      parts: [{ ...twice, rows: twice.rows.map((row) => (row.n < 9 ? row : { ...row, needle: 6 })) }],
    });
    const own = partAsItStands() ?? part;
    expect([0, 3, 4, 8, 9].map((after) => nextWithBefore(own, after)?.n)).toEqual([4, 4, 9, 9, undefined]);
  });
});
