import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { recipeOfMake } from '../../../src/knit/piece/rework/make-recipe.ts';
import { sayRow } from '../../../src/knit/row/print.ts';
import { told } from '../../told.ts';

/** Half a front as leaflets have it: armhole at the right edge, neck at the left one; each row of its mirror image is written out by hand. */
const TEXT = `FRONT (make 2, the second as a mirror image)
With 4 mm needles, cast on 20 sts.
Row 1 (RS): knit.
Row 2 (WS): purl.
Row 3 (RS): bind off 3 sts, knit to end. (17 sts)
Row 4 (WS): purl.
Row 5 (RS): k1, ssk, knit to last 3 sts, k2tog, k1. (15 sts)
Row 6 (WS): purl.
Row 7 (RS): bind off 4 sts, knit to last 3 sts, k2tog, k1. (10 sts)
Row 8 (WS): purl.
Row 9 (RS): Bind off all sts.`;

const MIRRORED = [
  'knit',
  'purl',
  'knit',
  'bind off 3 sts, purl to end',
  'k1, ssk, knit to last 3 sts, k2tog, k1',
  'purl',
  'k1, ssk, knit to end',
  'bind off 4 sts, purl to end',
  'bind off all sts in pattern',
];

function front(): Recipe {
  const [piece] = readPattern(TEXT).pieces;
  if (!piece) throw new Error('no piece');
  return piece.recipe;
}

describe('rows in words, of a piece whose second make is a mirror image', () => {
  it('are read from their other end; what is bound off where a row begins moves to the row beside it', () => {
    const made = plan(front());
    if (!made.ok) throw new Error(told(made.faults));
    const rows = made.value.mirrorParts?.[0]?.rows ?? [];
    expect(rows.map(({ steps }) => sayRow(steps))).toEqual(MIRRORED);
    expect(rows.map(({ after }) => after)).toEqual([20, 20, 20, 17, 15, 15, 14, 10, 0]);
  });

  it('of a make that was planned before they were mirrored go on as they were planned', () => {
    const made = plan({ ...front(), mirrored: false });
    if (!made.ok) throw new Error(told(made.faults));
    expect(recipeOfMake(front(), 2, made.value.parts).parts).toEqual(front().parts);
    expect(recipeOfMake(front(), 2).parts).not.toEqual(front().parts);
  });
});
