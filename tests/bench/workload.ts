import type { Body } from '../../src/knit/garment/design.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';

/** What is measured; bodies, panels and texts of our own. */

/** mm */
export const bodyOf: Body = {
  chest: 980,
  waist: 830,
  hip: 1030,
  crossBack: 385,
  napeToWrist: 780,
  napeToWaist: 430,
  arm: 450,
  upperArm: 310,
  wrist: 165,
  armholeDepth: 195,
  head: 560,
};

const STITCHES = 100;

/** Every tenth row shapes, in and out by turns: with ten times the rows only their number differs. */
const shapingRows = (rows: number, first: number): number[] =>
  Array.from({ length: Math.floor((rows - first) / 20) + 1 }, (_, i) => first + 20 * i).filter(
    (row) => row < rows,
  );

/** A panel of so many rows, the bind-off counted. */
export const longPanel = (rows: number, name = 'Panel'): Recipe => ({
  name,
  makes: 1,
  gauge: { stitches: 22, rows: 30 },
  parts: [
    {
      name,
      from: { castOn: STITCHES },
      sections: [
        {
          name: 'body',
          rows: rows - 1,
          fabric: 'stocking',
          needle: 4,
          shaping: [
            {
              kind: 'edge',
              edge: 'both',
              by: -1,
              rows: shapingRows(rows - 1, 9),
              inset: 2,
              lean: 'mirrored',
            },
            {
              kind: 'edge',
              edge: 'both',
              by: 1,
              rows: shapingRows(rows - 1, 19),
              inset: 2,
              lean: 'mirrored',
            },
          ],
        },
      ],
      end: 'bind off',
    },
  ],
});

/** The text of such a panel, a line for each row, each with its count. */
export function longPattern(rows: number): string {
  const lines = [`PANEL`, `Cast on ${STITCHES} sts.`];
  let count = STITCHES;
  for (let row = 1; row < rows; row += 1) {
    const { words, by } = wordsOf(row, rows);
    count += by;
    lines.push(`Row ${row} (${row % 2 === 1 ? 'RS' : 'WS'}): ${words}. (${count} sts)`);
  }
  return [...lines, 'Bind off all sts.'].join('\n');
}

function wordsOf(row: number, rows: number): { readonly words: string; readonly by: number } {
  if (row % 2 === 0) return { words: 'Purl to end', by: 0 };
  const shapes = row % 10 === 9 && row < rows - 1;
  if (!shapes) return { words: 'Knit to end', by: 0 };
  if (row % 20 === 9) return { words: 'K2, ssk, knit to last 4 sts, k2tog, k2', by: -2 };
  return { words: 'K2, m1l, knit to last 2 sts, m1r, k2', by: 2 };
}
