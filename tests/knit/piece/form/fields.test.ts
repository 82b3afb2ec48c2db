import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../../src/knit/fault.ts';
import { freshPart, freshPiece, freshSection, freshShaping } from '../../../../src/knit/piece/form/fresh.ts';
import { readGroups, writeGroups } from '../../../../src/knit/piece/form/groups.ts';
import { freeName, inserted, moved, removed, replaced } from '../../../../src/knit/piece/form/list.ts';
import { readDecimal, readList, readWhole } from '../../../../src/knit/piece/form/number.ts';
import { readRhythm, writeRhythm } from '../../../../src/knit/piece/form/rhythm.ts';

/** What is read, and the faults in a line each. */
function read<T>(work: (report: (found: Fault) => void) => T): readonly [T, ...string[]] {
  const faults: string[] = [];
  const value = work(({ code, figures, at }) => {
    faults.push([code, ...Object.values(figures), 'at', at.field].join(' '));
  });
  return [value, ...faults];
}
const at = { field: 'x' };

describe('a number as it is typed', () => {
  it.each<[string, readonly unknown[]]>([
    ['12', [12]],
    [' 7 ', [7]],
    ['', [0, 'blank at x']],
    ['  ', [0, 'blank at x']],
    ['1.5', [0, 'not a whole number 1.5 at x']],
    ['-2', [0, 'not a whole number -2 at x']],
    ['1234567', [0, 'not a whole number 1234567 at x']],
    ['3', [3, 'number too small 3 4 at x']],
    ['4', [4]],
    ['x4', [0, 'not a whole number x4 at x']],
    ['4x', [0, 'not a whole number 4x at x']],
  ])('whole: %j', (typed, found) => {
    expect(read((report) => readWhole(typed, at, report, 4))).toEqual(
      // the least is asked only of what is a number
      found,
    );
  });

  it.each<[string, readonly unknown[]]>([
    ['12', [12]],
    ['4,5', [4.5]],
    [' 4.25 ', [4.25]],
    ['0', [0, 'not a measure 0 at x']],
    ['', [0, 'blank at x']],
    ['4,', [0, 'not a measure 4, at x']],
    ['.5', [0, 'not a measure .5 at x']],
    ['1,000.5', [0, 'not a measure 1,000.5 at x']],
    ['-1', [0, 'not a measure -1 at x']],
  ])('with a point or a comma: %j', (typed, found) => {
    expect(read((report) => readDecimal(typed, at, report))).toEqual(found);
  });

  it.each<[string, readonly unknown[]]>([
    ['4, 3,2;2+1 9', [[4, 3, 2, 2, 1, 9]]],
    ['', [[]]],
    [' , ', [[]]],
    ['4 x 3', [[], 'not a whole number x at x']],
  ])('a list: %j', (typed, found) => {
    expect(read((report) => readList(typed, at, report))).toEqual(found);
  });
});

describe('rows as a rhythm', () => {
  it.each<[readonly number[], string, string]>([
    [[], '', ''],
    [[5], '5', '2×1'],
    [[3, 7, 11], '3', '4×3'],
    [[3, 7, 9, 11], '3', '4×2 2×2'],
    [[1, 2, 4, 6, 10], '1', '1×2 2×2 4×1'],
  ])('%j: first %s, then %s', (rows, first, beats) => {
    const written = writeRhythm(rows);
    expect([written.first, written.rhythm.map(({ every, times }) => `${every}×${times}`).join(' ')]).toEqual([
      first,
      beats,
    ]);
    expect(read((report) => readRhythm(written, at, report))).toEqual([rows]);
  });

  it('each field of it is told by its name', () => {
    const timing = {
      first: '0',
      rhythm: [
        { every: '', times: '2' },
        { every: '2', times: 'x' },
      ],
    };
    expect(read((report) => readRhythm(timing, at, report)).slice(1)).toEqual([
      'number too small 0 1 at x first',
      'blank at x rhythm 1 every',
      'not a whole number x at x rhythm 2 times',
    ]);
    // more rows than any part may have are not laid out one by one
    const endless = { first: '1', rhythm: [{ every: '2', times: '10000' }] };
    const rows: number[] = [];
    read((report) => rows.push(...readRhythm(endless, at, report)));
    expect([rows.length, rows.at(-1)]).toEqual([9999, 1 + 2 * 9998]);
    const once = { first: '4', rhythm: [{ every: '', times: '1' }] };
    expect(read((report) => readRhythm(once, at, report))).toEqual([[4]]);
  });
});

