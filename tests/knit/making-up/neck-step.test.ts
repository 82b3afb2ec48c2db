import { describe, expect, it } from 'vitest';
import { fits } from '../../../src/knit/fabric.ts';
import { neckStep } from '../../../src/knit/making-up/neck-step.ts';
import type { PieceGroups } from '../../../src/knit/making-up/piece-groups.ts';
import type { WorkedJoint } from '../../../src/knit/making-up/work-making-up.ts';

type Line = readonly [piece: string, stitches: number, rows: number];

/** A neck without a band, of lines along it; the front in stocking stitch at 21 stitches and 28 rows: three for four rows. */
function neckOf(...lines: readonly Line[]) {
  const own = [
    { lines: lines.map(([piece, stitches, rows]) => ({ laid: [{ stretch: { piece } }], stitches, rows })) },
  ] as unknown as readonly WorkedJoint[];
  const pieces: Readonly<Record<string, object>> = {
    front: { recipe: { name: 'Front' }, top: { fabric: 'stocking', gauge: { stitches: 21, rows: 28 } } },
    back: { recipe: { name: 'Back' }, top: { fabric: 'stocking', gauge: { stitches: 21, rows: 28 } } },
  };
  const groups = {
    of: (...roles: readonly string[]) => roles.map((role) => pieces[role]).find((one) => one !== undefined),
  } as unknown as PieceGroups;
  const step = neckStep('neck', own, groups);
  if (step?.kind !== 'neck edge') throw new Error('no neck');
  return step;
}

const edgesOf = ({ edges }: ReturnType<typeof neckOf>) =>
  edges.map(({ along, times, stitches }) => `${times} × ${along} ${stitches}`);

describe('what a neck without a band has to give', () => {
  it('is three stitches for four rows of each side, its middle and its back stitch by stitch', () => {
    const step = neckOf(['Front', 0, 40], ['Front', 16, 0], ['Front', 0, 40], ['Back', 30, 0]);
    expect(edgesOf(step)).toEqual(['2 × side of neck 30', '1 × front neck 16', '1 × back neck 30']);
  });

  it('goes along the rows of a back that is shaped too, and by the longer side where a row lies between them', () => {
    const step = neckOf(
      ['Front', 0, 40],
      ['Front', 10, 0],
      ['Front', 0, 44],
      ['Back', 24, 4],
      ['Back', 0, 4],
    );
    expect(edgesOf(step)).toEqual(['2 × side of neck 33', '1 × front neck 10', '1 × back neck 30']);
  });

  it('names no side and no middle where there is none', () => {
    expect(edgesOf(neckOf(['Front', 20, 0], ['Back', 20, 0]))).toEqual([
      '1 × front neck 20',
      '1 × back neck 20',
    ]);
    expect(edgesOf(neckOf(['Front', 0, 20], ['Back', 20, 0]))).toEqual([
      '2 × side of neck 15',
      '1 × back neck 20',
    ]);
  });

  it('is in all the whole ribs that lie nearest to the sum of its edges, each as often as it is there', () => {
    for (let back = 20; back < 40; back += 1) {
      const { total } = neckOf(['Front', 0, 40], ['Front', 16, 0], ['Front', 0, 40], ['Back', back, 0]);
      const sum = 2 * 30 + 16 + back;
      const near = [...Array(9)].map((_, i) => sum - 4 + i).filter((n) => fits('rib 2x2', n).fits);
      const least = Math.min(...near.map((n) => Math.abs(n - sum)));
      expect(fits('rib 2x2', total).fits, `${back}`).toBe(true);
      expect(Math.abs(total - sum), `${back}`).toBe(least);
    }
  });
});
