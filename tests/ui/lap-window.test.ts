import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart, PlannedRow } from '../../src/knit/piece/planned.ts';
import { lap, lapView } from '../../src/ui/lap-window/geometry.ts';
import { shapeOfPart } from '../../src/ui/panel-map/outline-of.ts';
import { tileOf, turnedOver } from '../../src/ui/panel-map/texture.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { told } from '../told.ts';
import { partsOf, roundGauge } from './pieces.ts';

const [armholes] = partsOf({
  name: 'Back',
  makes: 1,
  gauge: roundGauge,
  parts: [
    {
      name: 'Back',
      from: { castOn: 60 },
      end: 'hold',
      sections: [
        {
          name: 'armholes',
          rows: 40,
          fabric: 'stocking',
          needle: 4,
          shaping: [
            { kind: 'bind off', edge: 'right', groups: [{ row: 11, stitches: 6 }] },
            { kind: 'bind off', edge: 'left', groups: [{ row: 12, stitches: 6 }] },
            { kind: 'edge', edge: 'both', by: -1, rows: [13, 15, 35], inset: 2, lean: 'mirrored' },
          ],
        },
      ],
    },
  ],
});
const part = armholes as PlannedPart;
const shape = shapeOfPart(part);
/** px: half of 'Row 117' */
const LETTERS = 35;
const at = (n: number) => lapView(part, shape, part.rows[n - 1] as PlannedRow);

