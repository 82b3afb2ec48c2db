import { Bezier } from 'bezier-js';
import { describe, expect, it } from 'vitest';
import { bodyTables } from '../../src/knit/garment/bodies.ts';
import { type Draft, draft } from '../../src/knit/garment/draft.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import type { Curve } from '../../src/knit/shape/curve.ts';

/** A curve's length as bezier-js finds it, by a quadrature of its own. */
const lengthOf = (curve: Curve): number =>
  curve.reduce((sum, segment) => {
    const [from, to] = [segment[0], segment[segment.length - 1] ?? segment[0]];
    if (segment.length === 2) return sum + Math.hypot(to[0] - from[0], to[1] - from[1]);
    return sum + new Bezier(segment.map(([x, y]) => ({ x, y }))).length();
  }, 0);

function edgeOf({ edges }: Draft, piece: string, name: string): Curve {
  const edge = edges.find((one) => one.piece === piece && one.name === name);
  if (!edge) throw new Error(`${piece} has no ${name}`);
  return edge.curve;
}

/*
 * A set-in cap is as long as the armhole it is sewn to, or longer by the ease asked for: common practice, no published
 * source for the law; bezier-js is what measures both edges here. The cap's height is made of pairs of rows, so either
 * side may be off by a row's height, and a little more where its top stands aslant.
 */
describe('half a cap, from the underarm to its middle, is as long as the armhole', () => {
  const gauge = { stitches: 22, rows: 30 };
  const rowMm = 100 / gauge.rows;

  it.each([0, 3])(
    'with %i in the hundred of ease, in every size of women and men that is drafted',
    (capEase) => {
      let seen = 0;
      for (const { size, body } of [...bodyTables.women, ...bodyTables.men]) {
        const begun = startingDesign(
          { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
          body,
          'stocking',
          gauge,
        );
        const made = draft({ ...begun, sleeve: { ...begun.sleeve, capEase } });
        if (!made.ok) continue;
        seen += 1;
        const armhole = lengthOf(edgeOf(made.value, 'Back', 'armhole'));
        const cap = lengthOf(edgeOf(made.value, 'Sleeve', 'cap'));
        expect(
          Math.abs(cap - armhole * (1 + capEase / 100)),
          `${size}: ${cap} mm, ${armhole} mm`,
        ).toBeLessThan(1.2 * rowMm);
      }
      expect(seen).toBeGreaterThanOrEqual(12);
    },
  );
});
