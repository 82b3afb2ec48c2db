import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { sideBits } from '../../src/knit/making-up/boundary.ts';
import { makingUpOf } from '../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../src/knit/piece/as-planned.ts';
import { signsApart } from '../../src/screens/pass-on/signs-apart.ts';
import { edgePath, edgeRuns, middleOf } from '../../src/ui/panel-map/edge-line.ts';
import { shapeOfPart, shapeOfPiece } from '../../src/ui/panel-map/outline-of.ts';
import { told } from '../told.ts';
import { partsOf, strip } from './pieces.ts';

/** 30 stitches of 5 mm, four rows of 4 mm; six stitches bound off at the right edge in row 3. */
const stepped = () => {
  const recipe = strip(30, 4);
  const [part] = recipe.parts;
  if (!part) throw new Error('no part');
  const sections = part.sections.map((section) => ({
    ...section,
    shaping: [{ kind: 'bind off', edge: 'right', groups: [{ row: 3, stitches: 6 }] } as const],
  }));
  const [planned] = partsOf({ ...recipe, parts: [{ ...part, sections }] });
  if (!planned) throw new Error('no plan');
  return planned;
};

describe('an edge as it is drawn', () => {
  it('goes up a side, over what is bound off, and on', () => {
    const part = stepped();
    const runs = edgeRuns(shapeOfPart(part), { edge: 'right', bits: sideBits(part, 'right') });
    expect(edgePath(runs)).toBe('M0 0L0 -8M0 -8L-30 -8M-30 -8L-30 -16');
  });

  it('is one straight line where nothing changes', () => {
    const part = stepped();
    const runs = edgeRuns(shapeOfPart(part), { edge: 'left', bits: sideBits(part, 'left') });
    expect(edgePath(runs)).toBe('M-150 0L-150 -16');
    expect(middleOf(runs)).toEqual([-150, -8]);
  });

  it('has its sign in the middle of it, in whatever order its stretches come', () => {
    const cap = [
      [
        [10, 40],
        [40, 0],
      ],
      [
        [90, 40],
        [60, 0],
      ],
      [
        [40, 0],
        [60, 0],
      ],
    ] as const;
    expect(middleOf(cap)?.[0]).toBe(50);
    expect(middleOf([...cap].reverse())).toEqual(middleOf(cap));
  });

  const flat = (from: number, to: number) =>
    [
      [
        [from, 0],
        [to, 0],
      ],
    ] as const;

  it('has its sign where none stands yet, on its own line, the shortest in its middle', () => {
    expect(signsApart([flat(0, 100), flat(40, 60), flat(0, 100)], 10)).toEqual([
      { at: [30, 0] },
      { at: [50, 0] },
      { at: [70, 0] },
    ]);
  });

  it('has its sign beside it where others leave no room on it, within what is shown, and its own point is told', () => {
    const crowd = Array.from({ length: 9 }, () => flat(48, 52));
    const signs = signsApart(crowd, 10, ([, y]) => y <= 0);
    const at = signs.map((sign) => sign?.at ?? [Number.NaN, 0]);
    const gaps = at.flatMap((one, i) =>
      at.slice(0, i).map((other) => Math.hypot(one[0] - other[0], one[1] - other[1])),
    );
    expect(Math.min(...gaps)).toBeGreaterThan(10 - 1e-5);
    expect(at.every(([, y]) => y <= 0)).toBe(true);
    expect(signs.filter((sign) => sign?.of?.[0] === 50)).toHaveLength(8);
  });

  it('is so much of a beginning or a top as is said, counted from the right edge', () => {
    const shape = shapeOfPart(stepped());
    expect(edgePath(edgeRuns(shape, { edge: 'start', from: 0, to: 1 }))).toBe('M0 0L-150 0');
    expect(edgePath(edgeRuns(shape, { edge: 'top', from: 0.5, to: 1 }))).toBe('M-90 -16L-150 -16');
    expect(edgeRuns(shape, { edge: 'top', from: 0.5, to: 0.5 })).toEqual([]);
  });

  it('lies on the outline of its piece wherever a garment is joined', () => {
    const planned = asPlanned(sampleGarment);
    if (!planned.ok) throw new Error(told(planned.faults));
    const { joined } = makingUpOf(planned.value);
    let drawn = 0;
    for (const { lines } of [...joined.values()].flat())
      for (const { stretch, part, bits } of lines.flatMap(({ laid }) => laid)) {
        if (stretch.edge !== 'right' && stretch.edge !== 'left') continue;
        const shape = shapeOfPiece([part]).parts[0];
        if (!shape) throw new Error('no shape');
        const xs = shape.rows.flatMap((row) => [row.left0, row.left1, row.right0, row.right1]);
        for (const [x, y] of edgeRuns(shape, { edge: stretch.edge, bits }).flat()) {
          drawn += 1;
          expect(xs.some((one) => Math.abs(one - x) < 1e-6)).toBe(true);
          expect(shape.rows.some(({ bottom, top }) => y === bottom || y === top)).toBe(true);
        }
      }
    expect(drawn).toBeGreaterThan(40);
  });
});
