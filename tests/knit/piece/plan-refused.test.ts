import { describe, expect, it } from 'vitest';
import type { PartRecipe, Shaping } from '../../../src/knit/piece/recipe.ts';
import { shapingByRow } from '../../../src/knit/piece/row-shaping.ts';
import { section } from './count/mitten.ts';
import { edge, part, planned } from './parts-by-hand.ts';

const codes = (...of: readonly PartRecipe[]) => {
  const made = planned(...of);
  return made.ok ? [] : made.faults.map(({ code }) => code);
};

describe('what cannot be worked is refused', () => {
  const one = (castOn: number, rows: number, ...shaping: readonly Shaping[]) => {
    const made = planned(part('p', { castOn }, { sections: [section({ rows, shaping })] }));
    return made.ok ? 'ok' : made.faults.map(({ code, figures, at }) => ({ code, figures, at }))[0];
  };
  const group = (
    kind: 'bind off' | 'cast on' | 'turn',
    at: 'right' | 'left',
    row: number,
    stitches: number,
  ) => ({ kind, edge: at, groups: [{ row, stitches }] }) as Shaping;

  it('a row outside the section, a row shaped twice, a step or an inset that is none', () => {
    const outside = (row: number) => one(20, 4, edge('right', -1, row));
    for (const row of [0, 5, 1.5]) {
      expect(outside(row)).toMatchObject({
        code: 'shaping outside the section',
        figures: { row, rows: 4 },
        at: { sectionIndex: 0, field: 'shaping 1', row },
      });
    }
    expect([outside(1), outside(4)]).toEqual(['ok', 'ok']);
    const twice = { code: 'shaped twice', figures: { row: 3 }, at: { field: 'shaping 2', row: 3 } };
    expect(one(20, 4, edge('right', -1, 3), edge('both', -1, 1, 3))).toMatchObject(twice);
    const mitre = (from: number): Shaping => ({ kind: 'middle', rows: [3], from });
    expect(one(20, 4, mitre(9), mitre(9))).toMatchObject(twice);
    expect(one(20, 4, mitre(14), mitre(5))).toBe('ok');
    expect(one(20, 4, { ...edge('right', 1, 1), inset: -1 } as Shaping)).toMatchObject({
      code: 'bad count',
      at: { row: 1 },
    });
    expect(one(20, 4, { ...edge('right', 1, 1), inset: 0 } as Shaping)).toBe('ok');
    expect(one(20, 4, { ...edge('right', 1, 1), inset: 0.5 } as Shaping)).toMatchObject({
      code: 'bad count',
    });
    for (const by of [3, -3, 0, 0.5])
      expect(one(20, 4, edge('right', by, 1))).toMatchObject({
        code: 'edge step too large',
        figures: { byStitches: Math.abs(by) },
      });
    for (const by of [1, 2, -1, -2]) expect(one(20, 4, edge('right', by, 1))).toBe('ok');
  });

  it('a group or a turn where the row cannot have it', () => {
    expect(one(20, 4, group('bind off', 'left', 1, 3))).toMatchObject({
      code: 'group on the wrong side',
      figures: { row: 1, side: 'RS', startsEdge: 'right', edge: 'left' },
    });
    expect(one(20, 4, group('cast on', 'right', 2, 3))).toMatchObject({
      code: 'group on the wrong side',
      figures: { row: 2, side: 'WS', startsEdge: 'left', edge: 'right' },
    });
    expect(one(20, 4, group('turn', 'right', 1, 3))).toMatchObject({
      code: 'turn on the wrong side',
      figures: { row: 1, side: 'RS', startsEdge: 'right' },
    });
    expect(one(20, 1, group('bind off', 'right', 1, 20))).toBe('ok');
    expect(one(20, 1, group('bind off', 'right', 1, 21))).toMatchObject({
      code: 'shaping needs more stitches',
      figures: { needStitches: 21, haveStitches: 20 },
    });
    expect(one(20, 2, group('bind off', 'right', 1, 2), group('cast on', 'right', 1, 2))).toMatchObject({
      code: 'mixed shaping',
    });
    expect(one(20, 2, { kind: 'across', row: 1, by: 2 }, edge('left', -1, 1))).toMatchObject({
      code: 'mixed shaping',
    });
  });

  it('a mitre needs a stitch on either side of its centre', () => {
    const mitre = (castOn: number, from: number) => one(castOn, 1, { kind: 'middle', rows: [1], from });
    expect(mitre(3, 1)).toBe('ok');
    expect(mitre(9, 7)).toBe('ok');
    for (const from of [0, 8]) expect(mitre(9, from)).toMatchObject({ code: 'no centre stitch' });
    expect(mitre(2, 1)).toMatchObject({ code: 'shaping needs more stitches', figures: { needStitches: 3 } });
  });

  it('an increase needs a stitch beside it, and those at both edges one between them', () => {
    const widened = (castOn: number, at: 'right' | 'both', inset: number) =>
      one(castOn, 1, { ...edge(at, 1, 1), inset } as Shaping);
    const need = (needStitches: number, haveStitches: number) => ({
      code: 'shaping needs more stitches',
      figures: { needStitches, haveStitches },
    });
    expect([
      widened(2, 'right', 0),
      widened(3, 'both', 0),
      widened(3, 'right', 2),
      widened(5, 'both', 2),
    ]).toEqual(Array(4).fill('ok'));
    expect(widened(1, 'right', 0)).toMatchObject(need(2, 1));
    expect(widened(2, 'both', 0)).toMatchObject(need(3, 2));
    expect(widened(2, 'right', 2)).toMatchObject(need(3, 2));
    expect(widened(4, 'both', 2)).toMatchObject(need(5, 4));
    // a decrease beside an edge stitch takes three, two edges six
    expect([one(3, 1, edge('left', -1, 1)), one(6, 1, edge('both', -1, 1))]).toEqual(['ok', 'ok']);
    expect(one(2, 1, edge('left', -1, 1))).toMatchObject(need(3, 2));
    expect(one(5, 1, edge('both', -1, 1))).toMatchObject(need(6, 5));
  });

  it('an edge that is shaped where stitches are left unworked', () => {
    const turned = group('turn', 'left', 1, 3);
    expect(one(20, 2, turned, edge('left', -1, 1))).toMatchObject({ code: 'mixed shaping', at: { row: 1 } });
    expect(one(20, 2, turned, edge('left', -1, 2))).toMatchObject({ code: 'mixed shaping', at: { row: 2 } });
    expect(one(20, 2, turned, edge('right', -1, 1))).toBe('ok');
    expect(one(20, 2, turned, edge('right', -1, 2))).toBe('ok');
  });

  it('a turn leaves a stitch at least', () => {
    expect(one(5, 2, group('turn', 'left', 1, 4))).toBe('ok');
    expect(one(5, 2, group('turn', 'left', 1, 5))).toMatchObject({
      code: 'shaping needs more stitches',
      figures: { needStitches: 6, haveStitches: 5 },
    });
    expect(one(5, 2, group('turn', 'left', 1, 0))).toMatchObject({ code: 'shaping needs more stitches' });
  });

  it('stitches that are not all shared, or more than there are', () => {
    const body = part('body', { castOn: 10 }, { end: 'split' });
    const take = (name: string, stitches: number, at: 'right' | 'left' | 'middle' = 'right') =>
      part(name, { part: 'body', edge: at, stitches });
    expect(codes(body, take('r', 4), take('l', 6, 'left'))).toEqual([]);
    expect(codes(body, take('r', 4), take('l', 5, 'left'))).toEqual(['split does not share']);
    expect(codes(body)).toEqual(['split does not share']);
    expect(codes(body, take('r', 11))).toEqual(['split too wide']);
    expect(codes(body, take('l', 11, 'left'))).toEqual(['split too wide']);
    expect(codes(part('body', { castOn: 10 }), take('r', 10))).toEqual([]);
    expect(codes(part('body', { castOn: 10 }), take('r', 9))).toEqual(['split does not share']);
  });

  it('the first thing that is wrong in a section is said', () => {
    const made = shapingByRow(section({ rows: 2, shaping: [edge('right', -1, 1), edge('right', -1, 9)] }));
    expect(made).toMatchObject({ ok: false, faults: [{ at: { field: 'shaping 2', row: 9 } }] });
  });
});
