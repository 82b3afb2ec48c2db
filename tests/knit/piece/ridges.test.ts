import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { fabricNames } from '../../../src/knit/fabric.ts';
import { findPlace } from '../../../src/knit/piece/find-place.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { ridgeAt, ridgedFrom, ridgesIn, rowOfRidge } from '../../../src/knit/piece/ridges.ts';
import { told } from '../../told.ts';

const partOf = (
  firstSide: 'RS' | 'WS',
  ...sections: (readonly [(typeof fabricNames)[number], number])[]
): PlannedPart => {
  const gauge = { stitches: 20, rows: 40 };
  const made = plan({
    name: 'Strip',
    makes: 1,
    gauge: { ...gauge, fabric: 'garter' },
    gauges: { stocking: gauge, 'rib 1x1': gauge },
    parts: [
      {
        name: 'strip',
        from: { castOn: 20 },
        firstSide,
        end: 'hold',
        sections: sections.map(([fabric, rows], i) => ({
          name: `${i}`,
          rows,
          fabric,
          needle: 4,
          shaping: [],
        })),
      },
    ],
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts[0] as PlannedPart;
};

describe('ridges of garter stitch, two rows to a ridge (common practice, no published source)', () => {
  it('are counted from the top of a rib once some lie above it, and from nowhere below stocking stitch', () => {
    const body = partOf('RS', ['rib 1x1', 20], ['garter', 40]);
    expect(ridgedFrom(body, [0, 20], 34)).toBe(20);
    expect(ridgedFrom(body, [0, 20, 30], 34)).toBe(20);
    expect([0, 12, 20].map((row) => ridgedFrom(body, [0, 20], row))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(ridgedFrom(partOf('RS', ['garter', 40]), [0, 10], 34)).toBe(0);
    expect(ridgedFrom(partOf('RS', ['garter', 10], ['stocking', 30]), [0, 10], 34)).toBeUndefined();
  });

  it('row 35 of a piece begun on the right side works the 18th ridge', () => {
    const strip = partOf('RS', ['garter', 40]);
    expect([1, 2, 3, 4, 35, 36].map((row) => ridgeAt(strip, row))).toEqual([1, 1, 2, 2, 18, 18]);
  });

  it('picked up and begun on the wrong side, the first row is a ridge by itself', () => {
    const band = partOf('WS', ['garter', 8]);
    expect([1, 2, 3, 4, 5].map((row) => ridgeAt(band, row))).toEqual([1, 2, 2, 3, 3]);
  });

  it('are counted from where garter stitch begins, through all of its sections, and nowhere else', () => {
    const strip = partOf('RS', ['rib 1x1', 6], ['garter', 4], ['garter', 6], ['stocking', 4], ['garter', 4]);
    expect([6, 7, 8, 10, 11, 16, 17, 20, 21, 24].map((row) => ridgeAt(strip, row))).toEqual([
      undefined,
      1,
      1,
      2,
      3,
      5,
      undefined,
      undefined,
      1,
      2,
    ]);
    expect([ridgeAt(strip, 0), ridgeAt(strip, 25)]).toEqual([undefined, undefined]);
  });

  it('of a stretch of rows: half as many as rows, where all of them are garter stitch', () => {
    const strip = partOf('RS', ['rib 1x1', 6], ['garter', 10]);
    expect([
      ridgesIn(strip, 6, 16),
      ridgesIn(strip, 6, 11),
      ridgesIn(strip, 5, 11),
      ridgesIn(strip, 8, 8),
    ]).toEqual([5, 2.5, undefined, undefined]);
  });

  it('ripped back to so many ridges, the last row of each stays', () => {
    const strip = partOf('RS', ['rib 1x1', 6], ['garter', 10]);
    expect([0, 1, 4, 9].map((ridges) => rowOfRidge(strip, 13, ridges))).toEqual([6, 8, 13, 13]);
  });

  it('two rows make each of them, whatever the side that it begins on (law)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('RS' as const, 'WS' as const),
        fc.integer({ min: 1, max: 60 }),
        (side, rows) => {
          const strip = partOf(side, ['garter', rows + 2]);
          const now = ridgeAt(strip, rows) ?? 0;
          expect(ridgeAt(strip, rows + 2)).toBe(now + 1);
          expect(strip.rows[rows - 1]?.side === 'WS' ? ridgeAt(strip, rows + 1) : now).toBe(
            strip.rows[rows - 1]?.side === 'WS' ? now + 1 : now,
          );
        },
      ),
      { endOnFailure: true },
    );
  });
});

describe('a place found by ridges', () => {
  it('ten ridges are rows 19 to 22, whichever side faces her and whether she counts the one under the needle', () => {
    const strip = partOf('RS', ['garter', 60]);
    const found = findPlace(strip, [{ kind: 'ridges above', landmark: 0, ridges: 10 }]);
    expect([...found.rows].sort((a, b) => a - b)).toEqual([19, 20, 21, 22]);
    const facing = findPlace(strip, [{ kind: 'ridges above', landmark: 0, ridges: 10, facing: 'RS' }]);
    expect([...facing.rows].sort((a, b) => a - b)).toEqual([20, 21, 22]);
  });

  it.each([
    [undefined, [20, 21, 19, 22]] as const,
    ['RS', [20, 21, 22]] as const,
    ['WS', [20, 21, 19]] as const,
  ])(
    'ten ridges are twenty rows first, though the place kept is nearer to others (%s faces her)',
    (facing, likeliest) => {
      const strip = partOf('RS', ['garter', 60]);
      const seen = { kind: 'ridges above', landmark: 0, ridges: 10, ...(facing && { facing }) } as const;
      expect(findPlace(strip, [seen], 23).rows).toEqual(likeliest);
    },
  );

  it('above a rib, whose rows are no ridges, ten of them are twenty rows of the garter stitch', () => {
    const bordered = partOf('RS', ['rib 1x1', 12], ['garter', 60]);
    const seen = { kind: 'ridges above', landmark: 0, ridges: 10 } as const;
    expect(findPlace(bordered, [seen], 40).rows[0]).toBe(32);
  });
});
