import { describe, expect, it } from 'vitest';
import { firmGround } from '../../src/progress/firm-ground.ts';
import { foldPlace } from '../../src/progress/fold.ts';
import {
  type EntryKind,
  entryKinds,
  inOrder,
  knits,
  type LogEntry,
  makeKey,
  moves,
  parseMakeKey,
} from '../../src/progress/log.ts';
import { makeRecord } from '../../src/progress/make-record.ts';
import { pace, timeFor } from '../../src/progress/pace.ts';
import { sittings } from '../../src/progress/sittings.ts';
import { sorted, standing } from '../../src/progress/standing.ts';
import { takeBack } from '../../src/progress/take-back.ts';

/** Logs small enough to be read with a pencil in hand. */

const MINUTE = 60_000;
const BACK = 'g/back/0/1';
const SLEEVE = 'g/sleeve/0/1';

type Deed = Partial<LogEntry> & { readonly kind: EntryKind };

/** Entries in the order given, at the minutes given. */
const log = (...deeds: readonly (readonly [minute: number, deed: Deed])[]): LogEntry[] =>
  deeds.map(
    ([minute, deed], i) =>
      ({
        id: `e${i + 1}`,
        make: BACK,
        seq: i + 1,
        at: minute * MINUTE,
        row: 0,
        ...deed,
      }) as LogEntry,
  );
const row = (n: number, more: Partial<LogEntry> = {}) => ({ kind: 'row', row: n, ...more }) as Deed;
/** rows finished at these minutes */
const rowsAt = (...minutes: readonly number[]) =>
  log(...minutes.map((minute, i) => [minute, row(i + 1)] as const));

describe('pace, by hand', () => {
  it('is the same in whatever order the rows are read from the box', () => {
    const rows = rowsAt(0, 10, 20, 31, 70);
    const other = [3, 0, 4, 2, 1].flatMap((i) => rows[i] ?? []);
    expect(pace(other, (entry) => entry.row)).toEqual(pace(rows, (entry) => entry.row));
    expect(pace(other, () => 1)).toMatchObject({ rows: 4, workedMs: 70 * MINUTE });
  });

  it('rows that take ten minutes, and one of forty: four times as long is still a row, a minute more is a pause', () => {
    expect(pace(rowsAt(0, 10, 20, 30, 70), () => 1)).toMatchObject({ rows: 4, workedMs: 70 * MINUTE });
    expect(pace(rowsAt(0, 10, 20, 30, 71), () => 1)).toMatchObject({ rows: 3, workedMs: 30 * MINUTE });
  });

  it('quick rows of one minute: five minutes is no pause yet, six are', () => {
    expect(pace(rowsAt(0, 1, 2, 3, 8), () => 1)?.rows).toBe(4);
    expect(pace(rowsAt(0, 1, 2, 3, 9), () => 1)?.rows).toBe(3);
  });

  it('long rows of half an hour: more than an hour is a pause all the same', () => {
    expect(pace(rowsAt(0, 30, 60, 90, 150), () => 1)?.rows).toBe(4);
    expect(pace(rowsAt(0, 30, 60, 90, 151), () => 1)?.rows).toBe(3);
  });

  it('what is usual is the middle one of her rows, whatever order they came in', () => {
    // 20, 2, 2, 30, 20 minutes: twenty is usual, so thirty is no pause, nor would sixty be
    expect(pace(rowsAt(0, 20, 22, 24, 54, 74), () => 1)).toMatchObject({ rows: 5, workedMs: 74 * MINUTE });
  });

  it('each row counts its own stitches, of each make its own time', () => {
    const entries = log(
      [0, row(1)],
      [1, row(1, { make: SLEEVE })],
      [2, row(2)],
      [3, row(2, { make: SLEEVE })],
      [4, row(3)],
    );
    const found = pace(entries, (entry) => (entry.make === SLEEVE ? 50 : 100));
    // two minutes each: 100 and 100 stitches of the back, 50 of the sleeve
    expect(found).toMatchObject({ rows: 3, workedMs: 6 * MINUTE, rowsPerHour: 30, stitchesPerHour: 2500 });
  });

  it('three rows are enough, two are not, and rows in no time at all tell nothing', () => {
    expect(pace(rowsAt(0, 2, 4, 6), () => 1)?.rows).toBe(3);
    expect(pace(rowsAt(0, 2, 4), () => 1)).toBeUndefined();
    expect(pace(rowsAt(3, 3, 3, 3, 3), () => 1)).toBeUndefined();
  });

  it('a pause is longer than five minutes, and of slow rows than an hour: to the millisecond', () => {
    const hair = 1 / 60_000;
    const counted = (gap: number, pause: number) =>
      pace(rowsAt(0, gap, 2 * gap, 3 * gap, 3 * gap + pause), () => 1)?.rows;
    expect([counted(1, 5), counted(1, 5 + hair)]).toEqual([4, 3]);
    expect([counted(20, 60), counted(20, 60 + hair)]).toEqual([4, 3]);
    expect([counted(3, 12), counted(3, 12 + hair)]).toEqual([4, 3]);
  });

  it('a row logged in the same moment as the one before is one, in no time', () => {
    expect(pace(rowsAt(0, 2, 2, 4, 6), () => 1)).toMatchObject({ rows: 4, workedMs: 6 * MINUTE });
  });

  it('a note between two rows takes nothing from the row, a rip does: the row after it began there', () => {
    const entries = log(
      [0, row(1)],
      [2, row(2)],
      [3, { kind: 'note', row: 2, text: 'x' }],
      [4, row(3)],
      [5, { kind: 'rip back', row: 1 }],
      [7, row(2)],
    );
    expect(pace(entries, () => 1)).toMatchObject({ rows: 3, workedMs: 6 * MINUTE });
  });

  it('what is left takes as long as its stitches: 500 at 2,500 an hour are twelve minutes', () => {
    const at = { rowsPerHour: 30, stitchesPerHour: 2500, rows: 3, workedMs: 1 };
    expect(timeFor(500, at)).toBe(12 * MINUTE);
    expect(timeFor(0, at)).toBe(0);
  });
});

