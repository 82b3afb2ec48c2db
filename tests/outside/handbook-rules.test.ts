import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/knit/garment/design.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import { stitchesIn } from '../../src/knit/garment/whole-numbers.ts';
import type { Gauge } from '../../src/knit/gauge.ts';
import { graded } from '../knit/garment/graded.ts';
import { bodyOf, drafted, inch, mainPart, near, perInch } from './drafted.ts';

describe('rules of handbooks', () => {
  it('the percentage system: 5 stitches to the inch on 50 inches are 250 (Zimmermann, 1971, from memory)', () => {
    expect(stitchesIn(inch(50), perInch(5, 7))).toBeCloseTo(250, 9);
  });

  it('a woman’s medium in a drop shoulder has a cuff within that system’s percentages, 20 to 25 of the chest’s stitches, and a sleeve top between its 40 (from memory) and the 50 of M. S. Huff, ‘Plotting a sleeve’', () => {
    const body = bodyOf('women', 'M');
    const made = drafted(
      startingDesign(
        { kind: 'pullover', armhole: 'drop', neck: 'round', fit: 'standard' },
        body,
        'stocking',
        perInch(5, 7),
      ),
    );
    const count = (measure: string): number =>
      made.roundings.find((r) => r.measure === measure)?.count ?? Number.NaN;
    const percent = (measure: string): number =>
      Math.round((100 * count(measure)) / (2 * count('width at the underarm')));
    expect(percent('cuff width')).toBeGreaterThanOrEqual(20);
    expect(percent('cuff width')).toBeLessThanOrEqual(25);
    expect(percent('sleeve width')).toBeGreaterThanOrEqual(40);
    expect(percent('sleeve width')).toBeLessThanOrEqual(50);
  });

  it('a size up adds an inch of stitches to the back (Begin to Knit, p. 14)', () => {
    const body = bodyOf('men', 'M');
    const design = startingDesign(
      { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
      body,
      'stocking',
      perInch(4.5, 6),
    );
    const plain = { ...design, hem: { ...design.hem, heightMm: 0 } };
    const up = (inches: number): Body => ({ ...body, chest: body.chest + inch(inches) });
    const sizes = graded(
      plain,
      [0, 2, 4].map((by) => ({ size: String(by), body: up(by) })),
    );
    const castOn = sizes.map((s) => s.pieces.find((p) => p.name === 'Back')?.castOn ?? 0);
    for (const [i, n] of castOn.entries()) near(n - (castOn[0] ?? 0), 4.5 * i, 1.5, 'stitches added');
  });

  it('one stitch is picked up for each ridge of garter stitch (Handbook of Wool Knitting and Crochet, 1918: 72 ridges, 72 stitches)', () => {
    const body = bodyOf('women', 'M');
    const gauge: Gauge = { stitches: 18, rows: 36 };
    const made = drafted(
      startingDesign({ kind: 'vest', armhole: 'drop', neck: 'V', fit: 'standard' }, body, 'garter', gauge),
    );
    const rows = made.edges.find((e) => e.piece === 'Back' && e.name === 'armhole')?.at.length ?? 0;
    const ridges = 2 * rows;
    // a rib of two and two that is sewn is worked over a multiple of four and two: two stitches more or less
    near(mainPart(made, 'Armhole band').start, ridges, 2, 'picked up along both armhole edges');
  });

  it('a V has the same stitches along both sides and one at its point (In Fashions, American Thread: 83 + 1 + 83)', () => {
    const body = bodyOf('men', 'L');
    const made = drafted(
      startingDesign(
        { kind: 'vest', armhole: 'set-in', neck: 'V', fit: 'standard' },
        body,
        'stocking',
        perInch(5, 7),
      ),
    );
    const band = made.recipes.find((r) => r.name === 'Neckband')?.parts[0]?.from;
    if (!band || !('pickUp' in band)) throw new Error('a band is picked up');
    const [left, point, right] = band.pickUp.map((p) => p.stitches);
    expect(point).toBe(1);
    expect(left).toBe(right);
  });
});
