import { describe, expect, it } from 'vitest';
import { fault, ok, placed, refuse } from '../../src/knit/fault.ts';
import { heightOf, MM_PER_INCH, widthOf } from '../../src/knit/gauge.ts';
import { fabricOfGauge } from '../../src/knit/measured-gauge.ts';
import { isStitchName, type StitchName, stitches, stitchNames } from '../../src/knit/stitch.ts';
import { meaningOf } from '../knitter/meaning.ts';

/** What is worked at an edge, with the yarn or with a holder. */
const atEdge: readonly StitchName[] = [
  'bo',
  'co',
  'pu',
  'join yarn',
  'wrap next st',
  'picking up each wrap',
  'working each ds as one st',
  'hold',
  'take',
];

describe('every stitch that a row can ask for', () => {
  it('takes and leaves as many, and looks, as the knitter of the tests was told apart from it', () => {
    for (const name of stitchNames) {
      const { takes, makes, looks } = stitches[name];
      const meant = meaningOf(name);
      expect({ name, takes, makes }).toEqual({ name, takes: meant.takes, makes: meant.makes });
      if (meant.looks && looks !== 'other') expect({ name, looks }).toEqual({ name, looks: meant.looks });
    }
  });

  it('is a decrease, an increase, a cable or plain as its counts say', () => {
    const role = (name: StitchName) => {
      const { takes, makes } = meaningOf(name);
      if (atEdge.includes(name)) return 'edge';
      if (takes !== makes) return takes > makes ? 'decrease' : 'increase';
      return takes > 1 ? 'cable' : 'plain';
    };
    for (const name of stitchNames)
      expect({ name, role: stitches[name].role }).toEqual({ name, role: role(name) });
  });

  it('looks like knit or purl where it is worked so, and else is told by its neighbours', () => {
    const looking = (looks: string) =>
      stitchNames.filter((name) => stitches[name].looks === looks && stitches[name].role === 'plain');
    expect(looking('knit')).toEqual(['k', 'k tbl', 'k1 below']);
    expect(looking('purl')).toEqual(['p', 'p tbl', 'p1 below']);
    for (const name of stitchNames) {
      const { role, looks } = stitches[name];
      if (role === 'cable' || role === 'edge') expect({ name, looks }).toEqual({ name, looks: 'other' });
      if (role === 'decrease' || role === 'increase')
        expect({ name, looks }).not.toEqual({ name, looks: 'other' });
    }
  });

  it('is known by its name', () => {
    expect([isStitchName('k2tog'), isStitchName('toString'), isStitchName('K')]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('a tension', () => {
  // 22 stitches and 30 rows to 10 cm
  const gauge = { stitches: 22, rows: 30 };

  it('gives the width of stitches and the height of rows, mm', () => {
    expect(widthOf(11, gauge)).toBe(50);
    expect(heightOf(45, gauge)).toBe(150);
    expect(MM_PER_INCH).toBe(25.4);
  });

  it('is that of stocking stitch where it names no fabric', () => {
    expect(fabricOfGauge(gauge)).toBe('stocking');
    expect(fabricOfGauge({ ...gauge, fabric: 'moss' })).toBe('moss');
  });
});

describe('a refusal', () => {
  it('says what, where and with which figures', () => {
    expect(fault('at-the-end', { rows: 7 })).toEqual({ code: 'at-the-end', at: {}, figures: { rows: 7 } });
    expect(fault('no-such-make')).toEqual({ code: 'no-such-make', at: {}, figures: {} });
    expect(fault('no-such-make', {}, { row: 3 }).at).toEqual({ row: 3 });
    expect(refuse(fault('no-such-make'))).toEqual({ ok: false, faults: [fault('no-such-make')] });
    expect(ok(5)).toEqual({ ok: true, value: 5 });
  });

  it('is placed more exactly by who knows more, what was known first being kept', () => {
    const found = fault('no-such-make', {}, { row: 3 });
    expect(placed(found, { row: 9, piece: 'Back' }).at).toEqual({ row: 3, piece: 'Back' });
  });
});
