import { describe, expect, it } from 'vitest';
import { countAt } from '../../../../src/knit/piece/count/count-at.ts';
import { landmarksOf } from '../../../../src/knit/piece/count/landmarks.ts';
import { changeOfRow, laidRows } from '../../../../src/knit/piece/count/lie.ts';
import {
  groupsAt,
  heightAt,
  looksLike,
  nextSide,
  type Observation,
  ridgesSeen,
  rowsAboveShaping,
  sectionsAt,
  shapingsAt,
} from '../../../../src/knit/piece/count/observation.ts';
import { findPlace } from '../../../../src/knit/piece/find-place.ts';
import { mitten, partOf, section } from './mitten.ts';

/** What is seen of a mitten of 16 rows (mitten.ts), told off row by row by hand. */

const each = <T>(what: (rows: number) => T, upTo = 16): T[] =>
  Array.from({ length: upTo + 1 }, (_, rows) => what(rows));

/** The rows of the mitten that look like that. */
const fitting = (seen: Observation): number[] =>
  each((rows) => rows).filter((rows) => looksLike(mitten, rows, seen));

describe('a mitten, row by row', () => {
  it('has so many stitches', () => {
    const counts = [20, 20, 20, 20, 20, 24, 24, 24, 24, 22, 22, 22, 22, 20, 19, 16, 13];
    expect(each((rows) => countAt(mitten, rows))).toEqual(counts);
    for (const beyond of [-1, 17, 2.5, Number.NaN]) expect(countAt(mitten, beyond)).toBeUndefined();
  });

  it('shows what can be counted from, and in which section it lies', () => {
    const told = landmarksOf(mitten).map(({ kind, row, section, edge }) =>
      [kind, row, section, edge].filter((one) => one !== undefined).join(' '),
    );
    expect(told).toEqual(['start 0 0', 'fabric 4 1', 'spread 5 1', 'group 15 1 right', 'group 16 1 left']);
    expect(landmarksOf(mitten, 15).map(({ row }) => row)).toEqual([0, 4, 5, 15]);
    expect(landmarksOf(mitten, 14).map(({ row }) => row)).toEqual([0, 4, 5]);
    expect(landmarksOf(mitten, 9, [7, 2, 12])).toEqual([
      { kind: 'start', row: 0, section: 0 },
      { kind: 'lifeline', row: 2, section: 0 },
      { kind: 'fabric', row: 4, section: 1 },
      { kind: 'spread', row: 5, section: 1 },
      { kind: 'lifeline', row: 7, section: 1 },
    ]);
    expect(landmarksOf(mitten, 2, [0]).map(({ kind, section }) => `${kind} ${section}`)).toEqual([
      'start 0',
      'lifeline 0',
    ]);
  });

  it('a fabric that goes on, a section without rows and the last bind-off are nothing to count from', () => {
    const plain = partOf(
      10,
      'bind off',
      section({}),
      section({ needle: 5 }),
      section({ fabric: 'garter', rows: 0 }),
      section({ rows: 2 }),
    );
    // garter that has no rows shows nothing, and what comes after it is another fabric than it
    expect(landmarksOf(plain).map(({ kind, row }) => `${kind} ${row}`)).toEqual(['start 0', 'fabric 8']);
    const allOff = section({
      shaping: [{ kind: 'bind off', edge: 'right', groups: [{ row: 3, stitches: 10 }] }],
      rows: 3,
    });
    expect(landmarksOf(partOf(10, 'hold', allOff)).map(({ kind }) => kind)).toEqual(['start']);
    const cast = section({ shaping: [{ kind: 'cast on', edge: 'left', groups: [{ row: 2, stitches: 5 }] }] });
    expect(landmarksOf(partOf(10, 'bind off', cast)).map(({ kind, row, edge }) => [kind, row, edge])).toEqual(
      [
        ['start', 0, undefined],
        ['group', 2, 'left'],
      ],
    );
  });

  it('lies so in the fabric: what each row added at either edge, across and in a group', () => {
    expect(laidRows(mitten, 12, 16)).toEqual([
      { right: -1, left: -1, across: 0, group: 0 },
      { right: -1, left: 0, across: 0, group: 0 },
      { right: 0, left: 0, across: 0, group: -3 },
      { right: 0, left: 0, across: 0, group: -3 },
    ]);
    expect(laidRows(mitten, 3, 5).map(changeOfRow)).toEqual([0, 4]);
    expect(changeOfRow({ right: 1, left: 2, across: 4, group: 8 })).toBe(15);
  });

  it('goes on with the right side after every second row', () => {
    expect(each((rows) => nextSide(mitten, rows)).join(' ')).toBe(
      'RS WS RS WS RS WS RS WS RS WS RS WS RS WS RS WS RS',
    );
    expect(nextSide(partOf(9, 'hold'), 0)).toBe('RS');
  });

  it('has its last shaping so many rows below the needle', () => {
    const none = -1;
    const before = Array.from({ length: 9 }, () => none);
    expect(each((rows) => rowsAboveShaping(mitten, rows, 'left'))).toEqual([
      ...before,
      0,
      1,
      2,
      3,
      0,
      1,
      2,
      3,
    ]);
    expect(each((rows) => rowsAboveShaping(mitten, rows, 'right'))).toEqual([
      ...before,
      0,
      1,
      2,
      3,
      0,
      0,
      1,
      2,
    ]);
    expect(each((rows) => rowsAboveShaping(mitten, rows, 'either'))).toEqual([
      ...before,
      0,
      1,
      2,
      3,
      0,
      0,
      1,
      2,
    ]);
  });

  it('has so many shapings and groups to be seen', () => {
    expect(each((rows) => shapingsAt(mitten, 0, rows, 'right')).slice(8)).toEqual([
      0, 1, 1, 1, 1, 2, 3, 3, 3,
    ]);
    expect(each((rows) => shapingsAt(mitten, 9, rows, 'left')).slice(8)).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 1]);
    expect(each((rows) => groupsAt(mitten, rows, 'right')).slice(13)).toEqual([0, 0, 1, 1]);
    expect(each((rows) => groupsAt(mitten, rows, 'left')).slice(13)).toEqual([0, 0, 0, 1]);
  });

  it('is so high, and its rib is on the needle up to its last row', () => {
    expect([0, 1, 4, 16].map((rows) => heightAt(mitten, rows))).toEqual([0, 2.5, 10, 40]);
    expect([0, 3, 4, 5, 16].map((rows) => sectionsAt(mitten, rows))).toEqual([[0], [0], [0], [1], [1]]);
  });

  it('shows its ridges on the side that they were knitted from the back of, the last one perhaps', () => {
    const garter = partOf(10, 'hold', section({ fabric: 'garter', rows: 10 }));
    expect(ridgesSeen(garter, 0, 10, 'RS')).toEqual([5, 4]);
    expect(ridgesSeen(garter, 0, 9, 'RS')).toEqual([4]);
    expect(ridgesSeen(garter, 0, 9, 'WS')).toEqual([5, 4]);
    expect(ridgesSeen(garter, 4, 10, 'RS')).toEqual([3, 2]);
    expect(ridgesSeen(garter, 4, 4, 'RS')).toEqual([0]);
    // stocking stitch has none
    expect(ridgesSeen(mitten, 4, 14, 'RS')).toEqual([0]);
  });
});

