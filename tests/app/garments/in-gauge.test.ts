import { describe, expect, it } from 'vitest';
import { designOf, newForm } from '../../../src/app/drafts/design/form.ts';
import { inGauge } from '../../../src/app/garments/in-gauge.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
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

  it('follows either figure alone, where the other is as it came', () => {
    expect(counts({ stitches: 22, rows: 30 })[0]).toEqual([44, 60]);
    expect(counts({ stitches: 20, rows: 36 })[0]).toEqual([40, 72]);
  });

  it('is as it is where it has none, and refused while a figure is missing', () => {
    expect(inGauge(garment, undefined, {})).toEqual({ ok: true, value: garment });
    // a gauge so small that a missing figure read as 1 would be one tenth or more of it
    const coarse = { stitches: 8, rows: 10 };
    const missing = [{ stitches: 9 }, { rows: 11 }, {}, { stitches: 8 }, { rows: 10 }];
    for (const mine of missing) {
      const found = inGauge({ ...garment, pieces: [square('plain', 400, 600)] }, coarse, mine);
      expect(found.ok ? [] : found.faults.map(({ code }) => code), JSON.stringify(mine)).toEqual([
        'bad gauge',
      ]);
    }
  });

  it('that it cannot be worked in, it says what whoever follows can do, not its maker', () => {
    const made = draft(designOf(newForm()));
    if (!made.ok) throw new Error(told(made.faults));
    const [first] = made.value.recipes;
    if (!first?.gauge) throw new Error('no gauge');
    const few = { ...first.gauge, rows: first.gauge.rows / 5 };
    const found = inGauge({ name: 'a draft', pieces: made.value.recipes }, first.gauge, few);
    expect(found.ok ? [] : found.faults.map(({ code }) => code)).toEqual(['not as asked']);
  });

  it('keeps seams sewn by hand that are of whole edges, and drops those that count stitches or rows', () => {
    const along = (over: object = {}) => [{ piece: 'wide', part: 'wide', edge: 'start' as const, ...over }];
    const whole = { a: along(), b: along({ piece: 'plain', part: 'plain' }) };
    const seams = [
      whole,
      { a: along({ stitches: { from: 0, to: 10 } }), b: along() },
      { a: along(), b: along({ edge: 'left', rows: { from: 0, to: 10 } }) },
    ] as unknown as NonNullable<Garment['byHand']>;
    const sewn = (byHand: Garment['byHand']) => {
      const found = inGauge({ ...garment, ...(byHand && { byHand }) }, asked, { stitches: 22, rows: 36 });
      return found.ok ? found.value : found.faults;
    };
    expect(sewn(seams)).toMatchObject({ byHand: [whole] });
    expect(sewn(undefined)).not.toHaveProperty('byHand');
  });

  it('keeps joints; stitches that they count go with those of the edge', () => {
    const side = (stitches?: { from: number; to: number }) => ({
      kind: 'left free' as const,
      as: 'hem' as const,
      line: [{ piece: 'wide', make: 1, part: 'wide', edge: 'start' as const, ...(stitches && { stitches }) }],
    });
    const joints = (list: Garment['joints']) => {
      const found = inGauge({ ...garment, ...(list && { joints: list }) }, asked, { stitches: 22, rows: 36 });
      return found.ok ? found.value.joints : found.faults;
    };
    const asItCame = inGauge({ ...garment, joints: [side({ from: 0, to: 10 })] }, asked, asked);
    expect(asItCame.ok && asItCame.value.joints).toEqual([side({ from: 0, to: 10 })]);
    expect(joints([side()])).toEqual([side()]);
    // of 40 stitches, 44 now
    expect(joints([side({ from: 0, to: 10 })])).toEqual([side({ from: 0, to: 11 })]);
    expect(joints([side({ from: 30, to: 40 })])).toEqual([side({ from: 33, to: 44 })]);
  });
});
