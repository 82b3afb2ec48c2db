import { describe, expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import { ripBack } from '../../../src/knit/piece/rip-back.ts';
import { mitten, partOf, section } from './count/mitten.ts';
import { partsOf, part as recipePart } from './parts-by-hand.ts';

describe('ripping a mitten back from row 16 (mitten.ts)', () => {
  const back = (to: number, lifelines?: readonly number[], from = 16) => {
    const made = ripBack(mitten, from, { to }, lifelines);
    return made.ok ? made.value : made.faults.map(({ code, figures }) => [code, figures]);
  };
  const stops = (to: number, lifelines?: readonly number[]) => {
    const made = back(to, lifelines);
    return 'stops' in made ? made.stops.map(({ row, why }) => `${row} ${why}`) : [];
  };

  it('to row 8: eight rows, their counts from the needle down, their shaping, stitches and groups', () => {
    expect(back(8)).toEqual({
      from: 16,
      to: 8,
      rows: 8,
      count: 24,
      uncertain: 0,
      counts: [16, 19, 20, 22, 22, 22, 22, 24],
      next: mitten.rows[8],
      nextSide: 'RS',
      needle: undefined,
      shaping: [9, 13, 14, 15, 16],
      stitches: 4 * 22 + 20 + 19 + 16 + 13,
      groups: [
        { row: 15, stitches: 3 },
        { row: 16, stitches: 3 },
      ],
      stops: [{ row: 8, why: 'plain row' }],
    });
    expect(back(0)).toMatchObject({ count: 20, nextSide: 'RS', stops: [] });
  });

  it('across a change of needle: the one below it is to be taken again, and only then', () => {
    const made = plan({
      name: 'Cuff',
      makes: 1,
      parts: [
        {
          name: 'Cuff',
          from: { castOn: 20 },
          sections: [
            { name: 'Rib', rows: 12, fabric: 'rib 1x1', needle: 3.5, shaping: [] },
            { name: 'Hand', rows: 20, fabric: 'garter', needle: 4, shaping: [] },
          ],
          end: 'hold',
        },
      ],
    });
    const cuff = made.ok ? made.value.parts[0] : undefined;
    const needles = [
      [20, 8],
      [20, 11],
      // row 13 comes next, which is worked with the needle in hand, as the rows that stay are
      [20, 12],
      [20, 15],
      [12, 4],
      [13, 0],
    ].map(([from = 0, to = 0]) => {
      const rip = cuff && ripBack(cuff, from, { to });
      return rip?.ok ? rip.value.needle : 'refused';
    });
    expect(needles).toEqual([3.5, 3.5, undefined, undefined, undefined, 3.5]);
  });

  it('the easiest row to take up is a plain one on the wrong side, two rows further down at most', () => {
    expect([9, 10, 11, 12, 13, 14, 15].map((to) => stops(to).join())).toEqual([
      '8 plain row',
      '10 plain row',
      '10 plain row',
      '12 plain row',
      '12 plain row',
      '12 plain row',
      '',
    ]);
    expect(stops(1)).toEqual([]);
  });

  it('lifelines on the way are stops too, from the needle down', () => {
    expect(stops(8, [8, 4, 16, 10])).toEqual(['10 lifeline', '8 lifeline', '8 plain row']);
  });

  it('is refused where there is nothing to rip', () => {
    expect(back(16)).toEqual([['nothing to rip', { row: 16, fromRow: 16 }]]);
    expect(back(17)).toEqual([['row outside', { rows: 16, row: 17 }]]);
    expect(back(3, [], 17)).toEqual([['row outside', { rows: 16, row: 3 }]]);
    const to = (target: Parameters<typeof ripBack>[2]) => {
      const made = ripBack(mitten, 16, target);
      return made.ok ? made.value.to : made.faults[0];
    };
    expect(to({ lifelines: [16, 20] })).toMatchObject({ code: 'no lifeline', figures: { fromRow: 16 } });
    expect(to({ firmGround: 16 })).toMatchObject({ code: 'no firm ground', figures: { fromRow: 16 } });
    expect(to({ firmGround: 0 })).toBe(0);
    expect(to({ lifelines: [3, 12, 8] })).toBe(12);
  });

  it('below a count taken anew the count may be off by what that put right', () => {
    const anew = partOf(
      20,
      'hold',
      section({ rows: 8 }),
      section({ onNeedle: 17 }),
      section({ onNeedle: 19 }),
    );
    const uncertain = (from: number, to: number) => {
      const made = ripBack(anew, from, { to });
      return made.ok && made.value.uncertain;
    };
    expect([uncertain(16, 5), uncertain(16, 8), uncertain(11, 5), uncertain(8, 5), uncertain(7, 5)]).toEqual([
      3 + 2,
      2,
      3,
      3,
      0,
    ]);
  });
});

describe('groups that are ripped back', () => {
  it('are told from one stitch on, a decrease is none', () => {
    const [part] = partsOf(
      recipePart(
        'body',
        { castOn: 20 },
        {
          sections: [
            {
              name: 'top',
              rows: 8,
              fabric: 'stocking',
              needle: 4,
              shaping: [
                { kind: 'bind off', edge: 'right', groups: [{ row: 3, stitches: 1 }] },
                { kind: 'bind off', edge: 'left', groups: [{ row: 4, stitches: 2 }] },
                { kind: 'edge', edge: 'right', by: -1, rows: [7], inset: 1, lean: 'mirrored' },
              ],
            },
          ],
        },
      ),
    );
    if (!part) throw new Error('no part');
    const made = ripBack(part, 8, { to: 2 });
    if (!made.ok) throw new Error(made.faults[0]?.code);
    expect(made.value.groups).toEqual([
      { row: 3, stitches: 1 },
      { row: 4, stitches: 2 },
    ]);
    expect(made.value.shaping).toEqual([3, 4, 7]);
  });
});