describe('the work as it lies in her lap', () => {
  it('shows the side of the row: what is bound off at the right edge lies right, and turned over the left edge lies right', () => {
    expect(at(11)).toMatchObject({ turned: false, now: { n: 11, marks: [{ at: 'right', turn: -1 }] } });
    expect(at(12)).toMatchObject({ turned: true, now: { n: 12, marks: [{ at: 'right', turn: -1 }] } });
    // read from row 11, the group of row 12 lies at the left
    expect(at(11).ahead[0]).toMatchObject({ n: 12, marks: [{ at: 'left' }] });
  });

  it('has marks on the row in hand where it shapes and none where it does not, and above it the next three', () => {
    expect(at(10).now.marks).toEqual([]);
    expect(at(10).ahead.map(({ n }) => n)).toEqual([11, 12, 13]);
    expect(at(14).ahead.map(({ n }) => n)).toEqual([15, 35]);
    expect(at(36).ahead).toEqual([]);
  });

  it('has the number of a row clear of its marks and within the window, on a short needle too', () => {
    const seen = { between: 0, beside: 0 };
    fc.assert(
      fc.property(knittableRecipe(), fc.nat(), ({ recipe }, n) => {
        const made = plan(recipe);
        if (!made.ok) throw new Error(told(made.faults));
        for (const one of made.value.parts) {
          const row = one.rows[n % Math.max(1, one.rows.length)];
          for (const { number, left, right, marks } of row ? lapView(one, shapeOfPart(one), row).ahead : []) {
            const sideways = marks.filter(({ at: where }) => where !== 'within');
            const xs = sideways.flatMap(({ d }) =>
              [...d.matchAll(/[MLH](-?[\d.]+)/g)].map(([, x]) => Number(x)),
            );
            expect(xs.filter((x) => Math.abs(x - number) < LETTERS)).toEqual([]);
            expect(number).toBeGreaterThanOrEqual(LETTERS);
            expect(number).toBeLessThanOrEqual(lap.width - LETTERS);
            seen[number > left && number < right ? 'between' : 'beside'] += 1;
          }
        }
      }),
      { endOnFailure: true, numRuns: 200, seed: 191 },
    );
    expect(Math.min(seen.between, seen.beside)).toBeGreaterThan(0);
  });

  it('has the number of a short row at the end where that row shapes, not at the other, where the row in hand does', () => {
    const [back] = partsOf({
      name: 'Back',
      makes: 1,
      gauge: roundGauge,
      parts: [
        {
          name: 'Back',
          from: { castOn: 90 },
          end: 'hold',
          sections: [
            {
              name: 'shoulders',
              rows: 8,
              fabric: 'stocking',
              needle: 4,
              shaping: [
                { kind: 'bind off', edge: 'right', groups: [3, 5, 7].map((row) => ({ row, stitches: 10 })) },
                { kind: 'bind off', edge: 'left', groups: [4, 6, 8].map((row) => ({ row, stitches: 10 })) },
              ],
            },
          ],
        },
      ],
    });
    const last = back as PlannedPart;
    const view = lapView(last, shapeOfPart(last), last.rows[6] as PlannedRow);
    expect(view.now.marks.map((mark) => mark.at)).toEqual(['right']);
    const [next] = view.ahead;
    expect(next?.marks.map((mark) => mark.at)).toEqual(['left']);
    expect(next?.number).toBeLessThan(next?.left ?? 0);
  });

  it('shows a decrease with its tip in the cloth, an increase with its tip beyond the edge', () => {
    const tips = (turn: 1 | -1) => {
      const row = {
        ...(part.rows[12] as PlannedRow),
        shaping: [{ kind: 'edge', edge: 'right', by: turn } as const],
      };
      const { now } = lapView(part, shape, row);
      return Number(now.marks[0]?.d.match(/L([\d.]+)/)?.[1]) - now.right;
    };
    expect(tips(-1)).toBeLessThan(0);
    expect(tips(1)).toBeGreaterThan(0);
  });

  it('marks what changes all along a row beside its number, as often as it changes, four times at the most', () => {
    const marked = (by: number) => {
      const row = {
        ...(part.rows[0] as PlannedRow),
        shaping: [{ kind: 'across', edge: 'across', by } as const],
      };
      const { now } = lapView(part, shape, row);
      return now.marks.map(({ d }) => Number(d.match(/L([\d.]+)/)?.[1]) - lap.width / 2);
    };
    expect([1, 2, -2, 8].map((by) => marked(by).length)).toEqual([1, 2, 2, 4]);
    // 'Row 117' is some 70 px wide, a mark 17
    expect(marked(8).filter((x) => Math.abs(x) < 35 + 17 / 2)).toEqual([]);
  });

  it('lies within its window, edges in order and rows ahead apart, for any row of any piece', () => {
    fc.assert(
      fc.property(knittableRecipe(), fc.nat(), ({ recipe }, n) => {
        const made = plan(recipe);
        if (!made.ok) throw new Error(told(made.faults));
        for (const one of made.value.parts) {
          if (one.rows.length === 0) continue;
          const { now, ahead, turned } = lapView(
            one,
            shapeOfPart(one),
            one.rows[n % one.rows.length] as PlannedRow,
          );
          expect(turned).toBe(one.rows[n % one.rows.length]?.side === 'WS');
          for (const row of [now, ...ahead]) {
            expect(row.left).toBeLessThanOrEqual(row.right);
            expect(row.left).toBeGreaterThanOrEqual(0);
            expect(row.right).toBeLessThanOrEqual(lap.width);
            expect(row.y).toBeGreaterThanOrEqual(0);
          }
          const steps = [now, ...ahead].map(({ y }) => y);
          for (const [i, y] of steps.slice(1).entries())
            expect((steps[i] ?? 0) - y).toBeGreaterThanOrEqual(15);
        }
      }),
      { numRuns: 60, seed: 23, endOnFailure: true },
    );
  });

  it('shows the other side of the cloth on a wrong-side row: purl bumps behind stocking stitch, ribs behind ribs', () => {
    const cell = { width: 5, height: 4 };
    expect(tileOf(turnedOver('stocking'), cell, 1)).toEqual(tileOf('reverse stocking', cell, 1));
    expect(tileOf(turnedOver('reverse stocking'), cell, 1)).toEqual(tileOf('stocking', cell, 1));
    expect((['garter', 'rib 1x1', 'rib 2x2', 'moss'] as const).map(turnedOver)).toEqual([
      'garter',
      'rib 1x1',
      'rib 2x2',
      'moss',
    ]);
  });
});