describe('groups at an edge', () => {
  const form = { kind: 'bind off', edge: 'right', first: '1', every: '2', groups: '4, 0, 3' } as const;
  it('lie so many rows apart; none of no stitches', () => {
    expect(read((report) => readGroups(form, 'RS', at, report))).toEqual([
      [
        {
          kind: 'bind off',
          edge: 'right',
          groups: [
            { row: 1, stitches: 4 },
            { row: 5, stitches: 3 },
          ],
        },
      ],
    ]);
  });

  it.each([
    ['bind off', '1', 'RS', 'right 1, left 2'],
    ['bind off', '2', 'RS', 'left 2, right 3'],
    ['bind off', '1', 'WS', 'left 1, right 2'],
    ['cast on', '1', 'RS', 'right 1, left 2'],
    ['turn', '1', 'RS', 'left 1, right 2'],
    ['turn', '2', 'RS', 'right 2, left 3'],
    ['turn', '1', 'WS', 'right 1, left 2'],
  ] as const)('at both edges, %s from row %s on the %s: %s', (kind, first, side, where) => {
    const [made] = read((report) =>
      readGroups({ ...form, kind, edge: 'both', first, groups: '4' }, side, at, report),
    );
    expect(made.map(({ edge, groups }) => `${edge} ${groups[0]?.row}`).join(', ')).toBe(where);
  });

  it('are written with their common measure, empty ones as nought', () => {
    const of = (...rows: readonly number[]) =>
      writeGroups({ kind: 'turn', edge: 'left', groups: rows.map((row) => ({ row, stitches: row })) });
    expect(of(3, 7, 9)).toEqual({ kind: 'turn', edge: 'left', first: '3', every: '2', groups: '3, 0, 7, 9' });
    expect(of(4)).toEqual({ kind: 'turn', edge: 'left', first: '4', every: '2', groups: '4' });
    expect(of()).toEqual({ kind: 'turn', edge: 'left', first: '1', every: '2', groups: '' });
    expect(of(1, 4, 7)).toMatchObject({ every: '3', groups: '1, 4, 7' });
  });
});

describe('a list that is changed', () => {
  it('leaves the old one as it was', () => {
    const old = ['a', 'b', 'c'];
    expect(replaced(old, 1, 'x')).toEqual(['a', 'x', 'c']);
    expect(inserted(old, 1, 'x', 'y')).toEqual(['a', 'x', 'y', 'b', 'c']);
    expect(removed(old, 0)).toEqual(['b', 'c']);
    expect([moved(old, 0, 1), moved(old, 2, -1)]).toEqual([
      ['b', 'a', 'c'],
      ['a', 'c', 'b'],
    ]);
    for (const [index, by] of [
      [0, -1],
      [2, 1],
      [3, -1],
      [-1, 1],
    ] as const)
      expect(moved(old, index, by)).toBe(old);
    expect(old).toEqual(['a', 'b', 'c']);
  });

  it('gives the next free name', () => {
    expect(freeName('Body', [])).toBe('Body');
    expect(freeName('Body', ['Body'])).toBe('Body 2');
    expect(freeName('Body 2', ['Body 2', 'Body 3'])).toBe('Body 4');
    expect(freeName('Body', ['Body', 'Body 2', 'Body 4'])).toBe('Body 3');
  });
});

describe('what a new entry begins with', () => {
  const main = { fabric: 'moss', needle: '5' } as const;
  it('a section: the main fabric at first and after a rib, else more of the same', () => {
    const part = freshPart({ name: 'P', makes: '1', parts: [] }, 'Back');
    expect(part).toEqual({
      name: 'Back',
      start: { kind: 'cast on', stitches: '' },
      sections: [],
      end: 'bind off',
    });
    const fresh = { name: '', rows: '', fabric: 'moss', needle: '5', shaping: [] } as const;
    expect(freshSection(undefined, main)).toEqual(fresh);
    expect(freshSection(undefined, main, 'Body')).toEqual({ ...fresh, name: 'Body' });
    const named = { ...part, sections: [{ ...fresh, name: 'Body' }] };
    expect(freshSection(named, main, 'Body').name).toBe('Body 2');
    const after = (fabric: 'rib 2x2' | 'garter') =>
      freshSection({ ...part, sections: [{ ...fresh, fabric, needle: '3' }] }, main);
    expect(after('rib 2x2')).toEqual(fresh);
    expect(after('garter')).toEqual({ ...fresh, fabric: 'garter', needle: '3' });
    expect(freshPiece('Back', ['Back'], main)).toEqual({
      name: 'Back 2',
      makes: '1',
      parts: [{ ...part, name: 'Back 2', sections: [fresh] }],
    });
  });

  it('a shaping: one stitch two in at both edges in every fourth row, groups in every second', () => {
    expect(freshShaping('edge')).toEqual({
      kind: 'edge',
      edge: 'both',
      change: 'decrease',
      by: '1',
      inset: '2',
      lean: 'mirrored',
      first: '1',
      rhythm: [{ every: '4', times: '' }],
    });
    expect(freshShaping('across')).toEqual({ kind: 'across', change: 'increase', stitches: '', row: '1' });
    expect(freshShaping('middle')).toEqual({
      kind: 'middle',
      from: '',
      first: '2',
      rhythm: [{ every: '2', times: '' }],
    });
    for (const kind of ['bind off', 'cast on', 'turn'] as const)
      expect(freshShaping(kind)).toEqual({ kind, edge: 'both', first: '1', every: '2', groups: '' });
  });
});