describe('what looks like that', () => {
  it.each<[Observation, number[]]>([
    [{ kind: 'stitches', stitches: 22 }, [9, 10, 11, 12]],
    [{ kind: 'rows above', landmark: 5, rows: 3 }, [8]],
    [{ kind: 'last shaping', edge: 'left', rows: 3 }, [12, 16]],
    [{ kind: 'shapings', edge: 'right', landmark: 9, times: 1 }, [13]],
    [{ kind: 'groups', edge: 'right', times: 1 }, [15, 16]],
    [{ kind: 'section', section: 0 }, [0, 1, 2, 3, 4]],
    // 40 mm are 16 rows, and a centimetre off is not seen
    [{ kind: 'height', mm: 40 }, [12, 13, 14, 15, 16]],
    [{ kind: 'side', facing: 'RS', yarn: 'right' }, [0, 2, 4, 6, 8, 10, 12, 14, 16]],
    [{ kind: 'side', facing: 'WS', yarn: 'left' }, [0, 2, 4, 6, 8, 10, 12, 14, 16]],
    [{ kind: 'side', facing: 'RS', yarn: 'left' }, [1, 3, 5, 7, 9, 11, 13, 15]],
    [{ kind: 'side', facing: 'WS', yarn: 'right' }, [1, 3, 5, 7, 9, 11, 13, 15]],
    [{ kind: 'ridges above', landmark: 12, ridges: 0, facing: 'RS' }, each((rows) => rows)],
  ])('%j', (seen, rows) => {
    expect(fitting(seen)).toEqual(rows);
  });

  it('a height is known to eight in the hundred: 40 cm are 368 to 432 mm', () => {
    const scarf = partOf(10, 'hold', section({ rows: 200 }));
    const rows = each((n) => n, 200).filter((n) => looksLike(scarf, n, { kind: 'height', mm: 400 }));
    expect([rows[0], rows.at(-1)]).toEqual([148, 172]);
  });
});