describe('sittings, by hand', () => {
  it('go on as long as the work was not laid down for more than the time given', () => {
    expect(sittings(rowsAt(0, 45, 90)).map(({ rows }) => rows)).toEqual([3]);
    expect(sittings(rowsAt(0, 45, 91)).map(({ rows }) => rows)).toEqual([2, 1]);
    // a thousandth of a second more
    expect(sittings(rowsAt(0, 45, 90 + 1 / MINUTE)).map(({ rows }) => rows)).toEqual([2, 1]);
    expect(sittings(rowsAt(0, 5, 11), 5 * MINUTE).map(({ rows }) => rows)).toEqual([2, 1]);
  });

  it('tell first and last moment, the makes in the order they were taken up, and rows ripped back', () => {
    const entries = log(
      [10, row(1, { make: SLEEVE })],
      [12, row(1)],
      [14, row(2)],
      [16, row(2, { make: SLEEVE })],
      [18, row(3)],
      [20, { kind: 'rip back', row: 1 }],
      [25, { kind: 'note', row: 1, text: 'x' }],
    );
    expect(sittings(entries)).toEqual([
      { from: 10 * MINUTE, to: 20 * MINUTE, rows: 5, ripped: 2, makes: [SLEEVE, BACK] },
    ]);
  });

  it('do not count a row that was taken back, but the time it took', () => {
    const entries = log([0, row(1)], [2, row(2)], [4, { kind: 'undo', row: 1, undoes: 'e2' }]);
    expect(sittings(entries)).toEqual([{ from: 0, to: 4 * MINUTE, rows: 1, ripped: 0, makes: [BACK] }]);
  });

  it('count as ripped what lay above in that make alone, and nothing where the place was set up', () => {
    const entries = log(
      [0, row(1)],
      [1, row(2)],
      [2, row(9, { make: SLEEVE })],
      [3, { kind: 'place', row: 7 }],
      [4, { kind: 'rip back', row: 5 }],
      [5, { kind: 'rip back', row: 6 }],
      [6, { kind: 'rip back', row: 6 }],
    );
    expect(sittings(entries).map(({ ripped }) => ripped)).toEqual([2]);
  });

  it('count nothing as ripped where nothing was on the needle', () => {
    const entries = log([0, { kind: 'rip back', row: 0 }], [1, row(1)], [2, { kind: 'rip back', row: 0 }]);
    expect(sittings(entries).map(({ ripped }) => ripped)).toEqual([1]);
  });

  it('are in the order of time, of two devices in the same minute by their place in the log', () => {
    const [one, two, three] = rowsAt(5, 5, 1);
    const entries = [two, three, one].filter((entry) => entry !== undefined);
    expect(sittings(entries.map((entry) => (entry === one ? { ...entry, make: SLEEVE } : entry)))).toEqual([
      { from: MINUTE, to: 5 * MINUTE, rows: 3, ripped: 0, makes: [BACK, SLEEVE] },
    ]);
  });

  it('are none of nothing', () => {
    expect(sittings([])).toEqual([]);
    expect(sittings(log([0, { kind: 'note', text: 'x' }]))).toEqual([]);
  });
});

