import { describe, expect, it } from 'vitest';
import { inGauge } from '../../../src/app/garments/in-gauge.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { told } from '../../told.ts';

/** So many stitches cast on and rows plain, at its own gauge per 100 mm if it has one. */
const square = (name: string, castOn: number, rows: number, gauge?: { stitches: number; rows: number }) => ({
  name,
  makes: 1,
  ...(gauge && { gauge }),
  parts: [
    {
      name,
      from: { castOn },
      end: 'bind off' as const,
      sections: [{ name: 'plain', rows, fabric: 'stocking' as const, needle: 4, shaping: [] }],
    },
  ],
});

const garment: Garment = {
  name: 'squares',
  pieces: [
    square('wide', 40, 60, { stitches: 20, rows: 30 }),
    square('fine', 20, 40, { stitches: 30, rows: 40 }),
    square('plain', 40, 60),
  ],
};

const asked = { stitches: 20, rows: 30 };

const made = (mine: { stitches?: number; rows?: number }) => {
  const found = inGauge(garment, asked, mine);
  if (!found.ok) throw new Error(told(found.faults));
  return found.value.pieces;
};

const counts = (mine: { stitches?: number; rows?: number }) =>
  made(mine).map(({ parts: [part] }) => [
    part && 'castOn' in part.from && part.from.castOn,
    part?.sections[0]?.rows,
  ]);

describe('a garment in her gauge', () => {
  it('has as many stitches and rows as make the same centimetres; a piece of another gauge keeps its share', () => {
    // 10 % more stitches, 20 % more rows to 10 cm
    expect(counts({ stitches: 22, rows: 36 })).toEqual([
      [44, 72],
      [22, 48],
      [44, 72],
    ]);
    expect(made({ stitches: 22, rows: 36 }).map(({ gauge }) => gauge)).toEqual([
      { stitches: 22, rows: 36 },
      { stitches: 33, rows: 48 },
      { stitches: 22, rows: 36 },
    ]);
  });

  it('stays as it was proven in the gauge that it came in, each piece with a gauge', () => {
    expect(counts(asked)).toEqual([
      [40, 60],
      [20, 40],
      [40, 60],
    ]);
    expect(made(asked).map(({ gauge }) => gauge?.stitches)).toEqual([20, 30, 20]);
  });

  it('is as it is where it has none, and refused while a figure is missing', () => {
    expect(inGauge(garment, undefined, {})).toEqual({ ok: true, value: garment });
    expect(inGauge(garment, asked, { stitches: 22 }).ok).toBe(false);
  });

  it('keeps joints that count no stitches, and drops those that do', () => {
    const side = (stitches?: { from: number; to: number }) => ({
      kind: 'left free' as const,
      as: 'hem' as const,
      line: [{ piece: 'wide', make: 1, part: 'wide', edge: 'start' as const, ...(stitches && { stitches }) }],
    });
    const joints = (list: Garment['joints']) => {
      const found = inGauge({ ...garment, ...(list && { joints: list }) }, asked, { stitches: 22, rows: 36 });
      return found.ok ? found.value.joints : found.faults;
    };
    expect(joints([side()])).toEqual([side()]);
    expect(joints([side({ from: 0, to: 10 })])).toBeUndefined();
  });
});