describe('what tells the rows apart that are left', () => {
  const told = (observations: readonly Observation[], near?: number) => {
    const { rows, next } = findPlace(mitten, observations, near);
    const kinds = next.map(({ kind, edge, landmark, shows }) =>
      [kind, edge, landmark, shows.join(' ')].filter((one) => one !== undefined).join(', '),
    );
    return { rows, kinds };
  };

  it('the side first, which costs nothing; then rows, then a height', () => {
    expect(told([{ kind: 'stitches', stitches: 24 }])).toEqual({
      rows: [8, 7, 6, 5],
      kinds: ['side, RS WS RS WS', 'rows above, 5, 3 2 1 0', 'height, 20 20 20 10'],
    });
  });

  it('from the row last known outward, the later of two first', () => {
    expect(told([{ kind: 'stitches', stitches: 22 }], 10)).toEqual({
      rows: [10, 11, 9, 12],
      kinds: [
        'side, RS WS WS RS',
        'last shaping, either, 1 2 0 3',
        'rows above, 5, 5 6 4 7',
        'height, 30 30 20 30',
      ],
    });
  });

  it('by how few rows are left, and what it takes to look', () => {
    const { rows, kinds } = told([{ kind: 'height', mm: 37 }]);
    expect(rows).toEqual([16, 15, 14, 13, 12, 11]);
    expect(kinds.slice(0, 4)).toEqual([
      'stitches, 13 16 19 20 22 22',
      'last shaping, either, 2 1 0 0 3 2',
      'side, RS WS RS WS RS WS',
      'rows above, 5, 11 10 9 8 7 6',
    ]);
    // two looks that tell as much: either may come first
    expect(kinds.slice(4, 6).sort()).toEqual([
      'groups, right, 1 1 0 0 0 0',
      'shapings, right, 5, 3 3 3 2 1 1',
    ]);
    expect(kinds.slice(6).sort()).toEqual(['groups, left, 1 0 0 0 0 0', 'shapings, left, 5, 2 2 2 2 1 1']);
  });

  it('the section where two are left that lie in different ones', () => {
    expect(told([{ kind: 'rows above', landmark: 0, rows: 4 }]).kinds).toEqual([]);
    const { rows, kinds } = told([{ kind: 'height', mm: 0 }], 0);
    expect(rows).toEqual([0, 1, 2, 3, 4]);
    expect(kinds[0]).toBe('side, RS WS RS WS RS');
    const wider = told([{ kind: 'height', mm: 12 }], 4);
    expect(wider.rows).toEqual([4, 5, 3, 6, 2, 7, 1, 8]);
    expect(wider.kinds).toContain('section, 0 1 0 1 0 1 0 1');
  });

  it('says after each look how many rows are left, and of looks that do not go together which may be wrong', () => {
    const found = findPlace(mitten, [
      { kind: 'stitches', stitches: 22 },
      { kind: 'side', facing: 'RS', yarn: 'right' },
      { kind: 'section', section: 0 },
    ]);
    expect(found).toEqual({ rows: [], narrowed: [4, 2, 0], doubtful: [0, 2], next: [] });
    const both = findPlace(mitten, [
      { kind: 'section', section: 0 },
      { kind: 'stitches', stitches: 22 },
    ]);
    expect(both.doubtful).toEqual([0, 1]);
    expect(findPlace(mitten, [{ kind: 'stitches', stitches: 19 }])).toEqual({
      rows: [14],
      narrowed: [1],
      doubtful: [],
      next: [],
    });
  });
});
