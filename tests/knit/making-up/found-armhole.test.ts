import { describe, expect, it } from 'vitest';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { PieceRole } from '../../../src/knit/piece/recipe.ts';
import { part, piece, section, slant, standing } from './by-hand.ts';

/*
 * A vest of two panels of twelve rows, whose rows are called by no name that tells of an armhole: where it narrows high up, an
 * armhole begins; where it is taken in within its lower third, or hardly narrows, it is sewn up to its top. Common practice.
 */
const panel = (name: string, role: PieceRole, rows: readonly number[]) =>
  piece(name, role, [part(name, 30, [section('a', 12, slant('both', -1, ...rows))])]);

const sewn = (rows: readonly number[]): readonly (number | undefined)[] => {
  const garment = standing(panel('Back', 'back', rows), panel('Front', 'front', rows));
  return makingUpOf(garment).worked.flatMap(({ joint, lines }) =>
    joint.kind === 'seam' && joint.of === 'side' ? lines.map((line) => line?.rows) : [],
  );
};

describe('the side of a vest is sewn up to', () => {
  it.each([
    [[7, 9, 11], 6],
    [[6, 8, 10], 5],
    // from the fifth row on: four of twelve rows are below it
    [[5, 7, 9], 12],
    [[4, 6, 8], 12],
    [[1, 3, 5], 12],
    [[7, 9], 12],
    [[], 12],
  ])('of decreases in rows %j: row %i', (rows, upTo) => {
    expect(sewn(rows)).toEqual([upTo, upTo, upTo, upTo]);
  });
});