describe('the log, by hand', () => {
  it('has one order on every device: by its own numbers, of two with the same by their ids', () => {
    const one = (id: string, seq: number): LogEntry => ({
      id,
      seq,
      make: BACK,
      at: 0,
      kind: 'row',
      row: seq,
    });
    const entries = [one('b', 2), one('a', 2), one('z', 1), one('a', 10)];
    expect(sorted(entries).map(({ id, seq }) => `${id}${seq}`)).toEqual(['z1', 'a2', 'b2', 'a10']);
    expect(inOrder(one('a', 2), one('a', 2))).toBe(0);
    expect(inOrder(one('a', 2), one('b', 2))).toBe(-inOrder(one('b', 2), one('a', 2)));
    expect(foldPlace(entries).rows).toBe(10);
    expect(foldPlace([one('a', 2), { ...one('b', 2), row: 7 }]).rows).toBe(7);
    expect(foldPlace([{ ...one('b', 2), row: 7 }, one('a', 2)]).rows).toBe(7);
  });

  it('a make was last knitted when its last row, rip or undo was, whatever was noted since and in whatever order', () => {
    const entries = log([9, row(1)], [3, row(2)], [20, { kind: 'note', row: 2, text: 'x' }]);
    expect(foldPlace(entries).at).toBe(9 * MINUTE);
    expect(foldPlace([...entries].reverse()).at).toBe(9 * MINUTE);
    expect(foldPlace(log([20, { kind: 'check', count: 3 }])).at).toBe(0);
  });

  it('knows which deeds move the place, and which are of the knitting', () => {
    const all = (is: (kind: EntryKind) => boolean) => entryKinds.filter(is);
    expect([...entryKinds].sort()).toEqual([
      'check',
      'lifeline',
      'note',
      'place',
      'rework',
      'rip back',
      'row',
      'strike',
      'undo',
    ]);
    expect(all(moves)).toEqual(['row', 'place', 'rip back', 'rework']);
    expect(all(knits)).toEqual(['row', 'undo', 'place', 'rip back', 'rework']);
  });

  it('what was taken back or struck out does not stand, nor does the taking back', () => {
    const entries = log(
      [0, row(1)],
      [1, { kind: 'note', row: 1, text: 'x' }],
      [2, row(2)],
      [3, { kind: 'undo', row: 1, undoes: 'e3' }],
      [4, { kind: 'strike', row: 1, undoes: 'e2' }],
    );
    expect(standing([...entries].reverse()).map(({ id }) => id)).toEqual(['e1']);
  });

  it('a taking back of a rework gives the plan before it back, and at the cast-on there is nothing to take', () => {
    const entries = log(
      [0, row(1, { plan: 'g/p/0/s/1-first' })],
      [1, row(2)],
      [2, { kind: 'rework', row: 2, plan: 'g/p/0/s/1-second' }],
    );
    expect(takeBack(entries, foldPlace(entries))).toEqual({
      undoes: ['e3'],
      rows: 2,
      plan: 'g/p/0/s/1-first',
    });
    const [begun] = entries;
    if (begun === undefined) throw new Error('no entry');
    expect(takeBack([begun], foldPlace([begun]))).toEqual({
      undoes: ['e1'],
      rows: 0,
      plan: 'g/p/0/s/1-first',
    });
    expect(takeBack([], foldPlace([]))).toBeUndefined();
  });

  it('a row is taken back in the plan that it was knitted by, not in one that was taken back before it', () => {
    const entries = log(
      [0, { kind: 'rework', row: 0, plan: 'g/p/0/s/1-first' }],
      [1, { kind: 'undo', row: 0, undoes: 'e1' }],
      [2, row(1, { plan: 'g/p/0/s/1-second' })],
      [3, row(2)],
    );
    expect(takeBack(entries, foldPlace(entries))).toEqual({
      undoes: ['e4'],
      rows: 1,
      plan: 'g/p/0/s/1-second',
    });
  });

  it('of two devices that came to the same row both are taken back at once', () => {
    const entries = log([0, row(1, { plan: 'g/p/0/s/1-p' })], [1, row(2)], [2, row(2)]);
    expect(takeBack(entries, foldPlace(entries))).toEqual({
      undoes: ['e3', 'e2'],
      rows: 1,
      plan: 'g/p/0/s/1-p',
    });
  });
});

