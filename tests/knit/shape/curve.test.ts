import { Bezier } from 'bezier-js';
import { polygonArea } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { capCurve, neckCurve, setInCurve } from '../../../src/knit/garment/curves.ts';
import { BACK_NECK, necks } from '../../../src/knit/garment/kinds/necks.ts';
import {
  type Curve,
  chain,
  lengthOf,
  levelThenUpright,
  line,
  type Point,
  pointAt,
  pointsOf,
  xAt,
} from '../../../src/knit/shape/curve.ts';

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

  it('so it does where a curve is level at neither end', () => {
    // at t = 1/2 each point counts 1, 3, 3 and 1 eighth: y is 43.75, x 16.25
    const slanting = [
      [
        [0, 0],
        [10, 30],
        [20, 60],
        [40, 80],
      ],
    ] as const satisfies Curve;
    expect(xAt(slanting, 43.75)).toBeCloseTo(16.25, 6);
    // at t = 1/4 they count 27, 27, 9 and 1 of 64: y is 22.34375, x 7.65625
    expect(xAt(slanting, 22.34375)).toBeCloseTo(7.65625, 6);
    const steep = [
      [
        [0, 0],
        [0, 10],
        [30, 20],
        [40, 90],
      ],
    ] as const satisfies Curve;
    // 0 + 3 · 10 + 3 · 20 + 90 are 180 eighths; 0 + 0 + 90 + 40 are 130
    expect(xAt(steep, 22.5)).toBeCloseTo(16.25, 6);
  });

  it('a quarter of a circle is π r / 2 long to 0.03 %', () => {
    const [, arc] = neckCurve(BACK_NECK, -150, 100, 100);
    if (!arc) throw new Error('an arc');
    const length = lengthOf([arc]);
    expect(Math.abs(length - (Math.PI * 100) / 2) / length).toBeLessThan(0.0003);
  });
});

describe('where an edge is at a height', () => {
  // up from 10 mm high, leaning out, then level, then leaning in
  const edge = chain([
    [40, 10],
    [50, 30],
    [44, 30],
    [34, 70],
  ]);

  it('lies on its straight lines, at a level stretch at the far end, and at its ends above and below them', () => {
    const heights = [-5, 9, 10, 15, 20, 29, 30, 31, 50, 69, 70, 71];
    expect(heights.map((y) => xAt(edge, y))).toEqual([
      40, 40, 40, 42.5, 45, 49.5, 44, 43.75, 39, 34.25, 34, 34,
    ]);
  });

  it('at the height of a level beginning is where the row above it has it', () => {
    const level = chain([
      [0, 10],
      [8, 10],
      [6, 20],
    ]);
    expect([9.9, 10, 15].map((y) => xAt(level, y))).toEqual([0, 8, 7]);
  });

  it('of a quarter circle lies on the circle, to 0.03 % of its radius', () => {
    const arc = [levelThenUpright([20, 50], [120, 150])];
    for (const y of [50, 60, 90, 120, 149])
      expect(Math.abs(Math.hypot(xAt(arc, y) - 20, 150 - y) - 100)).toBeLessThan(0.03);
    expect(xAt(arc, 150)).toBe(120);
  });

  it('is nowhere where there is no edge, which has no length and no points', () => {
    expect(xAt([], 3)).toBe(0);
    expect(lengthOf([])).toBe(0);
    expect(pointsOf([])).toEqual([]);
    expect(chain([])).toEqual([]);
  });
});

describe('a curve drawn', () => {
  const arc = levelThenUpright([0, 0], [30, 40]);

  it('is its corners, and chords of each arc, as many as asked for, the ends exactly', () => {
    const curve: Curve = [line([-10, 0], [0, 0]), arc, line([30, 40], [30, 60])];
    const points = pointsOf(curve, 2);
    expect(points.map(([x, y]) => [Math.round(x), Math.round(y)])).toEqual([
      [-10, 0],
      [0, 0],
      // sin 45° and 1 − cos 45° of 30 and 40 mm
      [21, 12],
      [30, 40],
      [30, 60],
    ]);
    expect(pointsOf([arc])).toHaveLength(17);
  });

  it('a line is as long as Pythagoras has it: 3, 4, 5', () => {
    expect(lengthOf([line([7, 1], [4, 5]), line([4, 5], [-1, 17])])).toBe(5 + 13);
  });

  it('a point of a line lies at its share of it', () => {
    expect(pointAt(line([10, 4], [20, 24]), 0.25)).toEqual([12.5, 9]);
  });
});
