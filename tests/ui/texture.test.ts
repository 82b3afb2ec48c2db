import { describe, expect, it } from 'vitest';
import { fabricNames } from '../../src/knit/fabric.ts';
import { scaleBarMm } from '../../src/ui/panel-map/scale.ts';
import { tileOf } from '../../src/ui/panel-map/texture.ts';

const cell = { width: 5, height: 4 };

describe('the texture of cloth', () => {
  it('is drawn for every fabric, each in its own way', () => {
    const drawn = fabricNames.map((name) => JSON.stringify(tileOf(name, cell, 1)));
    // one kind of 1×1 rib looks like the other
    expect(new Set(drawn).size).toBe(fabricNames.length - 1);
  });

  it('has a ridge for two rows of garter and a column for each pair of rib stitches', () => {
    expect(tileOf('garter', cell, 1).height).toBe(8);
    expect(tileOf('rib 1x1', cell, 1).width).toBe(10);
    expect(tileOf('rib 2x2', cell, 1).width).toBe(20);
  });

  it('stands for whole stitches and rows where one would be too small to see', () => {
    const { width, height } = tileOf('stocking', cell, 11);
    expect([width, height]).toEqual([15, 12]);
  });
});

describe('the scale bar', () => {
  it('is a round length of centimetres or inches, at most two fifths of the piece', () => {
    expect(scaleBarMm(560, 'cm')).toBe(200);
    expect(scaleBarMm(560, 'in')).toBeCloseTo(8 * 25.4, 9);
    expect(scaleBarMm(130, 'cm')).toBe(50);
  });

  it('is the smallest round length for a tiny piece', () => {
    expect(scaleBarMm(5, 'cm')).toBe(10);
  });
});
