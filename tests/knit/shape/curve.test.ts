import { Bezier } from 'bezier-js';
import { polygonArea } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { capCurve, neckCurve, setInCurve } from '../../../src/knit/garment/curves.ts';
import { BACK_NECK, necks } from '../../../src/knit/garment/kinds/necks.ts';
import { type Curve, lengthOf, type Point, pointAt, pointsOf, xAt } from '../../../src/knit/shape/curve.ts';

// random sweeps take their time on a busy machine
vi.setConfig({ testTimeout: 60_000 });

/** Reference: bezier-js (its own quadrature and its own way of finding points) and d3-polygon. */
const reference = (curve: Curve): number =>
  curve.reduce((sum, segment) => {
    if (segment.length === 2)
      return sum + Math.hypot(segment[1][0] - segment[0][0], segment[1][1] - segment[0][1]);
    return sum + new Bezier(segment.map(([x, y]) => ({ x, y }))).length();
  }, 0);

const mm = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('curves', () => {
  it('a cap, an armhole and a neck are as long as bezier-js measures them, to 0.01 mm', () => {
    fc.assert(
      fc.property(mm(80, 400), mm(0.05, 0.3), mm(0.05, 0.3), mm(20, 300), (width, step, top, height) => {
        const curves = [
          capCurve(width, step * width, top * width, height, 7),
          setInCurve(width, width * 0.8, height),
          neckCurve(necks.round, 0, width / 3, height / 2),
        ];
        for (const curve of curves) expect(Math.abs(lengthOf(curve) - reference(curve))).toBeLessThan(0.01);
      }),
      { numRuns: 300 },
    );
  });

  it('the area under an armhole agrees with bezier-js points in d3-polygon, to 0.1 %', () => {
    const curve = setInCurve(250, 200, 190);
    const outline: Point[] = [...pointsOf(curve, 64), [0, 190], [0, 0]];
    const arc = curve[1];
    if (arc?.length !== 4) throw new Error('an armhole has an arc');
    const look = new Bezier(arc.map(([x, y]) => ({ x, y })))
      .getLUT(400)
      .map(({ x, y }): [number, number] => [x, y]);
    const wanted = Math.abs(polygonArea([[250, 0], ...look, [200, 190], [0, 190], [0, 0]]));
    expect(Math.abs(Math.abs(polygonArea(outline as [number, number][])) - wanted) / wanted).toBeLessThan(
      0.001,
    );
  });

  it('xAt finds the point of the curve at a height', () => {
    fc.assert(
      fc.property(mm(0.01, 0.99), mm(50, 300), mm(20, 200), (t, width, height) => {
        const curve = neckCurve(necks.round, 0, width, height);
        const arc = curve[1];
        if (!arc) throw new Error('a round neck has an arc');
        const [x, y] = pointAt(arc, t);
        expect(xAt(curve, y)).toBeCloseTo(x, 5);
      }),
      { numRuns: 300 },
    );
  });

  it('a quarter of a circle is π r / 2 long to 0.03 %', () => {
    const [, arc] = neckCurve(BACK_NECK, -150, 100, 100);
    if (!arc) throw new Error('an arc');
    const length = lengthOf([arc]);
    expect(Math.abs(length - (Math.PI * 100) / 2) / length).toBeLessThan(0.0003);
  });
});