describe('firm ground', () => {
  const planned = (n: number) => 100 + n;
  const check = (n: number, count: number): Deed => ({ kind: 'check', row: n, count });

  it('is the highest row on the needle at which she counted what was planned', () => {
    const entries = log(
      [0, row(4)],
      [1, check(4, 104)],
      [2, row(8)],
      [3, check(8, 108)],
      [4, row(9)],
      [5, check(9, 1)],
    );
    expect(firmGround(entries, planned)).toEqual({ row: 8, count: 108, at: 3 * MINUTE, entry: 'e4' });
  });

  it('is void where it was ripped back to below it, also once she is above it again; not where she is on it', () => {
    const begun = [
      [0, row(4)],
      [1, check(4, 104)],
      [2, row(8)],
      [3, check(8, 108)],
    ] as const;
    const ripped = (to: number) => log(...begun, [4, { kind: 'rip back', row: to }], [5, row(9)]);
    expect(firmGround(ripped(8), planned)?.row).toBe(8);
    expect(firmGround(ripped(7), planned)?.row).toBe(4);
    expect(firmGround(ripped(3), planned)).toBeUndefined();
  });

  it('lies on the needle: a count at a row that was taken back is none', () => {
    const entries = log(
      [0, row(4)],
      [1, row(5)],
      [2, check(5, 105)],
      [3, { kind: 'undo', row: 4, undoes: 'e2' }],
    );
    expect(firmGround(entries, planned)).toBeUndefined();
  });

  it('is none without a count, or where no plan says what should be there', () => {
    expect(firmGround(log([0, row(4)]), planned)).toBeUndefined();
    expect(firmGround(log([0, row(4)], [1, check(4, 104)]), () => undefined)).toBeUndefined();
    expect(
      firmGround(log([0, row(4)], [1, { kind: 'note', row: 4, count: 104 } as never]), planned),
    ).toBeUndefined();
  });
});

describe('what the log of a make tells', () => {
  it('is its rows, days, time and what happened, of no other make', () => {
    const entries = log(
      [0, row(1)],
      [2, row(2)],
      [3, { kind: 'check', row: 2, count: 102 }],
      [4, row(3)],
      [5, { kind: 'note', row: 3, text: 'blue' }],
      [5, { kind: 'note', row: 3, text: '' }],
      [6, row(4)],
      [7, { kind: 'rip back', row: 3 }],
      [8, { kind: 'rework', row: 3, plan: 'g/p/0/s/1-longer' }],
      [9, row(9, { make: SLEEVE })],
      [9, { kind: 'note', row: 9, text: 'of the sleeve', make: SLEEVE }],
    );
    expect(makeRecord(BACK, entries)).toEqual({
      make: BACK,
      rows: 3,
      from: 0,
      to: 6 * MINUTE,
      workedMs: 6 * MINUTE,
      ripped: 1,
      reworked: 1,
      checked: [2],
      notes: [{ row: 3, text: 'blue' }],
    });
  });

  it('is nothing of a make that is not begun', () => {
    expect(makeRecord(BACK, [])).toEqual({
      make: BACK,
      rows: 0,
      from: undefined,
      to: undefined,
      workedMs: undefined,
      ripped: 0,
      reworked: 0,
      checked: [],
      notes: [],
    });
  });
});

describe('the key of a make', () => {
  it('says garment, piece, part and make, and is read back', () => {
    const id = { garment: 'g', piece: 'back', part: 0, make: 12 };
    expect(makeKey(id)).toBe('g/back/0/12');
    expect(parseMakeKey('g/back/0/12')).toEqual(id);
    expect(parseMakeKey('g/back/10/1')).toEqual({ ...id, part: 10, make: 1 });
  });

  it.each([
    '',
    'g',
    'g/back',
    'g/back/0',
    'g/back/0/1/2',
    '/back/0/1',
    'g//0/1',
    'g/back/x/1',
    'g/back/0/x',
    'g/back/0.5/1',
    'g/back/0/1.5',
  ])('is not %j', (key) => {
    expect(parseMakeKey(key)).toBeUndefined();
  });
});
