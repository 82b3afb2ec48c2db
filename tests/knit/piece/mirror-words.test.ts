import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { mirrorWords } from '../../../src/knit/piece/mirror-words.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { recipeOfMake } from '../../../src/knit/piece/rework/make-recipe.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { sayRow } from '../../../src/knit/row/print.ts';
import type { Step } from '../../../src/knit/row/step.ts';
import type { StitchName } from '../../../src/knit/stitch.ts';
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

/** In moss a knit stitch of one row is purled over in the next, seen from the right side: which ones a group takes shows. */
const MOSS = `FRONT (make 2, the second as a mirror image)
With 4 mm needles, cast on 8 sts.
Row 1 (RS): k1, p1, k1, p1, k1, p1, k1, p1.
Row 2 (WS): p1, k1, p1, k1, p1, k1, p1, k1.
Row 3 (RS): bind off 1 st, p1, k1, p1, k1, p1, k1, p1. (7 sts)
Row 4 (WS): p1, k1, p1, k1, p1, k1, p1.
Row 5 (RS): Bind off all sts.`;

describe('rows in moss of a mirror image', () => {
  it('are worked over the stitches of a group as two rows before, in the row in which they are not bound off yet', () => {
    const [piece] = readPattern(MOSS).pieces;
    const made = piece && plan(piece.recipe);
    if (!made?.ok) throw new Error(made ? told(made.faults) : 'no piece');
    const rows = made.value.mirrorParts?.[0]?.rows ?? [];
    expect(rows.slice(0, 4).map(({ steps, before }) => expandRow(steps, before).join(' '))).toEqual([
      'p k p k p k p k',
      'k p k p k p k p',
      'p k p k p k p k',
      'bo p k p k p k p',
    ]);
  });
});

/** Half a back of six stitches whose WS row turns before the two at its right edge; each row of its mirror image is written out by hand. */
describe('rows that turn, of a mirror image', () => {
  const word = (text: string): Step[] =>
    text.split(' ').map((one) => {
      const [times, work] = [Number(one.slice(1)), one.slice(0, 1)];
      return { work: (called[work] ?? work) as StitchName, times };
    });
  const called: Readonly<Record<string, string>> = { u: 'unworked', d: 'ds' };
  const mirrored = (...rows: readonly string[]) => {
    const [section] = mirrorWords({
      name: 'back',
      from: { castOn: 6 },
      end: 'hold',
      sections: [
        {
          name: 'rows',
          rows: rows.length,
          fabric: 'stocking',
          needle: 4,
          shaping: [],
          words: rows.map(word),
        },
      ],
    });
    return section?.words?.map((steps) => expandRow(steps, 6).join(' ').replaceAll('unworked', 'u'));
  };

  it('turn at the left edge, on the RS row before, and are worked back over from there', () => {
    expect(mirrored('k6', 'p4 u2', 'u2 k4', 'p6')).toEqual([
      'k k k k u u',
      'u u p p p p',
      'k k k k k k',
      'p p p p p p',
    ]);
  });

  it('turn on the WS row after where the first one turns on the RS', () => {
    expect(mirrored('k6', 'p6', 'k4 u2', 'u2 p4', 'k6', 'p6')).toEqual([
      'k k k k k k',
      'p p p p u u',
      'u u k k k k',
      'p p p p p p',
      'k k k k k k',
      'p p p p p p',
    ]);
  });

  it('turn after a single stitch, with nothing but its double stitch worked on the way back', () => {
    expect(mirrored('k6', 'p5 u1', 'u1 d1 k4', 'p1 u5', 'u5 d1', 'p6')).toEqual([
      'k k k k k u',
      'u ds p p p p',
      'k u u u u u',
      'u u u u u ds',
      'k k k k k k',
      'p p p p p p',
    ]);
  });
});
